/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
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

    /** How far the figure lies from the expected one (from a range's middle), to a hundredth of what is allowed. */
    String error() {
        BigDecimal low = new BigDecimal(isRange() ? expected.substring(0, expected.indexOf("..")) : expected);
        BigDecimal high = new BigDecimal(isRange() ? expected.substring(expected.indexOf("..") + 2) : expected);
        BigDecimal middle = low.add(high).divide(BigDecimal.valueOf(2), MathContext.DECIMAL64);
        return toAHundredthOfTheAllowed(new BigDecimal(actual).subtract(middle));
    }

    /**
     * A figure to a hundredth of what is allowed, to the power of ten: digits beyond it say nothing, and are the first to differ
     * where another JDK rounds otherwise.
     */
    String toAHundredthOfTheAllowed(BigDecimal figure) {
        BigDecimal allowed = allowed();
        if (allowed.signum() == 0) {
            return figure.signum() == 0 ? "0" : figure.toString();
        }
        int place = allowed.precision() - allowed.scale() - 1 - 2;
        BigDecimal rounded = figure.setScale(-place, RoundingMode.HALF_EVEN).stripTrailingZeros();
        if (rounded.signum() == 0) {
            return "0";
        }
        int exponent = rounded.precision() - rounded.scale() - 1;
        return exponent < -5 || exponent > 9 ? rounded.toString() : rounded.toPlainString();
    }

    /** What is allowed to either side: the tolerance, or half the width of a range. */
    BigDecimal allowed() {
        if (!isRange()) {
            return new BigDecimal(tolerance);
        }
        int dots = expected.indexOf("..");
        return new BigDecimal(expected.substring(dots + 2))
                .subtract(new BigDecimal(expected.substring(0, dots)))
                .divide(BigDecimal.valueOf(2), MathContext.DECIMAL64)
                .stripTrailingZeros();
    }

    private static double ratio(double distance, double allowed) {
        return distance == 0.0 ? 0.0 : distance / allowed;
    }
}
