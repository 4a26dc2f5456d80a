/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/**
 * A film of the synthetic bottle for many pairs of temperatures at once, as plain loops that the compiler turns into vector instructions.
 *
 * <p>It follows a law whose heat is (a + b |ΔT|^(1/6))² ΔT, with a and b depending on the mean of both temperatures: polynomials of degree 6
 * here. Radiation may come on top. What the fit adds to the error is in the check of error of the problem that uses it.
 */
final class VectorFilm implements BatchLaw {

    private static final int DEGREE = 6;
    private static final double SMALL_K = 0.5;
    private static final double LARGE_K = 20;

    /** |ΔT|^(1/8) for which the start of the sixth root is fitted: from 0.1 mK to 70 K. */
    private static final double ROOT_MIDDLE = 1.0;

    private static final double ROOT_HALF = 0.7;
    private static final double[] ROOT = polynomial(4, t -> Math.pow(ROOT_MIDDLE + ROOT_HALF * t, 4.0 / 3));

    private final double middleK;
    private final double perHalf;
    private final double[] a;
    private final double[] b;
    private final double radiating;

    private VectorFilm(double middleK, double perHalf, double[] a, double[] b, double radiating) {
        this.middleK = middleK;
        this.perHalf = perHalf;
        this.a = a;
        this.b = b;
        this.radiating = radiating;
    }

    /** Follows a law from a temperature to another [K], with radiation [W/K^4] on top. */
    static VectorFilm of(HeatLaw law, double coldestK, double warmestK, double radiating) {
        double middle = 0.5 * (coldestK + warmestK);
        double half = 0.5 * (warmestK - coldestK);
        double small = Math.pow(SMALL_K, 1.0 / 6);
        double large = Math.pow(LARGE_K, 1.0 / 6);
        DoubleUnaryOperator slope =
                t -> (root(law, middle + half * t, LARGE_K) - root(law, middle + half * t, SMALL_K)) / (large - small);
        double[] b = polynomial(DEGREE, slope);
        double[] a = polynomial(DEGREE, t -> root(law, middle + half * t, SMALL_K) - small * slope.applyAsDouble(t));
        return new VectorFilm(middle, 1 / half, a, b, radiating);
    }

    private static double root(HeatLaw law, double meanK, double differenceK) {
        HeatFlow flow = new HeatFlow();
        law.evaluate(meanK + 0.5 * differenceK, meanK - 0.5 * differenceK, flow);
        return Math.sqrt(flow.watts / differenceK);
    }

    /** Coefficients of the polynomial that meets a function of −1 to 1 at Chebyshev's points. */
    private static double[] polynomial(int degree, DoubleUnaryOperator function) {
        double[][] powers = new double[degree + 1][degree + 1];
        double[] values = new double[degree + 1];
        for (int i = 0; i <= degree; i++) {
            double t = Math.cos(Math.PI * (i + 0.5) / (degree + 1));
            for (int p = 0; p <= degree; p++) {
                powers[i][p] = Math.pow(t, p);
            }
            values[i] = function.applyAsDouble(t);
        }
        return new LUDecomposition(new Array2DRowRealMatrix(powers, false))
                .getSolver()
                .solve(new ArrayRealVector(values, false))
                .toArray();
    }

    /** Heat for one pair [W], without slopes. */
    double watts(double fromK, double toK) {
        double t = (0.5 * (fromK + toK) - middleK) * perHalf;
        double t2 = t * t;
        double still = a[0] + t2 * (a[2] + t2 * (a[4] + t2 * a[6])) + t * (a[1] + t2 * (a[3] + t2 * a[5]));
        double moving = b[0] + t2 * (b[2] + t2 * (b[4] + t2 * b[6])) + t * (b[1] + t2 * (b[3] + t2 * b[5]));
        double cube = Math.sqrt(Math.abs(fromK - toK));
        double r = (Math.sqrt(Math.sqrt(cube)) - ROOT_MIDDLE) * (1 / ROOT_HALF);
        double[] c = ROOT;
        double y = c[0] + r * (c[1] + r * (c[2] + r * (c[3] + r * c[4])));
        double y3 = y * y * y;
        double root = still + moving * (y * (y3 + 2 * cube) / (2 * y3 + cube));
        double from2 = fromK * fromK;
        double to2 = toK * toK;
        return root * root * (fromK - toK) + radiating * (from2 * from2 - to2 * to2);
    }

    // Coefficients are copied into locals: read from their arrays they might be what the loops write, and nothing would
    // be vectorised.
    @Override
    public void flows(double[] fromK, double[] toK, double[] watts, double[] spare, double[] other, int n) {
        sixthRoots(fromK, toK, spare, n);
        double p0 = a[0];
        double p1 = a[1];
        double p2 = a[2];
        double p3 = a[3];
        double p4 = a[4];
        double p5 = a[5];
        double p6 = a[6];
        double q0 = b[0];
        double q1 = b[1];
        double q2 = b[2];
        double q3 = b[3];
        double q4 = b[4];
        double q5 = b[5];
        double q6 = b[6];
        double middle = middleK;
        double scale = perHalf;
        for (int i = 0; i < n; i++) {
            double t = (0.5 * (fromK[i] + toK[i]) - middle) * scale;
            double still = p0 + t * (p1 + t * (p2 + t * (p3 + t * (p4 + t * (p5 + t * p6)))));
            double moving = q0 + t * (q1 + t * (q2 + t * (q3 + t * (q4 + t * (q5 + t * q6)))));
            double root = still + moving * spare[i];
            watts[i] = root * root * (fromK[i] - toK[i]);
        }
        double radiated = radiating;
        if (radiated > 0) {
            for (int i = 0; i < n; i++) {
                double from = fromK[i] * fromK[i];
                double to = toK[i] * toK[i];
                watts[i] += radiated * (from * from - to * to);
            }
        }
    }

    @Override
    public void evaluate(double[] fromK, double[] toK, double[] watts, double[] perFrom, double[] perTo, int n) {
        sixthRoots(fromK, toK, watts, n);
        double p0 = a[0];
        double p1 = a[1];
        double p2 = a[2];
        double p3 = a[3];
        double p4 = a[4];
        double p5 = a[5];
        double p6 = a[6];
        double q0 = b[0];
        double q1 = b[1];
        double q2 = b[2];
        double q3 = b[3];
        double q4 = b[4];
        double q5 = b[5];
        double q6 = b[6];
        double middle = middleK;
        double scale = perHalf;
        for (int i = 0; i < n; i++) {
            double t = (0.5 * (fromK[i] + toK[i]) - middle) * scale;
            double still = p0 + t * (p1 + t * (p2 + t * (p3 + t * (p4 + t * (p5 + t * p6)))));
            double moving = q0 + t * (q1 + t * (q2 + t * (q3 + t * (q4 + t * (q5 + t * q6)))));
            double stillBy = p1 + t * (2 * p2 + t * (3 * p3 + t * (4 * p4 + t * (5 * p5 + t * 6 * p6))));
            double movingBy = q1 + t * (2 * q2 + t * (3 * q3 + t * (4 * q4 + t * (5 * q5 + t * 6 * q6))));
            double x = watts[i];
            double difference = fromK[i] - toK[i];
            double root = still + moving * x;
            double byMean = difference * root * (stillBy + movingBy * x) * scale;
            double byDifference = root * (root + moving * x / 3);
            watts[i] = root * root * difference;
            perFrom[i] = byMean + byDifference;
            perTo[i] = byMean - byDifference;
        }
        double radiated = radiating;
        if (radiated > 0) {
            for (int i = 0; i < n; i++) {
                double from2 = fromK[i] * fromK[i];
                double to2 = toK[i] * toK[i];
                watts[i] += radiated * (from2 * from2 - to2 * to2);
                perFrom[i] += 4 * radiated * from2 * fromK[i];
                perTo[i] -= 4 * radiated * to2 * toK[i];
            }
        }
    }

    /** Sixth roots of the differences, by square roots, a polynomial and one step of Halley's on y³ = √|ΔT|. */
    private static void sixthRoots(double[] fromK, double[] toK, double[] out, int n) {
        double c0 = ROOT[0];
        double c1 = ROOT[1];
        double c2 = ROOT[2];
        double c3 = ROOT[3];
        double c4 = ROOT[4];
        for (int i = 0; i < n; i++) {
            double cube = Math.sqrt(Math.abs(fromK[i] - toK[i]));
            double t = (Math.sqrt(Math.sqrt(cube)) - ROOT_MIDDLE) / ROOT_HALF;
            double y = c0 + t * (c1 + t * (c2 + t * (c3 + t * c4)));
            double y3 = y * y * y;
            out[i] = y * (y3 + 2 * cube) / (2 * y3 + cube);
        }
    }
}
