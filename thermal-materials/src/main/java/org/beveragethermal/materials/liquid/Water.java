/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.util.List;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * Pure liquid water at 0.1 MPa, 253.15 K to 383.15 K, ends included.
 *
 * <p>Formulas: IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa; also
 * J. Pátek et al., J. Phys. Chem. Ref. Data 38 (2009) 21, doi 10.1063/1.3043575. Below 0 °C the water is supercooled,
 * above 100 °C superheated. The thermal conductivity is published from 273.15 K only; below that it is an
 * extrapolation. Enthalpy is derived from the same Gibbs function, so its derivative is the specific heat capacity
 * exactly. Checked against the release's table of computer-verification values.
 */
public final class Water implements Liquid {
    private static final Source SR6_08 = Source.published(
            "IAPWS SR6-08",
            "IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa;"
                    + " uncertainties from memory of the IAPWS releases it follows");
    private static final ValidityRange RANGE = new ValidityRange("water temperature", 253.15, 383.15, "K");
    private static final ValidityRange CONDUCTIVITY_RANGE = new ValidityRange("water temperature", 273.15, 383.15, "K");
    private static final ValidityRange CONDUCTIVITY_EXTRAPOLATED =
            new ValidityRange("water temperature", 253.15, 273.15, "K");

    // Constants of the release: specific gas constant, J/(kg K); reference temperature, K; reference pressure, Pa.
    private static final double R = 461.51805;
    private static final double T_R = 10;
    private static final double P_0 = 1e5;
    private static final double T_ALPHA = 593;
    private static final double T_BETA = 232;
    private static final double CELSIUS_ZERO_K = 273.15;

    // Specific volume: v = R T_R / P_0 (V_0 + sum V_A alpha^V_N + sum V_B beta^V_M). Range 253.15 to 383.15 K.
    private static final double V_0 = 0.0193763157;
    private static final double[] V_A = {6744.58446, -222521.604, 100231247.0, -1635521180.0, 8322996580.0};
    private static final int[] V_N = {4, 5, 7, 8, 9};
    private static final double[] V_B = {
        0.00578545292, -0.0153195665, 0.0311337859, -0.0423546241, 0.0338713507, -0.0119946761
    };
    private static final int[] V_M = {1, 2, 3, 4, 5, 6};

    // Gibbs function at 0.1 MPa, temperature-dependent part. Range 253.15 to 383.15 K.
    private static final double C_3 = -8.983025854;
    private static final double[] G_A = {-166147.0539, 2708781.64, -155719154.4};
    private static final int[] G_N = {4, 5, 7};
    private static final double[] G_B = {-0.8237426256, 1.908956353, -2.017597384, 0.8546361348};
    private static final int[] G_M = {2, 3, 4, 5};

    // Viscosity in µPa s: sum MU_C (T/300 K)^MU_E. Range 253.15 to 383.15 K.
    private static final double[] MU_C = {280.68, 511.45, 61.131, 0.45903};
    private static final double[] MU_E = {-1.9, -7.7, -19.6, -40};

    // Conductivity in W/(m K): sum K_C (T/300 K)^K_E. Range 273.15 to 383.15 K.
    private static final double[] K_C = {1.6630, -1.7781, 1.1567, -0.432115};
    private static final double[] K_E = {-1.15, -3.4, -6.0, -7.6};
    private static final double POWER_REFERENCE_K = 300;

    private static final double ENTHALPY_AT_0_CELSIUS = gibbsEnthalpy(CELSIUS_ZERO_K);

    private static final List<PropertyRecord> PROPERTIES = List.of(
            new PropertyRecord("density", "kg/m³", RANGE, Uncertainty.normalRelative(1e-5), SR6_08),
            new PropertyRecord("specific heat capacity", "J/(kg K)", RANGE, Uncertainty.normalRelative(5e-4), SR6_08),
            new PropertyRecord("specific enthalpy", "J/kg", RANGE, Uncertainty.normalRelative(5e-4), SR6_08),
            new PropertyRecord("dynamic viscosity", "Pa s", RANGE, Uncertainty.normalRelative(5e-3), SR6_08),
            new PropertyRecord(
                    "thermal conductivity", "W/(m K)", CONDUCTIVITY_RANGE, Uncertainty.normalRelative(7.5e-3), SR6_08),
            new PropertyRecord(
                    "thermal conductivity",
                    "W/(m K)",
                    CONDUCTIVITY_EXTRAPOLATED,
                    Uncertainty.normalRelative(0.02),
                    new Source(
                            "IAPWS SR6-08 extrapolated",
                            "the formula of IAPWS SR6-08 below its published range",
                            Source.Kind.OWN_ASSUMPTION)));

    private static final Water LIQUID = new Water();

    private Water() {}

    /**
     * Pure liquid water.
     *
     * @return the liquid
     */
    public static Water liquid() {
        return LIQUID;
    }

    @Override
    public String name() {
        return "water";
    }

    @Override
    public double density(double temperatureK) {
        checked(temperatureK);
        return 1 / specificVolume(temperatureK);
    }

    private static double specificVolume(double temperatureK) {
        double alpha = T_R / (T_ALPHA - temperatureK);
        double beta = T_R / (temperatureK - T_BETA);
        double sum = V_0;
        for (int i = 0; i < V_A.length; i++) {
            sum += V_A[i] * power(alpha, V_N[i]);
        }
        for (int i = 0; i < V_B.length; i++) {
            sum += V_B[i] * power(beta, V_M[i]);
        }
        return R * T_R / P_0 * sum;
    }

    @Override
    public double thermalExpansion(double temperatureK) {
        checked(temperatureK);
        double alpha = T_R / (T_ALPHA - temperatureK);
        double beta = T_R / (temperatureK - T_BETA);
        double sum = 0;
        for (int i = 0; i < V_A.length; i++) {
            sum += V_N[i] * V_A[i] * power(alpha, V_N[i] + 1);
        }
        for (int i = 0; i < V_B.length; i++) {
            sum -= V_M[i] * V_B[i] * power(beta, V_M[i] + 1);
        }
        return R / P_0 * sum / specificVolume(temperatureK);
    }

    @Override
    public double specificHeatCapacity(double temperatureK) {
        checked(temperatureK);
        double alpha = T_R / (T_ALPHA - temperatureK);
        double beta = T_R / (temperatureK - T_BETA);
        double sum = 0;
        for (int i = 0; i < G_A.length; i++) {
            sum += G_N[i] * (G_N[i] + 1) * G_A[i] * power(alpha, G_N[i] + 2);
        }
        for (int i = 0; i < G_B.length; i++) {
            sum += G_M[i] * (G_M[i] + 1) * G_B[i] * power(beta, G_M[i] + 2);
        }
        return -R * (C_3 + temperatureK / T_R * sum);
    }

    @Override
    public double specificEnthalpy(double temperatureK) {
        checked(temperatureK);
        return gibbsEnthalpy(temperatureK) - ENTHALPY_AT_0_CELSIUS;
    }

    /** h = g - T dg/dT of the release's Gibbs function, up to a constant. */
    private static double gibbsEnthalpy(double temperatureK) {
        double tau = temperatureK / T_R;
        double alpha = T_R / (T_ALPHA - temperatureK);
        double beta = T_R / (temperatureK - T_BETA);
        double sum = -C_3 * tau;
        for (int i = 0; i < G_A.length; i++) {
            sum += G_A[i] * power(alpha, G_N[i]) * (1 - G_N[i] * tau * alpha);
        }
        for (int i = 0; i < G_B.length; i++) {
            sum += G_B[i] * power(beta, G_M[i]) * (1 + G_M[i] * tau * beta);
        }
        return R * T_R * sum;
    }

    @Override
    public double thermalConductivity(double temperatureK) {
        checked(temperatureK);
        return powerSum(K_C, K_E, temperatureK);
    }

    @Override
    public double dynamicViscosity(double temperatureK) {
        checked(temperatureK);
        return 1e-6 * powerSum(MU_C, MU_E, temperatureK);
    }

    private static double powerSum(double[] factors, double[] exponents, double temperatureK) {
        double t = temperatureK / POWER_REFERENCE_K;
        double sum = 0;
        for (int i = 0; i < factors.length; i++) {
            sum += factors[i] * Math.pow(t, exponents[i]);
        }
        return sum;
    }

    private static double power(double base, int exponent) {
        double product = base;
        for (int i = 1; i < exponent; i++) {
            product *= base;
        }
        return product;
    }

    private static void checked(double temperatureK) {
        RANGE.require(temperatureK, SR6_08);
    }

    @Override
    public ValidityRange temperatureRange() {
        return RANGE;
    }

    @Override
    public List<PropertyRecord> properties() {
        return PROPERTIES;
    }
}
