/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether the residuals of a fit look like the errors that it supposes.
 *
 * @param standardised residuals (reading minus prediction) of exact readings in standard deviations, freed of what is known to follow
 *     from the one before, each over the root of 1 − its leverage; run after run
 * @param leverages how much each of these readings determines its own prediction, 0 to 1
 * @param cooksDistances how far all estimates move without each of these readings, in units of their own confidence region (Cook 1977)
 * @param lagOne correlation of neighbouring residuals
 * @param lagOneP probability of a correlation as large or larger by chance
 * @param durbinWatson Durbin and Watson's statistic, about 2 (1 − {@code lagOne})
 * @param changesOfSign number of stretches of one sign, run after run
 * @param changesOfSignP probability of as few stretches by chance (Wald and Wolfowitz 1940)
 * @param normality Anderson and Darling's statistic of the standardised residuals, corrected for estimated mean and scatter
 * @param normalityP probability of a statistic as large for normal errors
 * @param fitP where standard deviations are known: probability of a sum of squares as large by chance
 */
public record ResidualDiagnostics(
        List<Double> standardised,
        List<Double> leverages,
        List<Double> cooksDistances,
        double lagOne,
        double lagOneP,
        double durbinWatson,
        int changesOfSign,
        double changesOfSignP,
        double normality,
        double normalityP,
        OptionalDouble fitP) {

    /** A model is rejected if a test of its residuals has a probability below this. */
    public static final double SIGNIFICANCE = 0.01;

    /**
     * Checks the parts.
     *
     * @param standardised residuals in standard deviations, not modified
     * @param leverages leverage of each, not modified
     * @param cooksDistances Cook's distance of each, not modified
     * @param lagOne correlation of neighbouring residuals
     * @param lagOneP its probability by chance
     * @param durbinWatson Durbin and Watson's statistic
     * @param changesOfSign number of stretches of one sign
     * @param changesOfSignP its probability by chance
     * @param normality Anderson and Darling's statistic
     * @param normalityP its probability by chance
     * @param fitP probability of the sum of squares by chance
     */
    public ResidualDiagnostics {
        standardised = List.copyOf(standardised);
        leverages = List.copyOf(leverages);
        cooksDistances = List.copyOf(cooksDistances);
    }

    /**
     * Whether the residuals show that the model, not chance, is off: neighbours go together, signs change too seldom, or the sum of
     * squares is larger than the known standard deviations allow. Errors that are not normal do not make a model wrong.
     *
     * @return true if one of these has a probability below {@link #SIGNIFICANCE}
     */
    public boolean rejectsModel() {
        return Math.min(lagOneP, changesOfSignP) < SIGNIFICANCE || fitP.orElse(1) < SIGNIFICANCE;
    }

    /**
     * Quantiles for a plot against the normal distribution.
     *
     * @return standardised residuals in ascending order, each with the standard normal quantile of (i − 3/8)/(n + 1/4) (Blom 1958)
     */
    public List<QuantilePair> quantiles() {
        return Examination.quantiles(standardised);
    }

    /**
     * A point of a plot of quantiles.
     *
     * @param normal standard normal quantile
     * @param residual standardised residual
     */
    public record QuantilePair(double normal, double residual) {}
}
