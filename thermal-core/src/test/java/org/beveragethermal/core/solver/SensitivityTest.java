/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.junit.jupiter.api.Test;

/** Slopes carried along a run, against closed forms and against runs from other starts. */
final class SensitivityTest {

    private static final double CAPACITY = 1000;
    private static final double RATE = 2 / CAPACITY;
    private static final double CHANGED_S = 400;
    private static final double END_S = 1500;

    private final Node body = Node.sensible("body", CAPACITY, 300);

    private Network cooled(double airK) {
        Boundary air = Boundary.constant("air", airK);
        return Network.of(
                List.of(body),
                List.of(DirectPath.of("film", body, air, "convection", HeatLaw.conductance(2))
                        .scaledBy("film")));
    }

    @Test
    void slopesAreThoseOfTheClosedFormAcrossAChangeOfAir() {
        double m = 1.3;
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(1e-7)
                .withMultipliers(Map.of("film", m))
                .solve(List.of(new Phase(0, cooled(280)), new Phase(CHANGED_S, cooled(290))), END_S);
        Sensitivity slopes = Sensitivity.of(run, List.of("film"), List.of(body));
        double changed = 280 + 20 * Math.exp(-m * RATE * CHANGED_S);
        double slopeChanged = -20 * RATE * CHANGED_S * Math.exp(-m * RATE * CHANGED_S);
        for (double t = 0; t <= END_S; t += 37.5) {
            double late = t - CHANGED_S;
            double e = Math.exp(-m * RATE * (late < 0 ? t : late));
            double slope = late < 0 ? -20 * RATE * t * e : slopeChanged * e - (changed - 290) * RATE * late * e;
            // Straight lines between quarters of a step.
            assertThat(slopes.temperatureSlope("film", body, t))
                    .as("film at %s s", t)
                    .isCloseTo(slope, within(2e-3));
            assertThat(slopes.temperatureSlope("body", body, t))
                    .as("start at %s s", t)
                    .isCloseTo(Math.exp(-m * RATE * t), within(2e-4));
        }
        assertThat(slopes.temperatureSlope("body", body, 0)).isEqualTo(1);
    }

    @Test
    void aChangeThatTakesAThirdOfTheHeatTakesAThirdOfTheSlope() {
        StateChange third = state -> {
            double taken = state.enthalpyJ(body) / 3;
            state.set(body, state.enthalpyJ(body) - taken);
            state.bring("poured off", "liquid", "body", "glass", taken);
        };
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(1e-7)
                .solve(List.of(new Phase(0, cooled(280)), new Phase(CHANGED_S, cooled(280), List.of(third))), END_S);
        Sensitivity slopes = Sensitivity.of(run, List.of("film"), List.of(body));
        assertThat(slopes.temperatureSlope("body", body, END_S))
                .isCloseTo(2 * Math.exp(-RATE * END_S) / 3, within(1e-4));
        double before = 280 + 20 * Math.exp(-RATE * CHANGED_S);
        double after = 273.15 + (before - 273.15) * 2 / 3;
        double late = END_S - CHANGED_S;
        double slope = Math.exp(-RATE * late)
                * (-20 * RATE * CHANGED_S * Math.exp(-RATE * CHANGED_S) * 2 / 3 - (after - 280) * RATE * late);
        assertThat(slopes.temperatureSlope("film", body, END_S)).isCloseTo(slope, within(1e-3));
        assertThat(run.ledger(END_S).closure()).isLessThan(1e-9);
    }

    /** A hub with five arms: the unknowns change places for a narrow matrix. */
    @Test
    void startsActAsTheMatrixExponentialSays() {
        int size = 6;
        double[] capacity = {900, 300, 450, 700, 1200, 200};
        double[] conductance = {0.7, 1.1, 2.3, 0.4, 3.1};
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            nodes.add(Node.sensible("node " + i, capacity[i], 280 + 3 * i));
        }
        List<Path> paths = new ArrayList<>();
        // C^(1/2) T obeys x' = −S x with symmetric S: Apache Commons Math gives its eigenvalues.
        RealMatrix symmetric = new Array2DRowRealMatrix(size, size);
        for (int i = 1; i < size; i++) {
            double g = conductance[i - 1];
            paths.add(DirectPath.of("arm " + i, nodes.get(0), nodes.get(i), "conduction", HeatLaw.conductance(g)));
            symmetric.addToEntry(0, 0, g / capacity[0]);
            symmetric.addToEntry(i, i, g / capacity[i]);
            symmetric.addToEntry(0, i, -g / Math.sqrt(capacity[0] * capacity[i]));
            symmetric.addToEntry(i, 0, -g / Math.sqrt(capacity[0] * capacity[i]));
        }
        double endS = 600;
        EigenDecomposition eigen = new EigenDecomposition(symmetric);
        RealMatrix decay = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            decay.setEntry(i, i, Math.exp(-eigen.getRealEigenvalue(i) * endS));
        }
        RealMatrix after = eigen.getV().multiply(decay).multiply(eigen.getVT());
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-8).solve(Network.of(nodes, paths), endS);
        Sensitivity slopes = Sensitivity.of(run, List.of(), nodes);
        for (int from = 0; from < size; from++) {
            double total = 0;
            for (int to = 0; to < size; to++) {
                double slope = slopes.temperatureSlope("node " + from, nodes.get(to), endS);
                double expected = after.getEntry(to, from) * Math.sqrt(capacity[from] / capacity[to]);
                assertThat(slope).as("%d on %d", from, to).isCloseTo(expected, within(1e-4));
                total += capacity[to] * slope;
            }
            // First law of thermodynamics: a joule given is a joule kept.
            assertThat(total).isCloseTo(capacity[from], within(1e-9 * capacity[from]));
        }
    }

    @Test
    void slopesOfMeltingAreThoseOfRunsFromOtherStarts() {
        double endS = 3000;
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 295);
        NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-8);
        Sensitivity slopes = Sensitivity.of(solver.solve(problem.network(), endS), List.of(), List.of(problem.water()));
        double step = 0.01;
        MeltingProblem warmer = MeltingProblem.of(0.3, 1, 295 + step);
        MeltingProblem colder = MeltingProblem.of(0.3, 1, 295 - step);
        Trajectory above = solver.solve(warmer.network(), endS);
        Trajectory below = solver.solve(colder.network(), endS);
        for (double t : new double[] {500, 1500, endS}) {
            double difference =
                    (above.temperatureK(warmer.water(), t) - below.temperatureK(colder.water(), t)) / (2 * step);
            assertThat(slopes.temperatureSlope("water", problem.water(), t)).isCloseTo(difference, within(1e-3));
        }
    }

    @Test
    void anUnknownParameterIsRefused() {
        Trajectory run = NetworkSolver.standard().solve(cooled(280), 10);
        Sensitivity slopes = Sensitivity.of(run, List.of("film"), List.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> slopes.temperatureSlope("nobody's", body, 1))
                .withMessageContaining("nobody's");
    }
}
