/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Items, their routes, and the gear that all routes share. Wanted is one route for each item so that no gear is overloaded in any slot
 * and the costs are least: first the sum of level 0, then the sum of level 1 among the choices least in level 0, and so on.
 *
 * <p>Theory manual, equation (9.1).
 *
 * @param levels names of the levels of cost, the most important first; from 1 to {@value #MOST_LEVELS}, not blank, distinct
 * @param slots number of slots of time, from 1 to {@value #MOST_SLOTS}
 * @param gear the shared gear, from 0 to {@value #MOST_GEAR}, with distinct ids and one capacity for each slot
 * @param items what is to be served, at most {@value #MOST_ITEMS} with at most {@value #MOST_ROUTES} routes in all; may be empty
 */
public record ChoiceProblem(List<String> levels, int slots, List<SharedGear> gear, List<ChoiceItem> items) {
    /** The most slots. */
    public static final int MOST_SLOTS = 100_000;
    /** The most items. */
    public static final int MOST_ITEMS = 2_000;
    /** The most routes of all items together. */
    public static final int MOST_ROUTES = 40_000;
    /** The most levels of cost. */
    public static final int MOST_LEVELS = 32;
    /** The most gear. */
    public static final int MOST_GEAR = 1_000;

    /**
     * Checks that all parts fit each other.
     *
     * @param levels names of the levels of cost, the most important first; from 1 to {@value #MOST_LEVELS}, not blank, distinct
     * @param slots number of slots of time, from 1 to {@value #MOST_SLOTS}
     * @param gear the shared gear, from 0 to {@value #MOST_GEAR}, with distinct ids and one capacity for each slot
     * @param items what is to be served, at most {@value #MOST_ITEMS} with at most {@value #MOST_ROUTES} routes in all; may be empty
     * @throws IllegalArgumentException if there are too few or too many of anything, ids are shared, a list has the wrong length, or a
     *     load names unknown gear or slots outside the problem
     */
    public ChoiceProblem {
        levels = List.copyOf(levels);
        gear = List.copyOf(gear);
        items = List.copyOf(items);
        Checks.within(levels.size(), 1, MOST_LEVELS, "number of levels");
        Checks.within(slots, 1, MOST_SLOTS, "number of slots");
        Checks.within(gear.size(), 0, MOST_GEAR, "number of gear");
        Checks.within(items.size(), 0, MOST_ITEMS, "number of items");
        Checks.within(items.stream().mapToLong(item -> item.routes().size()).sum(), 0, MOST_ROUTES, "number of routes");
        Checks.distinct(levels, level -> Checks.id(level, "a level"), "levels", "the problem");
        Checks.distinct(gear, SharedGear::id, "gear", "the problem");
        Checks.distinct(items, ChoiceItem::id, "items", "the problem");
        for (SharedGear one : gear) {
            checkLength(one.capacityBySlot().size(), slots, "capacities of gear " + one.id(), "slots");
        }
        Set<String> known = gear.stream().map(SharedGear::id).collect(Collectors.toCollection(HashSet::new));
        for (ChoiceItem item : items) {
            for (CandidateRoute route : item.routes()) {
                checkRoute(route, levels.size(), slots, known, "route " + route.id() + " of item " + item.id());
            }
        }
    }

    private static void checkRoute(CandidateRoute route, int levels, int slots, Set<String> known, String where) {
        checkLength(route.costs().size(), levels, "costs of " + where, "levels");
        for (Load load : route.loads()) {
            if (!known.contains(load.gearId())) {
                throw new IllegalArgumentException(where + " loads the unknown gear " + load.gearId());
            }
            if (load.endSlot() > slots) {
                throw new IllegalArgumentException(where + " loads gear " + load.gearId() + " until slot "
                        + load.endSlot() + ", but there are " + slots + " slots");
            }
        }
    }

    private static void checkLength(int given, int wanted, String what, String ofWhat) {
        if (given != wanted) {
            throw new IllegalArgumentException("there are " + given + " " + what + ", but " + wanted + " " + ofWhat);
        }
    }
}
