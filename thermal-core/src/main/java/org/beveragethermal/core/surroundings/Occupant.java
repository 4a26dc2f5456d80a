/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.materials.vessel.Vessel;

/**
 * A vessel that stands in a piece of gear.
 *
 * @param id the vessel's id in the scene
 * @param vessel its shape
 * @param posture how it stands
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
     * Height of the vessel.
     *
     * @return height [m]
     */
    public double heightM() {
        return vessel.profile().heightM();
    }

    /**
     * Volume that the vessel displaces below a height.
     *
     * @param heightM height above the end on which it stands [m], ≥ 0; more than its height counts as its height
     * @return volume [m³]
     */
    public double displacedM3(double heightM) {
        double reach = Math.min(heightM, heightM());
        return posture == Posture.UPRIGHT
                ? vessel.profile().outerVolumeM3(0, reach)
                : vessel.profile().outerVolumeM3(heightM() - reach, heightM());
    }

    /**
     * A patch of the vessel's wall as it stands: heights counted from the end on which the vessel stands.
     *
     * @param patch the patch, heights counted from the base
     * @return the same patch, heights counted from below
     */
    public WallPatch standing(WallPatch patch) {
        return posture == Posture.UPRIGHT
                ? patch
                : new WallPatch(
                        heightM() - patch.highM(),
                        heightM() - patch.lowM(),
                        patch.outerAreaM2(),
                        patch.diameterM(),
                        patch.emissivity());
    }

    /**
     * The height above the base at which a waterline lies.
     *
     * @param wettedHeightM height of the water above the end on which the vessel stands [m]
     * @return height above the base [m]
     */
    public double aboveBaseM(double wettedHeightM) {
        return posture == Posture.UPRIGHT ? wettedHeightM : heightM() - wettedHeightM;
    }
}
