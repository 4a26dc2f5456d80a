/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

/**
 * A refrigerator, wine cabinet or freezer: air at one temperature and room for some bottles.
 *
 * @param id identifier, unique in the scenario
 * @param name name for people
 * @param kind how its air moves
 * @param airTemperatureK temperature of its air [K]; within -30 °C to 20 °C
 * @param capacityBottles how many bottles of 750 mL it holds; at least 1
 * @param placeId where it stands
 */
public record Refrigerator(
        String id, String name, RefrigeratorKind kind, double airTemperatureK, int capacityBottles, String placeId) {
    /**
     * A refrigerator from its parts.
     *
     * @param id identifier, unique in the scenario
     * @param name name for people
     * @param kind how its air moves
     * @param airTemperatureK temperature of its air [K]; within -30 °C to 20 °C
     * @param capacityBottles how many bottles of 750 mL it holds; at least 1
     * @param placeId where it stands
     * @throws IllegalArgumentException if the temperature lies outside its range or the capacity is below 1
     */
    public Refrigerator {
        Limit.REFRIGERATOR_AIR.requireSi(airTemperatureK);
        if (capacityBottles < 1) {
            throw new IllegalArgumentException("capacity " + capacityBottles + " bottles: expected at least 1");
        }
    }
}
