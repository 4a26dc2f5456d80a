/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;

/** Durations and seconds, to the millisecond. */
final class Times {

    private static final double MILLIS = 1000;

    private Times() {}

    static double seconds(Duration time) {
        return time.toMillis() / MILLIS;
    }

    static Duration duration(double timeS) {
        return Duration.ofMillis(Math.round(timeS * MILLIS));
    }
}
