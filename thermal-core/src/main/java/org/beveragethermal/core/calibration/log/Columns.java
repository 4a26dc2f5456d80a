/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.List;
import java.util.Optional;

/**
 * Which cell of a row is what. Columns count from 0; −1 is none.
 *
 * @param heads texts over all columns; empty if there are none
 * @param time column of the time, or of the date
 * @param clock column of the time of day, if date and time stand apart
 * @param timeKind what cells of the time look like
 * @param sensor column that names the sensor of a row
 * @param readings columns of temperatures
 * @param names name of each of these
 * @param units unit over each of these
 */
record Columns(
        List<String> heads,
        int time,
        int clock,
        CellKind timeKind,
        int sensor,
        List<Integer> readings,
        List<String> names,
        List<Optional<TemperatureUnit>> units) {

    String head(int column) {
        return column >= 0 && column < heads.size() ? heads.get(column) : "";
    }

    String timeHead() {
        return (head(time) + " " + head(clock)).strip();
    }

    /** Cells that a row needs at least. */
    int needed() {
        return 1 + Math.max(Math.max(time, clock), Math.max(sensor, readings.get(0)));
    }

    /** The head of a column, or else its number. */
    String shown(int column) {
        return head(column).isEmpty() ? "column " + (column + 1) : head(column);
    }
}
