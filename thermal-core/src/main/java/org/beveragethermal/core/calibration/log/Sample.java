/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The beginning of a file, by which its dialect is told.
 *
 * @param lines its lines; the last is left out if it is not whole
 */
record Sample(List<String> lines) {
    private static final int CHARACTERS = 1 << 16;
    private static final int LINES = 1000;
    /** Lines that one row may take. */
    private static final int MOST_JOINED = 4;

    /** Looks ahead; the reader stands where it stood. */
    static Sample of(BufferedReader reader) throws IOException {
        reader.mark(CHARACTERS);
        char[] text = new char[CHARACTERS];
        int length = 0;
        int read = 0;
        while (read >= 0 && length < CHARACTERS) {
            length += read;
            read = length < CHARACTERS ? reader.read(text, length, CHARACTERS - length) : 0;
        }
        reader.reset();
        return new Sample(lines(new String(text, 0, length), read < 0));
    }

    private static List<String> lines(String text, boolean whole) {
        List<String> lines = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < text.length() && lines.size() < LINES; i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r') {
                lines.add(text.substring(from, i));
                if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                    i++;
                }
                from = i + 1;
            }
        }
        if (lines.size() < LINES && from < text.length() && (whole || lines.isEmpty())) {
            lines.add(text.substring(from));
        }
        joinQuoted(lines);
        return lines;
    }

    /** Joins lines that quotes hold together; blank lines take the places of those that were joined, so that numbers stay. */
    private static void joinQuoted(List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            if (!opensQuote(lines.get(i))) {
                continue;
            }
            for (int end = i + 1; end < Math.min(lines.size(), i + MOST_JOINED); end++) {
                if (quotes(lines.get(end)) % 2 == 1) {
                    lines.set(i, String.join("\n", lines.subList(i, end + 1)));
                    lines.subList(i + 1, end + 1).replaceAll(joined -> "");
                    i = end;
                    break;
                }
            }
        }
    }

    private static boolean opensQuote(String line) {
        int last = line.lastIndexOf('"');
        return quotes(line) % 2 == 1 && (last == 0 || Separators.ALL.indexOf(line.charAt(last - 1)) >= 0);
    }

    private static long quotes(String line) {
        return line.chars().filter(c -> c == '"').count();
    }
}
