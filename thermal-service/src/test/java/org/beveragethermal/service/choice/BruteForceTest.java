/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BruteForceTest {
    private static final int PROBLEMS = 1000;

    @Test
    void findsTheSameCostsAsTryingEveryChoice() {
        int infeasible = 0;
        for (int seed = 0; seed < PROBLEMS; seed++) {
            ChoiceProblem problem = DrawnProblems.small(seed);
            Optional<List<Long>> expected = BruteForce.least(problem);
            ChoiceAnswer answer = RouteChooser.choose(problem);
            assertThat(answer.found().map(Choice::costByLevel))
                    .as("seed %d, answer %s", seed, answer)
                    .isEqualTo(expected);
            assertThat(answer)
                    .isInstanceOf(expected.isPresent() ? ChoiceAnswer.Proven.class : ChoiceAnswer.Infeasible.class);
            assertThat(CertificateCheck.fault(problem, answer))
                    .as("seed %d, answer %s", seed, answer)
                    .isEmpty();
            infeasible += expected.isEmpty() ? 1 : 0;
        }
        assertThat(infeasible).as("both kinds are drawn").isBetween(PROBLEMS / 10, PROBLEMS * 9 / 10);
    }
}
