/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.materials.vessel.Vessel;

/**
 * A vessel that stands upright in a piece of gear.
 *
 * @param id the vessel's id in the scene
 * @param vessel its shape
 */
public record Occupant(String id, Vessel vessel) {

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
     * @param heightM height above its base [m], ≥ 0; more than its height counts as its height
     * @return volume [m³]
     */
    public double displacedM3(double heightM) {
        return vessel.profile().outerVolumeM3(0, Math.min(heightM, heightM()));
    }
}
