/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.service.choice.ChoiceAnswer;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.Adviser;
import org.beveragethermal.service.plan.Change;
import org.beveragethermal.service.plan.Instruction;
import org.beveragethermal.service.plan.News;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.PlanMonitor;
import org.beveragethermal.service.plan.PlanPhrases;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.Replan;
import org.beveragethermal.service.plan.Replanner;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.testsupport.DocumentParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Leaves the tables of {@code thermal-service/docs/planning.md}: a plan, its proof, advice, and what news makes of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlanningPagesTest {

    /** So long that all is proven on any machine, and the tables are the same everywhere. */
    private static final PlanLimits LIMITS = PlanLimits.within(Duration.ofHours(1));

    private static final Instant TWENTY_PAST_SIX = Instant.parse("2027-06-18T16:20:00Z");

    private final Scenario scenario = ScenarioReader.read(Path.of("scenarios", "two-sittings.json"));
    private final ServicePlan plan = Planner.plan(PlanRequests.from(scenario), LIMITS, PlanMonitor.NONE);
    private final PlanTexts texts = texts(plan.request(), scenario.zone());

    private static PlanTexts texts(PlanRequest request, ZoneId zone) {
        return PlanTexts.in(Locale.ROOT, zone).naming(request);
    }

    @Test
    void theShippedScenarioInShort() {
        List<List<String>> rows = new ArrayList<>();
        for (Instruction instruction : plan.instructions()) {
            List<String> outlook =
                    PlanPhrases.outlook(instruction).stream().map(texts::words).toList();
            rows.add(List.of(
                    texts.clock(instruction.at()),
                    texts.words(PlanPhrases.of(plan).action(instruction)),
                    instruction.latest().map(texts::clock).orElse(""),
                    outlook.isEmpty() ? "" : outlook.get(0),
                    outlook.size() < 2 ? "" : outlook.get(1)));
        }
        assertThat(rows).hasSizeGreaterThan(plan.bottles().size());
        DocumentParts.leaveTable(
                "planning-evening", List.of("At", "What", "At the latest", "Expected", "Margin"), rows);
    }

    @Test
    void theChoiceAndItsProof() {
        ChoiceProblem problem = plan.chosen().problem();
        ChoiceAnswer answer = plan.chosen().answer();
        assertThat(answer).isInstanceOf(ChoiceAnswer.Proven.class);
        List<Long> costs = answer.found().orElseThrow().costByLevel();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < costs.size(); i++) {
            rows.add(List.of(
                    Integer.toString(i + 1), problem.levels().get(i), Long.toString(costs.get(i)), "proven least"));
        }
        DocumentParts.leaveTable("planning-levels", List.of("Level", "What is to be least", "Sum", "Verdict"), rows);
        long candidates =
                problem.items().stream().mapToLong(item -> item.routes().size()).sum();
        long inRange =
                plan.bottles().stream().filter(b -> b.verdict().inRange()).count();
        DocumentParts.leaveTable(
                "planning-choice",
                List.of("Bottles", "Candidate routes", "Shared limits", "Slots of time", "Rounds", "In range, coupled"),
                List.of(List.of(
                        Integer.toString(problem.items().size()),
                        Long.toString(candidates),
                        Integer.toString(problem.gear().size()),
                        Integer.toString(problem.slots()),
                        Integer.toString(plan.chosen().rounds()),
                        inRange + " of " + plan.bottles().size())));
    }

    @Test
    void whatWouldHelp() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(advised("The evening above", plan, texts));
        InventedEvenings.all()
                .forEach((name, request) -> rows.add(advised(
                        name, Planner.plan(request, LIMITS, PlanMonitor.NONE), texts(request, ZoneOffset.UTC))));
        DocumentParts.leaveTable(
                "planning-advice",
                List.of("Evening", "What does not work", "What would help, each by itself", "Plans on trial"),
                rows);
    }

    private static List<String> advised(String name, ServicePlan tried, PlanTexts words) {
        Advice advice = Adviser.advise(tried, LIMITS, PlanMonitor.NONE, () -> 0);
        assertThat(advice.faults()).as(name).isNotEmpty();
        assertThat(advice.ways()).as(name).isNotEmpty();
        assertThat(advice.complete()).isTrue();
        return List.of(
                name,
                joined(advice.faults().stream()
                        .map(fault -> words.words(fault.what()))
                        .toList()),
                joined(advice.ways().stream()
                        .map(way -> words.words(way.change().phrase()))
                        .toList()),
                Integer.toString(advice.plannerRuns()));
    }

    @Test
    void whatNewsMakesOfIt() {
        List<String> later = List.of("light-white 1", "oaked-white 1", "light-red 1", "full-red 1");
        List<List<String>> rows = new ArrayList<>();
        rows.add(replanned("none"));
        rows.add(replanned(
                "the guests of the first sitting come 25 min later",
                new News.LateGuests(later, Duration.ofMinutes(25))));
        rows.add(replanned(
                "the light red in the refrigerator is read at 21.0 °C, give or take 0.3 K",
                new News.Reading("light-red 1", 294.15, 0.3)));
        rows.add(replanned("the wine cabinet has stopped", new News.GearLost("bar-cabinet", "dining-room")));
        DocumentParts.leaveTable(
                "planning-news",
                List.of("News at 18:20", "What changes, and why", "Bottles left as planned", "In range"),
                rows);
    }

    private List<String> replanned(String what, News... news) {
        Replan replan = Replanner.replan(plan, TWENTY_PAST_SIX, List.of(news), LIMITS);
        PlanTexts words = texts.naming(replan.plan().request());
        List<String> told = new ArrayList<>();
        replan.readings().forEach(reading -> told.add(words.words(reading.phrase())));
        replan.changes().forEach(change -> told.add(words.words(change.phrase())));
        assertThat(replan.done())
                .isEqualTo(plan.instructions().stream()
                        .filter(i -> i.at().isBefore(TWENTY_PAST_SIX))
                        .toList());
        long changed =
                replan.changes().stream().map(Change::bottleId).distinct().count();
        long ahead = plan.bottles().stream()
                .filter(b -> b.order().finishedAt().isAfter(TWENTY_PAST_SIX))
                .count();
        long inRange = replan.plan().bottles().stream()
                .filter(b -> b.order().finishedAt().isAfter(TWENTY_PAST_SIX))
                .filter(b -> b.verdict().inRange())
                .count();
        return List.of(
                what,
                told.isEmpty() ? "nothing" : joined(told),
                (ahead - changed) + " of " + ahead,
                inRange + " of " + ahead);
    }

    private static String joined(List<String> sentences) {
        return sentences.stream().collect(Collectors.joining(" · "));
    }
}
