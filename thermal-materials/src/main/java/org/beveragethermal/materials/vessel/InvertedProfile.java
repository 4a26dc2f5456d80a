/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * A profile that stands on its mouth, closed at the brim: how high a liquid stands in it and what it wets. Heights are counted
 * from the plane of the brim. Immutable.
 */
public final class InvertedProfile {
    private final Profile upright;

    private InvertedProfile(Profile upright) {
        this.upright = upright;
    }

    /**
     * A profile turned over.
     *
     * @param upright the profile as it stands
     * @return the same, on its mouth
     */
    public static InvertedProfile of(Profile upright) {
        return new InvertedProfile(upright);
    }

    /**
     * Volume of liquid up to a level.
     *
     * @param levelM height of the surface above the brim, m, 0 to the height of the vessel
     * @return volume in m³
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double innerVolumeM3(double levelM) {
        return upright.brimfulVolumeM3() - upright.innerVolumeM3(heightAboveBase(levelM));
    }

    /**
     * Level of a volume of liquid; the inverse of {@link #innerVolumeM3(double)}.
     *
     * @param volumeM3 volume in m³, 0 to the brimful volume
     * @return height of the surface above the brim, m
     * @throws OutOfRangeException if the volume is negative or larger than the vessel
     * @throws IllegalArgumentException if the volume is NaN or infinite
     */
    public double levelM(double volumeM3) {
        new ValidityRange("volume of liquid", 0, upright.brimfulVolumeM3(), "m³").require(volumeM3, "brimful volume");
        return upright.heightM() - upright.fillHeightM(upright.brimfulVolumeM3() - volumeM3);
    }

    /**
     * Area of the side wall's inside below a level.
     *
     * @param levelM height above the brim, m, 0 to the height of the vessel
     * @return area in m², without floor and closure
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double wettedSideAreaM2(double levelM) {
        return upright.innerSideAreaM2(heightAboveBase(levelM), upright.heightM());
    }

    /**
     * Area of the side wall's outside below a level.
     *
     * @param levelM height above the brim, m, 0 to the height of the vessel
     * @return area in m², without base and closure
     * @throws OutOfRangeException if the level is outside the vessel
     * @throws IllegalArgumentException if the level is NaN or infinite
     */
    public double outerSideAreaM2(double levelM) {
        return upright.outerSideAreaM2(heightAboveBase(levelM), upright.heightM());
    }

    private double heightAboveBase(double levelM) {
        new ValidityRange("level", 0, upright.heightM(), "m").require(levelM, "height of the vessel");
        return upright.heightM() - levelM;
    }
}
