/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import java.util.function.DoubleUnaryOperator;

/**
 * A function of a positive number in cubic cells that narrow with the number: each octave is cut into 2<sup>bits</sup> equal
 * cells, so that the cell is found in the number's own bits, without a logarithm.
 *
 * <p>Four coefficients per cell in powers of the distance from the cell's lower bound. Immutable.
 */
final class CubicTable {

    private static final int MANTISSA_BITS = 52;

    private final int shift;
    private final long mask;
    private final int first;
    private final double[] coefficients;

    private CubicTable(int bits, int first, int cells) {
        shift = MANTISSA_BITS - bits;
        mask = -1L << shift;
        this.first = first;
        coefficients = new double[4 * cells];
    }

    /** An empty table over a range of positive numbers. */
    static CubicTable over(double low, double high, int bits) {
        int shift = MANTISSA_BITS - bits;
        int first = (int) (Double.doubleToRawLongBits(low) >>> shift);
        int last = (int) (Double.doubleToRawLongBits(high) >>> shift);
        return new CubicTable(bits, first, last - first + 1);
    }

    /** The bounds of the cells within a range, its ends included, descending. */
    static double[] knots(double low, double high, int bits) {
        int shift = MANTISSA_BITS - bits;
        long first = Double.doubleToRawLongBits(low) >>> shift;
        long last = Double.doubleToRawLongBits(high) >>> shift;
        boolean onBound = Double.longBitsToDouble(last << shift) == high;
        int inside = (int) (last - first) - (onBound ? 1 : 0);
        double[] knots = new double[inside + 2];
        knots[0] = high;
        for (int i = 1; i <= inside; i++) {
            knots[i] = Double.longBitsToDouble((last - i + (onBound ? 0 : 1)) << shift);
        }
        knots[inside + 1] = low;
        return knots;
    }

    /** A smooth function in cubic cells, its slopes by differences. */
    static CubicTable of(double low, double high, int bits, DoubleUnaryOperator function) {
        CubicTable table = over(low, high, bits);
        double[] knots = knots(low, high, bits);
        double step = 1e-4 * low;
        double[] slopes = new double[knots.length];
        for (int i = 0; i < knots.length; i++) {
            slopes[i] =
                    (function.applyAsDouble(knots[i] + step) - function.applyAsDouble(knots[i] - step)) / (2 * step);
        }
        table.set(high, function.applyAsDouble(high), slopes[0], 0, 0);
        for (int i = 0; i + 1 < knots.length; i++) {
            table.set(
                    knots[i + 1],
                    knots[i],
                    function.applyAsDouble(knots[i + 1]),
                    function.applyAsDouble(knots[i]),
                    slopes[i + 1],
                    slopes[i]);
        }
        return table;
    }

    int cells() {
        return coefficients.length / 4;
    }

    /** Sets the cell between two numbers by the values and slopes there (Hermite). */
    void set(double low, double high, double atLow, double atHigh, double slopeLow, double slopeHigh) {
        double h = high - low;
        double mean = (atHigh - atLow) / h;
        double c = (3 * mean - 2 * slopeLow - slopeHigh) / h;
        double d = (slopeLow + slopeHigh - 2 * mean) / (h * h);
        set(low, atLow, slopeLow, c, d);
    }

    /** Powers of the distance from a number inside a cell become powers of that from the cell's lower bound. */
    void set(double at, double a, double b, double c, double d) {
        long bits = Double.doubleToRawLongBits(at);
        double s = Double.longBitsToDouble(bits & mask) - at;
        int i = 4 * ((int) (bits >>> shift) - first);
        coefficients[i] = a + s * (b + s * (c + s * d));
        coefficients[i + 1] = b + s * (2 * c + 3 * s * d);
        coefficients[i + 2] = c + 3 * s * d;
        coefficients[i + 3] = d;
    }

    double at(double x) {
        long bits = Double.doubleToRawLongBits(x);
        double d = x - Double.longBitsToDouble(bits & mask);
        int i = 4 * ((int) (bits >>> shift) - first);
        double[] c = coefficients;
        return c[i] + d * (c[i + 1] + d * (c[i + 2] + d * c[i + 3]));
    }

    double slope(double x) {
        long bits = Double.doubleToRawLongBits(x);
        double d = x - Double.longBitsToDouble(bits & mask);
        int i = 4 * ((int) (bits >>> shift) - first);
        return coefficients[i + 1] + d * (2 * coefficients[i + 2] + 3 * d * coefficients[i + 3]);
    }
}
