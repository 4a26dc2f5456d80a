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

    /** A floor that was reached may be missed by this part of it, for the same reason. */
    private static final double BELOW_FLOOR = 0.2;

    private static final int WHAT = 2;
    private static final int BESIDE = 3;
    private static final int MEASURED = 4;
    private static final int FLOOR = 6;
    private static final int VERDICT = 8;
    private static final Pattern NUMBER = Pattern.compile("[0-9.]+");

    private Regression() {}

    /**
     * What has fallen back.
     *
     * @param recorded rows of a group as the page has them
     * @param now the same rows measured anew, in any order; a row that only one side has is passed over, and so is one whose peer is not on
     *     this machine
     * @return a sentence for each row that is less than half as good as recorded, that misses by more than a fifth the floor that it reached, or
     *     whose own job failed
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
        if (row.contains(Row.OWN_FAILED)) {
            return true;
        }
        Optional<Double> value = number(row, MEASURED);
        Optional<Double> record = number(before, MEASURED);
        if (value.isEmpty() || record.isEmpty()) {
            return false;
        }
        boolean moreIsBetter = cells(row)[FLOOR].contains("≥");
        boolean wasReached = cells(before)[VERDICT].strip().startsWith("yes");
        double floor = number(row, FLOOR).orElse(0.0);
        return moreIsBetter
                ? value.get() < record.get() / FACTOR || (wasReached && value.get() < floor * (1 - BELOW_FLOOR))
                : value.get() > record.get() * FACTOR || (wasReached && value.get() > floor * (1 + BELOW_FLOOR));
    }

    private static String key(String row) {
        String[] cells = cells(row);
        return String.join(", ", cells[1].strip(), cells[WHAT].strip(), cells[BESIDE].strip());
    }

    private static Optional<Double> number(String row, int cell) {
        Matcher matcher = NUMBER.matcher(cells(row)[cell]);
        return matcher.find() ? Optional.of(Double.valueOf(matcher.group())) : Optional.empty();
    }

    private static String[] cells(String row) {
        return row.split("\\|", -1);
    }
}
