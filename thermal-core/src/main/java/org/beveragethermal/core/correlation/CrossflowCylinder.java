/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Forced convection on a cylinder across the flow.
 *
 * <p>Theory manual, equation (3.9).
 */
public final class CrossflowCylinder {

    /** Churchill and Bernstein's equation; the slope in Pr is that of the formula. */
    public static final Correlation CHURCHILL_BERNSTEIN = new Correlation(
            "cylinder in crossflow, Churchill-Bernstein",
            Sources.CHURCHILL_BERNSTEIN,
            Sources.reynolds(0, 1e7),
            Sources.prandtl(0.2, 1e5),
            Uncertainty.normalRelative(0.2),
            NusseltLaw.of(CrossflowCylinder::formula));

    private CrossflowCylinder() {}

    /**
     * Mean Nusselt number of a cylinder in crossflow.
     *
     * <p>Nu = 0.3 + 0.62 Re^(1/2) Pr^(1/3) / [1 + (0.4/Pr)^(2/3)]^(1/4) · [1 + (Re/282000)^(5/8)]^(4/5)
     *
     * <p>Published for Re Pr > 0.2. Source: Churchill and Bernstein 1977.
     *
     * @param re Reynolds number on diameter [-], finite, ≥ 0
     * @param pr Prandtl number at film temperature [-], finite, > 0
     * @return mean Nusselt number on diameter [-]
     * @throws IllegalArgumentException if re or pr is not finite or breaks its sign condition
     */
    public static double churchillBernstein(double re, double pr) {
        Sources.requireDrive("Re", re, pr);
        return formula(re, pr);
    }

    private static double formula(double re, double pr) {
        return 0.3
                + 0.62
                        * Math.sqrt(re)
                        * Math.cbrt(pr)
                        / Math.pow(1 + Math.pow(0.4 / pr, 2.0 / 3), 0.25)
                        * Math.pow(1 + Math.pow(re / 282_000, 5.0 / 8), 0.8);
    }
}
