/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunctionLagrangeForm;

/**
 * A fitted film of two terms for many pairs of temperatures, as short loops without branches that the virtual machine turns into vector
 * instructions: √(Q/ΔT) = a(T_m) + b(T_m) |ΔT|^(1/6).
 *
 * <p>Coefficients are copied into locals: read from their array they might be what the loops write, and nothing would be vectorised.
 */
final class FilmLanes {

    /** The start of the sixth root holds for x from 0.3 to 1.7, |ΔT|^(1/8). */
    private static final double START_MIDDLE = 1;

    private static final double START_HALF = 0.7;
    private static final int START_POINTS = 5;
    /** x^(4/3) within 4e-4 of 1: coefficients of powers of (x − 1)/0.7. */
    private static final double[] START = startOfRoot();

    private FilmLanes() {}

    /** The polynomial that meets x^(4/3) at Chebyshev's points. */
    private static double[] startOfRoot() {
        double[] points = IntStream.range(0, START_POINTS)
                .mapToDouble(i -> Math.cos(Math.PI * (i + 0.5) / START_POINTS))
                .sorted()
                .toArray();
        double[] values = Arrays.stream(points)
                .map(t -> Math.pow(START_MIDDLE + START_HALF * t, 4.0 / 3))
                .toArray();
        return new PolynomialFunctionLagrangeForm(points, values).getCoefficients();
    }

    /** Sixth roots of the differences, by square roots, a polynomial and one step of Halley's on y³ = √|ΔT|: to 1e-9 from 0.1 mK to 70 K. */
    static void sixthRoots(double[] fromK, double[] toK, double[] out, int n) {
        double c0 = START[0];
        double c1 = START[1];
        double c2 = START[2];
        double c3 = START[3];
        double c4 = START[4];
        for (int i = 0; i < n; i++) {
            double cube = Math.sqrt(Math.abs(fromK[i] - toK[i]));
            double t = (Math.sqrt(Math.sqrt(cube)) - START_MIDDLE) / START_HALF;
            double y = c0 + t * (c1 + t * (c2 + t * (c3 + t * c4)));
            double y3 = y * y * y;
            out[i] = y * (y3 + 2 * cube) / (2 * y3 + cube);
        }
    }

    /** Heat [W] of all pairs; the roots are in {@code roots}. */
    static void flows(
            double[] c,
            double middleK,
            double perHalf,
            double[] fromK,
            double[] toK,
            double[] roots,
            double[] watts,
            int n) {
        double p0 = c[0];
        double p1 = c[1];
        double p2 = c[2];
        double p3 = c[3];
        double p4 = c[4];
        double p5 = c[5];
        double p6 = c[6];
        double q0 = c[7];
        double q1 = c[8];
        double q2 = c[9];
        double q3 = c[10];
        double q4 = c[11];
        double q5 = c[12];
        double q6 = c[13];
        for (int i = 0; i < n; i++) {
            double t = Math.max(-1, Math.min(1, (0.5 * (fromK[i] + toK[i]) - middleK) * perHalf));
            double still = p0 + t * (p1 + t * (p2 + t * (p3 + t * (p4 + t * (p5 + t * p6)))));
            double moving = q0 + t * (q1 + t * (q2 + t * (q3 + t * (q4 + t * (q5 + t * q6)))));
            double root = still + moving * roots[i];
            watts[i] = root * root * (fromK[i] - toK[i]);
        }
    }

    /** Heat [W] and slopes [W/K] of all pairs; {@code watts} holds the roots before. */
    static void evaluate(
            double[] c,
            double middleK,
            double perHalf,
            double[] fromK,
            double[] toK,
            double[] watts,
            double[] perFrom,
            double[] perTo,
            int n) {
        double p0 = c[0];
        double p1 = c[1];
        double p2 = c[2];
        double p3 = c[3];
        double p4 = c[4];
        double p5 = c[5];
        double p6 = c[6];
        double q0 = c[7];
        double q1 = c[8];
        double q2 = c[9];
        double q3 = c[10];
        double q4 = c[11];
        double q5 = c[12];
        double q6 = c[13];
        for (int i = 0; i < n; i++) {
            double free = (0.5 * (fromK[i] + toK[i]) - middleK) * perHalf;
            double t = Math.max(-1, Math.min(1, free));
            double still = p0 + t * (p1 + t * (p2 + t * (p3 + t * (p4 + t * (p5 + t * p6)))));
            double moving = q0 + t * (q1 + t * (q2 + t * (q3 + t * (q4 + t * (q5 + t * q6)))));
            double stillBy = p1 + t * (2 * p2 + t * (3 * p3 + t * (4 * p4 + t * (5 * p5 + t * 6 * p6))));
            double movingBy = q1 + t * (2 * q2 + t * (3 * q3 + t * (4 * q4 + t * (5 * q5 + t * 6 * q6))));
            // No slope in the mean where the coefficients keep their end values; a comparison would not be vectorised.
            double scale = perHalf * (1 - Math.min(1, 1e300 * Math.abs(free - t)));
            double x = watts[i];
            double difference = fromK[i] - toK[i];
            double root = still + moving * x;
            double byMean = difference * root * (stillBy + movingBy * x) * scale;
            double byDifference = root * (root + moving * x / 3);
            watts[i] = root * root * difference;
            perFrom[i] = byMean + byDifference;
            perTo[i] = byMean - byDifference;
        }
    }

    /** Adds radiation [W/K⁴] to heat. */
    static void radiate(double wattsPerK4, double[] fromK, double[] toK, double[] watts, int n) {
        for (int i = 0; i < n; i++) {
            double from2 = fromK[i] * fromK[i];
            double to2 = toK[i] * toK[i];
            watts[i] += wattsPerK4 * (from2 * from2 - to2 * to2);
        }
    }

    /** Adds radiation [W/K⁴] to heat and slopes. */
    static void radiate(
            double wattsPerK4, double[] fromK, double[] toK, double[] watts, double[] perFrom, double[] perTo, int n) {
        for (int i = 0; i < n; i++) {
            double from2 = fromK[i] * fromK[i];
            double to2 = toK[i] * toK[i];
            watts[i] += wattsPerK4 * (from2 * from2 - to2 * to2);
            perFrom[i] += 4 * wattsPerK4 * from2 * fromK[i];
            perTo[i] -= 4 * wattsPerK4 * to2 * toK[i];
        }
    }
}
