/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Free convection on an isothermal vertical plate, or on a vertical cylinder thick enough to be one.
 *
 * <p>Theory manual, equation (3.5).
 */
public final class VerticalPlate {

    /** Churchill and Chu's equation for all Rayleigh numbers; scatter a judgement from the data shown in the paper. */
    public static final Correlation CHURCHILL_CHU = new Correlation(
            "vertical plate, free convection, Churchill-Chu (all Ra)",
            Sources.CHURCHILL_CHU,
            Sources.rayleigh(0.1, 1e12),
            Sources.prandtl(1e-3, 1e6),
            Uncertainty.normalRelative(0.15),
            new AllRange());

    static final double LEAST_ROOT = 0.825;

    private VerticalPlate() {}

    /**
     * Mean Nusselt number, free convection on an isothermal vertical plate, all Rayleigh numbers.
     *
     * <p>Nu = {0.825 + 0.387 Ra^(1/6) / [1 + (0.492/Pr)^(9/16)]^(8/27)}²
     *
     * <p>Published for 0.1 &lt; Ra &lt; 1e12, all Pr. Limits: Ra = 0 gives 0.825²; continuous, but the slope in Ra is
     * unbounded there; extrapolates outside its range. Source: Churchill and Chu 1975. Checked against: the worked examples
     * named in CorrelationTest.
     *
     * @param ra Rayleigh number on plate height [-], finite, ≥ 0
     * @param pr Prandtl number at film temperature [-], finite, > 0
     * @return mean Nusselt number on plate height [-]
     * @throws IllegalArgumentException if ra or pr is not finite or breaks its sign condition
     */
    public static double churchillChu(double ra, double pr) {
        Sources.requireDrive("Ra", ra, pr);
        return CHURCHILL_CHU.law().nusselt(ra, pr);
    }

    /**
     * Mean Nusselt number, laminar free convection on an isothermal vertical plate.
     *
     * <p>Nu = 0.68 + 0.670 Ra^(1/4) / [1 + (0.492/Pr)^(9/16)]^(4/9)
     *
     * <p>Published for Ra ≤ 1e9. Source: Churchill and Chu 1975 (constants from memory).
     *
     * @param ra Rayleigh number on plate height [-], finite, ≥ 0
     * @param pr Prandtl number at film temperature [-], finite, > 0
     * @return mean Nusselt number on plate height [-]
     * @throws IllegalArgumentException if ra or pr is not finite or breaks its sign condition
     */
    public static double churchillChuLaminar(double ra, double pr) {
        Sources.requireDrive("Ra", ra, pr);
        return 0.68 + 0.670 * Math.pow(ra, 0.25) / Math.pow(1 + Math.pow(0.492 / pr, 9.0 / 16), 4.0 / 9);
    }

    /** (0.492/Pr)^(9/16), of which 9/16 is 1/2 and 1/16. */
    private static double group(double pr) {
        double half = Math.sqrt(0.492 / pr);
        return half * Math.sqrt(Math.sqrt(Math.sqrt(half)));
    }

    static double rootPerSixthRoot(double pr) {
        return 0.387 * Math.pow(1 + group(pr), -8.0 / 27);
    }

    /** The formula with its slopes. Half of the work of a run is here, so that powers are taken as roots where they are some. */
    private static final class AllRange implements PlateLaw {

        private static double root(double ra, double group) {
            return LEAST_ROOT + 0.387 * Math.cbrt(Math.sqrt(ra)) * Math.pow(1 + group, -8.0 / 27);
        }

        @Override
        public double leastRoot() {
            return LEAST_ROOT;
        }

        @Override
        public double rootPerSixthRoot(double pr) {
            return VerticalPlate.rootPerSixthRoot(pr);
        }

        @Override
        public double heightOverDiameter() {
            return 0;
        }

        @Override
        public double nusselt(double ra, double pr) {
            double root = root(ra, group(pr));
            return root * root;
        }

        @Override
        public double byDrive(double ra, double pr) {
            double root = root(ra, group(pr));
            return 2 * root * (root - LEAST_ROOT) / (6 * ra);
        }

        @Override
        public double byPrandtl(double ra, double pr) {
            double group = group(pr);
            double root = root(ra, group);
            double rootSlope = (root - LEAST_ROOT) / (1 + group) * (8.0 / 27) * (9.0 / 16) * group / pr;
            return 2 * root * rootSlope;
        }
    }
}
