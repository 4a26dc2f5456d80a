/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * A freezer: a {@link Refrigerator} whose air stays below 0 °C, down to −30 °C. Drinks freeze at their liquidus, and every prediction says
 * that a full closed vessel may burst. Immutable.
 */
public final class Freezer implements Surroundings {

    private static final double COLDEST_K = 243.15;
    private static final double ZERO_CELSIUS_K = 273.15;

    private final Refrigerator appliance;

    private Freezer(Refrigerator appliance) {
        this.appliance = appliance;
    }

    /**
     * A freezer with still air held at a temperature.
     *
     * @param airTemperature −30 °C to below 0 °C
     * @return the freezer
     * @throws OutOfRangeException if the temperature is outside its range
     */
    public static Freezer at(Quantity<Temperature> airTemperature) {
        return of(Refrigerator.at(airTemperature));
    }

    /**
     * A freezer with everything a refrigerator can have: fan, cycling, door openings, a load that it feels.
     *
     * @param appliance the appliance; its thermostat lets the air nowhere reach 0 °C
     * @return the freezer
     * @throws OutOfRangeException if its air reaches 0 °C even with the door closed and nothing in it
     */
    public static Freezer of(Refrigerator appliance) {
        double warmest = Objects.requireNonNull(appliance, "appliance").warmestK();
        if (warmest >= ZERO_CELSIUS_K) {
            throw OutOfRangeException.refusal(
                    "freezer temperature", warmest, COLDEST_K, Math.nextDown(ZERO_CELSIUS_K), "K", "freezer");
        }
        return new Freezer(appliance);
    }

    @Override
    public Medium open(String id, double originS) {
        return appliance.open(
                id,
                originS,
                List.of("in " + id
                        + " a drink that is forgotten freezes; it swells by up to a tenth, and a full closed vessel"
                        + " may burst: take it out in time"));
    }
}
