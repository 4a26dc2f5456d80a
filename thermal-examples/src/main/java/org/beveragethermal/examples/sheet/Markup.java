/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Pieces of HTML and SVG; what is handed in as text is escaped. */
final class Markup {

    private Markup() {}

    static String text(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace(" °C", "\u00a0°C");
    }

    static String paragraph(String text) {
        return "<p>" + text(text) + "</p>\n";
    }

    static String list(List<String> texts) {
        return texts.stream()
                .map(text -> "<li>" + text(text) + "</li>\n")
                .collect(Collectors.joining("", "<ul>\n", "</ul>\n"));
    }

    /** A section under a heading of the second order, found by its name. */
    static String section(String name, String heading, String body) {
        return "<section class=\"" + name + "\" aria-labelledby=\"" + name + "\">\n<h2 id=\"" + name + "\">"
                + text(heading) + "</h2>\n" + body + "</section>\n";
    }

    /** A length to a tenth. */
    static String px(double length) {
        String text = String.format(Locale.ROOT, "%.1f", length);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
