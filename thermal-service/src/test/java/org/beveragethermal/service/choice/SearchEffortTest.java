/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

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
            for (Model model : Presolve.parts(DrawnProblems.shared(seed), budget())) {
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
}
