/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Ice at hand for all baths of a plan together, and ice that is made while it runs.
 *
 * @param kgAtStart ice at the start [kg], ≥ 0
 * @param kgPerHour ice made [kg/h], ≥ 0
 * @param capKg most that can be stored [kg], ≥ the ice at the start; making stops there. What is taken out in between is not counted
 *     as making room for more, so that no plan rests on it
 */
public record IceStock(double kgAtStart, double kgPerHour, OptionalDouble capKg) {

    static final double SECONDS_PER_HOUR = 3600;
    static final double MOST_KG = 1e5;

    /**
     * Checks the figures.
     *
     * @param kgAtStart ice at the start [kg], 0 to 100 t
     * @param kgPerHour ice made [kg/h], 0 to 100 t/h
     * @param capKg most that can be stored [kg]
     * @throws IllegalArgumentException if a figure is outside its range or more ice is there than can be stored
     */
    public IceStock {
        require("ice at the start", kgAtStart);
        require("ice made per hour", kgPerHour);
        if (capKg.isPresent() && !(capKg.getAsDouble() >= kgAtStart)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "ice stored at most %s kg: expected at least the %s kg that are there at the start",
                    capKg.getAsDouble(),
                    kgAtStart));
        }
    }

    private static void require(String what, double kg) {
        if (!(kg >= 0 && kg <= MOST_KG)) {
            throw new IllegalArgumentException(what + " " + kg + " kg: expected 0 to " + (int) MOST_KG + " kg");
        }
    }

    /**
     * Ice that is there, none made.
     *
     * @param kg ice at the start [kg], 0 to 100 t
     * @return the stock
     * @throws IllegalArgumentException if the mass is outside its range
     */
    public static IceStock of(double kg) {
        return new IceStock(kg, 0, OptionalDouble.empty());
    }

    /**
     * Ice that can have been taken by a time, all together.
     *
     * @param sinceStart time since the start of the plan, ≥ 0
     * @return mass [kg]
     */
    public double kgBy(Duration sinceStart) {
        double kg = kgAtStart + kgPerHour * Site.seconds(sinceStart) / SECONDS_PER_HOUR;
        return Math.min(kg, capKg.orElse(Double.POSITIVE_INFINITY));
    }
}
