/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.beveragethermal.service.tracking.Alert;
import org.beveragethermal.service.tracking.Fleet;
import org.beveragethermal.service.tracking.Note;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.beveragethermal.service.tracking.TrackingWords;
import org.jspecify.annotations.Nullable;

/**
 * Follows all bottles of a file of readings, row by row as they would come from loggers: a bottle is tracked from its first reading on. No
 * more than the rows of an instant are kept. Used by one thread.
 */
final class CellarLog {

    /** Most bottles; what is named beyond them is left out. */
    static final int MOST_BOTTLES = 10_000;

    private static final int LONGEST_ROW = 1 << 16;
    private static final int MOST_WAITING = 20_000;
    /** No text holds it: a quotation mark is a letter like others, and cannot swallow the lines that follow. */
    private static final char NO_QUOTE = '\uFFFF';

    private static final Duration LONGEST_GAP = Duration.ofHours(36);
    private static final Duration LOOK = Duration.ofMinutes(15);

    /** Hears what happens, in its order. */
    interface Listener {

        /** Something that someone should know. */
        void alert(CellarAlert alert);

        /** A row is left out. */
        void leftOut(CellarRow.Bad row);
    }

    /**
     * What became of a file.
     *
     * @param rows rows of the file, without its head
     * @param leftOut rows of which nothing was used
     * @param unusable readings that could not be temperatures, or strayed
     * @param vessels bottles as they are believed to be at the end
     */
    record Summary(long rows, long leftOut, long unusable, List<TrackedVessel> vessels) {}

    private final TrackingWords words = TrackingWords.in(Locale.ENGLISH);
    private final CellarHouse house;
    private final Fleet fleet;
    private final LimitWatch limits;
    private final Listener listener;
    private final List<TrackingEvent> round = new ArrayList<>();
    private final Map<String, Long> lines = new HashMap<>();
    private Instant now = Instant.MIN;
    private Instant looked = Instant.MIN;
    private CellarRow.@Nullable Good held;
    private int bottles;
    private long rows;
    private long leftOut;
    private long unusable;

    private CellarLog(CellarHouse house, Listener listener) {
        this.house = house;
        this.fleet = Fleet.of(house.tracker());
        this.limits = new LimitWatch(house.coldestK(), house.warmestK());
        this.listener = listener;
    }

    /**
     * Follows a file to its end.
     *
     * @throws IllegalArgumentException if its head is another, or a row is longer than 64 KiB; rows before that one have been used
     */
    static Summary follow(Reader file, CellarHouse house, Listener listener) throws IOException {
        CellarLog log = new CellarLog(house, listener);
        long read = 0;
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .maxBufferSize(LONGEST_ROW)
                .quoteCharacter(NO_QUOTE)
                .skipEmptyLines(true)
                .ofCsvRecord(file)) {
            for (CsvRecord row : csv) {
                if (read++ == 0) {
                    requireHead(row.getFields());
                } else {
                    log.row(CellarRow.read(row.getStartingLineNumber(), row.getFields()));
                }
            }
        } catch (UncheckedIOException e) {
            log.end();
            throw e.getCause();
        } catch (CsvParseException e) {
            log.end();
            throw new IllegalArgumentException(
                    "after " + read + " rows one is longer than " + LONGEST_ROW + " characters: expected shorter ones",
                    e);
        }
        if (read == 0) {
            requireHead(List.of());
        }
        log.end();
        return new Summary(log.rows, log.leftOut, log.unusable, log.fleet.vessels());
    }

    private static void requireHead(List<String> fields) {
        List<String> head = fields.stream()
                .map(field -> field.replace("\uFEFF", "").strip())
                .toList();
        if (!head.equals(CellarRow.COLUMNS)) {
            throw new IllegalArgumentException(
                    "head " + shortened(head.toString()) + ": expected " + CellarRow.COLUMNS);
        }
    }

    private static String shortened(String text) {
        int longest = 100;
        return text.length() > longest ? text.substring(0, longest) + "..." : text;
    }

    private void row(CellarRow row) {
        rows++;
        if (row instanceof CellarRow.Bad bad) {
            leaveOut(bad);
        } else if (row instanceof CellarRow.Good good) {
            use(good);
        }
    }

    private void leaveOut(CellarRow.Bad bad) {
        leftOut++;
        listener.leftOut(bad);
    }

    /**
     * One row with a wrong clock does not age all bottles: a row far ahead, and the very first, is held until the next one shows whether
     * its clock was right, and left out if it was not.
     */
    private void use(CellarRow.Good good) {
        CellarRow.Good before = held;
        held = null;
        if (before != null) {
            if (Duration.between(before.at(), good.at()).abs().compareTo(LONGEST_GAP) <= 0) {
                believe(before);
                believe(good);
                return;
            }
            leaveOutHeld(before);
        }
        if (now.equals(Instant.MIN) || good.at().isAfter(now.plus(LONGEST_GAP))) {
            held = good;
        } else {
            believe(good);
        }
    }

    private void leaveOutHeld(CellarRow.Good row) {
        leaveOut(new CellarRow.Bad(
                row.line(),
                "time " + row.at() + " is more than 36 h from its neighbours: expected rows in the order of time"));
    }

    private void believe(CellarRow.Good good) {
        if (good.at().isAfter(now)) {
            endRound();
            look();
            boolean gap = !now.equals(Instant.MIN) && good.at().isAfter(now.plus(LONGEST_GAP));
            now = good.at();
            if (gap) {
                look();
            }
        }
        if (fleet.vessel(good.bottle()).isEmpty() && !place(good)) {
            return;
        }
        limits.cold(good).ifPresent(listener::alert);
        lines.put(good.id(), good.line());
        round.add(new TrackingEvent.Reading(good.id(), good.at(), good.bottle(), good.kelvins()));
        if (round.size() >= MOST_WAITING) {
            endRound();
        }
    }

    /** No more rows come. A first row that nothing followed is believed, for want of others. */
    private void end() {
        CellarRow.Good last = held;
        held = null;
        if (last != null && now.equals(Instant.MIN)) {
            believe(last);
        } else if (last != null) {
            leaveOutHeld(last);
        }
        endRound();
        looked = Instant.MIN;
        look();
    }

    private boolean place(CellarRow.Good good) {
        if (bottles == MOST_BOTTLES) {
            leaveOut(new CellarRow.Bad(
                    good.line(), "bottle " + good.bottle() + " is one more: expected at most " + MOST_BOTTLES));
            return false;
        }
        bottles++;
        fleet.apply(List.of(house.placed(good.bottle(), good.at())));
        return true;
    }

    /** All rows of an instant are there, and are used. */
    private void endRound() {
        tell(fleet.apply(round));
        round.clear();
        lines.clear();
    }

    /** Each quarter of an hour those who were not heard of are told that time passes, and all are looked at. */
    private void look() {
        if (Duration.between(looked, now).compareTo(LOOK) < 0) {
            return;
        }
        looked = now;
        List<TrackingEvent> silent = new ArrayList<>();
        for (TrackedVessel vessel : fleet.vessels()) {
            if (Duration.between(vessel.now(), now).compareTo(LOOK) >= 0) {
                silent.add(new TrackingEvent.TimePassed("time " + now, now, vessel.id()));
            }
        }
        tell(fleet.apply(silent));
        fleet.vessels().forEach(vessel -> limits.warm(vessel).ifPresent(listener::alert));
    }

    private void tell(Fleet.Report report) {
        for (Alert alert : report.alerts()) {
            listener.alert(
                    new CellarAlert(alert.vesselId(), alert.at(), CellarAlert.kind(alert.code()), words.text(alert)));
        }
        for (Note note : report.notes()) {
            if (note.code() == Note.Code.NOT_A_READING || note.code() == Note.Code.STRAY_READING) {
                unusable++;
            } else {
                leaveOut(new CellarRow.Bad(lines.getOrDefault(note.eventId(), 0L), words.text(note)));
            }
        }
    }
}
