/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.OptionalDouble;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.HeadspacePressure;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;

/** Temperatures at which closed vessels come to a limit, if all of them has that temperature. */
final class ClosedLimits {

    /** Readings and freezing points are no better than this, own assumption [K]. */
    private static final double SURELY_BELOW_K = 0.1;

    private static final double FROM_K = 273.15;
    private static final double STEP_K = 0.25;
    private static final int HALVINGS = 40;

    private ClosedLimits() {}

    /** Below this ice and drink, in balance, need more room than there is [K]; empty if they do not as far down as the curve goes. */
    static OptionalDouble fullOfIceK(ClosedVessel vessel) {
        if (!(vessel.filled().liquid() instanceof Beverage drink)) {
            return OptionalDouble.empty();
        }
        FreezingCurve curve = FreezingCurve.of(drink);
        double coldestK = curve.temperatureRange().low();
        double highestK = drink.freezingOnsetK() - SURELY_BELOW_K;
        for (double hereK = highestK; hereK >= coldestK; hereK -= STEP_K) {
            if (isFull(vessel, curve, hereK)) {
                return OptionalDouble.of(hereK == highestK ? hereK : crossing(vessel, curve, hereK, hereK + STEP_K));
            }
        }
        return OptionalDouble.empty();
    }

    private static boolean isFull(ClosedVessel vessel, FreezingCurve curve, double temperatureK) {
        return vessel.roomM3(temperatureK) <= vessel.filled().liquidMassKg() * curve.specificVolume(temperatureK);
    }

    private static double crossing(ClosedVessel vessel, FreezingCurve curve, double fullK, double withRoomK) {
        double full = fullK;
        double room = withRoomK;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (full + room);
            if (isFull(vessel, curve, middle)) {
                full = middle;
            } else {
                room = middle;
            }
        }
        return full;
    }

    /**
     * From here on the gauge pressure is at a limit, or not known because no solubility is published that far, or the liquid fills the
     * vessel [K]; empty if it stays below to the end of the liquid's range.
     */
    static OptionalDouble pressedK(ClosedVessel vessel, double limitPa) {
        double end = vessel.filled().liquid().temperatureRange().high();
        for (double hereK = FROM_K; hereK <= end; hereK += STEP_K) {
            boolean below = vessel.pressureAtK(hereK) instanceof HeadspacePressure.Gas gas && gas.gaugePa() < limitPa;
            if (!below) {
                return OptionalDouble.of(hereK);
            }
        }
        return OptionalDouble.empty();
    }
}
