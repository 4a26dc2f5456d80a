/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Comma-separated values as RFC 4180 describes them: quoting on the way out, a strict reader on the way in. */
public final class Csv {
    private static final String LINE_END = "\r\n";

    private Csv() {}

    /**
     * One record with its line end.
     *
     * @param fields the fields in order; any text
     * @return the record, fields quoted where they hold a comma, a quote or a line break, closed by CR LF
     */
    public static String line(List<String> fields) {
        return fields.stream().map(Csv::quoted).collect(Collectors.joining(",", "", LINE_END));
    }

    /**
     * All records of a text.
     *
     * @param text records separated by CR LF or LF; the last may lack its line end
     * @return the records in order, the header (if any) included; empty for an empty text
     * @throws IllegalArgumentException for a quote inside an unquoted field, text after a closing quote, or a quoted
     *     field that never ends; the message gives the record's number
     */
    public static List<List<String>> parse(String text) {
        List<List<String>> records = new ArrayList<>();
        int position = 0;
        while (position < text.length()) {
            List<String> fields = new ArrayList<>();
            position = parseRecord(text, position, fields, records.size() + 1);
            records.add(List.copyOf(fields));
        }
        return List.copyOf(records);
    }

    private static int parseRecord(String text, int start, List<String> fields, int number) {
        int position = start;
        while (true) {
            boolean quoted = position < text.length() && text.charAt(position) == '"';
            position = quoted
                    ? parseQuoted(text, position + 1, fields, number)
                    : parsePlain(text, position, fields, number);
            if (position >= text.length()) {
                return position;
            }
            char separator = text.charAt(position);
            position++;
            if (separator == '\n') {
                return position;
            }
            if (separator == '\r' && position < text.length() && text.charAt(position) == '\n') {
                return position + 1;
            }
            if (separator != ',') {
                throw malformed(number, "text after a closing quote");
            }
        }
    }

    private static int parsePlain(String text, int start, List<String> fields, int number) {
        int end = start;
        while (end < text.length() && ",\r\n".indexOf(text.charAt(end)) < 0) {
            if (text.charAt(end) == '"') {
                throw malformed(number, "a quote inside an unquoted field");
            }
            end++;
        }
        fields.add(text.substring(start, end));
        return end;
    }

    private static int parseQuoted(String text, int start, List<String> fields, int number) {
        StringBuilder field = new StringBuilder();
        int position = start;
        while (position < text.length()) {
            char character = text.charAt(position);
            position++;
            if (character != '"') {
                field.append(character);
            } else if (position < text.length() && text.charAt(position) == '"') {
                field.append('"');
                position++;
            } else {
                fields.add(field.toString());
                return position;
            }
        }
        throw malformed(number, "a quoted field that never ends");
    }

    private static IllegalArgumentException malformed(int number, String what) {
        return new IllegalArgumentException("record " + number + " is not comma-separated values: " + what);
    }

    private static String quoted(String field) {
        boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
    }
}
