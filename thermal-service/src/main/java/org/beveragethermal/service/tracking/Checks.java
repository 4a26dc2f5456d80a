/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Instant;
import org.beveragethermal.materials.units.OutOfRangeException;

/** Refuses nonsense where it enters. */
final class Checks {

    static final double ZERO_C_IN_K = 273.15;
    static final double COLDEST_K = 150;
    static final double WARMEST_K = 500;
    static final double MOST_SD_K = 50;
    static final double LEAST_PART = 0.01;
    private static final Instant FIRST = Instant.parse("1900-01-01T00:00:00Z");
    private static final Instant LAST = Instant.parse("2200-01-01T00:00:00Z");
    private static final double MICRO = 1e-6;

    private Checks() {}

    static double within(double value, double low, double high, String parameter, String unit) {
        if (!OutOfRangeException.admits(value, low, high)) {
            throw OutOfRangeException.refusal(parameter, value, low, high, unit, "");
        }
        return value;
    }

    static double temperature(double kelvin, String parameter) {
        return within(kelvin, COLDEST_K, WARMEST_K, parameter, "K");
    }

    static String name(String name, String what) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(what + " '" + name + "': expected a name that is not blank");
        }
        return name;
    }

    static Instant time(Instant at, String what) {
        if (at.isBefore(FIRST) || at.isAfter(LAST)) {
            throw new IllegalArgumentException(what + " at " + at + ": expected a time from " + FIRST + " to " + LAST);
        }
        return at;
    }

    static long micros(Instant at) {
        return at.getEpochSecond() * 1_000_000L + at.getNano() / 1000;
    }

    static Instant instant(long micros) {
        return Instant.ofEpochSecond(Math.floorDiv(micros, 1_000_000L), Math.floorMod(micros, 1_000_000L) * 1000L);
    }

    static double seconds(long micros) {
        return micros * MICRO;
    }
}
