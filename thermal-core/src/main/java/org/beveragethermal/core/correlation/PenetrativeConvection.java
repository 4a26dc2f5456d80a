/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Heat from clear water below to colder water above when the density has a maximum in between.
 *
 * <p>Ice water at 0 °C floats on water at 4 °C; only where the lower water is warmer than the densest temperature between the
 * two does anything sink. The unstable part drives turbulent convection, the rest only conducts.
 *
 * <p>Theory manual, equation (3.17).
 */
public final class PenetrativeConvection {

    /** Where the law comes from. */
    public static final Source SOURCE = Sources.PENETRATIVE;

    /** Scatter of the coefficient as a factor; a judgement. */
    public static final Uncertainty SCATTER = Uncertainty.normalRelative(0.3);

    private PenetrativeConvection() {}

    /**
     * Heat flux from the lower water towards the densest temperature.
     *
     * <p>q = 0.15 k (g Δρ/(ρ ν α))^(1/3) (T_lower − T_densest), Δρ the density at the densest temperature between the two minus
     * that of the lower water.
     *
     * @param conductivity k of the water [W/(m K)], > 0
     * @param relativeDensityExcess Δρ/ρ [-], ≥ 0
     * @param inverseDiffusion 1/(ν α) [s²/m⁴], > 0
     * @param lowerMinusDensestK T_lower − T_densest [K]
     * @param gravity acceleration [m/s²]
     * @return heat flux [W/m²], positive upwards when the lower water is the warmer
     */
    public static double heatFlux(
            double conductivity,
            double relativeDensityExcess,
            double inverseDiffusion,
            double lowerMinusDensestK,
            double gravity) {
        return 0.15 * conductivity * Math.cbrt(gravity * relativeDensityExcess * inverseDiffusion) * lowerMinusDensestK;
    }
}
