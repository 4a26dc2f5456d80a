/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;

/** Compares the slopes that a path states with differences of its flows. */
public final class PathDerivatives {

    private static final double STEP_K = 1e-4;
    private static final double STEP_PART = 1e-5;
    private static final double LEAST_STEP = 1e-8;

    private PathDerivatives() {}

    /**
     * Checks every slope at one state.
     *
     * @param path the path
     * @param temperaturesK temperature of each end [K], not modified
     * @param amounts amounts of all ends in order, not modified
     * @param accuracy allowed difference as a part of the slope
     */
    public static void check(Path path, double[] temperaturesK, double[] amounts, double accuracy) {
        PathEvaluation at = new PathEvaluation(path);
        at.evaluate(path, 0, temperaturesK, amounts);
        int inputs = temperaturesK.length + amounts.length;
        for (int account = 0; account < path.accounts().size(); account++) {
            for (int j = 0; j < inputs; j++) {
                int amount = j - temperaturesK.length;
                double step = amount < 0 ? STEP_K : Math.max(LEAST_STEP, STEP_PART * amounts[amount]);
                double numeric = (flow(path, temperaturesK, amounts, account, j, step)
                                - flow(path, temperaturesK, amounts, account, j, -step))
                        / (2 * step);
                double scale = Math.abs(numeric) + 1e-3 * Math.abs(at.flowOf(account)) + 1e-9;
                assertThat(at.derivativeOf(account, j))
                        .as(path.name() + " account " + account + " input " + j)
                        .isCloseTo(numeric, within(accuracy * scale));
            }
        }
    }

    private static double flow(Path path, double[] temperatures, double[] amounts, int account, int j, double step) {
        double[] t = temperatures.clone();
        double[] a = amounts.clone();
        if (j < t.length) {
            t[j] += step;
        } else {
            a[j - t.length] += step;
        }
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, t, a);
        return e.flowOf(account);
    }
}
