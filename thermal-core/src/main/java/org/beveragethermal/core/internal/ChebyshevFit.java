/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * A smooth function replaced by its Chebyshev interpolant: cheap, with an exact slope, and guarded outside its range.
 *
 * <p>The degree is raised until the trailing coefficients fall below the wanted accuracy.
 */
public final class ChebyshevFit implements SmoothFunction {

    private static final int FIRST_DEGREE = 6;
    private static final int LAST_DEGREE = 96;

    private final double low;
    private final double high;
    private final boolean continueStraight;
    private final double[] coefficients;
    private final double[] slopeCoefficients;

    private ChebyshevFit(double low, double high, boolean continueStraight, double[] coefficients) {
        this.low = low;
        this.high = high;
        this.continueStraight = continueStraight;
        this.coefficients = coefficients;
        this.slopeCoefficients = differentiate(coefficients, low, high);
    }

    /**
     * Fits a function that keeps its end values outside the range: for properties, which must not be extrapolated.
     *
     * @param function the function, smooth and finite on the range
     * @param low lower end
     * @param high upper end, above {@code low}
     * @param relativeAccuracy wanted accuracy as a fraction of the largest absolute value
     * @return the fit
     * @throws IllegalArgumentException if the function is not finite or too rough to be fitted
     */
    public static ChebyshevFit clamped(DoubleUnaryOperator function, double low, double high, double relativeAccuracy) {
        return fit(function, low, high, relativeAccuracy, false);
    }

    /**
     * Fits a function that goes on straight outside the range: for maps that must stay invertible.
     *
     * @param function the function, smooth and finite on the range
     * @param low lower end
     * @param high upper end, above {@code low}
     * @param relativeAccuracy wanted accuracy as a fraction of the largest absolute value
     * @return the fit
     * @throws IllegalArgumentException if the function is not finite or too rough to be fitted
     */
    public static ChebyshevFit straight(
            DoubleUnaryOperator function, double low, double high, double relativeAccuracy) {
        return fit(function, low, high, relativeAccuracy, true);
    }

    private static ChebyshevFit fit(
            DoubleUnaryOperator function, double low, double high, double relativeAccuracy, boolean continueStraight) {
        for (int degree = FIRST_DEGREE; degree <= LAST_DEGREE; degree *= 2) {
            double[] c = interpolate(function, low, high, degree);
            double largest = 0;
            for (double value : c) {
                largest = Math.max(largest, Math.abs(value));
            }
            double tail = Math.abs(c[degree]) + Math.abs(c[degree - 1]);
            if (tail <= relativeAccuracy * largest) {
                return new ChebyshevFit(low, high, continueStraight, c);
            }
        }
        throw new IllegalArgumentException(
                "function on " + low + " to " + high + ": no polynomial of degree " + LAST_DEGREE + " follows it");
    }

    private static double[] interpolate(DoubleUnaryOperator function, double low, double high, int degree) {
        int n = degree + 1;
        double[] values = new double[n];
        for (int k = 0; k < n; k++) {
            double x = Math.cos(Math.PI * (k + 0.5) / n);
            values[k] = function.applyAsDouble(0.5 * (low + high) + 0.5 * (high - low) * x);
            if (!Double.isFinite(values[k])) {
                throw new IllegalArgumentException("function on " + low + " to " + high + ": not finite");
            }
        }
        double[] c = new double[n];
        for (int j = 0; j < n; j++) {
            double sum = 0;
            for (int k = 0; k < n; k++) {
                sum += values[k] * Math.cos(Math.PI * j * (k + 0.5) / n);
            }
            c[j] = (j == 0 ? 1.0 : 2.0) / n * sum;
        }
        return c;
    }

    private static double[] differentiate(double[] c, double low, double high) {
        int n = c.length;
        double[] d = new double[n + 1];
        for (int j = n - 1; j > 0; j--) {
            d[j - 1] = (j + 1 < n ? d[j + 1] : 0) + 2 * j * c[j];
        }
        d[0] /= 2;
        double scale = 2 / (high - low);
        double[] slope = new double[Math.max(1, n - 1)];
        for (int j = 0; j < slope.length; j++) {
            slope[j] = d[j] * scale;
        }
        return slope;
    }

    @Override
    public double at(double x) {
        if (x >= low && x <= high) {
            return sum(coefficients, x);
        }
        double end = x < low ? low : high;
        double value = sum(coefficients, end);
        return continueStraight ? value + sum(slopeCoefficients, end) * (x - end) : value;
    }

    @Override
    public double slope(double x) {
        if (x >= low && x <= high) {
            return sum(slopeCoefficients, x);
        }
        return continueStraight ? sum(slopeCoefficients, x < low ? low : high) : 0;
    }

    /** Clenshaw's recurrence. */
    private double sum(double[] c, double x) {
        double t = (2 * x - low - high) / (high - low);
        double b1 = 0;
        double b2 = 0;
        for (int j = c.length - 1; j > 0; j--) {
            double b0 = 2 * t * b1 - b2 + c[j];
            b2 = b1;
            b1 = b0;
        }
        return t * b1 - b2 + c[0];
    }
}
