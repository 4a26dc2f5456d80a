/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import org.beveragethermal.core.network.JacobianPlaces;
import org.beveragethermal.core.network.PreparedNetwork;

/**
 * An exponential Rosenbrock method of order 4 with an estimate of order 3 for one or two unknowns in surroundings that do not change: what
 * is linear in the network is solved exactly, however fast or slow, so that steps are limited only by how heat flows bend.
 *
 * <p>exprb43 of M. Hochbruck, A. Ostermann and J. Schweitzer, Exponential Rosenbrock-type methods, SIAM J. Numer. Anal. 47 (2009) 786-803;
 * coefficients from memory, held to their order by ExponentialStepTest. With J the Jacobian at the start and D the flows' deviation from it,
 *
 * <p>U₂ = y + ½h φ₁(½hJ) f, U₃ = y + h φ₁(hJ)(f + D₂), y₁ = y + h φ₁(hJ) f + h φ₃(hJ)(16 D₂ − 2 D₃) + h φ₄(hJ)(12 D₃ − 48 D₂); the last part is the
 * estimate of the error.
 *
 * <p>Theory manual, equation (7.8).
 */
final class ExponentialStep extends TrialStep {

    /** Most unknowns. */
    static final int MOST_UNKNOWNS = 2;

    private static final int HALVINGS = 30;

    private final Phi phi = new Phi();
    /** For parts of a step. */
    private final Phi within = new Phi();

    private final JacobianPlaces places;
    private final double[] constantJacobian;
    /** Row by row, and one entry for what goes nowhere. */
    private final double[] jacobian;

    private final double[] argument;

    private final double[] rate;
    private final double[] endRate;
    private final double[] error;
    private double lengthS;
    private boolean endIsKnown;
    /** Whether the component that was looked at last turns in the step just tried. */
    private boolean turned;

    ExponentialStep(PreparedNetwork network, PreparedNetwork.Workspace workspace) {
        super(network, workspace, false);
        if (n > MOST_UNKNOWNS || !workspace.isSteady() || network.knots().length > 0) {
            throw new IllegalArgumentException("network of " + n + " unknowns"
                    + (workspace.isSteady() && network.knots().length == 0 ? "" : " in surroundings that change")
                    + ": expected one or two and nothing that changes with time, for an exponential method");
        }
        argument = new double[n];
        rate = new double[n];
        endRate = new double[n];
        error = new double[n];
        jacobian = new double[MOST_UNKNOWNS * MOST_UNKNOWNS + 1];
        constantJacobian = new double[jacobian.length];
        places = network.places((row, column) -> MOST_UNKNOWNS * row + column, jacobian.length - 1);
        workspace.addConstantJacobian(places, constantJacobian);
    }

    @Override
    void start(double[] startState) {
        super.start(startState);
        endIsKnown = false;
    }

    /** What was evaluated at the end of the step before is not evaluated again. */
    @Override
    boolean begin(double time) {
        if (endIsKnown) {
            System.arraycopy(endRate, 0, baseRate, 0, n);
            endIsKnown = false;
        } else if (!evaluates(time, state, true, baseRate)) {
            return false;
        }
        System.arraycopy(constantJacobian, 0, jacobian, 0, constantJacobian.length);
        workspace.addVaryingJacobian(places, jacobian);
        return true;
    }

    private static double second(double[] values) {
        return values.length > 1 ? values[1] : 0;
    }

    @Override
    double attempt(double time, double h, double latestTime) {
        lengthS = h;
        endIsKnown = false;
        turned = false;
        double a = jacobian[0];
        double b = jacobian[1];
        double c = jacobian[2];
        double d = jacobian[3];
        if (!phi.of(a, b, c, d, h)) {
            return Double.NaN;
        }
        double f1 = baseRate[0];
        double f2 = second(baseRate);
        double jf1 = a * f1 + b * f2;
        double jf2 = c * f1 + d * f2;
        double half = 0.5 * h;
        double v1 = half * (phi.halfOne * f1 + phi.halfOneByA * jf1);
        double v2 = half * (phi.halfOne * f2 + phi.halfOneByA * jf2);
        if (!evaluatesAt(time, v1, v2)) {
            return Double.NaN;
        }
        double d1 = rate[0] - f1 - (a * v1 + b * v2);
        double d2 = second(rate) - f2 - (c * v1 + d * v2);
        double jd1 = a * d1 + b * d2;
        double jd2 = c * d1 + d * d2;
        double linear1 = h * (phi.one * f1 + phi.oneByA * jf1);
        double linear2 = h * (phi.one * f2 + phi.oneByA * jf2);
        v1 = linear1 + h * (phi.one * d1 + phi.oneByA * jd1);
        v2 = linear2 + h * (phi.one * d2 + phi.oneByA * jd2);
        if (!evaluatesAt(time, v1, v2)) {
            return Double.NaN;
        }
        double e1 = rate[0] - f1 - (a * v1 + b * v2);
        double e2 = second(rate) - f2 - (c * v1 + d * v2);
        double third1 = 16 * d1 - 2 * e1;
        double third2 = 16 * d2 - 2 * e2;
        double fourth1 = 12 * e1 - 48 * d1;
        double fourth2 = 12 * e2 - 48 * d2;
        error[0] = h * (phi.four * fourth1 + phi.fourByA * (a * fourth1 + b * fourth2));
        newState[0] =
                state[0] + linear1 + h * (phi.three * third1 + phi.threeByA * (a * third1 + b * third2)) + error[0];
        if (n > 1) {
            error[1] = h * (phi.four * fourth2 + phi.fourByA * (c * fourth1 + d * fourth2));
            newState[1] =
                    state[1] + linear2 + h * (phi.three * third2 + phi.threeByA * (c * third1 + d * third2)) + error[1];
        }
        return workspace.sizeK(error);
    }

    private boolean evaluatesAt(double time, double change1, double change2) {
        argument[0] = state[0] + change1;
        if (n > 1) {
            argument[1] = state[1] + change2;
        }
        return evaluates(time, argument, false, rate);
    }

    /** Further than a method that has to resolve how the fastest part settles. */
    @Override
    double firstMoveK() {
        return 0.3;
    }

    @Override
    int errorOrder() {
        return 3;
    }

    @Override
    boolean locatesByItself() {
        return false;
    }

    /**
     * Where a component turns, what is linear goes by its exponentials and what is left by a cubic that meets value and rate at both ends;
     * elsewhere one such cubic is enough to begin a search with.
     */
    @Override
    double inside(int i, double part) {
        if (part == 1) {
            return newState[i];
        }
        if (turned) {
            return state[i] + linear(i, part) + part * part * (bend(i) + part * (left(i) - bend(i)));
        }
        double rise = newState[i] - state[i];
        double first = lengthS * baseRate[i] - rise;
        double last = rise - lengthS * endRate(i);
        return state[i] + part * (rise + (1 - part) * ((1 - part) * first + part * last));
    }

    private double slopeInside(int i, double part) {
        within.of(jacobian[0], jacobian[1], jacobian[2], jacobian[3], part * lengthS);
        return lengthS * (within.zero * baseRate[i] + within.zeroByA * jacobianTimesRate(i))
                + part * (2 * bend(i) + 3 * part * (left(i) - bend(i)));
    }

    /** What the linear part alone makes of a component in a part of the step. */
    private double linear(int i, double part) {
        double time = part * lengthS;
        within.of(jacobian[0], jacobian[1], jacobian[2], jacobian[3], time);
        return time * (within.one * baseRate[i] + within.oneByA * jacobianTimesRate(i));
    }

    private double jacobianTimesRate(int i) {
        return jacobian[MOST_UNKNOWNS * i] * baseRate[0] + jacobian[MOST_UNKNOWNS * i + 1] * second(baseRate);
    }

    /** What the linear part leaves at the end of the step. */
    private double left(int i) {
        return newState[i] - state[i] - lengthS * (phi.one * baseRate[i] + phi.oneByA * jacobianTimesRate(i));
    }

    /** Coefficient of the square in the cubic of what is left. */
    private double bend(int i) {
        double rate = endRate(i) - phi.zero * baseRate[i] - phi.zeroByA * jacobianTimesRate(i);
        return 3 * left(i) - lengthS * rate;
    }

    /** Rate at the end of the step just tried, with the derivatives that the next step begins with. */
    private double endRate(int i) {
        if (!endIsKnown) {
            endIsKnown = evaluates(0, newState, true, endRate);
        }
        // Where there is no rate the course ends straight.
        return endIsKnown ? endRate[i] : (newState[i] - state[i]) / lengthS;
    }

    /** Two exponentials turn once at most, and then their slopes at both ends have different signs. */
    @Override
    int turns(int i, double[] out) {
        turned = baseRate[i] * endRate(i) < 0;
        if (!turned) {
            return 0;
        }
        double low = 0;
        double high = 1;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = 0.5 * (low + high);
            if (slopeInside(i, middle) * baseRate[i] > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        out[0] = high;
        return 1;
    }
}
