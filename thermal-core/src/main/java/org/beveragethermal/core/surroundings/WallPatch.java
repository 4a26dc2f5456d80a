/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/**
 * A patch of a vessel's outer surface: a band of its wall, an end, or the free surface of the drink in an open vessel.
 *
 * @param lowM lower edge [m], above the base or, in gear, above the lowest point of the vessel as it stands or lies
 * @param highM upper edge [m], counted alike; an end that is level has both edges at its height
 * @param outerAreaM2 outer area [m²]
 * @param diameterM largest outer diameter of the vessel or, of an end, the diameter of the end [m]
 * @param emissivity emissivity of the outer surface [-]
 * @param orientation how it lies to gravity
 * @param waterActivity vapour pressure over it as a part of that over pure water [-]: 0 for a solid, above 0 for the free surface of a drink
 */
public record WallPatch(
        double lowM,
        double highM,
        double outerAreaM2,
        double diameterM,
        double emissivity,
        Orientation orientation,
        double waterActivity) {

    /**
     * A patch of a solid.
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
        this(lowM, highM, outerAreaM2, diameterM, emissivity, orientation, 0);
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
     * Whether it is the free surface of a drink.
     *
     * @return false for a wall or an end
     */
    public boolean isLiquid() {
        return waterActivity > 0;
    }

    /** A patch that is alike but for its area, of which it has a part [-]. */
    WallPatch part(double part) {
        return new WallPatch(lowM, highM, part * outerAreaM2, diameterM, emissivity, orientation, waterActivity);
    }
}
