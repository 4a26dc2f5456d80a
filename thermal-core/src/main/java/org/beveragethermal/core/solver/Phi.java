/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * Exponential functions of a matrix of two rows times a step, φ₀(z) = e^z and φ_{k+1}(z) = (φ_k(z) − 1/k!)/z, which an exponential method takes
 * its steps with.
 *
 * <p>By the theorem of Cayley and Hamilton each is p I + q B, with B = hA/2^s: two numbers, which depend on trace and determinant alone. They
 * are found by Taylor's series where B is small and by doubling from there on (formulas from memory, held to closed forms by PhiTest):
 * nothing is divided, so that equal, complex and zero eigenvalues are no special cases.
 *
 * <p>Mutable; owned by one run.
 *
 * <p>Theory manual, equation (7.8).
 */
final class Phi {

    /** Size of B up to which its series is summed. */
    private static final double SMALL = 0.5;

    /** Terms of the series: the next is below 1e-15 of the sum. */
    private static final int TERMS = 11;
    /** More doublings than any step needs: a mode is gone long before. */
    private static final int MOST_DOUBLINGS = 60;

    private static final double[] INVERSE_FACTORIAL = inverseFactorials();

    /** φ₀ of the step: part of I, and part of A [s]. */
    double zero;

    double zeroByA;
    /** φ₁ of half the step: part of I, and part of A [s]. */
    double halfOne;

    double halfOneByA;
    /** φ₁, φ₃ and φ₄ of the step: parts of I, and parts of A [s]. */
    double one;

    double oneByA;
    double three;
    double threeByA;
    double four;
    double fourByA;

    private static double[] inverseFactorials() {
        double[] inverse = new double[TERMS + 4];
        inverse[0] = 1;
        for (int i = 1; i < inverse.length; i++) {
            inverse[i] = inverse[i - 1] / i;
        }
        return inverse;
    }

    /** Finds them for the matrix (a, b; c, d) [1/s] and a step [s]; false if that is not possible in numbers. */
    boolean of(double a, double b, double c, double d, double h) {
        double trace = h * (a + d);
        double determinant = h * h * (a * d - b * c);
        double size = Math.abs(trace) + Math.sqrt(Math.abs(determinant));
        if (!(size < Double.POSITIVE_INFINITY)) {
            return false;
        }
        int doublings = Math.max(1, Math.getExponent(size / SMALL) + 1);
        if (doublings > MOST_DOUBLINGS) {
            return false;
        }
        double part = 1.0 / (1L << doublings);
        double t = trace * part;
        double g = determinant * part * part;
        // φ₄(B) = Σ B^j/(j+4)!, by Horner; B times p I + q B is −q g I + (p + q t) B.
        double p4 = INVERSE_FACTORIAL[TERMS + 3];
        double q4 = 0;
        for (int j = TERMS + 2; j >= 4; j--) {
            double p = INVERSE_FACTORIAL[j] - q4 * g;
            q4 = p4 + q4 * t;
            p4 = p;
        }
        double p3 = 1.0 / 6 - q4 * g;
        double q3 = p4 + q4 * t;
        double p2 = 0.5 - q3 * g;
        double q2 = p3 + q3 * t;
        double p1 = 1 - q2 * g;
        double q1 = p2 + q2 * t;
        double p0 = 1 - q1 * g;
        double q0 = p1 + q1 * t;
        for (int i = 0; i < doublings; i++) {
            if (i == doublings - 1) {
                halfOne = p1;
                halfOneByA = q1 * part * h;
            }
            // (p I + q B)(r I + s B) = (p r − q s g) I + (p s + q r + q s t) B.
            double four0 = p2 * p2 - q2 * q2 * g;
            double four1 = q2 * (2 * p2 + q2 * t);
            double three0 = p1 * p2 - q1 * q2 * g;
            double three1 = p1 * q2 + q1 * p2 + q1 * q2 * t;
            double two0 = p1 * p1 - q1 * q1 * g;
            double two1 = q1 * (2 * p1 + q1 * t);
            double one0 = p0 * p1 - q0 * q1 * g;
            double one1 = p0 * q1 + q0 * p1 + q0 * q1 * t;
            double zero0 = p0 * p0 - q0 * q0 * g;
            double zero1 = q0 * (2 * p0 + q0 * t);
            p4 = 0.0625 * (four0 + 2 * (p3 + p4));
            q4 = 0.0625 * (four1 + 2 * (q3 + q4));
            p3 = 0.125 * (three0 + 2 * p3 + p2);
            q3 = 0.125 * (three1 + 2 * q3 + q2);
            p2 = 0.25 * (two0 + 2 * p2);
            q2 = 0.25 * (two1 + 2 * q2);
            p1 = 0.5 * (one0 + p1);
            q1 = 0.5 * (one1 + q1);
            p0 = zero0;
            q0 = zero1;
        }
        double byA = part * h;
        zero = p0;
        zeroByA = q0 * byA;
        one = p1;
        oneByA = q1 * byA;
        three = p3;
        threeByA = q3 * byA;
        four = p4;
        fourByA = q4 * byA;
        return true;
    }
}
