/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.beveragethermal.service.caution.SignalWord.CAUTION;
import static org.beveragethermal.service.caution.SignalWord.DANGER;
import static org.beveragethermal.service.caution.SignalWord.NOTICE;
import static org.beveragethermal.service.caution.SignalWord.WARNING;

import java.util.List;
import java.util.Locale;
import org.beveragethermal.materials.provenance.Source;

/** The rules by which cautions are given; the name of each is its code. */
@SuppressWarnings("ImmutableEnumChecker") // sources and lists of signal words are immutable
public enum CautionRule {
    /** Ice begins to form in the drink: a notice in an open vessel, a warning in a closed one. */
    FREEZING_BEGINS(CautionQuantity.DRINK_TEMPERATURE, CautionSources.FREEZING, NOTICE, WARNING),
    /** Ice and drink have taken all the room in the closed vessel. */
    BURSTS_BY_ICE(CautionQuantity.DRINK_TEMPERATURE, CautionSources.ROOM, DANGER),
    /** The warmed drink has taken all the room in the closed vessel. */
    FULL_OF_LIQUID(CautionQuantity.DRINK_TEMPERATURE, CautionSources.ROOM, DANGER),
    /** Much pressure under the closure of a carbonated drink, by warmth. */
    PRESSURE_IN_WARMTH(CautionQuantity.GAUGE_PRESSURE, CautionSources.PRESSURE, WARNING),
    /** Opening what is under pressure: a caution when cold and at rest, a warning when warm or shaken. */
    OPENING_UNDER_PRESSURE(CautionQuantity.DRINK_TEMPERATURE, CautionSources.OPENING, CAUTION, WARNING),
    /** A sudden difference of temperature at a wall of glass. */
    THERMAL_SHOCK(CautionQuantity.WALL_DIFFERENCE, CautionSources.SHOCK, WARNING, DANGER),
    /** Glass that may break, or has, where people reach. */
    BROKEN_GLASS(CautionQuantity.NONE, CautionSources.PRACTICE, CAUTION),
    /** The drink scalds skin: a caution where minutes do it, a warning where seconds do. */
    SCALD(CautionQuantity.DRINK_TEMPERATURE, CautionSources.SCALD, CAUTION, WARNING),
    /** Too hot to drink: a warning until it has cooled, a danger when it is drunk before. */
    VERY_HOT_DRINK(CautionQuantity.DRINK_TEMPERATURE, CautionSources.VERY_HOT, WARNING, DANGER),
    /** Salted ice freezes skin. */
    SALTED_ICE_ON_SKIN(CautionQuantity.CONTACT_TIME, CautionSources.SALTED_ICE, WARNING),
    /** How a drink that spoils is to be held. */
    HELD_COLD_OR_HOT(CautionQuantity.DRINK_TEMPERATURE, CautionSources.FOOD_CODE, NOTICE),
    /** A drink that spoils is neither cold nor hot enough. */
    OUT_OF_HOLDING(CautionQuantity.DRINK_TEMPERATURE, CautionSources.FOOD_CODE, CAUTION),
    /** A drink that spoils has been out too long, or may have been while nobody read its temperature. */
    HOLDING_TIME_OVER(CautionQuantity.TIME_OUT_OF_CONTROL, CautionSources.FOOD_CODE, WARNING, DANGER),
    /** A drink that spoils, where the law states no figure. */
    HOLDING_WITHOUT_FIGURE(CautionQuantity.NONE, CautionSources.EUROPEAN_UNION, NOTICE),
    /** Ice that is drunk is food. */
    ICE_IN_DRINK(CautionQuantity.NONE, CautionSources.ICE_AS_FOOD, NOTICE),
    /** Ice that has cooled bottles is no food any more. */
    COOLING_ICE_IN_DRINK(CautionQuantity.NONE, CautionSources.ICE_AS_COOLANT, WARNING),
    /** The mouth of a bottle under melt water: a notice while it is closed, a caution when it is open. */
    MOUTH_UNDER_WATER(CautionQuantity.NONE, CautionSources.STORED_IN_ICE, NOTICE, CAUTION),
    /** Never turned over: wine with sediment (a notice), an opened bottle (a caution). */
    NEVER_TURNED_OVER(CautionQuantity.NONE, CautionSources.PRACTICE, NOTICE, CAUTION),
    /** A decanter stoppered while it is hot. */
    STOPPERED_HOT(CautionQuantity.DRINK_TEMPERATURE, CautionSources.PRACTICE, WARNING),
    /** Alcohol is served responsibly. */
    ALCOHOL(CautionQuantity.STRENGTH, CautionSources.ALCOHOL, NOTICE);

    private final CautionQuantity quantity;
    private final Source source;
    private final List<SignalWord> signals;

    CautionRule(CautionQuantity quantity, Source source, SignalWord... signals) {
        this.quantity = quantity;
        this.source = source;
        this.signals = List.of(signals);
    }

    /**
     * The code, which does not change with language or release.
     *
     * @return lower-case letters and hyphens, such as {@code bursts-by-ice}
     */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What its limit is a limit of.
     *
     * @return the quantity
     */
    public CautionQuantity quantity() {
        return quantity;
    }

    /**
     * The signal words that it can have.
     *
     * @return one or more, from the mildest to the gravest
     */
    public List<SignalWord> signals() {
        return signals;
    }

    /**
     * Where its limit comes from, unless a jurisdiction or a kind of glass has a source of its own, which the caution names.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }
}
