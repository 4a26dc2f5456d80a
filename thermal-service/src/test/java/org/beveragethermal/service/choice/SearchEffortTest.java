/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * How many cases are looked at until scarce gear is proven to be handed out best. The counts are those of this search, measured once and the same on
 * every machine; a change of the search may alter them, and must not raise them unnoticed.
 */
class SearchEffortTest {
    private static final long ENOUGH = 100_000;

    private static long cases(boolean begun) {
        long cases = 0;
        for (int seed = 1; seed < 130; seed += 2) {
            cases += cases(DrawnProblems.shared(seed), begun);
        }
        return cases;
    }

    private static long cases(ChoiceProblem problem, boolean begun) {
        long cases = 0;
        for (Model model : Presolve.parts(problem, budget())) {
            Budget budget = budget();
            PartSearch search = new PartSearch(model);
            if (begun) {
                search.begin(budget);
            }
            search.run(0, budget);
            cases += ENOUGH;
            while (budget.node(0, 0)) {
                cases--;
            }
        }
        return cases;
    }

    private static Budget budget() {
        return new Budget(ChoiceLimits.exact().withNodes(ENOUGH), ChoiceMonitor.none(), () -> 0L);
    }

    @Test
    void fewCasesProveWhatWasFoundByTrying() {
        assertThat(cases(true)).isLessThanOrEqualTo(1032);
    }

    @Test
    void fewMoreAreNeededWhereNothingWasFoundBefore() {
        assertThat(cases(false)).isLessThanOrEqualTo(1078);
    }

    /** Three of them fit into one tub and two into the other, whichever they are: 560 times 78 ways that are one. */
    @Test
    void itemsThatAreAlikeAreNotTriedInEveryOrder() {
        CandidateRoute left = new CandidateRoute("left", List.of(0L), List.of(new Load("left", 0, 1, 2)));
        CandidateRoute right = new CandidateRoute("right", List.of(1L), List.of(new Load("right", 0, 1, 3)));
        CandidateRoute out = new CandidateRoute("out", List.of(10L), List.of());
        ChoiceProblem problem = new ChoiceProblem(
                List.of("cost"),
                1,
                List.of(SharedGear.constant("left", 7, 1), SharedGear.constant("right", 8, 1)),
                IntStream.range(0, 16)
                        .mapToObj(i -> new ChoiceItem("bottle" + i, List.of(left, right, out)))
                        .toList());
        ChoiceAnswer answer = RouteChooser.choose(problem);
        assertThat(answer.found().orElseThrow().costByLevel()).containsExactly(11 * 10L + 2);
        assertThat(CertificateCheck.fault(problem, answer)).isEmpty();
        assertThat(cases(problem, true)).isLessThanOrEqualTo(14);
    }
}
