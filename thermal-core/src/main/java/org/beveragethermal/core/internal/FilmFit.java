/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * The properties of a liquid that films need, as smooth functions of temperature with slopes.
 *
 * <p>They follow the liquid's own formulas to a few parts in 10⁷ and keep their end values outside the liquid's range.
 *
 * @param conductivity k [W/(m K)]
 * @param density ρ [kg/m³]
 * @param inverseDiffusion 1/(ν α) [s²/m⁴]
 * @param prandtl Pr [-]
 * @param kinematicViscosity ν [m²/s]
 */
public record FilmFit(
        SmoothFunction conductivity,
        SmoothFunction density,
        SmoothFunction inverseDiffusion,
        SmoothFunction prandtl,
        SmoothFunction kinematicViscosity) {

    private static final double ACCURACY = 1e-7;
    private static final double DENSITY_ACCURACY = 1e-10;

    /**
     * Fits a liquid.
     *
     * @param liquid the liquid
     * @return its fits
     */
    public static FilmFit of(Liquid liquid) {
        double[] joints = PiecewiseFit.joints(liquid);
        return new FilmFit(
                PiecewiseFit.of(liquid::thermalConductivity, joints, ACCURACY, false),
                PiecewiseFit.of(liquid::density, joints, DENSITY_ACCURACY, false),
                PiecewiseFit.of(
                        t -> 1 / (liquid.kinematicViscosity(t) * liquid.thermalDiffusivity(t)),
                        joints,
                        ACCURACY,
                        false),
                PiecewiseFit.of(liquid::prandtlNumber, joints, ACCURACY, false),
                PiecewiseFit.of(liquid::kinematicViscosity, joints, ACCURACY, false));
    }
}
