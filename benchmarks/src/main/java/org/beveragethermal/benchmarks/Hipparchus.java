/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.AbstractIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** Explicit integrators of Hipparchus. */
enum Hipparchus implements Peer {
    DP54,
    DP853;

    private static final double SHORTEST_STEP_S = 1e-12;
    private static final double EVENT_S = 1e-4;
    private static final int EVENT_ITERATIONS = 1000;
    private static final int EVENT_ORDER = 5;

    @Override
    public double timeOfFall(
            PlainEquations equations, double[] start, int component, double threshold, double tolerance, double endS) {
        AbstractIntegrator integrator = integrator(tolerance, endS);
        integrator.addEventDetector(new Fall(component, threshold));
        return integrator
                .integrate(equations(equations, start.length), new ODEState(0, start), endS)
                .getTime();
    }

    @Override
    public double[] stateAt(PlainEquations equations, double[] start, double tolerance, double endS) {
        return integrator(tolerance, endS)
                .integrate(equations(equations, start.length), new ODEState(0, start), endS)
                .getPrimaryState();
    }

    private AbstractIntegrator integrator(double tolerance, double longestS) {
        return this == DP54
                ? new DormandPrince54Integrator(SHORTEST_STEP_S, longestS, tolerance, tolerance)
                : new DormandPrince853Integrator(SHORTEST_STEP_S, longestS, tolerance, tolerance);
    }

    private static OrdinaryDifferentialEquation equations(PlainEquations plain, int size) {
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return size;
            }

            @Override
            public double[] computeDerivatives(double timeS, double[] state) {
                double[] rates = new double[size];
                plain.rates(timeS, state, rates);
                return rates;
            }
        };
    }

    /** A component falls to a threshold; the run ends there. */
    private record Fall(int component, double threshold) implements ODEEventDetector {

        @Override
        public double g(ODEStateAndDerivative state) {
            return state.getPrimaryState()[component] - threshold;
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(Double.POSITIVE_INFINITY);
        }

        @Override
        public int getMaxIterationCount() {
            return EVENT_ITERATIONS;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, EVENT_S, 0, EVENT_ORDER);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> Action.STOP;
        }
    }
}
