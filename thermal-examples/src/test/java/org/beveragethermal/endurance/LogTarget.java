/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import static org.beveragethermal.materials.units.Measures.celsius;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.calibration.log.LogFormat;
import org.beveragethermal.core.calibration.log.LogReader;
import org.beveragethermal.core.calibration.log.ReadLog;
import org.beveragethermal.core.calibration.log.SensorSeries;
import org.beveragethermal.core.storage.Reading;
import org.beveragethermal.core.storage.StorageFigures;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.materials.units.Measures;

/** Logs in any dialect, with and without what is known beforehand, up to the figures of storage. */
final class LogTarget implements FuzzTarget {
    private static final LogFormat KNOWN = LogFormat.builder()
            .zone(ZoneOffset.UTC)
            .startDate(LocalDate.of(2027, 3, 1))
            .build();

    @Override
    public String toString() {
        return name();
    }

    @Override
    public String name() {
        return "logs";
    }

    @Override
    public List<byte[]> corpus() {
        return Corpus.files(
                "iso.csv",
                "semicolon.csv",
                "elapsed.csv",
                "two-heads.csv",
                "long-form.csv",
                "clock.csv",
                "unix.csv",
                "utf16.csv");
    }

    @Override
    public List<String> words() {
        return List.of(
                "°C",
                "°F",
                "K",
                "time",
                "temp",
                "Time zone: Europe/Vienna",
                "am",
                "12:60 PM",
                "24:00:00",
                "2027-02-30",
                "31/12/9999",
                "+999999999-01-01",
                "#",
                "//",
                ";",
                "|",
                "\t",
                "\"",
                "\"\"",
                "OL",
                "--",
                "-127",
                "85",
                "1.234,5",
                "1'000",
                "1E5",
                "UTC",
                "s",
                "min",
                "ms",
                "253402300799000",
                "60000",
                "Jan",
                "29 Feb 2027");
    }

    @Override
    public boolean accepts(byte[] input) {
        boolean inferred = accepts(input, LogFormat.inferred());
        return accepts(input, KNOWN) || inferred;
    }

    private static boolean accepts(byte[] input, LogFormat format) {
        try {
            ReadLog read = LogReader.read(new ByteArrayInputStream(input), format);
            if (read.report().toString().isBlank()) {
                throw new AssertionError("a report without words");
            }
            Documented.finiteThroughout("figures", read.report().figures());
            for (String sensor : read.log().sensors()) {
                look(read.log().series(sensor));
            }
            return true;
        } catch (IOException e) {
            throw new AssertionError("bytes in memory cannot fail", e);
        } catch (IllegalArgumentException e) {
            return Documented.refusal(e);
        }
    }

    private static void look(SensorSeries series) {
        Documented.finite("elapsed", series.elapsedS());
        Documented.finite("temperature", series.temperaturesK());
        try {
            look(TemperatureHistory.of(series.elapsedS(), series.temperaturesK()));
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < series.size(); i++) {
                double temperatureK = series.temperatureK(i);
                series.instant(i).ifPresent(at -> readings.add(new Reading(at, Measures.kelvins(temperatureK))));
            }
            if (!readings.isEmpty()) {
                look(TemperatureHistory.logged(readings));
            }
        } catch (IllegalArgumentException e) {
            // A history wants two readings, their times ascending, within some range: a refusal is an answer.
            Documented.refusal(e);
        }
    }

    private static void look(TemperatureHistory history) {
        Documented.finiteThroughout("storage", StorageFigures.of(history, celsius(8), celsius(18)));
        history.dailySwingsK().forEach(swing -> Documented.finite("daily swing", swing));
    }
}
