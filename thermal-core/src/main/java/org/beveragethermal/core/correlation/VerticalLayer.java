/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Free convection across an upright layer of fluid between a warm and a cold wall, such as the air in the gap of a double wall or
 * between a bottle and the cooler around it.
 *
 * <p>Rayleigh and Nusselt numbers are on the thickness L of the layer and the difference between the walls; q = Nu k ΔT/L. All laws
 * here but the published ones of {@link #berkovskyPolevikov} and {@link #macGregorEmery}, which are kept as printed, are at least 1,
 * which is conduction.
 *
 * <p>Theory manual, equation (3.14).
 */
public final class VerticalLayer {

    private VerticalLayer() {}

    /**
     * Mean Nusselt number of a tall layer of air, the largest of three: Nu = 0.0605 Ra^(1/3); Nu = {1 + [0.104 Ra^0.293/(1 +
     * (6310/Ra)^1.36)]³}^(1/3); Nu = 0.242 (Ra L/H)^0.272.
     *
     * <p>Published for 5 &lt; H/L &lt; 110 and 1e2 &lt; Ra &lt; 2e7, air. Scatter: 10 % (stated by the source as below 9 %, from memory).
     * Continuous, with kinks where one law takes over; 1 at Ra = 0. Source: ElSherbiny, Raithby and Hollands 1982, from memory. Checked
     * against EN 673 and the law of MacGregor and Emery, from which it differs by −24 % (Ra 2e4, H/L 10) to +38 % (Ra 1e6, H/L 40).
     *
     * @param ra Rayleigh number on the thickness [-], finite, ≥ 0
     * @param heightOverThickness H/L [-], finite, > 0
     * @return mean Nusselt number on the thickness [-], ≥ 1
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double elSherbiny(double ra, double heightOverThickness) {
        Sources.requireDrive("Ra", ra, 1);
        requireAspect(heightOverThickness);
        if (ra == 0) {
            return 1;
        }
        double turbulent = 0.0605 * Math.cbrt(ra);
        double transition = 0.104 * Math.pow(ra, 0.293) / (1 + Math.pow(6310 / ra, 1.36));
        double middle = Math.cbrt(1 + transition * transition * transition);
        double laminar = 0.242 * Math.pow(ra / heightOverThickness, 0.272);
        return Math.max(middle, Math.max(turbulent, laminar));
    }

    /**
     * The law of ElSherbiny, Raithby and Hollands for a layer of given proportions.
     *
     * @param heightOverThickness H/L [-], finite, > 0
     * @return the correlation
     * @throws IllegalArgumentException if the ratio is not finite and positive
     */
    public static Correlation elSherbiny(double heightOverThickness) {
        requireAspect(heightOverThickness);
        return new Correlation(
                "upright layer of air, free convection, ElSherbiny, Raithby and Hollands",
                Sources.ELSHERBINY,
                Sources.rayleigh(0, 2e7),
                Sources.prandtl(0.6, 0.8),
                Uncertainty.normalRelative(0.10),
                NusseltLaw.of((ra, pr) -> elSherbiny(ra, heightOverThickness)));
    }

    /**
     * Mean Nusselt number of a tall layer: Nu = 0.42 Ra^(1/4) Pr^0.012 (H/L)^(−0.3) up to Ra = 1e7, 0.046 Ra^(1/3) above.
     *
     * <p>Published for 10 &lt; H/L &lt; 40, 1e4 &lt; Ra &lt; 1e7 and 1 &lt; Pr &lt; 2e4, and for 1 &lt; H/L &lt; 40, 1e6 &lt; Ra &lt; 1e9
     * and 1 &lt; Pr &lt; 20; textbooks use it for air as well. The two parts do not meet at Ra = 1e7, and below about Ra = 1e4 the law falls
     * under conduction. Source: MacGregor and Emery 1969. Checked against Cengel and Ghajar, 5th ed., example 9-4.
     *
     * @param ra Rayleigh number on the thickness [-], finite, ≥ 0
     * @param pr Prandtl number [-], finite, > 0
     * @param heightOverThickness H/L [-], finite, > 0
     * @return mean Nusselt number on the thickness [-]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double macGregorEmery(double ra, double pr, double heightOverThickness) {
        Sources.requireDrive("Ra", ra, pr);
        requireAspect(heightOverThickness);
        return ra <= 1e7
                ? 0.42 * Math.pow(ra, 0.25) * Math.pow(pr, 0.012) * Math.pow(heightOverThickness, -0.3)
                : 0.046 * Math.cbrt(ra);
    }

    /**
     * Mean Nusselt number of a squat layer, with x = Pr Ra/(0.2 + Pr): Nu = 0.18 x^0.29 up to H/L = 2, 0.22 x^0.28 (H/L)^(−1/4) above.
     *
     * <p>Published for 1 &lt; H/L &lt; 2 with any Pr and x > 1e3, and for 2 &lt; H/L &lt; 10 with any Pr and Ra &lt; 1e10. The two parts do
     * not meet at H/L = 2. Source: Berkovsky and Polevikov, as in Cengel and Ghajar, 5th ed., eqs. 9-52 and 9-53.
     *
     * @param ra Rayleigh number on the thickness [-], finite, ≥ 0
     * @param pr Prandtl number [-], finite, > 0
     * @param heightOverThickness H/L [-], finite, > 0
     * @return mean Nusselt number on the thickness [-]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double berkovskyPolevikov(double ra, double pr, double heightOverThickness) {
        Sources.requireDrive("Ra", ra, pr);
        requireAspect(heightOverThickness);
        double x = pr * ra / (0.2 + pr);
        return heightOverThickness <= 2
                ? 0.18 * Math.pow(x, 0.29)
                : 0.22 * Math.pow(x, 0.28) * Math.pow(heightOverThickness, -0.25);
    }

    private static void requireAspect(double heightOverThickness) {
        if (!(heightOverThickness > 0) || Double.isInfinite(heightOverThickness)) {
            throw new IllegalArgumentException(
                    "height over thickness " + heightOverThickness + ": expected a finite number > 0");
        }
    }
}
