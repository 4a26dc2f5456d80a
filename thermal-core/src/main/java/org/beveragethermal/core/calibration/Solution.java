/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * What readings tell at the end of a search, under given errors.
 *
 * @param rows rows of residuals with the slopes of the information
 * @param information singular values and covariance in standardised residuals, before {@code spread}
 * @param leverages for each reading, how much it determines its own prediction
 * @param effective effective number of parameters: what readings, not priors, determine
 * @param used number of readings that count, censored ones included
 * @param scatter scatter of readings, estimated anew from these rows
 * @param spread factor on covariances: 1 for least squares, that of the sandwich for a robust loss
 * @param costSpread factor that differences of the cost are to be divided by
 * @param influenceSlope mean slope of the influence of exact readings, by which a robust loss counts them less: 1 for least squares
 * @param deviance twice the negative logarithm of the likelihood (of the loss if it is robust), priors included
 */
@SuppressWarnings("ArrayRecordComponent") // internal, never compared
record Solution(
        Rows rows,
        Information information,
        double[] leverages,
        double effective,
        int used,
        double scatter,
        double spread,
        double costSpread,
        double influenceSlope,
        double deviance) {

    /** Normal errors lie within this many standard deviations half of the time. */
    private static final double NORMAL_QUARTILE = 0.6744897501960817;
    /** Scatter below this part of the readings' size is rounding. */
    private static final double ROUNDING = 1e-14;
    /** Scatter of readings that are all 0; the square of its inverse is still a number. */
    private static final double LEAST = 1e-140;

    /** Whether errors and parameters have to be estimated in turn. */
    static boolean needsTurns(Problem problem) {
        Problem.Settings settings = problem.settings();
        return settings.following()
                || (!settings.scatterKnown()
                        && (problem.priors() > 0
                                || problem.censored()
                                || !settings.loss().isSquares()));
    }

    static Solution of(Problem problem, Minimum minimum, Noise noise) {
        Rows rows = problem.rows(minimum.theta(), minimum.predicted(), noise, true);
        int slots = problem.slots().size();
        boolean[] fixed = Search.fixed(problem);
        int[] free = new int[slots];
        int p = 0;
        for (int k = 0; k < slots; k++) {
            if (!fixed[k] && !minimum.atBound()[k]) {
                free[p++] = k;
            }
        }
        Information information = Information.of(rows.slopes(), Arrays.copyOf(free, p), slots);
        double[] leverages = new double[rows.readings];
        double[] gradient = new double[slots];
        double effective = 0;
        for (int i = 0; i < rows.readings; i++) {
            for (int k = 0; k < slots; k++) {
                gradient[k] = rows.slopes()[k][i];
            }
            leverages[i] = Math.min(1, information.variance(gradient));
            effective += leverages[i];
        }
        return summed(problem, noise, rows, information, leverages, effective);
    }

    /** The solution of plain least squares under the scatter that it says, found under a scatter of 1. */
    Solution scattered() {
        return new Solution(
                rows.scattered(scatter),
                information.scattered(scatter),
                leverages,
                effective,
                used,
                scatter,
                spread,
                costSpread,
                influenceSlope,
                deviance);
    }

    private static Solution summed(
            Problem problem, Noise noise, Rows rows, Information information, double[] leverages, double effective) {
        Loss loss = problem.settings().loss();
        int exact = 0;
        double squares = 0;
        double influences = 0;
        double slopes = 0;
        double slopesSquared = 0;
        for (int i = 0; i < rows.readings; i++) {
            if (!Double.isNaN(rows.deviations[i])) {
                double r = rows.innovations[i];
                double slope = loss.influenceSlope(r);
                exact++;
                squares += r * r;
                influences += loss.influence(r) * loss.influence(r);
                slopes += slope;
                slopesSquared += slope * slope;
            }
        }
        int used = exact + censored(problem);
        double rest = Math.max(used - effective, 1e-3);
        double spread = 1;
        double costSpread = 1;
        double influenceSlope = 1;
        double scatter;
        if (loss.isSquares()) {
            scatter = noise.scatter() * Math.sqrt(squares / Math.max(rest - censoredTerm(problem, rows), 1e-3));
        } else {
            influenceSlope = Math.max(slopes / exact, 1e-3);
            double squared = influenceSlope * influenceSlope;
            double variance = slopesSquared / exact - squared;
            double correction = 1 + effective / exact * variance / squared;
            // Huber, Robust Statistics (1981), section 7.6.
            spread = correction * correction * influences / rest / squared;
            costSpread = influences / rest / influenceSlope;
            double[] sizes = new double[exact];
            int n = 0;
            for (int i = 0; i < rows.readings; i++) {
                if (!Double.isNaN(rows.deviations[i])) {
                    sizes[n++] = Math.abs(rows.innovations[i]);
                }
            }
            scatter = noise.scatter() * new Median().evaluate(sizes) / NORMAL_QUARTILE * Math.sqrt(exact / rest);
        }
        return new Solution(
                rows,
                information,
                leverages,
                effective,
                used,
                Math.max(scatter, least(problem)),
                spread,
                costSpread,
                influenceSlope,
                deviance(problem, noise, rows, exact));
    }

    private static int censored(Problem problem) {
        int number = 0;
        for (int r = 0; r < problem.runs().size(); r++) {
            Observations seen = problem.runs().get(r).observations();
            for (int i = 0; i < seen.size(); i++) {
                number += seen.kind(i) != Observations.Kind.EXACT && !problem.isLeftOut(r, i) ? 1 : 0;
            }
        }
        return number;
    }

    /** How many of the censored readings do not count where the scatter is estimated: all of them, less Σ z φ(z)/Φ(z). */
    private static double censoredTerm(Problem problem, Rows rows) {
        double term = 0;
        int row = 0;
        for (int r = 0; r < problem.runs().size(); r++) {
            Observations seen = problem.runs().get(r).observations();
            for (int i = 0; i < seen.size(); i++, row++) {
                if (seen.kind(i) != Observations.Kind.EXACT && !problem.isLeftOut(r, i)) {
                    double z = Tail.quantile(-0.5 * rows.residuals[row] * rows.residuals[row]);
                    term += 1 - (Double.isInfinite(z) ? 0 : z * Tail.hazard(z));
                }
            }
        }
        return term;
    }

    /** What the scatter can at least be: rounding of the display and of numbers. */
    private static double least(Problem problem) {
        double size = 0;
        double rounding = 0;
        for (Problem.Run run : problem.runs()) {
            Observations seen = run.observations();
            for (int i = 0; i < seen.size(); i++) {
                size = Math.max(size, Math.abs(seen.value(i)) / seen.deviation(i));
                rounding = Math.max(rounding, seen.quantum() / Math.sqrt(12) / seen.deviation(i));
            }
        }
        return Math.max(rounding, Math.max(ROUNDING * size, LEAST));
    }

    private static double deviance(Problem problem, Noise noise, Rows rows, int exact) {
        double sum = 0;
        double exactSquares = 0;
        for (int i = 0; i < rows.residuals.length; i++) {
            boolean isExact = i < rows.readings && !Double.isNaN(rows.deviations[i]);
            exactSquares += isExact ? rows.residuals[i] * rows.residuals[i] : 0;
            sum += isExact ? 0 : rows.residuals[i] * rows.residuals[i];
        }
        double logs = 0;
        for (int r = 0, row = 0; r < problem.runs().size(); r++) {
            Observations seen = problem.runs().get(r).observations();
            double usual = problem.spacing();
            int before = -1;
            for (int i = 0; i < seen.size(); i++, row++) {
                if (Double.isNaN(rows.deviations[row])) {
                    continue;
                }
                double deviation = problem.deviation(seen, i, 1);
                logs += Math.log(2 * Math.PI * deviation * deviation);
                if (problem.settings().following() && before >= 0) {
                    double rho = Following.correlation(noise.following(), (seen.at(i) - seen.at(before)) / usual);
                    logs += Math.log1p(-rho * rho);
                }
                before = i;
            }
        }
        if (problem.settings().scatterKnown()) {
            return sum + exactSquares + logs;
        }
        if (needsTurns(problem)
                && (problem.censored() || !problem.settings().loss().isSquares())) {
            return sum + exactSquares + logs + 2 * exact * Math.log(noise.scatter());
        }
        // The scatter at its most likely value.
        double variance =
                Math.max(exactSquares / Math.max(exact, 1), Double.MIN_NORMAL) * noise.scatter() * noise.scatter();
        return sum + exact * (1 + Math.log(Math.max(variance, Double.MIN_NORMAL))) + logs;
    }
}
