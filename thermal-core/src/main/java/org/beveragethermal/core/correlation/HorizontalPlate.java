/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Free convection on a horizontal plate.
 *
 * <p>Theory manual, equation (3.8).
 */
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

    /** Warm face up or cold face down, laminar: the layer overturns. */
    public static final Correlation UNSTABLE_MCADAMS_LAMINAR = new Correlation(
            "horizontal plate, warm face up, laminar free convection, McAdams",
            Sources.MCADAMS,
            Sources.rayleigh(1e4, 1e7),
            Sources.prandtl(0.5, 100),
            Uncertainty.normalRelative(0.25),
            new PowerLaw(0.54, 0.25));

    /**
     * Warm face up or cold face down, the larger of the laminar and the turbulent law: continuous where the published pair jumps by 6 %
     * at Ra = 1e7. They cross at Ra = 4.7e6.
     */
    public static final Correlation UNSTABLE_MCADAMS_BOTH = new Correlation(
            "horizontal plate, warm face up, free convection, McAdams, laminar or turbulent",
            Sources.MCADAMS,
            Sources.rayleigh(1e4, 1e11),
            Sources.prandtl(0.5, 100),
            Uncertainty.normalRelative(0.25),
            new Larger(UNSTABLE_MCADAMS_LAMINAR.law(), UNSTABLE_MCADAMS.law()));

    /** The larger of two laws. */
    private record Larger(NusseltLaw one, NusseltLaw other) implements NusseltLaw {

        private NusseltLaw at(double drive, double pr) {
            return one.nusselt(drive, pr) >= other.nusselt(drive, pr) ? one : other;
        }

        @Override
        public double nusselt(double drive, double pr) {
            return at(drive, pr).nusselt(drive, pr);
        }

        @Override
        public double byDrive(double drive, double pr) {
            return at(drive, pr).byDrive(drive, pr);
        }

        @Override
        public double byPrandtl(double drive, double pr) {
            return at(drive, pr).byPrandtl(drive, pr);
        }
    }

    private HorizontalPlate() {}

    /**
     * Mean Nusselt number, hot face up or cold face down, laminar: Nu = 0.54 Ra^(1/4).
     *
     * <p>Published for 1e4 &lt; Ra &lt; 1e7, length = area over perimeter. Source: McAdams 1954.
     *
     * @param ra Rayleigh number on area over perimeter [-], finite, ≥ 0
     * @return mean Nusselt number [-]
     * @throws IllegalArgumentException if ra is negative or not finite
     */
    public static double unstableLaminarMcAdams(double ra) {
        Sources.requireDrive("Ra", ra, 1);
        return UNSTABLE_MCADAMS_LAMINAR.law().nusselt(ra, 1);
    }

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
