/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.time.Duration;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Surroundings;

/**
 * A stretch of time in some surroundings.
 *
 * @param surroundings where
 * @param duration how long, > 0
 * @param placement how the vessel stands or lies there, and how deep
 */
public record Exposure(Surroundings surroundings, Duration duration, Placement placement) {

    /**
     * Checks the duration.
     *
     * @param surroundings where
     * @param duration how long, > 0
     * @param placement how the vessel stands or lies there, and how deep
     * @throws IllegalArgumentException if the duration is not positive
     */
    public Exposure {
        Objects.requireNonNull(surroundings, "surroundings");
        Objects.requireNonNull(placement, "placement");
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
        this(surroundings, duration, Placement.upright());
    }

    /**
     * The same stretch of time with the vessel on its side.
     *
     * @return a new exposure
     */
    public Exposure lying() {
        return new Exposure(surroundings, duration, placement.with(Posture.LYING));
    }

    /**
     * The same stretch of time with the vessel on its closure.
     *
     * @return a new exposure
     */
    public Exposure inverted() {
        return new Exposure(surroundings, duration, placement.with(Posture.INVERTED));
    }

    /**
     * The same stretch of time with the vessel held so that a bath wets it up to a height and no higher.
     *
     * @param height height of the waterline above the vessel's lowest point, 1 mm to 2 m and at most the vessel's height
     * @return a new exposure
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the height is outside its range
     */
    public Exposure immersedTo(Quantity<Length> height) {
        return new Exposure(surroundings, duration, placement.immersedTo(height));
    }

    /**
     * How the vessel stands or lies.
     *
     * @return the posture
     */
    public Posture posture() {
        return placement.posture();
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
