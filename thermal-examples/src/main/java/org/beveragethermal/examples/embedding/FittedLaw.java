/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.beveragethermal.core.batch.BatchLaw;

/**
 * A heat law followed by a polynomial, for many pairs of temperatures at once: short loops over arrays, which the virtual machine turns
 * into vector instructions.
 *
 * <p>Heat is ΔT G(m, y), where m is the mean of both temperatures and y = |ΔT|^(1/4): films of free convection go by that power or nearly so,
 * and two square roots make it. G is a polynomial of degree 3 in m and 6 in y that meets the law at Chebyshev's points; {@link #worst}
 * says how well it follows between them. Slopes are those of the polynomial, exactly.
 */
final class FittedLaw implements BatchLaw {

    private static final int MEAN_DEGREE = 3;
    private static final int ROOT_DEGREE = 6;
    private static final double LEAST_K = 0.01;

    private final double coldestK;
    private final double warmestK;
    private final double mostK;
    /** For each power of y, from the highest on, the coefficients of the powers of m, scaled to −1 to 1. */
    private final double[][] coefficients;

    private FittedLaw(double coldestK, double warmestK, double mostK, double[][] coefficients) {
        this.coldestK = coldestK;
        this.warmestK = warmestK;
        this.mostK = mostK;
        this.coefficients = coefficients;
    }

    /**
     * Follows a law.
     *
     * @param watts heat of two temperatures [W], 0 where they are equal, otherwise of the sign of their difference
     * @param coldestK coldest mean of both temperatures [K]
     * @param warmestK warmest mean [K]
     * @param mostK greatest difference [K]
     */
    static FittedLaw of(DoubleBinaryOperator watts, double coldestK, double warmestK, double mostK) {
        double[] means = points(MEAN_DEGREE, coldestK, warmestK);
        double[] roots = points(ROOT_DEGREE, root(LEAST_K), root(mostK));
        double[] scaled = points(MEAN_DEGREE, -1, 1);
        DecompositionSolver inMean = powers(scaled);
        DecompositionSolver inRoot = powers(roots);
        double[][] byMean = new double[roots.length][];
        for (int j = 0; j < roots.length; j++) {
            double difference = Math.pow(roots[j], 4);
            double[] conductances = new double[means.length];
            for (int i = 0; i < means.length; i++) {
                conductances[i] =
                        watts.applyAsDouble(means[i] + 0.5 * difference, means[i] - 0.5 * difference) / difference;
            }
            byMean[j] = solved(inMean, conductances);
        }
        double[][] coefficients = new double[ROOT_DEGREE + 1][MEAN_DEGREE + 1];
        for (int p = 0; p <= MEAN_DEGREE; p++) {
            double[] column = new double[roots.length];
            for (int j = 0; j < roots.length; j++) {
                column[j] = byMean[j][p];
            }
            double[] solved = solved(inRoot, column);
            for (int q = 0; q <= ROOT_DEGREE; q++) {
                coefficients[ROOT_DEGREE - q][p] = solved[q];
            }
        }
        return new FittedLaw(coldestK, warmestK, mostK, coefficients);
    }

    private static double root(double differenceK) {
        return Math.sqrt(Math.sqrt(differenceK));
    }

    private static double[] points(int degree, double low, double high) {
        double[] points = new double[degree + 1];
        Arrays.setAll(
                points, i -> 0.5 * (low + high) - 0.5 * (high - low) * Math.cos(Math.PI * (i + 0.5) / (degree + 1)));
        return points;
    }

    private static DecompositionSolver powers(double[] at) {
        double[][] powers = new double[at.length][at.length];
        for (int i = 0; i < at.length; i++) {
            for (int p = 0; p < at.length; p++) {
                powers[i][p] = Math.pow(at[i], p);
            }
        }
        return new LUDecomposition(new Array2DRowRealMatrix(powers, false)).getSolver();
    }

    private static double[] solved(DecompositionSolver solver, double[] values) {
        return solver.solve(new ArrayRealVector(values, false)).toArray();
    }

    /** Greatest difference from a law, over its range and differences from a tenth of a kelvin on, as a part of its heat [-]. */
    double worst(DoubleBinaryOperator law, int points) {
        double worst = 0;
        double[] watts = new double[1];
        for (int i = 0; i <= points; i++) {
            for (int j = 0; j <= points; j++) {
                double mean = coldestK + (warmestK - coldestK) * i / points;
                double difference = 0.1 + (mostK - 0.1) * j / points;
                double from = mean + 0.5 * difference;
                double to = mean - 0.5 * difference;
                flows(new double[] {from}, new double[] {to}, watts, new double[1], new double[1], 1);
                double exact = law.applyAsDouble(from, to);
                worst = Math.max(worst, Math.abs(watts[0] - exact) / exact);
            }
        }
        return worst;
    }

    @Override
    public void flows(double[] fromK, double[] toK, double[] watts, double[] spare, double[] other, int n) {
        arguments(fromK, toK, spare, other, n);
        Arrays.fill(watts, 0, n, 0);
        for (double[] c : coefficients) {
            double c0 = c[0];
            double c1 = c[1];
            double c2 = c[2];
            double c3 = c[3];
            for (int i = 0; i < n; i++) {
                double m = spare[i];
                watts[i] = watts[i] * other[i] + (c0 + m * (c1 + m * (c2 + m * c3)));
            }
        }
        for (int i = 0; i < n; i++) {
            watts[i] *= fromK[i] - toK[i];
        }
    }

    @Override
    public void evaluate(double[] fromK, double[] toK, double[] watts, double[] perFrom, double[] perTo, int n) {
        double[] mean = new double[n];
        double[] root = new double[n];
        arguments(fromK, toK, mean, root, n);
        Arrays.fill(watts, 0, n, 0);
        Arrays.fill(perFrom, 0, n, 0);
        Arrays.fill(perTo, 0, n, 0);
        // By Horner's rule: G in watts, its slope in the mean in perFrom, its slope in the root in perTo.
        for (double[] c : coefficients) {
            double c0 = c[0];
            double c1 = c[1];
            double c2 = c[2];
            double c3 = c[3];
            for (int i = 0; i < n; i++) {
                double m = mean[i];
                double y = root[i];
                perTo[i] = perTo[i] * y + watts[i];
                watts[i] = watts[i] * y + (c0 + m * (c1 + m * (c2 + m * c3)));
                perFrom[i] = perFrom[i] * y + (c1 + m * (2 * c2 + m * 3 * c3));
            }
        }
        double perMean = 1 / (warmestK - coldestK);
        for (int i = 0; i < n; i++) {
            double difference = fromK[i] - toK[i];
            double byMean = difference * perFrom[i] * perMean;
            double byDifference = watts[i] + 0.25 * root[i] * perTo[i];
            watts[i] *= difference;
            perFrom[i] = byMean + byDifference;
            perTo[i] = byMean - byDifference;
        }
    }

    private void arguments(double[] fromK, double[] toK, double[] mean, double[] root, int n) {
        double middle = 0.5 * (coldestK + warmestK);
        double scale = 2 / (warmestK - coldestK);
        for (int i = 0; i < n; i++) {
            mean[i] = (0.5 * (fromK[i] + toK[i]) - middle) * scale;
            root[i] = Math.sqrt(Math.sqrt(Math.abs(fromK[i] - toK[i])));
        }
    }
}
