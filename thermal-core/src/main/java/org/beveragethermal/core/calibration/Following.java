/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Errors that follow each other: a first-order autoregression, ρ to the power of the spacing in units of the usual one, which is
 * that of all runs together: in a run that is read more often the errors of neighbours go together more closely.
 *
 * <p>Rows are freed of what the row before tells of them (Prais and Winsten 1954), the first row included.
 *
 * <p>Theory manual, equation (8.3).
 */
final class Following {

    private static final double MOST = 0.9999;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private Following() {}

    /** Frees a column of rows, residuals or slopes, of the row before in each run, from the last row backwards. */
    static void whiten(Problem problem, double[] column, double following) {
        double usual = problem.spacing();
        int first = 0;
        for (int r = 0; r < problem.runs().size(); r++) {
            Observations seen = problem.runs().get(r).observations();
            int last = -1;
            for (int i = seen.size() - 1; i >= 0; i--) {
                if (problem.isLeftOut(r, i)) {
                    continue;
                }
                if (last >= 0) {
                    double rho = correlation(following, (seen.at(last) - seen.at(i)) / usual);
                    column[first + last] = (column[first + last] - rho * column[first + i]) / Math.sqrt(1 - rho * rho);
                }
                last = i;
            }
            first += seen.size();
        }
    }

    static double correlation(double following, double spacings) {
        // Below 0 spacings are even, and a gap is a whole number of them.
        return Math.pow(following, following < 0 ? Math.rint(spacings) : spacings);
    }

    /** The unit of spacings, the same for all runs: the median of those of all readings that follow each other. */
    static double usualSpacing(List<Problem.Run> runs) {
        double[] gaps = runs.stream()
                .flatMapToDouble(run -> gaps(run.observations()))
                .sorted()
                .toArray();
        return gaps.length == 0 ? 1 : gaps[gaps.length / 2];
    }

    private static DoubleStream gaps(Observations seen) {
        return IntStream.range(1, seen.size()).mapToDouble(i -> seen.at(i) - seen.at(i - 1));
    }

    private static boolean even(Problem problem) {
        double usual = problem.spacing();
        return problem.runs().stream()
                .flatMapToDouble(run -> gaps(run.observations()))
                .allMatch(gap -> Math.abs(gap - usual) <= 1e-6 * usual);
    }

    /** The correlation that makes the deviations most likely, by golden section; the likelihood has one maximum in practice. */
    static double estimate(Problem problem, Rows rows) {
        double low = even(problem) ? -MOST : 0;
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
        double usual = problem.spacing();
        for (Problem.Run run : problem.runs()) {
            Observations seen = run.observations();
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
