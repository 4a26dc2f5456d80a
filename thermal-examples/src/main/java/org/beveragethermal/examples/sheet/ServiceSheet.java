/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.service.caution.CautionTexts;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.Fault;
import org.beveragethermal.service.plan.Instruction;
import org.beveragethermal.service.plan.Phrase;
import org.beveragethermal.service.plan.PlanPhrases;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.target.ServingTarget;

/** A plan as a sheet of plain text, at most 100 columns wide; the same text for any locale, zone and clock. */
public final class ServiceSheet {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
    private static final String BESIDE_CLOCK = "       ";

    private final Scenario scenario;
    private final ServicePlan plan;
    private final Advice advice;
    private final PlanTexts texts;
    private final PlanPhrases phrases;
    private final SheetWords words;
    private final SheetPage page = new SheetPage();

    private ServiceSheet(Scenario scenario, ServicePlan plan, Advice advice) {
        this.scenario = scenario;
        this.plan = plan;
        this.advice = advice;
        this.texts = PlanTexts.in(Locale.ROOT, scenario.zone()).naming(plan.request());
        this.phrases = PlanPhrases.of(plan);
        this.words = new SheetWords(scenario, plan, texts);
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
        page.line("");
        page.paragraph("", words.verdict());
        page.heading("What to do, in order of time");
        plan.instructions().forEach(this::instruction);
        advice();
        page.heading("Bottles");
        plan.bottles().forEach(this::bottle);
        words.ice().forEach(fill -> {
            page.heading("Ice and water for " + fill.gear());
            page.paragraph("", fill.sentences());
        });
        page.heading("Mind");
        SheetCautions.of(plan, CautionTexts.in(Locale.ROOT)::of, texts::bottles)
                .forEach(caution -> page.paragraph("- ", caution));
        page.heading("What this sheet does not know");
        words.limits().forEach(limit -> page.paragraph("- ", limit));
        return page.text();
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
        page.paragraph("", SheetWords.found(advice));
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
}
