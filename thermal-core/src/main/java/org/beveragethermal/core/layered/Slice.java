/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import java.util.Objects;
import org.beveragethermal.core.network.End;

/**
 * One slice of a column of liquid and what lies beside it.
 *
 * @param lowM lower face above the bottom of the column [m]
 * @param highM upper face [m], above {@code lowM}
 * @param volumeM3 volume of liquid [m³], > 0
 * @param sideAreaM2 inner side area of the vessel beside it [m²], > 0
 * @param faceAreaM2 area of its upper face [m²], > 0
 * @param wall what lies behind the wall's inner surface: a wall node or a boundary
 * @param wallCoefficient conductance from the inner surface to there per side area [W/(m² K)], > 0
 */
public record Slice(
        double lowM,
        double highM,
        double volumeM3,
        double sideAreaM2,
        double faceAreaM2,
        End wall,
        double wallCoefficient) {

    /**
     * Checks the parts.
     *
     * @param lowM lower face [m]
     * @param highM upper face [m]
     * @param volumeM3 volume of liquid [m³]
     * @param sideAreaM2 inner side area [m²]
     * @param faceAreaM2 area of its upper face [m²]
     * @param wall what lies behind the wall's inner surface
     * @param wallCoefficient conductance to there [W/(m² K)]
     * @throws IllegalArgumentException if a number is not finite and positive or the faces do not ascend
     */
    public Slice {
        Objects.requireNonNull(wall, "wall");
        if (!(highM > lowM && volumeM3 > 0 && sideAreaM2 > 0 && faceAreaM2 > 0 && wallCoefficient > 0)
                || Double.isInfinite(highM + volumeM3 + sideAreaM2 + faceAreaM2 + wallCoefficient)) {
            throw new IllegalArgumentException("slice from " + lowM + " m to " + highM + " m, volume " + volumeM3
                    + " m³, side " + sideAreaM2 + " m², face " + faceAreaM2 + " m², wall coefficient " + wallCoefficient
                    + " W/(m² K): expected an ascending slice and finite values above 0");
        }
    }

    double heightM() {
        return highM - lowM;
    }

    /** Length of the vessel's circumference beside the slice [m]. */
    double circumferenceM() {
        return sideAreaM2 / heightM();
    }

    /** Radius of a cylinder of the slice's volume and height [m]. */
    double radiusM() {
        return Math.sqrt(volumeM3 / (Math.PI * heightM()));
    }
}
