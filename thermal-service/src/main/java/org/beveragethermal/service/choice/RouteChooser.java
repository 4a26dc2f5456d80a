/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.LongSupplier;

/**
 * Finds the best choice of routes and proves it. The same problem and limits give the same answer on every run, unless the time limit ends the
 * search.
 *
 * <p>Theory manual, equation (9.1).
 */
public final class RouteChooser {
    private RouteChooser() {}

    /**
     * The best choice, without limit of time.
     *
     * @param problem what to choose from
     * @return the answer
     */
    public static ChoiceAnswer choose(ChoiceProblem problem) {
        return choose(problem, ChoiceLimits.exact(), ChoiceMonitor.none());
    }

    /**
     * The best choice within limits.
     *
     * @param problem what to choose from
     * @param limits when to stop
     * @param monitor hears of progress, may cancel
     * @return the answer
     */
    public static ChoiceAnswer choose(ChoiceProblem problem, ChoiceLimits limits, ChoiceMonitor monitor) {
        return choose(problem, limits, monitor, System::nanoTime);
    }

    /**
     * The best choice within limits, by a clock that is handed in.
     *
     * @param problem what to choose from
     * @param limits when to stop
     * @param monitor hears of progress, may cancel
     * @param nanoClock time in nanoseconds from any origin; asked often
     * @return the answer
     */
    public static ChoiceAnswer choose(
            ChoiceProblem problem, ChoiceLimits limits, ChoiceMonitor monitor, LongSupplier nanoClock) {
        Budget budget = new Budget(limits, monitor, nanoClock);
        List<PartSearch> parts =
                Presolve.parts(problem, budget).stream().map(PartSearch::new).toList();
        if (parts.isEmpty() && !problem.items().isEmpty()) {
            return new ChoiceAnswer.Undecided(budget.reason(), leastCosts(problem));
        }
        parts.forEach(part -> part.begin(budget));
        String reason = "";
        for (int p = 0; p < parts.size(); p++) {
            Budget share = budget.share(parts.size() - p);
            parts.get(p).run(limits.relativeGap(), share);
            budget.charge(share);
            reason = share.reason().isEmpty() ? reason : share.reason();
            if (parts.get(p).infeasible()) {
                return Faults.explain(problem, parts.get(p), budget);
            }
        }
        return parts.stream().allMatch(part -> part.best() != null)
                ? found(problem, parts)
                : new ChoiceAnswer.Undecided(reason + " before any choice was found", boundsAtFirst(problem, parts));
    }

    private static List<Long> boundsAtFirst(ChoiceProblem problem, List<PartSearch> parts) {
        List<Long> bounds = leastCosts(problem);
        bounds.set(0, parts.stream().mapToLong(part -> part.bounds().get(0)).sum());
        return bounds;
    }

    private static ChoiceAnswer found(ChoiceProblem problem, List<PartSearch> parts) {
        Choice choice = choice(problem, parts);
        Certificate certificate =
                new Certificate(parts.stream().map(PartSearch::certificate).toList());
        List<Long> least = leastCosts(problem);
        List<Long> bounds = new ArrayList<>();
        double gap = 0;
        for (int k = 0; k < least.size(); k++) {
            int level = k;
            long cost = choice.costByLevel().get(k);
            long bound = gap > 0
                    ? least.get(k)
                    : parts.stream().mapToLong(part -> part.bounds().get(level)).sum();
            bounds.add(bound);
            gap = gap == 0 && bound < cost ? (double) (cost - bound) / cost : gap;
        }
        return gap == 0
                ? new ChoiceAnswer.Proven(choice, certificate)
                : new ChoiceAnswer.Best(choice, bounds, gap, certificate);
    }

    private static Choice choice(ChoiceProblem problem, List<PartSearch> parts) {
        Map<String, CandidateRoute> chosen = new HashMap<>();
        for (PartSearch part : parts) {
            for (int route : Objects.requireNonNull(part.best()).choice) {
                String item = part.model.items.get(part.model.itemOf[route]).id();
                chosen.put(item, part.model.routes.get(route));
            }
        }
        Map<String, String> routeByItem = new LinkedHashMap<>();
        long[] cost = new long[problem.levels().size()];
        for (ChoiceItem item : problem.items()) {
            CandidateRoute route = Objects.requireNonNull(chosen.get(item.id()));
            routeByItem.put(item.id(), route.id());
            for (int k = 0; k < cost.length; k++) {
                cost[k] += route.costs().get(k);
            }
        }
        return new Choice(routeByItem, Arrays.stream(cost).boxed().toList());
    }

    /** For each level the sum of what every item costs at the least. */
    private static List<Long> leastCosts(ChoiceProblem problem) {
        List<Long> least = new ArrayList<>();
        for (int k = 0; k < problem.levels().size(); k++) {
            int level = k;
            least.add(problem.items().stream()
                    .mapToLong(item -> item.routes().stream()
                            .mapToLong(route -> route.costs().get(level))
                            .min()
                            .orElseThrow())
                    .sum());
        }
        return least;
    }
}
