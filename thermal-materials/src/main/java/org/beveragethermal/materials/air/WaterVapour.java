/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.air;

/**
 * Water vapour by itself: heat of evaporation along the saturation line, and transport of the dilute gas.
 *
 * <p>Saturation: supplementary equations of W. Wagner and A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783-787 (IAPWS
 * SR1-86(1992)): vapour pressure and the densities of both phases, from which the equation of Clapeyron gives the heat. Viscosity
 * and conductivity: limits of zero density of IAPWS R12-08 and R15-11. The computer-verification values of all three are
 * reproduced. Temperatures are not checked here.
 */
final class WaterVapour {
    private static final double CRITICAL_K = 647.096;
    private static final double CRITICAL_PA = 22.064e6;
    private static final double CRITICAL_KG_PER_M3 = 322;

    // Factors and exponents of (1 - T/Tc); published 273.16 to 647.096 K.
    private static final double[] PRESSURE = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502
    };
    private static final double[] PRESSURE_EXPONENTS = {1, 1.5, 3, 3.5, 4, 7.5};
    private static final double[] LIQUID = {
        1.99274064, 1.09965342, -0.510839303, -1.75493479, -45.5170352, -6.74694450e5
    };
    private static final double[] LIQUID_EXPONENTS = {1.0 / 3, 2.0 / 3, 5.0 / 3, 16.0 / 3, 43.0 / 3, 110.0 / 3};
    private static final double[] VAPOUR = {-2.03150240, -2.68302940, -5.38626492, -17.2991605, -44.7586581, -63.9201063
    };
    private static final double[] VAPOUR_EXPONENTS = {2.0 / 6, 4.0 / 6, 8.0 / 6, 18.0 / 6, 37.0 / 6, 71.0 / 6};

    // 100 sqrt(T/Tc) / sum(H_i (Tc/T)^i) µPa s.
    private static final double VISCOSITY_FACTOR = 100;
    private static final double[] VISCOSITY = {1.67752, 2.20462, 0.6366564, -0.241605};
    // sqrt(T/Tc) / sum(L_i (Tc/T)^i) mW/(m K).
    private static final double[] CONDUCTIVITY = {2.443221e-3, 1.323095e-2, 6.770357e-3, -3.454586e-3, 4.096266e-4};

    private WaterVapour() {}

    private static double sum(double[] factors, double[] exponents, double theta) {
        double sum = 0;
        for (int i = 0; i < factors.length; i++) {
            sum += factors[i] * Math.pow(theta, exponents[i]);
        }
        return sum;
    }

    static double saturationPressure(double temperatureK) {
        double theta = 1 - temperatureK / CRITICAL_K;
        return CRITICAL_PA * Math.exp(CRITICAL_K / temperatureK * sum(PRESSURE, PRESSURE_EXPONENTS, theta));
    }

    static double saturatedLiquidDensity(double temperatureK) {
        return CRITICAL_KG_PER_M3 * (1 + sum(LIQUID, LIQUID_EXPONENTS, 1 - temperatureK / CRITICAL_K));
    }

    static double saturatedVapourDensity(double temperatureK) {
        return CRITICAL_KG_PER_M3 * Math.exp(sum(VAPOUR, VAPOUR_EXPONENTS, 1 - temperatureK / CRITICAL_K));
    }

    /** Clapeyron: T dp/dT (1/rho'' - 1/rho'), J/kg. */
    static double latentHeatOfEvaporation(double temperatureK) {
        double theta = 1 - temperatureK / CRITICAL_K;
        double slopes = 0;
        for (int i = 0; i < PRESSURE.length; i++) {
            slopes += PRESSURE[i] * PRESSURE_EXPONENTS[i] * Math.pow(theta, PRESSURE_EXPONENTS[i] - 1);
        }
        double pressure = saturationPressure(temperatureK);
        double temperatureTimesSlope = -pressure * (Math.log(pressure / CRITICAL_PA) + slopes);
        return temperatureTimesSlope
                * (1 / saturatedVapourDensity(temperatureK) - 1 / saturatedLiquidDensity(temperatureK));
    }

    static double dynamicViscosity(double temperatureK) {
        return 1e-6 * VISCOSITY_FACTOR * diluteGas(VISCOSITY, temperatureK);
    }

    static double thermalConductivity(double temperatureK) {
        return 1e-3 * diluteGas(CONDUCTIVITY, temperatureK);
    }

    private static double diluteGas(double[] factors, double temperatureK) {
        double inverse = CRITICAL_K / temperatureK;
        double sum = 0;
        for (int i = factors.length - 1; i >= 0; i--) {
            sum = sum * inverse + factors[i];
        }
        return Math.sqrt(temperatureK / CRITICAL_K) / sum;
    }
}
