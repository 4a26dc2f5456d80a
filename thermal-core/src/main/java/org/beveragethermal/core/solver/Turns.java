/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * Where the interpolant of a step turns from rising to falling or back.
 *
 * <p>Theory manual, equation (7.5).
 */
final class Turns {

    private Turns() {}

    /**
     * Turns of (1−θ) y₀ + θ (y₁ + (1−θ) (a + θ b)) within 0 and 1.
     *
     * @param out receives them in ascending order
     * @return their number, none to two
     */
    static int of(double start, double end, double a, double b, double[] out) {
        // The slope is (y₁ − y₀ + a) + 2 (b − a) θ − 3 b θ².
        double constant = end - start + a;
        double half = b - a;
        double square = -3 * b;
        double discriminant = half * half - square * constant;
        if (!(discriminant > 0)) {
            return 0;
        }
        // The larger root by sum, the other by their product: neither loses digits.
        double q = -(half + Math.copySign(Math.sqrt(discriminant), half));
        double one = q / square;
        double other = constant / q;
        double first = Math.min(one, other);
        double second = Math.max(one, other);
        int count = 0;
        if (first > 0 && first < 1) {
            out[count++] = first;
        }
        if (second > 0 && second < 1) {
            out[count++] = second;
        }
        return count;
    }
}
