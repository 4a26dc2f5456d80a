/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import java.util.List;
import org.beveragethermal.examples.internal.Figure;
import org.beveragethermal.examples.internal.Html;

/**
 * A page of the book.
 *
 * @param file name of its file without ending
 * @param title its heading
 * @param summary one line for the list of contents
 * @param body what stands below the heading, as HTML
 * @param figures figures that it shows
 */
record Page(String file, String title, String summary, String body, List<Figure> figures) {

    Page {
        figures = List.copyOf(figures);
    }

    String html() {
        return Html.page(title, "<p>" + Html.link("index.html", "All pages") + "</p>\n" + body);
    }
}
