/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.materials.vessel.LyingProfile;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * A vessel that stands or lies in a piece of gear.
 *
 * @param id the vessel's id in the scene
 * @param vessel its shape
 * @param posture how it stands or lies
 */
public record Occupant(String id, Vessel vessel, Posture posture) {

    /**
     * A vessel that stands upright.
     *
     * @param id the vessel's id in the scene
     * @param vessel its shape
     */
    public Occupant(String id, Vessel vessel) {
        this(id, vessel, Posture.UPRIGHT);
    }

    /**
     * Height of the vessel as it stands or lies.
     *
     * @return height [m], of a vessel that lies its greatest outer diameter
     */
    public double heightM() {
        return posture == Posture.LYING ? 2 * vessel.profile().maxOuterRadiusM() : lengthM();
    }

    /**
     * Length of the vessel along its axis.
     *
     * @return length [m]
     */
    public double lengthM() {
        return vessel.profile().heightM();
    }

    /**
     * Volume that the vessel displaces below a height.
     *
     * @param heightM height above its lowest point as it stands or lies [m], ≥ 0; more than its height counts as its height
     * @return volume [m³]
     */
    public double displacedM3(double heightM) {
        double reach = Math.min(heightM, heightM());
        return switch (posture) {
            case UPRIGHT -> vessel.profile().outerVolumeM3(0, reach);
            case INVERTED -> vessel.profile().outerVolumeM3(heightM() - reach, heightM());
            case LYING -> LyingProfile.of(vessel.profile()).outerVolumeM3(reach);
        };
    }

    /**
     * A patch of the vessel's wall as it stands: heights counted from the end on which the vessel stands. Of a vessel that lies,
     * a band of the wall goes all round and reaches from its lowest to its highest point.
     *
     * @param patch the patch, heights counted from the base
     * @return the same patch, heights counted from below
     */
    public WallPatch standing(WallPatch patch) {
        return switch (posture) {
            case UPRIGHT -> patch;
            case INVERTED ->
                new WallPatch(
                        heightM() - patch.highM(),
                        heightM() - patch.lowM(),
                        patch.outerAreaM2(),
                        patch.diameterM(),
                        patch.emissivity());
            case LYING ->
                new WallPatch(
                        0,
                        heightM(),
                        patch.outerAreaM2(),
                        patch.diameterM(),
                        patch.emissivity(),
                        Orientation.LYING_WALL);
        };
    }

    /**
     * The height above the base at which a waterline lies, of a vessel that stands or stands on its neck.
     *
     * @param wettedHeightM height of the water above the end on which the vessel stands [m]
     * @return height above the base [m]
     * @throws IllegalStateException if the vessel lies: its waterline then runs along all of it
     */
    public double aboveBaseM(double wettedHeightM) {
        return switch (posture) {
            case UPRIGHT -> wettedHeightM;
            case INVERTED -> heightM() - wettedHeightM;
            case LYING -> throw new IllegalStateException("vessel " + id + " lies: expected one that stands");
        };
    }
}
