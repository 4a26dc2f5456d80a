/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.testsupport.Csv;
import org.beveragethermal.testsupport.DocumentParts;

/** The tables of the document about surroundings. */
final class Report {

    private static final Set<String> BOTH_WAYS = Set.of("M071", "M072");
    private static final List<Double> INSIDE_FACTORS = List.of(0.7, 1.0, 1.3);
    private static final String NONE = "**none yet**";
    private static final double MINUTES_PER_HOUR = 60;
    /** Below this tenths of a minute are told [min]. */
    private static final double TENTHS = 19.95;
    /** From here on times are told in hours [min]. */
    private static final double LONG = 119.5;

    private Report() {}

    static void leave(List<Outcome> outcomes, List<Standing> standings, long seed) {
        DocumentParts.leaveTable(
                "surroundings-times",
                List.of(
                        "Setting",
                        "From → to",
                        "Median",
                        number("%.0f", 100 * Outcome.PROBABILITY) + " % interval",
                        "Upper ÷ lower",
                        "What resists, half-way",
                        "Laws of the largest, and their ranges",
                        "Ice melted"),
                outcomes.stream().map(Report::row).toList());
        DocumentParts.leaveTable(
                "surroundings-sampling",
                List.of("Bottle", "Interval", "Draws per row in air", "In baths and ice", "Seed", "Drawn"),
                List.of(List.of(
                        Case.described(),
                        number("%.0f", 100 * Outcome.PROBABILITY) + " %",
                        Integer.toString(Case.Looking.AIR.draws()),
                        Integer.toString(Case.Looking.BATH.draws()),
                        Long.toString(seed),
                        Doubts.all().stream().map(input -> input.name()).collect(Collectors.joining(", ")))));
        DocumentParts.leaveTable(
                "surroundings-laws",
                List.of("Law", "Source", "Range", "Spread (one standard deviation)"),
                laws(outcomes, standings));
        DocumentParts.leaveTable(
                "surroundings-standing",
                List.of(
                        "Surroundings",
                        "Laws outside",
                        "Uncertainty: drawn",
                        "Outside check",
                        "Limiting case",
                        "Bad input",
                        "Row above"),
                standings.stream().map(s -> standing(s, outcomes)).toList());
        DocumentParts.leaveTable(
                "surroundings-ice-alone-reported",
                List.of("Row", "Vessel", "Put into", "From", "To", "After", "Class", "Cited as"),
                reported());
        DocumentParts.leaveTable(
                "surroundings-missing",
                List.of("Cells", "Filled", "None yet"),
                List.of(List.of(
                        Long.toString(6L * standings.size()),
                        Long.toString(6L * standings.size() - missing(standings)),
                        Long.toString(missing(standings)))));
    }

    /** The only report that has both, ice without and with water, from one temperature to one. */
    private static List<List<String>> reported() {
        return Csv.parse(measured()).stream()
                .filter(row -> BOTH_WAYS.contains(row.get(0)))
                .map(row -> List.of(
                        row.get(0),
                        row.get(1) + " " + row.get(2) + " mL, " + row.get(3),
                        row.get(4),
                        row.get(6) + " °C",
                        row.get(7) + " °C",
                        row.get(8) + " min",
                        row.get(10),
                        row.get(11)))
                .toList();
    }

    private static String measured() {
        try (InputStream in = Objects.requireNonNull(
                Report.class.getResourceAsStream("/org/beveragethermal/measured/measured.csv"), "measured.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> row(Outcome outcome) {
        Case row = outcome.row();
        Outcome.Share most = outcome.shares().get(0);
        return List.of(
                row.words(),
                number("%.0f", row.task().startC()) + " → "
                        + number("%.0f", row.task().targetC()) + " °C",
                Double.isInfinite(outcome.median()) ? never(outcome) : time(outcome.median(), isLong(outcome)),
                Double.isInfinite(outcome.low())
                        ? "never"
                        : time(outcome.low(), isLong(outcome)) + " to "
                                + (Double.isInfinite(outcome.high())
                                        ? "never (" + number("%.0f", 100 * outcome.neverPart()) + " % of the draws)"
                                        : time(outcome.high(), isLong(outcome))),
                Double.isInfinite(outcome.high()) ? "no end" : number("%.2f", outcome.high() / outcome.low()),
                outcome.shares().stream()
                        .map(share -> share.name() + " " + number("%.0f", 100 * share.part()) + " %")
                        .collect(Collectors.joining(", ")),
                most.laws().isEmpty()
                        ? "conduction in the wall"
                        : most.laws().stream().map(Report::lawWithRange).collect(Collectors.joining("; ")),
                outcome.iceMeltedKg().isPresent()
                        ? number("%.2f", outcome.iceMeltedKg().getAsDouble()) + " kg"
                        : "");
    }

    /** A bath that warms up again has been closer than it ends; what levels off has not. */
    private static String never(Outcome outcome) {
        double hours = outcome.row().looking().horizon().toMinutes() / MINUTES_PER_HOUR;
        String text =
                "never within " + number("%.0f", hours) + " h (closest " + number("%.1f", outcome.closestC()) + " °C";
        return Math.abs(outcome.closestC() - outcome.atEndC()) < 0.05
                ? text + ")"
                : text + ", then " + number("%.1f", outcome.atEndC()) + " °C)";
    }

    /** Whether the times of a row are told in hours, all in one unit. */
    private static boolean isLong(Outcome outcome) {
        return (Double.isInfinite(outcome.high()) ? outcome.low() : outcome.high()) >= LONG;
    }

    static String time(double minutes) {
        return time(minutes, minutes >= LONG);
    }

    private static String time(double minutes, boolean inHours) {
        if (Double.isInfinite(minutes)) {
            return "never";
        }
        if (inHours) {
            return number("%.1f", minutes / MINUTES_PER_HOUR) + " h";
        }
        return number(minutes < TENTHS ? "%.1f" : "%.0f", minutes) + " min";
    }

    /** What a factor on the film inside does to one setting in air and one in water, both with nothing else drawn. */
    static void leaveInsideFilm(List<Case> settings) {
        List<List<String>> rows = new ArrayList<>();
        for (Case setting : settings) {
            List<String> row = new ArrayList<>(List.of(setting.words()));
            for (double factor : INSIDE_FACTORS) {
                row.add(time(Outcome.minutes(setting, Map.of(Multipliers.INSIDE_FILM, factor))));
            }
            rows.add(row);
        }
        List<String> head = new ArrayList<>(List.of("Factor on the film inside"));
        INSIDE_FACTORS.forEach(factor -> head.add(number("%.1f", factor)));
        DocumentParts.leaveTable("surroundings-inside-film", head, rows);
    }

    private static List<List<String>> laws(List<Outcome> outcomes, List<Standing> standings) {
        Set<String> used = new LinkedHashSet<>();
        outcomes.forEach(outcome -> outcome.shares().forEach(share -> used.addAll(share.laws())));
        standings.forEach(standing -> used.addAll(standing.laws()));
        return Laws.all()
                .filter(law -> used.contains(law.name()))
                .map(law -> List.of(law.name(), law.source(), law.range(), law.spread()))
                .toList();
    }

    private static List<String> standing(Standing standing, List<Outcome> outcomes) {
        List<String> rows = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            if (standing.rows().contains(outcome.row().id())) {
                rows.add(outcome.row().words());
            }
        }
        return List.of(
                standing.kind().getSimpleName() + ", " + standing.what(),
                orNone(standing.laws().stream().map(Report::lawWithRange)),
                orNone(standing.doubts().stream()),
                orNone(standing.outside().stream()
                        .map(check -> shortName(check.test()) + " (" + sourceName(check) + ")")),
                orNone(standing.limits().stream().map(Report::shortName)),
                orNone(standing.refusals().stream().map(Report::shortName)),
                orNone(rows.stream()));
    }

    private static String lawWithRange(String name) {
        return Laws.named(name)
                .map(law -> law.name() + " [" + law.range() + "]")
                .orElse(name);
    }

    private static String sourceName(Standing.Check check) {
        return check.source().startsWith("commonPractice") ? "common practice, no source" : check.source();
    }

    private static String shortName(String test) {
        return "`" + test.substring(test.lastIndexOf('.') + 1) + "`";
    }

    private static String orNone(Stream<String> cell) {
        String text = cell.collect(Collectors.joining("; "));
        return text.isEmpty() ? NONE : text;
    }

    static long missing(List<Standing> standings) {
        return standings.stream()
                .flatMap(s -> Stream.of(s.laws(), s.doubts(), s.outside(), s.limits(), s.refusals(), s.rows()))
                .filter(List::isEmpty)
                .count();
    }

    private static String number(String format, double value) {
        String text = String.format(Locale.ROOT, format, value);
        return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    }
}
