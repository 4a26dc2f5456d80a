/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Heat across a level layer of fluid between two plates. Rayleigh and Nusselt numbers are on its thickness and the difference between
 * the plates; q = Nu k ΔT/L.
 *
 * <p>Theory manual, equation (3.15).
 */
public final class HorizontalLayer {

    /** Air heated from below; 1, which is conduction, below the critical Rayleigh number 1708. */
    public static final Correlation HOLLANDS = new Correlation(
            "level layer of air heated from below, free convection, Hollands",
            Sources.HOLLANDS,
            Sources.rayleigh(0, 1e8),
            Sources.prandtl(0.6, 0.8),
            Uncertainty.normalRelative(0.10),
            NusseltLaw.of((ra, pr) -> hollands(ra)));

    /** Heated from above: the fluid rests and conducts. */
    public static final Correlation STABLE = new Correlation(
            "level layer heated from above, at rest",
            Sources.HOLLANDS,
            Sources.rayleigh(0, 1e12),
            Sources.prandtl(1e-3, 1e5),
            Uncertainty.exact(),
            new PowerLaw(1, 0));

    private HorizontalLayer() {}

    /**
     * Mean Nusselt number of air heated from below: Nu = 1 + 1.44 [1 − 1708/Ra]⁺ + [Ra^(1/3)/18 − 1]⁺, brackets that are negative
     * counting as 0.
     *
     * <p>Published for Ra &lt; 1e8, air. Continuous, with kinks at 1708 and 5832. Source: Hollands and others 1976, as in Cengel and Ghajar,
     * 5th ed., eq. 9-47.
     *
     * @param ra Rayleigh number on the thickness [-], finite, ≥ 0
     * @return mean Nusselt number on the thickness [-], ≥ 1
     * @throws IllegalArgumentException if ra is negative or not finite
     */
    public static double hollands(double ra) {
        Sources.requireDrive("Ra", ra, 1);
        double rolls = ra > 1708 ? 1.44 * (1 - 1708 / ra) : 0;
        return 1 + rolls + Math.max(0, Math.cbrt(ra) / 18 - 1);
    }

    /**
     * Mean Nusselt number of a liquid heated from below: Nu = 0.069 Ra^(1/3) Pr^0.074.
     *
     * <p>Published for 3e5 &lt; Ra &lt; 7e9 and 0.02 &lt; Pr &lt; 8750. Source: Globe and Dropkin 1959, as in Cengel and Ghajar, 5th ed., eq.
     * 9-46.
     *
     * @param ra Rayleigh number on the thickness [-], finite, ≥ 0
     * @param pr Prandtl number [-], finite, > 0
     * @return mean Nusselt number on the thickness [-]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double globeDropkin(double ra, double pr) {
        Sources.requireDrive("Ra", ra, pr);
        return 0.069 * Math.cbrt(ra) * Math.pow(pr, 0.074);
    }
}
