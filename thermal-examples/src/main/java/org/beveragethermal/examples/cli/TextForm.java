/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.util.ArrayList;
import java.util.List;

/** An answer as text of a width, in characters. Nothing depends on colour. */
final class TextForm {
    private final int width;
    private final StringBuilder text = new StringBuilder();

    private TextForm(int width) {
        this.width = width;
    }

    static String of(Answer answer, int width) {
        TextForm form = new TextForm(width);
        if (answer.sheet().isPresent()) {
            answer.sheet().get().lines().forEach(line -> form.paragraph(indentOf(line), line.strip()));
        } else {
            form.paragraph("", answer.headline());
            answer.tables().forEach(form::table);
            if (!answer.notes().isEmpty()) {
                form.text.append('\n');
                answer.notes().forEach(note -> form.paragraph("- ", note));
            }
        }
        return form.text.toString();
    }

    private static String indentOf(String line) {
        return line.substring(0, line.length() - line.stripLeading().length());
    }

    private void table(Answer.Table table) {
        text.append('\n');
        paragraph("", table.name());
        int[] widths = new int[table.columns().size()];
        int total = 0;
        for (int i = 0; i < widths.length; i++) {
            int column = i;
            widths[i] = Math.max(
                    table.columns().get(i).head().length(),
                    table.rows().stream()
                            .mapToInt(row -> row.get(column).text().length())
                            .max()
                            .orElse(0));
            total += widths[i] + (i > 0 ? 2 : 0);
        }
        if (total <= width) {
            columns(table, widths);
        } else {
            blocks(table);
        }
    }

    private void columns(Answer.Table table, int[] widths) {
        List<List<Answer.Cell>> lines = new ArrayList<>();
        lines.add(table.columns().stream()
                .map(column -> Answer.Cell.of(column.head()))
                .toList());
        lines.addAll(table.rows());
        for (List<Answer.Cell> row : lines) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String cell = row.get(i).text();
                String gap = " ".repeat(widths[i] - cell.length());
                boolean right = !table.columns().get(i).unit().isEmpty();
                line.append(i > 0 ? "  " : "").append(right ? gap + cell : cell + gap);
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
    }

    /** Where columns have no room, each row is a block of lines. */
    private void blocks(Answer.Table table) {
        for (List<Answer.Cell> row : table.rows()) {
            text.append('\n');
            for (int i = 0; i < row.size(); i++) {
                if (!row.get(i).isNone()) {
                    Answer.Column column = table.columns().get(i);
                    String unit = column.unit().isEmpty() ? "" : " " + column.unit();
                    paragraph(
                            i == 0 ? "" : "  ",
                            column.name() + ": " + row.get(i).text() + unit);
                }
            }
        }
    }

    private void paragraph(String prefix, String words) {
        String indent = " ".repeat(prefix.length());
        StringBuilder line = new StringBuilder(prefix);
        boolean empty = true;
        for (String word : words.split(" (?!°[CF]|K\\b|%)", -1)) {
            if (!empty && line.length() + 1 + word.length() > width) {
                text.append(line).append('\n');
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }
}
