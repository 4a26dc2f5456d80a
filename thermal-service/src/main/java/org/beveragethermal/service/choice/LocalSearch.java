/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.Arrays;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/** Mends choices that overload gear and betters those that do not, by changing the route of one item or of two. */
final class LocalSearch {
    private static final int MOST_IN_PAIRS = 120;
    private static final int MOST_TRIALS = 2_000_000;

    private final Model model;
    private final Budget budget;
    private final int[] choice;
    private final long[] use;

    private LocalSearch(Model model, int[] start, Budget budget) {
        this.model = model;
        this.budget = budget;
        this.choice = start.clone();
        this.use = model.use(start);
    }

    /** Gives each item its cheapest route that still fits, those first for which the first level's costs differ most. */
    static int[] begun(Model model, Budget budget) {
        Integer[] order = new Integer[model.items()];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingLong(i -> -spread(model, i)));
        int[] start = Arrays.copyOf(model.first, model.items());
        LocalSearch search = new LocalSearch(model, start, budget);
        Arrays.fill(search.use, 0);
        for (int i : order) {
            int best = -1;
            int cheapest = model.first[i];
            for (int r = model.first[i]; r < model.first[i + 1]; r++) {
                cheapest = compare(model, r, cheapest) < 0 ? r : cheapest;
                best = search.takes(r) && (best < 0 || compare(model, r, best) < 0) ? r : best;
            }
            search.choice[i] = best < 0 ? cheapest : best;
            model.add(search.use, search.choice[i], 1);
        }
        return search.choice;
    }

    private static long spread(Model model, int item) {
        long[] costs = Arrays.copyOfRange(model.costs[0], model.first[item], model.first[item + 1]);
        Arrays.sort(costs);
        return costs[costs.length - 1] - costs[0];
    }

    /** A choice that overloads nothing, found from another; null if none is found. */
    static @Nullable Incumbent mended(Model model, int[] start, Budget budget) {
        LocalSearch search = new LocalSearch(model, start, budget);
        return search.mend() ? new Incumbent(model, search.choice) : null;
    }

    /** A choice at least as good. */
    static Incumbent bettered(Model model, Incumbent incumbent, Budget budget) {
        LocalSearch search = new LocalSearch(model, incumbent.choice, budget);
        boolean again = true;
        while (again && !budget.spent()) {
            again = search.betterOne();
            if (!again && model.items() <= MOST_IN_PAIRS) {
                again = search.betterTwo();
            }
        }
        return new Incumbent(model, search.choice);
    }

    private static int compare(Model model, int a, int b) {
        for (int k = 0; k < model.levels(); k++) {
            if (model.costs[k][a] != model.costs[k][b]) {
                return Long.compare(model.costs[k][a], model.costs[k][b]);
            }
        }
        return 0;
    }

    /** Moves the item that relieves most, dearer overload first the longer it lasts. */
    private boolean mend() {
        long[] price = new long[use.length];
        Arrays.fill(price, 1);
        int[] restsUntil = new int[choice.length];
        int moves = Math.min(100 + 2 * choice.length, MOST_TRIALS / model.routes.size());
        for (int move = 0; move < moves && !budget.spent(); move++) {
            if (model.fits(use)) {
                return true;
            }
            int best = -1;
            double bestBy = Double.POSITIVE_INFINITY;
            for (int i = 0; i < choice.length && !budget.spent(); i++) {
                if (restsUntil[i] > move || !overloads(choice[i])) {
                    continue;
                }
                int from = choice[i];
                model.add(use, from, -1);
                double before = overload(from, price);
                for (int r = model.first[i]; r < model.first[i + 1]; r++) {
                    double by = overload(r, price) - before;
                    if (r != from && (by < bestBy || (by == bestBy && best >= 0 && compare(model, r, best) < 0))) {
                        best = r;
                        bestBy = by;
                    }
                }
                model.add(use, from, 1);
            }
            if (bestBy >= 0) {
                for (int q = 0; q < use.length; q++) {
                    price[q] += use[q] > model.slots.get(q).capacity() ? 1 : 0;
                }
            }
            if (best >= 0) {
                int item = model.itemOf[best];
                set(item, best);
                restsUntil[item] = move + 2 + move % 5;
            }
        }
        return model.fits(use);
    }

    private void set(int item, int route) {
        model.add(use, choice[item], -1);
        choice[item] = route;
        model.add(use, route, 1);
    }

    private boolean overloads(int route) {
        for (int q : model.rows[route]) {
            if (use[q] > model.slots.get(q).capacity()) {
                return true;
            }
        }
        return false;
    }

    /** What taking a route adds to the priced overload. */
    private double overload(int route, long[] price) {
        double sum = 0;
        for (int e = 0; e < model.rows[route].length; e++) {
            int q = model.rows[route][e];
            long free = Math.max(0, model.slots.get(q).capacity() - use[q]);
            sum += (double) price[q] * Math.max(0, model.places[route][e] - free) / Math.max(1, model.places[route][e]);
        }
        return sum;
    }

    private boolean takes(int route) {
        for (int e = 0; e < model.rows[route].length; e++) {
            int q = model.rows[route][e];
            if (use[q] + model.places[route][e] > model.slots.get(q).capacity()) {
                return false;
            }
        }
        return true;
    }

    private boolean betterOne() {
        boolean any = false;
        for (int i = 0; i < choice.length && !budget.spent(); i++) {
            int best = choice[i];
            model.add(use, best, -1);
            for (int r = model.first[i]; r < model.first[i + 1]; r++) {
                if (compare(model, r, best) < 0 && takes(r)) {
                    best = r;
                }
            }
            any |= best != choice[i];
            choice[i] = best;
            model.add(use, best, 1);
        }
        return any;
    }

    private boolean betterTwo() {
        for (int i = 0; i < choice.length; i++) {
            for (int j = 0; j < choice.length && !budget.spent(); j++) {
                if (i != j && betterTwo(i, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Gives an item a better route at the price of a worse one for another. */
    private boolean betterTwo(int i, int j) {
        int a = choice[i];
        int b = choice[j];
        model.add(use, a, -1);
        model.add(use, b, -1);
        for (int r = model.first[i]; r < model.first[i + 1]; r++) {
            if (compare(model, r, a) >= 0 || !takes(r)) {
                continue;
            }
            model.add(use, r, 1);
            for (int s = model.first[j]; s < model.first[j + 1]; s++) {
                if (lessTogether(r, s, a, b) && takes(s)) {
                    choice[i] = r;
                    choice[j] = s;
                    model.add(use, s, 1);
                    return true;
                }
            }
            model.add(use, r, -1);
        }
        model.add(use, a, 1);
        model.add(use, b, 1);
        return false;
    }

    private boolean lessTogether(int r, int s, int a, int b) {
        for (int k = 0; k < model.levels(); k++) {
            long less = model.costs[k][r] + model.costs[k][s] - model.costs[k][a] - model.costs[k][b];
            if (less != 0) {
                return less < 0;
            }
        }
        return false;
    }
}
