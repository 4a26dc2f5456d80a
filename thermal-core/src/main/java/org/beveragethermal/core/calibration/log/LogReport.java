/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.nio.charset.Charset;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What was found in a file, what was taken for granted, and every row and reading that is not in the log. Immutable and thread-safe.
 *
 * <p>Each row is rejected whole or gives one reading for each column of temperatures, and each reading is kept or rejected: nothing is lost
 * ({@link #rows()}, {@link #readings()}, {@link #rejectedRows()}, {@link #rejectedReadings()}).
 */
public final class LogReport {
    private final Optional<Charset> charset;
    private final Dialect dialect;
    private final TimeForm timeForm;
    private final Optional<DateOrder> dateOrder;
    private final Optional<ZoneId> zone;
    private final ReportNotes found;
    private final List<LogNote> notes;
    private final List<Rejected> rejected;
    private final List<SensorFigures> figures;

    LogReport(
            Optional<Charset> charset,
            Dialect dialect,
            TimeForm timeForm,
            Optional<DateOrder> dateOrder,
            Optional<ZoneId> zone,
            ReportNotes found) {
        this.charset = charset;
        this.dialect = dialect;
        this.timeForm = timeForm;
        this.dateOrder = dateOrder;
        this.zone = zone;
        this.found = found;
        this.notes = List.copyOf(found.notes);
        this.rejected = List.copyOf(found.rejected);
        this.figures = List.copyOf(found.figures);
    }

    /**
     * How bytes became characters.
     *
     * @return the charset; empty if characters were read
     */
    public Optional<Charset> charset() {
        return charset;
    }

    /**
     * What stands between cells.
     *
     * @return the separator
     */
    public char separator() {
        return dialect.separator();
    }

    /**
     * What stands before the fraction of a number.
     *
     * @return a point or a comma
     */
    public char decimalMark() {
        return dialect.decimalMark();
    }

    /**
     * Lines before the first row: preamble and heads.
     *
     * @return their number, 0 or more
     */
    public int linesBefore() {
        return dialect.skipped();
    }

    /**
     * Columns of the time: one, or date and time of day.
     *
     * @return their heads, or "column 1" and so on
     */
    public List<String> timeColumns() {
        Columns columns = dialect.columns();
        return columns.clock() < 0
                ? List.of(columns.shown(columns.time()))
                : List.of(columns.shown(columns.time()), columns.shown(columns.clock()));
    }

    /**
     * Columns of temperatures.
     *
     * @return their heads, or "column 2" and so on
     */
    public List<String> sensorColumns() {
        Columns columns = dialect.columns();
        return columns.readings().stream().map(columns::shown).toList();
    }

    /**
     * Column that names the sensor of each row, in a log with one reading to a row.
     *
     * @return its head; empty if there is none
     */
    public Optional<String> nameColumn() {
        Columns columns = dialect.columns();
        return columns.sensor() < 0 ? Optional.empty() : Optional.of(columns.shown(columns.sensor()));
    }

    /**
     * How times are written.
     *
     * @return the form
     */
    public TimeForm timeForm() {
        return timeForm;
    }

    /**
     * Whether days or months come first.
     *
     * @return the order; empty if no date leaves it open
     */
    public Optional<DateOrder> dateOrder() {
        return dateOrder;
    }

    /**
     * Zone of local times.
     *
     * @return the zone; empty if none was needed
     */
    public Optional<ZoneId> zone() {
        return zone;
    }

    /**
     * Rows after the heads, without blank lines and comments.
     *
     * @return their number
     */
    public long rows() {
        return found.rows;
    }

    /**
     * Rows that were rejected whole.
     *
     * @return their number
     */
    public long rejectedRows() {
        return found.rejectedRows;
    }

    /**
     * Readings in all rows that were not rejected whole, missing ones included.
     *
     * @return their number: rows times columns of temperatures
     */
    public long readings() {
        return found.readings;
    }

    /**
     * Readings in the log.
     *
     * @return their number over all sensors
     */
    public long keptReadings() {
        return figures.stream().mapToLong(SensorFigures::kept).sum();
    }

    /**
     * Readings that were rejected by themselves.
     *
     * @return their number
     */
    public long rejectedReadings() {
        return rejectedCount() - rejectedRows();
    }

    /**
     * All rejections, of rows and of readings.
     *
     * @return their number
     */
    public long rejectedCount() {
        return found.lines.values().stream().mapToLong(LineNumbers::count).sum();
    }

    /**
     * Rejections one by one.
     *
     * @return the first of them, as many as {@link LogFormat.Builder#listed} says: those seen while reading, then those seen in the whole
     */
    public List<Rejected> rejected() {
        return rejected;
    }

    /**
     * Lines of all rejections for a reason.
     *
     * @param reason the reason
     * @return the lines, none if it did not occur
     */
    public LineNumbers rejectedLines(Rejected.Reason reason) {
        return found.lines.getOrDefault(reason, new LineNumbers());
    }

    /**
     * Lines of comment between the rows.
     *
     * @return their numbers
     */
    public LineNumbers comments() {
        return found.comments;
    }

    /**
     * Readings earlier than the one before them in the file, or later if the newest comes first; they are in the log, sorted.
     *
     * @return their lines
     */
    public LineNumbers outOfOrder() {
        return found.outOfOrder;
    }

    /**
     * Local times that never were, because the clock was put forward; they are in the log, later by as much.
     *
     * @return their lines
     */
    public LineNumbers movedOverGap() {
        return found.movedOverGap;
    }

    /**
     * Local times that were twice, because the clock was put back; a step back in the file tells the second pass from the first.
     *
     * @return their lines
     */
    public LineNumbers inOverlap() {
        return found.inOverlap;
    }

    /**
     * What the file states, what was inferred and what was taken for granted.
     *
     * @return the notes
     */
    public List<LogNote> notes() {
        return notes;
    }

    /**
     * Units, increments, intervals and gaps.
     *
     * @return figures of each sensor
     */
    public List<SensorFigures> figures() {
        return figures;
    }

    /** The report for a person, in a few lines. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        text.append(rows()).append(" rows, ").append(rejectedRows()).append(" rejected; ");
        text.append(readings()).append(" readings, ").append(keptReadings()).append(" kept");
        text.append("; separator ").append(separator() == '\t' ? "tabulator" : "'" + separator() + "'");
        text.append(", decimal mark '")
                .append(decimalMark())
                .append("', times: ")
                .append(timeForm.text());
        zone.ifPresent(known -> text.append(" in ").append(known));
        figures.forEach(one -> text.append('\n')
                .append(one.sensor())
                .append(": ")
                .append(one.kept())
                .append(" in ")
                .append(one.unit().symbol()));
        notes.forEach(note -> text.append('\n').append(note));
        found.lines.forEach((reason, lines) ->
                text.append('\n').append(reason).append(": lines ").append(lines));
        lines(text, "put in order of time", outOfOrder());
        lines(text, "local time that never was, taken later by the change of the clock", movedOverGap());
        lines(text, "local time that was twice, passes told by the order of rows", inOverlap());
        return text.toString();
    }

    private static void lines(StringBuilder text, String what, LineNumbers lines) {
        if (lines.count() > 0) {
            text.append('\n').append(what).append(": lines ").append(lines);
        }
    }
}
