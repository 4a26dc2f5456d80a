/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Where the search begins, against what is counted by trying. */
class LocalSearchTest {
    private static Budget free() {
        return new Budget(ChoiceLimits.exact(), ChoiceMonitor.none(), () -> 0L);
    }

    private static Budget spent() {
        Budget budget = free();
        budget.end("spent");
        return budget;
    }

    private static List<Model> models() {
        List<Model> models = new ArrayList<>();
        for (int seed = 0; seed < 400; seed++) {
            models.addAll(Presolve.parts(DrawnProblems.small(seed), free()));
        }
        for (int seed = 0; seed < 60; seed++) {
            models.addAll(Presolve.parts(DrawnProblems.shared(seed), free()));
        }
        return models;
    }

    private static List<Long> costs(Model model, int... routes) {
        return LongStream.range(0, model.levels())
                .map(k -> Arrays.stream(routes)
                        .mapToLong(r -> model.costs[(int) k][r])
                        .sum())
                .boxed()
                .toList();
    }

    private static boolean fits(Model model, List<Integer> routes) {
        long[] use = new long[model.capacities()];
        for (int r : routes) {
            for (int e = 0; e < model.rows[r].length; e++) {
                use[model.rows[r][e]] += model.places[r][e];
            }
        }
        return IntStream.range(0, use.length)
                .allMatch(q -> use[q] <= model.slots.get(q).capacity());
    }

    private static IntStream routes(Model model, int item) {
        return IntStream.range(model.first[item], model.first[item + 1]);
    }

    @Test
    void begunGivesEachItemTheCheapestThatFitsBesideThoseServedBefore() {
        for (Model model : models()) {
            int[] begun = LocalSearch.begun(model, free());
            List<Integer> before = new ArrayList<>();
            List<Integer> order = IntStream.range(0, model.items())
                    .boxed()
                    .sorted(Comparator.comparingLong((Integer i) -> routes(model, i)
                                            .mapToLong(r -> model.costs[0][r])
                                            .min()
                                            .orElseThrow()
                                    - routes(model, i)
                                            .mapToLong(r -> model.costs[0][r])
                                            .max()
                                            .orElseThrow())
                            .thenComparing(i -> i))
                    .toList();
            for (int item : order) {
                int given = begun[item];
                assertThat(model.itemOf[given]).isEqualTo(item);
                List<List<Long>> fitting = routes(model, item)
                        .filter(r -> fitsBeside(model, before, r))
                        .mapToObj(r -> costs(model, r))
                        .toList();
                List<List<Long>> all =
                        routes(model, item).mapToObj(r -> costs(model, r)).toList();
                List<Long> least = (fitting.isEmpty() ? all : fitting)
                        .stream().min(BruteForce::compare).orElseThrow();
                assertThat(costs(model, given)).isEqualTo(least);
                assertThat(fitting.isEmpty() || fitsBeside(model, before, given))
                        .isTrue();
                before.add(given);
            }
        }
    }

    /** Whether a route overloads nothing that it takes itself. */
    private static boolean fitsBeside(Model model, List<Integer> before, int route) {
        long[] use = new long[model.capacities()];
        before.forEach(r -> model.add(use, r, 1));
        return IntStream.range(0, model.rows[route].length)
                .allMatch(e -> use[model.rows[route][e]] + model.places[route][e]
                        <= model.slots.get(model.rows[route][e]).capacity());
    }

    @Test
    void mendedOverloadsNothingAndIsFoundWheneverThereIsAChoiceForFewItems() {
        int possible = 0;
        int found = 0;
        for (Model model : models()) {
            Incumbent mended = LocalSearch.mended(model, LocalSearch.begun(model, free()), free());
            if (mended != null) {
                assertThat(fits(model, Arrays.stream(mended.choice).boxed().toList()))
                        .isTrue();
                assertThat(Arrays.stream(mended.cost).boxed().toList()).isEqualTo(costs(model, mended.choice));
                assertThat(Arrays.stream(mended.choice).map(r -> model.itemOf[r]))
                        .containsExactlyElementsOf(
                                IntStream.range(0, model.items()).boxed().toList());
            }
            if (model.items() <= 6) {
                boolean any = anyFits(model, 0, new ArrayList<>());
                possible += any ? 1 : 0;
                found += mended != null ? 1 : 0;
                assertThat(any || mended == null).isTrue();
            }
        }
        assertThat(possible).isGreaterThan(300);
        assertThat(found).as("of %d", possible).isEqualTo(possible);
    }

    private static boolean anyFits(Model model, int item, List<Integer> chosen) {
        if (item == model.items()) {
            return fits(model, chosen);
        }
        for (int r = model.first[item]; r < model.first[item + 1]; r++) {
            chosen.add(r);
            if (anyFits(model, item + 1, chosen)) {
                return true;
            }
            chosen.remove(chosen.size() - 1);
        }
        return false;
    }

    @Test
    void betteredCannotBeBetteredByChangingOneItemOrTwo() {
        int bettered = 0;
        for (Model model : models()) {
            Incumbent mended = LocalSearch.mended(model, LocalSearch.begun(model, free()), free());
            if (mended == null) {
                continue;
            }
            Incumbent better = LocalSearch.bettered(model, mended, free());
            List<Long> cost = costs(model, better.choice);
            assertThat(BruteForce.compare(cost, costs(model, mended.choice))).isLessThanOrEqualTo(0);
            bettered += BruteForce.compare(cost, costs(model, mended.choice)) < 0 ? 1 : 0;
            assertThat(fits(model, Arrays.stream(better.choice).boxed().toList()))
                    .isTrue();
            for (int i = 0; i < model.items(); i++) {
                for (int j = 0; j < i; j++) {
                    assertNoneBetter(model, better, i, j, cost);
                }
                assertNoneBetter(model, better, i, i, cost);
            }
        }
        assertThat(bettered).isGreaterThan(30);
    }

    private static void assertNoneBetter(Model model, Incumbent than, int i, int j, List<Long> cost) {
        for (int r = model.first[i]; r < model.first[i + 1]; r++) {
            for (int s = model.first[j]; s < model.first[j + 1]; s++) {
                int[] other = than.choice.clone();
                other[i] = r;
                other[j] = s;
                if (BruteForce.compare(costs(model, other), cost) < 0) {
                    assertThat(fits(model, Arrays.stream(other).boxed().toList()))
                            .as("%s %s with %d and %d", Arrays.toString(than.choice), cost, r, s)
                            .isFalse();
                }
            }
        }
    }

    /** Pairs are changed among few items only. */
    @Test
    void ofManyItemsNoneCanBeBetteredByItself() {
        int bettered = 0;
        for (int seed = 0; seed < 5; seed++) {
            ChoiceProblem problem = DrawnProblems.drawn(new SplitMix(seed), 150, 6, false);
            for (Model model : Presolve.parts(problem, free())) {
                Incumbent mended = LocalSearch.mended(model, Arrays.copyOf(model.first, model.items()), free());
                if (mended != null) {
                    Incumbent better = LocalSearch.bettered(model, mended, free());
                    List<Long> cost = costs(model, better.choice);
                    bettered += BruteForce.compare(cost, costs(model, mended.choice)) < 0 ? 1 : 0;
                    for (int i = 0; i < model.items(); i++) {
                        assertNoneBetter(model, better, i, i, cost);
                    }
                }
            }
        }
        assertThat(bettered).isPositive();
    }

    @Test
    void leavesAChoiceAsItIsWhenNothingMayBeSpent() {
        for (Model model : models()) {
            int[] begun = LocalSearch.begun(model, spent());
            boolean fits = fits(model, Arrays.stream(begun).boxed().toList());
            Incumbent mended = LocalSearch.mended(model, begun, spent());
            assertThat(mended != null).isEqualTo(fits);
            if (mended != null) {
                assertThat(mended.choice).isEqualTo(begun);
                assertThat(LocalSearch.bettered(model, mended, spent()).choice).isEqualTo(begun);
            }
        }
    }

    @Test
    void anIncumbentKeepsItsOwnCopy() {
        Model model = Objects.requireNonNull(
                Presolve.parts(DrawnProblems.shared(1), free()).get(0));
        int[] choice = LocalSearch.begun(model, free());
        Incumbent incumbent = new Incumbent(model, choice);
        int before = choice[0];
        choice[0] = -1;
        assertThat(incumbent.choice[0]).isEqualTo(before);
    }
}
