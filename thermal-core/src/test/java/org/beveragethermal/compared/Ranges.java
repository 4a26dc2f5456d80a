/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import java.util.List;
import java.util.Locale;

/**
 * Times to the target, one bar per setting on a logarithmic axis, as SVG. Cooling and warming differ by the filling of the dot, never by
 * colour alone; what is never reached has a word.
 */
final class Ranges {

    private static final double WIDTH = 900;
    private static final double AXIS_LEFT = 430;
    private static final double AXIS_RIGHT = 850;
    private static final double TOP = 84;
    private static final double ROW = 20;
    private static final double LEAST_MIN = 2;
    private static final double MOST_MIN = 300;
    private static final List<Double> TICKS_MIN = List.of(2.0, 5.0, 10.0, 20.0, 60.0, 120.0, 240.0);
    private static final String INK = "#222222";
    private static final String GRID = "#d4d4d4";
    private static final String BAR = "#6b8fa3";

    private Ranges() {}

    static String of(List<Outcome> outcomes) {
        double bottom = TOP + ROW * outcomes.size();
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" font-family=\"sans-serif\""
                        + " font-size=\"12\">\n<title>Times of a bottle of wine in each surroundings</title>\n"
                        + "<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>\n",
                WIDTH,
                bottom + 16));
        text(svg, 10, 20, "start", "Time of a 750 mL bottle of wine: 90 % interval (bar) and median (dot)");
        dot(svg, 16, 38, Case.Task.COOL);
        text(svg, 28, 42, "start", "cooled from 22 to 10 °C");
        dot(svg, 216, 38, Case.Task.WARM);
        text(svg, 228, 42, "start", "warmed from 8 to 12 °C");
        text(svg, 420, 42, "start", "arrow: some draws never get there");
        for (double tick : TICKS_MIN) {
            line(svg, x(tick), TOP - 6, x(tick), bottom, GRID, 1);
            text(svg, x(tick), TOP - 12, "middle", Report.time(tick).replace(".0", ""));
        }
        double y = TOP + 0.5 * ROW;
        for (Outcome outcome : outcomes) {
            row(svg, outcome, y);
            y += ROW;
        }
        return svg.append("</svg>\n").toString();
    }

    private static void row(StringBuilder svg, Outcome outcome, double y) {
        text(svg, AXIS_LEFT - 12, y + 4, "end", outcome.row().words());
        if (Double.isInfinite(outcome.low())) {
            text(svg, AXIS_RIGHT, y + 4, "end", "never");
            return;
        }
        boolean open = Double.isInfinite(outcome.high());
        double right = open ? AXIS_RIGHT : x(outcome.high());
        line(svg, x(outcome.low()), y, right, y, BAR, 9);
        line(svg, x(outcome.low()), y - 6, x(outcome.low()), y + 6, INK, 2);
        if (!open) {
            line(svg, right, y - 6, right, y + 6, INK, 2);
        } else {
            svg.append(String.format(
                    Locale.ROOT, "<path d=\"M%.1f %.1f l14 8 l-14 8 z\" fill=\"%s\"/>\n", AXIS_RIGHT, y - 8, BAR));
        }
        if (Double.isFinite(outcome.median())) {
            dot(svg, x(outcome.median()), y, outcome.row().task());
        }
    }

    private static void dot(StringBuilder svg, double x, double y, Case.Task task) {
        svg.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.5\"/>\n",
                x,
                y,
                task == Case.Task.COOL ? INK : "#ffffff",
                INK));
    }

    private static double x(double minutes) {
        double shown = Math.min(MOST_MIN, Math.max(LEAST_MIN, minutes));
        return AXIS_LEFT + (AXIS_RIGHT - AXIS_LEFT) * Math.log(shown / LEAST_MIN) / Math.log(MOST_MIN / LEAST_MIN);
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

    private static void text(StringBuilder svg, double x, double y, String anchor, String text) {
        String escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>\n",
                x,
                y,
                anchor,
                INK,
                escaped));
    }
}
