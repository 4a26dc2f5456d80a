/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.materials.air.DryAir;

/**
 * The gas between a level surface of liquid and the end above it, seen as a flat cylinder: films of free convection on liquid, end and
 * wall, none less than conduction through half the gas or to its axis, and radiation from the liquid.
 *
 * <p>The gas is dry air at 101,325 Pa; that it is carbon dioxide under pressure above a sparkling drink, and that vapour of the drink
 * evaporates and condenses in it, is left out.
 *
 * @param liquidAreaM2 area of the liquid's surface [m²], > 0
 * @param endAreaM2 area of the end above the gas [m²], > 0
 * @param heightM mean height of the gas [m], > 0
 */
record GasSpace(double liquidAreaM2, double endAreaM2, double heightM) {

    /** Emissivity of the surface of a drink, as of water: 0.96 (from memory, Incropera table A.11). */
    static final double LIQUID_EMISSIVITY = 0.96;

    private static final Fluid AIR = Fluid.air(DryAir.STANDARD_PRESSURE_PA);

    /** Radius of a disc of the liquid's area [m]. */
    private double radiusM() {
        return Math.sqrt(liquidAreaM2 / Math.PI);
    }

    /** From the gas to the liquid's surface, which looks up: colder gas rises from it. */
    ConvectiveFilm onLiquid() {
        return disc(liquidAreaM2)
                .whenColder(HorizontalPlate.UNSTABLE_MCADAMS_BOTH)
                .atLeast(halfLayer());
    }

    /** From the gas to the end, which looks down: warmer gas sinks from it. */
    ConvectiveFilm onEnd() {
        return ConvectiveFilm.free(endAreaM2, radiusM() / 2, AIR, HorizontalPlate.UNSTABLE_MCADAMS_BOTH)
                .whenColder(HorizontalPlate.STABLE_MCADAMS)
                .atLeast(halfLayer());
    }

    private ConvectiveFilm disc(double areaM2) {
        return ConvectiveFilm.free(areaM2, radiusM() / 2, AIR, HorizontalPlate.STABLE_MCADAMS);
    }

    /** Nusselt number, on half the radius, of conduction through half the height of the gas. */
    private double halfLayer() {
        return radiusM() / heightM;
    }

    /** From the gas to the dry wall. */
    ConvectiveFilm onWall(double areaM2) {
        return ConvectiveFilm.free(areaM2, heightM, AIR, VerticalPlate.CHURCHILL_CHU)
                .atLeast(EnclosedLiquid.conduction(heightM / radiusM()));
    }

    /**
     * Part of the liquid's radiation that falls on the end: coaxial discs, F = ½ (S − √(S² − 4 (r₂/r₁)²)), S = 1 + (1 + (r₂/h)²)/(r₁/h)².
     * Source: Incropera, table 13.2, coaxial parallel disks (from memory).
     */
    double viewOfEnd() {
        double one = Math.pow(radiusM() / heightM, 2);
        double other = endAreaM2 / Math.PI / (heightM * heightM);
        double s = 1 + (1 + other) / one;
        return 0.5 * (s - Math.sqrt(s * s - 4 * other / one));
    }

    /** Emissivity that radiation between liquid and another surface has, one reflection counted: the product of both. */
    static double emissivity(double ofSurface) {
        return LIQUID_EMISSIVITY * ofSurface;
    }

    /** Heat capacity of the gas [J/K]. */
    static double heatCapacityJPerK(double volumeM3, double temperatureK) {
        return volumeM3
                * DryAir.density(temperatureK, DryAir.STANDARD_PRESSURE_PA)
                * DryAir.specificHeatCapacity(temperatureK);
    }
}
