/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Forced convection on a sphere.
 *
 * <p>Theory manual, equation (3.11).
 */
public final class Sphere {

    /** Whitaker's equation without its viscosity ratio. */
    public static final Correlation WHITAKER = new Correlation(
            "sphere in a stream, Whitaker",
            Sources.WHITAKER,
            Sources.reynolds(3.5, 8e4),
            Sources.prandtl(0.7, 380),
            Uncertainty.normalRelative(0.2),
            NusseltLaw.of((re, pr) -> formula(re, pr, 1)));

    private Sphere() {}

    /**
     * Mean Nusselt number of a sphere in a stream.
     *
     * <p>Nu = 2 + (0.4 Re^(1/2) + 0.06 Re^(2/3)) Pr^0.4 (μ/μ_s)^(1/4)
     *
     * <p>Published for 3.5 &lt; Re &lt; 8e4, 0.7 &lt; Pr &lt; 380. Source: Whitaker 1972.
     *
     * @param re Reynolds number on diameter [-], finite, ≥ 0
     * @param pr Prandtl number of the stream [-], finite, > 0
     * @param viscosityRatio viscosity of the stream over viscosity at the surface [-], finite, > 0
     * @return mean Nusselt number on diameter [-]
     * @throws IllegalArgumentException if an argument is not finite or breaks its sign condition
     */
    public static double whitaker(double re, double pr, double viscosityRatio) {
        Sources.requireDrive("Re", re, pr);
        if (!(viscosityRatio > 0) || Double.isInfinite(viscosityRatio)) {
            throw new IllegalArgumentException("viscosity ratio " + viscosityRatio + ": expected a finite number > 0");
        }
        return formula(re, pr, viscosityRatio);
    }

    private static double formula(double re, double pr, double viscosityRatio) {
        return 2
                + (0.4 * Math.sqrt(re) + 0.06 * Math.pow(re, 2.0 / 3))
                        * Math.pow(pr, 0.4)
                        * Math.pow(viscosityRatio, 0.25);
    }
}
