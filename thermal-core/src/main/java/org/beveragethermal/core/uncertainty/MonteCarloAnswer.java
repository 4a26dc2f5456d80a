/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

/**
 * What {@link AdaptiveMonteCarlo} found.
 *
 * @param mean mean of the result
 * @param standardUncertainty its standard deviation
 * @param interval coverage interval with equal tails
 * @param shortest shortest coverage interval
 * @param draws number of draws
 * @param tolerance numerical tolerance: half a unit of the last wanted digit of the standard uncertainty
 * @param stable whether all figures are sure to the tolerance; false if the draws were used up before
 */
public record MonteCarloAnswer(
        double mean,
        double standardUncertainty,
        Interval interval,
        Interval shortest,
        int draws,
        double tolerance,
        boolean stable) {}
