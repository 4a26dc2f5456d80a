/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * 200 problems of 12 to 30 items, 4 or 5 gear and 48 slots against an independent exact solver: OR-Tools 9.15.6755, CP-SAT, run by {@code
 * optima.py} in the resources, which draws the same problems.
 */
class OptimaTest {
    @Test
    void findsTheOptimaOfAnIndependentSolver() throws IOException {
        List<String> rows = rows();
        assertThat(rows).hasSize(200);
        for (String row : rows) {
            String[] fields = row.split(",", -1);
            int seed = Integer.parseInt(fields[0]);
            ChoiceProblem problem = DrawnProblems.shared(seed);
            ChoiceAnswer answer = RouteChooser.choose(problem);
            if (fields[1].equals("infeasible")) {
                assertThat(answer).as("seed %d", seed).isInstanceOf(ChoiceAnswer.Infeasible.class);
            } else {
                List<Long> costs = Arrays.stream(fields[1].split(" ", -1))
                        .map(Long::valueOf)
                        .toList();
                assertThat(answer).as("seed %d", seed).isInstanceOf(ChoiceAnswer.Proven.class);
                assertThat(answer.found().map(Choice::costByLevel))
                        .as("seed %d", seed)
                        .contains(costs);
            }
            assertThat(CertificateCheck.fault(problem, answer))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    private static List<String> rows() throws IOException {
        try (InputStream in = Objects.requireNonNull(OptimaTest.class.getResourceAsStream("optima.csv"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("seed"))
                    .toList();
        }
    }
}
