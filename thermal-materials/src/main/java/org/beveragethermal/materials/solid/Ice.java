/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import java.util.List;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * Ordinary ice (ice Ih) at 101 325 Pa, 200 K to 273.16 K.
 *
 * <p>Density, specific heat capacity and enthalpy follow the Gibbs function of IAPWS R10-06(2009); its table of check
 * values is reproduced to its last digits. The thermal conductivity is the quadratic of Choi and Okos as printed in
 * the ASHRAE Handbook, Refrigeration, for -40 to 0 °C; colder than that it is an extrapolation. Enthalpy is counted
 * from liquid water at 0 °C, like that of {@link org.beveragethermal.materials.liquid.Water}. All methods take kelvins
 * and allocate nothing.
 */
public final class Ice {
    private static final double CELSIUS_ZERO_K = 273.15;

    private static final Source R10_06 = Source.published(
            "IAPWS R10-06",
            "IAPWS R10-06(2009), Revised Release on the Equation of State 2006 for H2O Ice Ih; uncertainties from"
                    + " memory of it");
    private static final Source CHOI_OKOS = Source.published(
            "Choi-Okos", "ASHRAE Handbook, Refrigeration, thermal properties of food components: ice (Choi and Okos)");

    private static final ValidityRange RANGE = new ValidityRange("ice temperature", 200, 273.16, "K");
    private static final ValidityRange CONDUCTIVITY_RANGE = new ValidityRange("ice temperature", 233.15, 273.16, "K");
    private static final ValidityRange CONDUCTIVITY_EXTRAPOLATED =
            new ValidityRange("ice temperature", 200, 233.15, "K");

    // Conductivity in W/(m K), t in °C: K_0 + K_1 t + K_2 t²; within 2 % of two other tables from -20 to 0 °C.
    private static final double K_0 = 2.2196;
    private static final double K_1 = -6.2489e-3;
    private static final double K_2 = 1.0154e-4;

    private static final Constant LATENT_HEAT_OF_FUSION = new Constant(
            "latent heat of fusion of ice at 101325 Pa",
            333_426.5,
            "J/kg",
            Uncertainty.normal(150),
            new Source(
                    "IAPWS R10-06 and IAPWS-95",
                    "difference of the enthalpies of water (IAPWS-95) and ice (IAPWS R10-06) at 273.1525 K and 101325 Pa",
                    Source.Kind.OWN_COMPUTATION));

    /** What to add to the release's enthalpy so that ice at 0 °C has minus the latent heat. */
    private static final double ENTHALPY_OFFSET =
            -LATENT_HEAT_OF_FUSION.value() - IceGibbs.specificEnthalpy(CELSIUS_ZERO_K, IceGibbs.NORMAL_PRESSURE_PA);

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord("density", "kg/m³", RANGE, Uncertainty.normalRelative(2e-4), R10_06),
            new PropertyRecord("specific heat capacity", "J/(kg K)", RANGE, Uncertainty.normalRelative(0.01), R10_06),
            new PropertyRecord("specific enthalpy", "J/kg", RANGE, Uncertainty.normal(200), R10_06),
            new PropertyRecord(
                    "thermal conductivity",
                    "W/(m K)",
                    CONDUCTIVITY_RANGE,
                    Uncertainty.rectangularRelative(0.03),
                    CHOI_OKOS),
            new PropertyRecord(
                    "thermal conductivity",
                    "W/(m K)",
                    CONDUCTIVITY_EXTRAPOLATED,
                    Uncertainty.rectangularRelative(0.1),
                    new Source(
                            "Choi-Okos extrapolated",
                            "the quadratic of Choi and Okos below -40 °C",
                            Source.Kind.OWN_ASSUMPTION)));

    private Ice() {}

    /**
     * Density at 101 325 Pa.
     *
     * @param temperatureK temperature in K, 200 to 273.16
     * @return density in kg/m³
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double density(double temperatureK) {
        return IceGibbs.density(RANGE.require(temperatureK, R10_06), IceGibbs.NORMAL_PRESSURE_PA);
    }

    /**
     * Specific heat capacity at 101 325 Pa.
     *
     * @param temperatureK temperature in K, 200 to 273.16
     * @return specific heat capacity in J/(kg K)
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double specificHeatCapacity(double temperatureK) {
        return IceGibbs.specificHeatCapacity(RANGE.require(temperatureK, R10_06), IceGibbs.NORMAL_PRESSURE_PA);
    }

    /**
     * Specific enthalpy at 101 325 Pa, counted from liquid water at 0 °C.
     *
     * @param temperatureK temperature in K, 200 to 273.16
     * @return specific enthalpy in J/kg; minus the latent heat of fusion at 273.15 K
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double specificEnthalpy(double temperatureK) {
        return ENTHALPY_OFFSET
                + IceGibbs.specificEnthalpy(RANGE.require(temperatureK, R10_06), IceGibbs.NORMAL_PRESSURE_PA);
    }

    /**
     * Thermal conductivity.
     *
     * @param temperatureK temperature in K, 200 to 273.16; published from 233.15
     * @return thermal conductivity in W/(m K)
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the temperature is outside the range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public static double thermalConductivity(double temperatureK) {
        double t = RANGE.require(temperatureK, CHOI_OKOS) - CELSIUS_ZERO_K;
        return K_0 + t * (K_1 + t * K_2);
    }

    /**
     * Latent heat of fusion at 0 °C and 101 325 Pa.
     *
     * @return the constant, in J/kg
     */
    public static Constant latentHeatOfFusion() {
        return LATENT_HEAT_OF_FUSION;
    }

    /**
     * Range of all methods.
     *
     * @return the range in K
     */
    public static ValidityRange temperatureRange() {
        return RANGE;
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
