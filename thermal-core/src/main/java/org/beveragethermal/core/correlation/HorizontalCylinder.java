/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Free convection on the outside of a long isothermal cylinder whose axis is level.
 *
 * <p>Theory manual, equation (3.7).
 */
public final class HorizontalCylinder {

    /** Churchill and Chu's equation for all Rayleigh numbers; scatter a judgement, as for their vertical plate. */
    public static final Correlation CHURCHILL_CHU = new Correlation(
            "horizontal cylinder, free convection, Churchill-Chu (all Ra)",
            Sources.CHURCHILL_CHU_CYLINDER,
            Sources.rayleigh(1e-5, 1e12),
            Sources.prandtl(1e-3, 1e6),
            Uncertainty.normalRelative(0.15),
            new AllRange());

    private HorizontalCylinder() {}

    /**
     * Mean Nusselt number, free convection on an isothermal horizontal cylinder, all Rayleigh numbers.
     *
     * <p>Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}²
     *
     * <p>Published for 1e-5 &lt; Ra &lt; 1e12, all Pr. Limits: Ra = 0 gives 0.36; continuous, but the slope in Ra is unbounded
     * there; extrapolates outside its range; the ends of a short cylinder are not in it. Source: Churchill and Chu 1975.
     * Checked against: the worked example named in HorizontalCylinderTest.
     *
     * @param ra Rayleigh number on diameter [-], finite, ≥ 0
     * @param pr Prandtl number at film temperature [-], finite, > 0
     * @return mean Nusselt number on diameter [-]
     * @throws IllegalArgumentException if ra or pr is not finite or breaks its sign condition
     */
    public static double churchillChu(double ra, double pr) {
        Sources.requireDrive("Ra", ra, pr);
        return AllRange.root(ra, pr) * AllRange.root(ra, pr);
    }

    /** The formula with its slopes. */
    private static final class AllRange implements NusseltLaw {

        private static double psi(double pr) {
            return Math.pow(1 + Math.pow(0.559 / pr, 9.0 / 16), -8.0 / 27);
        }

        private static double root(double ra, double pr) {
            return 0.60 + 0.387 * Math.pow(ra, 1.0 / 6) * psi(pr);
        }

        @Override
        public double nusselt(double ra, double pr) {
            double root = root(ra, pr);
            return root * root;
        }

        @Override
        public double byDrive(double ra, double pr) {
            return 2 * root(ra, pr) * 0.387 * psi(pr) * Math.pow(ra, -5.0 / 6) / 6;
        }

        @Override
        public double byPrandtl(double ra, double pr) {
            double x = Math.pow(0.559 / pr, 9.0 / 16);
            double psiSlope = psi(pr) / (1 + x) * (8.0 / 27) * (9.0 / 16) * x / pr;
            return 2 * root(ra, pr) * 0.387 * Math.pow(ra, 1.0 / 6) * psiSlope;
        }
    }
}
