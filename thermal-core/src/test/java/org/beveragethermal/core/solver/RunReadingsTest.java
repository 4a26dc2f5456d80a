/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.materials.liquid.Water;
import org.junit.jupiter.api.Test;

/** Readings of a run and their slopes, against closed forms and differences along the run's own steps. */
class RunReadingsTest {

    private static final double[] TIMES =
            IntStream.rangeClosed(0, 300).mapToDouble(i -> 5 * i).toArray();
    private static final double END_S = 1500;
    private static final double CHANGED_S = 400;

    private final Node body = Node.sensible("body", 1000, 300);

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
        double a = 2.0 / 1000;
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(1e-5)
                .withMultipliers(Map.of("film", m))
                .solve(List.of(new Phase(0, cooled(280)), new Phase(CHANGED_S, cooled(290))), END_S);
        RunReadings readings = RunReadings.of(run, List.of(body), List.of(1.0));
        double[] temperatures = readings.temperaturesK(TIMES);
        double[] slopes = readings.slopes(List.of("film"), TIMES)[0];
        double changed = 280 + 20 * Math.exp(-m * a * CHANGED_S);
        double slopeChanged = -20 * a * CHANGED_S * Math.exp(-m * a * CHANGED_S);
        for (int i = 0; i < TIMES.length; i++) {
            double t = TIMES[i];
            double late = t - CHANGED_S;
            double e = Math.exp(-m * a * (late < 0 ? t : late));
            double expected = late < 0 ? 280 + 20 * e : 290 + (changed - 290) * e;
            double slope = late < 0 ? -20 * a * t * e : slopeChanged * e - (changed - 290) * a * late * e;
            assertThat(temperatures[i]).isCloseTo(expected, within(2e-5));
            assertThat(slopes[i]).isCloseTo(slope, within(2e-5));
        }
    }

    @Test
    void readingsAreThoseOfTheRun() {
        Trajectory run = NetworkSolver.standard()
                .solve(List.of(new Phase(0, cooled(280)), new Phase(CHANGED_S, cooled(290))), END_S);
        double[] temperatures = RunReadings.of(run, List.of(body), List.of(1.0)).temperaturesK(TIMES);
        for (int i = 0; i < TIMES.length; i++) {
            assertThat(temperatures[i]).isEqualTo(run.temperatureK(body, TIMES[i]));
        }
    }

    /** Water in two parts and a wall, laws that bend, air that turns at a knot, and mixing on the way. */
    @Test
    void slopesAgreeWithDifferencesAlongTheSteps() {
        Node low = Node.of("low", LiquidStore.ofMass(Water.liquid(), 0.2), 275);
        Node high = Node.of("high", LiquidStore.ofMass(Water.liquid(), 0.3), 297);
        Node wall = Node.sensible("wall", 150, 290);
        Boundary air = Boundary.varying(
                "air", TimeFunction.linear(new double[] {0, 700, END_S}, new double[] {310, 270, 300}));
        HeatLaw bent = HeatLaw.of((from, to) -> 0.5 * (from - to) * Math.pow(1 + (from - to) * (from - to), 0.125));
        Network network = Network.of(
                List.of(low, high, wall),
                List.of(
                        DirectPath.of("low", low, wall, "convection", bent).scaledBy("inside"),
                        DirectPath.of("high", high, wall, "convection", bent).scaledBy("inside"),
                        DirectPath.of("air", wall, air, "convection", bent).scaledBy("outside")));
        Mixing mixing = new Mixing(List.of(low, high), List.of(0.2, 0.3));
        List<Phase> phases = List.of(new Phase(0, network), new Phase(CHANGED_S, network, List.of(mixing)));
        List<String> names = List.of("inside", "outside");
        double[] at = {1.2, 0.7};
        NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-4);
        Trajectory run = solver.withMultipliers(Map.of("inside", at[0], "outside", at[1]))
                .solve(phases, END_S);
        List<Node> drink = List.of(low, high);
        List<Double> shares = List.of(0.4, 0.6);
        double[][] slopes = RunReadings.of(run, drink, shares).slopes(names, TIMES);
        for (int k = 0; k < 2; k++) {
            double step = 1e-4 * at[k];
            double[][] moved = new double[2][];
            for (int side = 0; side < 2; side++) {
                double[] there = at.clone();
                there[k] += side == 0 ? step : -step;
                Trajectory along = solver.withMultipliers(Map.of("inside", there[0], "outside", there[1]))
                        .alongStepsOf(run)
                        .solve(phases, END_S);
                moved[side] = RunReadings.of(along, drink, shares).temperaturesK(TIMES);
            }
            double largest = Arrays.stream(slopes[k]).map(Math::abs).max().orElseThrow();
            for (int i = 0; i < TIMES.length; i++) {
                double difference = (moved[0][i] - moved[1][i]) / (2 * step);
                assertThat(slopes[k][i])
                        .as(names.get(k) + " at " + TIMES[i])
                        .isCloseTo(difference, within(1e-4 * largest));
            }
        }
    }

    /** Water that takes melt on, warmed through a wall: its temperature follows its mass too. */
    @Test
    void slopesWithAmountsAgreeWithDifferencesAlongTheSteps() {
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 290);
        Boundary room = Boundary.constant("room", 303);
        Network network = Network.of(
                List.of(problem.ice(), problem.water()),
                List.of(
                        problem.melting(),
                        DirectPath.of("gain", room, problem.water(), "convection", HeatLaw.conductance(0.7))
                                .scaledBy("gain")));
        NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-5).withMultipliers(Map.of("gain", 2.0));
        Trajectory run = solver.solve(network, END_S);
        List<Node> both = List.of(problem.water(), problem.ice());
        List<Double> shares = List.of(0.7, 0.3);
        double[] slopes = RunReadings.of(run, both, shares).slopes(List.of("gain"), TIMES)[0];
        double[] temperatures = RunReadings.of(run, both, shares).temperaturesK(TIMES);
        double step = 1e-4;
        double[] above = RunReadings.of(
                        RunReadings.again(run, solver.alongStepsOf(run), Map.of("gain", 2 + step)), both, shares)
                .temperaturesK(TIMES);
        double[] below = RunReadings.of(
                        RunReadings.again(run, solver.alongStepsOf(run), Map.of("gain", 2 - step)), both, shares)
                .temperaturesK(TIMES);
        double largest = Arrays.stream(slopes).map(Math::abs).max().orElseThrow();
        for (int i = 0; i < TIMES.length; i++) {
            assertThat(slopes[i]).isCloseTo((above[i] - below[i]) / (2 * step), within(1e-3 * largest));
            assertThat(temperatures[i])
                    .isCloseTo(
                            0.7 * run.temperatureK(problem.water(), TIMES[i])
                                    + 0.3 * run.temperatureK(problem.ice(), TIMES[i]),
                            within(1e-12 * 300));
        }
    }

    @Test
    void badQuestionsAreRefused() {
        Trajectory run = NetworkSolver.standard().solve(cooled(280), END_S);
        RunReadings readings = RunReadings.of(run, List.of(body), List.of(1.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> readings.temperaturesK(new double[] {10, 5}))
                .withMessageContaining("time of reading 1: 5.0 s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> readings.temperaturesK(new double[] {END_S + 1}))
                .withMessageContaining("expected ascending times from 0 s to 1500.0 s");
        assertThatIllegalArgumentException().isThrownBy(() -> RunReadings.of(run, List.of(), List.of()));
        for (double share : new double[] {Double.NaN, -0.1, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> RunReadings.of(
                            run,
                            List.of(run.legs()
                                    .get(0)
                                    .network()
                                    .network()
                                    .nodes()
                                    .get(0)),
                            List.of(share)))
                    .withMessageContaining("share");
        }
        Node other = Node.sensible("other", 1, 300);
        assertThatIllegalArgumentException().isThrownBy(() -> RunReadings.of(run, List.of(other), List.of(1.0)));
        assertThat(readings.slopes(List.of("nobody's"), TIMES)[0]).containsOnly(0);
    }
}
