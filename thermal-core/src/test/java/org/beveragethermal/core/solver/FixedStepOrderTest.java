/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.testsupport.ObservedOrders;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Observed order of the method with steps of fixed length, on problems with a closed form. */
final class FixedStepOrderTest {

    private static final String ORDER =
            "E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed., Springer 1996, section IV.7:"
                    + " order 4";
    private static final String FAMILY = "integration in time, steps of fixed length";
    private static final String STEPS = "steps, 24 to 48";
    private static final double ZERO = 273.15;
    private static final double CAPACITY = 3500;

    /** Errors at the end of a run and in the middle of its steps. */
    private record Errors(double atEnd, double inSteps) {}

    @Test
    void nonLinearFilm() {
        // Film coefficient ~ ΔT^(1/4): θ = (1 + n t/τ₀)^(−1/n). A. Bejan and A. D. Kraus, Heat Transfer Handbook, Wiley
        // 2003, eq. 3.286.
        double n = 0.25;
        double tau = 1800;
        double start = 18;
        double coefficient = CAPACITY / tau / Math.pow(start, n);
        Node body = Node.sensible("body", CAPACITY, ZERO + 4 + start);
        Network network = Network.of(
                List.of(body),
                List.of(DirectPath.of(
                        "film", body, Boundary.constant("air", ZERO + 4), "convection", (from, to, out) -> {
                            double drive = from - to;
                            out.watts = coefficient * Math.pow(drive, 1 + n);
                            out.perFromKelvin = coefficient * (1 + n) * Math.pow(drive, n);
                            out.perToKelvin = -out.perFromKelvin;
                        })));
        observe(
                "film",
                "a body under a film ~ ΔT^(1/4)",
                network,
                7200,
                t -> ZERO + 4 + start * Math.pow(1 + n * t / tau, -1 / n));
    }

    @Test
    void movingBoundary() {
        // τ dT/dt = T_air − T with T_air = m + a sin ωt, started on its periodic solution.
        Sinusoid air = new Sinusoid(ZERO + 20, 8, 2 * Math.PI / 3600);
        double tau = 600;
        Node body = Node.sensible("body", CAPACITY, air.response(tau, 0));
        Network network = Network.of(
                List.of(body),
                List.of(DirectPath.of(
                        "film",
                        body,
                        Boundary.varying("air", air),
                        "convection",
                        HeatLaw.conductance(CAPACITY / tau))));
        observe("sinusoid", "a body in air that varies as a sine", network, 5400, t -> air.response(tau, t));
    }

    private static void observe(
            String id, String what, Network network, double endS, DoubleUnaryOperator temperatureK) {
        Errors coarse = run(network, endS, 24, temperatureK);
        Errors fine = run(network, endS, 48, temperatureK);
        double atEnd = ObservedOrders.order(coarse.atEnd(), fine.atEnd(), 2);
        double inSteps = ObservedOrders.order(coarse.inSteps(), fine.inSteps(), 2);
        OutsideChecks.fromMemory("rosenbrock-observed-order-" + id, ORDER)
                .what("order observed with 24 and 48 fixed steps: " + what)
                .unit("1")
                .between(3.7, 4.5)
                .check(atEnd);
        ObservedOrders.of(FAMILY, what + ", at the end, against its closed form", STEPS)
                .check(4, atEnd, 3.7, 4.5);
        // An interpolant of order 3 has a local error ~ h⁴, so between the steps the order is 4 as well.
        ObservedOrders.of(FAMILY, what + ", between the steps, against its closed form", STEPS)
                .check(4, inSteps, 3.5, 4.6);
    }

    private static Errors run(Network network, double endS, int steps, DoubleUnaryOperator temperatureK) {
        RosenbrockStep step = new RosenbrockStep(network.prepare(), Map.of());
        StepLog log = new StepLog(1, 1);
        step.start(network.prepare().initialState());
        double h = endS / steps;
        double inSteps = 0;
        for (int i = 0; i < steps; i++) {
            double time = i * h;
            assertThat(step.begin(time)).isTrue();
            assertThat(step.attempt(time, h, time + h)).isFinite();
            log.add(time, h, step);
            step.accept();
            for (double fraction : new double[] {0.3, 0.5, 0.7}) {
                double middle = time + fraction * h;
                double enthalpy = log.stateComponent(log.step(i), 0, middle);
                inSteps = Math.max(inSteps, Math.abs(ZERO + enthalpy / CAPACITY - temperatureK.applyAsDouble(middle)));
            }
        }
        double atEnd = Math.abs(ZERO + step.state()[0] / CAPACITY - temperatureK.applyAsDouble(endS));
        return new Errors(atEnd, inSteps);
    }
}
