/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Turns of cubics whose slope has known roots. */
final class TurnsTest {

    private static double[] turns(double constant, double linear, double square, double cube) {
        double[] out = new double[2];
        int count = Turns.of(constant, constant + linear + square + cube, -square - cube, -cube, out);
        return Arrays.copyOf(out, count);
    }

    /** The cubic of slope k (θ − r)(θ − s). */
    private static double[] turnsOfRoots(double k, double r, double s) {
        return turns(5, k * r * s, -k * (r + s) / 2, k / 3);
    }

    @Test
    void rootsOfTheSlopeWithinTheStepAreFound() {
        double[] roots = {-1.5, -0.2, 0.1, 0.35, 0.8, 1.2, 7};
        for (double k : new double[] {3, -0.5}) {
            for (int i = 0; i < roots.length; i++) {
                for (int j = i + 1; j < roots.length; j++) {
                    double[] expected = Arrays.stream(new double[] {roots[i], roots[j]})
                            .filter(root -> root > 0 && root < 1)
                            .toArray();
                    assertThat(turnsOfRoots(k, roots[i], roots[j])).containsExactly(expected, within(1e-12));
                }
            }
        }
    }

    @Test
    void aParabolaTurnsOnce() {
        assertThat(turns(2, -1, 2, 0)).containsExactly(new double[] {0.25}, within(1e-12));
        assertThat(turns(2, 1, 2, 0)).isEmpty();
    }

    @Test
    void endsAndPointsOfInflectionAreNoTurns() {
        assertThat(turnsOfRoots(1, 0, 1)).isEmpty();
        assertThat(turnsOfRoots(3, 0.5, 0.5)).isEmpty();
        assertThat(turns(2, 1, 0, 1)).isEmpty();
        assertThat(turns(2, 0, 0, 0)).isEmpty();
    }
}
