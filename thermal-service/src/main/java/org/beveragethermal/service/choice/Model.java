/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Items that are solved together, in numbers. Routes of all items are counted through; those of item {@code i} are {@code first[i]} to
 * {@code first[i + 1] - 1}. Rows are limits: first capacities, then one row for each level of cost.
 */
final class Model {
    /** One capacity: the least of several slots in which the same routes take the same places. */
    record Slot(ChoiceAnswer.Span span, int slot, int capacity) {
        String gearId() {
            return span.gearId();
        }
    }

    final List<ChoiceItem> items;
    final List<CandidateRoute> routes;
    final List<Certificate.Outdone> outdone;
    final List<Slot> slots;
    final int[] first;
    final int[] itemOf;
    /** Items with the same routes have the same number; their routes stand in the same order. */
    final int[] kind;

    final int[][] rows;
    final long[][] places;
    final long[][] costs;

    Model(
            List<ChoiceItem> items,
            List<CandidateRoute> routes,
            List<Certificate.Outdone> outdone,
            List<Slot> slots,
            int[] first,
            int[] kind,
            int[][] rows,
            long[][] places) {
        this.items = items;
        this.routes = routes;
        this.outdone = outdone;
        this.slots = slots;
        this.first = first;
        this.kind = kind;
        this.rows = rows;
        this.places = places;
        this.itemOf = new int[routes.size()];
        for (int i = 0; i < items.size(); i++) {
            Arrays.fill(itemOf, first[i], first[i + 1], i);
        }
        int levels = routes.isEmpty() ? 0 : routes.get(0).costs().size();
        this.costs = new long[levels][routes.size()];
        for (int r = 0; r < routes.size(); r++) {
            for (int k = 0; k < levels; k++) {
                costs[k][r] = routes.get(r).costs().get(k);
            }
        }
    }

    int items() {
        return items.size();
    }

    int capacities() {
        return slots.size();
    }

    int levels() {
        return costs.length;
    }

    BitSet allRoutes() {
        BitSet all = new BitSet(routes.size());
        all.set(0, routes.size());
        return all;
    }

    /** How many routes an item has left. */
    int left(BitSet alive, int item) {
        return alive.get(first[item], first[item + 1]).cardinality();
    }

    /** Whether some item has no route left. */
    boolean emptied(BitSet alive) {
        for (int i = 0; i < items(); i++) {
            int next = alive.nextSetBit(first[i]);
            if (next < 0 || next >= first[i + 1]) {
                return true;
            }
        }
        return false;
    }

    /** The summed costs of one route for each item. */
    long[] cost(int[] choice) {
        long[] sum = new long[levels()];
        for (int route : choice) {
            for (int k = 0; k < sum.length; k++) {
                sum[k] += costs[k][route];
            }
        }
        return sum;
    }

    /** The places taken in each capacity row. */
    long[] use(int[] choice) {
        long[] use = new long[capacities()];
        for (int route : choice) {
            add(use, route, 1);
        }
        return use;
    }

    void add(long[] use, int route, int sign) {
        for (int e = 0; e < rows[route].length; e++) {
            use[rows[route][e]] += sign * places[route][e];
        }
    }

    boolean fits(long[] use) {
        for (int q = 0; q < use.length; q++) {
            if (use[q] > slots.get(q).capacity()) {
                return false;
            }
        }
        return true;
    }

    /** The sum over all items of the least cost of a route. */
    long leastCost(int level) {
        long sum = 0;
        for (int i = 0; i < items(); i++) {
            long least = Long.MAX_VALUE;
            for (int r = first[i]; r < first[i + 1]; r++) {
                least = Math.min(least, costs[level][r]);
            }
            sum += least;
        }
        return sum;
    }
}
