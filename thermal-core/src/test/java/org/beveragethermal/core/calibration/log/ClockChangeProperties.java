/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Reference: java.time with the rules of the IANA time zone database. */
class ClockChangeProperties {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    @Provide
    Arbitrary<ZoneId> zones() {
        return Arbitraries.of(
                        "Europe/Vienna",
                        "Europe/Dublin",
                        "America/New_York",
                        "America/St_Johns",
                        "America/Sao_Paulo",
                        "Africa/Casablanca",
                        "Australia/Lord_Howe",
                        "Antarctica/Troll",
                        "Asia/Tehran",
                        "Pacific/Apia",
                        "Pacific/Auckland")
                .map(ZoneId::of);
    }

    private static ZoneOffsetTransition change(ZoneId zone, int year) {
        Instant from = LocalDateTime.of(year, 1, 1, 0, 0).toInstant(ZoneOffset.UTC);
        return Objects.requireNonNullElseGet(
                zone.getRules().nextTransition(from),
                () -> Objects.requireNonNull(zone.getRules().previousTransition(from)));
    }

    private static List<Instant> read(String text, ZoneId zone) throws IOException {
        SensorSeries series = LogReader.read(
                        new StringReader(text), LogFormat.builder().zone(zone).build())
                .log()
                .only();
        List<Instant> instants = new ArrayList<>();
        for (int i = 0; i < series.size(); i++) {
            instants.add(series.instant(i).orElseThrow());
        }
        return instants;
    }

    @Property(seed = "2026112601")
    @Label("a log of local times across a change of clocks gives back its instants, whichever end comes first")
    void acrossChange(
            @ForAll("zones") ZoneId zone,
            @ForAll @IntRange(min = 1990, max = 2024) int year,
            @ForAll @IntRange(min = 1, max = 30) int stepMinutes,
            @ForAll @IntRange(min = 31, max = 600) int minutesBefore,
            @ForAll boolean newestFirst)
            throws IOException {
        ZoneOffsetTransition change = change(zone, year);
        Instant start = change.getInstant().minus(change.getDuration().abs()).minus(Duration.ofMinutes(minutesBefore));
        Duration length = change.getDuration().abs().multipliedBy(2).plusMinutes(minutesBefore + 300);
        List<Instant> expected = new ArrayList<>();
        for (Instant at = start; at.isBefore(start.plus(length)); at = at.plus(Duration.ofMinutes(stepMinutes))) {
            expected.add(at);
        }
        StringBuilder text = new StringBuilder("time,t °C\n");
        for (int i = 0; i < expected.size(); i++) {
            Instant at = expected.get(newestFirst ? expected.size() - 1 - i : i);
            text.append(STAMP.format(at.atZone(zone)))
                    .append(",12.")
                    .append(i % 10)
                    .append('\n');
        }
        assertThat(read(text.toString(), zone)).isEqualTo(expected);
    }

    @Property(seed = "2026112602")
    @Label("a local time that never was is moved as java.time moves it")
    void inGap(
            @ForAll("zones") ZoneId zone,
            @ForAll @IntRange(min = 1990, max = 2024) int year,
            @ForAll @IntRange(min = 0, max = 999) int permille)
            throws IOException {
        ZoneOffsetTransition change = change(zone, year);
        ZoneOffsetTransition gap = change.isGap()
                ? change
                : Objects.requireNonNullElse(zone.getRules().nextTransition(change.getInstant()), change);
        if (!gap.isGap()) {
            return;
        }
        LocalDateTime local =
                gap.getDateTimeBefore().plusSeconds(gap.getDuration().toSeconds() * permille / 1000);
        String text = "time,t °C\n" + STAMP.format(local.minusDays(3)) + ",12.0\n" + STAMP.format(local) + ",12.5\n";
        assertThat(read(text, zone).get(1)).isEqualTo(local.atZone(zone).toInstant());
    }
}
