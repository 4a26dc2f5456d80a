/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * Solid common salt (NaCl), to go with {@link Brine}: density, heat capacity, enthalpy from 0 °C, and how much
 * dissolves.
 */
public final class Salt {
    private static final double CELSIUS_ZERO_K = 273.15;
    private static final double MOLAR_MASS_KG = 0.05844;

    private static final Source CRC = new Source(
            "CRC sodium chloride",
            "CRC Handbook of Chemistry and Physics, sodium chloride: crystal density, molar heat capacity 50.5 J/(mol K) at 25 °C,"
                    + " solubility in water (from memory)",
            Source.Kind.FROM_MEMORY);

    private static final ValidityRange RANGE = new ValidityRange("temperature of salt", 250, 323.15, "K");
    private static final ValidityRange DISSOLVING =
            new ValidityRange("temperature of saturated brine", CELSIUS_ZERO_K, 323.15, "K");

    private static final Constant DENSITY =
            new Constant("density of salt crystals", 2165, "kg/m³", Uncertainty.rectangular(10), CRC);
    private static final Constant HEAT_CAPACITY = new Constant(
            "specific heat capacity of solid salt",
            50.5 / MOLAR_MASS_KG,
            "J/(kg K)",
            Uncertainty.rectangularRelative(0.02),
            CRC);

    // Solubility in g per 100 g of water: 35.65 at 0 °C, 35.89 at 20 °C, 36.37 at 40 °C; the parabola through the
    // three.
    private static final double[] PER_100_G_WATER = {35.65, 0.006, 0.0003};

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord("density", "kg/m³", RANGE, DENSITY.uncertainty(), CRC),
            new PropertyRecord("specific heat capacity", "J/(kg K)", RANGE, HEAT_CAPACITY.uncertainty(), CRC),
            new PropertyRecord("solubility", "1", DISSOLVING, Uncertainty.rectangular(0.001), CRC));

    private Salt() {}

    /**
     * Where the figures come from, one record per property.
     *
     * @return the records, unmodifiable
     */
    public static List<PropertyRecord> properties() {
        return PROPERTIES;
    }

    /**
     * Density of the crystals; heaped, table salt weighs about half as much.
     *
     * @return the constant, in kg/m³
     */
    public static Constant density() {
        return DENSITY;
    }

    /**
     * Specific heat capacity, taken as constant from -23 to 50 °C.
     *
     * @return the constant, in J/(kg K)
     */
    public static Constant specificHeatCapacity() {
        return HEAT_CAPACITY;
    }

    /**
     * Specific enthalpy of solid salt, counted from 0 °C: the zero that {@link Brine#enthalpyOverWaterAndSalt(double)}
     * is counted from.
     *
     * @param temperatureK temperature in K, 250 to 323.15
     * @return specific enthalpy in J/kg
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double specificEnthalpy(double temperatureK) {
        return HEAT_CAPACITY.value() * (RANGE.require(temperatureK, CRC) - CELSIUS_ZERO_K);
    }

    /**
     * How much salt dissolves. Below 0 °C salt with water of crystallisation settles, down to the eutectic; that is not
     * covered.
     *
     * @param temperatureK temperature in K, 273.15 to 323.15
     * @return mass of salt per mass of saturated brine, about 0.263
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double solubility(double temperatureK) {
        double perWater =
                Polynomials.value(PER_100_G_WATER, DISSOLVING.require(temperatureK, CRC) - CELSIUS_ZERO_K) / 100;
        return perWater / (1 + perWater);
    }
}
