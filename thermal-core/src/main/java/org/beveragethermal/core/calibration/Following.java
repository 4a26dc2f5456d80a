/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Errors that follow each other: a first-order autoregression, ρ to the power of the spacing in units of the usual one.
 *
 * <p>Rows are freed of what the row before tells of them (Prais and Winsten 1954), the first row included.
 */
final class Following {

    private static final double MOST = 0.9999;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private Following() {}

    /** Frees residuals and slopes of a run of the error before, from the last row backwards. */
    static void whiten(Rows rows, Observations seen, int first, double following, boolean @Nullable [] leftOut) {
        double usual = usualSpacing(seen);
        int last = -1;
        for (int i = seen.size() - 1; i >= 0; i--) {
            if (leftOut != null && leftOut[i]) {
                continue;
            }
            if (last >= 0) {
                step(rows, first + i, first + last, correlation(following, (seen.at(last) - seen.at(i)) / usual));
            }
            last = i;
        }
    }

    private static void step(Rows rows, int before, int row, double rho) {
        double rest = Math.sqrt(1 - rho * rho);
        rows.residuals[row] = (rows.residuals[row] - rho * rows.residuals[before]) / rest;
        double[] slopes = rows.slopes[row];
        for (int k = 0; k < slopes.length; k++) {
            slopes[k] = (slopes[k] - rho * rows.slopes[before][k]) / rest;
        }
    }

    static double correlation(double following, double spacings) {
        // Below 0 spacings are even, and a gap is a whole number of them.
        return Math.pow(following, following < 0 ? Math.rint(spacings) : spacings);
    }

    static double usualSpacing(Observations seen) {
        if (seen.size() < 2) {
            return 1;
        }
        double[] gaps = new double[seen.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = seen.at(i + 1) - seen.at(i);
        }
        Arrays.sort(gaps);
        return gaps[gaps.length / 2];
    }

    private static boolean even(Observations seen) {
        double usual = usualSpacing(seen);
        for (int i = 1; i < seen.size(); i++) {
            if (Math.abs(seen.at(i) - seen.at(i - 1) - usual) > 1e-6 * usual) {
                return false;
            }
        }
        return true;
    }

    /** The correlation that makes the deviations most likely, by golden section; the likelihood has one maximum in practice. */
    static double estimate(Problem problem, Rows rows) {
        boolean even = problem.runs().stream().allMatch(run -> even(run.observations()));
        double low = even ? -MOST : 0;
        double high = MOST;
        for (int i = 0; i < 60; i++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (cost(problem, rows, left) < cost(problem, rows, right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return 0.5 * (low + high);
    }

    /** Twice the negative logarithm of the likelihood, the scatter at its best or as known. */
    private static double cost(Problem problem, Rows rows, double following) {
        double squares = 0;
        double logs = 0;
        int number = 0;
        int first = 0;
        for (Problem.Run run : problem.runs()) {
            Observations seen = run.observations();
            double usual = usualSpacing(seen);
            int before = -1;
            for (int i = 0; i < seen.size(); i++) {
                double e = rows.deviations[first + i];
                if (Double.isNaN(e)) {
                    continue;
                }
                double innovation = e;
                if (before >= 0) {
                    double rho = correlation(following, (seen.at(i) - seen.at(before)) / usual);
                    innovation = (e - rho * rows.deviations[first + before]) / Math.sqrt(1 - rho * rho);
                    logs += Math.log1p(-rho * rho);
                }
                squares += innovation * innovation;
                number++;
                before = i;
            }
            first += seen.size();
        }
        return problem.settings().scatterKnown()
                ? squares + logs
                : number * Math.log(Math.max(squares, Double.MIN_NORMAL)) + logs;
    }
}
