/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.util.function.DoubleUnaryOperator;

/**
 * Integration by the double exponential rule (H. Takahasi, M. Mori, Publ. RIMS Kyoto Univ. 9 (1974) 721-741), which keeps its
 * accuracy where the integrand has a root at an end of the interval, as chords of circles have.
 */
final class DoubleExponential {
    private static final int HALF_POINTS = 36;
    private static final double STEP = 0.09;

    /** One plus the place of each point in −1 to 1, and its weight; never written again. */
    private static final double[] PLACES = new double[2 * HALF_POINTS + 1];

    private static final double[] WEIGHTS = new double[2 * HALF_POINTS + 1];

    static {
        for (int k = -HALF_POINTS; k <= HALF_POINTS; k++) {
            double t = k * STEP;
            double u = Math.PI / 2 * Math.sinh(t);
            WEIGHTS[k + HALF_POINTS] = Math.PI / 2 * Math.cosh(t) / Math.pow(Math.cosh(u), 2);
            PLACES[k + HALF_POINTS] = 1 + Math.tanh(u);
        }
    }

    private DoubleExponential() {}

    static double integral(DoubleUnaryOperator integrand, double from, double to) {
        double sum = 0;
        for (int k = 0; k < PLACES.length; k++) {
            sum += WEIGHTS[k] * integrand.applyAsDouble(from + (to - from) * 0.5 * PLACES[k]);
        }
        return sum * STEP * (to - from) / 2;
    }
}
