/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Who is said to be at fault, and what is said to be too small, against trying every choice. */
class InfeasibleTest {
    @Test
    void theItemsNamedCannotBeServedByTheGearNamedAndAnyFewerCan() {
        int cases = 0;
        int fewerThanAll = 0;
        for (int seed = 0; seed < 800; seed++) {
            ChoiceProblem problem = DrawnProblems.small(seed);
            if (!(RouteChooser.choose(problem) instanceof ChoiceAnswer.Infeasible infeasible)) {
                continue;
            }
            cases++;
            List<ChoiceItem> named = problem.items().stream()
                    .filter(item -> infeasible.items().contains(item.id()))
                    .toList();
            assertThat(named).as("seed %d", seed).hasSameSizeAs(infeasible.items());
            fewerThanAll += named.size() < problem.items().size() ? 1 : 0;
            List<SharedGear> onlyNamed = problem.gear().stream()
                    .map(gear -> roomyOutside(gear, infeasible.spans()))
                    .toList();
            assertThat(BruteForce.least(with(problem, onlyNamed, named)))
                    .as("seed %d: %s", seed, infeasible)
                    .isEmpty();
            for (ChoiceItem left : named) {
                List<ChoiceItem> fewer = new ArrayList<>(named);
                fewer.remove(left);
                assertThat(BruteForce.least(with(problem, problem.gear(), fewer)))
                        .as("seed %d: %s without %s", seed, infeasible, left.id())
                        .isPresent();
            }
            assertSaid(infeasible);
        }
        assertThat(cases).isGreaterThan(100);
        assertThat(fewerThanAll).isGreaterThan(50);
    }

    private static ChoiceProblem with(ChoiceProblem problem, List<SharedGear> gear, List<ChoiceItem> items) {
        return new ChoiceProblem(problem.levels(), problem.slots(), gear, items);
    }

    private static SharedGear roomyOutside(SharedGear gear, List<ChoiceAnswer.Span> spans) {
        return new SharedGear(
                gear.id(),
                IntStream.range(0, gear.capacityBySlot().size())
                        .mapToObj(slot -> spans.stream()
                                        .anyMatch(span -> span.gearId().equals(gear.id())
                                                && span.firstSlot() <= slot
                                                && slot < span.endSlot())
                                ? gear.capacityBySlot().get(slot)
                                : SharedGear.MOST)
                        .toList());
    }

    private static void assertSaid(ChoiceAnswer.Infeasible infeasible) {
        infeasible.items().forEach(item -> assertThat(infeasible.reason()).contains(item));
        Set<String> said = new HashSet<>();
        for (ChoiceAnswer.Span span : infeasible.spans()) {
            String place = span.gearId() + " in slots " + span.firstSlot() + " to " + (span.endSlot() - 1);
            assertThat(infeasible.reason()).contains(place);
            assertThat(span.firstSlot()).isLessThan(span.endSlot());
            assertThat(said.add(span.gearId() + " from " + span.firstSlot())).isTrue();
            assertThat(said.add(span.gearId() + " until " + span.endSlot())).isTrue();
            // Spans that meet are told as one.
            assertThat(infeasible.spans())
                    .noneMatch(other -> other.gearId().equals(span.gearId()) && other.firstSlot() == span.endSlot());
        }
    }

    @Test
    void ofManyItemsAFewAreNamed() {
        List<ChoiceItem> items = IntStream.range(0, 11)
                .mapToObj(i -> new ChoiceItem(
                        "bottle " + (char) ('a' + i),
                        List.of(new CandidateRoute("in", List.of(0L), List.of(new Load("tub", 1, 4, 1))))))
                .toList();
        ChoiceProblem problem =
                new ChoiceProblem(List.of("cost"), 5, List.of(SharedGear.constant("tub", 10, 5)), items);
        assertThat(RouteChooser.choose(problem))
                .isInstanceOfSatisfying(
                        ChoiceAnswer.Infeasible.class,
                        infeasible -> assertThat(infeasible.reason())
                                .isEqualTo(
                                        "not all of these can be served: bottle a, bottle b, bottle c, bottle d, bottle e,"
                                                + " bottle f, bottle g, bottle h and 3 more; too small is tub in slots 1 to 3"));
        ChoiceProblem eight =
                new ChoiceProblem(List.of("cost"), 5, List.of(SharedGear.constant("tub", 7, 5)), items.subList(0, 8));
        assertThat(RouteChooser.choose(eight))
                .isInstanceOfSatisfying(
                        ChoiceAnswer.Infeasible.class,
                        infeasible -> assertThat(infeasible.reason())
                                .contains("bottle g, bottle h; too small")
                                .doesNotContain("more"));
    }

    @Test
    void thoseThatTakeMostAreNamedBeforeManyThatTakeLittle() {
        List<ChoiceItem> items = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            int places = i == 17 || i == 30 ? 6 : 1;
            items.add(new ChoiceItem(
                    "bottle" + i,
                    List.of(new CandidateRoute("in", List.of(0L), List.of(new Load("tub", 0, 2, places))))));
        }
        ChoiceProblem problem =
                new ChoiceProblem(List.of("cost"), 2, List.of(SharedGear.constant("tub", 11, 2)), items);
        assertThat(RouteChooser.choose(problem))
                .isInstanceOfSatisfying(
                        ChoiceAnswer.Infeasible.class,
                        infeasible -> assertThat(infeasible.items()).containsExactlyInAnyOrder("bottle17", "bottle30"));
    }

    @Test
    void gearThatIsTooSmallTwiceIsNamedTwice() {
        // Each of two stands in the tub early or late; a third stands there both times.
        List<CandidateRoute> either = List.of(
                new CandidateRoute("early", List.of(0L), List.of(new Load("tub", 0, 2, 1))),
                new CandidateRoute("late", List.of(0L), List.of(new Load("tub", 4, 6, 1))));
        CandidateRoute both =
                new CandidateRoute("both", List.of(0L), List.of(new Load("tub", 0, 2, 1), new Load("tub", 4, 6, 1)));
        ChoiceProblem problem = new ChoiceProblem(
                List.of("cost"),
                6,
                List.of(SharedGear.constant("tub", 1, 6)),
                List.of(new ChoiceItem("a", either), new ChoiceItem("b", List.of(both))));
        assertThat(RouteChooser.choose(problem)).isInstanceOfSatisfying(ChoiceAnswer.Infeasible.class, infeasible -> {
            assertThat(infeasible.spans())
                    .containsExactly(new ChoiceAnswer.Span("tub", 0, 2), new ChoiceAnswer.Span("tub", 4, 6));
            assertThat(infeasible.reason()).endsWith("too small is tub in slots 0 to 1, tub in slots 4 to 5");
        });
    }

    /** Each neighbour in a ring of odd length stands in the other of two tubs: fractions of a half would fit, a choice does not. */
    @Test
    void aRingOfOddLengthCannotStandInTwoTubsByTurns() {
        for (int n = 3; n <= 9; n += 2) {
            List<ChoiceItem> ring = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                ring.add(new ChoiceItem("bottle" + i, List.of(standing("left", i, n), standing("right", i, n))));
            }
            List<SharedGear> tubs = List.of(SharedGear.constant("left", 1, n), SharedGear.constant("right", 1, n));
            ChoiceProblem problem = new ChoiceProblem(List.of("cost"), n, tubs, ring);
            ChoiceAnswer answer = RouteChooser.choose(problem);
            int all = n;
            assertThat(answer).isInstanceOfSatisfying(ChoiceAnswer.Infeasible.class, infeasible -> {
                assertThat(infeasible.items()).hasSize(all);
                assertThat(BruteForce.least(new ChoiceProblem(
                                problem.levels(),
                                all,
                                tubs.stream()
                                        .map(tub -> roomyOutside(tub, infeasible.spans()))
                                        .toList(),
                                ring)))
                        .isEmpty();
            });
            assertThat(CertificateCheck.fault(problem, answer)).isEmpty();
            assertThat(RouteChooser.choose(new ChoiceProblem(List.of("cost"), n, tubs, ring.subList(1, n))))
                    .isInstanceOf(ChoiceAnswer.Proven.class);
        }
    }

    /** Slot i is shared with the one before, the next with the one after. */
    private static CandidateRoute standing(String tub, int i, int of) {
        int next = (i + 1) % of;
        return new CandidateRoute(
                tub, List.of(0L), List.of(new Load(tub, i, i + 1, 1), new Load(tub, next, next + 1, 1)));
    }
}
