/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A thousand bottles from a file; what is wrong with them is known, because the readings are invented. */
class CellarLogTest {

    private static final CellarHouse HOUSE = CellarHouse.invented();
    private static final int BOTTLES = 1000;
    private static final long SEED = 5;
    private static final String HEAD = "at,bottle,temperature_celsius\n";

    /** What was heard of a file. */
    private static final class Heard implements CellarLog.Listener {
        private final Map<CellarAlert.Kind, Set<String>> bottles = new EnumMap<>(CellarAlert.Kind.class);
        private final List<CellarAlert> alerts = new ArrayList<>();
        private final List<CellarRow.Bad> leftOut = new ArrayList<>();

        @Override
        public void alert(CellarAlert alert) {
            alerts.add(alert);
            bottles.computeIfAbsent(alert.kind(), kind -> new TreeSet<>()).add(alert.bottle());
        }

        @Override
        public void leftOut(CellarRow.Bad row) {
            leftOut.add(row);
        }

        Set<String> bottles(CellarAlert.Kind kind) {
            return bottles.getOrDefault(kind, Set.of());
        }

        List<Long> lines() {
            return leftOut.stream().map(CellarRow.Bad::line).toList();
        }
    }

    private static CellarLog.Summary follow(String file, Heard heard) {
        try {
            return CellarLog.follow(new StringReader(file), HOUSE, heard);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String csv(int bottles, int hours) {
        return CellarReadings.csv(bottles, Duration.ofHours(hours), Duration.ofHours(1), SEED);
    }

    private static Set<String> bottles(int... numbers) {
        Set<String> names = new HashSet<>();
        for (int number : numbers) {
            names.add(CellarReadings.bottle(number));
        }
        return names;
    }

    @Test
    void ofAThousandBottlesOverThreeDaysThoseThatSomethingHappenedToAreNamedAndNoOthers() {
        Heard heard = new Heard();
        CellarLog.Summary summary = follow(csv(BOTTLES, 72), heard);

        Set<String> drifting =
                new HashSet<>(bottles(CellarReadings.TAKEN, CellarReadings.WANDERING, CellarReadings.CHILLED));
        for (int number = CellarReadings.DOOR; number <= BOTTLES; number += CellarReadings.DOOR) {
            drifting.add(CellarReadings.bottle(number));
        }
        assertThat(heard.bottles(CellarAlert.Kind.DRIFT)).isEqualTo(drifting);
        assertThat(heard.bottles(CellarAlert.Kind.FREEZING_RISK)).isEqualTo(bottles(CellarReadings.CHILLED));
        assertThat(heard.bottles(CellarAlert.Kind.SENSOR_SILENT))
                .isEqualTo(bottles(CellarReadings.SILENT, CellarReadings.FAULTY));
        assertThat(heard.bottles(CellarAlert.Kind.SENSOR_FAULTY)).isEqualTo(bottles(CellarReadings.FAULTY));
        assertThat(heard.bottles(CellarAlert.Kind.TOO_WARM))
                .containsAll(bottles(CellarReadings.TAKEN, CellarReadings.WANDERING))
                .isSubsetOf(drifting);
        assertThat(heard.bottles(CellarAlert.Kind.OTHER)).isEmpty();
        assertThat(summary.vessels()).hasSize(BOTTLES);
        assertThat(summary.rows()).isEqualTo(73L * BOTTLES - 62);
        assertThat(summary.leftOut()).isZero();
    }

    /**
     * By hand: in air of −9 °C a bottle of 11.6 °C with a time constant of 3.5 to 5 h is at 2 °C after 2.2 to 3.1 h, and 2 h later, with two
     * readings below that, at −2.6 °C or warmer; wine of 12.5 % freezes at some −4 to −6 °C.
     */
    @Test
    void theChilledBottleIsToldOfBeforeItsIce() {
        Heard heard = new Heard();
        follow(csv(CellarReadings.CHILLED, 30), heard);
        CellarAlert first = heard.alerts.stream()
                .filter(alert -> alert.kind() == CellarAlert.Kind.FREEZING_RISK)
                .findFirst()
                .orElseThrow();
        assertThat(Duration.between(CellarReadings.START, first.at()))
                .isBetween(Duration.ofHours(18), Duration.ofHours(21));
        assertThat(first.text()).startsWith("b10088 may freeze: its last two readings are below 2.0 °C");
    }

    @Test
    void badRowsAreReportedByLineAndNothingElseIsLost() {
        String good = csv(CellarReadings.TAKEN, 40);
        List<String> lines = new ArrayList<>(good.lines().toList());
        List<String> bad = List.of(
                "2027-01-11T05:00:00Z,b10001",
                "2027-01-11T05:00:00Z,b10001,12.1,°C",
                "2027-01-11T05:00:00Z,b10001,twelve",
                "2027-01-11T05:00:00Z,b10001,12,1",
                "2027-01-11T05:00:00Z,b10001,NaN",
                "2027-01-11 05:00,b10001,12.1",
                "1827-01-11T05:00:00Z,b10001,12.1",
                "2099-01-11T05:00:00Z,b10001,12.1",
                "2027-01-11T05:00:00Z,,12.1",
                "2027-01-11T05:00:00Z,\"b10001,12.1",
                "2027-01-11T05:00:00Z,b\u000010001,12.1",
                lines.get(3),
                "\uFFFD\uFFFD\u0007");
        List<Long> expected = new ArrayList<>();
        for (int i = 0; i < bad.size(); i++) {
            int at = 3 + 5 * i;
            lines.add(at, bad.get(i));
            expected.add(at + 1L);
        }

        Heard without = new Heard();
        CellarLog.Summary clean = follow(good, without);
        Heard with = new Heard();
        CellarLog.Summary dirty = follow(String.join("\r\n", lines), with);

        assertThat(with.lines()).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(with.alerts).isEqualTo(without.alerts).isNotEmpty();
        assertThat(dirty.vessels().stream().map(TrackedVessel::estimate))
                .containsExactlyElementsOf(
                        clean.vessels().stream().map(TrackedVessel::estimate).toList());
        assertThat(dirty.leftOut()).isEqualTo(bad.size());
        assertThat(dirty.rows()).isEqualTo(clean.rows() + bad.size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "2027-01-11T05:00:00Z,b1 ; fields 2: expected 3",
                "2027-01-11T05:00:00Z,b1,x ; temperature_celsius 'x': expected a number with a decimal point, or nothing",
                "yesterday,b1,12 ; at 'yesterday': expected a time in UTC such as 2027-01-11T06:00:00Z",
                "2227-01-11T05:00:00Z,b1,12 ; at '2227-01-11T05:00:00Z': expected a time of 2000 to 2099",
                "2027-01-11T05:00:00Z,-,12 ; bottle '-': expected 1 to 100 letters",
            })
    void aBadRowSaysWhatIsExpected(String row, String why) {
        Heard heard = new Heard();
        follow(HEAD + row + "\n2027-01-11T05:00:00Z,b2,12\n", heard);
        assertThat(heard.lines()).containsExactly(2L);
        assertThat(heard.leftOut.get(0).why()).startsWith(why);
    }

    @Test
    void wrongClocksAgeNobodyAndAGapOfDaysIsBelieved() {
        Heard heard = new Heard();
        CellarLog.Summary summary = follow(
                HEAD
                        + "2097-01-11T05:00:00Z,b1,12\n"
                        + "2027-01-11T05:00:00Z,b1,12\n"
                        + "2027-01-11T05:30:00Z,b2,12\n"
                        + "2077-01-11T05:00:00Z,b1,12\n"
                        + "2027-01-11T06:00:00Z,b1,12\n"
                        + "2027-01-20T06:00:00Z,b1,12\n"
                        + "2027-01-20T07:00:00Z,b1,12.1\n"
                        + "2057-01-20T07:00:00Z,b1,12.1\n",
                heard);
        assertThat(heard.lines()).containsExactly(2L, 5L, 9L);
        assertThat(summary.unusable()).isZero();
        assertThat(summary.vessels())
                .extracting(vessel -> vessel.now().toString())
                .containsExactly("2027-01-20T07:00:00Z", "2027-01-20T07:00:00Z");
        assertThat(heard.bottles(CellarAlert.Kind.SENSOR_SILENT)).containsExactly("b1", "b2");
    }

    @Test
    void aRowAloneIsBelieved() {
        Heard heard = new Heard();
        assertThat(follow(HEAD + "2027-01-11T05:00:00Z,b1,12\n", heard).vessels())
                .hasSize(1);
        assertThat(heard.leftOut).isEmpty();
    }

    @Test
    void alertsAreToldWhileTheFileIsStillBeingRead() {
        String file = csv(CellarReadings.TAKEN, 40);
        Heard heard = new Heard();
        Reader torn = new Reader() {
            private int next;

            @Override
            public int read(char[] buffer, int from, int length) throws IOException {
                if (next == file.length()) {
                    throw new IOException("the cable was pulled");
                }
                int n = Math.min(100, Math.min(length, file.length() - next));
                file.getChars(next, next + n, buffer, from);
                next += n;
                return n;
            }

            @Override
            public void close() {}
        };
        assertThatThrownBy(() -> CellarLog.follow(torn, HOUSE, heard)).hasStackTraceContaining("the cable was pulled");
        assertThat(heard.bottles(CellarAlert.Kind.DRIFT)).contains(CellarReadings.bottle(CellarReadings.TAKEN));
    }

    @Test
    void whatIsNoFileOfReadingsIsRefused() {
        Heard heard = new Heard();
        assertThatThrownBy(() -> follow("", heard)).hasMessage("head []: expected [at, bottle, temperature_celsius]");
        assertThatThrownBy(() -> follow("a,b\n1,2\n", heard))
                .hasMessage("head [a, b]: expected [at, bottle, temperature_celsius]");
        assertThatThrownBy(() -> follow(HEAD + "2027-01-11T05:00:00Z,b1,12\n" + "x".repeat(200_000), heard))
                .hasMessageContaining("after 2 rows one is longer than 65536 characters");
        assertThat(follow("\uFEFF" + HEAD, heard).rows()).isZero();
    }

    @Test
    void bottlesBeyondTheMostAreLeftOut() {
        StringBuilder file = new StringBuilder(HEAD);
        for (int i = 0; i <= CellarLog.MOST_BOTTLES; i++) {
            file.append("2027-01-11T05:00:00Z,b").append(i).append(",12\n");
        }
        Heard heard = new Heard();
        CellarLog.Summary summary = follow(file.toString(), heard);
        assertThat(summary.vessels()).hasSize(CellarLog.MOST_BOTTLES);
        assertThat(heard.leftOut)
                .singleElement()
                .satisfies(row -> assertThat(row.why()).contains("expected at most 10000"));
    }
}
