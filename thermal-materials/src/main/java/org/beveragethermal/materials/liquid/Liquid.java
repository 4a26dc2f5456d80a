/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * A liquid with its thermal properties at atmospheric pressure as functions of temperature.
 *
 * <p>Every property method takes a temperature in K inside {@link #temperatureRange()}, throws
 * {@link OutOfRangeException} for a finite temperature outside it and {@link IllegalArgumentException} for NaN and
 * infinity, returns a finite number, and allocates nothing. Below its freezing point a liquid is described as if it
 * stayed liquid (supercooled). Implementations are immutable and safe to share between threads.
 */
public interface Liquid {

    /** Half the step of the central difference in {@link #thermalExpansion(double)}, K. */
    double EXPANSION_HALF_STEP_K = 0.05;

    /**
     * What it is, for people.
     *
     * @return the name
     */
    String name();

    /**
     * Density.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return density in kg/m³, greater than 0
     * @throws OutOfRangeException if the temperature is outside the range
     */
    double density(double temperatureK);

    /**
     * Isobaric specific heat capacity.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return specific heat capacity in J/(kg K), greater than 0
     * @throws OutOfRangeException if the temperature is outside the range
     */
    double specificHeatCapacity(double temperatureK);

    /**
     * Thermal conductivity.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return thermal conductivity in W/(m K), greater than 0
     * @throws OutOfRangeException if the temperature is outside the range
     */
    double thermalConductivity(double temperatureK);

    /**
     * Dynamic viscosity.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return dynamic viscosity in Pa s, greater than 0
     * @throws OutOfRangeException if the temperature is outside the range
     */
    double dynamicViscosity(double temperatureK);

    /**
     * Specific enthalpy, counted from this liquid at 0 °C. Its derivative is exactly
     * {@link #specificHeatCapacity(double)}.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return specific enthalpy in J/kg, 0 at 273.15 K
     * @throws OutOfRangeException if the temperature is outside the range
     */
    double specificEnthalpy(double temperatureK);

    /**
     * Range in which all properties can be evaluated, ends included. It may reach beyond the published range of one
     * or another property; {@link #properties()} says so.
     *
     * @return the range in K
     */
    ValidityRange temperatureRange();

    /**
     * Where the formulas come from, one or more records per property: what is published and, if the range reaches
     * beyond that, what is extrapolated and how well it is known there.
     *
     * @return the records, unmodifiable
     */
    List<PropertyRecord> properties();

    /**
     * Coefficient of volume expansion; by default from a difference of densities 0.1 K apart, one-sided at the ends
     * of the range.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return volume expansion coefficient in 1/K, of either sign
     * @throws OutOfRangeException if the temperature is outside the range
     */
    default double thermalExpansion(double temperatureK) {
        ValidityRange range = temperatureRange();
        double below = Math.max(range.low(), temperatureK - EXPANSION_HALF_STEP_K);
        double above = Math.min(range.high(), temperatureK + EXPANSION_HALF_STEP_K);
        return (density(below) - density(above)) / ((above - below) * density(temperatureK));
    }

    /**
     * Kinematic viscosity.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return kinematic viscosity in m²/s, greater than 0
     * @throws OutOfRangeException if the temperature is outside the range
     */
    default double kinematicViscosity(double temperatureK) {
        return dynamicViscosity(temperatureK) / density(temperatureK);
    }

    /**
     * Thermal diffusivity.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return thermal diffusivity in m²/s, greater than 0
     * @throws OutOfRangeException if the temperature is outside the range
     */
    default double thermalDiffusivity(double temperatureK) {
        return thermalConductivity(temperatureK) / (density(temperatureK) * specificHeatCapacity(temperatureK));
    }

    /**
     * Prandtl number.
     *
     * @param temperatureK temperature in K, inside {@link #temperatureRange()}
     * @return Prandtl number, greater than 0
     * @throws OutOfRangeException if the temperature is outside the range
     */
    default double prandtlNumber(double temperatureK) {
        return dynamicViscosity(temperatureK) * specificHeatCapacity(temperatureK) / thermalConductivity(temperatureK);
    }
}
