/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioException;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.examples.sheet.PlanRequests;
import org.beveragethermal.examples.sheet.ServicePage;
import org.beveragethermal.examples.sheet.ServiceSheet;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.Adviser;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.Instruction;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.PlanMonitor;
import org.beveragethermal.service.plan.PlanPhrases;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.ServicePlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a service from a scenario. */
@Command(
        name = "plan",
        description =
                "Plans a service: what to do when, for every bottle of a scenario; status 1 if not every bottle is in its range")
final class PlanCommand implements Question {

    @Mixin
    private final OutputOptions output = new OutputOptions();

    @Parameters(paramLabel = "SCENARIO", description = "the scenario, a JSON file (scenarios/FORMAT.md)")
    String scenarioFile = "";

    @Option(names = "--advice", paramLabel = "TIME", description = "time for what would help; 20s if not given")
    String advice = "20s";

    @Override
    public OutputOptions output() {
        return output;
    }

    @Override
    public Answer answer(Session session) {
        boolean inCelsius = output.scale() == Scale.CELSIUS;
        if (!inCelsius && output.page().isPresent()) {
            throw Refusal.usage("--scale", output.scale, "C beside --html: the page of a plan is in °C");
        }
        Duration forAdvice = Quantities.duration("--advice", advice);
        Scenario scenario = scenario();
        PlanRequest request;
        try {
            request = PlanRequests.from(scenario);
        } catch (IllegalArgumentException e) {
            throw new Refusal(
                    ExitStatus.BAD_INPUT,
                    "SCENARIO " + Refusal.quoted(scenarioFile) + ": cannot be planned: " + e.getMessage());
        }
        PlanMonitor monitor = (stage, part) ->
                session.goOn("plan, " + stage.name().toLowerCase(Locale.ROOT).replace('_', ' '), part);
        try {
            ServicePlan plan = Planner.plan(request, PlanLimits.standard(), monitor);
            Advice helps = Adviser.advise(plan, PlanLimits.within(forAdvice), monitor);
            Answer answer = answer(scenario, plan, helps);
            return inCelsius ? withSheet(answer, scenario, plan, helps) : answer;
        } catch (CancellationException e) {
            throw new Refusal(ExitStatus.CANCELLED, "plan: given up as --limit asked, before it was done");
        }
    }

    private Scenario scenario() {
        try {
            return ScenarioReader.read(Path.of(scenarioFile));
        } catch (ScenarioException e) {
            throw new Refusal(ExitStatus.BAD_INPUT, "SCENARIO " + e.getMessage());
        } catch (InvalidPathException e) {
            throw Refusal.usage("SCENARIO", scenarioFile, "the path of a file (" + e.getReason() + ")");
        }
    }

    private Answer answer(Scenario scenario, ServicePlan plan, Advice helps) {
        PlanTexts texts = PlanTexts.in(Locale.ROOT, scenario.zone()).naming(plan.request());
        long inRange =
                plan.bottles().stream().filter(b -> b.verdict().inRange()).count();
        List<String> notes = new ArrayList<>(plan.notes());
        helps.faults().forEach(fault -> notes.add("Does not work: " + texts.words(fault.what())));
        helps.ways()
                .forEach(way ->
                        notes.add("Would help: " + texts.words(way.change().phrase())));
        return new Answer(
                "plan",
                plan.works() ? ExitStatus.DONE : ExitStatus.NO,
                scenario.title() + ": " + inRange + " of "
                        + plan.bottles().size()
                        + " bottles are in their range when poured and until they are finished.",
                List.of(instructions(scenario, plan, texts), bottles(scenario, plan, texts)),
                notes);
    }

    /** Sheet and page are in °C; for another scale the tables have to do. */
    private Answer withSheet(Answer answer, Scenario scenario, ServicePlan plan, Advice helps) {
        Answer withText = answer.withSheet(ServiceSheet.text(scenario, plan, helps));
        return output.page().isPresent() ? withText.withPage(ServicePage.html(scenario, plan, helps)) : withText;
    }

    private Answer.Table instructions(Scenario scenario, ServicePlan plan, PlanTexts texts) {
        Scale scale = output.scale();
        PlanPhrases phrases = PlanPhrases.of(plan);
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (Instruction instruction : plan.instructions()) {
            rows.add(List.of(
                    time(scenario, instruction.at()),
                    instruction.latest().map(latest -> time(scenario, latest)).orElse(Answer.Cell.none()),
                    Answer.Cell.of(texts.words(phrases.action(instruction))),
                    Answer.Cell.of(instruction.bottleIds().stream().collect(Collectors.joining(" "))),
                    Answer.Cell.of(instruction.where()),
                    instruction.expected().map(e -> scale.cell(e.meanK())).orElse(Answer.Cell.none()),
                    instruction.expected().map(e -> scale.cell(e.low90K())).orElse(Answer.Cell.none()),
                    instruction.expected().map(e -> scale.cell(e.high90K())).orElse(Answer.Cell.none())));
        }
        return new Answer.Table(
                "What to do, with the temperature expected then (interval of 90 %)",
                List.of(
                        Answer.Column.words("at"),
                        Answer.Column.words("latest"),
                        Answer.Column.words("what"),
                        Answer.Column.words("bottles"),
                        Answer.Column.words("where"),
                        new Answer.Column("expected", scale.symbol()),
                        new Answer.Column("low", scale.symbol()),
                        new Answer.Column("high", scale.symbol())),
                rows);
    }

    private Answer.Table bottles(Scenario scenario, ServicePlan plan, PlanTexts texts) {
        Scale scale = output.scale();
        List<List<Answer.Cell>> rows = new ArrayList<>();
        for (BottlePlan bottle : plan.bottles()) {
            rows.add(List.of(
                    Answer.Cell.of(bottle.order().id()),
                    Answer.Cell.of(bottle.order().name()),
                    scale.cell(bottle.order().target().lowK()),
                    scale.cell(bottle.order().target().highK()),
                    time(scenario, bottle.order().servedAt()),
                    scale.cell(bottle.pouredAtK()),
                    scale.cell(bottle.finishedAtK()),
                    Answer.Cell.of(texts.words(PlanPhrases.verdict(bottle)))));
        }
        return new Answer.Table(
                "Bottles",
                List.of(
                        Answer.Column.words("id"),
                        Answer.Column.words("name"),
                        new Answer.Column("wanted from", scale.symbol()),
                        new Answer.Column("wanted to", scale.symbol()),
                        Answer.Column.words("poured at"),
                        new Answer.Column("poured", scale.symbol()),
                        new Answer.Column("last glass", scale.symbol()),
                        Answer.Column.words("verdict")),
                rows);
    }

    private static Answer.Cell time(Scenario scenario, Instant at) {
        return Answer.Cell.of(DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atZone(scenario.zone())));
    }
}
