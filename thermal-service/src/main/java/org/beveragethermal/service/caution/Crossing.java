/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import java.util.Optional;

/** When a limit is crossed. Times are counted from the start of the run or the first reading. */
public sealed interface Crossing {

    /**
     * It is crossed at the start, or by what is known now.
     *
     * @param until when it is within the limit again; empty if that is not in the time that was looked at
     */
    record Already(Optional<Duration> until) implements Crossing {}

    /**
     * It is crossed later.
     *
     * @param after when it is first crossed
     * @param until when it is within the limit again; empty if that is not in the time that was looked at
     */
    record After(Duration after, Optional<Duration> until) implements Crossing {}

    /** It is not crossed in the time that was looked at. */
    record Not() implements Crossing {}

    /** There is nothing to cross: it holds as long as the circumstance does. */
    record Always() implements Crossing {}

    /**
     * When it is crossed.
     *
     * @return time, zero if it already is; empty if it is not, or there is nothing to cross
     */
    default Optional<Duration> time() {
        if (this instanceof After later) {
            return Optional.of(later.after());
        }
        return this instanceof Already ? Optional.of(Duration.ZERO) : Optional.empty();
    }

    /**
     * The crossing of a limit that is first crossed at a time.
     *
     * @param after when, not negative
     * @param until when it is within the limit again, if it is
     * @return that it is crossed already for zero, later otherwise
     */
    static Crossing at(Duration after, Optional<Duration> until) {
        return after.isZero() ? new Already(until) : new After(after, until);
    }
}
