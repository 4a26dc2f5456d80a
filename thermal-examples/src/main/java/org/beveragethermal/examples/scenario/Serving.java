/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.time.Duration;
import java.time.Instant;

/**
 * Some bottles of one drink, poured at one time at one place.
 *
 * @param drinkId what is served
 * @param bottles how many bottles of it; at least 1
 * @param servedAt when it is poured
 * @param placeId where it is drunk
 * @param finishedAfter how long it takes until the last of it is drunk; positive
 */
public record Serving(String drinkId, int bottles, Instant servedAt, String placeId, Duration finishedAfter) {
    /**
     * A serving from its parts.
     *
     * @param drinkId what is served
     * @param bottles how many bottles of it; at least 1
     * @param servedAt when it is poured
     * @param placeId where it is drunk
     * @param finishedAfter how long it takes until the last of it is drunk; positive
     * @throws IllegalArgumentException if the number of bottles or the duration is not positive
     */
    public Serving {
        if (bottles < 1) {
            throw new IllegalArgumentException("bottles " + bottles + ": expected at least 1");
        }
        if (finishedAfter.isNegative() || finishedAfter.isZero()) {
            throw new IllegalArgumentException("finished after " + finishedAfter + ": expected a positive duration");
        }
    }

    /**
     * When the last of it is drunk.
     *
     * @return the end of the serving
     */
    public Instant finishedAt() {
        return servedAt.plus(finishedAfter);
    }
}
