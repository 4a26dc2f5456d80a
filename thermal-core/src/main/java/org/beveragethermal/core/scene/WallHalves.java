/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.Profile;

/**
 * Conductances of a band of wall from its middle to its inner and to its outer surface, each per area of that surface [W/(m² K)].
 *
 * <p>The band is taken as the cylinder of its height that has its outer area and its volume, so that both halves together are the
 * closed form of a cylinder's wall, ln(rₒ/rᵢ)/(2 π k h). On a shoulder this is a wall as thick as it is across, since area times
 * thickness is its volume there too.
 *
 * <p>Theory manual, equation (1.6).
 *
 * @param inner from the middle to the inner surface
 * @param outer from the middle to the outer surface
 */
record WallHalves(double inner, double outer) {

    /** A wall so thick that less than this part of the radius is left inside is taken to leave this part. */
    private static final double LEAST_INNER_PART = 0.05;

    static WallHalves of(Profile profile, Solid wall, double lowM, double highM) {
        double height = highM - lowM;
        double outerRadius = profile.outerSideAreaM2(lowM, highM) / (2 * Math.PI * height);
        double left = outerRadius * outerRadius - profile.wallVolumeM3(lowM, highM) / (Math.PI * height);
        double innerRadius = Math.sqrt(Math.max(left, Math.pow(LEAST_INNER_PART * outerRadius, 2)));
        double middle = 0.5 * (innerRadius + outerRadius);
        double conductivity = wall.thermalConductivity().value();
        return new WallHalves(
                conductivity / (innerRadius * Math.log(middle / innerRadius)),
                conductivity / (outerRadius * Math.log(outerRadius / middle)));
    }
}
