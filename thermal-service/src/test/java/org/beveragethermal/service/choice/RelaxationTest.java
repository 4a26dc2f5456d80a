/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The relaxation by the duality of linear programmes, which proves each answer by itself: fractions of routes that keep the limits cost no less than
 * the least, weights of the limits bound it from below, so where the two meet it is the least. Weights for which every choice of routes is too
 * heavy show that the limits cannot be kept (Farkas). Costs are raised by up to 0.2 in all against ties, so that is how far the two may differ.
 */
class RelaxationTest {
    private static final double TRIFLES = 0.2;
    private static final double ROUNDING = 1e-5;

    private int least;
    private int broken;
    private int early;

    @Test
    void provesWhatItFinds() {
        for (int seed = 0; seed < 600; seed++) {
            ChoiceProblem problem = seed % 20 == 0 ? DrawnProblems.shared(seed / 20) : DrawnProblems.small(seed);
            for (Model model : Presolve.parts(problem, free())) {
                compare(model, new SplitMix(seed), "seed " + seed);
            }
        }
        assertThat(List.of(least, broken, early))
                .allSatisfy(cases -> assertThat(cases).isGreaterThan(30));
    }

    private static Budget free() {
        return new Budget(ChoiceLimits.exact(), ChoiceMonitor.none(), () -> 0L);
    }

    private void compare(Model model, SplitMix random, String where) {
        BitSet alive = model.allRoutes();
        long[] limits = new long[model.levels()];
        Arrays.fill(limits, Long.MAX_VALUE);
        check(model, alive, 0, limits, where);
        for (int r = 0; r < model.routes.size(); r++) {
            if (random.below(4) == 0 && model.left(alive, model.itemOf[r]) > 1) {
                alive.clear(r);
            }
        }
        limits[0] = model.leastCost(0) + random.below(4);
        check(model, alive, 0, limits, where + ", fewer routes, limited");
        if (model.levels() > 1) {
            check(model, alive, 1, limits, where + ", second level");
        }
    }

    private void check(Model model, BitSet alive, int level, long[] limits, String where) {
        Relaxation relaxation = Relaxation.solve(model, alive, level, limits, free());
        if (relaxation.end == Relaxation.End.BROKEN) {
            assertThat(bound(model, alive, level, limits, relaxation.multiplier, 0))
                    .as(where)
                    .isGreaterThan(1e-9);
            broken++;
            return;
        }
        double bound = bound(model, alive, level, limits, relaxation.multiplier, 1);
        if (relaxation.end == Relaxation.End.EARLY) {
            assertThat(bound).as(where).isGreaterThan((double) limits[level]);
            early++;
            return;
        }
        least++;
        double cost = 0;
        double[] use = new double[model.capacities() + level];
        double[] ofItem = new double[model.items()];
        for (int r = 0; r < model.routes.size(); r++) {
            double taken = relaxation.taken[r];
            assertThat(taken).as(where).isBetween(0.0, alive.get(r) ? 1 + ROUNDING : 0.0);
            cost += model.costs[level][r] * taken;
            ofItem[model.itemOf[r]] += taken;
            for (int q = 0; q < use.length; q++) {
                use[q] += coefficient(model, r, q) * taken;
            }
        }
        assertThat(cost).as(where).isBetween(bound - ROUNDING, bound + TRIFLES + ROUNDING);
        assertThat(ofItem)
                .as(where)
                .satisfies(sums ->
                        Arrays.stream(sums).forEach(sum -> assertThat(sum).isCloseTo(1, within(ROUNDING))));
        for (int q = 0; q < use.length; q++) {
            assertThat(use[q]).as(where).isLessThanOrEqualTo(limit(model, q, limits) * (1 + ROUNDING) + ROUNDING);
        }
    }

    /** The least of the Lagrangian: what the costs, counted so many times, and the limits so weighed come to at the least. */
    private static double bound(Model model, BitSet alive, int level, long[] limits, double[] weight, int costs) {
        double sum = 0;
        for (int q = 0; q < model.capacities() + level; q++) {
            assertThat(weight[q]).isNotNegative();
            sum -= weight[q] * limit(model, q, limits);
        }
        for (int i = 0; i < model.items(); i++) {
            double lightest = Double.POSITIVE_INFINITY;
            for (int r = model.first[i]; r < model.first[i + 1]; r++) {
                double weighed = costs * (double) model.costs[level][r];
                for (int q = 0; q < model.capacities() + level; q++) {
                    weighed += weight[q] * coefficient(model, r, q);
                }
                lightest = alive.get(r) ? Math.min(lightest, weighed) : lightest;
            }
            sum += lightest;
        }
        return sum;
    }

    private static double limit(Model model, int q, long[] limits) {
        return q < model.capacities() ? model.slots.get(q).capacity() : (double) limits[q - model.capacities()];
    }

    private static double coefficient(Model model, int route, int q) {
        if (q >= model.capacities()) {
            return (double) model.costs[q - model.capacities()][route];
        }
        double places = 0;
        for (int e = 0; e < model.rows[route].length; e++) {
            places += model.rows[route][e] == q ? model.places[route][e] : 0;
        }
        return places;
    }
}
