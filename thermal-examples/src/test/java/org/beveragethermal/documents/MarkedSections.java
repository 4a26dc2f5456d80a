/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sections of a Markdown text that stand between a begin mark and an end mark of the same name. */
final class MarkedSections {
    private static final Pattern MARK = Pattern.compile("<!-- checks:(begin|end) (\\S+) -->");

    private MarkedSections() {}

    /**
     * Names of the marked sections in their order.
     *
     * @throws IllegalArgumentException if a mark has no partner, sections overlap or a name comes twice
     */
    static List<String> names(String document) {
        List<MatchResult> marks = marks(document);
        List<String> names = marks.stream()
                .filter(mark -> mark.group(1).equals("begin"))
                .map(mark -> mark.group(2))
                .toList();
        boolean paired = marks.size() == 2 * names.size();
        for (int i = 0; paired && i < names.size(); i++) {
            MatchResult begin = marks.get(2 * i);
            MatchResult end = marks.get(2 * i + 1);
            paired = begin.group(1).equals("begin")
                    && end.group(1).equals("end")
                    && begin.group(2).equals(end.group(2));
        }
        if (!paired || names.stream().distinct().count() != names.size()) {
            throw new IllegalArgumentException("marks "
                    + marks.stream().map(MatchResult::group).toList()
                    + ": expected each begin to be followed by the end of the same name, each name once");
        }
        return names;
    }

    /**
     * The document with the body of every marked section replaced.
     *
     * @param body gives a section's body for its name; set on lines of its own between the marks
     */
    static String rewritten(String document, UnaryOperator<String> body) {
        String result = document;
        for (String name : names(document)) {
            String begin = "<!-- checks:begin " + name + " -->";
            int from = result.indexOf(begin) + begin.length();
            int to = result.indexOf("<!-- checks:end " + name + " -->");
            result = result.substring(0, from) + "\n" + body.apply(name).strip() + "\n" + result.substring(to);
        }
        return result;
    }

    /**
     * What stands in a marked section.
     *
     * @param name one of {@link #names}
     */
    static String body(String document, String name) {
        String begin = "<!-- checks:begin " + name + " -->";
        int from = document.indexOf(begin);
        int to = document.indexOf("<!-- checks:end " + name + " -->");
        if (from < 0 || to < 0) {
            throw new IllegalArgumentException("section " + name + ": expected one of " + names(document));
        }
        return document.substring(from + begin.length(), to).strip();
    }

    private static List<MatchResult> marks(String document) {
        Matcher matcher = MARK.matcher(document);
        return matcher.results().toList();
    }
}
