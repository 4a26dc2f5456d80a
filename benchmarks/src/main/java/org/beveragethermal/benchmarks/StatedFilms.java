/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/**
 * The films of the synthetic bottle of P1, P1b, P4 and P5: a vertical plate after Churchill and Chu (1975) in a liquid and in air of made-up
 * properties, with radiation outside.
 *
 * <p>Once as plain heat for other tools, once as laws with slopes for the project. Temperatures are in °C unless named otherwise; the film
 * temperature is the mean of the two that face each other.
 */
final class StatedFilms {

    /** Zero of the Celsius scale [K]. */
    static final double ZERO_C = 273.15;

    /** Heat that a surface of the glass radiates [W/K^4]. */
    static final double RADIATING = 0.9 * 5.670374419e-8 * 0.062;

    /** Liquid to glass. */
    static final HeatLaw INSIDE = StatedFilms::inside;

    /** Glass to air by convection. */
    static final HeatLaw OUTSIDE = StatedFilms::outside;

    /** Glass to surroundings by radiation. */
    static final HeatLaw RADIATION = StatedFilms::radiation;

    private static final double GRAVITY = 9.81;
    private static final double AIR_PRANDTL = 0.711;
    private static final double AIR_BY_PRANDTL = byPrandtl(AIR_PRANDTL);

    private StatedFilms() {}

    /** Heat from liquid to glass [W]. */
    static double insideWatts(double liquidC, double glassC) {
        double film = 0.5 * (liquidC + glassC);
        double conductivity = 0.50 + 1.1e-3 * film;
        double viscosity = 2.9e-6 - 9.5e-8 * film + 1.3e-9 * film * film;
        double diffusivity = conductivity / 4.0e6;
        double drive = liquidC - glassC;
        double rayleigh =
                GRAVITY * (1.2e-4 + 8e-6 * film) * Math.abs(drive) * (0.20 * 0.20 * 0.20) / (viscosity * diffusivity);
        double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / byPrandtl(viscosity / diffusivity);
        return conductivity * root * root / 0.20 * 0.046 * drive;
    }

    /** Heat from glass to air by convection and radiation [W]. */
    static double outsideWatts(double glassC, double airC) {
        double film = 0.5 * (glassC + airC);
        double viscosity = 1.335e-5 + 9e-8 * film;
        double conductivity = 0.02436 + 7.2e-5 * film;
        double drive = glassC - airC;
        double rayleigh = GRAVITY
                / (ZERO_C + film)
                * Math.abs(drive)
                * (0.24 * 0.24 * 0.24)
                * AIR_PRANDTL
                / (viscosity * viscosity);
        double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / AIR_BY_PRANDTL;
        double glassK = glassC + ZERO_C;
        double airK = airC + ZERO_C;
        double glass2 = glassK * glassK;
        double air2 = airK * airK;
        return conductivity * root * root / 0.24 * 0.062 * drive + RADIATING * (glass2 * glass2 - air2 * air2);
    }

    private static double byPrandtl(double prandtl) {
        return Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
    }

    private static void inside(double liquidK, double glassK, HeatFlow out) {
        double film = 0.5 * (liquidK + glassK) - ZERO_C;
        double conductivity = 0.50 + 1.1e-3 * film;
        double viscosity = 2.9e-6 - 9.5e-8 * film + 1.3e-9 * film * film;
        double diffusivity = conductivity / 4.0e6;
        double expansion = 1.2e-4 + 8e-6 * film;
        double perConductivity = 1.1e-3 / conductivity;
        double perViscosity = (-9.5e-8 + 2.6e-9 * film) / viscosity;
        double prandtl = viscosity / diffusivity;
        double x = Math.pow(0.492 / prandtl, 9.0 / 16);
        film(
                liquidK - glassK,
                0.387 / Math.pow(1 + x, 8.0 / 27),
                (perViscosity - perConductivity) * (8.0 / 27) * (9.0 / 16) * x / (1 + x),
                GRAVITY * expansion * (0.20 * 0.20 * 0.20) / (viscosity * diffusivity),
                8e-6 / expansion - perViscosity - perConductivity,
                conductivity / 0.20 * 0.046,
                perConductivity,
                out);
    }

    private static void outside(double glassK, double airK, HeatFlow out) {
        double filmK = 0.5 * (glassK + airK);
        double film = filmK - ZERO_C;
        double viscosity = 1.335e-5 + 9e-8 * film;
        double conductivity = 0.02436 + 7.2e-5 * film;
        film(
                glassK - airK,
                0.387 / AIR_BY_PRANDTL,
                0,
                GRAVITY / filmK * (0.24 * 0.24 * 0.24) * AIR_PRANDTL / (viscosity * viscosity),
                -1 / filmK - 2 * 9e-8 / viscosity,
                conductivity / 0.24 * 0.062,
                7.2e-5 / conductivity,
                out);
    }

    private static void radiation(double glassK, double airK, HeatFlow out) {
        double glass3 = glassK * glassK * glassK;
        double air3 = airK * airK * airK;
        out.watts = RADIATING * (glass3 * glassK - air3 * airK);
        out.perFromKelvin = 4 * RADIATING * glass3;
        out.perToKelvin = -4 * RADIATING * air3;
    }

    /** Heat and slopes; what depends on the film temperature comes with its relative slope in it. */
    private static void film(
            double drive,
            double factor,
            double factorSlope,
            double rayleigh,
            double rayleighSlope,
            double conductance,
            double conductanceSlope,
            HeatFlow out) {
        double u = factor * Math.pow(rayleigh * Math.abs(drive), 1.0 / 6);
        double root = 0.825 + u;
        double perFilm =
                conductance * drive * root * (root * conductanceSlope + 2 * u * (rayleighSlope / 6 + factorSlope));
        double perDrive = conductance * root * (root + u / 3);
        out.watts = conductance * root * root * drive;
        out.perFromKelvin = 0.5 * perFilm + perDrive;
        out.perToKelvin = 0.5 * perFilm - perDrive;
    }
}
