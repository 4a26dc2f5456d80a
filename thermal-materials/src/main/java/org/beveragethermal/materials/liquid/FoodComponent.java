/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * What foods are made of, with the properties of Choi and Okos as printed in the ASHRAE Handbook, Refrigeration,
 * chapter 19: -40 °C to 150 °C. A food's specific volume is the sum of its components' by mass, so is its specific heat
 * capacity; its conductivity is the sum by volume (side by side).
 *
 * <p>There is no component for ethanol: {@link Beverage} takes ethanol and water from {@link EthanolWater}. It also
 * takes water from {@link Water} instead of {@link #WATER}, which is 0.25 % too light at 20 °C.
 */
@SuppressWarnings("ImmutableEnumChecker") // the only fields are records of doubles
public enum FoodComponent {
    /** Water as part of a food. */
    WATER(
            quadratic(997.18, 0.0031439, -0.0037574),
            quadratic(4176.2, -0.090864, 0.0054731),
            quadratic(0.57109, 0.0017625, -6.7036e-06)),
    /** Protein. */
    PROTEIN(
            quadratic(1329.9, -0.5184, 0),
            quadratic(2008.2, 1.2089, -0.0013129),
            quadratic(0.17881, 0.0011958, -2.7178e-06)),
    /** Fat. */
    FAT(
            quadratic(925.59, -0.41757, 0),
            quadratic(1984.2, 1.4733, -0.0048008),
            quadratic(0.18071, -0.00027604, -1.7749e-07)),
    /** Sugars, dextrins and other carbohydrate. */
    CARBOHYDRATE(
            quadratic(1599.1, -0.31046, 0),
            quadratic(1548.8, 1.9625, -0.0059399),
            quadratic(0.20141, 0.0013874, -4.3312e-06)),
    /** Fibre. */
    FIBRE(
            quadratic(1311.5, -0.36589, 0),
            quadratic(1845.9, 1.8306, -0.0046509),
            quadratic(0.18331, 0.0012497, -3.1683e-06)),
    /** Minerals. */
    ASH(
            quadratic(2423.8, -0.28063, 0),
            quadratic(1092.6, 1.8896, -0.0036817),
            quadratic(0.32962, 0.0014011, -2.9069e-06));

    /** Where the coefficients come from. */
    static final Source CHOI_OKOS = Source.published(
            "Choi-Okos",
            "ASHRAE Handbook, Refrigeration, chapter 19, thermal properties of food components (Choi and Okos), -40 to 150 °C;"
                    + " it states no uncertainty: given is an estimate of ours, from water and milk");

    private static final double CELSIUS_ZERO_K = 273.15;
    private static final ValidityRange RANGE = new ValidityRange("temperature of a food", 233.15, 423.15, "K");

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord("density", "kg/m³", RANGE, Uncertainty.rectangularRelative(0.01), CHOI_OKOS),
            new PropertyRecord(
                    "specific heat capacity", "J/(kg K)", RANGE, Uncertainty.rectangularRelative(0.03), CHOI_OKOS),
            new PropertyRecord(
                    "thermal conductivity", "W/(m K)", RANGE, Uncertainty.rectangularRelative(0.04), CHOI_OKOS));

    // Polynomials in t/°C: density in kg/m³, specific heat capacity in J/(kg K), conductivity in W/(m K). The handbook
    // states no uncertainty; its worked example is reproduced to five figures.
    private final Quadratic densityTerms;
    private final Quadratic heatCapacityTerms;
    private final Quadratic conductivityTerms;

    FoodComponent(Quadratic densityTerms, Quadratic heatCapacityTerms, Quadratic conductivityTerms) {
        this.densityTerms = densityTerms;
        this.heatCapacityTerms = heatCapacityTerms;
        this.conductivityTerms = conductivityTerms;
    }

    /**
     * Density of the component.
     *
     * @param temperatureK temperature in K, 233.15 to 423.15
     * @return density in kg/m³
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double density(double temperatureK) {
        return densityTerms.value(celsius(temperatureK));
    }

    /**
     * Coefficient of volume expansion.
     *
     * @param temperatureK temperature in K, 233.15 to 423.15
     * @return volume expansion coefficient in 1/K
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double thermalExpansion(double temperatureK) {
        double t = celsius(temperatureK);
        return -densityTerms.derivative(t) / densityTerms.value(t);
    }

    /**
     * Specific heat capacity of the component.
     *
     * @param temperatureK temperature in K, 233.15 to 423.15
     * @return specific heat capacity in J/(kg K)
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double specificHeatCapacity(double temperatureK) {
        return heatCapacityTerms.value(celsius(temperatureK));
    }

    /**
     * Specific enthalpy of the component, counted from 0 °C; its derivative is the specific heat capacity.
     *
     * @param temperatureK temperature in K, 233.15 to 423.15
     * @return specific enthalpy in J/kg, 0 at 273.15 K
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double specificEnthalpy(double temperatureK) {
        return heatCapacityTerms.antiderivative(celsius(temperatureK));
    }

    /**
     * Thermal conductivity of the component.
     *
     * @param temperatureK temperature in K, 233.15 to 423.15
     * @return thermal conductivity in W/(m K)
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double thermalConductivity(double temperatureK) {
        return conductivityTerms.value(celsius(temperatureK));
    }

    /**
     * Where the formulas come from, one record per property, the same for all components.
     *
     * @return the records, unmodifiable
     */
    public static List<PropertyRecord> properties() {
        return PROPERTIES;
    }

    private static Quadratic quadratic(double constant, double linear, double square) {
        return new Quadratic(constant, linear, square);
    }

    private record Quadratic(double constant, double linear, double square) {
        double value(double x) {
            return constant + x * (linear + x * square);
        }

        double derivative(double x) {
            return linear + 2 * square * x;
        }

        /** Antiderivative that vanishes at x = 0. */
        double antiderivative(double x) {
            return x * (constant + x * (linear / 2 + x * square / 3));
        }
    }

    private static double celsius(double temperatureK) {
        return RANGE.require(temperatureK, CHOI_OKOS) - CELSIUS_ZERO_K;
    }
}
