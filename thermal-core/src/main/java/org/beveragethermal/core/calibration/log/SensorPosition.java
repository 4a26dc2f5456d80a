/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.Objects;
import java.util.OptionalDouble;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * Where a sensor sits: a note that goes with its readings. No log says it; whoever placed the sensor does.
 *
 * @param place in, on or around the vessel
 * @param height height above the bottom of the contents as part of their height, 0 to 1; empty if unknown or without meaning
 * @param remark anything else, such as how it is held; may be empty
 */
public record SensorPosition(Place place, OptionalDouble height, String remark) {

    /** Nothing is known. */
    public static final SensorPosition UNKNOWN = new SensorPosition(Place.UNKNOWN, OptionalDouble.empty(), "");

    /** In, on or around. */
    public enum Place {
        /** In the contents of the vessel. */
        CONTENTS,
        /** On the wall of the vessel. */
        WALL,
        /** In what surrounds the vessel. */
        SURROUNDINGS,
        /** Not known. */
        UNKNOWN
    }

    /**
     * Checks the height.
     *
     * @param place in, on or around the vessel
     * @param height part of the height of the contents, 0 to 1
     * @param remark anything else
     */
    public SensorPosition {
        Objects.requireNonNull(place, "place of a sensor");
        Objects.requireNonNull(remark, "remark on a sensor");
        if (height.isPresent() && !OutOfRangeException.admits(height.getAsDouble(), 0, 1)) {
            throw OutOfRangeException.refusal("height of a sensor", height.getAsDouble(), 0, 1, "1", "");
        }
    }

    /**
     * In the contents at a height.
     *
     * @param height part of the height of the contents from their bottom, 0 to 1
     * @return the position
     * @throws OutOfRangeException if the height is outside 0 to 1
     * @throws IllegalArgumentException if it is not finite
     */
    public static SensorPosition inContents(double height) {
        return new SensorPosition(Place.CONTENTS, OptionalDouble.of(height), "");
    }
}
