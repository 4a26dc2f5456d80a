/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.liquid.Composition;
import org.beveragethermal.materials.liquid.Water;

/**
 * Latent heat and vapour between moist air and a surface that is kept wet: it evaporates above the dew point, and what condenses below it
 * stays. Below 0 °C the surface is ice, which sublimates and takes frost.
 *
 * <p>The law, its Lewis number and its uncertainty are those of {@link CondensingFilm}: ṁ = G/c · M · Le^(−2/3) · ln[(p − a p_s)/(p − p_v)],
 * q = ṁ L, here without the restriction to one direction, and with the activity a of the water at the surface: 1 for water, {@link
 * #idealWaterActivity less} for a drink. What the drink loses besides water, such as the ethanol of a spirit, is left out.
 *
 * <p><b>How to make one.</b> Give it the film through which the surface exchanges heat, made of {@link Fluid#moistAir}: moist air is
 * lighter, and the vapour of a hot drink drives free convection as much as its warmth does. With {@link Fluid#air} the coefficient
 * of a surface at 20 °C in a room is wrong by up to 3 %, and 15 % to 25 % too low for a drink at 60 °C to 80 °C (own estimate, from the
 * virtual temperatures and laws of Ra^(1/4) and Ra^(1/3)). It is a law of heat: use it as a link to the air beside the film itself,
 * and {@link #massFlow} for the water that goes.
 *
 * <pre>{@code
 * Fluid air = Fluid.moistAir(101_325, 0.5, 1);
 * ConvectiveFilm film = ConvectiveFilm.free(areaM2, areaM2 / perimeterM, air, HorizontalPlate.STABLE_MCADAMS)
 *         .whenColder(HorizontalPlate.UNSTABLE_MCADAMS_BOTH);
 * EvaporatingFilm vapour = EvaporatingFilm.of(film, 0.5, 101_325, 1);
 * }</pre>
 *
 * <p>Left out: the heat that vapour carries along while it changes temperature (up to 5 % of the film where much evaporates), the resistance
 * of the liquid's surface, drops that splash. Near boiling, where a p_s passes nine tenths of the pressure (97 °C at sea level), the
 * drive is held back. Immutable and thread-safe.
 *
 * <p>Theory manual, equation (3.19).
 */
public final class EvaporatingFilm implements Film {

    /** Ledger account of the heat that vapour carries to or from a wet surface. */
    public static final String MECHANISM = "evaporation";

    private static final double ZERO_CELSIUS_K = VapourTransfer.ZERO_CELSIUS_K;
    private static final double WARMEST_K = 373.15;
    private static final double WATER_KG_PER_MOL = 0.018015;
    private static final double ETHANOL_KG_PER_MOL = 0.046068;
    private static final double SUCROSE_KG_PER_MOL = 0.34230;
    private static final double HEXOSE_KG_PER_MOL = 0.18016;

    /** Goes on straight below 0 °C, where it is that of vapour over ice as well: vapour does not know what it came from. */
    private static final SmoothFunction VAPOUR_ENTHALPY = vapour();

    private static final SmoothFunction LATENT_HEAT = new SmoothFunction() {
        @Override
        public double at(double surfaceK) {
            return VapourTransfer.latentHeat(surfaceK);
        }

        @Override
        public double slope(double surfaceK) {
            return VapourTransfer.latentHeatSlope(surfaceK);
        }
    };

    private final VapourTransfer transfer;

    private EvaporatingFilm(VapourTransfer transfer) {
        this.transfer = transfer;
    }

    /**
     * What evaporates or condenses through a film of air.
     *
     * @param film the film through which the surface exchanges heat with the air
     * @param relativeHumidity vapour pressure of the air over saturation pressure at its temperature (over ice below 0.01 °C), 0 to 1
     * @param pressurePa pressure [Pa], 50 kPa to 200 kPa
     * @param waterActivity vapour pressure of the wet surface over that of pure water or ice, 0.001 to 1
     * @return the law from air to surface
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
     */
    public static EvaporatingFilm of(
            ConvectiveFilm film, double relativeHumidity, double pressurePa, double waterActivity) {
        return new EvaporatingFilm(new VapourTransfer(film, relativeHumidity, pressurePa, waterActivity));
    }

    /**
     * Activity of the water in a drink as in an ideal mixture: its mole fraction (Raoult's law). For wine at 12 % vol. it is 0.96, for a
     * spirit at 40 % vol. 0.85. Water beside ethanol is more active than that, by about 0.5 % in wine and 3 % in spirits (from memory).
     *
     * @param composition what the drink is made of
     * @return mole fraction of water [-], 0.001 to 1
     */
    public static double idealWaterActivity(Composition composition) {
        double water = composition.water() / WATER_KG_PER_MOL;
        double others = composition.ethanol() / ETHANOL_KG_PER_MOL
                + composition.sucrose() / SUCROSE_KG_PER_MOL
                + composition.invertSugar() / HEXOSE_KG_PER_MOL;
        return Math.max(VapourTransfer.ACTIVITY.low(), water / (water + others));
    }

    /**
     * Specific enthalpy of water vapour at low pressure, counted from liquid water at 0 °C: what a gram of vapour takes along.
     *
     * @return enthalpy [J/kg] against temperature [K]; a fit from 0 °C to 100 °C that goes on straight
     */
    public static SmoothFunction vapourEnthalpy() {
        return VAPOUR_ENTHALPY;
    }

    /**
     * Heat that evaporating takes from a wet surface, and from one of ice sublimating: that by which {@link #evaluate} turns {@link
     * #massFlow} into heat. The heat of evaporation is that of {@link MoistAir#latentHeatOfEvaporation}; within 0.1 K of 0 °C that of
     * fusion comes in.
     *
     * @return latent heat [J/kg] against the temperature of the surface [K]; constant above 100 °C and below −0.1 °C
     */
    public static SmoothFunction latentHeat() {
        return LATENT_HEAT;
    }

    private static SmoothFunction vapour() {
        SmoothFunction liquid = LiquidFit.of(Water.liquid()).specificEnthalpy();
        return ChebyshevFit.straight(
                t -> MoistAir.latentHeatOfEvaporation(t) + liquid.at(t), ZERO_CELSIUS_K, WARMEST_K, 1e-7);
    }

    /** Latent heat that vapour gives to the surface [W], below 0 while it evaporates. */
    @Override
    public void evaluate(double airK, double surfaceK, HeatFlow out) {
        massFlow(airK, surfaceK, out);
        VapourTransfer.intoHeat(surfaceK, out);
    }

    /**
     * Water that comes to the surface.
     *
     * @param airK temperature of the air, which with the humidity makes the vapour pressure [K]
     * @param surfaceK temperature of the surface [K]
     * @param out receives the mass flow [kg/s], below 0 while the surface evaporates, as {@code watts} and its slopes [kg/(s K)]
     */
    public void massFlow(double airK, double surfaceK, HeatFlow out) {
        HeatFlow drive = new HeatFlow();
        transfer.drive(airK, surfaceK, drive);
        transfer.mass(airK, surfaceK, drive, out);
    }

    @Override
    public FilmState describe(double airK, double surfaceK) {
        return transfer.describe(
                this,
                airK,
                surfaceK,
                surfaceK < ZERO_CELSIUS_K ? "ice, analogy of heat and mass" : "wet surface, analogy of heat and mass");
    }
}
