/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Predicted intervals over measured values, one bar per row on a logarithmic axis, as SVG. */
final class Drawing {

    private static final double WIDTH = 860;
    private static final double AXIS_LEFT = 300;
    private static final double AXIS_RIGHT = 840;
    private static final double TOP = 56;
    private static final double ROW = 17;
    /** Ends of the axis; what lies beyond is drawn up to the end and open. */
    private static final double LEAST = 0.2;

    private static final double MOST = 5;
    /** Nothing can be set in proportion to an excess of nought. */
    private static final double LEAST_DRAWN = 0.01;

    private static final List<Double> TICKS = List.of(0.2, 0.5, 1.0, 2.0, 5.0);
    private static final String INSIDE = "#1f6f8b";
    private static final String OUTSIDE = "#b4431f";

    private Drawing() {}

    static String of(List<Comparison> comparisons) {
        List<Comparison> drawn = comparisons.stream()
                .filter(c -> c.measured() > LEAST_DRAWN)
                .sorted(Comparator.comparing(c -> c.run().setting().means()))
                .toList();
        double bottom = TOP + ROW * drawn.size();
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" font-family=\"sans-serif\""
                        + " font-size=\"11\">\n<title>Predicted over measured</title>\n"
                        + "<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>\n",
                WIDTH,
                bottom + 20));
        text(svg, 10, 18, "start", "#222222", "Predicted ÷ measured: 90 % interval (bar) and median (dot)");
        text(svg, 10, 34, "start", INSIDE, "measured value inside the interval");
        text(svg, 210, 34, "start", OUTSIDE, "outside");
        for (double tick : TICKS) {
            line(svg, x(tick), TOP - 6, x(tick), bottom, tick == 1.0 ? "#222222" : "#cccccc", 1);
            text(svg, x(tick), TOP - 10, "middle", "#222222", String.format(Locale.ROOT, "%.1f", tick));
        }
        double y = TOP + 0.5 * ROW;
        for (Comparison c : drawn) {
            bar(svg, c, y);
            y += ROW;
        }
        return svg.append("</svg>\n").toString();
    }

    private static void bar(StringBuilder svg, Comparison c, double y) {
        String colour = c.isInside() ? INSIDE : OUTSIDE;
        String what = c.isTime()
                ? "min to " + c.row().endC() + " °C"
                : "excess after " + c.row().minutes() + " min";
        String label = c.row().id() + "  " + c.run().setting().means().label() + ", " + what;
        text(svg, 10, y + 4, "start", "#222222", label);
        if (Double.isInfinite(c.predicted().low())) {
            text(svg, AXIS_RIGHT - 4, y + 4, "end", colour, "never");
            return;
        }
        line(svg, x(c.predicted().low() / c.measured()), y, x(c.predicted().high() / c.measured()), y, colour, 5);
        double middle = c.predicted().median() / c.measured();
        if (middle >= LEAST && middle <= MOST) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"#ffffff\" stroke=\"%s\" stroke-width=\"2\"/>\n",
                    x(middle),
                    y,
                    colour));
        }
    }

    private static double x(double ratio) {
        double shown = Math.min(MOST, Math.max(LEAST, ratio));
        return AXIS_LEFT + (AXIS_RIGHT - AXIS_LEFT) * Math.log(shown / LEAST) / Math.log(MOST / LEAST);
    }

    private static void line(
            StringBuilder svg, double x1, double y1, double x2, double y2, String colour, double width) {
        svg.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%.0f\"/>\n",
                x1,
                y1,
                x2,
                y2,
                colour,
                width));
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String colour, String text) {
        String escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>\n",
                x,
                y,
                anchor,
                colour,
                escaped));
    }
}
