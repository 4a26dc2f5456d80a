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
 * @param run how the film runs along the wall beside it
 */
public record Slice(
        double lowM,
        double highM,
        double volumeM3,
        double sideAreaM2,
        double faceAreaM2,
        End wall,
        double wallCoefficient,
        FilmRun run) {

    /**
     * A slice of an upright vessel.
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
    public Slice(
            double lowM,
            double highM,
            double volumeM3,
            double sideAreaM2,
            double faceAreaM2,
            End wall,
            double wallCoefficient) {
        this(
                lowM,
                highM,
                volumeM3,
                sideAreaM2,
                faceAreaM2,
                wall,
                wallCoefficient,
                FilmRun.upright(highM - lowM, volumeM3));
    }

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
     * @param run how the film runs along the wall beside it
     * @throws IllegalArgumentException if a number is not finite and positive, the faces do not ascend or the run is shorter than
     *     the slice is high
     */
    public Slice {
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(run, "run");
        if (!(highM > lowM && volumeM3 > 0 && sideAreaM2 > 0 && faceAreaM2 > 0 && wallCoefficient > 0)
                || Double.isInfinite(highM + volumeM3 + sideAreaM2 + faceAreaM2 + wallCoefficient)) {
            throw new IllegalArgumentException("slice from " + lowM + " m to " + highM + " m, volume " + volumeM3
                    + " m³, side " + sideAreaM2 + " m², face " + faceAreaM2 + " m², wall coefficient " + wallCoefficient
                    + " W/(m² K): expected an ascending slice and finite values above 0");
        }
        run.requireBeside(highM - lowM);
    }

    double heightM() {
        return highM - lowM;
    }

    /** Width of the film beside the slice [m]: in an upright vessel its circumference. */
    double circumferenceM() {
        return sideAreaM2 / run.lengthM();
    }

    /** Part of gravity that acts along the wall [-]. */
    double gravityPart() {
        return heightM() / run.lengthM();
    }
}
