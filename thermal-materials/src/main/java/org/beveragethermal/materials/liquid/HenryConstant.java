/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import org.beveragethermal.materials.provenance.Source;

/**
 * Henry's constant of carbon dioxide in water by IAPWS G7-04 (R. Fernández-Prini, J. L. Alvarez, A. H. Harvey, J. Phys.
 * Chem. Ref. Data 32 (2003) 903-916), which needs the vapour pressure of water by W. Wagner and A. Pruss, J. Phys. Chem.
 * Ref. Data 22 (1993) 783-787 (IAPWS SR1-86(1992)). The computer-verification values of both are reproduced. The range is
 * that of the measurements behind the formula.
 */
final class HenryConstant {
    static final double LOWEST_K = 274.19;
    static final double HIGHEST_K = 642.66;

    static final Source G7_04 = Source.published(
            "IAPWS G7-04",
            "IAPWS G7-04, Guideline on the Henry's constant and vapor-liquid distribution constant for gases in H2O and D2O at"
                    + " high temperatures, carbon dioxide in H2O, 274.19 to 642.66 K; the uncertainty is the deviation seen"
                    + " below 40 °C");

    private static final double CRITICAL_K = 647.096;
    private static final double CRITICAL_PA = 22.064e6;

    // ln(kH/p) = A/t + B (1-t)^0.355/t + C t^-0.41 exp(1-t), t = T/Tc.
    private static final double A = -8.55445;
    private static final double B = 4.01195;
    private static final double C = 9.52345;
    private static final double B_EXPONENT = 0.355;
    private static final double C_EXPONENT = -0.41;

    // ln(p/pc) = sum(P (1-t)^N)/t.
    private static final double[] P = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502};
    private static final double[] N = {1, 1.5, 3, 3.5, 4, 7.5};

    private HenryConstant() {}

    /** Fugacity over mole fraction in dilute solution, Pa; the temperature is not checked. */
    static double pascals(double temperatureK) {
        double t = temperatureK / CRITICAL_K;
        double rest = 1 - t;
        double lnPressure = 0;
        for (int i = 0; i < P.length; i++) {
            lnPressure += P[i] * Math.pow(rest, N[i]);
        }
        double ratio = A / t + B * Math.pow(rest, B_EXPONENT) / t + C * Math.pow(t, C_EXPONENT) * Math.exp(rest);
        return CRITICAL_PA * Math.exp(lnPressure / t + ratio);
    }
}
