/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

/**
 * How much later everything is for a vessel that starts uniform: lag (1 − exp(−t/settling)), where t is the time of a course
 * that is under way.
 *
 * @param lagS lag by distance of the start from the equilibrium [s by K], ≥ 0
 * @param settlingS how soon wall and drink settle [s], > 0
 */
record StartLag(CubicTable lagS, double settlingS) {

    private static final int STEPS = 5;

    /** What is added to a time under way [s]. */
    double laterS(double startDistanceK, double underWayS) {
        return lagS.at(startDistanceK) * -Math.expm1(-underWayS / settlingS);
    }

    /** The time under way that belongs to a time from a uniform start [s]: Newton's method from below on a concave function. */
    double underWayS(double startDistanceK, double afterS) {
        double lag = lagS.at(startDistanceK);
        double time = Math.max(0, afterS - lag);
        for (int i = 0; i < STEPS; i++) {
            double rest = Math.exp(-time / settlingS);
            time += (afterS - time - lag * (1 - rest)) / (1 + lag / settlingS * rest);
        }
        return time;
    }
}
