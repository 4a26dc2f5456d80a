/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * A smooth function replaced by its Chebyshev interpolant: cheap, with an exact slope, and guarded outside its range.
 *
 * <p>The degree is raised until the trailing coefficients fall below the wanted accuracy. The interpolant is then cut into equal
 * pieces of degree 5 that share its value, slope and curvature where they meet, as many as follow it to a tenth of that
 * accuracy: a run asks for properties a million times, and one piece is found at once.
 */
public final class ChebyshevFit implements SmoothFunction {

    private static final int FIRST_DEGREE = 6;
    private static final int LAST_DEGREE = 96;
    private static final int FIRST_PIECES = 8;
    private static final int MOST_PIECES = 1024;
    /** Pieces follow the interpolant to this part of the wanted accuracy, */
    private static final double PART_OF_ACCURACY = 0.1;
    /** but no closer than rounding allows. */
    private static final double ROUNDING = 1e-14;

    private static final int TERMS = 6;

    /** For each degree that is tried: cos(π m/(2 n)) for m from 0 to 4n − 1, n the degree plus 1. */
    private static final double[][] COSINES = IntStream.iterate(
                    FIRST_DEGREE, degree -> degree <= LAST_DEGREE, degree -> 2 * degree)
            .mapToObj(degree -> cosines(degree + 1))
            .toArray(double[][]::new);

    private final double low;
    private final double high;
    private final boolean continueStraight;
    private final int pieces;
    private final double piecesPerUnit;
    /** Six coefficients of each piece, in the part of it that is passed [-]. */
    private final double[] terms;

    private ChebyshevFit(double low, double high, boolean continueStraight, double[] terms) {
        this.low = low;
        this.high = high;
        this.continueStraight = continueStraight;
        this.pieces = terms.length / TERMS;
        this.piecesPerUnit = pieces / (high - low);
        this.terms = terms;
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
        for (double[] cosines : COSINES) {
            double[] c = interpolate(function, low, high, cosines);
            int degree = c.length - 1;
            double largest = 0;
            for (double value : c) {
                largest = Math.max(largest, Math.abs(value));
            }
            double tail = Math.abs(c[degree]) + Math.abs(c[degree - 1]);
            if (tail <= relativeAccuracy * largest) {
                double accuracy = Math.max(PART_OF_ACCURACY * relativeAccuracy, ROUNDING) * largest;
                return new ChebyshevFit(low, high, continueStraight, pieces(c, low, high, accuracy));
            }
        }
        throw new IllegalArgumentException(
                "function on " + low + " to " + high + ": no polynomial of degree " + LAST_DEGREE + " follows it");
    }

    private static double[] cosines(int n) {
        return IntStream.range(0, 4 * n)
                .mapToDouble(m -> Math.cos(Math.PI * m / (2 * n)))
                .toArray();
    }

    private static double[] interpolate(DoubleUnaryOperator function, double low, double high, double[] cosines) {
        int n = cosines.length / 4;
        double[] values = new double[n];
        for (int k = 0; k < n; k++) {
            values[k] = function.applyAsDouble(0.5 * (low + high) + 0.5 * (high - low) * cosines[2 * k + 1]);
            if (!Double.isFinite(values[k])) {
                throw new IllegalArgumentException("function on " + low + " to " + high + ": not finite");
            }
        }
        double[] c = new double[n];
        for (int j = 0; j < n; j++) {
            double sum = 0;
            for (int k = 0; k < n; k++) {
                sum += values[k] * cosines[j * (2 * k + 1) % cosines.length];
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

    /** Pieces that follow an interpolant, doubled until they do. */
    private static double[] pieces(double[] c, double low, double high, double accuracy) {
        double[] slope = differentiate(c, low, high);
        double[] curvature = differentiate(slope, low, high);
        for (int count = FIRST_PIECES; ; count *= 2) {
            double[] terms = cut(c, slope, curvature, low, high, count);
            if (count == MOST_PIECES || follows(c, low, high, terms, accuracy)) {
                return terms;
            }
        }
    }

    private static double[] cut(double[] c, double[] slope, double[] curvature, double low, double high, int count) {
        double width = (high - low) / count;
        double[] terms = new double[TERMS * count];
        for (int i = 0; i < count; i++) {
            double from = low + i * width;
            double to = i + 1 == count ? high : low + (i + 1) * width;
            double value = sum(c, low, high, from);
            double first = sum(slope, low, high, from) * width;
            double second = sum(curvature, low, high, from) * width * width;
            double rise = sum(c, low, high, to) - value - first - 0.5 * second;
            double firstChange = sum(slope, low, high, to) * width - first - second;
            double secondChange = sum(curvature, low, high, to) * width * width - second;
            terms[TERMS * i] = value;
            terms[TERMS * i + 1] = first;
            terms[TERMS * i + 2] = 0.5 * second;
            terms[TERMS * i + 3] = 10 * rise - 4 * firstChange + 0.5 * secondChange;
            terms[TERMS * i + 4] = -15 * rise + 7 * firstChange - secondChange;
            terms[TERMS * i + 5] = 6 * rise - 3 * firstChange + 0.5 * secondChange;
        }
        return terms;
    }

    private static boolean follows(double[] c, double low, double high, double[] terms, double accuracy) {
        int count = terms.length / TERMS;
        for (int i = 0; i < count; i++) {
            double middle = low + (i + 0.5) * (high - low) / count;
            if (Math.abs(piece(terms, i, 0.5) - sum(c, low, high, middle)) > accuracy) {
                return false;
            }
        }
        return true;
    }

    private static double piece(double[] terms, int i, double part) {
        int o = TERMS * i;
        return terms[o]
                + part
                        * (terms[o + 1]
                                + part
                                        * (terms[o + 2]
                                                + part * (terms[o + 3] + part * (terms[o + 4] + part * terms[o + 5]))));
    }

    private double inside(double x) {
        double passed = (x - low) * piecesPerUnit;
        int i = Math.min(pieces - 1, (int) passed);
        return piece(terms, i, passed - i);
    }

    private double slopeInside(double x) {
        double passed = (x - low) * piecesPerUnit;
        int i = Math.min(pieces - 1, (int) passed);
        double part = passed - i;
        int o = TERMS * i;
        return piecesPerUnit
                * (terms[o + 1]
                        + part
                                * (2 * terms[o + 2]
                                        + part
                                                * (3 * terms[o + 3]
                                                        + part * (4 * terms[o + 4] + part * 5 * terms[o + 5]))));
    }

    @Override
    public double at(double x) {
        if (x >= low && x <= high) {
            return inside(x);
        }
        double end = x < low ? low : high;
        double value = inside(end);
        return continueStraight ? value + slopeInside(end) * (x - end) : value;
    }

    @Override
    public double slope(double x) {
        if (x >= low && x <= high) {
            return slopeInside(x);
        }
        return continueStraight ? slopeInside(x < low ? low : high) : 0;
    }

    /** Clenshaw's recurrence. */
    private static double sum(double[] c, double low, double high, double x) {
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
