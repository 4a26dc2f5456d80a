/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.time.Duration;

/** Durations and seconds. */
final class Times {

    static final double SECONDS_PER_HOUR = 3600;

    private static final double NANOS = 1e9;

    private Times() {}

    static double seconds(Duration time) {
        return time.getSeconds() + time.getNano() / NANOS;
    }

    static Duration duration(double timeS) {
        double whole = Math.floor(timeS);
        return Duration.ofSeconds((long) whole, Math.round((timeS - whole) * NANOS));
    }

    static double hours(Duration time) {
        return seconds(time) / SECONDS_PER_HOUR;
    }

    static void requirePositive(String name, Duration duration) {
        if (duration.isNegative() || duration.isZero()) {
            throw new IllegalArgumentException(name + " " + duration + ": expected a duration above 0");
        }
    }
}
