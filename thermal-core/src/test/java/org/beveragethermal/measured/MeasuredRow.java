/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.beveragethermal.testsupport.Csv;

/**
 * A reported reading, as {@code measured.csv} holds it: texts where the report has no plain number.
 *
 * @param id name of the row
 * @param vessel what it was in
 * @param volumeMl volume [mL], empty if not stated
 * @param liquid what it was, empty if not stated
 * @param method what it was put into
 * @param mediumC temperature of the medium [°C], empty if not stated
 * @param startC temperature at the start [°C], empty if not stated
 * @param endC temperature at the end, or the one asked for [°C]; {@code +} and {@code K} about it if it is a rise
 * @param minutes time from start to end [min]; {@code >} before it if the end was not reached by then
 * @param states whether the report is about the time to a temperature, the temperature at a time, or one never reached
 * @param provenance A published or by an institute, B organised test, C hobby or school write-up, D second-hand report
 * @param citeAs how the row is cited
 */
record MeasuredRow(
        String id,
        String vessel,
        String volumeMl,
        String liquid,
        String method,
        String mediumC,
        String startC,
        String endC,
        String minutes,
        States states,
        String provenance,
        String citeAs) {

    private static final String LATER_THAN = ">";
    private static final String RISE = "+";
    private static final String KELVINS = " K";

    /** What a report is about. */
    enum States {
        /** How long it took to a temperature. */
        TIME,
        /** How warm it was after a time. */
        TEMPERATURE,
        /** A temperature that was never reached. */
        NEVER
    }

    /** All rows, in the order of the file. */
    static List<MeasuredRow> all() {
        List<List<String>> records = Csv.parse(text());
        return records.subList(1, records.size()).stream().map(MeasuredRow::of).toList();
    }

    private static MeasuredRow of(List<String> fields) {
        States states = switch (fields.get(9)) {
            case "time" -> States.TIME;
            case "temperature" -> States.TEMPERATURE;
            case "never" -> States.NEVER;
            default -> throw new IllegalArgumentException("states " + fields.get(9));
        };
        return new MeasuredRow(
                fields.get(0),
                fields.get(1),
                fields.get(2),
                fields.get(3),
                fields.get(4),
                fields.get(5),
                fields.get(6),
                fields.get(7),
                fields.get(8),
                states,
                fields.get(10),
                fields.get(11));
    }

    /**
     * Temperature at the end; only for rows whose end is a plain number, or a rise.
     *
     * @param startCelsius temperature at the start, from which rises count [°C]
     */
    double endCelsius(double startCelsius) {
        return endC.startsWith(RISE)
                ? startCelsius + Double.parseDouble(endC.replace(RISE, "").replace(KELVINS, ""))
                : Double.parseDouble(endC);
    }

    /** Whether the temperature of the medium is stated as a plain number. */
    boolean statesMedium() {
        return mediumC.matches("-?[0-9.]+");
    }

    /** Whether a time is compared; one that never came is without end. */
    boolean isAboutTime() {
        return states != States.TEMPERATURE;
    }

    /** Time to the end, or the time by which it was not yet reached; 0 where a reading states an hour of the day and no time before it. */
    double statedMinutes() {
        return minutes.isEmpty() ? 0 : Double.parseDouble(minutes.replace(LATER_THAN, ""));
    }

    /** When a temperature was read, in words. */
    String readWhen() {
        return minutes.isEmpty() ? "at its hour of the day" : "after " + minutes + " min";
    }

    /** Whether the end came at some time later than the one stated. */
    boolean isLaterThanStated() {
        return minutes.startsWith(LATER_THAN);
    }

    private static String text() {
        try (InputStream in =
                Objects.requireNonNull(MeasuredRow.class.getResourceAsStream("measured.csv"), "measured.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
