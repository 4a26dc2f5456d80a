/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.Objects;

/**
 * A row, or a reading of a row, that is not in the log.
 *
 * @param line number of its line in the file, from 1; of its first line, if quotes hold several together
 * @param sensor sensor whose reading it is; empty if the whole row is rejected
 * @param text the row, cells joined by the separator, cut to {@value #LONGEST_TEXT} characters; the reading alone, as it was
 *     understood, if its fault was seen only after more than {@value #KEPT_ROWS} rows
 * @param reason kind of fault
 * @param detail what is wrong with it
 */
public record Rejected(long line, String sensor, String text, Reason reason, String detail) {

    /** Longest text [characters]. */
    public static final int LONGEST_TEXT = 200;
    /** Rows whose text is kept until the whole file is read. */
    public static final int KEPT_ROWS = 10_000;

    /** Kinds of fault. */
    public enum Reason {
        /** The row has too few cells, or too many. */
        CELLS,
        /** The last row of the file breaks off. */
        TRUNCATED,
        /** The time cannot be read. */
        TIME_UNREADABLE,
        /** The time can be read, but there is no such day. */
        NO_SUCH_TIME,
        /** The temperature cannot be read. */
        VALUE_UNREADABLE,
        /** An empty cell, a word or a number that stands for a missing value. */
        MISSING,
        /** 85 °C out of nothing: what some sensors report before their first conversion. */
        POWER_ON,
        /** Outside of what {@link LogFormat.Builder#plausibleK} allows. */
        IMPLAUSIBLE,
        /** Another reading of the sensor has the same time. */
        DUPLICATE
    }

    /**
     * Cuts the text.
     *
     * @param line number of its line in the file, from 1
     * @param sensor sensor whose reading it is; empty if the whole row is rejected
     * @param text the row
     * @param reason kind of fault
     * @param detail what is wrong with it
     */
    public Rejected {
        Objects.requireNonNull(sensor, "sensor");
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(detail, "detail");
        text = text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT - 1) + "…";
    }
}
