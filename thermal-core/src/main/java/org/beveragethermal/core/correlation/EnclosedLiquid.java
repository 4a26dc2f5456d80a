/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * Free convection inside an upright or a lying vessel full of liquid, between the mean of the liquid and the mean of its wall.
 *
 * <p>A cooling or warming liquid stratifies, and the film at the wall then follows the stratification rather than the wall's
 * own temperature difference. Laws made for an open plate are therefore wrong at most instants. The one-term law here was
 * taken from a computation of the flow (see the source of the constants); no measured confirmation is at hand.
 *
 * <p>Theory manual, equation (3.13).
 */
public final class EnclosedLiquid {

    /** A liquid that gives heat to a colder wall: Nu = 0.80 Ra^(1/4). */
    public static final Correlation COOLING = new Correlation(
            "liquid cooling in an upright vessel, 0.80 Ra^(1/4)",
            Sources.BOTTLE_COMPUTATION,
            Sources.rayleigh(5e6, 1e9),
            Sources.prandtl(7, 30),
            Uncertainty.normalRelative(0.15),
            new PowerLaw(0.80, 0.25));

    /** A liquid that takes heat from a warmer wall: Nu = 0.95 Ra^(1/4). */
    public static final Correlation WARMING = new Correlation(
            "liquid warming in an upright vessel, 0.95 Ra^(1/4)",
            Sources.BOTTLE_COMPUTATION,
            Sources.rayleigh(5e6, 1e9),
            Sources.prandtl(7, 30),
            Uncertainty.normalRelative(0.20),
            new PowerLaw(0.95, 0.25));

    /**
     * A round wall against a plane upright one of its height [-]: in a thin laminar layer driven by the gravity along the wall
     * the mean coefficient goes as (∫ sin^(1/3) ds)^(3/4)/S over the run S of the wall. For a circle, from its top to its bottom
     * or from its axis to its bottom, that is 0.772 times the value of an upright wall as high.
     */
    static final double ROUND_WALL = 0.77219;

    /**
     * A liquid that gives heat to the colder wall of a vessel that lies, on the depth of the liquid: Nu = 0.62 Ra^(1/4), which is
     * the law of the upright vessel times the factor of a round wall, 0.772. Our own assumption, with a wide scatter.
     */
    public static final Correlation LYING_COOLING = new Correlation(
            "liquid cooling in a lying vessel, 0.62 Ra^(1/4)",
            Sources.LYING_BOTTLE,
            Sources.rayleigh(1e5, 1e9),
            Sources.prandtl(7, 30),
            Uncertainty.normalRelative(0.30),
            new PowerLaw(ROUND_WALL * 0.80, 0.25));

    /**
     * A liquid that takes heat from the warmer wall of a vessel that lies, on the depth of the liquid: Nu = 0.73 Ra^(1/4); see
     * {@link #LYING_COOLING}.
     */
    public static final Correlation LYING_WARMING = new Correlation(
            "liquid warming in a lying vessel, 0.73 Ra^(1/4)",
            Sources.LYING_BOTTLE,
            Sources.rayleigh(1e5, 1e9),
            Sources.prandtl(7, 30),
            Uncertainty.normalRelative(0.30),
            new PowerLaw(ROUND_WALL * 0.95, 0.25));

    private EnclosedLiquid() {}

    /**
     * Nusselt number by which a still liquid conducts to its wall in the slowest mode: 2.89 k/R on the height, from the first
     * root 2.4048 of the Bessel function J₀ (h R / k = 2.4048²/2).
     *
     * <p>Source: separation of variables for the infinite cylinder, any textbook of heat conduction.
     *
     * @param heightOverRadius liquid height over inner radius [-], > 0
     * @return Nusselt number on height [-]
     */
    public static double conduction(double heightOverRadius) {
        if (!(heightOverRadius > 0) || Double.isInfinite(heightOverRadius)) {
            throw new IllegalArgumentException(
                    "height over radius " + heightOverRadius + ": expected a finite number > 0");
        }
        double firstRoot = 2.404825557695773;
        return firstRoot * firstRoot / 2 * heightOverRadius;
    }
}
