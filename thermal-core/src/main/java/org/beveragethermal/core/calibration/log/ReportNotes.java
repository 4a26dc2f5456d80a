/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** A report in the making. */
final class ReportNotes {
    /** A rejection that waits for the end of its row. */
    private record Waiting(long line, String sensor, String text, Rejected.Reason reason, String detail) {}

    private final int most;
    final List<LogNote> notes = new ArrayList<>();
    final List<Rejected> rejected = new ArrayList<>();
    final Map<Rejected.Reason, LineNumbers> lines = new EnumMap<>(Rejected.Reason.class);
    final LineNumbers comments = new LineNumbers();
    final LineNumbers outOfOrder = new LineNumbers();
    final LineNumbers movedOverGap = new LineNumbers();
    final LineNumbers inOverlap = new LineNumbers();
    final List<SensorFigures> figures = new ArrayList<>();
    long rows;
    long rejectedRows;
    long readings;
    private final Map<Long, String> texts = new HashMap<>();
    private final List<Waiting> waiting = new ArrayList<>();

    ReportNotes(int most) {
        this.most = most;
    }

    void note(LogNote.Kind kind, String text) {
        LogNote note = new LogNote(kind, text);
        if (!notes.contains(note)) {
            notes.add(note);
        }
    }

    /** Keeps the text of a row in case it is rejected later. */
    void keep(long line, String text) {
        texts.put(line, text);
    }

    /** Rejects the row at hand, or a reading in it; counted when the row is over. */
    void reject(Row row, char separator, String sensor, Rejected.Reason reason, Supplier<String> detail) {
        boolean listed = rejected.size() + waiting.size() < most;
        waiting.add(new Waiting(
                row.line(), sensor, listed ? row.joined(separator) : "", reason, listed ? detail.get() : ""));
    }

    /** Counts what waits. */
    void rowIsOver() {
        if (!waiting.isEmpty()) {
            waiting.forEach(one -> count(one, one.reason(), one.detail()));
            waiting.clear();
        }
    }

    /** Counts what waits as cut off. */
    void rowIsCutOff() {
        waiting.forEach(one -> count(one, Rejected.Reason.TRUNCATED, "the file ends in this row: " + one.detail()));
        waiting.clear();
    }

    private void count(Waiting one, Rejected.Reason reason, String detail) {
        add(one.line(), one.sensor(), reason);
        if (rejected.size() < most) {
            rejected.add(new Rejected(one.line(), one.sensor(), one.text(), reason, detail));
        }
    }

    private void add(long line, String sensor, Rejected.Reason reason) {
        lines.computeIfAbsent(reason, any -> new LineNumbers()).add(line);
        rejectedRows += sensor.isEmpty() ? 1 : 0;
    }

    /** Rejects a reading after all rows are in. */
    void reject(long line, String sensor, String understood, Rejected.Reason reason, Supplier<String> detail) {
        add(line, sensor, reason);
        if (rejected.size() < most) {
            rejected.add(new Rejected(line, sensor, texts.getOrDefault(line, understood), reason, detail.get()));
        }
    }
}
