/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import java.util.List;
import org.beveragethermal.testsupport.Svg;

/**
 * Times to the target, one bar per setting on a logarithmic axis, as SVG. Cooling and warming differ by the filling of the dot, never by
 * colour alone; what is never reached has a word.
 */
final class Ranges {

    private static final double WIDTH = 1080;
    private static final double AXIS_LEFT = 610;
    private static final double AXIS_RIGHT = 1030;
    private static final double TOP = 84;
    private static final double ROW = 20;
    private static final double LEAST_MIN = 2;
    private static final double MOST_MIN = 720;
    private static final List<Double> TICKS_MIN = List.of(2.0, 5.0, 10.0, 20.0, 60.0, 120.0, 240.0, 480.0);
    private static final String INK = "#222222";
    private static final String GRID = "#d4d4d4";
    private static final String BAR = "#6b8fa3";

    private Ranges() {}

    static String of(List<Outcome> outcomes) {
        double bottom = TOP + ROW * outcomes.size();
        Svg svg = new Svg("Times of a bottle of wine in each surroundings", WIDTH, bottom + 16, 12);
        svg.words(10, 20, "start", INK, "Time of a 750 mL bottle of wine: 90 % interval (bar) and median (dot)");
        dot(svg, 16, 38, Case.Task.COOL);
        svg.words(28, 42, "start", INK, "cooled from 22 to 10 °C, in the ground to 14 °C");
        dot(svg, 346, 38, Case.Task.WARM);
        svg.words(358, 42, "start", INK, "warmed from 8 to 12 °C");
        svg.words(550, 42, "start", INK, "arrow: some draws never get there");
        for (double tick : TICKS_MIN) {
            svg.line(x(tick), TOP - 6, x(tick), bottom, GRID, 1);
            svg.words(x(tick), TOP - 12, "middle", INK, Report.time(tick).replace(".0", ""));
        }
        double y = TOP + 0.5 * ROW;
        for (Outcome outcome : outcomes) {
            row(svg, outcome, y);
            y += ROW;
        }
        return svg.toString();
    }

    private static void row(Svg svg, Outcome outcome, double y) {
        svg.words(AXIS_LEFT - 12, y + 4, "end", INK, outcome.row().words());
        if (Double.isInfinite(outcome.low())) {
            svg.words(AXIS_RIGHT, y + 4, "end", INK, "never");
            return;
        }
        boolean open = Double.isInfinite(outcome.high());
        double right = open ? AXIS_RIGHT : x(outcome.high());
        svg.line(x(outcome.low()), y, right, y, BAR, 9);
        svg.line(x(outcome.low()), y - 6, x(outcome.low()), y + 6, INK, 2);
        if (!open) {
            svg.line(right, y - 6, right, y + 6, INK, 2);
        } else {
            svg.arrowHead(AXIS_RIGHT, y, BAR);
        }
        if (Double.isFinite(outcome.median())) {
            dot(svg, x(outcome.median()), y, outcome.row().task());
        }
    }

    private static void dot(Svg svg, double x, double y, Case.Task task) {
        svg.dot(x, y, 3.5, task == Case.Task.WARM ? "#ffffff" : INK, INK, 1.5);
    }

    private static double x(double minutes) {
        double shown = Math.min(MOST_MIN, Math.max(LEAST_MIN, minutes));
        return AXIS_LEFT + (AXIS_RIGHT - AXIS_LEFT) * Math.log(shown / LEAST_MIN) / Math.log(MOST_MIN / LEAST_MIN);
    }
}
