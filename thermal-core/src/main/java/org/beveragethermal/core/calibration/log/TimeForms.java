/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.Optional;

/** Tells what times stand for, by the whole column. */
final class TimeForms {
    private static final double UNIX_SECONDS_FROM = 3e8;
    private static final double UNIX_SECONDS_TO = 1e10;
    private static final double UNIX_MILLISECONDS_TO = 1e13;
    private static final double SERIAL_FROM = 20_000;
    private static final double SERIAL_TO = 80_000;

    private TimeForms() {}

    static TimeForm find(TimeColumn column, Columns columns, LogFormat format, ReportNotes notes) {
        if (format.timeForm.isPresent()) {
            return format.timeForm.get();
        }
        return switch (column.shape()) {
            case STAMP -> column.allHaveOffset() ? TimeForm.STAMP_WITH_OFFSET : TimeForm.LOCAL_STAMP;
            case CLOCK -> clock(column, columns.timeHead(), format, notes);
            case NUMBER -> number(column, columns.timeHead(), notes);
        };
    }

    private static TimeForm clock(TimeColumn column, String head, LogFormat format, ReportNotes notes) {
        if (column.hasMeridiem()) {
            return TimeForm.TIME_OF_DAY;
        }
        if (column.isTwelveHour()) {
            notes.note(LogNote.Kind.INFERRED, "12-hour clock without am and pm: after 12 comes 1");
            return TimeForm.TWELVE_HOUR_TIME;
        }
        Optional<TimeForm> counted = HeadWords.countedClock(head);
        boolean elapsed = counted.isPresent() || column.highestHour() > 23;
        boolean fromZero = column.firstCode() == 0 && format.startDate.isEmpty();
        if (!column.hasSeconds() && (elapsed || fromZero)) {
            if (counted.filter(form -> form == TimeForm.ELAPSED_MINUTES_SECONDS).isPresent()) {
                return TimeForm.ELAPSED_MINUTES_SECONDS;
            }
            throw ask(
                    "times such as " + column.highestHour() + ":00 may count hours and minutes or minutes and seconds",
                    "timeForm(ELAPSED_HOURS_MINUTES)",
                    "timeForm(ELAPSED_MINUTES_SECONDS)",
                    "timeForm(TIME_OF_DAY)");
        }
        if (elapsed || fromZero) {
            notes.note(
                    elapsed ? LogNote.Kind.INFERRED : LogNote.Kind.ASSUMED,
                    "times count from a start: "
                            + (elapsed ? "the head says so, or an hour is above 23" : "the first is 0:00:00"));
            return TimeForm.ELAPSED_HOURS_MINUTES;
        }
        return TimeForm.TIME_OF_DAY;
    }

    private static TimeForm number(TimeColumn column, String head, ReportNotes notes) {
        double least = column.least();
        double greatest = column.greatest();
        Optional<TimeForm> counted = HeadWords.countedTime(head);
        if (counted.isPresent()) {
            TimeForm form = counted.get();
            boolean unix = form == TimeForm.UNIX_SECONDS || form == TimeForm.UNIX_MILLISECONDS;
            boolean sinceEpoch = (form == TimeForm.ELAPSED_SECONDS && least > UNIX_SECONDS_FROM)
                    || (form == TimeForm.ELAPSED_MILLISECONDS && least > 1000 * UNIX_SECONDS_FROM);
            if (!unix && !sinceEpoch) {
                notes.note(LogNote.Kind.STATED, form.text());
                return form;
            }
            return least > UNIX_SECONDS_TO ? TimeForm.UNIX_MILLISECONDS : TimeForm.UNIX_SECONDS;
        }
        if (least > UNIX_SECONDS_FROM && greatest < UNIX_SECONDS_TO) {
            notes.note(LogNote.Kind.ASSUMED, "times count seconds since 1970");
            return TimeForm.UNIX_SECONDS;
        }
        if (least > 1000 * UNIX_SECONDS_FROM && greatest < UNIX_MILLISECONDS_TO) {
            notes.note(LogNote.Kind.ASSUMED, "times count milliseconds since 1970");
            return TimeForm.UNIX_MILLISECONDS;
        }
        if (least >= SERIAL_FROM && greatest <= SERIAL_TO && column.hasFraction()) {
            notes.note(
                    LogNote.Kind.ASSUMED,
                    "times are days of a spreadsheet in the 1900 system; in the 1904 system they would be 1462 days later");
            return TimeForm.SERIAL_1900;
        }
        throw ask(
                "numbers from " + least + " to " + greatest + " in column "
                        + (head.isEmpty() ? "of times" : "\"" + head + "\"") + " without a unit",
                "timeForm(ELAPSED_SECONDS)",
                "timeForm(ELAPSED_MINUTES)",
                "timeForm(ELAPSED_HOURS)",
                "timeForm(SERIAL_1900)");
    }

    private static UnclearLogException ask(String reason, String... choices) {
        return new UnclearLogException(UnclearLogException.Question.TIME_FORM, "what times count: " + reason, choices);
    }
}
