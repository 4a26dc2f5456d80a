/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.util.Arrays;

/**
 * An interval of a sample with equal tails, by its nearest members: draws that never reach a temperature have no value to interpolate.
 *
 * @param low lower end
 * @param median middle
 * @param high upper end; infinite if a temperature is never reached there
 */
public record Band(double low, double median, double high) {

    private static final double USUAL = 0.90;

    /**
     * The 90 % interval of a sample.
     *
     * @param sample at least one value, infinite for never; not modified
     * @return its band
     */
    public static Band of(double[] sample) {
        return of(sample, USUAL);
    }

    /**
     * An interval of a sample.
     *
     * @param sample at least one value, infinite for never; not modified
     * @param probability part of the sample inside, above 0 and below 1
     * @return its band
     */
    public static Band of(double[] sample, double probability) {
        double[] sorted = sample.clone();
        Arrays.sort(sorted);
        double tail = (1 - probability) / 2;
        return new Band(quantile(sorted, tail), quantile(sorted, 0.5), quantile(sorted, 1 - tail));
    }

    private static double quantile(double[] sorted, double part) {
        return sorted[(int) Math.round(part * (sorted.length - 1))];
    }
}
