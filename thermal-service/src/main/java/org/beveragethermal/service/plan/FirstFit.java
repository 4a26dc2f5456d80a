/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.beveragethermal.service.choice.CandidateRoute;
import org.beveragethermal.service.choice.ChoiceItem;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.beveragethermal.service.choice.Load;

/**
 * What is done where no choice keeps the capacities, or none was found in time: each bottle in turn takes its cheapest route that still fits,
 * and if none does the one that loads gear least.
 */
final class FirstFit {

    private final Map<String, int[]> free = new HashMap<>();

    private FirstFit(ChoiceProblem problem) {
        problem.gear()
                .forEach(gear -> free.put(
                        gear.id(),
                        gear.capacityBySlot().stream()
                                .mapToInt(places -> places)
                                .toArray()));
    }

    /** A candidate for each bottle; the problem is that of the candidates. */
    static Map<BottleOrder, Candidate> of(ChoiceProblem problem, Map<BottleOrder, List<Candidate>> candidates) {
        FirstFit fit = new FirstFit(problem);
        Map<BottleOrder, Candidate> chosen = new LinkedHashMap<>();
        int number = 0;
        for (Map.Entry<BottleOrder, List<Candidate>> entry : candidates.entrySet()) {
            ChoiceItem item = problem.items().get(number);
            chosen.put(entry.getKey(), entry.getValue().get(fit.take(item)));
            number++;
        }
        return chosen;
    }

    /** Takes a route and says which. */
    private int take(ChoiceItem item) {
        int best = 0;
        for (int i = 0; i < item.routes().size(); i++) {
            if (fits(item.routes().get(i))) {
                best = i;
                break;
            }
            best = load(item.routes().get(i)) < load(item.routes().get(best)) ? i : best;
        }
        for (Load load : item.routes().get(best).loads()) {
            for (int slot = load.firstSlot(); slot < load.endSlot(); slot++) {
                free(load)[slot] -= load.places();
            }
        }
        return best;
    }

    /** Loads of one route on one gear do not overlap. */
    private boolean fits(CandidateRoute route) {
        for (Load load : route.loads()) {
            for (int slot = load.firstSlot(); slot < load.endSlot(); slot++) {
                if (free(load)[slot] < load.places()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static long load(CandidateRoute route) {
        return route.loads().stream()
                .mapToLong(load -> (long) load.places() * (load.endSlot() - load.firstSlot()))
                .sum();
    }

    private int[] free(Load load) {
        return Objects.requireNonNull(free.get(load.gearId()));
    }
}
