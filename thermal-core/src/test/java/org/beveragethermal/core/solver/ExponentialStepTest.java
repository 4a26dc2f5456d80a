/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.junit.jupiter.api.Test;

/** The exponential method: its order, what it solves exactly, what it is refused for, and that calls do not hang on each other. */
final class ExponentialStepTest {

    private static final double COLD_K = 275;
    private static final double START_K = 300;

    private final Node inner = Node.sensible("inner", 3000, START_K);
    private final Node outer = Node.sensible("outer", 400, START_K);
    private final Boundary air = Boundary.constant("air", COLD_K);

    private PreparedNetwork network(HeatLaw inside, HeatLaw outside) {
        return Network.of(
                        List.of(inner, outer),
                        List.of(
                                DirectPath.of("inside", inner, outer, "convection", inside),
                                DirectPath.of("outside", outer, air, "convection", outside)))
                .prepare();
    }

    /** Heat that grows with the square of the difference: smooth where it is positive. */
    private static HeatLaw bending(double linear, double square) {
        return (from, to, out) -> {
            double drive = from - to;
            out.watts = drive * (linear + square * drive);
            out.perFromKelvin = linear + 2 * square * drive;
            out.perToKelvin = -out.perFromKelvin;
        };
    }

    private double innerAfter(PreparedNetwork network, double endS, int steps) {
        ExponentialStep step = new ExponentialStep(network, network.newWorkspace(Map.of()));
        step.start(network.initialState());
        double h = endS / steps;
        for (int i = 0; i < steps; i++) {
            assertThat(step.begin(i * h)).isTrue();
            assertThat(step.attempt(i * h, h, endS)).isFinite();
            step.accept();
        }
        return 273.15 + step.liveState()[network.offset(inner)] / 3000;
    }

    /** Order 4: half the step, a sixteenth of the error. */
    @Test
    void errorFallsWithTheFourthPowerOfTheStep() {
        PreparedNetwork network = network(bending(2, 0.4), bending(1, 0.05));
        double reference = NetworkSolver.standard()
                .withToleranceK(1e-10)
                .solve(network.network(), 600)
                .temperatureK(inner, 600);
        double before = Math.abs(innerAfter(network, 600, 8) - reference);
        for (int steps = 16; steps <= 64; steps *= 2) {
            double now = Math.abs(innerAfter(network, 600, steps) - reference);
            assertThat(Math.log(before / now) / Math.log(2))
                    .as(steps + " steps")
                    .isBetween(3.6, 5.2);
            before = now;
        }
    }

    /** Two nodes and constant conductances: a sum of two exponentials, whatever the step. */
    @Test
    void whatIsLinearIsExactInOneStep() {
        double g = 4;
        double k = 1.5;
        PreparedNetwork network = network(HeatLaw.conductance(g), HeatLaw.conductance(k));
        double a = -g / 3000;
        double b = g / 3000;
        double c = g / 400;
        double d = -(g + k) / 400;
        double middle = 0.5 * (a + d);
        double spread = Math.sqrt(middle * middle - (a * d - b * c));
        double fast = middle - spread;
        double slow = middle + spread;
        // Excess (1, 1) at the start, in eigenvectors (b, λ − a).
        double v = slow - a;
        double w = fast - a;
        double ofSlow = (w - b) / (b * (w - v));
        double ofFast = (b - v) / (b * (w - v));
        for (double endS : new double[] {1, 100, 3000, 20_000}) {
            double excess = b * (ofSlow * Math.exp(slow * endS) + ofFast * Math.exp(fast * endS));
            assertThat(innerAfter(network, endS, 1))
                    .as(endS + " s")
                    .isCloseTo(COLD_K + (START_K - COLD_K) * excess, within(1e-9));
        }
    }

    @Test
    void callsDoNotHangOnEachOther() {
        PreparedNetwork network = network(bending(2, 0.4), bending(1, 0.05));
        NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-3).withMethod(Method.EXPONENTIAL);
        UnrecordedRun again = solver.unrecorded(network);
        for (double target : new double[] {290, 280, 299.9, 276, 290}) {
            double fresh =
                    solver.unrecorded(network).timeToReach(inner, target, 1e5).orElseThrow();
            assertThat(again.timeToReach(inner, target, 1e5)).hasValue(fresh);
        }
        again.runTo(500);
        double there = again.temperatureK(inner);
        again.timeToReach(inner, 290, 1e5);
        again.runTo(500);
        assertThat(again.temperatureK(inner)).isEqualTo(there);
    }

    /** Its steps are longer than those of the other methods; what it finds is what they find. */
    @Test
    void timesAreThoseOfARecordedRun() {
        PreparedNetwork network = network(bending(2, 0.4), bending(1, 0.05));
        Trajectory recorded = NetworkSolver.standard().withToleranceK(1e-8).solve(network.network(), 30_000);
        UnrecordedRun run = NetworkSolver.standard()
                .withToleranceK(1e-3)
                .withMethod(Method.EXPONENTIAL)
                .unrecorded(network);
        UnrecordedRun other = NetworkSolver.standard()
                .withToleranceK(1e-3)
                .withMethod(Method.ORDER_4_LIGHT)
                .unrecorded(network);
        for (Node node : List.of(inner, outer)) {
            for (double target = 298; target > 277; target -= 3) {
                double expected =
                        ((EventAnswer.Reached) recorded.first(RunEvent.temperatureReaches(node, target), 0)).timeS();
                assertThat(run.timeToReach(node, target, 30_000).orElseThrow()).isCloseTo(expected, within(0.2));
            }
        }
        run.runTo(10_000);
        other.runTo(10_000);
        assertThat(run.steps()).isLessThan(other.steps());
    }

    /** The wall falls below the core and comes back: the way back lies in the same step as the way down, and the first passage counts. */
    @Test
    void turnsWithinAStepAreSeen() {
        Node hot = Node.sensible("hot", 5000, 320);
        Node wall = Node.sensible("wall", 200, 280);
        Boundary room = Boundary.constant("room", 290);
        PreparedNetwork network = Network.of(
                        List.of(hot, wall),
                        List.of(
                                DirectPath.of("inside", hot, wall, "conduction", HeatLaw.conductance(3)),
                                DirectPath.of("outside", wall, room, "conduction", HeatLaw.conductance(1))))
                .prepare();
        Trajectory recorded = NetworkSolver.standard().withToleranceK(1e-8).solve(network.network(), 20_000);
        double target = 305;
        double expected = ((EventAnswer.Reached) recorded.first(RunEvent.temperatureReaches(wall, target), 0)).timeS();
        UnrecordedRun run = NetworkSolver.standard()
                .withToleranceK(1e-3)
                .withMethod(Method.EXPONENTIAL)
                .unrecorded(network);
        assertThat(run.timeToReach(wall, target, 20_000).orElseThrow()).isCloseTo(expected, within(0.5));
    }

    /** One long step holds the rise of the wall, its turn and its fall; the closed form of two exponentials says when it passes. */
    @Test
    void aPassageThatTurnsWithinOneStepIsFound() {
        Node hot = Node.sensible("hot", 3000, 320);
        Node wall = Node.sensible("wall", 400, 280);
        Boundary room = Boundary.constant("room", 290);
        PreparedNetwork network = Network.of(
                        List.of(hot, wall),
                        List.of(
                                DirectPath.of("inside", hot, wall, "conduction", HeatLaw.conductance(3)),
                                DirectPath.of("outside", wall, room, "conduction", HeatLaw.conductance(2))))
                .prepare();
        Trajectory recorded = NetworkSolver.standard().withToleranceK(1e-8).solve(network.network(), 20_000);
        double top = 0;
        for (double t = 0; t < 2000; t += 1) {
            top = Math.max(top, recorded.temperatureK(wall, t));
        }
        for (double below : new double[] {0.02, 0.5, 2, 5}) {
            double target = top - below;
            double expected =
                    ((EventAnswer.Reached) recorded.first(RunEvent.temperatureReaches(wall, target), 0)).timeS();
            UnrecordedRun run = NetworkSolver.standard()
                    .withToleranceK(1e-3)
                    .withMethod(Method.EXPONENTIAL)
                    .unrecorded(network);
            assertThat(run.timeToReach(wall, target, 20_000).orElseThrow()).isCloseTo(expected, within(0.05));
        }
        ExponentialStep step = new ExponentialStep(network, network.newWorkspace(Map.of()));
        step.start(network.initialState());
        step.begin(0);
        step.attempt(0, 2000, 2000);
        double[] turns = new double[4];
        int w = network.offset(wall);
        assertThat(step.turns(w, turns)).isEqualTo(1);
        assertThat(273.15 + step.inside(w, turns[0]) / 400).isCloseTo(top, within(1e-3));
        for (double part : new double[] {0.01, 0.1, 0.3, 0.7}) {
            assertThat(273.15 + step.inside(w, part) / 400)
                    .isCloseTo(recorded.temperatureK(wall, 2000 * part), within(1e-4));
        }
    }

    @Test
    void whatItDoesNotFitIsRefused() {
        NetworkSolver solver = NetworkSolver.standard().withMethod(Method.EXPONENTIAL);
        Node third = Node.sensible("third", 10, 280);
        HeatLaw law = HeatLaw.conductance(1);
        PreparedNetwork three = Network.of(
                        List.of(inner, outer, third),
                        List.of(
                                DirectPath.of("one", inner, outer, "conduction", law),
                                DirectPath.of("two", outer, third, "conduction", law)))
                .prepare();
        assertThatThrownBy(() -> solver.unrecorded(three))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 unknowns");
        PreparedNetwork swinging = Network.of(
                        List.of(inner),
                        List.of(DirectPath.of(
                                "film", inner, Boundary.varying("air", new Sinusoid(280, 2, 1e-3)), "convection", law)))
                .prepare();
        assertThatThrownBy(() -> solver.unrecorded(swinging))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("change");
        assertThatThrownBy(() -> solver.solve(three.network(), 10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("record");
    }
}
