/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.HeatFlow;

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
 *
 * <p>Theory manual, equation (3.19).
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

    /** Drive [-] over which condensation sets in: a hundredth of a kelvin below a dew point of 20 °C, a tenth below one of −20 °C. */
    private static final double ONSET = 1e-5;

    private final VapourTransfer transfer;

    private CondensingFilm(VapourTransfer transfer) {
        this.transfer = transfer;
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
        return new CondensingFilm(new VapourTransfer(film, relativeHumidity, pressurePa, 1));
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
        return VapourTransfer.latentHeat(surfaceK);
    }

    @Override
    public void evaluate(double airK, double surfaceK, HeatFlow out) {
        HeatFlow drive = new HeatFlow();
        transfer.drive(airK, surfaceK, drive);
        if (drive.watts <= 0) {
            out.watts = 0;
            out.perFromKelvin = 0;
            out.perToKelvin = 0;
            return;
        }
        double part = SmoothMath.fade(drive.watts / ONSET);
        double onset = part + drive.watts * SmoothMath.fadeSlope(drive.watts / ONSET) / ONSET;
        drive.watts *= part;
        drive.perFromKelvin *= onset;
        drive.perToKelvin *= onset;
        transfer.mass(airK, surfaceK, drive, out);
        VapourTransfer.intoHeat(surfaceK, out);
    }

    @Override
    public FilmState describe(double airK, double surfaceK) {
        return transfer.describe(
                this,
                airK,
                surfaceK,
                surfaceK < VapourTransfer.ZERO_CELSIUS_K
                        ? "frost, analogy of heat and mass"
                        : "dew, analogy of heat and mass");
    }
}
