/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.util.Arrays;

/**
 * The 90 % interval of a sample, by its nearest members: draws that never reach a temperature have no value to interpolate.
 *
 * @param low lower end
 * @param median middle
 * @param high upper end; infinite if a temperature is never reached there
 */
public record Band(double low, double median, double high) {

    private static final double TAIL = 0.05;

    /**
     * The band of a sample.
     *
     * @param sample at least one value, infinite for never; not modified
     * @return its band
     */
    public static Band of(double[] sample) {
        double[] sorted = sample.clone();
        Arrays.sort(sorted);
        return new Band(quantile(sorted, TAIL), quantile(sorted, 0.5), quantile(sorted, 1 - TAIL));
    }

    private static double quantile(double[] sorted, double part) {
        return sorted[(int) Math.round(part * (sorted.length - 1))];
    }
}
