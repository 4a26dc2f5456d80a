/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/**
 * Heat between a slice and the one above it: conduction, and turbulent mixing where the upper one is heavier.
 *
 * <p>Mixing has the eddy diffusivity of free convection without viscosity, ℓ² √(g (1/ρ) dρ/dz) (Prandtl's mixing length, with
 * the speed that buoyancy gives an eddy over that length): the heat flux depends on the gradient alone and not on how finely
 * the column is cut. The largest eddy that fits the vessel has its radius, which is taken for ℓ; that is ours. It mixes so
 * fast that results hardly depend on it.
 *
 * <p>Theory manual, equation (5.5).
 *
 * @param areaM2 area of the face between them [m²]
 * @param distanceM distance of their middles [m]
 * @param eddyM mixing length [m]
 * @param liquid the liquid
 */
record UnstableMixing(double areaM2, double distanceM, double eddyM, LiquidFit liquid) implements HeatLaw {

    /**
     * Keeps the slope finite where water of two temperatures about 4 °C has one density: a gradient of density of this much per
     * metre, a millikelvin per metre in wine, mixes at 0.7 of the law. A stable gradient does not mix at all.
     */
    private static final double ONSET_PER_M = 1e-7;

    @Override
    public void evaluate(double lowerK, double upperK, HeatFlow out) {
        double middle = 0.5 * (lowerK + upperK);
        double difference = lowerK - upperK;
        double k = liquid.conductivity().at(middle);
        double kByEach = 0.5 * liquid.conductivity().slope(middle);
        double lowerDensity = liquid.density().at(lowerK);
        double excess = liquid.density().at(upperK) / lowerDensity - 1;
        double gradient = Math.max(0, excess) / distanceM;
        double root = Math.sqrt(gradient + ONSET_PER_M);
        double drive = gradient / root;
        double driveSlope = excess > 0 ? (1 - 0.5 * drive / root) / root / distanceM : 0;
        double inverse = liquid.inverseDiffusion().at(middle);
        double viscosity = liquid.kinematicViscosity().at(middle);
        // 1/α = ν · 1/(ν α)
        double eddy = k * viscosity * inverse * eddyM * eddyM * Math.sqrt(ConvectiveFilm.GRAVITY);
        double mixing = eddy * drive;
        double byLower = -eddy * driveSlope * (1 + excess) * liquid.density().slope(lowerK) / lowerDensity;
        double byUpper = eddy * driveSlope * liquid.density().slope(upperK) / lowerDensity;
        double common = kByEach / k
                + 0.5
                        * (liquid.inverseDiffusion().slope(middle) / inverse
                                + liquid.kinematicViscosity().slope(middle) / viscosity);
        double scale = areaM2 / distanceM;
        double total = scale * (k + mixing);
        out.watts = total * difference;
        out.perFromKelvin = total + scale * difference * (kByEach + mixing * common + byLower);
        out.perToKelvin = -total + scale * difference * (kByEach + mixing * common + byUpper);
    }
}
