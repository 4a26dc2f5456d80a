/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.testsupport.Band;
import org.beveragethermal.testsupport.DocumentParts;

/** The tables of the document about measured runs. */
final class Report {

    private static final double LEAST_COVERAGE = 0.85;
    private static final double WIDEST_IN_AIR = 2.7;
    private static final double WIDEST_IN_ICE_WATER = 4;
    private static final double LARGEST_ERROR_SOUND = 0.22;
    private static final double LARGEST_ERROR = 0.35;

    private final List<MeasuredRow> rows;
    private final Map<String, String> notYet;
    private final Summary summary;
    private final List<Comparison> inUse;

    /** About the rows, those that are not run, all comparisons, and those in rooms and appliances in use. */
    Report(List<MeasuredRow> rows, Map<String, String> notYet, Summary summary, List<Comparison> inUse) {
        this.rows = rows;
        this.notYet = notYet;
        this.summary = summary;
        this.inUse = inUse;
    }

    void leave() {
        leaveComparisons("", summary, summary.comparisons());
        leaveComparisons("-in-use", summary.with(inUse), inUse);
        DocumentParts.leaveTable(
                "measured-by-class", List.of("Class", "Rows", "Run", "Inside", "Not yet run"), byClass());
        DocumentParts.leaveTable(
                "measured-not-yet", List.of("Not run, for want of", "Number", "Rows"), withoutSurroundings());
        DocumentParts.leaveTable(
                "measured-stirring",
                List.of("Row", "Measured", "Still: median", "90 % interval", "Stirred: median", "90 % interval"),
                alternatives(c -> Summary.isInIceWater(c) && divides(c, Setting.Alternatives.STIRRING)));
        DocumentParts.leaveTable(
                "measured-salt",
                List.of(
                        "Row",
                        "Measured",
                        "Mixed in: median",
                        "90 % interval",
                        "Without effect: median",
                        "90 % interval"),
                alternatives(c -> divides(c, Setting.Alternatives.SALT)));
        DocumentParts.leaveTable("measured-conditions", List.of("Drawn", "From"), conditions());
    }

    private static void leaveComparisons(String ending, Summary all, List<Comparison> shown) {
        DocumentParts.leaveTable(
                "measured-rows" + ending,
                List.of(
                        "Row",
                        "Run",
                        "Asked",
                        "Measured",
                        "Median",
                        "90 % interval",
                        "Upper ÷ lower",
                        "Inside",
                        "Class",
                        "Cited as"),
                shown.stream().map(Report::row).toList());
        DocumentParts.leaveTable(
                "measured-summary" + ending, List.of("Figure", "Found", "Asked for", "Rows", "Reached"), figures(all));
        DocumentParts.leaveTable(
                "measured-by-means" + ending,
                List.of("Means", "Rows", "Inside", "Slower than the median", "Median of upper ÷ lower"),
                byMeans(new Summary(shown)));
        DocumentParts.leaveTable("measured-coverage" + ending, Coverage.HEAD, Coverage.table(all, new Summary(shown)));
        DocumentParts.leaveDrawing("measured" + ending, Drawing.of(shown));
    }

    private static List<String> row(Comparison c) {
        MeasuredRow row = c.row();
        String what = row.vessel()
                + (row.volumeMl().isEmpty() ? "" : " " + row.volumeMl() + " mL")
                + (row.liquid().isEmpty() ? "" : ", " + row.liquid())
                + "; "
                + row.method();
        return List.of(
                row.id(),
                what,
                c.isTime() ? "time to " + row.endC() + " °C" : row.readWhen(),
                (row.isLaterThanStated() ? "> " : "") + value(c, c.measured()),
                value(c, c.predicted().median()),
                interval(c, c.predicted()),
                c.isAlwaysReached() ? ratio(c.ratio()) : "never at upper end",
                c.isInside() ? "yes" : "**no**",
                row.provenance(),
                row.citeAs());
    }

    private static String interval(Comparison c, Band band) {
        return value(c, band.low()) + " to " + value(c, band.high());
    }

    private static String value(Comparison c, double value) {
        if (!c.isTime()) {
            return number("%.1f", c.run().celsiusAtExcess(value)) + " °C (" + number("%.2f", value) + ")";
        }
        if (Double.isInfinite(value)) {
            return "never";
        }
        return number(value < 100 ? "%.1f" : "%.0f", value) + " min";
    }

    private static String ratio(double ratio) {
        return Double.isInfinite(ratio) ? "no end" : number("%.2f", ratio);
    }

    /** Zero has no sign in a table. */
    private static String number(String format, double value) {
        String text = String.format(Locale.ROOT, format, value);
        return text.matches("-0\\.0+") ? text.substring(1) : text;
    }

    private static List<List<String>> figures(Summary summary) {
        List<List<String>> figures = new ArrayList<>();
        Predicate<Comparison> any = c -> true;
        Predicate<Comparison> bounded = Comparison::isAlwaysReached;
        figures.add(coverage(summary, "inside the 90 % interval, all rows that are run", any));
        figures.add(coverage(summary, "inside, in air", Summary::isInAir));
        figures.add(coverage(summary, "inside, in ice and water", Summary::isInIceWater));
        figures.add(coverage(summary, "inside, in ice without water and in salted ice", Summary::isInOtherIce));
        figures.add(figure(
                "median of upper ÷ lower end, in air",
                summary.medianRatio(Summary::isInAir),
                WIDEST_IN_AIR,
                summary.count(bounded.and(Summary::isInAir))));
        figures.add(figure(
                "median of upper ÷ lower end, in ice and water",
                summary.medianRatio(Summary::isInIceWater),
                WIDEST_IN_ICE_WATER,
                summary.count(bounded.and(Summary::isInIceWater))));
        figures.add(error(summary, "of classes A and B in a medium of known temperature", Summary::isSoundTime, true));
        figures.add(error(summary, "of all rows about a time", Summary::saysWhen, true));
        figures.add(error(
                summary,
                "of classes A and B in a medium of known temperature, those that end at never included",
                Summary::isSoundTime,
                false));
        figures.add(
                error(summary, "of all rows about a time, those that end at never included", Summary::saysWhen, false));
        figures.add(plainError(summary, "in air, of all rows", Summary::isInAir));
        figures.add(plainError(summary, "in ice and water, of all rows", Summary::isInIceWater));
        return figures;
    }

    /** An error for which nothing is asked. */
    private static List<String> plainError(Summary summary, String name, Predicate<Comparison> which) {
        return List.of(
                "median of abs(ln(predicted/measured)), times or excesses, " + name,
                ratio(summary.medianLogarithmicError(which)),
                "",
                Long.toString(summary.count(which)),
                "");
    }

    private static List<String> coverage(Summary summary, String name, Predicate<Comparison> which) {
        double found = summary.coverage(which);
        return List.of(
                name,
                number("%.0f", 100 * found) + " %",
                "≥ " + number("%.0f", 100 * LEAST_COVERAGE) + " %",
                Long.toString(summary.count(which)),
                yesOrNo(found >= LEAST_COVERAGE));
    }

    private static List<String> error(Summary summary, String name, Predicate<Comparison> which, boolean boundedOnly) {
        Predicate<Comparison> counted = boundedOnly ? which.and(Comparison::isAlwaysReached) : which;
        double most = name.startsWith("of all") ? LARGEST_ERROR : LARGEST_ERROR_SOUND;
        return figure(
                "median of abs(ln(predicted/measured)) " + name,
                summary.medianLogarithmicError(counted),
                most,
                summary.count(counted));
    }

    private static List<String> figure(String name, double found, double most, long rows) {
        return List.of(name, ratio(found), "≤ " + number("%.2f", most), Long.toString(rows), yesOrNo(found <= most));
    }

    private static List<List<String>> byMeans(Summary summary) {
        List<List<String>> table = new ArrayList<>();
        for (Setting.Means means : Setting.Means.values()) {
            Predicate<Comparison> here = c -> c.run().setting().means() == means;
            Predicate<Comparison> bounded = here.and(Comparison::isAlwaysReached);
            if (summary.count(here) == 0) {
                continue;
            }
            table.add(List.of(
                    means.label(),
                    Long.toString(summary.count(here)),
                    Long.toString(summary.count(here.and(Comparison::isInside))),
                    Long.toString(summary.count(
                            here.and(c -> c.measured() > c.predicted().median()))),
                    summary.count(bounded) == 0 ? "never at every upper end" : ratio(summary.medianRatio(here))));
        }
        return table;
    }

    private static boolean divides(Comparison c, Setting.Alternatives alternatives) {
        return c.run().setting().alternatives() == alternatives;
    }

    private List<List<String>> alternatives(Predicate<Comparison> which) {
        return summary.comparisons().stream()
                .filter(which)
                .map(c -> List.of(
                        c.row().id(),
                        value(c, c.measured()),
                        value(c, c.first().median()),
                        interval(c, c.first()),
                        value(c, c.second().median()),
                        interval(c, c.second())))
                .toList();
    }

    private List<List<String>> byClass() {
        return rows.stream()
                .map(MeasuredRow::provenance)
                .distinct()
                .sorted()
                .map(this::ofClass)
                .toList();
    }

    private List<String> ofClass(String provenance) {
        Predicate<Comparison> here = c -> c.row().provenance().equals(provenance);
        List<MeasuredRow> all =
                rows.stream().filter(row -> row.provenance().equals(provenance)).toList();
        return List.of(
                provenance,
                Integer.toString(all.size()),
                Long.toString(summary.count(here)),
                Long.toString(summary.count(here.and(Comparison::isInside))),
                Long.toString(
                        all.stream().filter(row -> notYet.containsKey(row.id())).count()));
    }

    private List<List<String>> withoutSurroundings() {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        notYet.forEach((id, reason) ->
                byReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(id));
        return byReason.entrySet().stream()
                .sorted(Comparator.comparing(e -> e.getValue().get(0)))
                .map(e -> List.of(
                        e.getKey(),
                        Integer.toString(e.getValue().size()),
                        e.getValue().stream().collect(Collectors.joining(", "))))
                .toList();
    }

    private static List<List<String>> conditions() {
        return Conditions.all().stream().map(Report::condition).toList();
    }

    private static List<String> condition(UncertainInput input) {
        Uncertainty spread = input.uncertainty();
        boolean law = LawScatter.all().stream().anyMatch(factor -> factor.name().equals(input.name()));
        String name = (law ? "factor on " : "") + input.name();
        if (spread.shape() == Uncertainty.Shape.RECTANGULAR) {
            double half = Math.sqrt(3) * input.standardUncertainty();
            return List.of(
                    name,
                    "evenly from " + number("%.3g", input.value() - half) + " to "
                            + number("%.3g", input.value() + half));
        }
        return List.of(
                name,
                number("%.0f", input.value()) + ", normal, standard uncertainty "
                        + number("%.2f", input.standardUncertainty()));
    }

    private static String yesOrNo(boolean reached) {
        return reached ? "yes" : "**no**";
    }
}
