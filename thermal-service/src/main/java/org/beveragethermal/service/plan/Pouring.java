/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.beveragethermal.materials.units.SiValues;

/**
 * One round of glasses out of a bottle.
 *
 * @param at when, in whole milliseconds
 * @param volumeM3 how much, at 20 °C [m³]: 0.1 mL to 1000 L
 */
public record Pouring(Instant at, double volumeM3) {

    private static final double LEAST_M3 = 1e-7;
    private static final double MOST_M3 = 1;

    /**
     * Checks the volume and cuts the moment to milliseconds.
     *
     * @param at when
     * @param volumeM3 how much, at 20 °C [m³]: 0.1 mL to 1000 L
     * @throws IllegalArgumentException if the volume is outside its range
     */
    public Pouring {
        if (!(volumeM3 >= LEAST_M3 && volumeM3 <= MOST_M3)) {
            throw new IllegalArgumentException(
                    "volume poured at " + at + " " + volumeM3 + " m³: expected 0.1 mL to 1000 L");
        }
        at = at.truncatedTo(ChronoUnit.MILLIS);
    }

    /**
     * A round of glasses.
     *
     * @param at when
     * @param volume how much, at 20 °C: 0.1 mL to 1000 L
     * @return the pouring
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the volume is outside its range
     */
    public static Pouring of(Instant at, Quantity<Volume> volume) {
        return new Pouring(at, SiValues.volumeM3(volume, "volume poured", LEAST_M3, MOST_M3));
    }
}
