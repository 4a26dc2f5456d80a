/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.Objects;
import org.beveragethermal.core.surroundings.Surroundings;

/**
 * A stretch of time in some surroundings.
 *
 * @param surroundings where
 * @param duration how long, > 0
 */
public record Exposure(Surroundings surroundings, Duration duration) {

    /**
     * Checks the duration.
     *
     * @param surroundings where
     * @param duration how long, > 0
     * @throws IllegalArgumentException if the duration is not positive
     */
    public Exposure {
        Objects.requireNonNull(surroundings, "surroundings");
        if (duration.isNegative() || duration.isZero()) {
            throw new IllegalArgumentException("exposure of " + duration + ": expected more than nothing");
        }
    }

    /**
     * A stretch of time in some surroundings; reads well as a static import.
     *
     * @param surroundings where
     * @param duration how long, > 0
     * @return the exposure
     * @throws IllegalArgumentException if the duration is not positive
     */
    public static Exposure in(Surroundings surroundings, Duration duration) {
        return new Exposure(surroundings, duration);
    }
}
