/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Adds up a choice anew: one route for each item, the capacity of all gear in every slot, and the costs. Shares nothing with the search. */
public final class AnswerCheck {
    private AnswerCheck() {}

    /**
     * What is wrong with a choice.
     *
     * @param problem the problem
     * @param choice the choice
     * @return one sentence for each fault; empty if there is none
     */
    public static List<String> faults(ChoiceProblem problem, Choice choice) {
        List<String> faults = new ArrayList<>();
        List<String> ids = problem.items().stream().map(ChoiceItem::id).toList();
        if (!List.copyOf(choice.routeByItem().keySet()).equals(ids)) {
            faults.add("the items chosen for are not those of the problem in its order");
        }
        Map<String, long[]> taken = new HashMap<>();
        long[] cost = new long[problem.levels().size()];
        for (ChoiceItem item : problem.items()) {
            Optional<CandidateRoute> route = item.routes().stream()
                    .filter(one -> one.id().equals(choice.routeByItem().get(item.id())))
                    .findFirst();
            if (route.isEmpty()) {
                faults.add("item " + item.id() + " has no route "
                        + choice.routeByItem().get(item.id()));
                continue;
            }
            for (int k = 0; k < cost.length; k++) {
                cost[k] += route.get().costs().get(k);
            }
            for (Load load : route.get().loads()) {
                long[] of = taken.computeIfAbsent(load.gearId(), gear -> new long[problem.slots()]);
                for (int slot = load.firstSlot(); slot < load.endSlot(); slot++) {
                    of[slot] += load.places();
                }
            }
        }
        for (SharedGear gear : problem.gear()) {
            long[] of = taken.computeIfAbsent(gear.id(), unused -> new long[problem.slots()]);
            for (int slot = 0; slot < of.length; slot++) {
                if (of[slot] > gear.capacityBySlot().get(slot)) {
                    faults.add("gear " + gear.id() + " has "
                            + gear.capacityBySlot().get(slot) + " places in slot " + slot + ", but " + of[slot]
                            + " are taken");
                }
            }
        }
        List<Long> costs = Arrays.stream(cost).boxed().toList();
        if (!costs.equals(choice.costByLevel())) {
            faults.add("the costs are " + costs + ", not " + choice.costByLevel());
        }
        return faults;
    }
}
