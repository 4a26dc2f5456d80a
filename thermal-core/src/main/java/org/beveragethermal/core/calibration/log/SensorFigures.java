/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a log says of a sensor's readings.
 *
 * @param sensor its name
 * @param unit unit of its numbers in the file
 * @param kept readings in the log
 * @param incrementK smallest step that all its readings are multiples of, as written [K]: what the sensor or the writing resolves; empty if
 *     all are equal, or written too finely to tell
 * @param intervalS median time between readings [s]; empty if there are fewer than two
 * @param gapCount how often a time between readings exceeds {@value #GAP} such intervals
 * @param gaps the first {@value #LISTED_GAPS} of them
 */
public record SensorFigures(
        String sensor,
        TemperatureUnit unit,
        int kept,
        OptionalDouble incrementK,
        OptionalDouble intervalS,
        int gapCount,
        List<Gap> gaps) {

    /** Times between readings that make a gap, in median intervals. */
    public static final double GAP = 2.5;
    /** Gaps that are listed. */
    public static final int LISTED_GAPS = 1000;

    /**
     * A time without readings.
     *
     * @param fromS time of the reading before it, since the start of the log [s]
     * @param toS time of the reading after it [s]
     */
    public record Gap(double fromS, double toS) {}

    /**
     * Copies the list.
     *
     * @param sensor its name
     * @param unit unit of its numbers
     * @param kept readings in the log
     * @param incrementK smallest step [K]
     * @param intervalS median time between readings [s]
     * @param gapCount number of gaps
     * @param gaps the first of them
     */
    public SensorFigures {
        gaps = List.copyOf(gaps);
    }
}
