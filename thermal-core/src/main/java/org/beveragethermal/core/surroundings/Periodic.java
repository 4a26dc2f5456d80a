/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.network.TimeFunction;

/**
 * A temperature that swings about a mean as a cosine.
 *
 * @param meanK mean [K]
 * @param amplitudeK half the swing [K]
 * @param periodS period [s]
 * @param warmestAtS a time at which it is warmest [s]
 */
record Periodic(double meanK, double amplitudeK, double periodS, double warmestAtS) implements TimeFunction {

    private double phase(double timeS) {
        return 2 * Math.PI * ((timeS - warmestAtS) / periodS);
    }

    @Override
    public double at(double timeS) {
        return meanK + amplitudeK * Math.cos(phase(timeS));
    }

    @Override
    public double rate(double timeS) {
        return -amplitudeK * 2 * Math.PI / periodS * Math.sin(phase(timeS));
    }
}
