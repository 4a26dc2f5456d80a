/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import org.beveragethermal.core.internal.ConvectiveFilm;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/**
 * Heat between a slice and the one above it: conduction, and turbulent mixing where the upper one is heavier.
 *
 * <p>Mixing follows the law of a horizontal layer heated from below, q = 0.15 k (g (Δρ/ρ)/(ν α))^(1/3) ΔT (McAdams), multiplied by
 * the number of slices in the column, because plumes cross the column and not one slice; that factor is ours, and results do
 * not depend on it as long as it mixes fast.
 *
 * @param areaM2 area of the face between them [m²]
 * @param distanceM distance of their middles [m]
 * @param columnM height of the column [m]
 * @param liquid the liquid
 */
record UnstableMixing(double areaM2, double distanceM, double columnM, LiquidFit liquid) implements HeatLaw {

    private static final double COEFFICIENT = 0.15;
    private static final double CORNER = 1e-9;

    @Override
    public void evaluate(double lowerK, double upperK, HeatFlow out) {
        double middle = 0.5 * (lowerK + upperK);
        double difference = lowerK - upperK;
        double k = liquid.conductivity().at(middle);
        double kByEach = 0.5 * liquid.conductivity().slope(middle);
        double lowerDensity = liquid.density().at(lowerK);
        double excess = liquid.density().at(upperK) / lowerDensity - 1;
        double root = Math.sqrt(excess * excess + CORNER * CORNER);
        double positive = 0.5 * (excess + root);
        double positiveSlope = 0.5 * (1 + excess / root);
        double group = ConvectiveFilm.GRAVITY * liquid.inverseDiffusion().at(middle);
        double groupByEach =
                0.5 * ConvectiveFilm.GRAVITY * liquid.inverseDiffusion().slope(middle);
        double mixing = COEFFICIENT * columnM / distanceM * k * Math.cbrt(group * positive);
        double relativeByPositive = positiveSlope / (3 * positive);
        double byLower = relativeByPositive * (-(1 + excess) * liquid.density().slope(lowerK) / lowerDensity);
        double byUpper = relativeByPositive * liquid.density().slope(upperK) / lowerDensity;
        double common = kByEach / k + groupByEach / (3 * group);
        double conduction = k / distanceM;
        double total = areaM2 * (conduction + mixing);
        out.watts = total * difference;
        out.perFromKelvin = total + areaM2 * difference * (kByEach / distanceM + mixing * (common + byLower));
        out.perToKelvin = -total + areaM2 * difference * (kByEach / distanceM + mixing * (common + byUpper));
    }
}
