/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/**
 * A heat law of free convection in a form that is evaluated in some 15 ns: the root of the heat per temperature difference is a polynomial
 * in the sixth root of the difference, whose coefficients are polynomials in the mean of the two temperatures,
 *
 * <p>√(Q/ΔT) = Σ_j q_j(T_m) |ΔT|^(j/6).
 *
 * <p>For the equation of Churchill and Chu in all-Rayleigh form the sum has two terms whatever the fluid, as long as buoyancy grows with the
 * difference. The law that is followed stays the reference: how far the fit is from it is measured on points between those it was
 * fitted to. Outside its range of temperatures the coefficients keep their end values, so that an implicit step may look there.
 *
 * <p>Given to a {@linkplain BatchLaw batch}, a film of two terms is evaluated for many samples at once in vector instructions.
 *
 * <p>Immutable and thread-safe.
 */
public final class FittedFilm implements HeatLaw, BatchLaw {

    private static final int DEGREE = 6;
    private static final int POWERS = DEGREE + 1;
    private static final int MOST_TERMS = 4;
    private static final int MEANS = 17;
    private static final int DIFFERENCES = 12;
    /** Smallest difference that is fitted [K]. */
    private static final double LEAST_DIFFERENCE_K = 1e-3;

    private final double middleK;
    private final double perHalfRange;
    /** Seven coefficients of each term, for the mean temperature from −1 to 1. */
    private final double[] coefficients;

    private final int terms;
    private final double relativeError;
    /** Radiation on top [W/K⁴]. */
    private final double radiating;

    private FittedFilm(double coldestK, double warmestK, double[] coefficients, double relativeError) {
        this(0.5 * (coldestK + warmestK), 2 / (warmestK - coldestK), coefficients, relativeError, 0);
    }

    private FittedFilm(
            double middleK, double perHalfRange, double[] coefficients, double relativeError, double radiating) {
        this.middleK = middleK;
        this.perHalfRange = perHalfRange;
        this.coefficients = coefficients;
        this.terms = coefficients.length / POWERS;
        this.relativeError = relativeError;
        this.radiating = radiating;
    }

    /**
     * Fits a law, with as few terms as the accuracy allows.
     *
     * @param reference the law to follow: heat that grows from 0 with the difference, of the same size either way, its slopes not used
     * @param coldestK lowest temperature of either side [K], above 0
     * @param warmestK highest temperature of either side [K], at least 1 K above the lowest
     * @param relativeAccuracy largest deviation of the heat from that of the reference [-], 1e-9 to 0.1
     * @return the fit
     * @throws IllegalArgumentException if an argument is outside its range, or the reference is not of this form within the accuracy
     */
    public static FittedFilm of(HeatLaw reference, double coldestK, double warmestK, double relativeAccuracy) {
        if (!(coldestK > 0 && warmestK - coldestK >= 1 && warmestK < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("film fitted from " + coldestK + " K to " + warmestK
                    + " K: expected temperatures above 0 K, at least 1 K apart");
        }
        if (!(relativeAccuracy >= 1e-9 && relativeAccuracy <= 0.1)) {
            throw new IllegalArgumentException(
                    "accuracy " + relativeAccuracy + " of a fitted film: expected 1e-9 to 0.1");
        }
        double least = Double.POSITIVE_INFINITY;
        for (int terms = 2; terms <= MOST_TERMS; terms++) {
            FittedFilm fit = new FittedFilm(coldestK, warmestK, fit(reference, coldestK, warmestK, terms), 0);
            double error = fit.largestError(reference, coldestK, warmestK);
            if (error <= relativeAccuracy) {
                return new FittedFilm(coldestK, warmestK, fit.coefficients, error);
            }
            least = Math.min(least, error);
        }
        throw new IllegalArgumentException("law from " + coldestK + " K to " + warmestK
                + " K: the nearest fit deviates by " + least + " of the heat, expected at most " + relativeAccuracy);
    }

    private interface Point {
        void at(double meanK, double differenceK);
    }

    /** Pairs of temperatures within the range: means at Chebyshev's points, differences evenly in their sixth root. */
    private static void eachPoint(double coldestK, double warmestK, int means, int differences, Point point) {
        for (int i = 0; i < means; i++) {
            double t = Math.cos(Math.PI * (i + 0.5) / means);
            double mean = 0.5 * (coldestK + warmestK) + 0.5 * (warmestK - coldestK) * t;
            double most = 2 * Math.min(mean - coldestK, warmestK - mean);
            double first = SmoothMath.sixthRoot(LEAST_DIFFERENCE_K);
            double last = SmoothMath.sixthRoot(Math.max(most, 2 * LEAST_DIFFERENCE_K));
            for (int j = 0; j < differences; j++) {
                double root = first + (last - first) * j / (differences - 1);
                point.at(mean, Math.pow(root, 6));
            }
        }
    }

    private static double perKelvin(HeatLaw law, double meanK, double differenceK) {
        HeatFlow flow = new HeatFlow();
        law.evaluate(meanK + 0.5 * differenceK, meanK - 0.5 * differenceK, flow);
        return flow.watts / differenceK;
    }

    private static double[] fit(HeatLaw reference, double coldestK, double warmestK, int terms) {
        int rows = MEANS * DIFFERENCES;
        double[][] matrix = new double[rows][terms * POWERS];
        double[] right = new double[rows];
        int[] row = new int[1];
        eachPoint(coldestK, warmestK, MEANS, DIFFERENCES, (mean, difference) -> {
            double root = Math.sqrt(perKelvin(reference, mean, difference));
            if (!(root > 0) || Double.isInfinite(root)) {
                throw new IllegalArgumentException("law at a mean of " + mean + " K and a difference of " + difference
                        + " K: expected heat towards the colder side");
            }
            double t = (mean - 0.5 * (coldestK + warmestK)) * 2 / (warmestK - coldestK);
            double x = SmoothMath.sixthRoot(difference);
            // Relative deviations count.
            for (int j = 0; j < terms; j++) {
                for (int p = 0; p < POWERS; p++) {
                    matrix[row[0]][j * POWERS + p] = Math.pow(x, j) * Math.pow(t, p) / root;
                }
            }
            right[row[0]++] = 1;
        });
        return new QRDecomposition(new Array2DRowRealMatrix(matrix, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }

    /** Largest relative deviation on a grid three times as fine, either way. */
    private double largestError(HeatLaw reference, double coldestK, double warmestK) {
        double[] largest = new double[1];
        eachPoint(coldestK, warmestK, 3 * MEANS, 3 * DIFFERENCES, (mean, difference) -> {
            double expected = perKelvin(reference, mean, difference);
            largest[0] = Math.max(largest[0], Math.abs(perKelvin(this, mean, difference) / expected - 1));
            expected = perKelvin(reference, mean, -difference);
            largest[0] = Math.max(largest[0], Math.abs(perKelvin(this, mean, -difference) / expected - 1));
        });
        return largest[0];
    }

    /**
     * Largest deviation from the law that is followed, of those found on a grid three times as fine as that of the fit.
     *
     * @return part of the heat [-]
     */
    public double relativeError() {
        return relativeError;
    }

    /**
     * The same film of a wall that also radiates to surroundings of the fluid's temperature: as one law it is faster than as two.
     *
     * @param wattsPerK4 emissivity times the constant of Stefan and Boltzmann times the area [W/K⁴], finite, ≥ 0
     * @return the film with radiation, which is added exactly
     * @throws IllegalArgumentException if the number is negative or not finite
     */
    public FittedFilm radiating(double wattsPerK4) {
        if (!(wattsPerK4 >= 0 && wattsPerK4 < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("radiation " + wattsPerK4 + " W/K⁴: expected a finite value ≥ 0");
        }
        return new FittedFilm(middleK, perHalfRange, coefficients, relativeError, wattsPerK4);
    }

    /**
     * Heat alone, without slopes.
     *
     * @param fromK temperature on the giving side [K]
     * @param toK temperature on the taking side [K]
     * @return heat flow [W]
     */
    public double watts(double fromK, double toK) {
        double t = Math.max(-1, Math.min(1, (0.5 * (fromK + toK) - middleK) * perHalfRange));
        double t2 = t * t;
        double x = SmoothMath.sixthRoot(Math.abs(fromK - toK));
        double root = 0;
        double[] c = coefficients;
        for (int o = c.length - POWERS; o >= 0; o -= POWERS) {
            double even = c[o] + t2 * (c[o + 2] + t2 * (c[o + 4] + t2 * c[o + 6]));
            double odd = c[o + 1] + t2 * (c[o + 3] + t2 * c[o + 5]);
            root = root * x + (even + t * odd);
        }
        double from2 = fromK * fromK;
        double to2 = toK * toK;
        return root * root * (fromK - toK) + radiating * (from2 * from2 - to2 * to2);
    }

    @Override
    public void flows(double[] fromK, double[] toK, double[] watts, double[] spare, double[] other, int n) {
        if (terms != 2) {
            for (int i = 0; i < n; i++) {
                watts[i] = watts(fromK[i], toK[i]);
            }
            return;
        }
        FilmLanes.sixthRoots(fromK, toK, spare, n);
        FilmLanes.flows(coefficients, middleK, perHalfRange, fromK, toK, spare, watts, n);
        if (radiating > 0) {
            FilmLanes.radiate(radiating, fromK, toK, watts, n);
        }
    }

    @Override
    public void evaluate(double[] fromK, double[] toK, double[] watts, double[] perFrom, double[] perTo, int n) {
        if (terms != 2) {
            HeatFlow flow = new HeatFlow();
            for (int i = 0; i < n; i++) {
                evaluate(fromK[i], toK[i], flow);
                watts[i] = flow.watts;
                perFrom[i] = flow.perFromKelvin;
                perTo[i] = flow.perToKelvin;
            }
            return;
        }
        FilmLanes.sixthRoots(fromK, toK, watts, n);
        FilmLanes.evaluate(coefficients, middleK, perHalfRange, fromK, toK, watts, perFrom, perTo, n);
        if (radiating > 0) {
            FilmLanes.radiate(radiating, fromK, toK, watts, perFrom, perTo, n);
        }
    }

    @Override
    public void evaluate(double fromK, double toK, HeatFlow out) {
        double difference = fromK - toK;
        double t = (0.5 * (fromK + toK) - middleK) * perHalfRange;
        double tSlope = 0.5 * perHalfRange;
        if (!(t >= -1 && t <= 1)) {
            t = t > 1 ? 1 : -1;
            tSlope = 0;
        }
        double x = SmoothMath.sixthRoot(Math.abs(difference));
        double root = 0;
        double rootByMean = 0;
        double rootByX = 0;
        double[] c = coefficients;
        for (int j = terms - 1; j >= 0; j--) {
            int o = POWERS * j;
            double t2 = t * t;
            double even = c[o] + t2 * (c[o + 2] + t2 * (c[o + 4] + t2 * c[o + 6]));
            double odd = c[o + 1] + t2 * (c[o + 3] + t2 * c[o + 5]);
            double slope = c[o + 1]
                    + t2 * (3 * c[o + 3] + t2 * 5 * c[o + 5])
                    + t * (2 * c[o + 2] + t2 * (4 * c[o + 4] + t2 * 6 * c[o + 6]));
            rootByX = rootByX * x + root;
            root = root * x + (even + t * odd);
            rootByMean = rootByMean * x + slope;
        }
        double perKelvin = root * root;
        double byMean = 2 * difference * root * rootByMean * tSlope;
        // d|ΔT|^(1/6)/dΔT = x / (6 ΔT): no slope is unbounded where nothing drives.
        double byDifference = perKelvin + root * rootByX * x / 3;
        double from3 = fromK * fromK * fromK;
        double to3 = toK * toK * toK;
        out.watts = perKelvin * difference + radiating * (from3 * fromK - to3 * toK);
        out.perFromKelvin = byDifference + byMean + 4 * radiating * from3;
        out.perToKelvin = byMean - byDifference - 4 * radiating * to3;
    }
}
