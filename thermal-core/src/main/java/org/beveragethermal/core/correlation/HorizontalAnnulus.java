/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

/**
 * Free convection in the gap between two concentric cylinders that lie, such as a bottle in a sleeve that stands off.
 *
 * <p>Theory manual, equation (3.16).
 */
public final class HorizontalAnnulus {

    private HorizontalAnnulus() {}

    /**
     * What makes of the Rayleigh number on the gap that of the annulus: F = ln(Dₒ/Dᵢ)⁴ / [L³ (Dᵢ^(−3/5) + Dₒ^(−3/5))⁵], L = (Dₒ − Dᵢ)/2.
     *
     * <p>Source: Raithby and Hollands 1975, as in Cengel and Ghajar, 5th ed., eq. 9-58.
     *
     * @param innerDiameterM Dᵢ [m], finite, > 0
     * @param outerDiameterM Dₒ [m], finite, > Dᵢ
     * @return F [-]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double geometricFactor(double innerDiameterM, double outerDiameterM) {
        if (!(innerDiameterM > 0 && outerDiameterM > innerDiameterM) || Double.isInfinite(outerDiameterM)) {
            throw new IllegalArgumentException("diameters " + innerDiameterM + " m and " + outerDiameterM
                    + " m: expected finite numbers, 0 < inner < outer");
        }
        double gap = 0.5 * (outerDiameterM - innerDiameterM);
        double sum = Math.pow(innerDiameterM, -0.6) + Math.pow(outerDiameterM, -0.6);
        return Math.pow(Math.log(outerDiameterM / innerDiameterM), 4) / (gap * gap * gap * Math.pow(sum, 5));
    }

    /**
     * Effective conductivity over that of the fluid: 0.386 [Pr/(0.861 + Pr)]^(1/4) (F Ra)^(1/4), at least 1.
     *
     * <p>Heat is that of conduction through the annulus, 2π k ΔT H/ln(Dₒ/Dᵢ), times this. Published for 0.7 ≤ Pr ≤ 6000 and 1e2 ≤ F Ra ≤
     * 1e7; below, conduction. Scatter: some 10 % (from memory). Source: Raithby and Hollands 1975, as in Cengel and Ghajar, 5th ed., eq.
     * 9-57.
     *
     * @param ra Rayleigh number on the gap and the difference between the cylinders [-], finite, ≥ 0
     * @param pr Prandtl number [-], finite, > 0
     * @param innerDiameterM inner diameter [m], finite, > 0
     * @param outerDiameterM outer diameter [m], finite, above the inner one
     * @return effective conductivity over conductivity [-], ≥ 1
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double raithbyHollands(double ra, double pr, double innerDiameterM, double outerDiameterM) {
        Sources.requireDrive("Ra", ra, pr);
        double drive = geometricFactor(innerDiameterM, outerDiameterM) * ra;
        return Math.max(1, 0.386 * Math.pow(pr / (0.861 + pr) * drive, 0.25));
    }
}
