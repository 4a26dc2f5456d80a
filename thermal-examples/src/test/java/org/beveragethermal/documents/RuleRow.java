/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.util.Comparator;
import java.util.List;
import org.beveragethermal.testsupport.Csv;

/** One row of {@code rules-of-thumb.csv}: what custom says beside what the model says. */
record RuleRow(String id, String what, String customSays, String modelSays, String unit, String note) {
    private static final List<String> HEADER = List.of("id", "what", "custom_says", "model_says", "unit", "note");

    /** All rows of a file's text, without repetitions, sorted by id. */
    static List<RuleRow> parse(String text) {
        return Rows.withHeader(Csv.parse(text), HEADER).stream()
                .map(fields -> new RuleRow(
                        fields.get(0), fields.get(1), fields.get(2), fields.get(3), fields.get(4), fields.get(5)))
                .distinct()
                .sorted(Comparator.comparing(RuleRow::id)
                        .thenComparing(RuleRow::what)
                        .thenComparing(RuleRow::modelSays))
                .toList();
    }
}
