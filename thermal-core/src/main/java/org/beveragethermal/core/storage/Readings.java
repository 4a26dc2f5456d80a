/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;

/** Reads logs, and refuses at the door what no logger should have written. */
final class Readings {

    private static final double COLDEST_K = 150;
    private static final double HOTTEST_K = 500;
    private static final double COLDEST_READING_K = 213.15;
    private static final double HOTTEST_READING_K = 353.15;
    /** Longer than any cellar was logged; a clock that was wrong between two readings would make millions of days. */
    private static final Duration LONGEST = Duration.ofDays(200 * 365);

    private static final String MISSING =
            "loggers write −127, 85, ±999 and the like for a missing value: leave such a reading out, the gap is reported";

    private Readings() {}

    /** Readings with their instants. */
    static Lines of(List<Reading> readings) {
        requireTwo(readings.size());
        double[] times = new double[readings.size()];
        double[] temperatures = new double[readings.size()];
        for (int i = 0; i < times.length; i++) {
            Reading reading = Objects.requireNonNull(readings.get(i), "reading " + i);
            Instant before = readings.get(Math.max(0, i - 1)).at();
            if (i > 0 && !reading.at().isAfter(before)) {
                throw new IllegalArgumentException("reading " + i + " at " + reading.at()
                        + ": expected later than reading " + (i - 1) + " at " + before);
            }
            times[i] = Times.seconds(Duration.between(readings.get(0).at(), reading.at()));
            if (i > 0 && !(times[i] > times[i - 1])) {
                throw new IllegalArgumentException("reading " + i + " at " + reading.at()
                        + ": expected it far enough after reading " + (i - 1) + " to be told from it in a log since "
                        + readings.get(0).at());
            }
            requireNotLonger("reading " + i + " at " + reading.at(), times[i]);
            String name = "temperature of reading " + i + " at " + reading.at();
            temperatures[i] = SiValues.temperatureK(reading.temperature(), name);
            require(name, temperatures[i], COLDEST_READING_K, HOTTEST_READING_K, MISSING);
        }
        return new Lines(times, temperatures);
    }

    /** Plain numbers. */
    static Lines of(double[] timesS, double[] temperaturesK) {
        requireTwo(timesS.length);
        if (timesS.length != temperaturesK.length) {
            throw new IllegalArgumentException(timesS.length + " times and " + temperaturesK.length
                    + " temperatures: expected as many temperatures as times");
        }
        double[] times = new double[timesS.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = timesS[i] - timesS[0];
            boolean later = i == 0 || times[i] > times[i - 1];
            if (!Double.isFinite(timesS[i]) || !Double.isFinite(times[i]) || !later) {
                throw new IllegalArgumentException(
                        "time " + i + ", " + timesS[i] + " s: expected a finite number, above the one before");
            }
            requireNotLonger("time " + i + ", " + timesS[i] + " s", times[i]);
            require("temperature " + i, temperaturesK[i], COLDEST_K, HOTTEST_K, "");
        }
        return new Lines(times, temperaturesK.clone());
    }

    private static void requireNotLonger(String name, double afterFirstS) {
        if (!(afterFirstS <= Times.seconds(LONGEST))) {
            throw new IllegalArgumentException(name + ": expected at most " + LONGEST.toDays()
                    + " days after the first; was a clock set in between?");
        }
    }

    private static void requireTwo(int readings) {
        if (readings < 2) {
            throw new IllegalArgumentException(
                    "history of " + readings + (readings == 1 ? " reading" : " readings") + ": expected at least 2");
        }
    }

    private static void require(String name, double temperatureK, double low, double high, String reason) {
        if (!OutOfRangeException.admits(temperatureK, low, high)) {
            throw OutOfRangeException.refusal(name, temperatureK, low, high, "K", reason);
        }
    }
}
