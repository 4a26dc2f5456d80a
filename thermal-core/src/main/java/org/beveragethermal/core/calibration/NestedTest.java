/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import org.apache.commons.math3.distribution.FDistribution;

/**
 * Whether a larger model fits better than chance would have it.
 *
 * @param statistic mean square that the further parameters take away, over the mean square that is left
 * @param furtherParameters number of further parameters
 * @param degreesOfFreedom degrees of freedom of the larger model
 * @param probability probability of a statistic as large if the smaller model is right
 */
public record NestedTest(double statistic, double furtherParameters, double degreesOfFreedom, double probability) {

    static NestedTest of(double smallerSquares, double smallerFreedom, double largerSquares, double largerFreedom) {
        double further = smallerFreedom - largerFreedom;
        if (!(further > 0.5) || !(largerFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom " + smallerFreedom + " and " + largerFreedom
                    + ": expected a larger model with more parameters, and readings left");
        }
        double statistic = Math.max(0, smallerSquares - largerSquares)
                / further
                / Math.max(largerSquares / largerFreedom, Double.MIN_NORMAL);
        // The other tail, which does not lose digits where it is small.
        double probability = new FDistribution(null, largerFreedom, further)
                .cumulativeProbability(1 / Math.max(statistic, Double.MIN_NORMAL));
        return new NestedTest(statistic, further, largerFreedom, probability);
    }
}
