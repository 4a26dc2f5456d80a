/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A table in comma-separated text: RFC 4180 quoting within one line, a header line, and lines that begin with {@code #}
 * as comments. Refusals name the table, the line and the column.
 */
final class CsvTable {
    private final String name;
    private final List<String> header;
    private final List<Row> rows;

    private CsvTable(String name, List<Line> lines) {
        if (lines.isEmpty()) {
            throw new IllegalArgumentException(name + ": expected a header line, got no line");
        }
        this.name = name;
        this.header = lines.get(0).fields();
        List<Row> read = new ArrayList<>();
        for (Line line : lines.subList(1, lines.size())) {
            read.add(new Row(this, line));
        }
        this.rows = List.copyOf(read);
    }

    static CsvTable ofResource(String resource) {
        try (InputStream in = CsvTable.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("table " + resource + " is missing from the library's jar");
            }
            return parse(resource, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("table " + resource + " cannot be read", e);
        }
    }

    static CsvTable parse(String name, String text) {
        List<Line> lines = new ArrayList<>();
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                lines.add(new Line(number, fields(name, number, line)));
            }
        }
        return new CsvTable(name, lines);
    }

    List<Row> rows() {
        return rows;
    }

    private static List<String> fields(String name, int number, String line) {
        List<String> fields = new ArrayList<>();
        int at = 0;
        do {
            boolean quoted = at < line.length() && line.charAt(at) == '"';
            int end = quoted ? closingQuote(name, number, line, at) + 1 : endOfPlain(line, at);
            if (end < line.length() && line.charAt(end) != ',') {
                throw refusal(name, number, "column " + (end + 1) + ": expected a comma after a quoted field");
            }
            String field = quoted ? line.substring(at + 1, end - 1).replace("\"\"", "\"") : line.substring(at, end);
            fields.add(field);
            at = end + 1;
        } while (at <= line.length());
        return List.copyOf(fields);
    }

    private static int endOfPlain(String line, int from) {
        int comma = line.indexOf(',', from);
        return comma < 0 ? line.length() : comma;
    }

    private static int closingQuote(String name, int number, String line, int opening) {
        int at = opening + 1;
        while (at < line.length()) {
            if (line.charAt(at) != '"') {
                at++;
            } else if (at + 1 < line.length() && line.charAt(at + 1) == '"') {
                at += 2;
            } else {
                return at;
            }
        }
        throw refusal(name, number, "column " + (opening + 1) + ": expected a closing quote");
    }

    private static IllegalArgumentException refusal(String name, int number, String problem) {
        return new IllegalArgumentException(name + ", line " + number + ": " + problem);
    }

    /** One line of text, cut into fields. */
    private record Line(int number, List<String> fields) {}

    /** One row of the table. */
    static final class Row {
        private final CsvTable table;
        private final Line line;

        private Row(CsvTable table, Line line) {
            this.table = table;
            this.line = line;
            int expected = table.header.size();
            if (line.fields().size() != expected) {
                throw refusal(
                        "expected " + expected + " fields, got " + line.fields().size());
            }
        }

        /** The field of the first column. */
        String first() {
            return line.fields().get(0);
        }

        String text(String column) {
            int index = table.header.indexOf(column);
            if (index < 0) {
                throw refusal("column \"" + column + "\" is missing: the header has " + table.header);
            }
            return line.fields().get(index);
        }

        double number(String column) {
            String text = text(column);
            try {
                double value = Double.parseDouble(text);
                if (Double.isFinite(value)) {
                    return value;
                }
            } catch (NumberFormatException e) {
                throw refusal(column + " \"" + text + "\": expected a number", e);
            }
            throw refusal(column + " \"" + text + "\": expected a finite number");
        }

        /** What a column names of the values of an enumeration. */
        <T> T choice(String column, T[] values, Function<T, String> label) {
            return Arrays.stream(values)
                    .filter(value -> label.apply(value).equals(text(column)))
                    .findFirst()
                    .orElseThrow(() -> refusal(column + " \"" + text(column) + "\": expected one of "
                            + Arrays.stream(values).map(label).toList()));
        }

        /** What a column names by its key. */
        <T> T entry(String column, Map<String, T> known) {
            T value = known.get(text(column));
            if (value == null) {
                throw refusal(column + " \"" + text(column) + "\": expected one of " + known.keySet());
            }
            return value;
        }

        IllegalArgumentException refusal(String problem) {
            return CsvTable.refusal(table.name, line.number(), problem);
        }

        private IllegalArgumentException refusal(String problem, Throwable cause) {
            return new IllegalArgumentException(refusal(problem).getMessage(), cause);
        }
    }
}
