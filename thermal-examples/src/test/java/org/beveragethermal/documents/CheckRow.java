/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.util.Comparator;
import java.util.List;
import org.beveragethermal.testsupport.Csv;

/** One row of {@code outside-checks.csv}: a figure compared with something outside the project. */
record CheckRow(
        String id,
        String source,
        String what,
        String expected,
        String actual,
        String tolerance,
        String unit,
        String kind,
        boolean passed) {
    private static final List<String> HEADER =
            List.of("id", "source", "what", "expected", "actual", "tolerance", "unit", "kind", "passed");

    /** All rows of a file's text, without repetitions, sorted by id. */
    static List<CheckRow> parse(String text) {
        return Rows.withHeader(Csv.parse(text), HEADER).stream()
                .map(CheckRow::of)
                .distinct()
                .sorted(Comparator.comparing(CheckRow::id)
                        .thenComparing(CheckRow::what)
                        .thenComparing(CheckRow::expected)
                        .thenComparing(CheckRow::actual))
                .toList();
    }

    private static CheckRow of(List<String> fields) {
        return new CheckRow(
                fields.get(0),
                fields.get(1),
                fields.get(2),
                fields.get(3),
                fields.get(4),
                fields.get(5),
                fields.get(6),
                fields.get(7),
                Boolean.parseBoolean(fields.get(8)));
    }

    /** Whether the source gives a range instead of a figure. */
    boolean isRange() {
        return expected.contains("..");
    }

    /**
     * Distance from the expected figure (from a range's middle) as a fraction of what is allowed; above 1 the check has
     * failed.
     */
    double deviation() {
        double found = Double.parseDouble(actual);
        if (!isRange()) {
            return ratio(Math.abs(found - Double.parseDouble(expected)), Double.parseDouble(tolerance));
        }
        int dots = expected.indexOf("..");
        double low = Double.parseDouble(expected.substring(0, dots));
        double high = Double.parseDouble(expected.substring(dots + 2));
        return ratio(Math.abs(found - (low + high) / 2.0), (high - low) / 2.0);
    }

    private static double ratio(double distance, double allowed) {
        return distance == 0.0 ? 0.0 : distance / allowed;
    }
}
