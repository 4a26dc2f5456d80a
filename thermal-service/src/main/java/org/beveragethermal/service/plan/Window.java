/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * A stretch of time in which gear is there to be used. Its moments are cut to milliseconds.
 *
 * @param from when it begins
 * @param to when it ends, after its beginning
 */
public record Window(Instant from, Instant to) {

    /**
     * Cuts the moments to milliseconds and checks their order.
     *
     * @param from when it begins
     * @param to when it ends, after its beginning
     * @throws IllegalArgumentException if it does not end after it begins
     */
    public Window {
        from = from.truncatedTo(ChronoUnit.MILLIS);
        to = to.truncatedTo(ChronoUnit.MILLIS);
        if (!to.isAfter(from)) {
            throw new IllegalArgumentException(
                    "window from " + from + " to " + to + ": expected an end after its beginning");
        }
    }

    /**
     * Whether a stretch of time lies in it.
     *
     * @param begin when the stretch begins
     * @param end when it ends
     * @return true if it begins and ends in the window; ends belong to it
     */
    public boolean holds(Instant begin, Instant end) {
        return !begin.isBefore(from) && !end.isAfter(to);
    }
}
