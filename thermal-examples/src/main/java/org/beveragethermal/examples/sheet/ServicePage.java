/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.service.caution.CautionTexts;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.PlanPhrases;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.target.ServingTarget;

/**
 * A plan as one HTML page that needs nothing else: no network, no script. It is read on a phone, in the light or the dark, and an evening
 * of a dozen bottles prints on one sheet of A4. The same bytes for any locale, zone and clock.
 */
public final class ServicePage {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
    private static final String STYLE = "service-page.css";

    private final Scenario scenario;
    private final ServicePlan plan;
    private final Advice advice;
    private final PlanTexts texts;
    private final SheetWords words;

    private ServicePage(Scenario scenario, ServicePlan plan, Advice advice) {
        this.scenario = scenario;
        this.plan = plan;
        this.advice = advice;
        this.texts = PlanTexts.in(Locale.ROOT, scenario.zone()).naming(plan.request());
        this.words = new SheetWords(scenario, plan, texts);
    }

    /**
     * Writes the page. The courses are run for it, which takes about as long as one round of planning.
     *
     * @param scenario the scenario the plan was made for
     * @param plan the plan, of a request of {@link PlanRequests}
     * @param advice what does not work in it and what would help
     * @return the page, to be stored as UTF-8, lines ended by line feeds
     */
    public static String html(Scenario scenario, ServicePlan plan, Advice advice) {
        return new ServicePage(scenario, plan, advice).write();
    }

    private String write() {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                + "<meta name=\"color-scheme\" content=\"light dark\">\n<link rel=\"icon\" href=\"data:,\">\n<title>"
                + Markup.text("Service sheet: " + scenario.title()) + "</title>\n<style>\n" + style()
                + "</style>\n</head>\n<body>\n" + header() + "<main>\n"
                + Markup.section("moves", "What to do, in order of time", SheetMoves.table(plan, texts))
                + Markup.section("courses", "How warm each drink is", courses())
                + "<div class=\"notes\">\n" + ice() + advice()
                + listed("risks", "What could go wrong", SheetRisks.of(plan, texts, words::bottles))
                + mind()
                + listed("unknown", "What this sheet does not know", words.limits())
                + "</div>\n</main>\n</body>\n</html>\n";
    }

    private static String style() {
        try (InputStream in = Objects.requireNonNull(ServicePage.class.getResourceAsStream(STYLE), STYLE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(STYLE, e);
        }
    }

    private String header() {
        boolean works = plan.works();
        return "<header>\n<h1>" + Markup.text("Service sheet: " + scenario.title()) + "</h1>\n"
                + Markup.paragraph(String.format(
                        Locale.ROOT,
                        "%s, from %s, times in %s. %s",
                        DAY.withZone(scenario.zone()).format(scenario.startsAt()),
                        texts.clock(scenario.startsAt()),
                        scenario.zone().getId(),
                        scenario.note()))
                + "<p class=\"verdict " + (works ? "works" : "fails") + "\"><strong>"
                + (works ? "✓ All as wanted." : "✗ Not all as wanted.") + "</strong> " + Markup.text(words.verdict())
                + "</p>\n</header>\n";
    }

    private String courses() {
        List<DrinkCourses> drinks = DrinkCourses.of(scenario, plan);
        Instant to = plan.bottles().stream()
                .map(bottle -> bottle.order().finishedAt())
                .max(Instant::compareTo)
                .orElseThrow();
        return IntStream.range(0, drinks.size())
                .mapToObj(i -> figure("course" + (i + 1), drinks.get(i), to))
                .collect(Collectors.joining(
                        "",
                        "<p class=\"legend\">Line: expected in the bottle (second dashed, third dotted). Shaded: 90 % interval"
                                + " (see the end). Between long dashes: wanted. ◆ moved, ▼ first glass, ■ last glass, with the bottle’s number.</p>\n<div class=\"figures\">\n",
                        "</div>\n"));
    }

    private String figure(String id, DrinkCourses drink, Instant to) {
        ServingTarget target = drink.lines().get(0).bottles().get(0).order().target();
        StringBuilder html =
                new StringBuilder("<figure>\n<h3>" + Markup.text(drink.drink().name()) + "</h3>\n");
        html.append(CourseDrawing.svg(id, drink, texts, scenario.startsAt(), to));
        html.append("<figcaption>")
                .append(Markup.text(String.format(
                        Locale.ROOT,
                        "Wanted %s to %s, aim %s.",
                        SheetWords.figure(texts, target.lowK()),
                        texts.temperature(target.highK()),
                        texts.temperature(target.aimK()))));
        drink.lines().forEach(line -> html.append(" ").append(caption(drink, line)));
        return html.append("</figcaption>\n")
                .append(why(drink))
                .append("</figure>\n")
                .toString();
    }

    private String caption(DrinkCourses drink, DrinkCourses.Line line) {
        BottlePlan bottle = line.bottles().get(0);
        String numbers = line.numbers(drink.drink());
        // That all is well is said shortly: the page has to fit a sheet.
        String verdict = bottle.verdict().inRange()
                ? "✓ in range"
                : "<strong class=\"out\">✗ " + Markup.text(texts.words(PlanPhrases.verdict(bottle))) + "</strong>";
        return Markup.text(String.format(
                        Locale.ROOT,
                        "%s %s to %s, %s to %s ",
                        numbers.isEmpty() ? "Poured" : "Bottle " + numbers + ":",
                        texts.clock(bottle.order().servedAt()),
                        texts.clock(bottle.order().finishedAt()),
                        SheetWords.figure(texts, bottle.coldestK()),
                        texts.temperature(bottle.warmestK())))
                + verdict + ".";
    }

    private String why(DrinkCourses drink) {
        List<String> reasons = new ArrayList<>();
        for (DrinkCourses.Line line : drink.lines()) {
            BottlePlan bottle = line.bottles().get(0);
            String numbers = line.numbers(drink.drink());
            String prefix = numbers.isEmpty() ? "" : "Bottle " + numbers + ": ";
            bottle.reasons().forEach(reason -> reasons.add(prefix + texts.words(reason)));
        }
        return reasons.isEmpty()
                ? ""
                : "<details><summary>Why this way: " + Markup.text(drink.drink().name()) + "</summary>\n"
                        + Markup.list(reasons) + "</details>\n";
    }

    private String ice() {
        List<SheetWords.Fill> fills = words.ice();
        return fills.isEmpty()
                ? ""
                : Markup.section(
                        "ice",
                        "Ice to prepare",
                        fills.stream()
                                .map(fill -> "<p>" + "<strong>"
                                        + Markup.text("For " + fill.gear() + ":") + "</strong> "
                                        + Markup.text(fill.sentences()) + "</p>\n")
                                .collect(Collectors.joining()));
    }

    private String advice() {
        if (advice.faults().isEmpty()) {
            return "";
        }
        return Markup.section(
                "advice",
                "What does not work, and what would help",
                Markup.list(advice.faults().stream()
                                .map(fault -> "Fault: " + texts.words(fault.what()))
                                .toList())
                        + (advice.ways().isEmpty()
                                ? ""
                                : Markup.list(advice.ways().stream()
                                        .map(way -> "Help: "
                                                + texts.words(way.change().phrase()))
                                        .toList()))
                        + Markup.paragraph(SheetWords.found(advice)));
    }

    /** To whom cautions defer is said once, before them. */
    private String mind() {
        CautionTexts cautions = CautionTexts.in(Locale.ROOT);
        return Markup.section(
                "mind",
                "Mind",
                Markup.paragraph(cautions.deference())
                        + Markup.list(SheetCautions.of(plan, cautions::body, words::bottles)));
    }

    private static String listed(String name, String heading, List<String> texts) {
        return texts.isEmpty() ? "" : Markup.section(name, heading, Markup.list(texts));
    }
}
