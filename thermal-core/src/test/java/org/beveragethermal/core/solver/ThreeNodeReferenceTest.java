/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.testsupport.Csv;
import org.beveragethermal.testsupport.ObservedOrders;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** {@link ThreeNodeProblem} against solutions by two general-purpose integrators that agree to 2e-10 K. */
final class ThreeNodeReferenceTest {

    private static final String LIBRARY =
            "SciPy solve_ivp, DOP853 at rtol = atol = 1e-12 and Radau at 1e-11, agreeing to 2e-10 K";
    private static final double ZERO = 273.15;
    private static final double END_S = 7200;
    private static final List<Node> NODES =
            List.of(ThreeNodeProblem.DRINK, ThreeNodeProblem.GLASS, ThreeNodeProblem.SLEEVE);

    private record Reference(Node node, double timeS, double celsius) {}

    @Test
    void defaultToleranceIsWithinTwoMillikelvin() {
        Trajectory run = NetworkSolver.standard().solve(ThreeNodeProblem.phases(), END_S);
        compare(run, "default", 2e-3);
    }

    @Test
    void tightToleranceIsWithinATenthOfAMillikelvin() {
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-7).solve(ThreeNodeProblem.phases(), END_S);
        compare(run, "1e-7", 1e-4);
    }

    @Test
    void errorFallsWithTolerance() {
        double previous = Double.POSITIVE_INFINITY;
        SimpleRegression logErrorOnLogSteps = new SimpleRegression();
        SimpleRegression logErrorOnLogTolerance = new SimpleRegression();
        for (double toleranceK : new double[] {1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8}) {
            Trajectory run =
                    NetworkSolver.standard().withToleranceK(toleranceK).solve(ThreeNodeProblem.phases(), END_S);
            double error = worst(run);
            assertThat(error).as("error at tolerance %s K", toleranceK).isLessThan(previous);
            // Adaptive control of the error of each step: the error of the run is of the size of the tolerance.
            assertThat(error).as("error at tolerance %s K", toleranceK).isLessThan(20 * toleranceK);
            previous = error;
            logErrorOnLogSteps.addData(Math.log(run.steps()), Math.log(error));
            logErrorOnLogTolerance.addData(Math.log(toleranceK), Math.log(error));
        }
        // The sleeve answers in about 5 s, in the midst of the steps taken: between non-stiff (order 4) and stiff,
        // where
        // order is lost. FixedStepOrderTest sees the order on smooth problems. Order 3 is that of the embedded
        // solution.
        OutsideChecks.fromMemory(
                        "three-node-slope",
                        "E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed., Springer 1996,"
                                + " section IV.7: order 4, embedded order 3")
                .what("slope of log error against log steps over tolerances 1e-3 to 1e-8 K, three-node problem")
                .unit("1")
                .between(3, 5)
                .check(-logErrorOnLogSteps.getSlope());
        String family = "integration in time, steps by tolerance";
        String quantity = "temperatures of three stiff nodes, against general-purpose integrators";
        ObservedOrders.of(family, quantity, "steps taken, tolerance 1e-3 to 1e-8 K")
                .check(4, -logErrorOnLogSteps.getSlope(), 3, 5);
        ObservedOrders.of(family, quantity, "tolerance, 1e-3 to 1e-8 K")
                .check(1, logErrorOnLogTolerance.getSlope(), 0.8, 1.2);
    }

    private static void compare(Trajectory run, String label, double withinK) {
        for (Reference reference : references()) {
            OutsideChecks.referenceLibrary(
                            "three-node-" + label + "-" + reference.node().name() + "-" + (int) reference.timeS(),
                            LIBRARY)
                    .what("temperature of the " + reference.node().name() + " at " + (int) reference.timeS()
                            + " s, tolerance " + label)
                    .unit("°C")
                    .expected(reference.celsius())
                    .within(withinK)
                    .check(run.temperatureK(reference.node(), reference.timeS()) - ZERO);
        }
    }

    private static double worst(Trajectory run) {
        return references().stream()
                .mapToDouble(r -> Math.abs(run.temperatureK(r.node(), r.timeS()) - ZERO - r.celsius()))
                .max()
                .orElseThrow();
    }

    private static List<Reference> references() {
        List<Reference> references = new ArrayList<>();
        for (List<String> row : Csv.parse(read("three-node-reference.csv"))) {
            if (row.get(0).startsWith("#")) {
                continue;
            }
            for (int i = 0; i < NODES.size(); i++) {
                references.add(new Reference(
                        NODES.get(i), Double.parseDouble(row.get(0)), Double.parseDouble(row.get(i + 1))));
            }
        }
        assertThat(references).hasSize(42);
        return references;
    }

    private static String read(String resource) {
        try (InputStream in =
                Objects.requireNonNull(ThreeNodeReferenceTest.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(resource, e);
        }
    }
}
