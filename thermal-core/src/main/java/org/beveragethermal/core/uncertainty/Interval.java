/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.Arrays;

/**
 * A coverage interval with equal tails.
 *
 * @param low lower end
 * @param median value with half of the probability on either side
 * @param high upper end
 * @param probability probability inside
 */
public record Interval(double low, double median, double high, double probability) {

    /**
     * The interval of a sample, by linear interpolation between order statistics.
     *
     * @param values the sample, finite, at least two; not modified
     * @param probability probability inside, between 0 and 1
     * @return the interval
     * @throws IllegalArgumentException if the sample is too small or the probability outside its range
     */
    public static Interval of(double[] values, double probability) {
        if (values.length < 2 || !(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("interval of " + values.length + " values at probability " + probability
                    + ": expected at least 2 values and a probability between 0 and 1");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double tail = (1 - probability) / 2;
        return new Interval(quantile(sorted, tail), quantile(sorted, 0.5), quantile(sorted, 1 - tail), probability);
    }

    private static double quantile(double[] sorted, double p) {
        double place = p * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
