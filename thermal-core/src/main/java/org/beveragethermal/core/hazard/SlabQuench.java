/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

/**
 * A plane wall of one temperature, put on one side into a fluid of another, its other side insulated: the greatest difference between
 * its sides, as part of the difference between wall and fluid at the start.
 *
 * <p>Series of H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed. (1959), section 3.11: θ = Σ Cₙ cos(ζₙ x/L)
 * exp(−ζₙ² Fo), ζₙ tan ζₙ = Bi, Cₙ = 4 sin ζₙ/(2 ζₙ + sin 2ζₙ), x counted from the insulated side. What is in the vessel takes heat from
 * the other side and, being the same fluid at rest, changes little before the difference is greatest.
 *
 * <p>Theory manual, equation (6.8).
 */
final class SlabQuench {

    private static final int TERMS = 400;
    private static final int HALVINGS = 60;
    private static final double EARLIEST = 1e-4;
    private static final double LATEST = 3;
    private static final int LOOKS = 400;

    private SlabQuench() {}

    /** Greatest difference between the sides over the difference at the start [-], 0 to 1, rising with the Biot number. */
    static double share(double biot) {
        double[] roots = roots(biot);
        double best = 0;
        double step = Math.log(LATEST / EARLIEST) / LOOKS;
        for (int i = 0; i <= LOOKS; i++) {
            best = Math.max(best, difference(roots, EARLIEST * Math.exp(i * step)));
        }
        return Math.min(1, best);
    }

    /** Difference between insulated and wetted side over that at the start, at a Fourier number. */
    static double difference(double biot, double fourier) {
        return difference(roots(biot), fourier);
    }

    private static double difference(double[] roots, double fourier) {
        double sum = 0;
        for (double root : roots) {
            double weight = 4 * Math.sin(root) / (2 * root + Math.sin(2 * root));
            sum += weight * (1 - Math.cos(root)) * Math.exp(-root * root * fourier);
        }
        return sum;
    }

    /** Each lies between n π and (n + ½) π, where z sin z − Bi cos z changes sign. */
    private static double[] roots(double biot) {
        double[] roots = new double[TERMS];
        for (int n = 0; n < TERMS; n++) {
            double low = n * Math.PI;
            double high = low + 0.5 * Math.PI;
            double sign = n % 2 == 0 ? 1 : -1;
            for (int i = 0; i < HALVINGS; i++) {
                double middle = 0.5 * (low + high);
                if (sign * (middle * Math.sin(middle) - biot * Math.cos(middle)) < 0) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            roots[n] = 0.5 * (low + high);
        }
        return roots;
    }
}
