/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.materials.vessel.LyingProfile;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * A vessel that stands or lies in a piece of gear.
 *
 * @param id the vessel's id in the scene
 * @param vessel its shape
 * @param placement how it stands or lies, and how deep
 */
public record Occupant(String id, Vessel vessel, Placement placement) {

    /**
     * A vessel that stands upright.
     *
     * @param id the vessel's id in the scene
     * @param vessel its shape
     */
    public Occupant(String id, Vessel vessel) {
        this(id, vessel, Placement.upright());
    }

    /**
     * A piece of gear as something that stands in other surroundings: an upright round body, for the sake of its height and diameter. Ask
     * the {@link Medium} outside what touches its patches.
     *
     * @param id the gear's id
     * @param heightM height [m], finite, > 0
     * @param diameterM outer diameter [m], finite, > 0
     * @return the body; it holds nothing
     * @throws IllegalArgumentException if a length is outside its range
     */
    public static Occupant body(String id, double heightM, double diameterM) {
        if (!(heightM > 0 && diameterM > 0) || Double.isInfinite(heightM) || Double.isInfinite(diameterM)) {
            throw new IllegalArgumentException("body " + id + " " + heightM + " m high and " + diameterM
                    + " m wide: expected finite lengths above 0");
        }
        return Body.standing(id, heightM, diameterM);
    }

    /** Refuses more than one vessel in gear that goes around one. */
    static void requireAlone(List<Occupant> occupants, String gear) {
        if (occupants.size() > 1) {
            throw new IllegalArgumentException(
                    "vessels " + occupants.stream().map(Occupant::id).toList() + " in " + gear
                            + ": expected one vessel at a time; take a piece of gear for each");
        }
    }

    /**
     * How the vessel stands or lies.
     *
     * @return the posture
     */
    public Posture posture() {
        return placement.posture();
    }

    /**
     * Height of the vessel that a bath wets.
     *
     * @param depthM depth of the bath [m]
     * @return height above the vessel's lowest point [m], at most the vessel's own
     */
    public double wettedM(double depthM) {
        return Math.min(heightM(), Math.min(depthM, placement.immersionM().orElse(Double.POSITIVE_INFINITY)));
    }

    /**
     * How high above the floor of a bath the vessel is held.
     *
     * @param depthM depth of the bath [m]
     * @return height of its lowest point above the floor [m], 0 if it stands there
     */
    public double heldAtM(double depthM) {
        return Math.max(0, depthM - placement.immersionM().orElse(depthM));
    }

    /**
     * Height of the vessel as it stands or lies.
     *
     * @return height [m], of a vessel that lies its greatest outer diameter
     */
    public double heightM() {
        return posture() == Posture.LYING ? 2 * vessel.profile().maxOuterRadiusM() : lengthM();
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
     * Volume that the vessel displaces in a bath.
     *
     * @param depthM depth of the bath [m], ≥ 0
     * @return volume [m³]
     */
    public double displacedM3(double depthM) {
        double reach = wettedM(depthM);
        return switch (posture()) {
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
        return switch (posture()) {
            case UPRIGHT -> patch;
            case INVERTED ->
                new WallPatch(
                                heightM() - patch.highM(),
                                heightM() - patch.lowM(),
                                patch.outerAreaM2(),
                                patch.diameterM(),
                                patch.emissivity())
                        .withOptics(patch.optics());
            case LYING ->
                new WallPatch(
                                0,
                                heightM(),
                                patch.outerAreaM2(),
                                patch.diameterM(),
                                patch.emissivity(),
                                Orientation.LYING_WALL)
                        .withOptics(patch.optics());
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
        return switch (posture()) {
            case UPRIGHT -> wettedHeightM;
            case INVERTED -> heightM() - wettedHeightM;
            case LYING -> throw new IllegalStateException("vessel " + id + " lies: expected one that stands");
        };
    }
}
