/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Locale;

/**
 * The sentences that instructions, verdicts, advice and re-plans are told in, each with what stands in its places. Their words are
 * in the bundle {@link PlanTexts#BUNDLE}.
 */
public enum Sentence {
    /** A temperature in degrees Celsius: the figure. */
    UNIT_CELSIUS(1),
    /** A difference of temperatures: the figure in kelvins. */
    UNIT_KELVIN(1),
    /** A time: the figure in minutes. */
    UNIT_MINUTES(1),
    /** A mass: the figure in kilograms. */
    UNIT_KILOGRAMS(1),
    /** A volume: the figure in litres. */
    UNIT_LITRES(1),
    /** A part of a whole: the figure in percent. */
    UNIT_PERCENT(1),
    /** A place or a piece of gear inside a sentence: its name. */
    NAME_WHERE(1),
    /** A list that goes on: what is listed so far, the next. */
    LIST_NEXT(2),
    /** A list that ends: what is listed so far, the last. */
    LIST_LAST(2),
    /** Phrases after each other: those so far, the next. */
    LIST_PHRASES(2),

    /** A bath of ice and water is filled: where, mass of ice, volume of water. */
    FILL_ICE(3),
    /** A bath of water is filled: where, volume of water. */
    FILL_WATER(2),
    /** Ice is added: where, mass. */
    ADD_ICE(2),
    /** Bottles are taken out of gear: bottles, from where, where to. */
    TAKE_OUT(3),
    /** Bottles are put somewhere: bottles, where. */
    MOVE(2),
    /** Bottles are decanted: bottles, where. */
    DECANT(2),
    /** Bottles are opened to stand: bottles, where. */
    OPEN(2),
    /** Bottles are opened and poured first: bottles, place. */
    SERVE(2),
    /** The same, kept elsewhere between pours: bottles, place, where they are kept. */
    SERVE_KEPT(3),
    /** Another round is poured: bottles, place. */
    POUR(2),
    /** When something is to be done at the latest: moment. */
    LATEST(1),
    /** What the drink is expected to be when poured: temperature, lower and upper end of the interval of 90 %. */
    EXPECTED(3),
    /** The same where no interval is known: temperature. */
    EXPECTED_ALONE(1),
    /** How far inside its range: difference. */
    MARGIN_SPARE(1),
    /** How far outside its range: difference. */
    MARGIN_SHORT(1),

    /** In range at every pour. */
    VERDICT_VERIFIED(0),
    /** In range at every pour after the first choice was changed. */
    VERDICT_REPAIRED(0),
    /** Leaves its range: moment. */
    VERDICT_LEAVES_RANGE(1),
    /** Not in range when poured: temperature. */
    VERDICT_NOT_REACHED(1),

    /** Too warm: bottle, moment of the pour, temperature, upper end of the range. */
    FAULT_TOO_WARM(4),
    /** Too cold: bottle, moment of the pour, temperature, lower end of the range. */
    FAULT_TOO_COLD(4),
    /** Too many bottles: where, from, to, places needed, places there are. */
    FAULT_OVERFULL(5),
    /** What is shared does not suffice: bottles. */
    FAULT_SHARED(1),

    /** More ice: mass. */
    ADVICE_MORE_ICE(1),
    /** An earlier start: how much. */
    ADVICE_EARLIER_START(1),
    /** One more piece of gear: where, like which. */
    ADVICE_ONE_MORE_GEAR(1),
    /** More gear: how many, like which. */
    ADVICE_MORE_GEAR(2),
    /** A bottle served warmer than wanted: bottle, new and old upper end of its range. */
    ADVICE_SERVE_WARMER(3),
    /** A bottle served colder than wanted: bottle, new and old lower end of its range. */
    ADVICE_SERVE_COLDER(3),
    /** Bottles served later: bottles, how much. */
    ADVICE_SERVE_LATER(2),

    /** A bottle begins at another time: bottle, where, moment now, moment before, why. */
    CHANGE_TIME(5),
    /** A bottle goes another way: bottle, where and when now, where and when before, why. */
    CHANGE_WAY(6),
    /** A bottle stays where it would have been moved: bottle, where it was to go, when, why. */
    CHANGE_STAYS(4),
    /** A bottle is moved that would have stayed: bottle, where, when, why. */
    CHANGE_MOVES(4),
    /** A bottle is kept elsewhere: bottle, where now, where before, why. */
    CHANGE_KEPT(4),
    /** A bottle is served at another time: bottle, moment now, moment before, why. */
    CHANGE_SERVED(4),
    /** A bottle has come: bottle, where, when. */
    CHANGE_ADDED(3),
    /** A bottle is out of the plan: bottle, why. */
    CHANGE_REMOVED(2),

    /** Guests come later: by how much. */
    NEWS_LATE_GUESTS(1),
    /** Guests come earlier: by how much. */
    NEWS_EARLIER_GUESTS(1),
    /** A bottle is another one. */
    NEWS_SWAPPED(0),
    /** A bottle was added: which. */
    NEWS_ADDED(1),
    /** A bottle is not wanted any more: which. */
    NEWS_REMOVED(1),
    /** Gear is lost: which. */
    NEWS_GEAR_LOST(1),
    /** Ice in stock: mass. */
    NEWS_ICE_LEFT(1),
    /** A reading was warmer than predicted: difference, temperature read. */
    NEWS_READ_WARMER(2),
    /** A reading was colder than predicted: difference, temperature read. */
    NEWS_READ_COLDER(2),
    /** A place is not as forecast: which. */
    NEWS_PLACE_CHANGED(1),
    /** Nothing in the news names the bottle, but others that it shares places and gear with: which. */
    NEWS_OTHERS(1),
    /** Nothing in the news names the bottle: it goes better this way from now on. */
    NEWS_PRESENT(0),

    /** A reading within what was expected: bottle, temperature read, temperature predicted. */
    TRUST_KEPT(3),
    /** A reading that leaves the prediction in doubt: bottle, temperature read, temperature predicted. */
    TRUST_DOUBTED(3);

    private final int places;

    Sentence(int places) {
        this.places = places;
    }

    /**
     * How many places the sentence has.
     *
     * @return number of places, numbered from 0 in the bundle
     */
    public int places() {
        return places;
    }

    /**
     * The key of its words.
     *
     * @return the key
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '.');
    }
}
