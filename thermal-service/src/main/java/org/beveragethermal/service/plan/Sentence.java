/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Locale;

/**
 * The sentences that plans, advice and re-plans are told in; each has its words under its {@link #key} in the bundle {@link
 * PlanTexts#BUNDLE}, where a comment says what stands in its places.
 */
public enum Sentence {
    /** A temperature in degrees Celsius. */
    UNIT_CELSIUS(1),
    /** A difference of temperatures in kelvins. */
    UNIT_KELVIN(1),
    /** A time in minutes. */
    UNIT_MINUTES(1),
    /** A mass in kilograms. */
    UNIT_KILOGRAMS(1),
    /** A volume in litres. */
    UNIT_LITRES(1),
    /** A place or a piece of gear inside a sentence. */
    NAME_WHERE(1),
    /** Two members of a list that goes on. */
    LIST_NEXT(2),
    /** What is listed so far and the last member. */
    LIST_LAST(2),
    /** Two phrases after each other. */
    LIST_PHRASES(2),

    /** Several more ice. */
    ADVICE_MORE_ICE(1),
    /** An earlier start. */
    ADVICE_EARLIER_START(1),
    /** More gear like some that is there. */
    ADVICE_MORE_GEAR(2),
    /** A bottle that is served warmer than wanted. */
    ADVICE_SERVE_WARMER(3),
    /** A bottle that is served colder than wanted. */
    ADVICE_SERVE_COLDER(3),
    /** Bottles that are served later. */
    ADVICE_SERVE_LATER(2);

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
