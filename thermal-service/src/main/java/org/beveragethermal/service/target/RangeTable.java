/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.beveragethermal.materials.provenance.Source;

/** The table of styles and their ranges, in the order of the files it was read from. Immutable. */
final class RangeTable {
    private final Map<String, DrinkStyle> styles;
    private final Map<DrinkStyle, List<ServingRange>> ranges;
    private final StorageTable storage;

    private RangeTable(
            Map<String, DrinkStyle> styles, Map<DrinkStyle, List<ServingRange>> ranges, StorageTable storage) {
        this.styles = styles;
        this.ranges = ranges;
        this.storage = storage;
    }

    /** The table that the library ships, read once when first asked for. */
    static RangeTable shipped() {
        return Shipped.TABLE;
    }

    static RangeTable of(CsvTable sourceRows, CsvTable styleRows, CsvTable rangeRows, CsvTable storageRows) {
        Map<String, Source> sources = new LinkedHashMap<>();
        for (CsvTable.Row row : sourceRows.rows()) {
            addOnce(sources, row, new Source(row.text("key"), row.text("citation"), kind(row)));
        }
        Map<String, DrinkStyle> styles = new LinkedHashMap<>();
        Map<DrinkStyle, List<ServingRange>> ranges = new LinkedHashMap<>();
        for (CsvTable.Row row : styleRows.rows()) {
            DrinkStyle style = style(row);
            addOnce(styles, row, style);
            ranges.put(style, new ArrayList<>());
        }
        for (CsvTable.Row row : rangeRows.rows()) {
            DrinkStyle style = row.entry("style", styles);
            double lowK = Celsius.toKelvin(row.number("low_C"));
            double highK = Celsius.toKelvin(row.number("high_C"));
            ranges.computeIfAbsent(style, key -> new ArrayList<>())
                    .add(new ServingRange(style, lowK, highK, row.entry("source", sources)));
        }
        ranges.replaceAll((style, list) -> List.copyOf(list));
        return new RangeTable(styles, ranges, StorageTable.of(storageRows, sources, styles.keySet()));
    }

    List<DrinkStyle> styles() {
        return List.copyOf(styles.values());
    }

    DrinkStyle style(String id) {
        DrinkStyle style = styles.get(id);
        if (style == null) {
            throw new IllegalArgumentException(
                    "style \"" + id + "\" is unknown: " + NearestName.advice(id, List.copyOf(styles.keySet())));
        }
        return style;
    }

    List<ServingRange> rangesOf(DrinkStyle style) {
        List<ServingRange> known = knownRangesOf(style);
        return known.isEmpty() ? ranges.getOrDefault(style(style.id()), List.of()) : known;
    }

    /** As {@link #rangesOf}, but empty for a style that is not in the table. */
    List<ServingRange> knownRangesOf(DrinkStyle style) {
        return ranges.getOrDefault(style, List.of());
    }

    List<StorageRange> storageOf(DrinkStyle style) {
        return storage.rangesOf(style);
    }

    private static <T> void addOnce(Map<String, T> map, CsvTable.Row row, T value) {
        String key = row.first();
        if (map.putIfAbsent(key, value) != null) {
            throw row.refusal("\"" + key + "\" appears twice");
        }
    }

    private static boolean yesNo(CsvTable.Row row) {
        return switch (row.text("sparkling")) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw row.refusal("sparkling \"" + row.text("sparkling") + "\": expected yes or no");
        };
    }

    private static Source.Kind kind(CsvTable.Row row) {
        return row.choice(
                "kind",
                Source.Kind.values(),
                kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    private static DrinkStyle style(CsvTable.Row row) {
        return new DrinkStyle(
                row.text("id"),
                row.text("name"),
                row.choice("family", DrinkFamily.values(), DrinkFamily::id),
                yesNo(row),
                row.number("sugar_g_L"),
                row.text("reason"));
    }

    /** Holds the table so that it is read when first used, and only then. */
    private static final class Shipped {
        private static final RangeTable TABLE = of(
                CsvTable.ofResource("sources.csv"),
                CsvTable.ofResource("styles.csv"),
                CsvTable.ofResource("serving-ranges.csv"),
                CsvTable.ofResource("storage-ranges.csv"));
    }
}
