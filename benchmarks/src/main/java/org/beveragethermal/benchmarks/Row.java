/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.Locale;
import java.util.Map;

/**
 * One row of the table of ratios: what is compared, and what it has to reach.
 *
 * @param group group of jobs, as it stands in the first column
 * @param what the work
 * @param beside what it is compared with
 * @param own key of the project's job
 * @param other key of the other job; empty if the figure stands for itself
 * @param figure how the figure is made
 * @param floor what it has to reach
 * @param stretch what would be splendid; 0 if nothing is said
 * @param ifMissed why a row misses, in a sentence; empty if nothing is known
 */
record Row(
        String group,
        String what,
        String beside,
        String own,
        String other,
        Figure figure,
        double floor,
        double stretch,
        String ifMissed) {

    /** Why a row has no figure if it is the project's own fault. */
    static final String OWN_FAILED = "the project's job failed";

    /** Columns of the table. */
    static final String HEADER = """
            | Row | What | Beside | Measured | Spread | Floor | Stretch | Reached |
            |---|---|---|---|---|---|---|---|
            """;

    /** How a figure is made. */
    enum Figure {
        /** Time of the other divided by own time, at least the floor. */
        TIMES_FASTER,
        /** Own time divided by the other's, at most the floor. */
        TIMES_AS_LONG,
        /** Bytes allocated per operation, at most the floor. */
        BYTES,
        /** A size in kilobytes, at most the floor. */
        KILOBYTES
    }

    /** The row as text, with what was measured. */
    String text(Map<String, Measured> results) {
        Measured mine = results.get(own);
        Measured theirs = other.isEmpty() ? mine : results.get(other);
        if (mine == null || theirs == null) {
            String missing = mine == null ? OWN_FAILED : "the other tool failed or is not on this machine";
            return cells("–", "–", "not measured: " + missing);
        }
        double value = value(mine.median(), theirs.median(), mine.bytes());
        String spread = switch (figure) {
            case TIMES_FASTER -> range(theirs.least() / mine.most(), theirs.most() / mine.least());
            case TIMES_AS_LONG -> range(mine.least() / theirs.most(), mine.most() / theirs.least());
            case BYTES, KILOBYTES -> "–";
        };
        boolean reached = figure == Figure.TIMES_FASTER ? value >= floor : value <= floor;
        boolean splendid = stretch > 0 && (figure == Figure.TIMES_FASTER ? value >= stretch : value <= stretch);
        String verdict =
                splendid ? "yes, stretch too" : reached ? "yes" : ifMissed.isEmpty() ? "**no**" : "**no**: " + ifMissed;
        return cells(number(value) + unit(), spread, verdict);
    }

    private double value(double mine, double theirs, double bytes) {
        return switch (figure) {
            case TIMES_FASTER -> theirs / mine;
            case TIMES_AS_LONG -> mine / theirs;
            case BYTES -> bytes;
            case KILOBYTES -> mine;
        };
    }

    private String cells(String measured, String spread, String verdict) {
        String sign = figure == Figure.TIMES_FASTER ? "≥ " : "≤ ";
        String goal = sign + plain(floor) + unit();
        String wish = stretch > 0 ? sign + plain(stretch) + unit() : "–";
        return "| " + String.join(" | ", group, what, beside, measured, spread, goal, wish, verdict) + " |";
    }

    private String unit() {
        return switch (figure) {
            case TIMES_FASTER, TIMES_AS_LONG -> " ×";
            case BYTES -> " B";
            case KILOBYTES -> " kB";
        };
    }

    private String number(double value) {
        return figure == Figure.BYTES || figure == Figure.KILOBYTES
                ? String.format(Locale.ROOT, "%.0f", value)
                : Measured.digits(value);
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%s", value);
    }

    private static String range(double least, double most) {
        return Measured.digits(least) + " – " + Measured.digits(most);
    }
}
