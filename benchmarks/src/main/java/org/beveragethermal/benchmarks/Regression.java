/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rows measured now beside the same rows of the page of results: what has fallen back is told. */
final class Regression {

    /** A quick run on a shared machine may be off by this factor. */
    private static final double FACTOR = 2;

    private static final int WHAT = 2;
    private static final int BESIDE = 3;
    private static final int MEASURED = 4;
    private static final int FLOOR = 6;
    private static final Pattern NUMBER = Pattern.compile("[0-9.]+");

    private Regression() {}

    /**
     * What has fallen back.
     *
     * @param recorded rows of a group as the page has them
     * @param now the same rows measured anew, in any order; a row that only one side has, or that was not measured on one side, is passed over
     * @return a sentence for each row that is worse than half as good as recorded
     */
    static List<String> fallen(List<String> recorded, List<String> now) {
        List<String> fallen = new ArrayList<>();
        for (String row : now) {
            for (String before : recorded) {
                if (key(row).equals(key(before)) && isWorse(row, before)) {
                    fallen.add(key(row) + ": " + cells(row)[MEASURED].strip() + ", recorded "
                            + cells(before)[MEASURED].strip());
                }
            }
        }
        return fallen;
    }

    private static boolean isWorse(String row, String before) {
        Optional<Double> value = number(row);
        Optional<Double> record = number(before);
        if (value.isEmpty() || record.isEmpty()) {
            return false;
        }
        boolean moreIsBetter = cells(row)[FLOOR].contains("≥");
        return moreIsBetter ? value.get() < record.get() / FACTOR : value.get() > record.get() * FACTOR;
    }

    private static String key(String row) {
        String[] cells = cells(row);
        return String.join(", ", cells[1].strip(), cells[WHAT].strip(), cells[BESIDE].strip());
    }

    private static Optional<Double> number(String row) {
        Matcher matcher = NUMBER.matcher(cells(row)[MEASURED]);
        return matcher.find() ? Optional.of(Double.valueOf(matcher.group())) : Optional.empty();
    }

    private static String[] cells(String row) {
        return row.split("\\|", -1);
    }
}
