/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

/**
 * A bucket for a bath, empty at the start of the scenario.
 *
 * @param id identifier, unique in the scenario
 * @param name name for people
 * @param kind what it is filled with
 * @param capacityBottles how many bottles of 750 mL stand in it side by side; at least 1
 * @param innerDiameterM inner diameter [m]; within 80 mm to 800 mm
 * @param heightM inner height [m]; within 80 mm to 800 mm
 * @param wallConductanceWPerK thermal conductance from the bath through wall and base to the air around [W/K]; 0 to 20
 * @param placeId where it stands
 */
public record Bucket(
        String id,
        String name,
        BucketKind kind,
        int capacityBottles,
        double innerDiameterM,
        double heightM,
        double wallConductanceWPerK,
        String placeId) {
    /**
     * A bucket from its parts.
     *
     * @param id identifier, unique in the scenario
     * @param name name for people
     * @param kind what it is filled with
     * @param capacityBottles how many bottles of 750 mL stand in it side by side; at least 1
     * @param innerDiameterM inner diameter [m]; within 80 mm to 800 mm
     * @param heightM inner height [m]; within 80 mm to 800 mm
     * @param wallConductanceWPerK thermal conductance from the bath through wall and base to the air around [W/K]; 0 to 20
     * @param placeId where it stands
     * @throws IllegalArgumentException if a size or the conductance lies outside its range or the capacity is below 1
     */
    public Bucket {
        Limit.INNER_DIAMETER.requireSi(innerDiameterM);
        Limit.INNER_HEIGHT.requireSi(heightM);
        Limit.WALL_CONDUCTANCE.requireSi(wallConductanceWPerK);
        if (capacityBottles < 1) {
            throw new IllegalArgumentException("capacity " + capacityBottles + " bottles: expected at least 1");
        }
    }
}
