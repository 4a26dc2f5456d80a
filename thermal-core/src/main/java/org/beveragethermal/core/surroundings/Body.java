/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;

/** A piece of gear as something that stands in other surroundings: an upright round body. */
final class Body {

    /** Nothing inside a body counts: its wall is as thin as this part of its radius. */
    private static final double THIN = 1e-3;

    private static final double PART_FULL = 0.5;

    private Body() {}

    /** A body that stands in surroundings, for the sake of its height and diameter. */
    static Occupant standing(String id, double heightM, double diameterM) {
        double wall = THIN * diameterM;
        Profile profile = Profile.of(
                List.of(new Station(0, 0.5 * diameterM, wall), new Station(heightM, 0.5 * diameterM, wall)),
                Math.min(wall, PART_FULL * heightM),
                0);
        return new Occupant(
                id,
                Vessel.builder(id)
                        .shape(VesselShape.TUMBLER)
                        .open(false)
                        .profile(profile)
                        .nominalVolume(Measures.cubicMetres(PART_FULL * profile.brimfulVolumeM3()))
                        .build());
    }
}
