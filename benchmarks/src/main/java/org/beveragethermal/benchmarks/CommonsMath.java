/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.Arrays;
import org.apache.commons.math3.ode.AbstractIntegrator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/** Explicit integrators of Apache Commons Math. */
enum CommonsMath implements Peer {
    DP54,
    DP853;

    private static final double SHORTEST_STEP_S = 1e-12;
    /** To this the time of an event is searched: well below the error that is allowed. */
    private static final double EVENT_S = 1e-4;

    private static final int EVENT_ITERATIONS = 1000;

    @Override
    public double timeOfFall(
            PlainEquations equations, double[] start, int component, double threshold, double tolerance, double endS) {
        return timeOfFall(integrator(tolerance, endS), equations, start, component, threshold, endS);
    }

    /** The same by DP853 with an absolute tolerance for each component. */
    static double timeOfFall(
            PlainEquations equations,
            double[] start,
            int component,
            double threshold,
            double[] tolerances,
            double endS) {
        return timeOfFall(
                new DormandPrince853Integrator(SHORTEST_STEP_S, endS, tolerances, new double[start.length]),
                equations,
                start,
                component,
                threshold,
                endS);
    }

    private static double timeOfFall(
            AbstractIntegrator integrator,
            PlainEquations equations,
            double[] start,
            int component,
            double threshold,
            double endS) {
        integrator.addEventHandler(
                new EventHandler() {
                    @Override
                    public void init(double timeS, double[] state, double untilS) {}

                    @Override
                    public double g(double timeS, double[] state) {
                        return state[component] - threshold;
                    }

                    @Override
                    public Action eventOccurred(double timeS, double[] state, boolean increasing) {
                        return Action.STOP;
                    }

                    @Override
                    public void resetState(double timeS, double[] state) {}
                },
                Double.POSITIVE_INFINITY,
                EVENT_S,
                EVENT_ITERATIONS);
        return integrator.integrate(
                equations(equations, start.length), 0, start, endS, Arrays.copyOf(start, start.length));
    }

    @Override
    public double[] stateAt(PlainEquations equations, double[] start, double tolerance, double endS) {
        double[] state = start.clone();
        integrator(tolerance, endS).integrate(equations(equations, start.length), 0, state, endS, state);
        return state;
    }

    private AbstractIntegrator integrator(double tolerance, double longestS) {
        return this == DP54
                ? new DormandPrince54Integrator(SHORTEST_STEP_S, longestS, tolerance, tolerance)
                : new DormandPrince853Integrator(SHORTEST_STEP_S, longestS, tolerance, tolerance);
    }

    private static FirstOrderDifferentialEquations equations(PlainEquations plain, int size) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return size;
            }

            @Override
            public void computeDerivatives(double timeS, double[] state, double[] rates) {
                plain.rates(timeS, state, rates);
            }
        };
    }
}
