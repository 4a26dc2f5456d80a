/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/** How a log writes its times. */
public enum TimeForm {
    /** Date and time, each with its own offset from UTC. */
    STAMP_WITH_OFFSET("date and time with an offset", true),
    /** Date and time by the clock on the wall: a zone must be known. */
    LOCAL_STAMP("date and local time", true),
    /** Time of day without a date, 24-hour or with am and pm; it rolls over at midnight. */
    TIME_OF_DAY("time of day", false),
    /** Time of day without a date by a 12-hour clock, without am and pm; it rolls over at noon and midnight. */
    TWELVE_HOUR_TIME("time of day, 12-hour clock", false),
    /** Time since a start in hours, minutes and perhaps seconds: {@code 26:15:00}. */
    ELAPSED_HOURS_MINUTES("elapsed h:mm:ss", false),
    /** Time since a start in minutes and seconds: {@code 75:30}. */
    ELAPSED_MINUTES_SECONDS("elapsed m:ss", false),
    /** A number of milliseconds since a start. */
    ELAPSED_MILLISECONDS("elapsed ms", false),
    /** A number of seconds since a start. */
    ELAPSED_SECONDS("elapsed s", false),
    /** A number of minutes since a start. */
    ELAPSED_MINUTES("elapsed min", false),
    /** A number of hours since a start. */
    ELAPSED_HOURS("elapsed h", false),
    /** A number of days since a start. */
    ELAPSED_DAYS("elapsed d", false),
    /**
     * Days of a spreadsheet, day 1 being 1900-01-01, by local time. The system counts a 29 February 1900 that never was, as day 60.
     */
    SERIAL_1900("spreadsheet days, 1900 system", true),
    /** Days of a spreadsheet, day 0 being 1904-01-01, by local time. */
    SERIAL_1904("spreadsheet days, 1904 system", true),
    /** Seconds since 1970-01-01T00:00Z. */
    UNIX_SECONDS("Unix seconds", true),
    /** Milliseconds since 1970-01-01T00:00Z. */
    UNIX_MILLISECONDS("Unix milliseconds", true);

    private final String text;
    private final boolean dated;

    TimeForm(String text, boolean dated) {
        this.text = text;
        this.dated = dated;
    }

    /**
     * In words.
     *
     * @return the form, for a person
     */
    public String text() {
        return text;
    }

    /**
     * Whether a time of this form says its day.
     *
     * @return true if it does
     */
    public boolean isDated() {
        return dated;
    }

    /** Whether cells of this form are plain numbers. */
    boolean isNumber() {
        return !isClock() && this != STAMP_WITH_OFFSET && this != LOCAL_STAMP;
    }

    /** Whether cells of this form are clock readings without a date. */
    boolean isClock() {
        return switch (this) {
            case TIME_OF_DAY, TWELVE_HOUR_TIME, ELAPSED_HOURS_MINUTES, ELAPSED_MINUTES_SECONDS -> true;
            default -> false;
        };
    }
}
