/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;

/**
 * How the water of a bath is moved.
 *
 * @param speedMPerS speed of the water along the vessel [m/s], 0 for still water
 */
public record Agitation(double speedMPerS) {

    private static final double FASTEST_M_PER_S = 2;

    /** Water that nobody moves. */
    public static final Agitation STILL = new Agitation(0);

    /**
     * Checks the speed.
     *
     * @param speedMPerS speed [m/s], 0 to 2
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the speed is outside its range
     */
    public Agitation {
        new ValidityRange("stirring speed", 0, FASTEST_M_PER_S, "m/s").require(speedMPerS, "a bath stirred by hand");
    }

    /**
     * Water that is stirred all the time.
     *
     * @param speed speed of the water along the vessel, 0 m/s to 2 m/s; a spoon by hand gives about 0.1 m/s (from memory)
     * @return the agitation
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the speed is outside its range
     */
    public static Agitation stirred(Quantity<Speed> speed) {
        return new Agitation(SiValues.speedMPerS(speed, "stirring speed"));
    }

    /**
     * Whether the water moves.
     *
     * @return false for still water
     */
    public boolean moves() {
        return speedMPerS > 0;
    }
}
