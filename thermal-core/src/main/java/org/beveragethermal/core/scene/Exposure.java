/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.Objects;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Surroundings;

/**
 * A stretch of time in some surroundings.
 *
 * @param surroundings where
 * @param duration how long, > 0
 * @param posture how the vessel stands or lies there
 */
public record Exposure(Surroundings surroundings, Duration duration, Posture posture) {

    /**
     * Checks the duration.
     *
     * @param surroundings where
     * @param duration how long, > 0
     * @param posture how the vessel stands or lies there
     * @throws IllegalArgumentException if the duration is not positive
     */
    public Exposure {
        Objects.requireNonNull(surroundings, "surroundings");
        Objects.requireNonNull(posture, "posture");
        if (duration.isNegative() || duration.isZero()) {
            throw new IllegalArgumentException("exposure of " + duration + ": expected more than nothing");
        }
    }

    /**
     * A stretch of time upright in some surroundings.
     *
     * @param surroundings where
     * @param duration how long, > 0
     * @throws IllegalArgumentException if the duration is not positive
     */
    public Exposure(Surroundings surroundings, Duration duration) {
        this(surroundings, duration, Posture.UPRIGHT);
    }

    /**
     * The same stretch of time with the vessel on its side.
     *
     * @return a new exposure
     */
    public Exposure lying() {
        return new Exposure(surroundings, duration, Posture.LYING);
    }

    /**
     * The same stretch of time with the vessel on its closure.
     *
     * @return a new exposure
     */
    public Exposure inverted() {
        return new Exposure(surroundings, duration, Posture.INVERTED);
    }

    /**
     * A stretch of time upright in some surroundings; reads well as a static import.
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
