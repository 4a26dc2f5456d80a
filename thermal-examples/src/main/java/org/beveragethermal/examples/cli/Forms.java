/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.beveragethermal.examples.internal.Html;

/** An answer as JSON, CSV or a page. Lines end with line feeds. */
final class Forms {
    private static final int JSON_FORMAT = 1;
    private static final String STYLE =
            "body{font:1rem/1.5 sans-serif;max-width:70rem;margin:1rem auto;padding:0 1rem;color:#111;"
                    + "background:#fff}table{border-collapse:collapse;margin:1rem 0}caption{text-align:left;font-weight:bold}"
                    + "th,td{border:1px solid #666;padding:.2rem .5rem;text-align:left;vertical-align:top}"
                    + "td.n{text-align:right}.w{overflow-x:auto}";

    private Forms() {}

    /** All of it; numbers are numbers, what is missing is null. */
    static String json(Answer answer) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("format", JSON_FORMAT);
        root.put("command", answer.command());
        root.put("status", answer.status().label());
        root.put("answer", answer.headline());
        ArrayNode tables = root.putArray("tables");
        for (Answer.Table table : answer.tables()) {
            ObjectNode node = tables.addObject();
            node.put("name", table.name());
            ObjectNode units = node.putObject("units");
            table.columns().stream().filter(c -> !c.unit().isEmpty()).forEach(c -> units.put(c.name(), c.unit()));
            ArrayNode rows = node.putArray("rows");
            for (List<Answer.Cell> row : table.rows()) {
                ObjectNode cells = rows.addObject();
                for (int i = 0; i < row.size(); i++) {
                    put(cells, table.columns().get(i).name(), row.get(i));
                }
            }
        }
        ArrayNode notes = root.putArray("notes");
        answer.notes().forEach(notes::add);
        try {
            return new ObjectMapper()
                            .enable(com.fasterxml.jackson.core.JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
                            .writerWithDefaultPrettyPrinter()
                            .writeValueAsString(root)
                            .replace("\r\n", "\n")
                    + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void put(ObjectNode cells, String name, Answer.Cell cell) {
        if (cell.isNone()) {
            cells.putNull(name);
        } else if (cell.number().isPresent()) {
            BigDecimal number = cell.number().get();
            cells.put(name, number);
        } else {
            cells.put(name, cell.text());
        }
    }

    /** The first table; units stand in its head. */
    static String csv(Answer answer) {
        StringWriter text = new StringWriter();
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            Answer.Table table = answer.tables().get(0);
            writer.writeRecord(table.columns().stream().map(Answer.Column::head).toList());
            for (List<Answer.Cell> row : table.rows()) {
                writer.writeRecord(row.stream().map(Answer.Cell::text).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** A plain page with all tables; it needs nothing from elsewhere. */
    static String page(Answer answer) {
        StringBuilder html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
        html.append(Html.text(answer.command()))
                .append("</title>\n<style>")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<h1>")
                .append(Html.text(answer.command()))
                .append("</h1>\n<p>")
                .append(Html.text(answer.headline()))
                .append("</p>\n");
        answer.tables().forEach(table -> table(html, table));
        if (!answer.notes().isEmpty()) {
            html.append("<h2>To be known</h2>\n<ul>\n");
            answer.notes()
                    .forEach(note -> html.append("<li>").append(Html.text(note)).append("</li>\n"));
            html.append("</ul>\n");
        }
        return html.append("</body>\n</html>\n").toString();
    }

    private static void table(StringBuilder html, Answer.Table table) {
        html.append("<div class=\"w\"><table>\n<caption>")
                .append(Html.text(table.name()))
                .append("</caption>\n<tr>");
        table.columns()
                .forEach(column -> html.append("<th scope=\"col\">")
                        .append(Html.text(column.head()))
                        .append("</th>"));
        html.append("</tr>\n");
        for (List<Answer.Cell> row : table.rows()) {
            html.append("<tr>");
            row.forEach(cell -> html.append(cell.number().isPresent() ? "<td class=\"n\">" : "<td>")
                    .append(Html.text(cell.text()))
                    .append("</td>"));
            html.append("</tr>\n");
        }
        html.append("</table></div>\n");
    }
}
