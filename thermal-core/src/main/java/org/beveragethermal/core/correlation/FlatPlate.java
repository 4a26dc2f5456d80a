/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Forced convection on a flat plate along the flow.
 *
 * <p>Theory manual, equation (3.10).
 */
public final class FlatPlate {

    /**
     * Laminar layer from the leading edge, mean over the plate. The scatter is a judgement: a blunt edge and a turbulent stream carry
     * more than the law.
     */
    public static final Correlation LAMINAR = new Correlation(
            "flat plate along the flow, laminar, Pohlhausen",
            Sources.POHLHAUSEN,
            Sources.reynolds(0, 5e5),
            Sources.prandtl(0.6, 50),
            Uncertainty.normalRelative(0.25),
            NusseltLaw.of(FlatPlate::formula));

    private FlatPlate() {}

    /**
     * Mean Nusselt number of a flat plate along a laminar flow.
     *
     * <p>Nu = 0.664 Re^(1/2) Pr^(1/3)
     *
     * <p>Published for Re &lt; 5e5 and Pr ≥ 0.6. Source: Pohlhausen 1921.
     *
     * @param re Reynolds number on the length of the plate [-], finite, ≥ 0
     * @param pr Prandtl number at film temperature [-], finite, > 0
     * @return mean Nusselt number on the length of the plate [-]
     * @throws IllegalArgumentException if re or pr is not finite or breaks its sign condition
     */
    public static double laminar(double re, double pr) {
        Sources.requireDrive("Re", re, pr);
        return formula(re, pr);
    }

    private static double formula(double re, double pr) {
        return 0.664 * Math.sqrt(re) * Math.cbrt(pr);
    }
}
