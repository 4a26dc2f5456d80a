/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

/**
 * A temperature that is expected, and the interval it is in with a probability of 90 %.
 *
 * @param meanK mean temperature of the drink [K]
 * @param low90K lower end of the interval [K]
 * @param high90K upper end of the interval [K]
 */
public record Expected(double meanK, double low90K, double high90K) {

    /** Standard deviations to either side of the mean that hold 90 % of a normal distribution. */
    private static final double SPREAD_90 = 1.6449;

    static Expected of(double meanK, double sigmaK) {
        return new Expected(meanK, meanK - SPREAD_90 * sigmaK, meanK + SPREAD_90 * sigmaK);
    }
}
