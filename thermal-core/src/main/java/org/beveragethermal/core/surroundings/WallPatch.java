/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/**
 * A band of a vessel's upright outer wall.
 *
 * @param lowM lower edge [m], above the base or, in gear, above the end on which the vessel stands
 * @param highM upper edge [m], counted alike
 * @param outerAreaM2 outer area [m²]
 * @param diameterM largest outer diameter of the vessel [m]
 * @param emissivity emissivity of the outer surface [-]
 */
public record WallPatch(double lowM, double highM, double outerAreaM2, double diameterM, double emissivity) {

    /**
     * Middle of the band.
     *
     * @return height above the base [m]
     */
    public double middleM() {
        return 0.5 * (lowM + highM);
    }
}
