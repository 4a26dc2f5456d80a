/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

/** Plain text on a page of a fixed width. */
final class SheetPage {

    private static final int WIDTH = 98;
    private static final String RULE = "-".repeat(WIDTH);

    private final StringBuilder text = new StringBuilder();

    String text() {
        return text.toString();
    }

    void heading(String heading) {
        if (!text.toString().endsWith("\n\n")) {
            line("");
        }
        line(RULE);
        line(heading);
        line("");
    }

    void line(String content) {
        text.append(content).append('\n');
    }

    /** Writes words after a prefix, wrapped, further lines indented like the first; a number keeps its unit beside it. */
    void paragraph(String prefix, String words) {
        String indent = " ".repeat(prefix.length());
        StringBuilder current = new StringBuilder(prefix);
        boolean empty = true;
        for (String word : words.split(" (?!°C)", -1)) {
            if (!empty && current.length() + 1 + word.length() > WIDTH) {
                line(current.toString());
                current = new StringBuilder(indent);
                empty = true;
            }
            if (!empty) {
                current.append(' ');
            }
            current.append(word);
            empty = false;
        }
        line(current.toString());
    }
}
