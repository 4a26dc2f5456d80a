/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.Optional;

/**
 * What a re-plan changes for a bottle.
 *
 * @param kind what kind of change
 * @param bottleId the bottle
 * @param whereBefore id of the place or gear it was to go into or be kept in; empty if it was to stay, or for kinds without a place
 * @param atBefore when it was to be done or served; empty if it was not to be done
 * @param where id of the place or gear it goes into or is kept in now; empty if it stays, or for kinds without a place
 * @param at when it is done or served now; empty if it is not done
 * @param because why, a phrase of news
 */
public record Change(
        Kind kind,
        String bottleId,
        Optional<String> whereBefore,
        Optional<Instant> atBefore,
        Optional<String> where,
        Optional<Instant> at,
        Phrase because) {

    /** Kinds of change. */
    public enum Kind {
        /** It is served at another time. */
        SERVED,
        /** It goes into the same place or gear at another time. */
        TIME,
        /** It goes another way. */
        WAY,
        /** It stays where it is and was to be moved. */
        STAYS,
        /** It is moved and was to stay where it is. */
        MOVES,
        /** It is kept elsewhere while it is drunk. */
        KEPT,
        /** It was not in the plan before. */
        ADDED,
        /** It is in the plan no longer. */
        REMOVED
    }

    static Change served(String bottleId, Instant before, Instant now, Phrase because) {
        return new Change(
                Kind.SERVED,
                bottleId,
                Optional.empty(),
                Optional.of(before),
                Optional.empty(),
                Optional.of(now),
                because);
    }

    static Change kept(String bottleId, String before, String now, Phrase because) {
        return new Change(
                Kind.KEPT,
                bottleId,
                Optional.of(before),
                Optional.empty(),
                Optional.of(now),
                Optional.empty(),
                because);
    }

    static Change gone(String bottleId, Phrase because) {
        return new Change(
                Kind.REMOVED,
                bottleId,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                because);
    }

    /**
     * What is done instead of what was to be done.
     *
     * @param before the stay that was to begin; empty if it was to stay
     * @param now the stay that begins; empty if it stays
     */
    static Change move(String bottleId, Optional<Stay> before, Optional<Stay> now, Phrase because) {
        Kind kind = before.isEmpty() ? Kind.MOVES : now.isEmpty() ? Kind.STAYS : Kind.WAY;
        boolean sameWay = before.map(Stay::where).equals(now.map(Stay::where));
        return new Change(
                sameWay ? Kind.TIME : kind,
                bottleId,
                before.map(Stay::where),
                before.map(Stay::from),
                now.map(Stay::where),
                now.map(Stay::from),
                because);
    }

    static Change added(BottlePlan bottle, Phrase because) {
        Stay last = bottle.stays().get(bottle.stays().size() - 1);
        Stay shown = bottle.startAt().isPresent()
                ? new Stay(bottle.means(), bottle.startAt().get(), last.to())
                : bottle.stays().get(0);
        return new Change(
                Kind.ADDED,
                bottle.order().id(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(shown.where()),
                Optional.of(shown.from()),
                because);
    }

    /**
     * The change as a phrase.
     *
     * @return the phrase
     */
    public Phrase phrase() {
        Argument bottle = new Argument.Bottle(bottleId);
        Argument why = new Argument.Said(because);
        return switch (kind) {
            case SERVED -> Phrase.of(Sentence.CHANGE_SERVED, bottle, moment(at), moment(atBefore), why);
            case TIME -> Phrase.of(Sentence.CHANGE_TIME, bottle, place(where), moment(at), moment(atBefore), why);
            case WAY ->
                Phrase.of(
                        Sentence.CHANGE_WAY,
                        bottle,
                        place(where),
                        moment(at),
                        place(whereBefore),
                        moment(atBefore),
                        why);
            case STAYS -> Phrase.of(Sentence.CHANGE_STAYS, bottle, place(whereBefore), moment(atBefore), why);
            case MOVES -> Phrase.of(Sentence.CHANGE_MOVES, bottle, place(where), moment(at), why);
            case KEPT -> Phrase.of(Sentence.CHANGE_KEPT, bottle, place(where), place(whereBefore), why);
            case ADDED -> Phrase.of(Sentence.CHANGE_ADDED, bottle, place(where), moment(at));
            case REMOVED -> Phrase.of(Sentence.CHANGE_REMOVED, bottle, why);
        };
    }

    private static Argument place(Optional<String> id) {
        return new Argument.Where(id.orElseThrow());
    }

    private static Argument moment(Optional<Instant> moment) {
        return new Argument.Moment(moment.orElseThrow());
    }
}
