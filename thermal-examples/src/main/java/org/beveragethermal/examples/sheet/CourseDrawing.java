/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.beveragethermal.examples.internal.SvgChart.px;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.beveragethermal.service.plan.BottleCourse;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.Expected;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.Poured;
import org.beveragethermal.service.plan.Stay;
import org.beveragethermal.service.target.ServingTarget;

/**
 * The course of a drink's temperature as SVG inside the page, whose style sheet gives the colours. Lines differ by dashes and numbers,
 * moments by shapes, so that no colour is needed to read it.
 */
final class CourseDrawing {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double WIDTH = 360;
    private static final double HEIGHT = 156;
    private static final double LEFT = 30;
    private static final double RIGHT = 18;
    private static final double TOP = 14;
    private static final double BOTTOM = 22;
    private static final double ROOM_K = 1.5;
    private static final long TICK_K = 5;
    private static final int MOST_TIMES = 7;
    private static final List<Duration> TIME_STEPS = List.of(
            Duration.ofMinutes(10),
            Duration.ofMinutes(30),
            Duration.ofHours(1),
            Duration.ofHours(2),
            Duration.ofHours(6));
    private static final double NUMBER_BELOW = 17;
    /** The style sheet knows so many kinds of line. */
    private static final int KINDS = 3;

    private final DrinkCourses drink;
    private final PlanTexts texts;
    private final Instant from;
    private final double spanS;
    private final double lowC;
    private final double highC;

    private CourseDrawing(DrinkCourses drink, PlanTexts texts, Instant from, Instant to) {
        this.drink = drink;
        this.texts = texts;
        this.from = from;
        this.spanS = Duration.between(from, to).toSeconds();
        ServingTarget target = target();
        lowC = celsius(Math.min(target.lowK(), least(Expected::low90K))) - ROOM_K;
        highC = celsius(Math.max(target.highK(), -least(expected -> -expected.high90K()))) + ROOM_K;
    }

    /**
     * Draws a drink.
     *
     * @param id beginning of the ids in the drawing, unique on the page
     * @param from left end of the axis of time
     * @param to its right end
     */
    static String svg(String id, DrinkCourses drink, PlanTexts texts, Instant from, Instant to) {
        return new CourseDrawing(drink, texts, from, to).draw(id);
    }

    private ServingTarget target() {
        return drink.lines().get(0).bottles().get(0).order().target();
    }

    private double least(ToDoubleFunction<Expected> value) {
        return drink.lines().stream()
                .flatMap(line -> line.points().stream())
                .map(BottleCourse.Point::expected)
                .mapToDouble(value)
                .min()
                .orElseThrow();
    }

    private String draw(String id) {
        return String.format(
                Locale.ROOT,
                """
                <svg role="img" aria-labelledby="%1$s-title %1$s-desc" viewBox="0 0 %2$s %3$s">
                <title id="%1$s-title">%4$s: temperature against time</title>
                <desc id="%1$s-desc">%5$s</desc>
                %6$s%7$s%8$s%9$s</svg>
                """,
                id,
                px(WIDTH),
                px(HEIGHT),
                Markup.text(drink.drink().name()),
                Markup.text(description()),
                wanted(),
                bands(),
                grid(),
                lines());
    }

    private String description() {
        return drink.lines().stream()
                .map(line -> String.format(
                        Locale.ROOT,
                        "%s starts at %s and is poured first at %s with %s, last at %s with %s.",
                        texts.bottles(
                                line.bottles().stream().map(b -> b.order().id()).toList()),
                        texts.temperature(line.points().get(0).expected().meanK()),
                        texts.clock(first(line).at()),
                        texts.temperature(first(line).expected().meanK()),
                        texts.clock(last(line).at()),
                        texts.temperature(last(line).expected().meanK())))
                .collect(Collectors.joining(
                        " ",
                        "Wanted " + texts.temperature(target().lowK()) + " to " + texts.temperature(target().highK())
                                + ". ",
                        ""));
    }

    private static Poured first(DrinkCourses.Line line) {
        return line.bottles().get(0).pours().get(0);
    }

    private static Poured last(DrinkCourses.Line line) {
        List<Poured> pours = line.bottles().get(0).pours();
        return pours.get(pours.size() - 1);
    }

    private String wanted() {
        double top = down(target().highK());
        double bottom = down(target().lowK());
        return "<rect class=\"wanted\" x=\"" + px(LEFT) + "\" y=\"" + px(top) + "\" width=\""
                + px(WIDTH - LEFT - RIGHT) + "\" height=\"" + px(bottom - top) + "\"/>\n"
                + edge(top) + edge(bottom);
    }

    private static String edge(double y) {
        return "<path class=\"edge\" d=\"M" + px(LEFT) + " " + px(y) + "H" + px(WIDTH - RIGHT) + "\"/>\n";
    }

    /** Marked temperatures [°C]; whole numbers, so that zero has no sign. */
    static List<Long> ticks(double lowC, double highC) {
        return LongStream.rangeClosed((long) Math.ceil(lowC / TICK_K), (long) Math.floor(highC / TICK_K))
                .mapToObj(step -> step * TICK_K)
                .toList();
    }

    private String grid() {
        StringBuilder svg = new StringBuilder();
        for (long tick : ticks(lowC, highC)) {
            double y = down(tick + ZERO_CELSIUS_K);
            svg.append("<path class=\"grid\" d=\"M" + px(LEFT) + " " + px(y) + "H" + px(WIDTH - RIGHT) + "\"/>")
                    .append(label(LEFT - 4, y + 4, "end", Long.toString(tick)));
        }
        svg.append(label(LEFT - 4, TOP - 4, "end", "°C"));
        Duration step = TIME_STEPS.stream()
                .filter(d -> spanS / d.toSeconds() <= MOST_TIMES)
                .findFirst()
                .orElse(Duration.ofSeconds((long) Math.ceil(spanS / MOST_TIMES)));
        for (long s = 0; s <= spanS; s += step.toSeconds()) {
            Instant time = from.plusSeconds(s);
            svg.append("<path class=\"grid\" d=\"M" + px(across(time)) + " " + px(HEIGHT - BOTTOM) + "v4\"/>")
                    .append(label(across(time), HEIGHT - 5, "middle", texts.clock(time)));
        }
        return svg.append("<path class=\"axis\" d=\"M" + px(LEFT) + " " + px(TOP) + "V" + px(HEIGHT - BOTTOM) + "H"
                        + px(WIDTH - RIGHT) + "\"/>\n")
                .toString();
    }

    private String bands() {
        return IntStream.range(0, drink.lines().size())
                .mapToObj(i -> {
                    List<BottleCourse.Point> points = drink.lines().get(i).points();
                    String upper = path(points, Expected::high90K);
                    String lower = IntStream.iterate(points.size() - 1, k -> k >= 0, k -> k - 1)
                            .mapToObj(k -> place(points.get(k), Expected::low90K))
                            .collect(Collectors.joining(" "));
                    return "<polygon class=\"interval kind" + kind(i) + "\" points=\"" + upper + " " + lower + "\"/>\n";
                })
                .collect(Collectors.joining());
    }

    private String lines() {
        return IntStream.range(0, drink.lines().size())
                .mapToObj(i -> "<polyline class=\"course kind" + kind(i) + "\" points=\""
                        + path(drink.lines().get(i).points(), Expected::meanK) + "\"/>\n"
                        + marks(drink.lines().get(i)))
                .collect(Collectors.joining());
    }

    private static int kind(int line) {
        return line % KINDS + 1;
    }

    private String path(List<BottleCourse.Point> points, ToDoubleFunction<Expected> value) {
        return points.stream().map(point -> place(point, value)).collect(Collectors.joining(" "));
    }

    private String place(BottleCourse.Point point, ToDoubleFunction<Expected> value) {
        return px(across(point.at())) + "," + px(down(value.applyAsDouble(point.expected())));
    }

    /** Diamonds where it is moved before it is served, a triangle at the first glass, a square at the last. */
    private String marks(DrinkCourses.Line line) {
        BottlePlan bottle = line.bottles().get(0);
        StringBuilder svg = new StringBuilder();
        for (Stay stay : bottle.stays()) {
            boolean moved = stay.from().isBefore(bottle.order().servedAt())
                    && !stay.where().equals(bottle.order().startsIn());
            if (moved) {
                line.points().stream()
                        .filter(point -> point.at().equals(stay.from()))
                        .findFirst()
                        .ifPresent(point -> svg.append(
                                mark(point.at(), point.expected().meanK(), "m0 -5.5l5.5 5.5l-5.5 5.5l-5.5 -5.5z")));
            }
        }
        Poured first = first(line);
        Poured last = last(line);
        svg.append(mark(first.at(), first.expected().meanK(), "m-5.5 -5h11l-5.5 10z"));
        svg.append(mark(last.at(), last.expected().meanK(), "m-4 -4h8v8h-8z"));
        String number = line.numbers(drink.drink());
        if (!number.isEmpty()) {
            svg.append(label(across(first.at()), down(first.expected().meanK()) + NUMBER_BELOW, "middle", number));
        }
        return svg.append('\n').toString();
    }

    private String mark(Instant at, double kelvins, String shape) {
        return "<path class=\"mark\" d=\"M" + px(across(at)) + " " + px(down(kelvins)) + shape + "\"/>";
    }

    private static String label(double x, double y, String anchor, String text) {
        return "<text x=\"" + px(x) + "\" y=\"" + px(y) + "\" text-anchor=\"" + anchor + "\">" + Markup.text(text)
                + "</text>";
    }

    private double across(Instant at) {
        return LEFT + Duration.between(from, at).toMillis() / (1000 * spanS) * (WIDTH - LEFT - RIGHT);
    }

    private double down(double kelvins) {
        return HEIGHT - BOTTOM - (celsius(kelvins) - lowC) / (highC - lowC) * (HEIGHT - TOP - BOTTOM);
    }

    private static double celsius(double kelvins) {
        return kelvins - ZERO_CELSIUS_K;
    }
}
