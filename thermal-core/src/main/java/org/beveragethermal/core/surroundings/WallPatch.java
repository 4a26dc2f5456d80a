/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.Objects;

/**
 * A patch of a vessel's outer surface: a band of its wall, an end, or the free surface of the drink in an open vessel.
 *
 * @param lowM lower edge [m], above the base or, in gear, above the lowest point of the vessel as it stands or lies
 * @param highM upper edge [m], counted alike; an end that is level has both edges at its height
 * @param outerAreaM2 outer area [m²]
 * @param diameterM largest outer diameter of the vessel or, of an end, the diameter of the end [m]
 * @param emissivity emissivity of the outer surface [-]
 * @param orientation how it lies to gravity
 * @param optics what becomes of sunlight on it
 * @param waterActivity vapour pressure over it as a part of that over pure water [-]: 0 for a solid, above 0 for the free surface of a drink
 */
public record WallPatch(
        double lowM,
        double highM,
        double outerAreaM2,
        double diameterM,
        double emissivity,
        Orientation orientation,
        SunOptics optics,
        double waterActivity) {

    /** How far a level patch may be off by rounding [m]. */
    private static final double ROUNDING_M = 1e-12;

    /**
     * Checks the numbers.
     *
     * @param lowM lower edge [m], finite
     * @param highM upper edge [m], finite, not below the lower
     * @param outerAreaM2 outer area [m²], finite, ≥ 0
     * @param diameterM largest outer diameter of the vessel or, of an end, the diameter of the end [m], finite, ≥ 0
     * @param emissivity emissivity of the outer surface [-], 0 to 1
     * @param orientation how it lies to gravity
     * @param optics what becomes of sunlight on it
     * @param waterActivity vapour pressure over it as a part of that over pure water [-], 0 to 1
     * @throws IllegalArgumentException if a number is outside its range
     */
    public WallPatch {
        if (!Double.isFinite(lowM) || !Double.isFinite(highM) || lowM > highM + ROUNDING_M) {
            throw new IllegalArgumentException("patch from " + lowM + " m to " + highM
                    + " m: expected finite heights, the upper edge not below the lower");
        }
        requireNotNegative("area", outerAreaM2, "m²");
        requireNotNegative("diameter", diameterM, "m");
        requirePart("emissivity", emissivity);
        requirePart("water activity", waterActivity);
        Objects.requireNonNull(orientation, "orientation");
        Objects.requireNonNull(optics, "optics");
    }

    private static void requireNotNegative(String what, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    what + " of a patch " + value + " " + unit + ": expected a finite value ≥ 0");
        }
    }

    private static void requirePart(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " of a patch " + value + ": expected 0 to 1");
        }
    }

    /**
     * A patch of a solid whose colour is not known, opaque: {@link SunOptics#UNKNOWN}.
     *
     * @param lowM lower edge [m]
     * @param highM upper edge [m]
     * @param outerAreaM2 outer area [m²]
     * @param diameterM largest outer diameter of the vessel or, of an end, the diameter of the end [m]
     * @param emissivity emissivity of the outer surface [-]
     * @param orientation how it lies to gravity
     */
    public WallPatch(
            double lowM,
            double highM,
            double outerAreaM2,
            double diameterM,
            double emissivity,
            Orientation orientation) {
        this(lowM, highM, outerAreaM2, diameterM, emissivity, orientation, SunOptics.UNKNOWN, 0);
    }

    /**
     * A band of an upright wall.
     *
     * @param lowM lower edge [m]
     * @param highM upper edge [m]
     * @param outerAreaM2 outer area [m²]
     * @param diameterM largest outer diameter of the vessel [m]
     * @param emissivity emissivity of the outer surface [-]
     */
    public WallPatch(double lowM, double highM, double outerAreaM2, double diameterM, double emissivity) {
        this(lowM, highM, outerAreaM2, diameterM, emissivity, Orientation.UPRIGHT_WALL);
    }

    /**
     * Middle of the patch.
     *
     * @return height above where its edges are counted from [m]
     */
    public double middleM() {
        return 0.5 * (lowM + highM);
    }

    /**
     * A patch that is alike but for its area, to ask another medium what touches the rest or to leave the rest out.
     *
     * @param part part of the area that it has [-], 0 to 1
     * @return a new patch
     * @throws IllegalArgumentException if the part is outside its range
     */
    public WallPatch part(double part) {
        requirePart("part", part);
        return new WallPatch(
                lowM, highM, part * outerAreaM2, diameterM, emissivity, orientation, optics, waterActivity);
    }

    /**
     * The same patch with another answer to sunlight.
     *
     * @param newOptics what becomes of sunlight on it
     * @return a new patch
     */
    public WallPatch withOptics(SunOptics newOptics) {
        return new WallPatch(lowM, highM, outerAreaM2, diameterM, emissivity, orientation, newOptics, waterActivity);
    }

    /**
     * Whether it is the free surface of a drink.
     *
     * @return false for a wall or an end
     */
    public boolean isLiquid() {
        return waterActivity > 0;
    }
}
