/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.beveragethermal.testsupport.Csv;
import org.beveragethermal.testsupport.OutsideChecks;

/**
 * Figures of one source about solids: comment lines {@code # source:} and {@code # kind:}, a header, rows. What is
 * allowed stands in a column {@code within} where the source tells it; elsewhere the test takes what the solid itself states.
 */
final class SolidRows {
    private final String source;
    private final boolean remembered;
    private final List<Row> rows;

    private SolidRows(String source, boolean remembered, List<Row> rows) {
        this.source = source;
        this.remembered = remembered;
        this.rows = rows;
    }

    /** One row; cells are looked up by the name of their column. */
    record Row(List<String> header, List<String> cells) {
        String text(String column) {
            return cells.get(header.indexOf(column));
        }

        boolean has(String column) {
            return header.contains(column);
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    static SolidRows read(String file) {
        String text = resource(file);
        String source = comment(text, "# source: ");
        String kind = comment(text, "# kind: ");
        assertThat(source).as("source of " + file).isNotBlank();
        assertThat(kind).as("kind of " + file).isIn("published", "from memory");
        List<List<String>> records =
                Csv.parse(text.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n")));
        List<Row> rows = new ArrayList<>();
        for (List<String> cells : records.subList(1, records.size())) {
            assertThat(cells).as("row of " + file).hasSameSizeAs(records.get(0));
            rows.add(new Row(records.get(0), cells));
        }
        assertThat(rows).as("rows of " + file).isNotEmpty();
        return new SolidRows(source, kind.equals("from memory"), rows);
    }

    List<Row> rows() {
        return rows;
    }

    OutsideChecks.Check check(Row row) {
        return remembered
                ? OutsideChecks.fromMemory(row.text("id"), source)
                : OutsideChecks.published(row.text("id"), source);
    }

    private static String comment(String text, String prefix) {
        return text.lines()
                .filter(line -> line.startsWith(prefix))
                .map(line -> line.substring(prefix.length()))
                .findFirst()
                .orElse("");
    }

    private static String resource(String file) {
        try (InputStream in = SolidRows.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalArgumentException("no test resource " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
