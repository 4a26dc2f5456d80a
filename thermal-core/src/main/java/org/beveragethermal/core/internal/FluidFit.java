/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.air.DryAir;

/**
 * What a film needs to know of the fluid it is made of, as smooth functions of the film temperature.
 *
 * @param conductivity k [W/(m K)]
 * @param inverseDiffusion 1/(ν α) [s²/m⁴]
 * @param prandtl Pr [-]
 * @param kinematicViscosity ν [m²/s]
 * @param buoyancy relative density difference between bulk and wall
 */
public record FluidFit(
        SmoothFunction conductivity,
        SmoothFunction inverseDiffusion,
        SmoothFunction prandtl,
        SmoothFunction kinematicViscosity,
        Buoyancy buoyancy) {

    private static final double COLDEST_AIR_K = 223.15;
    private static final double WARMEST_AIR_K = 373.15;
    private static final double ACCURACY = 1e-7;

    /**
     * A liquid with its own density curve.
     *
     * @param liquid fits of the liquid
     * @return what films need
     */
    public static FluidFit of(LiquidFit liquid) {
        return new FluidFit(
                liquid.conductivity(),
                liquid.inverseDiffusion(),
                liquid.prandtl(),
                liquid.kinematicViscosity(),
                Buoyancy.ofDensity(liquid.density()));
    }

    /**
     * Dry air.
     *
     * @param pressurePa pressure [Pa]
     * @return what films need
     */
    public static FluidFit air(double pressurePa) {
        return new FluidFit(
                ChebyshevFit.clamped(DryAir::thermalConductivity, COLDEST_AIR_K, WARMEST_AIR_K, ACCURACY),
                ChebyshevFit.clamped(
                        t -> DryAir.prandtlNumber(t) / Math.pow(DryAir.kinematicViscosity(t, pressurePa), 2),
                        COLDEST_AIR_K,
                        WARMEST_AIR_K,
                        ACCURACY),
                ChebyshevFit.clamped(DryAir::prandtlNumber, COLDEST_AIR_K, WARMEST_AIR_K, ACCURACY),
                ChebyshevFit.clamped(
                        t -> DryAir.kinematicViscosity(t, pressurePa), COLDEST_AIR_K, WARMEST_AIR_K, ACCURACY),
                Buoyancy.idealGas());
    }
}
