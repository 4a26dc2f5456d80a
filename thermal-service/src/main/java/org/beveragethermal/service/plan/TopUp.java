/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.materials.units.Measures;

/**
 * Ice out of the stock that is added to a bath, once, when a third of what it was filled with is left and bottles are still to be in it; as
 * much water is poured off. The ice is taken as 0 °C warm, the least that ice does.
 *
 * @param gearId the bath
 * @param atS when [s]
 * @param iceKg how much [kg]
 * @param goneS when the ice would have been gone without it, or its last bottle would have left [s]
 */
record TopUp(String gearId, double atS, double iceKg, double goneS) {

    /** Less is not worth the way [kg]. */
    private static final double LEAST_KG = 0.2;
    /** Of the water poured off so much stays beside the ice. */
    private static final double MOST_POURED_PART = 0.8;

    /**
     * What is to be added to a bath.
     *
     * @param fullKg ice that it was filled with [kg]
     * @param iceKg ice left at a time without it [kg]
     * @param spareKg ice that the stock gives for this bath at a time [kg]
     * @param fromS when it is filled [s]
     * @param lastS when its last bottle leaves it [s]
     * @param goneS when its ice would be gone or its last bottle leave [s]
     */
    static Optional<TopUp> of(
            String gearId,
            IceWaterBath bath,
            double fullKg,
            DoubleUnaryOperator iceKg,
            DoubleUnaryOperator spareKg,
            double fromS,
            double lastS,
            double goneS) {
        for (double time = StartTimes.wholeAfter(fromS + 1); time < lastS; time += StartTimes.MINUTE_S) {
            double left = iceKg.applyAsDouble(time);
            if (left < IceSupply.WORKING_PART * fullKg) {
                double water = MOST_POURED_PART * (bath.waterKg() + bath.iceKg() - left);
                double kg = Math.min(Math.min(fullKg - left, water), spareKg.applyAsDouble(time));
                return kg < LEAST_KG ? Optional.empty() : Optional.of(new TopUp(gearId, time, kg, goneS));
            }
        }
        return Optional.empty();
    }

    void addTo(Scene.Builder scene) {
        scene.pourOff(gearId, Site.duration(atS), Measures.kilograms(iceKg))
                .topUpIce(gearId, Site.duration(atS), Measures.kilograms(iceKg), Measures.celsius(0));
    }
}
