/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * One height at which the shape of a vessel is known.
 *
 * @param heightM height above the plane the vessel stands on, m, at least 0
 * @param outerRadiusM outer radius, m, greater than 0
 * @param wallThicknessM wall thickness measured along the radius, m, greater than 0 and less than the radius
 */
public record Station(double heightM, double outerRadiusM, double wallThicknessM) {

    /**
     * Checks the numbers.
     *
     * @param heightM height, m, at least 0
     * @param outerRadiusM outer radius, m, greater than 0
     * @param wallThicknessM wall thickness, m, greater than 0 and less than the radius
     * @throws OutOfRangeException if a number is outside its range
     * @throws IllegalArgumentException if a number is NaN or infinite
     */
    public Station {
        require("station height", heightM, 0, Double.MAX_VALUE, "");
        require("outer radius", outerRadiusM, Double.MIN_VALUE, Double.MAX_VALUE, "");
        require(
                "wall thickness",
                wallThicknessM,
                Double.MIN_VALUE,
                Math.nextDown(outerRadiusM),
                "less than the radius");
        // Turns -0 into 0, so that stations at the bottom are equal.
        heightM += 0.0;
    }

    private static void require(String parameter, double value, double low, double high, String reason) {
        if (!(value >= low && value <= high)) {
            throw OutOfRangeException.refusal(parameter, value, low, high, "m", reason);
        }
    }

    /**
     * Inner radius.
     *
     * @return outer radius less wall thickness, m, greater than 0
     */
    public double innerRadiusM() {
        return outerRadiusM - wallThicknessM;
    }
}
