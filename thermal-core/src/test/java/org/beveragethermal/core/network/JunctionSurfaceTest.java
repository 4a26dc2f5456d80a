/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.junit.jupiter.api.Test;

/** Surfaces with heat of their own and with films that short-circuit them, against sums worked by hand. */
final class JunctionSurfaceTest {

    private static final double SIGMA = 5.670374419e-8;
    private final Node body = Node.sensible("body", 1000, 290);
    private final Boundary air = Boundary.constant("air", 300);
    private final Boundary sun = Boundary.constant("sun", 290);

    private static HeatLaw constant(double watts) {
        return (from, to, out) -> {
            out.watts = watts;
            out.perFromKelvin = 0;
            out.perToKelvin = 0;
        };
    }

    private static PathEvaluation at(JunctionPath path, double... temperaturesK) {
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, temperaturesK);
        return e;
    }

    @Test
    void constantHeatCarriesTheSurfaceBeyondItsEnds() {
        // 3 W/K to the body and 2 W/K to the air: T = (q + 3 · 290 + 2 · 300)/5.
        for (double watts : new double[] {-600, -30, -1e-6, 0, 12, 25, 400, 20_000}) {
            JunctionPath path = JunctionPath.of(
                    "skin",
                    Link.of(body, "conduction", HeatLaw.conductance(3)),
                    Link.of(air, "convection", HeatLaw.conductance(2)),
                    Link.of(sun, "sunlight", constant(watts)));
            PathEvaluation e = at(path, 290, 300, 290);
            double surface = (watts + 3 * 290 + 2 * 300) / 5;
            assertThat(path.surfaceTemperatureK(e)).isCloseTo(surface, within(1e-8));
            // What the body gives goes to the air and to the sun; the sun's account is what it gives, turned round.
            assertThat(e.flowOf(0)).isCloseTo(2 * (surface - 300), within(1e-7));
            assertThat(e.flowOf(1)).isEqualTo(-watts);
            assertThat(e.derivativeOf(0, 0)).isCloseTo(2 * 3 / 5.0, within(1e-12));
            assertThat(e.derivativeOf(0, 1)).isCloseTo(2 * (2 / 5.0 - 1), within(1e-12));
        }
    }

    @Test
    void endsOfOneTemperatureAreNoObstacle() {
        JunctionPath path = JunctionPath.of(
                "skin", Link.of(body, "conduction", HeatLaw.conductance(4)), Link.of(air, "sunlight", constant(100)));
        assertThat(path.surfaceTemperatureK(at(path, 290, 290))).isCloseTo(315, within(1e-9));
        JunctionPath passive = JunctionPath.of(
                "passive",
                Link.of(body, "conduction", HeatLaw.conductance(4)),
                Link.of(air, "convection", HeatLaw.conductance(1)));
        PathEvaluation e = at(passive, 290, 290);
        assertThat(passive.surfaceTemperatureK(e)).isEqualTo(290);
        assertThat(e.flowOf(0)).isZero();
    }

    @Test
    void radiatingSkinInTheSunIsFoundInFewEvaluations() {
        int[] count = {0};
        HeatLaw radiation = (from, to, out) -> {
            count[0]++;
            out.watts = SIGMA * (Math.pow(from, 4) - Math.pow(to, 4));
            out.perFromKelvin = 4 * SIGMA * Math.pow(from, 3);
            out.perToKelvin = -4 * SIGMA * Math.pow(to, 3);
        };
        JunctionPath path =
                JunctionPath.of("skin", Link.of(air, "radiation", radiation), Link.of(sun, "sunlight", constant(1000)));
        double surface = path.surfaceTemperatureK(at(path, 300, 290));
        // Stefan and Boltzmann: σ T⁴ = σ 300⁴ + 1000 W.
        assertThat(surface).isCloseTo(Math.pow(Math.pow(300, 4) + 1000 / SIGMA, 0.25), within(1e-7));
        assertThat(count[0]).isLessThan(40);
    }

    @Test
    void multiplierOfSunlightHasTheRightSlope() {
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(3)),
                Link.of(air, "convection", HeatLaw.conductance(2)),
                Link.of(sun, "sunlight", constant(400)).scaledBy("shade"));
        PathEvaluation e = new PathEvaluation(path);
        e.setMultiplier(0, 0.5);
        e.evaluate(path, 0, new double[] {290, 300, 290});
        // d flow to the air / d factor = 2 W/K · 400 W / 5 W/K.
        assertThat(e.multiplierDerivativeOf(0, 0)).isCloseTo(160, within(1e-9));
        assertThat(e.multiplierDerivativeOf(1, 0)).isCloseTo(-400, within(1e-9));
    }

    @Test
    void heatWithNowhereToGoIsRefused() {
        JunctionPath path = JunctionPath.of(
                "closed", Link.of(body, "sunlight", constant(5)), Link.of(air, "more sunlight", constant(7)));
        assertThatIllegalStateException().isThrownBy(() -> at(path, 290, 300)).withMessageContaining("junction closed");
        JunctionPath glowing = JunctionPath.of(
                "glowing", Link.of(body, "conduction", HeatLaw.conductance(1e-3)), Link.of(air, "lamp", constant(500)));
        assertThatIllegalStateException()
                .isThrownBy(() -> at(glowing, 290, 300))
                .withMessageContaining("junction glowing");
    }

    @Test
    void runWithSunlightEndsAtTheBalance() {
        Network network = Network.of(
                List.of(body),
                List.of(JunctionPath.of(
                        "skin",
                        Link.of(body, "conduction", HeatLaw.conductance(3)),
                        Link.of(air, "convection", HeatLaw.conductance(2)),
                        Link.of(sun, "sunlight", constant(100)))));
        Trajectory run = NetworkSolver.standard().solve(network, 20_000);
        // All sunlight leaves to the air: 100 W over 2 W/K; on the way e^(−t (6/5)/1000).
        assertThat(run.temperatureK(body, 20_000)).isCloseTo(350, within(2e-3));
        assertThat(run.temperatureK(body, 500)).isCloseTo(350 - 60 * Math.exp(-0.6), within(2e-3));
        assertThat(run.ledger(20_000).closure()).isLessThan(1e-9);
        assertThat(run.ledger(500).heatInto("sun")).isCloseTo(-50_000, within(1e-3));
    }

    @Test
    void filmThatShortCircuitsTheSurfaceCostsNothing() {
        // The surface is at the air's temperature: e^(−t 3/1000).
        for (double film : new double[] {1e2, 1e6, 1e9, 1e12, 1e15}) {
            for (boolean first : new boolean[] {true, false}) {
                Link stiff = Link.of(air, "convection", HeatLaw.conductance(film));
                Link plain = Link.of(body, "conduction", HeatLaw.conductance(3));
                JunctionPath path =
                        first ? JunctionPath.of("skin", stiff, plain) : JunctionPath.of("skin", plain, stiff);
                Trajectory run = NetworkSolver.standard().solve(Network.of(List.of(body), List.of(path)), 2000);
                double rate = 1 / (1 / 3.0 + 1 / film) / 1000;
                assertThat(run.temperatureK(body, 700))
                        .as("film %s W/K", film)
                        .isCloseTo(300 - 10 * Math.exp(-700 * rate), within(2e-3));
                assertThat(run.stepsTried()).isLessThan(60);
                assertThat(run.ledger(2000).closure()).isLessThan(1e-9);
            }
        }
    }

    @Test
    void derivativesOfAShortCircuitKeepTheirDigits() {
        JunctionPath path = JunctionPath.of(
                "skin",
                Link.of(body, "conduction", HeatLaw.conductance(3)),
                Link.of(air, "convection", HeatLaw.conductance(1e14)),
                Link.of(sun, "radiation", HeatLaw.conductance(0.5)));
        PathEvaluation e = at(path, 310, 300, 290);
        assertThat(e.flowOf(0)).isCloseTo(30 - 5, within(1e-9));
        assertThat(e.derivativeOf(0, 0)).isCloseTo(3, within(1e-9));
        assertThat(e.derivativeOf(0, 1)).isCloseTo(-3.5, within(1e-9));
        assertThat(e.derivativeOf(0, 2)).isCloseTo(0.5, within(1e-9));
    }
}
