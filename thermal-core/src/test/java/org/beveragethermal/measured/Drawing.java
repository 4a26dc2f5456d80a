/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.testsupport.Svg;

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
        Svg svg = new Svg("Predicted over measured", WIDTH, bottom + 20, 11);
        svg.words(10, 18, "start", "#222222", "Predicted ÷ measured: 90 % interval (bar) and median (dot)");
        svg.words(10, 34, "start", INSIDE, "open dot: measured value inside the interval");
        svg.words(260, 34, "start", OUTSIDE, "full dot: outside");
        for (double tick : TICKS) {
            svg.line(x(tick), TOP - 6, x(tick), bottom, tick == 1.0 ? "#222222" : "#cccccc", 1);
            svg.words(x(tick), TOP - 10, "middle", "#222222", String.format(Locale.ROOT, "%.1f", tick));
        }
        double y = TOP + 0.5 * ROW;
        for (Comparison c : drawn) {
            bar(svg, c, y);
            y += ROW;
        }
        return svg.toString();
    }

    private static void bar(Svg svg, Comparison c, double y) {
        String colour = c.isInside() ? INSIDE : OUTSIDE;
        String what = c.isTime()
                ? "min to " + c.row().endC() + " °C"
                : "excess " + c.row().readWhen();
        String label = c.row().id() + "  " + c.run().setting().means().label() + ", " + what;
        svg.words(10, y + 4, "start", "#222222", label);
        if (Double.isInfinite(c.predicted().low())) {
            svg.words(AXIS_RIGHT - 4, y + 4, "end", colour, "never");
            return;
        }
        svg.line(x(c.predicted().low() / c.measured()), y, x(c.predicted().high() / c.measured()), y, colour, 5);
        double middle = c.predicted().median() / c.measured();
        if (middle >= LEAST && middle <= MOST) {
            svg.dot(x(middle), y, 4, c.isInside() ? "#ffffff" : colour, colour, 2);
        }
    }

    private static double x(double ratio) {
        double shown = Math.min(MOST, Math.max(LEAST, ratio));
        return AXIS_LEFT + (AXIS_RIGHT - AXIS_LEFT) * Math.log(shown / LEAST) / Math.log(MOST / LEAST);
    }
}
