/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.SiValues;

/**
 * A refrigerator, or a freezer, with still air held at one temperature.
 *
 * <p>Its warming by a warm load, door openings, cycling and a fan are not modelled yet; a crowded refrigerator is slower than
 * this one. In a freezer, lumped drinks freeze at their liquidus. Air temperature from −30 °C to 20 °C. Immutable.
 */
public final class Refrigerator implements Surroundings {

    private static final double COLDEST_K = 243.15;
    private static final double WARMEST_K = 293.15;

    private final StillAir inside;

    private Refrigerator(StillAir inside) {
        this.inside = inside;
    }

    /**
     * A refrigerator held at a temperature.
     *
     * @param airTemperature −30 °C to 20 °C
     * @return the refrigerator
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     */
    public static Refrigerator at(Quantity<Temperature> airTemperature) {
        SiValues.temperatureK(airTemperature, "refrigerator temperature", COLDEST_K, WARMEST_K);
        return new Refrigerator(StillAir.at(airTemperature));
    }

    /**
     * The same refrigerator with another shelf.
     *
     * @param footing what vessels stand on; insulating unless said otherwise, {@link Footing#open()} for a wire shelf
     * @return a new value
     */
    public Refrigerator on(Footing footing) {
        return new Refrigerator(inside.on(footing));
    }

    @Override
    public Medium open(String id, double originS) {
        return new AirMedium(id, inside, originS);
    }
}
