/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * Wall above the drink: a fin on the wall that the drink wets.
 *
 * <p>A fin of length L whose end passes no heat gives or takes as much as tanh(mL)/m of its length would at the temperature of its
 * foot, with m² = h/(k d) for a wall of thickness d that meets the air on one side (F. P. Incropera and D. P. DeWitt, Fundamentals
 * of Heat and Mass Transfer, section 3.6). In glass that is one to two centimetres, so that the rim of a wine glass stays at the
 * temperature of the room.
 *
 * <p>Only of open vessels, which are poured half full or less and stand in air. A bottle is full up to its neck: of one of 750 mL the
 * neck above the drink is a twentieth of the wall, and it counts with the drink whole.
 */
final class DryWall {

    /** Air at rest and radiation together [W/(m² K)], our own assumption: the reach goes with its root. */
    private static final double COEFFICIENT = 10;

    private DryWall() {}

    /**
     * The part of a band's outer surface that follows the wall behind the drink: all of it below the level, above it as far as heat
     * reaches along the wall. A band that is dry as a whole counts whole, and so do all of a vessel that can be closed.
     */
    static double followingPart(Vessel vessel, double lowM, double highM, double levelM) {
        if (!vessel.isOpen() || levelM >= highM || levelM <= lowM) {
            return 1;
        }
        Profile profile = vessel.profile();
        double wetM2 = profile.outerSideAreaM2(lowM, levelM);
        double dryM2 = profile.outerSideAreaM2(levelM, highM);
        double efficiency = efficiency(
                vessel.wall().thermalConductivity().value(),
                profile.wallVolumeM3(levelM, highM) / dryM2,
                dryM2 / (2 * Math.PI * profile.outerRadiusM(levelM)));
        return Math.min(1, (wetM2 + efficiency * dryM2) / (wetM2 + dryM2));
    }

    /** Heat of a fin, as a part of what it would be if all of it had the temperature of its foot [-]. */
    static double efficiency(double wPerMK, double thicknessM, double lengthM) {
        double reachM = Math.sqrt(wPerMK * thicknessM / COEFFICIENT);
        return reachM / lengthM * Math.tanh(lengthM / reachM);
    }
}
