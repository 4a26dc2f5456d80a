/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;

class LogProperties {

    @Property(seed = "2026112603", tries = 200)
    @Label("a log that is written in any dialect is read back as it was")
    void roundTrip(@ForAll long seed) throws IOException {
        WrittenLog written = WrittenLog.random(new Random(seed));
        ReadLog read = LogReader.read(new ByteArrayInputStream(written.bytes()), written.format());
        assertThat(read.log().sensors()).isEqualTo(written.sensors());
        for (String sensor : written.sensors()) {
            SensorSeries series = read.log().series(sensor);
            assertThat(series.elapsedS())
                    .as(written.text())
                    .containsExactly(written.elapsedS().toArray(Double[]::new));
            assertThat(series.temperaturesK()).as(written.text()).isEqualTo(written.temperaturesK(sensor));
        }
        assertThat(read.log().start()).isEqualTo(written.start());
        assertThat(read.report().rejectedCount()).isZero();
        assertThat(read.report().separator()).isEqualTo(written.separator());
    }

    @Property(seed = "2026112604")
    @Label("rows in another order give the same log")
    void shuffled(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            rows.add(String.format(
                    java.util.Locale.ROOT, "2024-03-%02dT%02d:%02d:00Z;%.2f", 1 + i / 4, i % 24, i, 20 - 0.3 * i));
        }
        ReadLog sorted = read(rows);
        Collections.shuffle(rows, random);
        ReadLog shuffled = read(rows);
        assertThat(shuffled.log()).isEqualTo(sorted.log());
        assertThat(shuffled.report().figures()).isEqualTo(sorted.report().figures());
    }

    private static ReadLog read(List<String> rows) throws IOException {
        return LogReader.read(new StringReader("time;t °C\n" + String.join("\n", rows) + "\n"), LogFormat.inferred());
    }

    @Provide
    Arbitrary<String> logLike() {
        Arbitrary<String> piece = Arbitraries.of(
                "0",
                "1",
                "12",
                "2024",
                "85.0",
                "-127",
                "3,5",
                "1.234,5",
                "999",
                "12:30",
                "1:00 PM",
                "2024-03-31",
                "31/03/24",
                "03/04/2024",
                "2024-03-31T02:30:00",
                "+02:00",
                "Z",
                "[",
                "°C",
                "°F",
                "K",
                "time",
                "sensor",
                "OL",
                "--",
                "\"",
                "\"\"",
                "#",
                "//",
                ",",
                ",",
                ",",
                ";",
                ";",
                "\t",
                "|",
                "\n",
                "\n",
                "\n",
                "\r",
                "\r\n",
                " ",
                "\u00a0",
                "\ufeff",
                "−",
                "e9",
                "1e400",
                "99999999999999999999",
                "UTC",
                "Europe/Vienna",
                "%",
                "\0",
                "\ud83c",
                "ı",
                "İ",
                "Mar",
                "Friday,",
                "am",
                "s",
                "min");
        return piece.list().ofMinSize(0).ofMaxSize(120).map(pieces -> String.join("", pieces));
    }

    @Property(seed = "2026112605", tries = 1000)
    @Label("no text, however odd, does more than give a log or a question, and nothing of it is lost")
    void oddText(@ForAll("logLike") String text) throws IOException {
        for (LogFormat format : List.of(LogFormat.inferred(), WrittenLog.EVERYTHING_TOLD)) {
            try {
                check(LogReader.read(new StringReader(text), format));
            } catch (UnclearLogException question) {
                assertThat(question.getMessage()).isNotEmpty();
            }
        }
    }

    @Property(seed = "2026112606", tries = 200)
    @Label("no bytes, however odd, do more than give a log or a question")
    void oddBytes(@ForAll @Size(max = 400) byte[] bytes) throws IOException {
        try {
            check(LogReader.read(new ByteArrayInputStream(bytes), WrittenLog.EVERYTHING_TOLD));
        } catch (UnclearLogException question) {
            assertThat(question.question()).isNotNull();
        }
    }

    @Property(seed = "2026112607", tries = 200)
    @Label("a log with one character changed loses at most what stands in its lines' rejections")
    void oneCharacterChanged(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        WrittenLog written = WrittenLog.random(random);
        StringBuilder text = new StringBuilder(written.text());
        text.setCharAt(random.nextInt(text.length()), "0,;.:\"-x\n\t|".charAt(random.nextInt(11)));
        try {
            check(LogReader.read(new StringReader(text.toString()), written.format()));
        } catch (UnclearLogException question) {
            assertThat(question.getMessage()).isNotEmpty();
        }
    }

    private static void check(ReadLog read) {
        LogReport report = read.report();
        assertThat(report.keptReadings() + report.rejectedReadings()).isEqualTo(report.readings());
        assertThat(report.readings())
                .isEqualTo((report.rows() - report.rejectedRows())
                        * report.sensorColumns().size());
        assertThat(report.toString()).isNotEmpty();
        for (String sensor : read.log().sensors()) {
            SensorSeries series = read.log().series(sensor);
            for (int i = 0; i < series.size(); i++) {
                assertThat(series.temperatureK(i)).isBetween(LogFormat.COLDEST_K, LogFormat.HOTTEST_K);
                assertThat(series.elapsedS(i)).isFinite();
                assertThat(i == 0 || series.elapsedS(i) > series.elapsedS(i - 1))
                        .isTrue();
                series.instant(i);
            }
        }
    }
}
