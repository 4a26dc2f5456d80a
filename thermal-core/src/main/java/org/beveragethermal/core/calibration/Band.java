/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;

/**
 * Predictions with bands, by linearisation.
 *
 * @param probability probability inside
 * @param points one per value that the model predicts
 * @param undetermined parameters that the readings of the fit do not determine and that these predictions depend on; empty as a rule.
 *     If there are some the bands hold only as far as those keep the values that they have: they say nothing of what else would have
 *     fitted as well
 */
public record Band(double probability, List<Point> points, List<String> undetermined) {

    /**
     * A predicted value with its bands.
     *
     * @param value the prediction at the estimates
     * @param standardError its standard error
     * @param confidenceLow lower end of where the true value is
     * @param confidenceHigh upper end of where the true value is
     * @param predictionLow lower end of where a new reading would be
     * @param predictionHigh upper end of where a new reading would be
     */
    public record Point(
            double value,
            double standardError,
            double confidenceLow,
            double confidenceHigh,
            double predictionLow,
            double predictionHigh) {}

    /**
     * Checks the parts.
     *
     * @param probability probability inside
     * @param points one per value, not modified
     * @param undetermined parameters that are not determined and matter, not modified
     */
    public Band {
        points = List.copyOf(points);
        undetermined = List.copyOf(undetermined);
    }
}
