/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.beveragethermal.examples.scenario.Drink;
import org.beveragethermal.examples.scenario.IceStock;
import org.beveragethermal.examples.scenario.RefrigeratorKind;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.Fault;
import org.beveragethermal.service.plan.GearUse;
import org.beveragethermal.service.plan.Instruction;
import org.beveragethermal.service.plan.Phrase;
import org.beveragethermal.service.plan.PlanPhrases;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.target.ServingTarget;

/** A plan as a sheet of plain text, at most 100 columns wide; the same text for any locale, zone and clock. */
public final class ServiceSheet {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double MILLIMETRES = 1000;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
    private static final String BESIDE_CLOCK = "       ";

    private final Scenario scenario;
    private final ServicePlan plan;
    private final Advice advice;
    private final PlanTexts texts;
    private final PlanPhrases phrases;
    private final SheetPage page = new SheetPage();

    private ServiceSheet(Scenario scenario, ServicePlan plan, Advice advice) {
        this.scenario = scenario;
        this.plan = plan;
        this.advice = advice;
        this.texts = PlanTexts.in(Locale.ROOT, scenario.zone()).naming(plan.request());
        this.phrases = PlanPhrases.of(plan);
    }

    /**
     * Writes the sheet.
     *
     * @param scenario the scenario the plan was made for
     * @param plan the plan
     * @param advice what does not work in it and what would help
     * @return the sheet, lines ended by line feeds
     */
    public static String text(Scenario scenario, ServicePlan plan, Advice advice) {
        return new ServiceSheet(scenario, plan, advice).write();
    }

    private String write() {
        page.line("Service sheet: " + scenario.title());
        page.line(String.format(
                Locale.ROOT,
                "%s, from %s, times in %s",
                DAY.withZone(scenario.zone()).format(scenario.startsAt()),
                texts.clock(scenario.startsAt()),
                scenario.zone().getId()));
        page.paragraph("", scenario.note());
        verdict();
        page.heading("What to do, in order of time");
        plan.instructions().forEach(this::instruction);
        advice();
        page.heading("Bottles");
        plan.bottles().forEach(this::bottle);
        ice();
        page.heading("Mind");
        SheetCautions.of(plan, texts).forEach(caution -> page.paragraph("- ", caution));
        page.heading("What this sheet does not know");
        limits().forEach(limit -> page.paragraph("- ", limit));
        return page.text();
    }

    private void verdict() {
        long inRange =
                plan.bottles().stream().filter(b -> b.verdict().inRange()).count();
        page.line("");
        page.paragraph(
                "",
                String.format(
                        Locale.ROOT,
                        "%d of %d bottles are in their range when poured and until they are finished%s",
                        inRange,
                        plan.bottles().size(),
                        plan.conflicts().isEmpty() ? "." : "; some gear would be too full (see below)."));
    }

    private void instruction(Instruction instruction) {
        String what = texts.words(phrases.action(instruction));
        String latest = PlanPhrases.latest(instruction)
                .map(phrase -> ", " + texts.words(phrase))
                .orElse("");
        page.paragraph(texts.clock(instruction.at()) + "  ", what + latest);
        if (instruction.bottleIds().isEmpty()) {
            return;
        }
        List<Phrase> outlook = PlanPhrases.outlook(instruction);
        if (!outlook.isEmpty()) {
            page.paragraph(BESIDE_CLOCK, outlook.stream().map(texts::words).collect(Collectors.joining("; ")));
        }
        if (instruction.action() != Instruction.Action.SERVE && instruction.action() != Instruction.Action.POUR) {
            page.paragraph(BESIDE_CLOCK, "(" + texts.words(instruction.reason()) + ")");
        }
    }

    private void advice() {
        if (advice.faults().isEmpty()) {
            return;
        }
        page.heading("What does not work, and what would help");
        for (Fault fault : advice.faults()) {
            page.paragraph("- ", texts.words(fault.what()));
        }
        page.line("");
        for (Advice.Way way : advice.ways()) {
            page.paragraph("- ", texts.words(way.change().phrase()));
        }
        page.paragraph("", found());
    }

    private String found() {
        String stopped = advice.complete() ? "" : "; time ran out before everything was tried";
        return String.format(
                Locale.ROOT,
                advice.ways().isEmpty()
                        ? "Nothing that was tried helps (%d plans were made on trial%s)."
                        : "Each of these is enough by itself (%d plans were made on trial%s).",
                advice.plannerRuns(),
                stopped);
    }

    private void bottle(BottlePlan bottle) {
        ServingTarget target = bottle.order().target();
        page.line(bottle.order().name());
        page.paragraph(
                "  wanted   ",
                String.format(
                        Locale.ROOT,
                        "%s to %s, aim %s (%s)",
                        texts.temperature(target.lowK()),
                        texts.temperature(target.highK()),
                        texts.temperature(target.aimK()),
                        target.basis()));
        page.paragraph(
                "  poured   ",
                String.format(
                        Locale.ROOT,
                        "%s at %s; last glass %s at %s; in between %s to %s",
                        texts.clock(bottle.order().servedAt()),
                        texts.temperature(bottle.pouredAtK()),
                        texts.clock(bottle.order().finishedAt()),
                        texts.temperature(bottle.finishedAtK()),
                        texts.temperature(bottle.coldestK()),
                        texts.temperature(bottle.warmestK())));
        page.paragraph("  verdict  ", texts.words(PlanPhrases.verdict(bottle)));
        for (int i = 0; i < bottle.reasons().size(); i++) {
            page.paragraph(
                    i == 0 ? "  why      " : "           ",
                    texts.words(bottle.reasons().get(i)));
        }
        page.line("");
    }

    private void ice() {
        for (GearUse use : plan.gearUses()) {
            if (use.iceKg() > 0 && scenario.iceStock().isPresent()) {
                page.heading("Ice and water for " + texts.where(use.gearId()));
                IceStock stock = scenario.iceStock().get();
                double blocks = use.iceKg() / (Ice.density(ZERO_CELSIUS_K) * Math.pow(stock.blockSideM(), 3));
                page.paragraph(
                        "",
                        String.format(
                                Locale.ROOT,
                                "%.1f kg of ice (about %.0f blocks of %.0f mm; %.1f kg in stock) and %.1f L of water, at %s. "
                                        + "%s",
                                use.iceKg(),
                                blocks,
                                stock.blockSideM() * MILLIMETRES,
                                stock.massKg(),
                                use.waterKg(),
                                texts.clock(use.filledAt()),
                                iceLeft(use)));
            }
        }
    }

    private String iceLeft(GearUse use) {
        return use.iceGoneAt()
                .map(gone -> "All of it has melted by " + texts.clock(gone) + ".")
                .orElse(String.format(
                        Locale.ROOT, "About %.1f kg are left when its last bottle is finished.", use.iceLeftKg()));
    }

    private List<String> limits() {
        Set<String> limits = new LinkedHashSet<>(plan.notes());
        if (scenario.refrigerators().stream().anyMatch(r -> r.kind() == RefrigeratorKind.FAN_ASSISTED)) {
            limits.add("Refrigerators with a fan are counted as if their air stood still; they chill faster.");
        }
        limits.add(
                "Refrigerators are taken to hold their temperature, however often they are opened and however much warm wine"
                        + " goes in.");
        limits.add("Temperatures are means of the whole bottle; what is poured warms further in the glass.");
        limits.add("No sun, draught or moisture on the glass. Drinks are taken by strength alone, without sugar.");
        unused().forEach((name, count) ->
                limits.add(count + " × " + name + " is not needed by any serving and stays where it is."));
        return List.copyOf(limits);
    }

    private Map<String, Integer> unused() {
        Map<String, Integer> unused = new LinkedHashMap<>();
        for (Drink drink : scenario.drinks()) {
            int bottles = PlanRequests.unserved(scenario, drink);
            if (bottles > 0) {
                unused.merge(drink.name(), bottles, Integer::sum);
            }
        }
        return unused;
    }
}
