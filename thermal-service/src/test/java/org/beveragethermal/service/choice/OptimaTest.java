/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/**
 * 200 problems of 12 to 30 items, 4 or 5 gear and 48 slots against an independent exact solver: OR-Tools 9.15.6755, CP-SAT, run by {@code
 * optima.py} in the resources, which draws the same problems.
 */
class OptimaTest {
    @Test
    void findsTheOptimaOfAnIndependentSolver() throws IOException {
        int agreeing = 0;
        for (String row : rows()) {
            String[] fields = row.split(",", -1);
            int seed = Integer.parseInt(fields[0]);
            ChoiceProblem problem = DrawnProblems.shared(seed);
            ChoiceAnswer answer = RouteChooser.choose(problem);
            assertThat(said(answer)).as("seed %d", seed).isEqualTo(fields[1]);
            assertThat(CertificateCheck.fault(problem, answer))
                    .as("seed %d", seed)
                    .isEmpty();
            agreeing++;
        }
        OutsideChecks.referenceLibrary("choice-optima", "OR-Tools 9.15.6755, CP-SAT, each level proven optimal")
                .what("problems of 12 to 30 items, 4 or 5 gear and 48 slots with the same least costs in all levels")
                .unit("1")
                .expected(200)
                .within(0)
                .check(agreeing);
    }

    private static String said(ChoiceAnswer answer) {
        if (answer instanceof ChoiceAnswer.Proven proven) {
            return proven.choice().costByLevel().stream().map(String::valueOf).collect(Collectors.joining(" "));
        }
        return answer instanceof ChoiceAnswer.Infeasible ? "infeasible" : "not proven";
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
