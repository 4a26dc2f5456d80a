/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.util.List;
import java.util.stream.Collectors;
import org.beveragethermal.examples.internal.Html;

/** Pieces of HTML and SVG; what is handed in as text is escaped. */
final class Markup {

    private Markup() {}

    static String text(String text) {
        return Html.text(text).replace(" °C", "\u00a0°C");
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
}
