/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;

/**
 * A stretch of time that a vessel spends in one place and posture.
 *
 * @param place name of the place
 * @param from start, time since the start of the run
 * @param to end, later than {@code from}
 * @param wettedPart part of the liquid's height that one medium touches [-]: 1 in air or fully immersed, less if water stands
 *     beside a part of it
 */
public record Stay(String place, Duration from, Duration to, double wettedPart) {

    /**
     * Checks the parts.
     *
     * @param place name of the place
     * @param from start
     * @param to end
     * @param wettedPart part of the liquid's height that one medium touches [-]
     * @throws IllegalArgumentException if the stretch has no length or the part is not above 0 and at most 1
     */
    public Stay {
        if (from.isNegative() || to.compareTo(from) <= 0 || !(wettedPart > 0 && wettedPart <= 1)) {
            throw new IllegalArgumentException("stay in " + place + " from " + from + " to " + to + ", wetted part "
                    + wettedPart + ": expected a stretch of time and a part above 0 and at most 1");
        }
    }
}
