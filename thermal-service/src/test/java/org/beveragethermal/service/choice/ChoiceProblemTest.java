/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class ChoiceProblemTest {
    private static final SharedGear GEAR = SharedGear.constant("bucket", 2, 4);
    private static final CandidateRoute ROUTE = route("bucket", 1, 3);

    private static CandidateRoute route(String gear, int first, int end) {
        return new CandidateRoute("r", List.of(1L), List.of(new Load(gear, first, end, 1)));
    }

    private static ChoiceItem item(String id, CandidateRoute... routes) {
        return new ChoiceItem(id, List.of(routes));
    }

    private static void refused(ThrowingCallable given, String... words) {
        assertThatIllegalArgumentException().isThrownBy(given).satisfies(refusal -> {
            for (String word : words) {
                assertThat(refusal).hasMessageContaining(word);
            }
        });
    }

    private static ChoiceProblem problem(List<SharedGear> gear, ChoiceItem... items) {
        return new ChoiceProblem(List.of("cost"), 4, gear, List.of(items));
    }

    @Test
    void refusesWhatDoesNotFit() {
        refused(() -> problem(List.of(GEAR), item("a", route("basket", 1, 3))), "item a", "unknown gear basket");
        refused(() -> problem(List.of(GEAR), item("a", route("bucket", 1, 5))), "slot 5", "4 slots");
        refused(() -> problem(List.of(GEAR, GEAR), item("a", ROUTE)), "two gear", "bucket");
        refused(() -> problem(List.of(GEAR), item("a", ROUTE), item("a", ROUTE)), "two items", "id a");
        refused(() -> item("a", ROUTE, ROUTE), "two routes", "item a");
        refused(() -> item("a"), "item a", "no route");
        refused(() -> item(" ", ROUTE), "blank");
        refused(() -> problem(List.of(SharedGear.constant("bucket", 2, 3))), "3 capacities", "4 slots");
        CandidateRoute twoCosts = new CandidateRoute("r", List.of(1L, 2L), List.of());
        refused(() -> problem(List.of(GEAR), item("a", twoCosts)), "2 costs of route r of item a", "1 levels");
        refused(() -> new ChoiceProblem(List.of(), 4, List.of(), List.of()), "levels");
        refused(() -> new ChoiceProblem(List.of("x", "x"), 4, List.of(), List.of()), "two levels");
        refused(() -> new ChoiceProblem(List.of("x"), 0, List.of(), List.of()), "slots", "was 0");
    }

    @Test
    void refusesNumbersOutOfRange() {
        refused(() -> new CandidateRoute("r", List.of(-1L), List.of()), "cost of route r", "was -1");
        refused(() -> new CandidateRoute("r", List.of(2_000_000_000L), List.of()), "was 2000000000");
        refused(() -> SharedGear.constant("g", -1, 4), "capacity of gear g in slot 0", "was -1");
        refused(() -> SharedGear.constant("g", 1, 0), "was 0");
        refused(() -> new SharedGear("g", List.of()), "slots of gear g");
        refused(() -> new Load("g", -1, 2, 1), "first slot", "was -1");
        refused(() -> new Load("g", 2, 2, 1), "end slot", "was 2");
        refused(() -> new Load("g", 1, 2, 0), "places", "was 0");
    }

    @Test
    void refusesAbsurdSizes() {
        refused(() -> new ChoiceProblem(List.of("x"), 1_000_000, List.of(), List.of()), "slots", "was 1000000");
        List<ChoiceItem> many = Collections.nCopies(ChoiceProblem.MOST_ITEMS + 1, item("a", ROUTE));
        refused(() -> new ChoiceProblem(List.of("x"), 4, List.of(GEAR), many), "number of items");
        List<CandidateRoute> ways = IntStream.range(0, 21)
                .mapToObj(r -> new CandidateRoute("r" + r, List.of(1L), List.of()))
                .toList();
        List<ChoiceItem> manyWays = Collections.nCopies(ChoiceProblem.MOST_ITEMS, new ChoiceItem("a", ways));
        refused(() -> new ChoiceProblem(List.of("x"), 4, List.of(GEAR), manyWays), "number of routes", "was 42000");
    }

    @Test
    void refusesLimitsOutOfRange() {
        refused(() -> ChoiceLimits.within(Duration.ZERO), "timeLimit");
        refused(() -> ChoiceLimits.within(Duration.ofDays(1000)), "timeLimit");
        refused(() -> ChoiceLimits.exact().withGap(-0.1), "relativeGap");
        refused(() -> ChoiceLimits.exact().withGap(Double.NaN), "relativeGap");
        refused(() -> ChoiceLimits.exact().withGap(1.001), "relativeGap", "was 1.001");
        refused(() -> ChoiceLimits.exact().withNodes(0), "nodeLimit");
        assertThat(ChoiceLimits.exact().withGap(1).withNodes(1))
                .isEqualTo(new ChoiceLimits(Duration.ofDays(365), 1, 1));
    }
}
