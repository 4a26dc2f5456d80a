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
 * Latent heat that moist air gives to a surface colder than its dew point: dew above 0 °C, frost below.
 *
 * <p>Vapour crosses the same film as heat (analogy of A. P. Colburn and O. A. Hougen, Ind. Eng. Chem. 26 (1934) 1178-1182):
 *
 * <p>ṁ = G/c · M · Le^(−2/3) · ln[(p − p_s)/(p − p_v)], q = ṁ L
 *
 * <p>with the film's conductance G, the heat capacity c of dry air, the ratio M of the molar masses of water and air, the vapour pressure
 * p_v of the air and p_s of saturation at the surface. The logarithm accounts for the air that moves along with the vapour. The Lewis
 * number is {@value #LEWIS_NUMBER}. Nothing flows at or above the dew point; within a hundredth to a tenth of a kelvin below it the drive
 * sets in smoothly. L is the heat of evaporation at the temperature of the surface and, below 0 °C, the heat of sublimation: evaporation and fusion
 * at 0 °C together, right within 0.2 % down to −40 °C; the turn takes 0.2 K.
 *
 * <p>The water is taken to run off: the resistance of its film or drops (some 0.1 mm of water conduct 6000 W/(m² K), a thousand
 * times the air), the insulation and the roughness of a frost layer, its melting, the evaporation of water that stays, the lightness of
 * moist air in free convection and the heat that vapour carries along while it cools (each up to 5 % of the film) are left out. Uncertainty beside that of the film: 10 % (own judgement).
 *
 * <p>Immutable and thread-safe.
 */
public final class CondensingFilm implements Film {

    /**
     * Lewis number α/D of water vapour in air, 0.85: α of dry air over D = 0.926/p T^2.5/(T + 245) mm²/s (p in kPa; T. K. Sherwood and R. L.
     * Pigford, Absorption and Extraction, 1952, as in ASHRAE Handbook of Fundamentals 2017, ch. 6; from memory). It is 0.87 at −30 °C and 0.85 at
     * 40 °C, which is 2 % of what condenses.
     */
    public static final double LEWIS_NUMBER = 0.85;

    /** Ledger account of the latent heat. */
    public static final String MECHANISM = "condensation";

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double BOILING_K = 373.15;
    /** Molar mass of water over that of dry air, as in ASHRAE Handbook of Fundamentals 2017, ch. 1. */
    private static final double MOLAR_MASS_RATIO = 0.621945;
    /** Dry air's heat capacity is taken here; it changes by 0.2 % over all temperatures of rooms. */
    private static final double ROOM_K = 293.15;
    /** Drive [-] over which condensation sets in: a hundredth of a kelvin below a dew point of 20 °C, a tenth below one of −20 °C. */
    private static final double ONSET = 1e-5;
    /** Half the width of the turn from dew to frost [K]. */
    private static final double TURN_K = 0.1;

    private static final ValidityRange HUMIDITY = new ValidityRange("relative humidity", 0, 1, "1");
    private static final ValidityRange PRESSURE = new ValidityRange("air pressure", 5e4, 2e5, "Pa");
    private static final SmoothFunction EVAPORATION =
            ChebyshevFit.clamped(MoistAir::latentHeatOfEvaporation, ZERO_CELSIUS_K, BOILING_K, 1e-7);

    private final ConvectiveFilm film;
    private final double relativeHumidity;
    private final double pressurePa;
    private final double kilogramsPerJoulePerKelvin;

    private CondensingFilm(ConvectiveFilm film, double relativeHumidity, double pressurePa) {
        this.film = Objects.requireNonNull(film, "film");
        this.relativeHumidity = HUMIDITY.require(relativeHumidity, "moist air");
        this.pressurePa = PRESSURE.require(pressurePa, "moist air");
        this.kilogramsPerJoulePerKelvin =
                MOLAR_MASS_RATIO / (DryAir.specificHeatCapacity(ROOM_K) * Math.pow(LEWIS_NUMBER, 2.0 / 3));
    }

    /**
     * What condenses through a film of air.
     *
     * @param film the film through which the surface exchanges heat with the air
     * @param relativeHumidity vapour pressure of the air over saturation pressure at its temperature (over ice below 0.01 °C), 0 to 1
     * @param pressurePa pressure [Pa], 50 kPa to 200 kPa
     * @return the law from air to surface
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
     */
    public static CondensingFilm of(ConvectiveFilm film, double relativeHumidity, double pressurePa) {
        return new CondensingFilm(film, relativeHumidity, pressurePa);
    }

    /**
     * Latent heat that vapour gives up at a surface.
     *
     * @param surfaceK temperature of the surface [K], finite, > 0
     * @return heat of evaporation, below 0 °C of sublimation [J/kg]
     * @throws IllegalArgumentException if the temperature is not finite or not above absolute zero
     */
    public static double latentHeatJPerKg(double surfaceK) {
        if (!(surfaceK > 0) || Double.isInfinite(surfaceK)) {
            throw new IllegalArgumentException(
                    "surface at " + surfaceK + " K: expected a finite temperature above 0 K");
        }
        return latentHeat(surfaceK);
    }

    private static double latentHeat(double surfaceK) {
        return EVAPORATION.at(surfaceK)
                + SmoothMath.fade(frost(surfaceK)) * Ice.latentHeatOfFusion().value();
    }

    /** Where between dew (0) and frost (1), before rounding. */
    private static double frost(double surfaceK) {
        return 0.5 * (1 + (ZERO_CELSIUS_K - surfaceK) / TURN_K);
    }

    private static double latentHeatSlope(double surfaceK) {
        return EVAPORATION.slope(surfaceK)
                - SmoothMath.fadeSlope(frost(surfaceK))
                        * 0.5
                        / TURN_K
                        * Ice.latentHeatOfFusion().value();
    }

    @Override
    public void evaluate(double airK, double surfaceK, HeatFlow out) {
        double vapour = relativeHumidity * Saturation.pressurePa(airK);
        double atSurface = Saturation.pressurePa(surfaceK);
        if (atSurface >= vapour || vapour >= pressurePa) {
            out.watts = 0;
            out.perFromKelvin = 0;
            out.perToKelvin = 0;
            return;
        }
        double drive = Math.log((pressurePa - atSurface) / (pressurePa - vapour));
        double byAir = vapour * Saturation.logarithmicSlope(airK) / (pressurePa - vapour);
        double bySurface = -atSurface * Saturation.logarithmicSlope(surfaceK) / (pressurePa - atSurface);
        double part = SmoothMath.fade(drive / ONSET);
        double onset = part + drive * SmoothMath.fadeSlope(drive / ONSET) / ONSET;
        double effective = drive * part;
        double latent = latentHeat(surfaceK);
        film.conductance(airK, surfaceK, out);
        double conductance = out.watts;
        out.watts = kilogramsPerJoulePerKelvin * latent * conductance * effective;
        out.perFromKelvin =
                kilogramsPerJoulePerKelvin * latent * (out.perFromKelvin * effective + conductance * onset * byAir);
        out.perToKelvin = kilogramsPerJoulePerKelvin
                * (latent * (out.perToKelvin * effective + conductance * onset * bySurface)
                        + latentHeatSlope(surfaceK) * conductance * effective);
    }

    @Override
    public FilmState describe(double airK, double surfaceK) {
        HeatFlow flow = new HeatFlow();
        film.conductance(airK, surfaceK, flow);
        double conductance = flow.watts;
        evaluate(airK, surfaceK, flow);
        double difference = airK - surfaceK;
        double relative = difference == 0 || conductance == 0 ? 0 : flow.watts / (conductance * difference);
        return new FilmState(
                relative * film.describe(airK, surfaceK).coefficient(),
                0,
                0,
                0,
                surfaceK < ZERO_CELSIUS_K ? "frost, analogy of heat and mass" : "dew, analogy of heat and mass",
                Optional.empty());
    }
}
