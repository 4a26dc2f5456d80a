/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.util.Comparator;
import java.util.List;
import org.beveragethermal.testsupport.Csv;

/** One row of {@code properties.csv}: a property, where it stands, how many cases it was tried with, and whether it held. */
record PropertyRow(String property, String where, String asked, int cases, boolean held) {
    private static final List<String> HEADER = List.of("property", "class", "asked", "cases", "held");
    private static final String THOROUGH = "1000";

    /** All rows of a file's text, sorted by what they say. */
    static List<PropertyRow> parse(String text) {
        return Rows.withHeader(Csv.parse(text), HEADER).stream()
                .map(fields -> new PropertyRow(
                        fields.get(0),
                        fields.get(1),
                        fields.get(2),
                        Integer.parseInt(fields.get(3)),
                        Boolean.parseBoolean(fields.get(4))))
                .distinct()
                .sorted(Comparator.comparing(PropertyRow::property)
                        .thenComparing(PropertyRow::where)
                        .thenComparing(PropertyRow::cases))
                .toList();
    }

    /** Whether these are the rows of a run with more cases than usual, of which the documents do not speak. */
    static boolean areThorough(List<PropertyRow> rows) {
        return rows.stream().anyMatch(row -> row.asked().equals(THOROUGH));
    }
}
