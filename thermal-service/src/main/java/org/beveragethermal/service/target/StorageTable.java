/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.beveragethermal.materials.provenance.Source;

/** The table of storage ranges by style and family, in the order of its file. Immutable. */
final class StorageTable {
    private final Map<String, List<StorageRange>> ranges;

    private StorageTable(Map<String, List<StorageRange>> ranges) {
        this.ranges = ranges;
    }

    static StorageTable of(CsvTable rows, Map<String, Source> sources, Set<String> styleIds) {
        Set<String> families =
                Arrays.stream(DrinkFamily.values()).map(DrinkFamily::id).collect(Collectors.toSet());
        Map<String, List<StorageRange>> ranges = new LinkedHashMap<>();
        for (CsvTable.Row row : rows.rows()) {
            String subject = row.text("for");
            // A family and a style of one name mean the same rows.
            if (!families.contains(subject) && !styleIds.contains(subject)) {
                throw row.refusal("for \"" + subject + "\": expected a family or a style");
            }
            ranges.computeIfAbsent(subject, key -> new ArrayList<>()).add(range(row, sources));
        }
        ranges.replaceAll((subject, list) -> List.copyOf(list));
        return new StorageTable(ranges);
    }

    private static StorageRange range(CsvTable.Row row, Map<String, Source> sources) {
        return new StorageRange(
                row.choice("term", StorageRange.Term.values(), StorageRange.Term::label),
                Celsius.toKelvin(row.number("low_C")),
                Celsius.toKelvin(row.number("high_C")),
                row.entry("source", sources),
                row.text("remark"));
    }

    List<StorageRange> rangesOf(DrinkStyle style) {
        List<StorageRange> own = ranges.getOrDefault(style.id(), List.of());
        Set<StorageRange.Term> told = own.stream().map(StorageRange::term).collect(Collectors.toSet());
        Stream<StorageRange> general = ranges.getOrDefault(style.family().id(), List.of()).stream()
                .filter(range -> !told.contains(range.term()));
        return Stream.concat(own.stream(), general).toList();
    }
}
