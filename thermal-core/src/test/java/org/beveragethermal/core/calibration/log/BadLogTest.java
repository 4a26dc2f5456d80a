/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated
class BadLogTest {

    private static ReadLog read(String text) throws IOException {
        return LogReader.read(new StringReader(text), LogFormat.inferred());
    }

    private static UnclearLogException refusal(String text) {
        return catchThrowableOfType(UnclearLogException.class, () -> read(text));
    }

    private static void assertAsked(String text, UnclearLogException.Question question, String... choices) {
        UnclearLogException asked = refusal(text);
        assertThat(asked.question()).isEqualTo(question);
        assertThat(asked.choices()).containsAll(java.util.List.of(choices));
    }

    @Test
    void asksForTheOrderOfDates() {
        assertAsked(
                "time,t °C\n03/04/2024 10:00,5\n03/04/2024 10:10,5\n",
                UnclearLogException.Question.DATE_ORDER,
                "dateOrder(DAY_FIRST)",
                "dateOrder(MONTH_FIRST)");
        assertThat(refusal("time,t °C\n13/04/2024 10:00,5\n03/14/2024 10:10,5\n"))
                .hasMessageContaining("line 2 can only be day first, line 3 only month first");
    }

    @Test
    void daysThatFollowOneAnotherTellTheirOrder() throws IOException {
        StringBuilder text = new StringBuilder("time (UTC),t °C\n");
        for (int day = 1; day <= 12; day++) {
            text.append(String.format(Locale.ROOT, "04/%02d/2024 10:00,5.%d%n", day, day % 10));
        }
        assertThat(read(text.toString()).report().dateOrder()).contains(DateOrder.MONTH_FIRST);
    }

    @Test
    void asksForTheZone() {
        assertAsked("time,t °C\n2024-04-03 10:00,5\n", UnclearLogException.Question.ZONE);
    }

    @Test
    void asksWhatNumbersCount() {
        assertAsked("0,5.0\n1,5.1\n2,5.2\n", UnclearLogException.Question.TIME_FORM, "timeForm(ELAPSED_SECONDS)");
        assertAsked(
                "time,t °C\n0:00,5\n0:30,6\n",
                UnclearLogException.Question.TIME_FORM,
                "timeForm(ELAPSED_MINUTES_SECONDS)");
    }

    @Test
    void asksForTheUnit() {
        assertAsked("s,t\n0,68.0\n60,67.1\n", UnclearLogException.Question.TEMPERATURE_UNIT, "unit(FAHRENHEIT)");
        assertThat(refusal("s,t °C\n0,280.1\n60,281.2\n").getMessage()).contains("would be ordinary as K");
    }

    @Test
    void unitsMayStandInAColumn() throws IOException {
        ReadLog read = read("unix,device,reading,unit\n1711900800,a,41.0,F\n1711900860,b,40.1,F\n");
        assertThat(read.report().figures().get(1).unit()).isEqualTo(TemperatureUnit.FAHRENHEIT);
        assertThat(read.log().sensors()).containsExactly("a", "b");
        assertAsked(
                "unix,device,reading,unit\n1711900800,a,41.0,F\n1711900860,b,5.1,C\n",
                UnclearLogException.Question.TEMPERATURE_UNIT);
    }

    @Test
    void doubtsFahrenheitTakenForCelsius() throws IOException {
        ReadLog read = read("s,t °C\n0,68.0\n60,67.1\n");
        assertThat(read.log().only().size()).isEqualTo(2);
        assertThat(read.report().notes()).anySatisfy(note -> {
            assertThat(note.kind()).isEqualTo(LogNote.Kind.SUGGESTED);
            assertThat(note.text()).contains("ordinary as °F").contains("unit(FAHRENHEIT)");
        });
    }

    @Test
    void seesCommasThatAreBoth() {
        assertAsked("s,t °C\n0,68,5\n60,67,1\n", UnclearLogException.Question.DECIMAL_MARK);
    }

    @Test
    void nothingThere() {
        assertAsked("", UnclearLogException.Question.ROWS);
        assertAsked("no log at all\n", UnclearLogException.Question.ROWS);
        assertAsked("\ufeff", UnclearLogException.Question.ROWS);
    }

    @Test
    void quoteWithoutEnd() {
        String text = "s,t °C\n" + "1,5.0\n".repeat(20_000) + "2,\"5.0\n" + "3,5.0\n".repeat(300_000);
        assertAsked(text, UnclearLogException.Question.QUOTES);
        assertThat(refusal(text)).hasMessageContaining("after line 20001");
    }

    @Test
    void timesThatGoBackAreSortedAndNamed() throws IOException {
        ReadLog read = read("s,t °C\n0,5.0\n120,5.2\n60,5.1\n180,5.3\n");
        assertThat(read.log().only().elapsedS()).containsExactly(0, 60, 120, 180);
        assertThat(read.report().outOfOrder().toArray()).containsExactly(4);
    }

    @Test
    void timesThatStartAgainAreNamed() throws IOException {
        ReadLog read = read("s,t °C\n0,5.0\n60,5.2\n120,5.1\n180,5.3\n0,9.0\n61,9.1\n121,9.2\n");
        assertThat(read.report().notes())
                .anySatisfy(note -> assertThat(note.text()).contains("start again at line 6"));
        assertThat(read.report().rejectedLines(Rejected.Reason.DUPLICATE).toArray())
                .containsExactly(6);
    }

    @Test
    void constantAndShortLogs() throws IOException {
        ReadLog constant = read("s,t °C\n0,5.0\n60,5.0\n120,5.0\n");
        assertThat(constant.report().figures().get(0).incrementK()).isEmpty();
        ReadLog single = read("s,t °C\n0,5.0\n");
        assertThat(single.log().only().size()).isEqualTo(1);
        assertThat(single.report().figures().get(0).intervalS()).isEmpty();
    }

    @Test
    void hot85IsKeptWhereItIsApproached() throws IOException {
        ReadLog read = read("s,t °C\n0,80.0\n60,85.0\n120,88.0\n180,85.0\n240,20.0\n");
        assertThat(read.log().only().size()).isEqualTo(5);
        ReadLog jump = read("s,t °C\n0,20.0\n60,85.0\n120,85.0\n180,20.5\n");
        assertThat(jump.report().rejectedLines(Rejected.Reason.POWER_ON).toArray())
                .containsExactly(3, 4);
    }

    @Test
    void duplicatesByRule() throws IOException {
        String text = "s,t °C\n0,5.0\n0,6.0\n60,7.0\n";
        assertThat(read(text).log().only().temperatureK(0)).isEqualTo(278.15);
        assertThat(kept(text, Duplicates.KEEP_LAST)).isEqualTo(279.15);
        assertThat(kept(text, Duplicates.MEAN)).isEqualTo(278.65);
        assertThat(read(text).report().rejected())
                .containsExactly(new Rejected(
                        3, "t", "0,6.0", Rejected.Reason.DUPLICATE, "same time as line 2, which reads 5.0"));
    }

    private static double kept(String text, Duplicates rule) throws IOException {
        LogFormat format = LogFormat.builder().duplicates(rule).build();
        return LogReader.read(new StringReader(text), format).log().only().temperatureK(0);
    }

    @Test
    void manyRejectionsAreCountedAndTheirLinesKept() throws IOException {
        StringBuilder text = new StringBuilder("s,t °C\n");
        for (int i = 0; i < 30_000; i++) {
            text.append(i).append(i % 2 == 0 ? ",5.0\n" : ",OL\n");
        }
        LogReport report = read(text.toString()).report();
        assertThat(report.rejected()).hasSize(LogFormat.LISTED);
        assertThat(report.rejectedCount()).isEqualTo(15_000);
        long[] lines = report.rejectedLines(Rejected.Reason.MISSING).toArray();
        assertThat(lines).hasSize(15_000).startsWith(3, 5, 7).endsWith(30_001);
    }

    @Test
    void columnsByName() throws IOException {
        LogFormat format = LogFormat.builder()
                .timeColumn("2")
                .sensorColumns("inner")
                .timeForm(TimeForm.ELAPSED_SECONDS)
                .build();
        ReadLog read = LogReader.read(new StringReader("a,b,inner,outer\n5,0,20.5,30\n5,60,20.4,30\n"), format);
        assertThat(read.log().sensors()).containsExactly("inner");
        LogFormat wrong = LogFormat.builder().sensorColumns("none").build();
        assertThatThrownBy(() -> LogReader.read(new StringReader("s,t\n0,5\n"), wrong))
                .isInstanceOf(UnclearLogException.class)
                .hasMessageContaining("no column \"none\"");
    }

    @Test
    void settingsAreChecked() {
        LogFormat.Builder builder = LogFormat.builder();
        assertThatThrownBy(() -> builder.separator('x')).hasMessageContaining("expected a comma, semicolon");
        assertThatThrownBy(() -> builder.decimalMark('x')).hasMessageContaining("point or a comma");
        assertThatThrownBy(() -> builder.plausibleK(-1, 300)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> builder.plausibleK(200, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.listed(-1)).hasMessageContaining("0 or more");
        assertThatThrownBy(() -> SensorPosition.inContents(1.5)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void logsAreValues(@TempDir Path directory) throws IOException {
        String text = "s,t °C\n0,5.0\n60,5.5\n";
        TemperatureLog log = read(text).log();
        Path file = Files.writeString(directory.resolve("log.csv"), text, StandardCharsets.UTF_8);
        assertThat(LogReader.read(file, LogFormat.inferred()).log())
                .isEqualTo(log)
                .hasSameHashCodeAs(log);
        assertThatThrownBy(() -> log.series("other")).hasMessageContaining("expected one of [t]");
        SensorPosition low = SensorPosition.inContents(0.1);
        assertThat(log.withPosition("t", low).only().position()).isEqualTo(low);
        log.only().temperaturesK()[0] = 0;
        assertThat(log.only().temperatureK(0)).isEqualTo(278.15);
        assertThat(TemperatureHistory.of(log.only().elapsedS(), log.only().temperaturesK())
                        .length())
                .hasSeconds(60);
        assertThatThrownBy(() -> log.only().elapsedS(2)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void failuresOfTheSourcePassThrough() {
        Reader broken = new Reader() {
            private int given;

            @Override
            public int read(char[] buffer, int from, int most) throws IOException {
                if (given > 200_000) {
                    throw new IOException("gone");
                }
                for (int i = 0; i < most; i++) {
                    buffer[from + i] = "1,5.0\n".charAt(given++ % 6);
                }
                return most;
            }

            @Override
            public void close() {}
        };
        assertThatThrownBy(() -> LogReader.read(broken, LogFormat.inferred()))
                .isInstanceOf(IOException.class)
                .hasMessage("gone");
    }

    /** Sets defaults of the whole JVM for a moment, which is safe as the build runs tests one after another. */
    @Test
    void locationOfTheMachineDoesNotMatter() throws IOException {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        byte[] text = "Datum;FÜHLER (°C)\n31.12.2024 23:00:00;12,5\n".getBytes(StandardCharsets.UTF_8);
        LogFormat format = WrittenLog.EVERYTHING_TOLD;
        ReadLog here = LogReader.read(new ByteArrayInputStream(text), format);
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            ReadLog there = LogReader.read(new ByteArrayInputStream(text), format);
            assertThat(there.log()).isEqualTo(here.log());
            assertThat(there.report()).hasToString(here.report().toString());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
