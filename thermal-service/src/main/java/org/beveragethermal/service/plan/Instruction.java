/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something to be done at a time, as data; words are made of it elsewhere.
 *
 * @param at when
 * @param latest when at the latest, if it may be later
 * @param action what
 * @param bottleIds the bottles it concerns; empty for gear
 * @param from id of the place or gear that bottles are taken from; empty for gear
 * @param where id of the place or gear that the action leads to
 * @param expected what the drink is expected to be: when poured, for all that leads to it
 * @param marginK distance of that from the nearer end of the range, negative outside [K]
 * @param reason why
 */
public record Instruction(
        Instant at,
        Optional<Instant> latest,
        Action action,
        List<String> bottleIds,
        Optional<String> from,
        String where,
        Optional<Expected> expected,
        OptionalDouble marginK,
        Reason reason) {

    /** What is to be done, in the order in which things are done at one moment. */
    public enum Action {
        /** Fill a bath. */
        FILL,
        /** Add ice to a bath. */
        ADD_ICE,
        /** Take bottles out of gear to a place. */
        TAKE_OUT,
        /** Put bottles somewhere. */
        MOVE,
        /** Pour a bottle into its carafe. */
        DECANT,
        /** Open a bottle and let it stand. */
        OPEN,
        /** Open a bottle and pour the first glass. */
        SERVE,
        /** Pour another round. */
        POUR
    }

    /**
     * Copies the ids.
     *
     * @param at when
     * @param latest when at the latest
     * @param action what
     * @param bottleIds the bottles it concerns, not modified
     * @param from id of the place or gear that bottles are taken from
     * @param where id of the place or gear
     * @param expected what the drink is expected to be
     * @param marginK distance from the nearer end of the range [K]
     * @param reason why
     */
    public Instruction {
        bottleIds = List.copyOf(bottleIds);
    }

    /** The same for other bottles. */
    Instruction with(List<String> newBottleIds) {
        return new Instruction(at, latest, action, newBottleIds, from, where, expected, marginK, reason);
    }
}
