/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.util.function.DoubleUnaryOperator;

/** Gauss-Legendre rule of five points: exact for polynomials of degree nine in each part. */
final class Quadrature {

    private static final double INNER = Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3;
    private static final double OUTER = Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3;
    private static final double INNER_WEIGHT = (322 + 13 * Math.sqrt(70)) / 1800;
    private static final double OUTER_WEIGHT = (322 - 13 * Math.sqrt(70)) / 1800;
    private static final double MIDDLE_WEIGHT = 64.0 / 225;

    private Quadrature() {}

    /** Mean of a function between two arguments, in either order, cut into equal parts. */
    static double mean(DoubleUnaryOperator function, double from, double to, int parts) {
        double half = 0.5 * (to - from) / parts;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            double middle = from + (2 * i + 1) * half;
            sum += MIDDLE_WEIGHT * function.applyAsDouble(middle)
                    + INNER_WEIGHT
                            * (function.applyAsDouble(middle - INNER * half)
                                    + function.applyAsDouble(middle + INNER * half))
                    + OUTER_WEIGHT
                            * (function.applyAsDouble(middle - OUTER * half)
                                    + function.applyAsDouble(middle + OUTER * half));
        }
        return sum / parts;
    }
}
