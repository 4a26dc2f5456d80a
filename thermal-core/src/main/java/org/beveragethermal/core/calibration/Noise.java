/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

/**
 * Errors of readings: their scatter and how much each follows the one before.
 *
 * @param scatter factor on the deviations of the readings, &gt; 0
 * @param following correlation of errors one usual spacing apart, above −1 and below 1; 0 if they are independent
 */
record Noise(double scatter, double following) {

    static final Noise UNIT = new Noise(1, 0);
}
