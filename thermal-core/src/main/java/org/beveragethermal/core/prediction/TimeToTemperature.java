/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;

/** Answer to "when does it reach this temperature?". */
public sealed interface TimeToTemperature {

    /**
     * The temperature is reached and not left again in the time that was looked at.
     *
     * @param after time since the start
     * @param secondsPerKelvin how much later it would be for a target one kelvin further along [s/K], ≥ 0; large values mean
     *     that the target lies close to where the temperature levels off, and that the time is not worth much
     */
    record Reached(Duration after, double secondsPerKelvin) implements TimeToTemperature {}

    /**
     * The temperature is reached and later crossed again the other way.
     *
     * @param after time since the start
     * @param lostAfter time since the start at which it is crossed back
     */
    record ReachedThenLost(Duration after, Duration lostAfter) implements TimeToTemperature {}

    /**
     * The temperature is not reached in the time that was looked at.
     *
     * @param closestK the temperature nearest to the target that occurred [K]
     * @param atEndK the temperature at the end [K]
     * @param asymptote where the temperature tends to, as far as this run shows; a target beyond where it levels off needs other
     *     surroundings, and where it is still moving a longer run shows more
     */
    record NeverReached(double closestK, double atEndK, Asymptote asymptote) implements TimeToTemperature {}
}
