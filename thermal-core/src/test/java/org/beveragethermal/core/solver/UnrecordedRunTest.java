/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Runs without a record against closed forms and against recorded runs. */
final class UnrecordedRunTest {

    private static final double ZERO = 273.15;
    private static final double CAPACITY = 3500;
    private static final double TAU_S = 1800;
    private static final double START_K = ZERO + 22;
    private static final double AIR_K = ZERO + 4;

    private final Node body = Node.sensible("body", CAPACITY, START_K);

    /** One body under a constant conductance: T = T_air + (T₀ − T_air) e^(−t/τ). */
    private PreparedNetwork body() {
        return Network.of(
                        List.of(body),
                        List.of(DirectPath.of(
                                "film",
                                body,
                                Boundary.constant("air", AIR_K),
                                "convection",
                                HeatLaw.conductance(CAPACITY / TAU_S))))
                .prepare();
    }

    private static NetworkSolver solver(Method method) {
        return NetworkSolver.standard().withToleranceK(1e-6).withMethod(method);
    }

    @ParameterizedTest
    @EnumSource
    void timeOfAnExponentialIsFound(Method method) {
        UnrecordedRun run = solver(method).unrecorded(body());
        double expected = TAU_S * Math.log((START_K - AIR_K) / (ZERO + 9 - AIR_K));
        assertThat(run.timeToReach(body, ZERO + 9, 1e5).orElseThrow()).isCloseTo(expected, within(0.002));
        assertThat(run.steps()).isPositive().isLessThanOrEqualTo(run.stepsTried());
        // Nothing is left over from the call before.
        assertThat(run.timeToReach(body, ZERO + 9, 1e5).orElseThrow())
                .isEqualTo(solver(method)
                        .unrecorded(body())
                        .timeToReach(body, ZERO + 9, 1e5)
                        .orElseThrow());
    }

    /** Surfaces are guessed from those before; of a run before nothing may be left. */
    @ParameterizedTest
    @EnumSource
    void aBottleTakesAsLongWhateverWasRunBefore(Method method) {
        Network bottle = bottle();
        Node drink = bottle.nodes().get(0);
        double expected = NetworkSolver.standard()
                .withMethod(method)
                .unrecorded(bottle.prepare())
                .timeToReach(drink, ZERO + 10, 1e5)
                .orElseThrow();
        UnrecordedRun run = NetworkSolver.standard().withMethod(method).unrecorded(bottle.prepare());
        assertThat(run.temperatureK(drink)).isCloseTo(START_K, within(1e-9));
        for (int i = 0; i < 3; i++) {
            assertThat(run.timeToReach(drink, ZERO + 10, 1e5)).hasValue(expected);
            run.runTo(60 + 1000 * i);
        }
    }

    private static Network bottle() {
        var paths = Lumped.of(Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22)))
                .expose(in(Refrigerator.at(celsius(5)), Duration.ofSeconds(1)))
                .trajectory()
                .paths(0);
        List<Node> nodes = paths.stream()
                .flatMap(path -> path.ends().stream())
                .filter(Node.class::isInstance)
                .map(Node.class::cast)
                .distinct()
                .toList();
        return Network.of(nodes, paths);
    }

    @ParameterizedTest
    @EnumSource
    void neverAndAtOnceAreAnswers(Method method) {
        UnrecordedRun run = solver(method).unrecorded(body());
        assertThat(run.timeToReach(body, ZERO + 3.9, 1e5)).isEqualTo(OptionalDouble.empty());
        assertThat(run.timeToReach(body, ZERO + 9, 60)).isEqualTo(OptionalDouble.empty());
        assertThat(run.timeToReach(body, START_K, 60)).isEqualTo(OptionalDouble.of(0));
    }

    @ParameterizedTest
    @EnumSource
    void stateAtATimeIsThatOfTheExponential(Method method) {
        UnrecordedRun run = solver(method).unrecorded(body());
        run.runTo(2400);
        double expected = AIR_K + (START_K - AIR_K) * Math.exp(-2400 / TAU_S);
        assertThat(run.temperatureK(body)).isCloseTo(expected, within(2e-5));
        double[] state = new double[1];
        run.state(state);
        assertThat(state[0]).isCloseTo(CAPACITY * (expected - ZERO), within(0.1));
        run.startAt(body, ZERO + 12);
        run.runTo(2400);
        assertThat(run.temperatureK(body)).isCloseTo(AIR_K + 8 * Math.exp(-2400 / TAU_S), within(2e-5));
        run.startFrom(new double[] {CAPACITY * 14});
        assertThat(run.temperatureK(body)).isCloseTo(ZERO + 14, within(1e-9));
        run.runTo(2400);
        assertThat(run.temperatureK(body)).isCloseTo(AIR_K + 10 * Math.exp(-2400 / TAU_S), within(2e-5));
        run.startAt(body, ZERO + 18);
        assertThat(run.temperatureK(body)).isCloseTo(ZERO + 18, within(1e-9));
        // What was looked for before is not looked for any more.
        assertThat(run.timeToReach(body, ZERO + 12, 1e5)).isPresent();
        run.runTo(2400);
        assertThat(run.temperatureK(body)).isCloseTo(AIR_K + 14 * Math.exp(-2400 / TAU_S), within(2e-5));
    }

    /** Air that bends at knots: the run ends a step at each of them, and stops at what it finds before, between and after. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXPONENTIAL")
    void knotsOfTheAirAreKept(Method method) {
        Boundary air = Boundary.varying(
                "air", TimeFunction.linear(new double[] {0, 900, 1800, 9000}, new double[] {275, 300, 280, 290}));
        Network network = Network.of(
                List.of(body), List.of(DirectPath.of("film", body, air, "convection", HeatLaw.conductance(4))));
        Trajectory recorded = NetworkSolver.standard().withToleranceK(1e-8).solve(network, 9000);
        UnrecordedRun run = solver(method).unrecorded(network.prepare());
        for (double timeS : new double[] {300, 1300, 5000}) {
            double targetK = recorded.temperatureK(body, timeS);
            EventAnswer answer = recorded.first(RunEvent.temperatureReaches(body, targetK), 0);
            double expected = ((EventAnswer.Reached) answer).timeS();
            assertThat(run.timeToReach(body, targetK, 9000).orElseThrow()).isCloseTo(expected, within(0.05));
        }
        for (double timeS : new double[] {900, 1300, 1800, 5000}) {
            run.runTo(timeS);
            assertThat(run.temperatureK(body)).isCloseTo(recorded.temperatureK(body, timeS), within(1e-4));
        }
    }

    /** T = T₀ + A sin ωt, with long steps: the passage close below the top is found though the step ends below it again. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXPONENTIAL")
    void noPassageIsMissedThatTurnsWithinAStep(Method method) {
        double omega = 2 * Math.PI / 1000;
        Node swing = Node.sensible("swing", 1, 300);
        Boundary clock = Boundary.varying("clock", new Sinusoid(300, 1, omega));
        Network network =
                Network.of(List.of(swing), List.of(DirectPath.of("drive", clock, swing, "work", (from, to, out) -> {
                    out.watts = omega * 10 * (from - 300);
                    out.perFromKelvin = omega * 10;
                    out.perToKelvin = 0;
                })));
        NetworkSolver rough = NetworkSolver.standard().withToleranceK(1e-3).withMethod(method);
        UnrecordedRun run = rough.unrecorded(network.prepare());
        // 10 (1 − cos ωt) K above the start, at most 20 K.
        for (double below : new double[] {0.02, 0.1, 0.5, 2}) {
            double expected = Math.acos(below / 10 - 1) / omega;
            double slack = 0.01 / (10 * omega * Math.sin(omega * expected)) + 0.05;
            assertThat(run.timeToReach(swing, 320 - below, 1000).orElseThrow()).isCloseTo(expected, within(slack));
        }
    }

    /** The temperature of water that takes melt on follows its mass too. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXPONENTIAL")
    void waterWithMeltIsFoundAsInARecordedRun(Method method) {
        MeltingProblem problem = MeltingProblem.of(0.3, 1, 295);
        Node water = problem.water();
        Trajectory recorded = NetworkSolver.standard().withToleranceK(1e-8).solve(problem.network(), 20_000);
        UnrecordedRun run = solver(method).unrecorded(problem.network().prepare());
        for (double timeS : new double[] {100, 2000, 9000}) {
            double targetK = recorded.temperatureK(water, timeS);
            assertThat(run.timeToReach(water, targetK, 20_000).orElseThrow()).isCloseTo(timeS, within(0.5));
            assertThat(((EventAnswer.Reached) recorded.first(RunEvent.temperatureFallsTo(water, targetK), 0)).timeS())
                    .isCloseTo(timeS, within(1e-2));
        }
        assertThat(run.timeToReach(water, 295, 100)).hasValue(0);
        run.startAt(water, 300);
        assertThat(run.temperatureK(water)).isCloseTo(300, within(1e-9));
        run.runTo(2000);
        MeltingProblem warmer = MeltingProblem.of(0.3, 1, 300);
        assertThat(run.temperatureK(water))
                .isCloseTo(
                        NetworkSolver.standard()
                                .withToleranceK(1e-8)
                                .solve(warmer.network(), 2000)
                                .temperatureK(warmer.water(), 2000),
                        within(1e-4));
    }

    /** Warmed by a short warm spell, then cold again: both passages lie between knots, the first counts. */
    @Test
    void firstOfTwoPassagesIsFound() {
        Node cold = Node.sensible("cold", 1000, ZERO + 4);
        Boundary air = Boundary.varying("air", new Sinusoid(ZERO + 10, 8, 2 * Math.PI / 7200));
        Network network = Network.of(
                List.of(cold), List.of(DirectPath.of("film", cold, air, "convection", HeatLaw.conductance(1.5))));
        Trajectory recorded = NetworkSolver.standard().withToleranceK(1e-7).solve(network, 20_000);
        double expected =
                ((EventAnswer.Reached) recorded.first(RunEvent.temperatureReaches(cold, ZERO + 12), 0)).timeS();
        UnrecordedRun run = NetworkSolver.standard().withToleranceK(1e-7).unrecorded(network.prepare());
        assertThat(run.timeToReach(cold, ZERO + 12, 20_000).orElseThrow()).isCloseTo(expected, within(0.01));
    }

    @Test
    void networksOfManyLinksAgreeWithRecordedRuns() {
        // Chains, cross links, a law and a node of another kind: diagonals, scattered links and the rest.
        java.util.SplittableRandom random = new java.util.SplittableRandom(20260127);
        for (int size = 2; size <= 12; size++) {
            PassiveNetworks.Drawn drawn = PassiveNetworks.draw(Math.min(8, size), random.split());
            Trajectory recorded = NetworkSolver.standard().withToleranceK(1e-6).solve(drawn.network(), 3000);
            for (Method method : List.of(Method.ORDER_4, Method.ORDER_4_LIGHT, Method.ORDER_3)) {
                UnrecordedRun run = solver(method).unrecorded(drawn.network().prepare());
                run.runTo(3000);
                for (Node node : drawn.network().nodes()) {
                    assertThat(run.temperatureK(node)).isCloseTo(recorded.temperatureK(node, 3000), within(1e-3));
                }
            }
        }
    }

    @Test
    void nonsenseIsRefused() {
        UnrecordedRun run = NetworkSolver.standard().unrecorded(body());
        assertThatThrownBy(() -> run.timeToReach(body, Double.NaN, 60)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> run.timeToReach(body, 280, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> run.runTo(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> run.startFrom(new double[2])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> run.startFrom(new double[] {Double.NaN})).isInstanceOf(IllegalArgumentException.class);
        Node stranger = Node.sensible("stranger", 1, 280);
        assertThatThrownBy(() -> run.temperatureK(stranger)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> run.startAt(stranger, 280)).isInstanceOf(IllegalArgumentException.class);
    }
}
