/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Draws a figure as SVG of a few kilobytes, the same at each run and without fonts on the machine that draws.
 *
 * <p>The chart libraries that were tried write letters as outlines and each piece of a line apart: a hundred times as much,
 * different at each run, so that a build could not tell whether the book is that of its code.
 */
public final class SvgChart {

    private static final double WIDTH = 460;
    private static final double HEIGHT = 300;
    private static final double TALLEST = 460;
    private static final double LEFT = 64;
    private static final double RIGHT = 14;
    private static final double TOP = 30;
    private static final double BOTTOM = 44;
    private static final double LETTER = 6.2;
    private static final double TITLE_LETTER = 8;
    private static final double LEGEND_LINE = 18;

    private static final List<String> COLOURS = List.of("#1f5fa8", "#b4531a", "#2c7a3d", "#7a3d8f");
    /** So that curves differ without their colours. */
    private static final List<String> DASHES = List.of("", "7 3", "2 3", "9 3 2 3");

    private final Figure figure;
    private final Axis x;
    private final Axis y;
    private final double width;
    private final double height;

    private SvgChart(Figure figure) {
        this.figure = figure;
        if (figure.equalScales()) {
            double top = most(Curve::y);
            double perUnit = (TALLEST - TOP - BOTTOM) / top;
            height = TALLEST;
            width = Math.max(
                    2 * most(Curve::x) * perUnit + LEFT + RIGHT,
                    TITLE_LETTER * figure.title().length() + RIGHT);
            double reach = (width - LEFT - RIGHT) / perUnit / 2;
            x = Axis.linearBetween(-reach, reach);
            y = Axis.linearBetween(0, top);
        } else {
            x = Axis.linear(least(Curve::x), most(Curve::x));
            y = figure.logarithmic()
                    ? Axis.logarithmic(least(Curve::y), most(Curve::y))
                    : Axis.linear(least(Curve::y), most(Curve::y));
            height = HEIGHT;
            width = WIDTH;
        }
    }

    /**
     * Draws a figure.
     *
     * @param figure what to draw
     * @return an SVG element
     */
    public static String draw(Figure figure) {
        return new SvgChart(figure).svg();
    }

    private interface Values {
        List<Double> of(Curve curve);
    }

    private double least(Values values) {
        return all(values).reduce(Double::min).orElseThrow();
    }

    private double most(Values values) {
        return all(values).reduce(Double::max).orElseThrow();
    }

    private Stream<Double> all(Values values) {
        return figure.curves().stream().flatMap(curve -> values.of(curve).stream());
    }

    private double across(double value) {
        return LEFT + x.position(value) * (width - LEFT - RIGHT);
    }

    private double down(double value) {
        return height - BOTTOM - y.position(value) * (height - TOP - BOTTOM);
    }

    private String svg() {
        return String.format(
                Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" width="%s" height="%s" viewBox="0 0 %s %s" font-family="sans-serif" font-size="11">
                <rect width="100%%" height="100%%" fill="white"/>
                %s%s%s%s</svg>
                """, px(width), px(height), px(width), px(height), titles(), grid(), curves(), legend());
    }

    private String titles() {
        return text(width / 2, TOP / 2 + 3, "middle", figure.title(), " font-weight=\"bold\" font-size=\"13\"")
                + text(LEFT + (width - LEFT - RIGHT) / 2, height - 8, "middle", figure.xLabel(), "")
                + text(
                        0,
                        0,
                        "middle",
                        figure.yLabel(),
                        " transform=\"translate(14 " + px((height - BOTTOM + TOP) / 2) + ") rotate(-90)\"");
    }

    private String grid() {
        String columns = x.ticks().stream()
                .map(tick -> line(across(tick.doubleValue()), TOP, across(tick.doubleValue()), height - BOTTOM)
                        + text(
                                across(tick.doubleValue()),
                                height - BOTTOM + 15,
                                "middle",
                                tick.stripTrailingZeros().toPlainString(),
                                ""))
                .collect(Collectors.joining());
        String rows = y.ticks().stream()
                .map(tick -> line(LEFT, down(tick.doubleValue()), width - RIGHT, down(tick.doubleValue()))
                        + text(
                                LEFT - 5,
                                down(tick.doubleValue()) + 4,
                                "end",
                                tick.stripTrailingZeros().toPlainString(),
                                ""))
                .collect(Collectors.joining());
        return columns + rows
                + "<rect x=\"" + px(LEFT) + "\" y=\"" + px(TOP) + "\" width=\"" + px(width - LEFT - RIGHT)
                + "\" height=\"" + px(height - TOP - BOTTOM) + "\" fill=\"none\" stroke=\"#444\"/>\n";
    }

    private String curves() {
        return figure.curves().stream()
                .map(curve ->
                        "<polyline fill=\"none\" stroke=\"" + colour(curve) + "\"" + dash(curve) + " stroke-width=\""
                                + (curve.name().isEmpty() ? "1" : "2") + "\" points=\""
                                + IntStream.range(0, curve.x().size())
                                        .mapToObj(i -> px(across(curve.x().get(i))) + ","
                                                + px(down(curve.y().get(i))))
                                        .collect(Collectors.joining(" "))
                                + "\"/>\n")
                .collect(Collectors.joining());
    }

    private List<Curve> named() {
        return figure.curves().stream().filter(curve -> !curve.name().isEmpty()).toList();
    }

    private String colour(Curve curve) {
        return curve.name().isEmpty() ? "#aaa" : COLOURS.get(named().indexOf(curve) % COLOURS.size());
    }

    private String dash(Curve curve) {
        String dash = curve.name().isEmpty() ? "" : DASHES.get(named().indexOf(curve) % DASHES.size());
        return dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"";
    }

    /** In the upper corner where the curves leave more room; none for a single curve or an outline. */
    private String legend() {
        List<Curve> named = named();
        if (named.size() < 2 || figure.equalScales()) {
            return "";
        }
        ToDoubleFunction<Curve> atLeft = curve -> down(curve.y().get(0));
        ToDoubleFunction<Curve> atRight = curve -> down(curve.y().get(curve.y().size() - 1));
        boolean right = named.stream().mapToDouble(atRight).min().orElse(0)
                >= named.stream().mapToDouble(atLeft).min().orElse(0);
        double longest = named.stream()
                .mapToDouble(curve -> LETTER * curve.name().length())
                .max()
                .orElse(0);
        double from = right ? width - RIGHT - longest - 40 : LEFT + 10;
        return IntStream.range(0, named.size())
                .mapToObj(i -> {
                    double middle = TOP + LEGEND_LINE * (i + 0.8);
                    return "<path d=\"M" + px(from) + " " + px(middle) + "h22\" stroke=\"" + colour(named.get(i))
                            + "\"" + dash(named.get(i)) + " stroke-width=\"2\"/>\n"
                            + text(from + 28, middle + 4, "start", named.get(i).name(), "");
                })
                .collect(Collectors.joining());
    }

    private static String line(double x1, double y1, double x2, double y2) {
        return "<path d=\"M" + px(x1) + " " + px(y1) + "L" + px(x2) + " " + px(y2) + "\" stroke=\"#e2e2e2\"/>\n";
    }

    private static String text(double atX, double atY, String anchor, String text, String more) {
        return "<text x=\"" + px(atX) + "\" y=\"" + px(atY) + "\" text-anchor=\"" + anchor + "\"" + more + ">"
                + Html.text(text) + "</text>\n";
    }

    /**
     * A length to a tenth of a pixel.
     *
     * @param length a finite length [px]
     * @return its digits
     */
    public static String px(double length) {
        String text = String.format(Locale.ROOT, "%.1f", length);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
