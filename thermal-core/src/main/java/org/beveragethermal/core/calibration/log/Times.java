/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;

/**
 * Makes microseconds of coded times: since 1970-01-01T00:00Z where days are known, else since the start of the count.
 *
 * @param form what the codes stand for
 * @param order which number of a date is the day
 * @param zone zone of local times
 * @param startDate day of the first time of day
 * @param minutesFirst whether clock readings are minutes and seconds
 */
record Times(
        TimeForm form,
        Optional<DateOrder> order,
        Optional<ZoneId> zone,
        Optional<LocalDate> startDate,
        boolean minutesFirst) {
    private static final long HALF_DAY = TimeColumn.DAY / 2;
    /** Nothing lies further away than this: twelve thousand years [µs]. */
    private static final double LIMIT = 4e17;
    /** Steps by which the usual one is told. */
    private static final int STEPS = 1001;

    /** Whether times become instants. */
    boolean areInstants() {
        return form.isDated() || (isTimeOfDay() && startDate.isPresent());
    }

    /** Whether the codes are times of a day. */
    boolean isTimeOfDay() {
        return form == TimeForm.TIME_OF_DAY || form == TimeForm.TWELVE_HOUR_TIME;
    }

    /** Whether a zone is needed for times without an offset. */
    static boolean needsZone(TimeForm form, Optional<LocalDate> startDate) {
        return switch (form) {
            case LOCAL_STAMP, SERIAL_1900, SERIAL_1904 -> true;
            case TIME_OF_DAY, TWELVE_HOUR_TIME -> startDate.isPresent();
            default -> false;
        };
    }

    /** Replaces codes by microseconds, or by {@link SerialDays#NONE}. */
    void resolve(RawSeries series, ReportNotes notes) {
        long[] times = series.times();
        int size = series.size();
        BitSet utc = new BitSet();
        for (int i = 0; i < size; i++) {
            long code = times[i];
            times[i] = micros(code);
            if (form == TimeForm.STAMP_WITH_OFFSET || form == TimeForm.LOCAL_STAMP) {
                utc.set(i, TimeColumn.hasOffset(code));
                if (form == TimeForm.STAMP_WITH_OFFSET && !TimeColumn.hasOffset(code)) {
                    times[i] = SerialDays.NONE;
                }
            }
        }
        boolean newestFirst = isNewestFirst(times, size);
        if (isTimeOfDay()) {
            unroll(times, size, newestFirst);
        }
        if (needsZone(form, startDate)) {
            toUtc(series, utc, newestFirst, notes);
        }
    }

    private long micros(long code) {
        return switch (form) {
            case STAMP_WITH_OFFSET, LOCAL_STAMP -> {
                long day = DateOrders.epochDay(code, order.orElse(DateOrder.DAY_FIRST));
                yield day == SerialDays.NONE ? day : day * TimeColumn.DAY + TimeColumn.micros(code);
            }
            case TIME_OF_DAY -> code < TimeColumn.DAY ? code : SerialDays.NONE;
            case TWELVE_HOUR_TIME -> code < HALF_DAY + TimeColumn.DAY / 24 ? code % HALF_DAY : SerialDays.NONE;
            case ELAPSED_HOURS_MINUTES -> code;
            case ELAPSED_MINUTES_SECONDS -> minutesFirst ? code / 60 : code;
            case ELAPSED_MILLISECONDS, UNIX_MILLISECONDS -> scaled(code, 1e3);
            case ELAPSED_SECONDS, UNIX_SECONDS -> scaled(code, 1e6);
            case ELAPSED_MINUTES -> scaled(code, 60e6);
            case ELAPSED_HOURS -> scaled(code, 3600e6);
            case ELAPSED_DAYS -> scaled(code, 86400e6);
            case SERIAL_1900 -> SerialDays.micros1900(Double.longBitsToDouble(code));
            case SERIAL_1904 -> SerialDays.micros1904(Double.longBitsToDouble(code));
        };
    }

    private static long scaled(long code, double unit) {
        double micros = Double.longBitsToDouble(code) * unit;
        return Math.abs(micros) < LIMIT ? Math.round(micros) : SerialDays.NONE;
    }

    /** Whether times mostly step back. A roll-over of a clock is one step forward in a file that runs backward, or back in one that does not. */
    static boolean isNewestFirst(long[] times, int size) {
        int forward = 0;
        int back = 0;
        for (int i = 1; i < size; i++) {
            if (times[i] != SerialDays.NONE && times[i - 1] != SerialDays.NONE) {
                forward += times[i] > times[i - 1] ? 1 : 0;
                back += times[i] < times[i - 1] ? 1 : 0;
            }
        }
        return back > 10 * forward && back > 1;
    }

    /** Adds days, or half days, where the clock rolls over: where it steps back by more than half its round. */
    private void unroll(long[] times, int size, boolean newestFirst) {
        long round = form == TimeForm.TIME_OF_DAY ? TimeColumn.DAY : HALF_DAY;
        long added = startDate.map(day -> day.toEpochDay() * TimeColumn.DAY).orElse(0L);
        long last = Long.MIN_VALUE;
        for (int n = 0; n < size; n++) {
            int i = newestFirst ? size - 1 - n : n;
            long time = times[i];
            if (time == SerialDays.NONE) {
                continue;
            }
            if (last != Long.MIN_VALUE && last - time > round / 2) {
                added += round;
            }
            last = time;
            times[i] = time + added;
        }
    }

    private void toUtc(RawSeries series, BitSet utc, boolean newestFirst, ReportNotes notes) {
        long[] times = series.times();
        int size = series.size();
        LocalTimes local = new LocalTimes(
                zone.orElseThrow(() -> new UnclearLogException(
                                UnclearLogException.Question.ZONE,
                                "zone of local times: the file names none",
                                "zone(ZoneId.of(…)) of where the clock was",
                                "zone(ZoneOffset.UTC) if it ran by UTC"))
                        .getRules(),
                usualStep(times, size),
                newestFirst || isOrdered(times, size));
        for (int n = 0; n < size; n++) {
            int i = newestFirst ? size - 1 - n : n;
            if (times[i] == SerialDays.NONE || utc.get(i)) {
                continue;
            }
            times[i] = local.utc(times[i]);
            switch (local.turned()) {
                case MOVED_OVER_GAP -> notes.movedOverGap.add(series.lines()[i]);
                case FIRST_PASS, SECOND_PASS -> notes.inOverlap.add(series.lines()[i]);
                case PLAIN -> {}
            }
        }
    }

    private static long usualStep(long[] times, int size) {
        long[] steps = new long[Math.max(0, Math.min(size, STEPS) - 1)];
        int found = 0;
        for (int i = 1; i <= steps.length; i++) {
            if (times[i] != SerialDays.NONE && times[i - 1] != SerialDays.NONE && times[i] != times[i - 1]) {
                steps[found++] = Math.abs(times[i] - times[i - 1]);
            }
        }
        Arrays.sort(steps, 0, found);
        return found == 0 ? 0 : steps[found / 2];
    }

    /** Whether at most one step in a hundred, or three in all, goes back: those of clocks that are put back, and stray rows. */
    private static boolean isOrdered(long[] times, int size) {
        int back = 0;
        for (int i = 1; i < size; i++) {
            back += times[i] < times[i - 1] && times[i] != SerialDays.NONE ? 1 : 0;
        }
        return back <= Math.max(3, size / 100);
    }
}
