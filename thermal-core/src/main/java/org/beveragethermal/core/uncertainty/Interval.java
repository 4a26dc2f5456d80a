/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.Arrays;

/**
 * A coverage interval: with equal tails, unless it is said to be the shortest.
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
        double[] sorted = sorted(values, probability);
        double tail = (1 - probability) / 2;
        return new Interval(quantile(sorted, tail), quantile(sorted, 0.5), quantile(sorted, 1 - tail), probability);
    }

    /**
     * The shortest interval of a sample that holds a part of it (JCGM 101:2008, 7.7.4).
     *
     * @param values the sample, finite, at least two; not modified
     * @param probability probability inside, between 0 and 1
     * @return the interval, the lowest of several
     * @throws IllegalArgumentException if the sample is too small or the probability outside its range
     */
    public static Interval shortest(double[] values, double probability) {
        double[] sorted = sorted(values, probability);
        int across = Math.max(1, Math.min(sorted.length - 1, (int) Math.round(probability * sorted.length)));
        int best = 0;
        for (int low = 1; low + across < sorted.length; low++) {
            if (sorted[low + across] - sorted[low] < sorted[best + across] - sorted[best]) {
                best = low;
            }
        }
        return new Interval(sorted[best], quantile(sorted, 0.5), sorted[best + across], probability);
    }

    private static double[] sorted(double[] values, double probability) {
        if (values.length < 2 || !(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("interval of " + values.length + " values at probability " + probability
                    + ": expected at least 2 values and a probability between 0 and 1");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    private static double quantile(double[] sorted, double p) {
        double place = p * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        double width = sorted[above] - sorted[below];
        double part = place - below;
        // Figures as large as a double stand for "as much as you like"; between them and their negatives no double is
        // wide enough.
        return Double.isInfinite(width)
                ? (1 - part) * sorted[below] + part * sorted[above]
                : sorted[below] + part * width;
    }
}
