/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One node of time constant 600 s in air that varies, against closed forms. */
final class VaryingBoundaryTest {

    private static final double ZERO = 273.15;
    private static final double TAU = 600;
    private static final double CAPACITY = 3000;

    private static Network network(Node body, TimeFunction air) {
        return Network.of(
                List.of(body),
                List.of(DirectPath.of(
                        "film",
                        body,
                        Boundary.varying("air", air),
                        "convection",
                        HeatLaw.conductance(CAPACITY / TAU))));
    }

    private static Node body(double temperatureK) {
        return Node.sensible("body", CAPACITY, temperatureK);
    }

    @ParameterizedTest
    @CsvSource({"default, 1e-3, 2e-3", "tight, 1e-7, 1e-5"})
    void sinusoidalAir(String label, double toleranceK, double withinK) {
        double period = 3600;
        Sinusoid air = new Sinusoid(ZERO + 20, 8, 2 * Math.PI / period);
        Node body = body(air.response(TAU, 0));
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(toleranceK)
                .solve(network(body, TimeFunction.smooth(air::at)), 3 * period);
        // Fourier coefficients of the third period; sums over equidistant points are exact for a single sine.
        int samples = 360;
        double sine = 0;
        double cosine = 0;
        for (int i = 0; i < samples; i++) {
            double time = 2 * period + i * period / samples;
            double deviation = run.temperatureK(body, time) - (ZERO + 20);
            sine += 2.0 / samples * deviation * Math.sin(air.omega() * time);
            cosine += 2.0 / samples * deviation * Math.cos(air.omega() * time);
            assertThat(run.temperatureK(body, time)).isCloseTo(air.response(TAU, time), within(withinK));
        }
        double omegaTau = air.omega() * TAU;
        String source = "closed form: first-order lag, amplitude a/√(1 + ω²τ²), phase arctan ωτ";
        OutsideChecks.published("sinusoid-amplitude-" + label, source)
                .what("amplitude of a body of time constant 600 s in air of ±8 K per hour, tolerance " + toleranceK
                        + " K")
                .unit("K")
                .expected(8 / Math.sqrt(1 + omegaTau * omegaTau))
                .within(withinK)
                .check(Math.hypot(sine, cosine));
        OutsideChecks.published("sinusoid-phase-" + label, source)
                .what("phase lag of a body of time constant 600 s in air of ±8 K per hour, tolerance " + toleranceK
                        + " K")
                .unit("rad")
                .expected(Math.atan(omegaTau))
                .within(withinK / 5)
                .check(Math.atan2(-cosine, sine));
    }

    @Test
    void rampThenPlateau() {
        // On a ramp of rate r from equilibrium: T = T₀ + r (t − τ (1 − e^(−t/τ))); on the plateau an exponential.
        double rate = 10.0 / 1800;
        Node body = body(ZERO + 5);
        TimeFunction air = TimeFunction.linear(new double[] {0, 1800}, new double[] {ZERO + 5, ZERO + 15});
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-9).solve(network(body, air), 3600);
        double atEndOfRamp = 5 + rate * (1800 - TAU * (1 - Math.exp(-1800 / TAU)));
        for (double t : new double[] {100, 900, 1800}) {
            OutsideChecks.published("ramp-" + (int) t, "closed form: T = T₀ + r (t − τ (1 − exp(−t/τ)))")
                    .what("body of time constant 600 s in air that warms by 10 K in 1800 s, after " + (int) t + " s")
                    .unit("°C")
                    .expected(5 + rate * (t - TAU * (1 - Math.exp(-t / TAU))))
                    .within(1e-6)
                    .check(run.temperatureK(body, t) - ZERO);
        }
        for (double t : new double[] {1810, 2400, 3600}) {
            OutsideChecks.published("plateau-" + (int) t, "closed form: exponential after the ramp")
                    .what("body of time constant 600 s, air steady since 1800 s, after " + (int) t + " s")
                    .unit("°C")
                    .expected(15 + (atEndOfRamp - 15) * Math.exp(-(t - 1800) / TAU))
                    .within(1e-6)
                    .check(run.temperatureK(body, t) - ZERO);
        }
    }

    @Test
    void stepsEndExactlyAtKnots() {
        double[] knots = {0, 433.3, 1000.1, 1000.2, 2718.28};
        TimeFunction air =
                TimeFunction.linear(knots, new double[] {ZERO + 5, ZERO + 30, ZERO + 2, ZERO + 25, ZERO + 4});
        List<Double> stepStarts = new ArrayList<>();
        // The rate is asked for once per step, at its start.
        TimeFunction watched = new TimeFunction() {
            @Override
            public double at(double timeS) {
                return air.at(timeS);
            }

            @Override
            public double rate(double timeS) {
                stepStarts.add(timeS);
                return air.rate(timeS);
            }

            @Override
            public double[] knots() {
                return air.knots();
            }
        };
        NetworkSolver.standard().solve(network(body(ZERO + 20), watched), 3600);
        assertThat(stepStarts).isSorted().contains(0.0, 433.3, 1000.1, 1000.2, 2718.28);
    }

    @ParameterizedTest
    @CsvSource({"1e-3, 2e-3", "1e-8, 1e-6"})
    void airThatJumps(double toleranceK, double withinK) {
        TimeFunction air = new TimeFunction() {
            @Override
            public double at(double timeS) {
                return timeS < 1000 ? ZERO + 4 : ZERO + 30;
            }

            @Override
            public double rate(double timeS) {
                return 0;
            }

            @Override
            public double[] knots() {
                return new double[] {1000};
            }
        };
        Node body = body(ZERO + 20);
        Trajectory run = NetworkSolver.standard().withToleranceK(toleranceK).solve(network(body, air), 2000);
        double atJump = 4 + 16 * Math.exp(-1000 / TAU);
        assertThat(run.temperatureK(body, 999) - ZERO).isCloseTo(4 + 16 * Math.exp(-999 / TAU), within(withinK));
        assertThat(run.temperatureK(body, 2000) - ZERO)
                .isCloseTo(30 + (atJump - 30) * Math.exp(-1000 / TAU), within(withinK));
        // A step that looked past the jump would be cut again and again before it.
        assertThat(run.stepsTried()).isLessThanOrEqualTo(run.steps() + 5);
    }
}
