/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.air.WaterSurface;

/**
 * Saturation pressure of water vapour, over ice below the triple point, as fits of its logarithm that keep their end values outside
 * −50 °C to 110 °C. Continuous at the triple point, where its slope falls.
 */
final class Saturation {

    private static final double COLDEST_K = 223.15;
    private static final double TRIPLE_POINT_K = 273.16;
    private static final double WARMEST_K = 383.15;
    /** Of the logarithm, at most 12: parts in 10⁸ of the pressure. */
    private static final double ACCURACY = 1e-9;

    private static final SmoothFunction OVER_ICE = ChebyshevFit.clamped(
            t -> Math.log(MoistAir.saturationPressure(t, WaterSurface.ICE)), COLDEST_K, TRIPLE_POINT_K, ACCURACY);
    private static final SmoothFunction OVER_WATER = ChebyshevFit.clamped(
            t -> Math.log(MoistAir.saturationPressure(t, WaterSurface.LIQUID)), TRIPLE_POINT_K, WARMEST_K, ACCURACY);

    private Saturation() {}

    /** Pressure over ice or water [Pa]. */
    static double pressurePa(double temperatureK) {
        return Math.exp(logarithm(temperatureK).at(temperatureK));
    }

    /** Slope of the logarithm of the pressure [1/K]. */
    static double logarithmicSlope(double temperatureK) {
        return logarithm(temperatureK).slope(temperatureK);
    }

    private static SmoothFunction logarithm(double temperatureK) {
        return temperatureK < TRIPLE_POINT_K ? OVER_ICE : OVER_WATER;
    }
}
