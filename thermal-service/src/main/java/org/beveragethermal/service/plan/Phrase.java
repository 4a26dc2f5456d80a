/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Something that is said, as data: which sentence, and what stands in it. {@link PlanTexts} puts it into the words of a
 * language.
 *
 * @param sentence which sentence
 * @param parts what stands in it, in the order of the sentence's places
 */
public record Phrase(Sentence sentence, List<Part> parts) {

    /**
     * Copies the parts.
     *
     * @param sentence which sentence
     * @param parts what stands in it, as many as the sentence has places; not modified
     * @throws IllegalArgumentException if there are more or fewer
     */
    public Phrase {
        parts = List.copyOf(parts);
        if (parts.size() != sentence.places()) {
            throw new IllegalArgumentException(
                    parts.size() + " parts in " + sentence + ": expected " + sentence.places());
        }
    }

    /**
     * A phrase.
     *
     * @param sentence which sentence
     * @param parts what stands in it
     * @return the phrase
     * @throws IllegalArgumentException if there are more or fewer parts than the sentence has places
     */
    public static Phrase of(Sentence sentence, Part... parts) {
        return new Phrase(sentence, List.of(parts));
    }

    /** What can stand in a sentence. */
    public sealed interface Part {}

    /**
     * A temperature, shown in °C.
     *
     * @param temperatureK the temperature [K]
     */
    public record Temperature(double temperatureK) implements Part {}

    /**
     * A difference of temperatures.
     *
     * @param differenceK the difference [K]
     */
    public record Difference(double differenceK) implements Part {}

    /**
     * A moment, shown as the time of day.
     *
     * @param at the moment
     */
    public record Moment(Instant at) implements Part {}

    /**
     * A stretch of time, shown in whole minutes.
     *
     * @param length how long
     */
    public record Span(Duration length) implements Part {}

    /**
     * A mass.
     *
     * @param massKg the mass [kg]
     */
    public record Mass(double massKg) implements Part {}

    /**
     * A volume.
     *
     * @param volumeM3 the volume [m³]
     */
    public record Volume(double volumeM3) implements Part {}

    /**
     * A number of things.
     *
     * @param number how many
     */
    public record Count(long number) implements Part {}

    /**
     * Bottles.
     *
     * @param ids their ids, at least one
     */
    public record Bottles(List<String> ids) implements Part {

        /**
         * Copies the ids.
         *
         * @param ids their ids, at least one; not modified
         * @throws IllegalArgumentException if there is none
         */
        public Bottles {
            ids = List.copyOf(ids);
            if (ids.isEmpty()) {
                throw new IllegalArgumentException("bottles: expected at least one id");
            }
        }
    }

    /**
     * A place or a piece of gear.
     *
     * @param id its id
     */
    public record Where(String id) implements Part {}

    /**
     * A phrase in a phrase.
     *
     * @param phrase the inner phrase
     */
    public record Said(Phrase phrase) implements Part {}

    /**
     * Words that come from elsewhere and are shown as they are.
     *
     * @param words the words
     */
    public record Words(String words) implements Part {}
}
