/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.air.WaterSurface;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * Vapour pressure of the water and ethanol of a drink, by Raoult's law with van Laar's activity coefficients.
 *
 * <p>The constants of van Laar for ethanol and water, 1.6798 and 0.9227, and those of Antoine for ethanol, log₁₀(p/mmHg) = 8.20417 −
 * 1642.89/(230.300 + t/°C), are handbook values from memory. Sugar and extract are left out. At 20 °C a wine has about 3 kPa: a tenth
 * of it either way matters nowhere here.
 *
 * <p>Theory manual, equation (6.7).
 */
final class Vapour {

    private static final double WATER_KG_PER_MOL = 0.018015;
    private static final double ETHANOL_KG_PER_MOL = 0.046068;
    private static final double ETHANOL_IN_WATER = 1.6798;
    private static final double WATER_IN_ETHANOL = 0.9227;
    private static final double MMHG_PA = 133.322;
    private static final double ANTOINE_A = 8.20417;
    private static final double ANTOINE_B = 1642.89;
    private static final double ANTOINE_C = 230.300;

    private Vapour() {}

    /** Vapour pressure over a liquid; over one that is no beverage that of water [Pa]. */
    static double pressurePa(Liquid liquid, double temperatureK) {
        double water = MoistAir.saturationPressure(temperatureK, WaterSurface.LIQUID);
        if (!(liquid instanceof Beverage drink) || drink.composition().ethanol() == 0) {
            return water;
        }
        double ethanolMol = drink.composition().ethanol() / ETHANOL_KG_PER_MOL;
        double waterMol = drink.composition().water() / WATER_KG_PER_MOL;
        double x = ethanolMol / (ethanolMol + waterMol);
        double first = ETHANOL_IN_WATER * x;
        double second = WATER_IN_ETHANOL * (1 - x);
        double ethanolActivity = x * Math.exp(ETHANOL_IN_WATER * Math.pow(second / (first + second), 2));
        double waterActivity = (1 - x) * Math.exp(WATER_IN_ETHANOL * Math.pow(first / (first + second), 2));
        return waterActivity * water + ethanolActivity * ethanolPa(temperatureK);
    }

    private static double ethanolPa(double temperatureK) {
        double celsius = temperatureK - ClosedVessel.ZERO_CELSIUS_K;
        return MMHG_PA * Math.pow(10, ANTOINE_A - ANTOINE_B / (ANTOINE_C + celsius));
    }
}
