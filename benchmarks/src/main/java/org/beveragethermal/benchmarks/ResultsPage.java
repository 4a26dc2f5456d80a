/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The page of results: tables whose rows are kept by group, so that a run of some groups leaves the others alone, and a part written by hand.
 *
 * @param ratios rows of the table of ratios by group
 * @param times rows of the table of times by group
 * @param kept everything from the profile on, which is written by hand
 */
record ResultsPage(Map<String, List<String>> ratios, Map<String, List<String>> times, String kept) {

    private static final String TIMES = "## Times";
    private static final String KEPT = "## Profile";

    private static final String TIMES_HEADER = """
            | Job | Row | Setting | Error | Time: median [least – most] | Bytes |
            |---|---|---|---|---|---|
            """;

    /** A page with nothing on it. */
    static ResultsPage empty() {
        return new ResultsPage(
                new LinkedHashMap<>(), new LinkedHashMap<>(), KEPT + " of the lumped prediction\n\nNot written yet.\n");
    }

    /** Reads a page back. */
    static ResultsPage parse(String text) {
        int from = text.indexOf("\n" + KEPT);
        ResultsPage page = empty();
        if (from < 0) {
            return page;
        }
        int times = text.indexOf("\n" + TIMES);
        int at = 0;
        for (String line : text.substring(0, from).split("\n", -1)) {
            if (line.startsWith("| ") && !line.startsWith("| Row |") && !line.startsWith("| Job |")) {
                boolean ofTimes = at > times;
                String group = line.split("\\|", -1)[ofTimes ? 2 : 1].strip();
                (ofTimes ? page.times : page.ratios)
                        .computeIfAbsent(group, key -> new ArrayList<>())
                        .add(line);
            }
            at += line.length() + 1;
        }
        return new ResultsPage(page.ratios, page.times, text.substring(from + 1));
    }

    /** The same page with new rows for one group. */
    ResultsPage with(String group, List<String> newRatios, List<String> newTimes) {
        Map<String, List<String>> allRatios = new LinkedHashMap<>(ratios);
        Map<String, List<String>> allTimes = new LinkedHashMap<>(times);
        allRatios.put(group, newRatios);
        allTimes.put(group, newTimes);
        return new ResultsPage(allRatios, allTimes, kept);
    }

    /** A row of the table of times. */
    static String timeRow(String group, String job, Measured measured, boolean timed) {
        return "| "
                + String.join(
                        " | ",
                        job,
                        group,
                        measured.setting(),
                        measured.error(),
                        timed ? measured.timeText() : Measured.digits(measured.median()) + " kB",
                        measured.bytes() < 0 ? "–" : Measured.digits(measured.bytes()))
                + " |";
    }

    /**
     * The page as text.
     *
     * @param introduction what stands above the tables
     * @param order groups in order
     */
    String text(String introduction, List<String> order) {
        StringBuilder out = new StringBuilder("# Results of the benchmarks\n\n")
                .append(introduction)
                .append("\n\n## Ratios\n\n")
                .append(Row.HEADER);
        append(out, ratios, order);
        out.append('\n').append(TIMES).append("\n\n").append(TIMES_HEADER);
        append(out, times, order);
        return out.append('\n').append(kept).toString();
    }

    private static void append(StringBuilder out, Map<String, List<String>> rows, List<String> order) {
        for (String group : order) {
            for (String row : rows.getOrDefault(group, List.of())) {
                out.append(row).append('\n');
            }
        }
    }
}
