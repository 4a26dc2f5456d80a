/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;

/**
 * A stretch of time, ends included; both ends are the same where only an instant will do.
 *
 * @param from beginning
 * @param to end, not before the beginning
 */
public record Window(Duration from, Duration to) {

    /**
     * Checks the order.
     *
     * @param from beginning
     * @param to end
     * @throws IllegalArgumentException if the end is before the beginning
     */
    public Window {
        if (to.compareTo(from) < 0) {
            throw new IllegalArgumentException(
                    "window from " + from + " to " + to + ": expected an end that is not before the beginning");
        }
    }

    /** A window from seconds. */
    static Window ofSeconds(double fromS, double toS) {
        return new Window(Times.duration(fromS), Times.duration(toS));
    }

    /**
     * How long it is.
     *
     * @return length, ≥ 0
     */
    public Duration length() {
        return to.minus(from);
    }

    /**
     * Whether a time is inside or at an end.
     *
     * @param time the time
     * @return true if it is
     */
    public boolean contains(Duration time) {
        return time.compareTo(from) >= 0 && time.compareTo(to) <= 0;
    }

    List<Double> endsS() {
        return List.of(Times.seconds(from), Times.seconds(to));
    }
}
