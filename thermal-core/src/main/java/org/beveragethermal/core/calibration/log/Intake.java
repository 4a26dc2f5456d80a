/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes rows in, one after another, and sorts their readings by sensor. */
final class Intake {
    /** More sensors than that are no sensors. */
    private static final int MOST_SENSORS = 1000;

    private final Dialect dialect;
    private final Columns columns;
    private final ReportNotes notes;
    private final TimeColumn time;
    private final NumberCell number;
    private final Map<String, RawSeries[]> bySensor = new LinkedHashMap<>();
    private final List<RawSeries> series = new ArrayList<>();
    private boolean lastIsCut;
    private long lastLine;

    Intake(Dialect dialect, LogFormat format, ReportNotes notes) {
        this.dialect = dialect;
        this.columns = dialect.columns();
        this.notes = notes;
        this.time = new TimeColumn(columns, dialect.decimalMark(), format);
        this.number = new NumberCell(dialect.decimalMark());
        if (columns.sensor() < 0) {
            seriesOf("");
        }
    }

    TimeColumn time() {
        return time;
    }

    /** Line of the last row, or 0. */
    long lastLine() {
        return lastLine;
    }

    /** All series, in the order in which their sensors appear. */
    List<RawSeries> series() {
        return series;
    }

    void take(Row row) {
        if (row.isCommentLine()) {
            notes.comments.add(row.line());
            return;
        }
        if (row.isBlank()) {
            return;
        }
        notes.rowIsOver();
        notes.rows++;
        lastLine = row.line();
        lastIsCut = false;
        if (notes.rows <= Rejected.KEPT_ROWS) {
            notes.keep(row.line(), row.joined(dialect.separator()));
        }
        if (!hasItsCells(row)) {
            int cells = row.cells();
            notes.reject(
                    row,
                    dialect.separator(),
                    "",
                    Rejected.Reason.CELLS,
                    () -> cells + " cells: expected " + dialect.cells());
        } else if (!time.read(row)) {
            String cell = row.cell(columns.time());
            notes.reject(
                    row,
                    dialect.separator(),
                    "",
                    Rejected.Reason.TIME_UNREADABLE,
                    () -> "\"" + cell + "\": expected a time like those before");
        } else {
            RawSeries[] ofRow = seriesOf(columns.sensor() < 0 ? "" : row.cell(columns.sensor()));
            for (int i = 0; i < ofRow.length; i++) {
                notes.readings++;
                take(row, columns.readings().get(i), ofRow[i]);
            }
        }
    }

    /** A last row without a line break may be cut off: what it lacks, it lacks for that. */
    void end(boolean lineBreak) {
        if (!lineBreak) {
            notes.rowIsCutOff();
            for (RawSeries one : series) {
                if (one.lastLine() == lastLine && one.lastIsShort() && lastIsCut) {
                    one.dropLast();
                    notes.reject(
                            lastLine,
                            one.sensor(),
                            "",
                            Rejected.Reason.TRUNCATED,
                            () -> "the file ends in this number, which has fewer decimals than all others");
                }
            }
        }
        notes.rowIsOver();
    }

    private boolean hasItsCells(Row row) {
        if (row.cells() < columns.needed()) {
            return false;
        }
        for (int i = dialect.cells(); i < row.cells(); i++) {
            if (!row.isEmpty(i)) {
                return false;
            }
        }
        return true;
    }

    private void take(Row row, int column, RawSeries into) {
        if (row.isEmpty(column) || isWord(row, column)) {
            String cell = row.cell(column);
            reject(
                    row,
                    into,
                    Rejected.Reason.MISSING,
                    cell.isEmpty() ? "empty cell" : "\"" + cell + "\" stands for a missing value");
            return;
        }
        char[] text = row.text();
        int to = row.to(column);
        if (!number.read(text, row.from(column), to)) {
            reject(
                    row,
                    into,
                    Rejected.Reason.VALUE_UNREADABLE,
                    "\"" + row.cell(column) + "\": expected a number with the decimal mark '" + dialect.decimalMark()
                            + "'");
            return;
        }
        if (number.end() < to) {
            String rest = Separators.trim(new String(text, number.end(), to - number.end()));
            Optional<TemperatureUnit> unit = HeadWords.unitAlone(rest);
            if (unit.isEmpty() || (into.unit().isPresent() && !into.unit().equals(unit))) {
                reject(
                        row,
                        into,
                        Rejected.Reason.VALUE_UNREADABLE,
                        "\"" + rest + "\" after the number: expected "
                                + into.unit().map(TemperatureUnit::symbol).orElse("a unit or nothing"));
                return;
            }
            into.setUnit(unit.get());
        }
        lastIsCut = column == row.cells() - 1 && number.end() == to;
        into.add(time.code(), number.value(), number.decimals(), row.line());
    }

    private static boolean isWord(Row row, int column) {
        char first = row.text()[row.from(column)];
        boolean startsNumber = NumberCell.isDigit(first)
                || (row.to(column) - row.from(column) > 1 && NumberCell.isDigit(row.text()[row.from(column) + 1]));
        return !startsNumber && MissingMarks.isMissing(row.text(), row.from(column), row.to(column));
    }

    private void reject(Row row, RawSeries into, Rejected.Reason reason, String detail) {
        notes.reject(row, dialect.separator(), into.sensor(), reason, () -> detail);
    }

    private RawSeries[] seriesOf(String sensor) {
        RawSeries[] known = bySensor.get(sensor);
        if (known != null) {
            return known;
        }
        if (bySensor.size() == MOST_SENSORS) {
            throw new UnclearLogException(
                    UnclearLogException.Question.COLUMNS,
                    "column " + columns.shown(columns.sensor()) + " names more than " + MOST_SENSORS + " sensors",
                    "sensorColumns(…)");
        }
        RawSeries[] made = new RawSeries[columns.readings().size()];
        for (int i = 0; i < made.length; i++) {
            String name = columns.names().get(i);
            String shown = columns.sensor() < 0 ? name : sensor.isEmpty() ? "unnamed" : sensor;
            made[i] = new RawSeries(
                    columns.sensor() >= 0 && made.length > 1 ? shown + " / " + name : shown,
                    columns.units().get(i));
            series.add(made[i]);
        }
        bySensor.put(sensor, made);
        return made;
    }
}
