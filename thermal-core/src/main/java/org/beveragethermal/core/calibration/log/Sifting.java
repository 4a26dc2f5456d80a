/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.Locale;

/** Sifts the readings of a sensor, once their times and their unit are known, and sorts them. */
final class Sifting {
    /** A reading of 85 °C is a power-on value if its neighbours are further away than this [K]. */
    private static final double JUMP_K = 10;

    /** Steps back are few if there is at most one in so many readings. */
    private static final int FEW = 5;

    private final LogFormat format;
    private final ReportNotes notes;
    private final RawSeries series;
    private final TemperatureUnit unit;
    private final long[] times;
    private final double[] values;
    private final int[] lines;

    Sifting(LogFormat format, ReportNotes notes, RawSeries series) {
        this.format = format;
        this.notes = notes;
        this.series = series;
        this.unit = series.unit().orElseThrow();
        this.times = series.times();
        this.values = series.values();
        this.lines = series.lines();
    }

    /** Leaves sorted readings in the series, each time once, still in the unit of the file. */
    void sift() {
        dropImpossible();
        sort();
        dropPowerOn();
        dropDuplicates();
    }

    private void dropImpossible() {
        int kept = 0;
        for (int i = 0; i < series.size(); i++) {
            double kelvin = unit.toKelvin(values[i]);
            if (times[i] == SerialDays.NONE) {
                reject(i, Rejected.Reason.NO_SUCH_TIME, "no such day or time, or none without an offset");
            } else if (MissingMarks.isMissing(values[i], unit)) {
                reject(i, Rejected.Reason.MISSING, "stands for a missing value");
            } else if (!(kelvin >= format.coldestK && kelvin <= format.hottestK)) {
                reject(
                        i,
                        Rejected.Reason.IMPLAUSIBLE,
                        "outside " + shown(format.coldestK) + " to " + shown(format.hottestK) + " " + unit.symbol());
            } else {
                move(i, kept++);
            }
        }
        series.cut(kept);
    }

    private void sort() {
        int size = series.size();
        if (TimeSort.isSorted(times, size)) {
            return;
        }
        int[] order = TimeSort.order(times, size);
        noteOrder();
        long[] oldTimes = times.clone();
        double[] oldValues = values.clone();
        int[] oldLines = lines.clone();
        for (int i = 0; i < size; i++) {
            times[i] = oldTimes[order[i]];
            values[i] = oldValues[order[i]];
            lines[i] = oldLines[order[i]];
        }
    }

    /** Names the rows that go against the others, and a place where the times start again. */
    private void noteOrder() {
        int size = series.size();
        int back = 0;
        int restart = 0;
        for (int i = 1; i < size; i++) {
            if (times[i] < times[i - 1]) {
                back++;
                restart = restart == 0 && times[i] <= times[0] ? i : restart;
            }
        }
        boolean newestFirst = Times.isNewestFirst(times, size);
        for (int i = 1; i < size; i++) {
            if (newestFirst ? times[i] > times[i - 1] : times[i] < times[i - 1]) {
                notes.outOfOrder.add(lines[i]);
            }
        }
        if (newestFirst) {
            notes.note(LogNote.Kind.INFERRED, "the newest reading comes first");
        } else if (restart > 0 && FEW * back <= size) {
            notes.note(
                    LogNote.Kind.SUGGESTED,
                    "the times of sensor \"" + series.sensor() + "\" start again at line " + lines[restart]
                            + ": if these are two logs, split the file");
        }
    }

    private void dropPowerOn() {
        double powerOn = TemperatureUnit.CELSIUS.toKelvin(MissingMarks.POWER_ON_C);
        int size = series.size();
        int kept = 0;
        for (int i = 0; i < size; ) {
            int end = i;
            while (end < size && Math.abs(unit.toKelvin(values[end]) - powerOn) < 1e-6) {
                end++;
            }
            if (end == i) {
                move(i++, kept++);
                continue;
            }
            boolean jump = (kept > 0 || end < size)
                    && (kept == 0 || jumps(values[kept - 1]))
                    && (end == size || jumps(values[end]));
            for (; i < end; i++) {
                if (jump) {
                    reject(i, Rejected.Reason.POWER_ON, "85 °C between readings more than " + (int) JUMP_K + " K away");
                } else {
                    move(i, kept++);
                }
            }
        }
        series.cut(kept);
    }

    private boolean jumps(double neighbour) {
        return Math.abs(unit.toKelvin(neighbour) - TemperatureUnit.CELSIUS.toKelvin(MissingMarks.POWER_ON_C)) > JUMP_K;
    }

    private void dropDuplicates() {
        int size = series.size();
        int kept = 0;
        for (int i = 0; i < size; ) {
            int end = i + 1;
            double sum = values[i];
            while (end < size && times[end] == times[i]) {
                sum += values[end++];
            }
            int chosen = format.duplicates == Duplicates.KEEP_LAST ? end - 1 : i;
            for (int other = i; other < end; other++) {
                if (other != chosen) {
                    boolean same = values[other] == values[chosen];
                    reject(
                            other,
                            Rejected.Reason.DUPLICATE,
                            "same time as line " + lines[chosen]
                                    + (same ? ", same reading" : ", which reads " + values[chosen]));
                }
            }
            double mean = sum / (end - i);
            move(chosen, kept);
            if (format.duplicates == Duplicates.MEAN) {
                values[kept] = mean;
            }
            kept++;
            i = end;
        }
        series.cut(kept);
        if (size > 2 * kept) {
            notes.note(
                    LogNote.Kind.SUGGESTED,
                    "sensor \"" + series.sensor() + "\" has " + (size - kept)
                            + " readings at times of others: if stamps are coarser than the "
                            + "readings, say duplicates(MEAN); if rows belong to several sensors, split them");
        }
    }

    private void move(int from, int to) {
        times[to] = times[from];
        values[to] = values[from];
        lines[to] = lines[from];
    }

    private String shown(double kelvin) {
        return String.format(Locale.ROOT, "%.1f", unit.fromKelvin(kelvin));
    }

    private void reject(int i, Rejected.Reason reason, String detail) {
        String understood = Double.toString(values[i]);
        notes.reject(lines[i], series.sensor(), understood, reason, () -> detail);
    }
}
