/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Pieces of HTML. Whatever is handed in as text is escaped. */
public final class Html {

    private static final MathContext FOUR_DIGITS = new MathContext(4);
    private static final MathContext TWO_DIGITS = new MathContext(2);
    private static final int FIRST_POWER_OUTSIDE = 5;

    private Html() {}

    /**
     * A text as HTML.
     *
     * @param text any text
     * @return it with what has a meaning in HTML escaped
     */
    public static String text(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /**
     * A number to four significant digits, without an exponent where it can be read without.
     *
     * @param value a finite number
     * @return its digits
     */
    public static String number(double value) {
        return rounded(value, FOUR_DIGITS);
    }

    /**
     * A number to two significant digits, as befits an uncertainty.
     *
     * @param value a finite number
     * @return its digits
     */
    public static String shortNumber(double value) {
        return rounded(value, TWO_DIGITS);
    }

    private static String rounded(double value, MathContext digits) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(digits);
        int power = rounded.precision() - rounded.scale() - 1;
        if (Math.abs(power) > FIRST_POWER_OUTSIDE) {
            return String.format(Locale.ROOT, "%.3e", value).replace("e", " × 10^");
        }
        return rounded.toPlainString();
    }

    /**
     * A heading of the second level.
     *
     * @param text the heading
     * @return its element
     */
    public static String heading(String text) {
        return "<h2>" + text(text) + "</h2>\n";
    }

    /**
     * A paragraph.
     *
     * @param text what it says
     * @return its element
     */
    public static String paragraph(String text) {
        return "<p>" + text(text) + "</p>\n";
    }

    /**
     * A link.
     *
     * @param file where to
     * @param text what it says
     * @return its element
     */
    public static String link(String file, String text) {
        return "<a href=\"" + text(file) + "\">" + text(text) + "</a>";
    }

    /**
     * A table.
     *
     * @param heads headings of the columns
     * @param rows cells that are HTML already
     * @return its element
     */
    public static String table(List<String> heads, List<List<String>> rows) {
        return rows.stream()
                .map(row -> "<tr>"
                        + row.stream().map(cell -> "<td>" + cell + "</td>").collect(Collectors.joining()) + "</tr>\n")
                .collect(Collectors.joining(
                        "",
                        "<table>\n<thead><tr>"
                                + heads.stream()
                                        .map(head -> "<th>" + text(head) + "</th>")
                                        .collect(Collectors.joining())
                                + "</tr></thead>\n<tbody>\n",
                        "</tbody>\n</table>\n"));
    }

    /**
     * Figures that stand in files of their own.
     *
     * @param figures the figures
     * @return their elements
     */
    public static String figures(List<Figure> figures) {
        return figures.stream()
                .map(figure -> "<figure><img src=\"figures/" + text(figure.file()) + ".svg\" alt=\""
                        + text(figure.title()) + "\"></figure>\n")
                .collect(Collectors.joining("", "<div class=\"figures\">\n", "</div>\n"));
    }

    /**
     * A page of a book whose style is a file of its own.
     *
     * @param title its heading
     * @param body what stands below, as HTML
     * @return the whole page
     */
    public static String page(String title, String body) {
        return String.format(Locale.ROOT, """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <title>%s</title>
                <link rel="stylesheet" href="book.css">
                </head>
                <body>
                <h1>%s</h1>
                %s</body>
                </html>
                """, text(title), text(title), body);
    }

    /** The style of such a book. */
    public static final String STYLE = """
            body { font-family: sans-serif; max-width: 62rem; margin: 2rem auto; padding: 0 1rem; line-height: 1.4; }
            h1 { font-size: 1.6rem; }
            h2 { font-size: 1.2rem; margin-top: 2rem; }
            table { border-collapse: collapse; font-size: 0.85rem; }
            th, td { padding: 0.2rem 0.6rem; text-align: left; vertical-align: top; border-bottom: 1px solid #ccc; }
            .figures { display: flex; flex-wrap: wrap; gap: 1rem; }
            figure { margin: 0; }
            figure img { max-width: 100%; }
            """;
}
