/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Every fixture is of our own invention (README.md beside them); expected values follow from its text by hand. */
class DialectsTest {
    private static final LogFormat VIENNA =
            LogFormat.builder().zone(ZoneId.of("Europe/Vienna")).build();
    private static final LogFormat UTC =
            LogFormat.builder().zone(ZoneOffset.UTC).build();

    static ReadLog read(String fixture, LogFormat format) throws IOException {
        try (InputStream bytes = Objects.requireNonNull(DialectsTest.class.getResourceAsStream(fixture), fixture)) {
            ReadLog read = LogReader.read(bytes, format);
            LogReport report = read.report();
            assertThat(report.keptReadings() + report.rejectedReadings()).isEqualTo(report.readings());
            assertThat(report.readings())
                    .isEqualTo((report.rows() - report.rejectedRows())
                            * report.sensorColumns().size());
            return read;
        }
    }

    private static double[] celsius(SensorSeries series) {
        return Arrays.stream(series.temperaturesK())
                .map(kelvin -> Math.round((kelvin - 273.15) * 1e6) / 1e6)
                .toArray();
    }

    private static void assertTimes(SensorSeries series, double... expected) {
        assertThat(series.elapsedS()).containsExactly(expected);
    }

    private static Instant start(ReadLog read) {
        return read.log().start().orElseThrow();
    }

    @Test
    void semicolonDecimalComma() throws IOException {
        ReadLog read = read("semicolon-decimal-comma.csv", LogFormat.inferred());
        assertThat(read.report().separator()).isEqualTo(';');
        assertThat(read.report().decimalMark()).isEqualTo(',');
        assertThat(read.report().zone()).contains(ZoneId.of("Europe/Vienna"));
        assertThat(read.report().dateOrder()).contains(DateOrder.DAY_FIRST);
        assertThat(read.report().linesBefore()).isEqualTo(5);
        assertThat(start(read)).isEqualTo("2024-03-29T21:00:00Z");
        assertThat(read.log().sensors()).containsExactly("Fühler innen", "Fühler außen");
        assertThat(celsius(read.log().series("Fühler innen"))).containsExactly(12.4, 12.5, 12.5, 12.6);
        assertThat(celsius(read.log().series("Fühler außen"))).containsExactly(13.1, 13.0, 12.8);
        assertTimes(read.log().series("Fühler außen"), 0, 600, 1800);
        assertThat(read.report().rejected())
                .containsExactly(new Rejected(
                        8,
                        "Fühler außen",
                        "29.03.2024 22:20:00;12,5;--;3,01",
                        Rejected.Reason.MISSING,
                        "\"--\" stands for a missing value"));
    }

    @Test
    void isoOffset() throws IOException {
        ReadLog read = read("iso-offset.csv", LogFormat.inferred());
        assertThat(read.report().timeForm()).isEqualTo(TimeForm.STAMP_WITH_OFFSET);
        assertThat(start(read)).isEqualTo("2024-06-01T08:00:00Z");
        assertThat(read.log().only().sensor()).isEqualTo("probe");
        assertTimes(read.log().only(), 0, 60, 120, 180.5);
        assertThat(celsius(read.log().only())).containsExactly(8.25, 8.5, 8.75, 9);
        SensorFigures figures = read.report().figures().get(0);
        assertThat(figures.incrementK()).hasValue(0.25);
        assertThat(figures.intervalS()).hasValue(60);
    }

    @Test
    void monthFirstAmPm() throws IOException {
        ReadLog read = read("month-first-am-pm.csv", LogFormat.inferred());
        assertThat(read.report().dateOrder()).contains(DateOrder.MONTH_FIRST);
        assertThat(start(read)).isEqualTo("2024-03-15T05:58:00Z");
        assertTimes(read.log().series("Room"), 0, 60, 120, 180);
        assertThat(read.log().only().temperatureK(0)).isCloseTo(293.15, within(1e-9));
        assertThat(read.report().figures().get(0).incrementK().orElseThrow()).isCloseTo(0.1 * 5 / 9, within(1e-12));
    }

    @Test
    void tabElapsedMinutes() throws IOException {
        ReadLog read = read("tab-elapsed-minutes.tsv", LogFormat.inferred());
        assertThat(read.report().separator()).isEqualTo('\t');
        assertThat(read.log().start()).isEmpty();
        assertThat(read.log().sensors()).containsExactly("T1", "T2");
        assertTimes(read.log().series("T1"), 0, 30, 60, 90);
        assertThat(celsius(read.log().series("T2"))).containsExactly(4.1, 4.0, 4.1);
        assertThat(read.report().linesBefore()).isEqualTo(2);
    }

    @Test
    void longFormPipe() throws IOException {
        ReadLog read = read("long-form-pipe.txt", LogFormat.inferred());
        assertThat(read.report().nameColumn()).contains("sensor");
        assertThat(read.report().timeForm()).isEqualTo(TimeForm.UNIX_SECONDS);
        assertThat(start(read)).isEqualTo("2024-03-31T16:00:00Z");
        assertThat(celsius(read.log().series("neck"))).containsExactly(14.5, 14);
        assertThat(celsius(read.log().series("base"))).containsExactly(12, 12.5, 13);
        assertTimes(read.log().series("base"), 0, 60, 120);
    }

    @Test
    void unixMilliseconds() throws IOException {
        ReadLog read = read("unix-milliseconds.csv", LogFormat.inferred());
        assertThat(read.report().timeForm()).isEqualTo(TimeForm.UNIX_MILLISECONDS);
        assertThat(start(read)).isEqualTo("2024-03-31T16:00:00Z");
        assertTimes(read.log().series("bath"), 0, 0.25, 0.5);
        assertThat(read.log().only().temperaturesK()).containsExactly(280.15, 280.05, 279.95);
    }

    @Test
    void serial1900() throws IOException {
        ReadLog read = read("serial-1900.csv", UTC);
        assertThat(read.report().timeForm()).isEqualTo(TimeForm.SERIAL_1900);
        assertThat(start(read)).isEqualTo("2024-03-01T10:15:00Z");
        assertTimes(read.log().only(), 0, 300, 600);
    }

    @Test
    void serial1904() throws IOException {
        LogFormat known = LogFormat.builder()
                .zone(ZoneOffset.UTC)
                .timeForm(TimeForm.SERIAL_1904)
                .build();
        assertThat(start(read("serial-1904.csv", known))).isEqualTo("2024-03-01T10:15:00Z");
    }

    @Test
    void twelveHourClock() throws IOException {
        ReadLog read = read("twelve-hour-clock.csv", LogFormat.inferred());
        assertThat(read.report().timeForm()).isEqualTo(TimeForm.TWELVE_HOUR_TIME);
        assertThat(read.log().start()).isEmpty();
        assertTimes(read.log().only(), 0, 600, 1200, 1800, 4740, 4800, 44340, 44400);
    }

    @Test
    void amPmWithoutDate() throws IOException {
        ReadLog read = read("am-pm-without-date.csv", LogFormat.inferred());
        assertThat(read.report().timeForm()).isEqualTo(TimeForm.TIME_OF_DAY);
        assertTimes(read.log().only(), 0, 3600, 12 * 3600, 13 * 3600, 14 * 3600);
        LogFormat dated = LogFormat.builder()
                .zone(ZoneId.of("Europe/Vienna"))
                .startDate(LocalDate.of(2024, 5, 1))
                .build();
        ReadLog withDay = read("am-pm-without-date.csv", dated);
        assertThat(withDay.log().only().instant(4)).contains(Instant.parse("2024-05-01T23:30:00Z"));
    }

    @Test
    void elapsedClockMissingMarks() throws IOException {
        ReadLog read = read("elapsed-clock-missing-marks.csv", LogFormat.inferred());
        assertThat(read.report().timeForm()).isEqualTo(TimeForm.ELAPSED_HOURS_MINUTES);
        assertTimes(read.log().only(), 60, 240, 420, 94_500);
        assertThat(celsius(read.log().only())).containsExactly(22.5, 21.5, 20.5, 20);
        assertThat(read.report().comments().toArray()).containsExactly(6);
        assertThat(read.report().rejectedLines(Rejected.Reason.POWER_ON).toArray())
                .containsExactly(4);
        assertThat(read.report().rejectedLines(Rejected.Reason.MISSING).toArray())
                .containsExactly(7, 8, 10);
        assertThat(read.report().rejectedLines(Rejected.Reason.VALUE_UNREADABLE).toArray())
                .containsExactly(11);
        assertThat(read.report().figures().get(0).gaps()).containsExactly(new SensorFigures.Gap(420, 94_500));
    }

    @Test
    void utf16Tab() throws IOException {
        ReadLog read = read("utf16-tab.txt", VIENNA);
        assertThat(read.report().charset()).contains(StandardCharsets.UTF_16LE);
        assertThat(start(read)).isEqualTo("2024-01-05T06:00:00Z");
        assertThat(celsius(read.log().series("Fühler"))).containsExactly(-1.5, -2);
    }

    @Test
    void latin1() throws IOException {
        ReadLog read = read("latin1.csv", VIENNA);
        assertThat(read.report().charset()).contains(StandardCharsets.ISO_8859_1);
        assertThat(celsius(read.log().series("Kühlraum"))).containsExactly(4.5, 4.6);
    }

    @Test
    void quotedThousands() throws IOException {
        ReadLog read = read("quoted-thousands.csv", LogFormat.inferred());
        assertThat(read.report().separator()).isEqualTo(',');
        assertThat(read.report().decimalMark()).isEqualTo(',');
        assertTimes(read.log().series("inside, top"), 998.5, 1000.5, 1002.5, 12_345);
        assertThat(celsius(read.log().only())).containsExactly(1.25, 1.5, 1.75, 2);
    }

    @Test
    void clockPutBack() throws IOException {
        ReadLog read = read("clock-put-back.csv", VIENNA);
        assertThat(start(read)).isEqualTo("2023-10-29T00:30:00Z");
        assertTimes(read.log().only(), 0, 900, 1800, 2700, 3600, 5400);
        assertThat(read.report().inOverlap().toArray()).containsExactly(2, 3, 4, 5, 6);
        assertThat(read.report().outOfOrder().count()).isZero();
    }

    @Test
    void clockPutForward() throws IOException {
        ReadLog read = read("clock-put-forward.csv", VIENNA);
        assertTimes(read.log().only(), 0, 1800, 2700);
        assertThat(read.report().movedOverGap().toArray()).containsExactly(3);
    }

    @Test
    void lastRowCut() throws IOException {
        ReadLog read = read("last-row-cut.csv", LogFormat.inferred());
        assertThat(celsius(read.log().only())).containsExactly(20.25, 20.15, 20.05);
        assertThat(read.report().rejectedLines(Rejected.Reason.TRUNCATED).toArray())
                .containsExactly(5);
    }

    @Test
    void dateAndClockApart() throws IOException {
        ReadLog read = read("date-and-clock-apart.csv", UTC);
        assertThat(read.report().timeColumns()).containsExactly("Date", "Time");
        assertThat(read.report().sensorColumns()).containsExactly("Glass (K)");
        assertTimes(read.log().series("Glass"), 0, 300, 600);
        assertThat(read.log().only().temperaturesK()).containsExactly(281.15, 281.25, 281.45);
        assertThat(read.report().rejectedLines(Rejected.Reason.DUPLICATE).toArray())
                .containsExactly(4);
        assertThat(read.report().rejectedLines(Rejected.Reason.NO_SUCH_TIME).toArray())
                .containsExactly(5);
    }

    @Test
    void newestFirst() throws IOException {
        ReadLog read = read("newest-first.csv", LogFormat.inferred());
        assertThat(start(read)).isEqualTo("2024-05-01T12:00:00Z");
        assertThat(celsius(read.log().only())).containsExactly(19, 20, 21);
        assertThat(read.report().outOfOrder().count()).isZero();
        assertThat(read.report().notes())
                .contains(new LogNote(LogNote.Kind.ASSUMED, "temperatures are in °C: no unit is stated"));
    }
}
