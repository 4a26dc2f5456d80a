/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Markdown tables made from check rows. */
final class AccuracyTables {
    private static final String NOTHING = "None so far.";

    private AccuracyTables() {}

    /** One line per source, in the order of their first ids: how many checks, how close the worst one, all passed? */
    static String bySource(List<CheckRow> rows) {
        Map<String, List<CheckRow>> sources = rows.stream()
                .collect(Collectors.groupingBy(
                        row -> row.source() + "\n" + row.kind(), TreeMap::new, Collectors.toList()));
        List<List<CheckRow>> groups = sources.values().stream()
                .sorted((a, b) -> a.get(0).id().compareTo(b.get(0).id()))
                .toList();
        return table(
                List.of("Source", "Kind", "Checks", "Worst deviation ÷ allowed", "All passed"),
                groups.stream().map(AccuracyTables::sourceLine).toList());
    }

    /** One line per check. */
    static String all(List<CheckRow> rows) {
        return table(
                List.of("Check", "Source says", "Found", "Deviation ÷ allowed", "Source", "Passed"),
                rows.stream()
                        .map(row -> List.of(
                                row.what(),
                                says(row),
                                withUnit(row.actual(), row.unit()),
                                fraction(row.deviation()),
                                row.source(),
                                yesOrNo(row.passed())))
                        .toList());
    }

    /** One line per check under its name: what is expected, what was found, how far off it is and may be. */
    static String cases(List<CheckRow> rows) {
        return table(
                List.of("Case", "What", "Expected", "Found", "Error", "Allowed", "Unit", "Error ÷ allowed", "Source"),
                rows.stream()
                        .map(row -> List.of(
                                row.id(),
                                row.what(),
                                row.expected().replace("..", " to "),
                                row.toAHundredthOfTheAllowed(new BigDecimal(row.actual())),
                                row.error(),
                                "± " + row.toAHundredthOfTheAllowed(row.allowed()),
                                row.unit(),
                                fraction(row.deviation()),
                                row.source()))
                        .toList());
    }

    /** One line per order observed. */
    static String orders(List<OrderRow> rows) {
        return table(
                List.of("Solver", "Error of", "In the", "Theory", "Observed", "Accepted", "Passed"),
                rows.stream()
                        .map(row -> List.of(
                                row.family(),
                                row.quantity(),
                                row.refined(),
                                row.theory(),
                                row.observed(),
                                row.lowest() + " to " + row.highest(),
                                yesOrNo(row.passed())))
                        .toList());
    }

    /** One line per property. */
    static String properties(List<PropertyRow> rows) {
        return table(
                List.of("Property", "Where", "Cases", "Held"),
                rows.stream()
                        .map(row -> List.of(
                                row.property(), row.where(), Integer.toString(row.cases()), yesOrNo(row.held())))
                        .toList());
    }

    /** One line per check that rests on a fact of the trade. */
    static String commonPractice(List<CheckRow> rows) {
        return table(
                List.of("Common practice", "Expected", "Predicted", "Passed"),
                rows.stream()
                        .filter(row -> row.kind().equals("common practice"))
                        .map(row -> List.of(
                                row.what(), says(row), withUnit(row.actual(), row.unit()), yesOrNo(row.passed())))
                        .toList());
    }

    /** One line per rule of thumb. */
    static String rulesOfThumb(List<RuleRow> rows) {
        return table(
                List.of("Rule of thumb", "Custom says", "The model says", "Note"),
                rows.stream()
                        .map(row -> List.of(
                                row.what(),
                                withUnit(row.customSays(), row.unit()),
                                withUnit(row.modelSays(), row.unit()),
                                row.note()))
                        .toList());
    }

    /** A table that a test has left whole, its first record the head. */
    static String asTheyAre(List<List<String>> records) {
        return table(records.get(0), records.subList(1, records.size()));
    }

    private static List<String> sourceLine(List<CheckRow> rows) {
        double worst = rows.stream().mapToDouble(CheckRow::deviation).max().orElse(0.0);
        return List.of(
                rows.get(0).source(),
                rows.get(0).kind(),
                Integer.toString(rows.size()),
                fraction(worst),
                yesOrNo(rows.stream().allMatch(CheckRow::passed)));
    }

    private static String says(CheckRow row) {
        if (row.isRange()) {
            return withUnit(row.expected().replace("..", " to "), row.unit());
        }
        return withUnit(row.expected() + " ± " + row.tolerance(), row.unit());
    }

    private static String withUnit(String figure, String unit) {
        return unit.equals("1") ? figure : figure + " " + unit;
    }

    private static String fraction(double deviation) {
        return String.format(Locale.ROOT, "%.2f", deviation);
    }

    private static String yesOrNo(boolean passed) {
        return passed ? "yes" : "**no**";
    }

    private static String table(List<String> header, List<List<String>> lines) {
        if (lines.isEmpty()) {
            return NOTHING;
        }
        String rule = header.stream().map(column -> "---").collect(Collectors.joining("|", "|", "|"));
        return Stream.concat(Stream.of(line(header), rule), lines.stream().map(AccuracyTables::line))
                .collect(Collectors.joining("\n"));
    }

    private static String line(List<String> cells) {
        return cells.stream()
                .map(cell -> cell.replace("|", "\\|").replaceAll("[\\r\\n]+", " "))
                .collect(Collectors.joining(" | ", "| ", " |"));
    }
}
