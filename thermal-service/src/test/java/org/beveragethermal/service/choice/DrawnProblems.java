/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.List;

/** Problems drawn at random; our own invention. */
final class DrawnProblems {
    static final int SLOTS = 48;

    private DrawnProblems() {}

    /** Up to 5 items, 3 gear, 4 slots, often without any choice. */
    static ChoiceProblem small(long seed) {
        SplitMix random = new SplitMix(seed);
        int slots = random.within(1, 4);
        int levels = random.within(1, 3);
        int gears = random.within(1, 3);
        List<SharedGear> gear = new ArrayList<>();
        for (int g = 0; g < gears; g++) {
            List<Integer> capacity = new ArrayList<>();
            for (int s = 0; s < slots; s++) {
                capacity.add(random.below(4));
            }
            gear.add(new SharedGear("gear" + g, capacity));
        }
        List<ChoiceItem> items = new ArrayList<>();
        int count = random.within(1, 5);
        for (int i = 0; i < count; i++) {
            if (i > 0 && random.below(4) == 0) {
                items.add(new ChoiceItem("item" + i, items.get(i - 1).routes()));
                continue;
            }
            List<CandidateRoute> routes = new ArrayList<>();
            int ways = random.within(1, 4);
            for (int r = 0; r < ways; r++) {
                List<Long> costs = new ArrayList<>();
                for (int k = 0; k < levels; k++) {
                    costs.add((long) random.below(k == 0 ? 4 : 20));
                }
                List<Load> loads = new ArrayList<>();
                int count2 = random.below(3);
                for (int l = 0; l < count2; l++) {
                    int first = random.below(slots);
                    int end = random.within(first + 1, slots);
                    loads.add(new Load("gear" + random.below(gears), first, end, random.within(1, 2)));
                }
                routes.add(new CandidateRoute("route" + r, costs, loads));
            }
            items.add(new ChoiceItem("item" + i, routes));
        }
        return new ChoiceProblem(names(levels), slots, gear, items);
    }

    /** The problem of a seed that {@code optima.py} draws too: 12 to 30 items; odd seeds have little gear. */
    static ChoiceProblem shared(int seed) {
        SplitMix random = new SplitMix(seed);
        int items = random.within(12, 30);
        int gears = random.within(4, 5);
        return drawn(random, items, gears, seed % 2 == 1);
    }

    static ChoiceProblem drawn(SplitMix random, int items, int gears, boolean tight) {
        int levels = random.within(2, 3);
        List<SharedGear> gear = new ArrayList<>();
        for (int g = 0; g < gears; g++) {
            List<Integer> capacity = new ArrayList<>();
            int places = tight ? 1 + random.below(items / 8 + 1) : items / 4 + random.below(3);
            int low = random.below(SLOTS);
            for (int s = 0; s < SLOTS; s++) {
                if (g == 0) {
                    capacity.add(tight ? 2 : 4);
                } else if (g == 1) {
                    capacity.add(items / 2 + places * s / 6);
                } else {
                    capacity.add(s >= low && s < low + 6 ? Math.max(0, places - 1) : places);
                }
            }
            gear.add(new SharedGear("gear" + g, capacity));
        }
        List<ChoiceItem> drawn = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            int due = random.within(14, SLOTS);
            int ways = random.within(4, 6);
            boolean always = !tight || random.below(8) > 0;
            List<CandidateRoute> routes = new ArrayList<>();
            for (int r = 0; r < ways; r++) {
                routes.add(route("route" + r, random, levels, gears, due, always && r == ways - 1));
            }
            drawn.add(new ChoiceItem("item" + i, routes));
        }
        return new ChoiceProblem(names(levels), SLOTS, gear, drawn);
    }

    private static CandidateRoute route(String id, SplitMix random, int levels, int gears, int due, boolean fallback) {
        if (fallback) {
            List<Long> costs = new ArrayList<>(List.of((long) random.within(30, 60)));
            for (int k = 1; k < levels; k++) {
                costs.add((long) random.below(1000));
            }
            return new CandidateRoute(id, costs, List.of());
        }
        List<Long> costs = new ArrayList<>();
        costs.add(random.below(3) == 0 ? (long) random.below(20) : 0L);
        for (int k = 1; k < levels; k++) {
            costs.add((long) random.below(1000));
        }
        int lasts = random.within(2, 12);
        int end = due - random.below(4);
        int first = Math.max(0, end - lasts);
        List<Load> loads = new ArrayList<>();
        loads.add(new Load("gear0", first, first + 1, 1));
        loads.add(new Load("gear" + random.within(2, gears - 1), first, end, random.below(5) == 0 ? 2 : 1));
        if (random.below(2) == 0) {
            loads.add(new Load("gear1", first, SLOTS, random.within(1, 3)));
        }
        return new CandidateRoute(id, costs, loads);
    }

    private static List<String> names(int levels) {
        return List.of("first", "second", "third").subList(0, levels);
    }
}
