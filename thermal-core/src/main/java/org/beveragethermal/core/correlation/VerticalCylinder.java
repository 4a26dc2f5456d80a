/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Free convection on a slender vertical cylinder, such as a bottle in air.
 *
 * <p>Theory manual, equation (3.6).
 */
public final class VerticalCylinder {

    /**
     * Added to the Grashof number so that the multiplier, which grows without bound as the drive vanishes, stays finite and
     * smooth; it equals the drive of about 3 mK on a bottle and is our deviation from the source.
     */
    static final double GRASHOF_FLOOR = 1e4;

    private VerticalCylinder() {}

    /**
     * Factor by which a slender vertical cylinder exceeds the vertical plate of the same height.
     *
     * <p>1 + B [√32 Gr^(−1/4) L/D]^C, B = 0.0571322 + 0.20305 Pr^(−0.43), C = 0.9165 − 0.0043 √Pr + 0.01333 ln Pr +
     * 0.0004809/Pr
     *
     * <p>Published for 0.01 &lt; Pr &lt; 100, laminar. Source: Popiel, Wojtkowiak and Bober 2007.
     *
     * @param pr Prandtl number [-], finite, > 0
     * @param gr Grashof number on height [-], finite, > 0
     * @param heightOverDiameter L/D [-], finite, > 0
     * @return factor [-], > 1
     * @throws IllegalArgumentException if an argument is not finite and positive
     */
    public static double slenderness(double pr, double gr, double heightOverDiameter) {
        Sources.requireDrive("Gr", gr, pr);
        if (!(gr > 0) || !(heightOverDiameter > 0) || Double.isInfinite(heightOverDiameter)) {
            throw new IllegalArgumentException(
                    "Gr = " + gr + ", L/D = " + heightOverDiameter + ": expected finite numbers > 0");
        }
        return 1 + b(pr) * Math.pow(Math.sqrt(32) * Math.pow(gr, -0.25) * heightOverDiameter, c(pr));
    }

    static double b(double pr) {
        return 0.0571322 + 0.20305 * Math.pow(pr, -0.43);
    }

    static double c(double pr) {
        return 0.9165 - 0.0043 * Math.sqrt(pr) + 0.01333 * Math.log(pr) + 0.0004809 / pr;
    }

    /**
     * Churchill and Chu's plate with the slenderness factor for a cylinder of given proportions.
     *
     * @param heightOverDiameter L/D [-], finite, > 0
     * @return the correlation
     * @throws IllegalArgumentException if the ratio is not finite and positive
     */
    public static Correlation popiel(double heightOverDiameter) {
        slenderness(1, 1, heightOverDiameter);
        return new Correlation(
                "slender vertical cylinder, free convection, Churchill-Chu with Popiel's factor",
                Sources.POPIEL,
                Sources.rayleigh(1e4, 1e9),
                Sources.prandtl(0.01, 100),
                Uncertainty.normalRelative(0.15),
                new Slender(heightOverDiameter));
    }

    /** The plate's law with the slenderness factor. */
    private record Slender(double heightOverDiameter) implements PlateLaw {

        private static final NusseltLaw PLATE = VerticalPlate.CHURCHILL_CHU.law();

        private double factor(double ra, double pr) {
            return slenderness(pr, ra / pr + GRASHOF_FLOOR, heightOverDiameter);
        }

        @Override
        public double nusselt(double ra, double pr) {
            return PLATE.nusselt(ra, pr) * factor(ra, pr);
        }

        @Override
        public double byDrive(double ra, double pr) {
            double factorSlope = -0.25 * c(pr) * (factor(ra, pr) - 1) / (ra / pr + GRASHOF_FLOOR) / pr;
            return PLATE.byDrive(ra, pr) * factor(ra, pr) + PLATE.nusselt(ra, pr) * factorSlope;
        }

        @Override
        public double byPrandtl(double ra, double pr) {
            double gr = ra / pr + GRASHOF_FLOOR;
            double group = Math.sqrt(32) * Math.pow(gr, -0.25) * heightOverDiameter;
            double bSlope = -0.43 * 0.20305 * Math.pow(pr, -1.43);
            double cSlope = -0.00215 / Math.sqrt(pr) + 0.01333 / pr - 0.0004809 / (pr * pr);
            double excess = factor(ra, pr) - 1;
            double factorSlope =
                    excess * (bSlope / b(pr) + cSlope * Math.log(group) + 0.25 * c(pr) * ra / (pr * pr) / gr);
            return PLATE.byPrandtl(ra, pr) * factor(ra, pr) + PLATE.nusselt(ra, pr) * factorSlope;
        }

        @Override
        public double leastRoot() {
            return VerticalPlate.LEAST_ROOT;
        }

        @Override
        public double rootPerSixthRoot(double pr) {
            return VerticalPlate.rootPerSixthRoot(pr);
        }
    }
}
