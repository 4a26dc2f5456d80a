/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** A part of a reason that words are made of, with its unit; how it is written is for whoever writes the words. */
public sealed interface Argument {

    /**
     * A place or a piece of gear.
     *
     * @param id its id in the request
     */
    record Where(String id) implements Argument {}

    /**
     * A bottle.
     *
     * @param id its id in the request
     */
    record Bottle(String id) implements Argument {}

    /**
     * A temperature.
     *
     * @param kelvins [K]
     */
    record Temperature(double kelvins) implements Argument {}

    /**
     * A difference of temperature.
     *
     * @param kelvins [K]
     */
    record Difference(double kelvins) implements Argument {}

    /**
     * A mass.
     *
     * @param kg [kg]
     */
    record Mass(double kg) implements Argument {}

    /**
     * A volume of water.
     *
     * @param litres [L]
     */
    record Volume(double litres) implements Argument {}

    /**
     * A moment.
     *
     * @param at when
     */
    record Moment(Instant at) implements Argument {}

    /**
     * A length of time.
     *
     * @param time how long
     */
    record Span(Duration time) implements Argument {}

    /**
     * A number.
     *
     * @param number how many
     */
    record Count(long number) implements Argument {}

    /**
     * A part of a whole.
     *
     * @param part 0 to 1
     */
    record Share(double part) implements Argument {}

    /**
     * Several bottles.
     *
     * @param ids their ids in the request, at least one
     */
    record Bottles(List<String> ids) implements Argument {

        /**
         * Copies the ids.
         *
         * @param ids their ids in the request, at least one; not modified
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
     * A phrase inside another.
     *
     * @param phrase the inner phrase
     */
    record Said(Phrase phrase) implements Argument {}
}
