/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.BufferedReader;
import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Reads logs. The text is read once and not held; what is held are three numbers for each reading.
 *
 * <p>Nothing depends on the locale, time zone or charset of the machine.
 */
public final class LogReader {
    private static final int BUFFER = 1 << 16;
    private static final int LONGEST_ROW = 1 << 20;

    private LogReader() {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @param format what is known of it
     * @return the log with its report
     * @throws IOException if the file cannot be read
     * @throws UnclearLogException if something must be known that the file does not tell
     */
    public static ReadLog read(Path file, LogFormat format) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            return read(bytes, format);
        }
    }

    /**
     * Reads bytes.
     *
     * @param bytes the bytes, read to their end and not closed
     * @param format what is known of them
     * @return the log with its report
     * @throws IOException if they cannot be read
     * @throws UnclearLogException if something must be known that the bytes do not tell
     */
    public static ReadLog read(InputStream bytes, LogFormat format) throws IOException {
        Encoding encoding = Encoding.of(Objects.requireNonNull(bytes, "bytes"), format.charset);
        return read(encoding.reader(), format, Optional.of(encoding.charset()));
    }

    /**
     * Reads characters.
     *
     * @param text the characters, read to their end and not closed
     * @param format what is known of them
     * @return the log with its report
     * @throws IOException if they cannot be read
     * @throws UnclearLogException if something must be known that the text does not tell
     */
    public static ReadLog read(Reader text, LogFormat format) throws IOException {
        return read(Objects.requireNonNull(text, "text"), format, Optional.empty());
    }

    private static ReadLog read(Reader text, LogFormat format, Optional<Charset> charset) throws IOException {
        Tail tail = new Tail(text);
        BufferedReader reader = new BufferedReader(tail, BUFFER);
        skipByteOrderMark(reader);
        Dialect dialect = DialectSearch.find(Sample.of(reader), format);
        for (int i = 0; i < dialect.skipped(); i++) {
            reader.readLine();
        }
        ReportNotes notes = new ReportNotes(format.listed);
        Intake intake = new Intake(dialect, format, notes);
        takeRows(reader, dialect, intake);
        intake.end(tail.endsInLineBreak());
        return finish(intake, dialect, format, notes, charset);
    }

    private static void skipByteOrderMark(BufferedReader reader) throws IOException {
        reader.mark(1);
        if (reader.read() != '\ufeff') {
            reader.reset();
        }
    }

    private static void takeRows(Reader reader, Dialect dialect, Intake intake) throws IOException {
        // Not closed: it would close what belongs to the caller.
        CsvReader<Row> rows = CsvReader.builder()
                .fieldSeparator(dialect.separator())
                .commentStrategy(CommentStrategy.READ)
                .commentCharacter(dialect.comment())
                .maxBufferSize(LONGEST_ROW)
                .build(new Row(dialect.skipped()), reader);
        try {
            for (Row row : rows) {
                intake.take(row);
            }
        } catch (CsvParseException tooLong) {
            throw new UnclearLogException(
                    UnclearLogException.Question.QUOTES,
                    "after line " + intake.lastLine()
                            + ": a cell, or a row, without an end; is a quote opened and not closed?");
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private static ReadLog finish(
            Intake intake, Dialect dialect, LogFormat format, ReportNotes notes, Optional<Charset> charset) {
        List<RawSeries> all = intake.series();
        Optional<DateOrder> order = DateOrders.find(intake.time(), all, format, notes);
        TimeForm form = TimeForms.find(intake.time(), dialect.columns(), format, notes);
        Optional<ZoneId> zone = zone(form, dialect, format, notes);
        Optional<LocalDate> startDate = format.startDate;
        Times times = new Times(form, order, zone, startDate, !intake.time().hasSeconds());
        for (RawSeries series : all) {
            times.resolve(series, notes);
        }
        new Units(format, notes).decide(all, dialect.preambleUnit());
        for (RawSeries series : all) {
            new Sifting(format, notes, series).sift();
        }
        TemperatureLog log = log(all, times, notes);
        return new ReadLog(log, new LogReport(charset, dialect, form, order, zone, notes));
    }

    private static Optional<ZoneId> zone(TimeForm form, Dialect dialect, LogFormat format, ReportNotes notes) {
        if (!Times.needsZone(form, format.startDate)) {
            return Optional.empty();
        }
        if (format.zone.isEmpty()) {
            dialect.zone().ifPresent(zone -> notes.note(LogNote.Kind.STATED, "local times are those of " + zone));
        }
        return format.zone.or(dialect::zone);
    }

    private static TemperatureLog log(List<RawSeries> all, Times times, ReportNotes notes) {
        long earliest = all.stream()
                .filter(series -> series.size() > 0)
                .mapToLong(series -> series.times()[0])
                .min()
                .orElse(0);
        boolean counted = !times.areInstants() && !times.isTimeOfDay();
        long origin = counted ? 0 : earliest;
        boolean dated = times.areInstants() && all.stream().anyMatch(series -> series.size() > 0);
        Optional<Instant> start = dated ? Optional.of(Instant.EPOCH.plus(origin, ChronoUnit.MICROS)) : Optional.empty();
        List<SensorSeries> made = new ArrayList<>();
        for (RawSeries series : all) {
            long[] micros = Arrays.copyOf(series.times(), series.size());
            double[] kelvin = Arrays.copyOf(series.values(), series.size());
            TemperatureUnit unit = series.unit().orElseThrow();
            for (int i = 0; i < micros.length; i++) {
                micros[i] -= origin;
                kelvin[i] = unit.toKelvin(kelvin[i]);
            }
            notes.figures.add(Figures.of(series, micros));
            made.add(new SensorSeries(series.sensor(), SensorPosition.UNKNOWN, start, micros, kelvin));
        }
        return TemperatureLog.of(start, made);
    }

    /** Remembers the last character. */
    private static final class Tail extends FilterReader {
        private char last = '\n';

        Tail(Reader in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int read = super.read();
            last = read < 0 ? last : (char) read;
            return read;
        }

        @Override
        public int read(char[] buffer, int from, int most) throws IOException {
            int read = super.read(buffer, from, most);
            last = read > 0 ? buffer[from + read - 1] : last;
            return read;
        }

        boolean endsInLineBreak() {
            return last == '\n' || last == '\r';
        }
    }
}
