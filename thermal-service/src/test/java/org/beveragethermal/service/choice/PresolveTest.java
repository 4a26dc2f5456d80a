/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A problem taken apart says the same as the problem: tried choice by choice, and in cases counted by hand. */
class PresolveTest {
    private static List<Model> parts(ChoiceProblem problem) {
        return Presolve.parts(problem, new Budget(ChoiceLimits.exact(), ChoiceMonitor.none(), () -> 0L));
    }

    @Test
    void whatFitsInAllPartsIsWhatOverloadsNothing() {
        int fitting = 0;
        int not = 0;
        for (int seed = 0; seed < 600; seed++) {
            ChoiceProblem problem = DrawnProblems.small(seed);
            List<Model> parts = parts(problem);
            assertThat(parts.stream().flatMap(part -> part.items.stream()).map(ChoiceItem::id))
                    .as("seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(
                            problem.items().stream().map(ChoiceItem::id).toList());
            for (Map<String, CandidateRoute> choice : choices(parts)) {
                boolean fits = parts.stream().allMatch(part -> part.fits(part.use(numbers(part, choice))));
                assertThat(fits).as("seed %d, %s", seed, choice).isEqualTo(overloadsNothing(problem, choice));
                fitting += fits ? 1 : 0;
                not += fits ? 0 : 1;
            }
        }
        assertThat(fitting).isGreaterThan(500);
        assertThat(not).isGreaterThan(500);
    }

    private static List<Map<String, CandidateRoute>> choices(List<Model> parts) {
        List<Map<String, CandidateRoute>> choices = new ArrayList<>(List.of(Map.of()));
        for (Model part : parts) {
            for (int i = 0; i < part.items(); i++) {
                List<Map<String, CandidateRoute>> longer = new ArrayList<>();
                for (Map<String, CandidateRoute> choice : choices) {
                    for (int r = part.first[i]; r < part.first[i + 1]; r++) {
                        Map<String, CandidateRoute> with = new HashMap<>(choice);
                        with.put(part.items.get(i).id(), part.routes.get(r));
                        longer.add(with);
                    }
                }
                choices = longer;
            }
        }
        return choices;
    }

    private static int[] numbers(Model part, Map<String, CandidateRoute> choice) {
        return IntStream.range(0, part.routes.size())
                .filter(r -> part.routes
                        .get(r)
                        .equals(choice.get(part.items.get(part.itemOf[r]).id())))
                .toArray();
    }

    private static boolean overloadsNothing(ChoiceProblem problem, Map<String, CandidateRoute> choice) {
        List<ChoiceItem> only = problem.items().stream()
                .map(item -> new ChoiceItem(item.id(), List.of(choice.get(item.id()))))
                .toList();
        return BruteForce.least(new ChoiceProblem(problem.levels(), problem.slots(), problem.gear(), only))
                .isPresent();
    }

    @Test
    void noRouteThatIsLeftIsOutdoneByAnother() {
        int struck = 0;
        for (int seed = 0; seed < 600; seed++) {
            ChoiceProblem problem = DrawnProblems.small(seed);
            Map<String, Map<Integer, Integer>> scarce = scarce(problem);
            for (Model part : parts(problem)) {
                struck += part.outdone.size();
                for (int a = 0; a < part.routes.size(); a++) {
                    for (int b = part.first[part.itemOf[a]]; b < part.first[part.itemOf[a] + 1]; b++) {
                        assertThat(a != b && outdoes(part.routes.get(a), part.routes.get(b), scarce))
                                .as("seed %d: %s and %s", seed, part.routes.get(a), part.routes.get(b))
                                .isFalse();
                    }
                }
            }
        }
        assertThat(struck).isGreaterThan(100);
    }

    /** Gear and slots that can be overloaded at all. */
    private static Map<String, Map<Integer, Integer>> scarce(ChoiceProblem problem) {
        Map<String, Map<Integer, Integer>> scarce = new HashMap<>();
        for (SharedGear gear : problem.gear()) {
            for (int slot = 0; slot < problem.slots(); slot++) {
                int at = slot;
                int most = problem.items().stream()
                        .mapToInt(item -> item.routes().stream()
                                .mapToInt(route -> places(route, gear.id(), at))
                                .max()
                                .orElseThrow())
                        .sum();
                if (most > gear.capacityBySlot().get(slot)) {
                    scarce.computeIfAbsent(gear.id(), id -> new HashMap<>()).put(slot, most);
                }
            }
        }
        return scarce;
    }

    private static int places(CandidateRoute route, String gear, int slot) {
        return route.loads().stream()
                .filter(load -> load.gearId().equals(gear) && load.firstSlot() <= slot && slot < load.endSlot())
                .mapToInt(Load::places)
                .sum();
    }

    private static boolean outdoes(CandidateRoute a, CandidateRoute b, Map<String, Map<Integer, Integer>> scarce) {
        return IntStream.range(0, a.costs().size())
                        .allMatch(k -> a.costs().get(k) <= b.costs().get(k))
                && scarce.entrySet().stream()
                        .allMatch(gear -> gear.getValue().keySet().stream()
                                .allMatch(slot -> places(a, gear.getKey(), slot) <= places(b, gear.getKey(), slot)));
    }

    private static ChoiceItem item(String id, Load... loads) {
        List<CandidateRoute> routes = new ArrayList<>();
        for (Load load : loads) {
            routes.add(new CandidateRoute("with " + routes.size(), List.of((long) routes.size()), List.of(load)));
        }
        routes.add(new CandidateRoute("without", List.of(100L), List.of()));
        return new ChoiceItem(id, routes);
    }

    private static Load tub(int first, int end, int places) {
        return new Load("tub", first, end, places);
    }

    private static List<ChoiceAnswer.Span> rows(List<Integer> capacity, ChoiceItem... items) {
        ChoiceProblem problem = new ChoiceProblem(
                List.of("cost"), capacity.size(), List.of(new SharedGear("tub", capacity)), List.of(items));
        return parts(problem).stream()
                .flatMap(part -> part.slots.stream())
                .map(Model.Slot::span)
                .toList();
    }

    private static ChoiceAnswer.Span span(int first, int end) {
        return new ChoiceAnswer.Span("tub", first, end);
    }

    @Test
    void slotsInWhichTheSameRoutesTakeTheSameAreOneRowAndRowsThatOthersImplyAreNone() {
        // Both stand there together in slots 3 and 4; before and after only one does, which cannot overload one place.
        assertThat(rows(List.of(1, 1, 1, 1, 1, 1, 1, 1), item("a", tub(1, 5, 1)), item("b", tub(3, 7, 1))))
                .containsExactly(span(3, 5));
        // Three that come one after the other and all stay: the last slots say it all, unless there is more room in
        // them.
        ChoiceItem[] coming = {item("a", tub(0, 8, 1)), item("b", tub(2, 8, 1)), item("c", tub(4, 8, 1))};
        assertThat(rows(List.of(1, 1, 1, 1, 1, 1, 1, 1), coming)).containsExactly(span(4, 8));
        assertThat(rows(List.of(1, 1, 1, 1, 2, 2, 2, 2), coming)).containsExactly(span(2, 4), span(4, 8));
        // Three that are there together and leave one by one: the first slots say it all, unless there is more room in
        // them.
        ChoiceItem[] leaving = {item("a", tub(0, 8, 1)), item("b", tub(0, 6, 1)), item("c", tub(0, 4, 1))};
        assertThat(rows(List.of(1, 1, 1, 1, 1, 1, 1, 1), leaving)).containsExactly(span(0, 4));
        assertThat(rows(List.of(2, 2, 2, 2, 1, 1, 1, 1), leaving)).containsExactly(span(0, 4), span(4, 6));
        // One leaves as another comes: neither row implies the other.
        ChoiceItem[] both = {item("a", tub(0, 4, 1)), item("b", tub(0, 8, 1)), item("c", tub(4, 8, 1))};
        assertThat(rows(List.of(1, 1, 1, 1, 1, 1, 1, 1), both)).containsExactly(span(0, 4), span(4, 8));
        // Enough room for all.
        assertThat(rows(List.of(3, 3, 3, 3, 3, 3, 3, 3), both)).isEmpty();
        // A route that takes more later than sooner, and one that takes more sooner.
        CandidateRoute growing = new CandidateRoute("g", List.of(0L), List.of(tub(0, 8, 1), tub(4, 8, 2)));
        CandidateRoute without = new CandidateRoute("without", List.of(9L), List.of());
        assertThat(rows(List.of(1, 1, 1, 1, 3, 3, 3, 3), new ChoiceItem("a", List.of(growing, without)), both[1]))
                .containsExactly(span(0, 4), span(4, 8));
        assertThat(rows(List.of(1, 1, 1, 1, 1, 1, 1, 1), new ChoiceItem("a", List.of(growing, without)), both[1]))
                .containsExactly(span(4, 8));
    }

    @Test
    void theTightestSlotStandsForASpan() {
        ChoiceProblem problem = new ChoiceProblem(
                List.of("cost"),
                4,
                List.of(new SharedGear("tub", List.of(2, 1, 1, 2))),
                List.of(item("a", tub(0, 4, 1)), item("b", tub(0, 4, 1)), item("c", tub(0, 4, 1))));
        assertThat(parts(problem)).singleElement().satisfies(part -> {
            assertThat(part.slots).containsExactly(new Model.Slot(span(0, 4), 1, 1));
            assertThat(part.kind).containsExactly(0, 0, 0);
        });
    }

    @Test
    void itemsThatShareNothingScarceAreApartAndThoseWithFewRoutesFirst() {
        ChoiceItem a = item("a", tub(1, 3, 1), tub(0, 2, 1));
        ChoiceItem b = item("b", tub(2, 4, 1));
        ChoiceItem c = item("c", new Load("pail", 0, 4, 1));
        ChoiceItem d = item("d", new Load("pail", 0, 4, 1));
        ChoiceItem f = item("f", tub(2, 4, 1));
        ChoiceItem e = item("e", new Load("wide", 0, 4, 1));
        ChoiceProblem problem = new ChoiceProblem(
                List.of("cost"),
                4,
                List.of(
                        SharedGear.constant("tub", 1, 4),
                        SharedGear.constant("pail", 1, 4),
                        SharedGear.constant("wide", 1, 4)),
                List.of(a, c, e, b, d, f));
        assertThat(parts(problem).stream()
                        .map(part -> part.items.stream().map(ChoiceItem::id).collect(Collectors.joining()))
                        .toList())
                .containsExactly("e", "cd", "abf");
    }

    @Test
    void itemsThatAreAlikeAreKnownAsSuchWhateverTheOrderOfTheirRoutes() {
        CandidateRoute in = new CandidateRoute("in", List.of(0L), List.of(tub(0, 2, 1)));
        CandidateRoute out = new CandidateRoute("out", List.of(5L), List.of());
        CandidateRoute dearer = new CandidateRoute("out", List.of(6L), List.of());
        ChoiceProblem problem = new ChoiceProblem(
                List.of("cost"),
                2,
                List.of(SharedGear.constant("tub", 1, 2)),
                List.of(
                        new ChoiceItem("a", List.of(in, out)),
                        new ChoiceItem("b", List.of(out, in)),
                        new ChoiceItem("c", List.of(in, dearer))));
        assertThat(parts(problem)).singleElement().satisfies(part -> {
            assertThat(part.kind[1]).isEqualTo(part.kind[0]);
            assertThat(part.kind[2]).isNotEqualTo(part.kind[0]);
            assertThat(part.routes.get(part.first[1])).isEqualTo(part.routes.get(part.first[0]));
        });
    }

    @Test
    void ofRoutesThatAreTheSameOneIsLeft() {
        CandidateRoute one = new CandidateRoute("one", List.of(5L), List.of());
        CandidateRoute same = new CandidateRoute("same", List.of(5L), List.of());
        ChoiceProblem problem =
                new ChoiceProblem(List.of("cost"), 1, List.of(), List.of(new ChoiceItem("a", List.of(one, same))));
        assertThat(parts(problem)).singleElement().satisfies(part -> {
            assertThat(part.routes).hasSize(1);
            assertThat(part.outdone).containsExactly(new Certificate.Outdone("a", "same", "one"));
        });
        assertThat(Arrays.stream(parts(problem).get(0).first)).containsExactly(0, 1);
    }

    @Test
    void aSpentBudgetGivesNoParts() {
        ChoiceProblem problem = DrawnProblems.shared(1);
        for (int ticks = 1; ticks < 120; ticks += 3) {
            long[] clock = {0};
            Budget budget =
                    new Budget(ChoiceLimits.within(Duration.ofNanos(ticks)), ChoiceMonitor.none(), () -> clock[0]++);
            List<Model> parts = Presolve.parts(problem, budget);
            assertThat(parts.isEmpty()).isEqualTo(budget.spent());
            if (!parts.isEmpty()) {
                return;
            }
        }
    }
}
