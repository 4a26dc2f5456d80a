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

    private DoubleExponential() {}

    static double integral(DoubleUnaryOperator integrand, double from, double to) {
        double sum = 0;
        for (int k = -HALF_POINTS; k <= HALF_POINTS; k++) {
            double t = k * STEP;
            double u = Math.PI / 2 * Math.sinh(t);
            double weight = Math.PI / 2 * Math.cosh(t) / Math.pow(Math.cosh(u), 2);
            double x = from + (to - from) * 0.5 * (1 + Math.tanh(u));
            sum += weight * integrand.applyAsDouble(x);
        }
        return sum * STEP * (to - from) / 2;
    }
}
