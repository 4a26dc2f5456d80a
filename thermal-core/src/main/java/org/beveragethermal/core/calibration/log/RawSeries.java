/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.Arrays;
import java.util.Optional;

/** Readings of one sensor as they come in: times as the {@link TimeColumn} codes them, temperatures in the unit of the file. */
final class RawSeries {
    private final String sensor;
    private Optional<TemperatureUnit> unit;
    private long[] times = new long[64];
    private double[] values = new double[64];
    private int[] lines = new int[64];
    private int size;
    private int fewestBeforeLast = Integer.MAX_VALUE;
    private int fewestDecimals = Integer.MAX_VALUE;
    private int mostDecimals;

    RawSeries(String sensor, Optional<TemperatureUnit> unit) {
        this.sensor = sensor;
        this.unit = unit;
    }

    void add(long time, double value, int decimals, long line) {
        if (size == times.length) {
            int more = size + (size >> 1);
            times = Arrays.copyOf(times, more);
            values = Arrays.copyOf(values, more);
            lines = Arrays.copyOf(lines, more);
        }
        times[size] = time;
        values[size] = value;
        lines[size++] = (int) Math.min(line, Integer.MAX_VALUE);
        fewestBeforeLast = fewestDecimals;
        fewestDecimals = Math.min(fewestDecimals, decimals);
        mostDecimals = Math.max(mostDecimals, decimals);
    }

    /** Whether the last reading has fewer decimals than all before, which have equally many. */
    boolean lastIsShort() {
        return size > 2 && fewestBeforeLast == mostDecimals && fewestDecimals < fewestBeforeLast;
    }

    void dropLast() {
        size--;
        fewestDecimals = fewestBeforeLast;
    }

    /** Keeps readings up to a number. */
    void cut(int kept) {
        size = kept;
    }

    String sensor() {
        return sensor;
    }

    Optional<TemperatureUnit> unit() {
        return unit;
    }

    void setUnit(TemperatureUnit found) {
        unit = Optional.of(found);
    }

    int size() {
        return size;
    }

    /** Times, the first {@link #size()} of them; written to by those who make microseconds of them. */
    long[] times() {
        return times;
    }

    double[] values() {
        return values;
    }

    int[] lines() {
        return lines;
    }

    int lastLine() {
        return size == 0 ? -1 : lines[size - 1];
    }

    int decimals() {
        return mostDecimals;
    }
}
