/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

/**
 * Thermal radiation between a small grey surface and large surroundings.
 *
 * <p>Theory manual, equation (3.18).
 */
public final class Radiation {

    /** Stefan–Boltzmann constant [W/(m² K⁴)], CODATA 2018 (exact since the 2019 SI). */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private Radiation() {}

    /**
     * Net flux from a grey surface to large surroundings: q = ε σ (T⁴ − T_s⁴).
     *
     * @param emissivity ε [-], 0 to 1
     * @param surfaceK surface temperature [K], ≥ 0
     * @param surroundingsK temperature of the surroundings [K], ≥ 0
     * @return net flux out of the surface [W/m²]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double greySurface(double emissivity, double surfaceK, double surroundingsK) {
        if (!(emissivity >= 0 && emissivity <= 1)) {
            throw new IllegalArgumentException("emissivity " + emissivity + ": expected 0 to 1");
        }
        if (!(surfaceK >= 0 && surroundingsK >= 0) || Double.isInfinite(surfaceK + surroundingsK)) {
            throw new IllegalArgumentException(
                    "temperatures " + surfaceK + " K and " + surroundingsK + " K: expected finite values ≥ 0 K");
        }
        return emissivity * STEFAN_BOLTZMANN * (Math.pow(surfaceK, 4) - Math.pow(surroundingsK, 4));
    }
}
