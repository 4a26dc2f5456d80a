/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.air;

import java.util.List;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * Dry air, 200 K to 400 K, near atmospheric pressure.
 *
 * <p>Viscosity and conductivity: dilute-gas terms of E. W. Lemmon and R. T. Jacobsen, Viscosity and thermal
 * conductivity equations for nitrogen, oxygen, argon, and air, Int. J. Thermophysics 25 (2004) 21-69, doi
 * 10.1023/B:IJOT.0000022327.04529.f3; its table V is reproduced. Density: the fit 351.99/T + 344.88/T² kg/m³ at
 * 101 325 Pa, scaled with pressure as an ideal gas. Specific heat capacity: a quadratic fit. All methods allocate
 * nothing.
 */
public final class DryAir {
    /** Standard atmospheric pressure, Pa (ISO 2533). */
    public static final double STANDARD_PRESSURE_PA = 101325;

    private static final Source LEMMON_JACOBSEN = Source.published(
            "Lemmon-Jacobsen 2004",
            "E. W. Lemmon, R. T. Jacobsen, Int. J. Thermophysics 25 (2004) 21-69, dilute-gas terms; uncertainties from"
                    + " memory of it");
    private static final Source FIT = Source.published(
            "air fit 200 to 400 K",
            "fits of density and specific heat capacity of air at 1 atm, 200 to 400 K, as published by an engineering"
                    + " reference page; uncertainty from comparison with Çengel, table A-15");

    private static final ValidityRange TEMPERATURES = new ValidityRange("air temperature", 200, 400, "K");
    private static final ValidityRange PRESSURES = new ValidityRange("air pressure", 10_000, 200_000, "Pa");

    // Density at 101325 Pa in kg/m³: DENSITY_1/T + DENSITY_2/T². Range 200 to 400 K; within 0.15 % of table A-15.
    private static final double DENSITY_1 = 351.99;
    private static final double DENSITY_2 = 344.88;

    // Specific heat capacity in J/(kg K): CP_0 + CP_1 T + CP_2 T². Range 200 to 400 K; within 0.2 % of tables.
    private static final double CP_0 = 1030.5;
    private static final double CP_1 = -0.19975;
    private static final double CP_2 = 3.9734e-4;

    // Dilute-gas viscosity: 0.0266958 sqrt(M T)/(sigma² Omega) µPa s, ln Omega a polynomial in ln(T/(epsilon/k)).
    private static final double VISCOSITY_FACTOR = 0.0266958;
    private static final double MOLAR_MASS = 28.9586;
    private static final double SIGMA_NM = 0.36;
    private static final double EPSILON_OVER_K = 103.3;
    private static final double[] LN_OMEGA = {0.431, -0.4623, 0.08406, 0.005341, -0.00331};

    // Dilute-gas conductivity in mW/(m K): K_MU mu/(µPa s) + K_2 theta^-1.1 + K_3 theta^-0.3, theta = T_C/T.
    private static final double K_MU = 1.308;
    private static final double K_2 = 1.405;
    private static final double K_2_EXPONENT = -1.1;
    private static final double K_3 = -1.036;
    private static final double K_3_EXPONENT = -0.3;
    private static final double T_C = 132.6312;

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord("density", "kg/m³", TEMPERATURES, Uncertainty.rectangularRelative(0.0015), FIT),
            new PropertyRecord(
                    "specific heat capacity", "J/(kg K)", TEMPERATURES, Uncertainty.rectangularRelative(0.002), FIT),
            new PropertyRecord(
                    "dynamic viscosity", "Pa s", TEMPERATURES, Uncertainty.rectangularRelative(0.01), LEMMON_JACOBSEN),
            new PropertyRecord(
                    "thermal conductivity",
                    "W/(m K)",
                    TEMPERATURES,
                    Uncertainty.rectangularRelative(0.02),
                    LEMMON_JACOBSEN));

    private DryAir() {}

    /**
     * Density.
     *
     * @param temperatureK temperature in K, 200 to 400
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @return density in kg/m³
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double density(double temperatureK, double pressurePa) {
        checked(temperatureK);
        PRESSURES.require(pressurePa, FIT);
        return (DENSITY_1 + DENSITY_2 / temperatureK) / temperatureK * (pressurePa / STANDARD_PRESSURE_PA);
    }

    /**
     * Isobaric specific heat capacity.
     *
     * @param temperatureK temperature in K, 200 to 400
     * @return specific heat capacity in J/(kg K)
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double specificHeatCapacity(double temperatureK) {
        checked(temperatureK);
        return CP_0 + temperatureK * (CP_1 + temperatureK * CP_2);
    }

    /**
     * Thermal conductivity.
     *
     * @param temperatureK temperature in K, 200 to 400
     * @return thermal conductivity in W/(m K)
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double thermalConductivity(double temperatureK) {
        checked(temperatureK);
        return diluteConductivity(temperatureK);
    }

    /**
     * Dynamic viscosity.
     *
     * @param temperatureK temperature in K, 200 to 400
     * @return dynamic viscosity in Pa s
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double dynamicViscosity(double temperatureK) {
        checked(temperatureK);
        return 1e-6 * diluteViscosityMicroPaS(temperatureK);
    }

    /** The published formula holds from 100 K upwards; its printed check value lies there. */
    static double diluteConductivity(double temperatureK) {
        double theta = T_C / temperatureK;
        return 1e-3
                * (K_MU * diluteViscosityMicroPaS(temperatureK)
                        + K_2 * Math.pow(theta, K_2_EXPONENT)
                        + K_3 * Math.pow(theta, K_3_EXPONENT));
    }

    /** See {@link #diluteConductivity(double)}. */
    static double diluteViscosityMicroPaS(double temperatureK) {
        double x = Math.log(temperatureK / EPSILON_OVER_K);
        double lnOmega = 0;
        for (int i = LN_OMEGA.length - 1; i >= 0; i--) {
            lnOmega = lnOmega * x + LN_OMEGA[i];
        }
        return VISCOSITY_FACTOR * Math.sqrt(MOLAR_MASS * temperatureK) / (SIGMA_NM * SIGMA_NM * Math.exp(lnOmega));
    }

    /**
     * Prandtl number.
     *
     * @param temperatureK temperature in K, 200 to 400
     * @return Prandtl number
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double prandtlNumber(double temperatureK) {
        return dynamicViscosity(temperatureK) * specificHeatCapacity(temperatureK) / thermalConductivity(temperatureK);
    }

    /**
     * Kinematic viscosity.
     *
     * @param temperatureK temperature in K, 200 to 400
     * @param pressurePa absolute pressure in Pa, 10 000 to 200 000
     * @return kinematic viscosity in m²/s
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an argument is outside its range
     * @throws IllegalArgumentException if an argument is NaN or infinite
     */
    public static double kinematicViscosity(double temperatureK, double pressurePa) {
        return dynamicViscosity(temperatureK) / density(temperatureK, pressurePa);
    }

    private static void checked(double temperatureK) {
        TEMPERATURES.require(temperatureK, LEMMON_JACOBSEN);
    }

    /**
     * Range of temperatures of all methods.
     *
     * @return the range in K
     */
    public static ValidityRange temperatureRange() {
        return TEMPERATURES;
    }

    /**
     * Range of pressures of all methods that take one.
     *
     * @return the range in Pa
     */
    public static ValidityRange pressureRange() {
        return PRESSURES;
    }

    /**
     * Where the formulas come from.
     *
     * @return the records, unmodifiable
     */
    public static List<PropertyRecord> properties() {
        return PROPERTIES;
    }
}
