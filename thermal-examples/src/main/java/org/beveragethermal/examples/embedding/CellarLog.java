/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.tracking.Alert;
import org.beveragethermal.service.tracking.Fleet;
import org.beveragethermal.service.tracking.Note;
import org.beveragethermal.service.tracking.Sensor;
import org.beveragethermal.service.tracking.TrackedModel;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.Tracker;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.beveragethermal.service.tracking.TrackingRules;

/**
 * Follows all bottles of a file of readings, row by row as they would come from loggers: a bottle is tracked from its first reading on.
 * Used by one thread.
 */
final class CellarLog {

    private static final List<String> COLUMNS = List.of(CellarReadings.HEAD.split(",", -1));
    private static final int MOST_LEFT_OUT = 100;
    private static final int LONGEST_ROW = 1 << 16;
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double CELLAR_C = 12;
    private static final double FIRST_SD_K = 1;

    private final Fleet fleet = Fleet.of(Tracker.of(List.of(cellared()), rules()));
    private final List<TrackingEvent> round = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();
    private final Consumer<Alert> listener;
    private Instant now = Instant.MIN;
    private int rows;
    private int unusable;

    private CellarLog(Consumer<Alert> listener) {
        this.listener = listener;
    }

    private static TrackedModel cellared() {
        return TrackedModel.from(
                        "bottle",
                        Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(CELLAR_C)))
                .medium("cellar", Air.at(celsius(CELLAR_C)), 0.7, 0.4)
                .sensor(Sensor.inDrink(0.15, 0.1).withBias(0.15))
                .build();
    }

    /** The usual rules, but for silence after three readings, and slower sums: of a thousand bottles one is always unlucky. */
    private static TrackingRules rules() {
        TrackingRules usual = TrackingRules.usual();
        return new TrackingRules(
                usual.gateSd(),
                usual.straysForChange(),
                usual.driftSd(),
                2 * usual.alarmSd(),
                usual.kept(),
                usual.lead(),
                usual.freezingLead(),
                usual.backK(),
                CellarReadings.STEP.multipliedBy(3),
                usual.refusedForFaulty(),
                usual.mostAhead());
    }

    /**
     * What became of a file.
     *
     * @param rows rows of the file, without its head
     * @param leftOut rows that say nothing, each with its line and the reason
     * @param unusable readings that were not used
     * @param vessels bottles as they are believed to be at the end
     */
    record Summary(int rows, List<String> leftOut, int unusable, List<TrackedVessel> vessels) {}

    /**
     * Follows a file to its end.
     *
     * @throws IllegalArgumentException if its head is another, or more than 100 rows say nothing
     */
    static Summary follow(Reader file, Consumer<Alert> listener) throws IOException {
        CellarLog log = new CellarLog(listener);
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                .maxBufferSize(LONGEST_ROW)
                .skipEmptyLines(true)
                .ofNamedCsvRecord(file)) {
            for (NamedCsvRecord row : csv) {
                log.row(row);
            }
        } catch (CsvParseException e) {
            throw new IllegalArgumentException(
                    "row " + (log.rows + 1) + " after the head is no CSV, or longer than " + LONGEST_ROW + " characters");
        }
        log.endRound();
        if (log.rows == 0) {
            throw new IllegalArgumentException("there are no readings: expected the head " + CellarReadings.HEAD
                    + " and a row for each reading");
        }
        return new Summary(log.rows, List.copyOf(log.leftOut), log.unusable, log.fleet.vessels());
    }

    private void row(NamedCsvRecord row) {
        if (rows++ == 0 && !row.getHeader().equals(COLUMNS)) {
            throw new IllegalArgumentException("head " + row.getHeader() + ": expected " + COLUMNS);
        }
        if (row.getFieldCount() != COLUMNS.size()) {
            leaveOut(row, row.getFieldCount() + " fields, expected " + COLUMNS.size());
            return;
        }
        String bottle = row.getField(1).strip();
        try {
            Instant at = Instant.parse(row.getField(0).strip());
            String text = row.getField(2).strip();
            double kelvins = text.isEmpty() ? Double.NaN : ZERO_CELSIUS_K + Double.parseDouble(text);
            if (at.isAfter(now)) {
                endRound();
                now = at;
            }
            if (fleet.vessel(bottle).isEmpty()) {
                fleet.apply(List.of(new TrackingEvent.Placed(
                        "first of " + bottle, at, bottle, "bottle", "cellar", ZERO_CELSIUS_K + CELLAR_C, FIRST_SD_K)));
            }
            round.add(new TrackingEvent.Reading("row " + row.getStartingLineNumber(), at, bottle, kelvins));
        } catch (DateTimeException e) {
            leaveOut(row, "time '" + row.getField(0) + "', expected one such as " + CellarReadings.START);
        } catch (NumberFormatException e) {
            leaveOut(row, "temperature '" + row.getField(2) + "', expected a number or nothing");
        } catch (IllegalArgumentException e) {
            leaveOut(row, e.getMessage());
        }
    }

    private void leaveOut(NamedCsvRecord row, String why) {
        leftOut.add("line " + row.getStartingLineNumber() + ": " + why);
        if (leftOut.size() > MOST_LEFT_OUT) {
            throw new IllegalArgumentException(
                    "more than " + MOST_LEFT_OUT + " rows say nothing, the last in " + leftOut.get(MOST_LEFT_OUT));
        }
    }

    /** All rows of an instant are there: they are used, and those who are not heard of are told that time passes. */
    private void endRound() {
        tell(fleet.apply(round));
        round.clear();
        List<TrackingEvent> silent = new ArrayList<>();
        for (TrackedVessel vessel : fleet.vessels()) {
            if (Duration.between(vessel.now(), now).compareTo(CellarReadings.STEP) >= 0) {
                silent.add(new TrackingEvent.TimePassed("time " + now, now, vessel.id()));
            }
        }
        tell(fleet.apply(silent));
    }

    private void tell(Fleet.Report report) {
        report.alerts().forEach(listener);
        for (Note note : report.notes()) {
            unusable += note.code() == Note.Code.NOT_A_READING || note.code() == Note.Code.STRAY_READING ? 1 : 0;
        }
    }
}
