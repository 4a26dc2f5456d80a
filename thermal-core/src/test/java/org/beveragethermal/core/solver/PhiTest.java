/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Exponential functions of matrices of two rows against closed forms: diagonal, rotating and nilpotent matrices, and against the equation
 * that defines them.
 */
final class PhiTest {

    private static final double ACCURACY = 1e-12;

    /** φ_k of a number: its definition where the number is large, its series where it is small. */
    private static double scalar(int k, double z) {
        if (Math.abs(z) < 1) {
            double term = 1;
            for (int i = 1; i <= k; i++) {
                term /= i;
            }
            double sum = 0;
            for (int j = 1; j < 30; j++) {
                sum += term;
                term *= z / (k + j);
            }
            return sum;
        }
        double value = Math.exp(z);
        double factorial = 1;
        for (int i = 0; i < k; i++) {
            value = (value - 1 / factorial) / z;
            factorial *= i + 1;
        }
        return value;
    }

    @Test
    void ofADiagonalMatrixTheyAreThoseOfItsEntries() {
        Phi phi = new Phi();
        for (double first : new double[] {0, -1e-6, -0.3, -1, -7, -300, -2e5}) {
            for (double second : new double[] {0, -1e-9, -0.3, -0.30001, -5, -1e4}) {
                for (double h : new double[] {1e-3, 1, 12}) {
                    assertThat(phi.of(first, 0, 0, second, h)).isTrue();
                    // Each doubling doubles what rounding has left.
                    double accuracy = ACCURACY + 2e-16 * h * Math.max(-first, -second);
                    for (double entry : new double[] {first, second}) {
                        double z = h * entry;
                        String at = first + ", " + second + ", " + h;
                        assertThat(phi.halfOne + phi.halfOneByA * entry)
                                .as(at)
                                .isCloseTo(scalar(1, 0.5 * z), within(accuracy));
                        assertThat(phi.one + phi.oneByA * entry).as(at).isCloseTo(scalar(1, z), within(accuracy));
                        assertThat(phi.three + phi.threeByA * entry).as(at).isCloseTo(scalar(3, z), within(accuracy));
                        assertThat(phi.four + phi.fourByA * entry).as(at).isCloseTo(scalar(4, z), within(accuracy));
                    }
                }
            }
        }
    }

    /** (0, −w; w, 0) turns: φ₁ is (sin wh/wh) I + ((1 − cos wh)/(wh)) of the quarter turn. */
    @Test
    void ofAMatrixThatTurnsTheyAreSineAndCosine() {
        Phi phi = new Phi();
        for (double w : new double[] {0.1, 1, 6, 30}) {
            assertThat(phi.of(0, -w, w, 0, 1)).isTrue();
            assertThat(phi.one).isCloseTo(Math.sin(w) / w, within(ACCURACY));
            assertThat(phi.oneByA * w).isCloseTo((1 - Math.cos(w)) / w, within(ACCURACY));
        }
    }

    /** Of (0, b; 0, 0), whose square is 0, the series ends after two terms. */
    @Test
    void ofANilpotentMatrixTheyHaveTwoTerms() {
        Phi phi = new Phi();
        assertThat(phi.of(0, 5, 0, 0, 2)).isTrue();
        assertThat(phi.one).isEqualTo(1, within(ACCURACY));
        assertThat(phi.oneByA).isEqualTo(2.0 / 2, within(ACCURACY));
        assertThat(phi.three).isEqualTo(1.0 / 6, within(ACCURACY));
        assertThat(phi.threeByA).isEqualTo(2.0 / 24, within(ACCURACY));
        assertThat(phi.four).isEqualTo(1.0 / 24, within(ACCURACY));
        assertThat(phi.fourByA).isEqualTo(2.0 / 120, within(ACCURACY));
    }

    /** φ₃(z) = 1/6 + z φ₄(z), also where both unknowns act on each other. */
    @Test
    void theThirdFollowsFromTheFourth() {
        SplittableRandom random = new SplittableRandom(20261126L);
        Phi phi = new Phi();
        for (int i = 0; i < 200; i++) {
            double b = random.nextDouble(-3, 3);
            double c = random.nextDouble(-3, 3);
            double a = random.nextDouble(-10, 1);
            double d = random.nextDouble(-10, 1);
            assertThat(phi.of(a, b, c, d, 0.7)).isTrue();
            double trace = a + d;
            double determinant = a * d - b * c;
            double size = 1 + Math.abs(phi.three) + Math.abs(phi.four);
            assertThat(phi.three).isCloseTo(1.0 / 6 - 0.7 * phi.fourByA * determinant, within(ACCURACY * size));
            assertThat(phi.threeByA).isCloseTo(0.7 * (phi.four + phi.fourByA * trace), within(ACCURACY * size));
        }
    }

    @Test
    void whatHasNoNumberIsSaid() {
        Phi phi = new Phi();
        assertThat(phi.of(Double.NaN, 0, 0, -1, 1)).isFalse();
        assertThat(phi.of(-1, 0, 0, Double.NEGATIVE_INFINITY, 1)).isFalse();
        assertThat(phi.of(-1e30, 0, 0, -1, 1)).isFalse();
    }
}
