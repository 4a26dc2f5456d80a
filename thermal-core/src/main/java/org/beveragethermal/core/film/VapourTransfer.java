/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import java.util.Objects;
import java.util.Optional;
import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Ice;

/**
 * Vapour that crosses a film of air along with heat, either way: what dew, frost and evaporation have in common. The law stands in {@link
 * CondensingFilm}.
 *
 * <p>Theory manual, equations (3.4), (3.19).
 */
final class VapourTransfer {

    static final double ZERO_CELSIUS_K = 273.15;
    /** Molar mass of water over that of dry air, as in ASHRAE Handbook of Fundamentals 2017, ch. 1. */
    static final double MOLAR_MASS_RATIO = 0.621945;

    static final ValidityRange HUMIDITY = new ValidityRange("relative humidity", 0, 1, "1");
    static final ValidityRange PRESSURE = new ValidityRange("air pressure", 5e4, 2e5, "Pa");
    /** Water that is all but gone still has an activity. */
    static final ValidityRange ACTIVITY = new ValidityRange("water activity", 1e-3, 1, "1");

    private static final double BOILING_K = 373.15;
    /** Dry air's heat capacity is taken here; it changes by 0.2 % over all temperatures of rooms. */
    private static final double ROOM_K = 293.15;
    /** Half the width of the turn from dew to frost [K]. */
    private static final double TURN_K = 0.1;
    /** A vapour pressure beyond this part of the pressure is held back, so that a try near boiling stays finite. */
    private static final double MOST_VAPOUR = 0.9;

    private static final double CORNER = 0.05;

    private static final SmoothFunction EVAPORATION =
            ChebyshevFit.clamped(MoistAir::latentHeatOfEvaporation, ZERO_CELSIUS_K, BOILING_K, 1e-7);

    private final ConvectiveFilm film;
    private final double relativeHumidity;
    private final double pressurePa;
    private final double waterActivity;
    private final double kilogramsPerJoulePerKelvin;

    VapourTransfer(ConvectiveFilm film, double relativeHumidity, double pressurePa, double waterActivity) {
        this.film = Objects.requireNonNull(film, "film");
        this.relativeHumidity = HUMIDITY.require(relativeHumidity, "moist air");
        this.pressurePa = PRESSURE.require(pressurePa, "moist air");
        this.waterActivity = ACTIVITY.require(waterActivity, "wet surface");
        this.kilogramsPerJoulePerKelvin = MOLAR_MASS_RATIO
                / (DryAir.specificHeatCapacity(ROOM_K) * Math.pow(CondensingFilm.LEWIS_NUMBER, 2.0 / 3));
    }

    /** Heat of evaporation, below 0 °C of sublimation [J/kg]. */
    static double latentHeat(double surfaceK) {
        return EVAPORATION.at(surfaceK)
                + SmoothMath.fade(frost(surfaceK)) * Ice.latentHeatOfFusion().value();
    }

    static double latentHeatSlope(double surfaceK) {
        return EVAPORATION.slope(surfaceK)
                - SmoothMath.fadeSlope(frost(surfaceK))
                        * 0.5
                        / TURN_K
                        * Ice.latentHeatOfFusion().value();
    }

    /** Where between dew (0) and frost (1), before rounding. */
    private static double frost(double surfaceK) {
        return 0.5 * (1 + (ZERO_CELSIUS_K - surfaceK) / TURN_K);
    }

    /** What drives vapour to the surface, ln[(p − p_s)/(p − p_v)] [-], below 0 away from it, and its slopes [1/K]. */
    void drive(double airK, double surfaceK, HeatFlow out) {
        double air = relativeHumidity * Saturation.pressurePa(airK);
        double surface = waterActivity * Saturation.pressurePa(surfaceK);
        double vapour = held(air);
        double atSurface = held(surface);
        out.watts = Math.log((pressurePa - atSurface) / (pressurePa - vapour));
        out.perFromKelvin = heldSlope(air) * air * Saturation.logarithmicSlope(airK) / (pressurePa - vapour);
        out.perToKelvin =
                -heldSlope(surface) * surface * Saturation.logarithmicSlope(surfaceK) / (pressurePa - atSurface);
    }

    private double held(double vapourPa) {
        return vapourPa - SmoothMath.rising(vapourPa - MOST_VAPOUR * pressurePa, CORNER * pressurePa);
    }

    private double heldSlope(double vapourPa) {
        return 1 - SmoothMath.risingSlope(vapourPa - MOST_VAPOUR * pressurePa, CORNER * pressurePa);
    }

    /** Vapour that a drive brings to the surface [kg/s] and its slopes [kg/(s K)]; {@code drive} and {@code out} are two holders. */
    void mass(double airK, double surfaceK, HeatFlow drive, HeatFlow out) {
        film.conductance(airK, surfaceK, out);
        double conductance = out.watts;
        double k = kilogramsPerJoulePerKelvin;
        out.watts = k * conductance * drive.watts;
        out.perFromKelvin = k * (out.perFromKelvin * drive.watts + conductance * drive.perFromKelvin);
        out.perToKelvin = k * (out.perToKelvin * drive.watts + conductance * drive.perToKelvin);
    }

    /** Turns vapour into the latent heat that it gives to the surface [W]. */
    static void intoHeat(double surfaceK, HeatFlow massFlow) {
        double latent = latentHeat(surfaceK);
        massFlow.perFromKelvin *= latent;
        massFlow.perToKelvin = massFlow.perToKelvin * latent + massFlow.watts * latentHeatSlope(surfaceK);
        massFlow.watts *= latent;
    }

    /** The latent heat per area and kelvin, beside the film's own coefficient. */
    FilmState describe(Film law, double airK, double surfaceK, String name) {
        HeatFlow flow = new HeatFlow();
        film.conductance(airK, surfaceK, flow);
        double conductance = flow.watts;
        law.evaluate(airK, surfaceK, flow);
        double difference = airK - surfaceK;
        double relative = difference == 0 || conductance == 0 ? 0 : flow.watts / (conductance * difference);
        FilmState through = film.describe(airK, surfaceK);
        return new FilmState(relative * through.coefficient(), 0, 0, 0, name, Optional.empty());
    }
}
