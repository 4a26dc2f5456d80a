/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import java.util.Optional;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * A solid with properties that do not depend on temperature inside a range of temperatures. Each property carries its
 * own uncertainty and source. A model may run outside the range; the properties then are guesses.
 *
 * @param name what it is; not blank
 * @param density density in kg/m³, greater than 0, at most 100 000; of the bulk, pores included
 * @param thermalConductivity thermal conductivity in W/(m K), greater than 0, at most 100 000
 * @param specificHeatCapacity specific heat capacity in J/(kg K), greater than 0, at most 100 000
 * @param emissivity emissivity for thermal radiation of surfaces near room temperature, 0 to 1
 * @param solarAbsorptance part of sunlight that it takes up, 0 to 1; empty where the colour decides or it is not known
 * @param temperatures where the figures hold, in K
 */
public record Solid(
        String name,
        Constant density,
        Constant thermalConductivity,
        Constant specificHeatCapacity,
        Constant emissivity,
        Optional<Constant> solarAbsorptance,
        ValidityRange temperatures) {

    /**
     * Where tabulated design values of materials hold: -30 to 60 °C, the ambient temperatures that the procedures of EN
     * ISO 10456:2007 are made for.
     */
    public static final ValidityRange AMBIENT = new ValidityRange("temperature of a solid", 243.15, 333.15, "K");

    /** More than any known solid has in its SI unit. */
    private static final double LARGEST = 1e5;

    /**
     * Checks the parts.
     *
     * @param name what it is; not blank
     * @param density density in kg/m³, greater than 0, at most 100 000
     * @param thermalConductivity thermal conductivity in W/(m K), greater than 0, at most 100 000
     * @param specificHeatCapacity specific heat capacity in J/(kg K), greater than 0, at most 100 000
     * @param emissivity emissivity, 0 to 1
     * @param solarAbsorptance solar absorptance, 0 to 1, or empty
     * @param temperatures where the figures hold, in K
     * @throws OutOfRangeException if a value is outside its range
     * @throws IllegalArgumentException if the name is blank
     */
    public Solid {
        if (name.isBlank()) {
            throw new IllegalArgumentException("solid: expected a name, got a blank one");
        }
        require(density, Double.MIN_VALUE, LARGEST);
        require(thermalConductivity, Double.MIN_VALUE, LARGEST);
        require(specificHeatCapacity, Double.MIN_VALUE, LARGEST);
        require(emissivity, 0, 1);
        solarAbsorptance.ifPresent(absorptance -> require(absorptance, 0, 1));
    }

    /**
     * A solid whose solar absorptance is not known, for {@linkplain #AMBIENT ambient temperatures}.
     *
     * @param name what it is; not blank
     * @param density density in kg/m³, greater than 0, at most 100 000
     * @param thermalConductivity thermal conductivity in W/(m K), greater than 0, at most 100 000
     * @param specificHeatCapacity specific heat capacity in J/(kg K), greater than 0, at most 100 000
     * @param emissivity emissivity, 0 to 1
     * @throws OutOfRangeException if a value is outside its range
     * @throws IllegalArgumentException if the name is blank
     */
    public Solid(
            String name,
            Constant density,
            Constant thermalConductivity,
            Constant specificHeatCapacity,
            Constant emissivity) {
        this(name, density, thermalConductivity, specificHeatCapacity, emissivity, Optional.empty(), AMBIENT);
    }

    private static void require(Constant constant, double low, double high) {
        if (!(constant.value() >= low && constant.value() <= high)) {
            throw OutOfRangeException.refusal(constant.name(), constant.value(), low, high, constant.unit(), "");
        }
    }

    /**
     * The same solid with another solar absorptance: painted, or of another colour.
     *
     * @param value part of sunlight that it takes up, 0 to 1
     * @return a copy
     * @throws OutOfRangeException if the value is outside its range
     */
    public Solid withSolarAbsorptance(Constant value) {
        return new Solid(
                name, density, thermalConductivity, specificHeatCapacity, emissivity, Optional.of(value), temperatures);
    }
}
