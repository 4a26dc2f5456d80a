/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/** Free convection on a horizontal plate. */
public final class HorizontalPlate {

    /** Warm face down or cold face up: the layer is stable. */
    public static final Correlation STABLE_MCADAMS = new Correlation(
            "horizontal plate, cold face up, free convection, McAdams",
            Sources.MCADAMS,
            Sources.rayleigh(1e5, 1e11),
            Sources.prandtl(0.5, 100),
            Uncertainty.normalRelative(0.25),
            new PowerLaw(0.27, 0.25));

    /** Warm face up or cold face down, turbulent: the layer overturns. */
    public static final Correlation UNSTABLE_MCADAMS = new Correlation(
            "horizontal plate, warm face up, turbulent free convection, McAdams",
            Sources.MCADAMS,
            Sources.rayleigh(1e7, 1e11),
            Sources.prandtl(0.5, 100),
            Uncertainty.normalRelative(0.25),
            new PowerLaw(0.15, 1.0 / 3));

    private HorizontalPlate() {}

    /**
     * Mean Nusselt number, hot face down or cold face up: Nu = 0.27 Ra^(1/4).
     *
     * <p>Published for 1e5 &lt; Ra &lt; 1e11, length = area over perimeter. Source: McAdams 1954.
     *
     * @param ra Rayleigh number on area over perimeter [-], finite, ≥ 0
     * @return mean Nusselt number [-]
     * @throws IllegalArgumentException if ra is negative or not finite
     */
    public static double stableMcAdams(double ra) {
        Sources.requireDrive("Ra", ra, 1);
        return STABLE_MCADAMS.law().nusselt(ra, 1);
    }

    /**
     * Mean Nusselt number, hot face up or cold face down, turbulent: Nu = 0.15 Ra^(1/3).
     *
     * <p>Published for 1e7 &lt; Ra &lt; 1e11; the heat transfer coefficient does not depend on the length. Source: McAdams 1954.
     *
     * @param ra Rayleigh number on area over perimeter [-], finite, ≥ 0
     * @return mean Nusselt number [-]
     * @throws IllegalArgumentException if ra is negative or not finite
     */
    public static double unstableMcAdams(double ra) {
        Sources.requireDrive("Ra", ra, 1);
        return UNSTABLE_MCADAMS.law().nusselt(ra, 1);
    }
}
