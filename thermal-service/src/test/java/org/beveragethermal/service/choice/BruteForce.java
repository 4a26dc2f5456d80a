/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tries every choice. */
final class BruteForce {
    private BruteForce() {}

    /** The least costs by level; empty if every choice overloads something. */
    static Optional<List<Long>> least(ChoiceProblem problem) {
        List<List<Long>> all = new ArrayList<>();
        enumerate(problem, 0, new LinkedHashMap<>(), all);
        return all.stream().min(BruteForce::compare);
    }

    static int compare(List<Long> a, List<Long> b) {
        for (int k = 0; k < a.size(); k++) {
            int sign = Long.compare(a.get(k), b.get(k));
            if (sign != 0) {
                return sign;
            }
        }
        return 0;
    }

    private static void enumerate(
            ChoiceProblem problem, int item, Map<String, CandidateRoute> chosen, List<List<Long>> costs) {
        if (item == problem.items().size()) {
            if (fits(problem, chosen)) {
                List<Long> cost = new ArrayList<>();
                for (int k = 0; k < problem.levels().size(); k++) {
                    int level = k;
                    cost.add(chosen.values().stream()
                            .mapToLong(route -> route.costs().get(level))
                            .sum());
                }
                costs.add(cost);
            }
            return;
        }
        for (CandidateRoute route : problem.items().get(item).routes()) {
            chosen.put(problem.items().get(item).id(), route);
            enumerate(problem, item + 1, chosen, costs);
        }
    }

    private static boolean fits(ChoiceProblem problem, Map<String, CandidateRoute> chosen) {
        for (int slot = 0; slot < problem.slots(); slot++) {
            Map<String, Integer> taken = new HashMap<>();
            for (CandidateRoute route : chosen.values()) {
                for (Load load : route.loads()) {
                    if (load.firstSlot() <= slot && slot < load.endSlot()) {
                        taken.merge(load.gearId(), load.places(), Integer::sum);
                    }
                }
            }
            for (SharedGear gear : problem.gear()) {
                if (taken.getOrDefault(gear.id(), 0) > gear.capacityBySlot().get(slot)) {
                    return false;
                }
            }
        }
        return true;
    }
}
