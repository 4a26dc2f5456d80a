/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.List;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.correlation.FallingFilm;
import org.beveragethermal.core.correlation.PenetrativeConvection;
import org.beveragethermal.core.correlation.SkyRadiation;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.materials.provenance.Uncertainty;

/** The scatter of this library's laws, as factors on them. */
public final class LawScatter {

    /** Emissivities of glass, ice and painted surfaces lie within a few hundredths; a judgement. */
    private static final Uncertainty RADIATION = Uncertainty.normalRelative(0.05);

    /** Film on ice blocks: the scatter of the plate and the unknown wetted part; a judgement. */
    private static final Uncertainty ICE_FILM = Uncertainty.normalRelative(0.25);

    /** Conduction where ice alone touches a wall: what a film of melt water of 0.1 mm to 0.9 mm does beside glass; a judgement. */
    private static final Uncertainty ICE_CONTACT = Uncertainty.rectangularRelative(0.6);

    /** Contact of gel packs: what a gap of 0.1 mm to 0.9 mm does beside half a pack; a judgement. */
    private static final Uncertainty PACK_CONTACT = Uncertainty.rectangularRelative(0.6);

    /** A wrap against a wall: what a gap of 0.05 mm to 0.5 mm and a conductivity known to 40 % do; a judgement. */
    private static final Uncertainty WRAP_CONTACT = Uncertainty.rectangularRelative(0.6);

    /** Film on pieces in a drink: the scatter of the plate, pieces that touch or float, a drink that is hardly ever still; a judgement. */
    private static final Uncertainty INSERT_FILM = Uncertainty.normalRelative(0.4);

    /** Contact of a sleeve: neoprene or foam that touches, or stands off by half a millimetre; a judgement. */
    private static final Uncertainty SLEEVE_CONTACT = Uncertainty.rectangularRelative(0.5);

    /** Convection across a gap around a vessel: the law states 10 %, and a vessel hardly ever stands in the middle; a judgement. */
    private static final Uncertainty GAP_FILM = Uncertainty.normalRelative(0.25);

    /** Exchange of a gap that is open at the top: from next to nothing to twice as much; a judgement. */
    private static final Uncertainty OPEN_TOP = Uncertainty.rectangularRelative(0.95);

    /** What a hand gives: blood flow of skin changes several times over; a judgement. */
    private static final Uncertainty HAND = Uncertainty.rectangularRelative(0.7);
    /** Sunlight taken up: colours of glass and drink, outline, direction of a lying vessel, its own shade; a judgement. */
    private static final Uncertainty SUN = Uncertainty.normalRelative(0.15);
    /** Conduction of ground that is called damp, dry or wet: what the tables of damp sand and clay spread over; a judgement. */
    private static final Uncertainty EARTH_CONDUCTION = Uncertainty.rectangularRelative(0.35);

    /** Contact of earth with a wall and loose backfill: grains, clods or mud; a judgement. */
    private static final Uncertainty EARTH_CONTACT = Uncertainty.rectangularRelative(0.6);

    private LawScatter() {}

    /**
     * Every law that carries a multiplier. How much of a wall ice alone touches, how densely it lies, what part of a wall runs with tap
     * water and what is asked of gear are no laws: draw them where the gear is described.
     *
     * @return one input per multiplier, with the scatter of the correlation behind it
     */
    public static List<UncertainInput> all() {
        return List.of(
                UncertainInput.factor(Multipliers.INSIDE_FILM, EnclosedLiquid.COOLING.scatter()),
                UncertainInput.factor(Multipliers.AIR_FILM, VerticalPlate.CHURCHILL_CHU.scatter()),
                UncertainInput.factor(Multipliers.RADIATION, RADIATION),
                UncertainInput.factor(Multipliers.WATER_FILM, VerticalPlate.CHURCHILL_CHU.scatter()),
                UncertainInput.factor(Multipliers.ICE_FILM, ICE_FILM),
                UncertainInput.factor(Multipliers.PACK_EXCHANGE, PenetrativeConvection.SCATTER),
                UncertainInput.factor(Multipliers.PACK_CONTACT, PACK_CONTACT),
                UncertainInput.factor(Multipliers.INSERT_FILM, INSERT_FILM),
                UncertainInput.factor(Multipliers.STREAM_FILM, CrossflowCylinder.CHURCHILL_BERNSTEIN.scatter()),
                UncertainInput.factor(Multipliers.RUNNING_FILM, FallingFilm.HEATED.scatter()),
                UncertainInput.factor(Multipliers.ICE_CONTACT, ICE_CONTACT),
                UncertainInput.factor(Multipliers.WRAP_CONTACT, WRAP_CONTACT),
                UncertainInput.factor(Multipliers.SLEEVE_CONTACT, SLEEVE_CONTACT),
                UncertainInput.factor(Multipliers.GAP_FILM, GAP_FILM),
                UncertainInput.factor(Multipliers.OPEN_TOP, OPEN_TOP),
                UncertainInput.factor(Multipliers.HAND, HAND),
                UncertainInput.factor(Multipliers.SUN, SUN),
                UncertainInput.factor(Multipliers.SKY, Uncertainty.normalRelative(SkyRadiation.RELATIVE_SPREAD)),
                UncertainInput.factor(Multipliers.EARTH_CONDUCTION, EARTH_CONDUCTION),
                UncertainInput.factor(Multipliers.EARTH_CONTACT, EARTH_CONTACT));
    }
}
