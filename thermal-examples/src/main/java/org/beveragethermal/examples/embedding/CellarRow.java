/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;

/** A row of a file of readings: what it says, or why it says nothing. */
sealed interface CellarRow {

    /** Columns of the file. */
    List<String> COLUMNS = List.of("at", "bottle", "temperature_celsius");

    Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
    Instant LATEST = Instant.parse("2100-01-01T00:00:00Z");
    Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,6}(\\.[0-9]{1,6})?");

    /**
     * A reading.
     *
     * @param line line of the file
     * @param at when
     * @param bottle of which bottle
     * @param kelvins what was read [K]; NaN where the sensor had no reading
     */
    record Good(long line, Instant at, String bottle, double kelvins) implements CellarRow {

        /** Twice the same bottle at the same time is the same reading. */
        String id() {
            return at + " " + bottle;
        }
    }

    /**
     * A row that is left out.
     *
     * @param line line of the file
     * @param why what was given and what is expected
     */
    record Bad(long line, String why) implements CellarRow {}

    /** Reads the fields of a row. */
    static CellarRow read(long line, List<String> fields) {
        if (fields.size() != COLUMNS.size()) {
            return new Bad(line, "fields " + fields.size() + ": expected " + COLUMNS.size());
        }
        String time = fields.get(0).strip();
        String bottle = fields.get(1).strip();
        String number = fields.get(2).strip();
        if (!EventFields.isName(bottle)) {
            return bad(line, 1, bottle, "1 to 100 letters (A to Z, a to z), digits, spaces and . _ : # / -");
        }
        if (!number.isEmpty() && !NUMBER.matcher(number).matches()) {
            return bad(line, 2, number, "a number with a decimal point, or nothing");
        }
        Instant at;
        try {
            at = Instant.parse(time);
        } catch (DateTimeException e) {
            return bad(line, 0, time, "a time in UTC such as 2027-01-11T06:00:00Z");
        }
        if (at.isBefore(EARLIEST) || !at.isBefore(LATEST)) {
            return bad(line, 0, time, "a time of 2000 to 2099");
        }
        double kelvins = number.isEmpty() ? Double.NaN : EventFields.ZERO_CELSIUS_K + Double.parseDouble(number);
        return new Good(line, at, bottle, kelvins);
    }

    private static Bad bad(long line, int column, String given, String expected) {
        int longest = 40;
        String shown = given.length() > longest ? given.substring(0, longest) + "..." : given;
        return new Bad(line, COLUMNS.get(column) + " '" + shown + "': expected " + expected);
    }
}
