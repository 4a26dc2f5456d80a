/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * A solid with properties that do not depend on temperature.
 *
 * @param name what it is; not blank
 * @param density density in kg/m³, greater than 0
 * @param thermalConductivity thermal conductivity in W/(m K), greater than 0
 * @param specificHeatCapacity specific heat capacity in J/(kg K), greater than 0
 * @param emissivity hemispherical emissivity for thermal radiation, 0 to 1
 */
public record Solid(
        String name,
        Constant density,
        Constant thermalConductivity,
        Constant specificHeatCapacity,
        Constant emissivity) {

    /**
     * Checks the parts.
     *
     * @param name what it is; not blank
     * @param density density in kg/m³, greater than 0
     * @param thermalConductivity thermal conductivity in W/(m K), greater than 0
     * @param specificHeatCapacity specific heat capacity in J/(kg K), greater than 0
     * @param emissivity emissivity, 0 to 1
     * @throws OutOfRangeException if a value is outside its range
     * @throws IllegalArgumentException if the name is blank
     */
    public Solid {
        if (name.isBlank()) {
            throw new IllegalArgumentException("solid: expected a name, got a blank one");
        }
        require(density, Double.MIN_VALUE, Double.MAX_VALUE);
        require(thermalConductivity, Double.MIN_VALUE, Double.MAX_VALUE);
        require(specificHeatCapacity, Double.MIN_VALUE, Double.MAX_VALUE);
        require(emissivity, 0, 1);
    }

    private static void require(Constant constant, double low, double high) {
        if (!(constant.value() >= low && constant.value() <= high)) {
            throw OutOfRangeException.refusal(constant.name(), constant.value(), low, high, constant.unit(), "");
        }
    }
}
