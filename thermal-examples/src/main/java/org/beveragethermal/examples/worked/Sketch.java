/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.beveragethermal.examples.internal.SvgChart.px;

import org.beveragethermal.examples.internal.Html;

/**
 * A line drawing with labels: black on white, told apart by shape, hatching and words, never by colour.
 *
 * <p>Immutable: each method returns the drawing with one thing more. Lengths are pixels of a sheet of 360 by 180, from the upper left.
 */
final class Sketch {

    private static final double WIDTH = 360;
    private static final double HEIGHT = 180;
    private static final String LINE = " fill=\"none\" stroke=\"#111\" stroke-width=\"1.5\"";

    private final String drawn;
    private final String words;

    private Sketch(String drawn, String words) {
        this.drawn = drawn;
        this.words = words;
    }

    static Sketch empty() {
        return new Sketch("", "");
    }

    private Sketch with(String more) {
        return new Sketch(drawn + more + "\n", words);
    }

    Sketch line(double x1, double y1, double x2, double y2) {
        return with("<path d=\"M" + px(x1) + " " + px(y1) + "L" + px(x2) + " " + px(y2) + "\"" + LINE + "/>");
    }

    Sketch dashed(double x1, double y1, double x2, double y2) {
        return with("<path d=\"M" + px(x1) + " " + px(y1) + "L" + px(x2) + " " + px(y2) + "\"" + LINE
                + " stroke-dasharray=\"5 4\"/>");
    }

    Sketch box(double x, double y, double width, double height) {
        return with("<rect x=\"" + px(x) + "\" y=\"" + px(y) + "\" width=\"" + px(width) + "\" height=\"" + px(height)
                + "\"" + LINE + "/>");
    }

    Sketch shaded(double x, double y, double width, double height) {
        return with("<rect x=\"" + px(x) + "\" y=\"" + px(y) + "\" width=\"" + px(width) + "\" height=\"" + px(height)
                + "\" fill=\"#e4e4e4\" stroke=\"#111\" stroke-width=\"1.5\"/>");
    }

    Sketch circle(double x, double y, double radius) {
        return with("<circle cx=\"" + px(x) + "\" cy=\"" + px(y) + "\" r=\"" + px(radius) + "\"" + LINE + "/>");
    }

    /** A bottle that stands with its foot at a point. */
    Sketch bottle(double x, double footY) {
        return with("<path d=\"M" + px(x - 17) + " " + px(footY) + "v-70q0 -12 10 -18v-32h14v32q10 6 10 18v70z\"" + LINE
                + "/><path d=\"M" + px(x - 17) + " " + px(footY - 72) + "h34\"" + LINE + " stroke-dasharray=\"3 2\"/>");
    }

    /** A vessel open at the top with its foot at a point. */
    Sketch tub(double x, double footY, double width, double height) {
        return with(
                "<path d=\"M" + px(x - width / 2) + " " + px(footY - height) + "l" + px(width * 0.08) + " " + px(height)
                        + "h" + px(width * 0.84) + "l" + px(width * 0.08) + " " + px(-height) + "\"" + LINE + "/>");
    }

    /** Blocks of ice, some in a row. */
    Sketch ice(double x, double y, int count, double side) {
        Sketch all = this;
        for (int i = 0; i < count; i++) {
            all = all.shaded(x + i * (side + 4), y + i % 2 * 4, side, side);
        }
        return all;
    }

    Sketch arrow(double x1, double y1, double x2, double y2) {
        double angle = Math.atan2(y2 - y1, x2 - x1);
        double left = angle + 2.6;
        double right = angle - 2.6;
        return line(x1, y1, x2, y2)
                .with("<path d=\"M" + px(x2) + " " + px(y2) + "L" + px(x2 + 8 * Math.cos(left)) + " "
                        + px(y2 + 8 * Math.sin(left)) + "L" + px(x2 + 8 * Math.cos(right)) + " "
                        + px(y2 + 8 * Math.sin(right)) + "z\" fill=\"#111\"/>");
    }

    Sketch label(double x, double y, String text) {
        Sketch more = with("<text x=\"" + px(x) + "\" y=\"" + px(y) + "\">" + Html.text(text) + "</text>");
        return new Sketch(more.drawn, words.isEmpty() ? text : words + "; " + text);
    }

    /** The drawing, with its labels as the text for those who do not see it. */
    String svg(String title) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + px(WIDTH) + " " + px(HEIGHT)
                + "\" width=\"" + px(WIDTH) + "\" height=\"" + px(HEIGHT)
                + "\" role=\"img\" aria-label=\"" + Html.text("Sketch of: " + title + ". Labels: " + words)
                + "\" font-family=\"sans-serif\" font-size=\"12\">\n<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n"
                + drawn + "</svg>\n";
    }
}
