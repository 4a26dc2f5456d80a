/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.util.List;
import org.beveragethermal.core.icemaking.IceBalance;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * How much ice a bath needs by energy alone: latent and sensible heat, without the room and without any resistance.
 *
 * <p>Ice warms, melts, and its water warms to the top of the warmest range; what that takes up comes from the drinks, and from the bath's
 * water as far as it starts warmer. A bath of given level holds as much less water as it holds more ice.
 *
 * @param drinksKg ice for the drinks alone, where water that starts colder than the range helps [kg], ≥ 0: in a room that is no colder
 *     than the range no bath needs less
 * @param everythingKg ice for the drinks, the vessels and all of the bath's water [kg], ≥ 0: what a bath needs that is of one temperature
 */
public record IceEnergy(double drinksKg, double everythingKg) {

    /** Bound for vessels that are to be at most so warm, in a bath of a total mass. */
    static IceEnergy of(List<FilledVessel> vessels, List<Double> highsK, double bathKg, double waterK, double iceK) {
        double warmestK = highsK.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double drinks = 0;
        double walled = 0;
        for (int i = 0; i < vessels.size(); i++) {
            drinks += IceBalance.drinkHeatJ(vessels.get(i), highsK.get(i));
            walled += IceBalance.heatJ(vessels.get(i), highsK.get(i));
        }
        double top = Water.liquid().specificEnthalpy(warmestK);
        double perKilogram = top - Ice.specificEnthalpy(iceK);
        double water = top - Water.liquid().specificEnthalpy(waterK);
        return new IceEnergy(
                least(drinks, bathKg, perKilogram, Math.max(0, water)), least(walled, bathKg, perKilogram, water));
    }

    /** Ice for drinks that are in no bath [kg]. */
    static double ofDrinksKg(List<FilledVessel> vessels, List<Double> highsK, double iceK) {
        double kg = 0;
        for (int i = 0; i < vessels.size(); i++) {
            kg += IceBalance.drinkHeatJ(vessels.get(i), highsK.get(i)) / IceBalance.perKilogramJ(iceK, highsK.get(i));
        }
        return kg;
    }

    /** From m e + (M − m) w = Q. */
    private static double least(double heatJ, double bathKg, double iceTakes, double waterTakes) {
        return Math.max(0, (heatJ - bathKg * waterTakes) / (iceTakes - waterTakes));
    }
}
