/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.util.Locale;

/** A drawing of lines, dots and words on white, as SVG text that is the same wherever it is made. */
public final class Svg {
    private final StringBuilder text = new StringBuilder();

    /**
     * Begins a drawing.
     *
     * @param title what it shows, for those who cannot see it
     * @param width width in user units
     * @param height height in user units
     * @param fontSize size of its words in user units
     */
    public Svg(String title, double width, double height, int fontSize) {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" font-family=\"sans-serif\""
                        + " font-size=\"%d\">\n<title>%s</title>\n"
                        + "<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>\n",
                width, height, fontSize, escaped(title));
    }

    private void add(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values));
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** A line from one point to another, of a colour and a width. */
    public void line(double x1, double y1, double x2, double y2, String colour, double width) {
        add(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%.0f\"/>\n",
                x1, y1, x2, y2, colour, width);
    }

    /** Words that start at, end at or lie about a point: anchor is start, end or middle. */
    public void words(double x, double y, String anchor, String colour, String words) {
        add(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>\n",
                x, y, anchor, colour, escaped(words));
    }

    /** A dot with a rim. */
    public void dot(double x, double y, double radius, String fill, String rim, double rimWidth) {
        add(
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" fill=\"%s\" stroke=\"%s\" stroke-width=\"%.1f\"/>\n",
                x, y, radius, fill, rim, rimWidth);
    }

    /** The head of an arrow that points to the right, its back at a point. */
    public void arrowHead(double x, double y, String colour) {
        add("<path d=\"M%.1f %.1f l14 8 l-14 8 z\" fill=\"%s\"/>\n", x, y - 8, colour);
    }

    /** The whole text. */
    @Override
    public String toString() {
        return text + "</svg>\n";
    }
}
