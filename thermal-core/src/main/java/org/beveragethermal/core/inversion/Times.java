/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;

/** Durations and seconds; whole milliseconds, as predictions count. */
final class Times {

    private Times() {}

    static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    static Duration duration(double timeS) {
        return Duration.ofMillis(Math.round(timeS * 1000));
    }

    /** A length of time that is looked at, refused unless positive. */
    static double positiveS(Duration time, String what) {
        if (time.toMillis() <= 0) {
            throw new IllegalArgumentException(what + " " + time + ": expected more than nothing");
        }
        return seconds(time);
    }
}
