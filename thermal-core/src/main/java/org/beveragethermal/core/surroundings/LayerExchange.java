/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.correlation.PenetrativeConvection;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/**
 * Heat from a lower to an upper layer of water by penetrative convection; see {@link PenetrativeConvection}.
 *
 * <p>The drive is the density at the densest temperature between the two layers minus that of the lower layer; it vanishes
 * smoothly where the layering is stable. Conduction and stirring are separate laws beside it.
 *
 * <p>Theory manual, equation (3.17).
 *
 * @param areaM2 area of the interface [m²]
 * @param water properties
 * @param densestK temperature of the density maximum [K]
 */
record LayerExchange(double areaM2, LiquidFit water, double densestK) implements HeatLaw {

    @Override
    public void evaluate(double lowerK, double upperK, HeatFlow out) {
        double low = Math.min(lowerK, upperK);
        double high = Math.max(lowerK, upperK);
        double densest = Math.min(Math.max(densestK, low), high);
        double lowerDensity = water.density().at(lowerK);
        double excess = water.density().at(densest) / lowerDensity - 1;
        if (excess <= 0 || densest == lowerK) {
            out.watts = 0;
            out.perFromKelvin = 0;
            out.perToKelvin = 0;
            return;
        }
        boolean atUpper = densest == upperK;
        double drive = lowerK - densest;
        double k = water.conductivity().at(lowerK);
        double inverseDiffusion = water.inverseDiffusion().at(lowerK);
        double flux = PenetrativeConvection.heatFlux(k, excess, inverseDiffusion, drive, ConvectiveFilm.GRAVITY);
        double excessByLower = -(1 + excess) * water.density().slope(lowerK) / lowerDensity;
        double excessByUpper = atUpper ? water.density().slope(densest) / lowerDensity : 0;
        double relativeByLower = water.conductivity().slope(lowerK) / k
                + (excessByLower / excess + water.inverseDiffusion().slope(lowerK) / inverseDiffusion) / 3
                + 1 / drive;
        double relativeByUpper = excessByUpper / excess / 3 - (atUpper ? 1 / drive : 0);
        out.watts = areaM2 * flux;
        out.perFromKelvin = areaM2 * flux * relativeByLower;
        out.perToKelvin = areaM2 * flux * relativeByUpper;
    }
}
