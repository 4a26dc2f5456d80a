/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.util.Comparator;
import java.util.List;
import org.beveragethermal.testsupport.Csv;

/** One row of {@code orders.csv}: at which order the error of a solver falls, and at which it should. */
record OrderRow(
        String family,
        String quantity,
        String refined,
        String theory,
        String observed,
        String lowest,
        String highest,
        boolean passed) {
    private static final List<String> HEADER =
            List.of("family", "quantity", "refined", "theory", "observed", "lowest", "highest", "passed");

    /** All rows of a file's text, without repetitions, sorted by family and quantity. */
    static List<OrderRow> parse(String text) {
        return Rows.withHeader(Csv.parse(text), HEADER).stream()
                .map(fields -> new OrderRow(
                        fields.get(0),
                        fields.get(1),
                        fields.get(2),
                        fields.get(3),
                        fields.get(4),
                        fields.get(5),
                        fields.get(6),
                        Boolean.parseBoolean(fields.get(7))))
                .distinct()
                .sorted(Comparator.comparing(OrderRow::family)
                        .thenComparing(OrderRow::quantity)
                        .thenComparing(OrderRow::refined)
                        .thenComparing(OrderRow::observed))
                .toList();
    }
}
