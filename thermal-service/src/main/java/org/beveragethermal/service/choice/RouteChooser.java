/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/** Finds the best choice of routes, and proves it. */
public final class RouteChooser {
    private final ChoiceProblem problem;
    private final LongSupplier nanoClock;
    private final long deadline;
    private final ChoiceMonitor monitor;
    private final Map<String, int[]> free = new HashMap<>();
    private final int[] taken;
    private final long[] cost;
    private final long[][] leastAfter;
    private int @Nullable [] best;
    private long[] bestCost = {};
    private long nodes;
    private final long nodeLimit;
    private boolean stopped;

    private RouteChooser(ChoiceProblem problem, ChoiceLimits limits, ChoiceMonitor monitor, LongSupplier nanoClock) {
        this.problem = problem;
        this.nanoClock = nanoClock;
        this.deadline = nanoClock.getAsLong() + limits.timeLimit().toNanos();
        this.nodeLimit = limits.nodeLimit();
        this.monitor = monitor;
        this.taken = new int[problem.items().size()];
        this.cost = new long[problem.levels().size()];
        this.leastAfter = new long[taken.length + 1][cost.length];
        for (int i = taken.length - 1; i >= 0; i--) {
            for (int k = 0; k < cost.length; k++) {
                int level = k;
                leastAfter[i][k] = leastAfter[i + 1][k]
                        + problem.items().get(i).routes().stream()
                                .mapToLong(route -> route.costs().get(level))
                                .min()
                                .orElseThrow();
            }
        }
        for (SharedGear gear : problem.gear()) {
            free.put(gear.id(), gear.capacityBySlot().stream().mapToInt(c -> c).toArray());
        }
    }

    /**
     * The best choice, without limits of time.
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
     * @param nanoClock time in nanoseconds from any origin
     * @return the answer
     */
    public static ChoiceAnswer choose(
            ChoiceProblem problem, ChoiceLimits limits, ChoiceMonitor monitor, LongSupplier nanoClock) {
        RouteChooser search = new RouteChooser(problem, limits, monitor, nanoClock);
        search.descend(0);
        return search.answer();
    }

    private void descend(int item) {
        nodes++;
        if (nodes > nodeLimit || nanoClock.getAsLong() > deadline || monitor.cancelled()) {
            stopped = true;
        }
        if (stopped || !promising(item)) {
            return;
        }
        if (item == taken.length) {
            best = taken.clone();
            bestCost = cost.clone();
            return;
        }
        List<CandidateRoute> routes = problem.items().get(item).routes();
        for (int r = 0; r < routes.size(); r++) {
            taken[item] = r;
            if (take(routes.get(r), 1)) {
                descend(item + 1);
            }
            take(routes.get(r), -1);
        }
    }

    private boolean promising(int item) {
        if (best == null) {
            return true;
        }
        for (int k = 0; k < cost.length; k++) {
            long least = cost[k] + leastAfter[item][k];
            if (least != bestCost[k]) {
                return least < bestCost[k];
            }
        }
        return false;
    }

    private boolean take(CandidateRoute route, int sign) {
        boolean fits = true;
        for (int k = 0; k < cost.length; k++) {
            cost[k] += sign * route.costs().get(k);
        }
        for (Load load : route.loads()) {
            int[] left = Objects.requireNonNull(free.get(load.gearId()));
            for (int slot = load.firstSlot(); slot < load.endSlot(); slot++) {
                left[slot] -= sign * load.places();
                fits &= left[slot] >= 0;
            }
        }
        return fits;
    }

    private ChoiceAnswer answer() {
        Certificate none = new Certificate(List.of());
        List<Long> bounds = new ArrayList<>();
        for (long least : leastAfter[0]) {
            bounds.add(least);
        }
        if (best == null) {
            return stopped
                    ? new ChoiceAnswer.Undecided("a limit was reached", bounds)
                    : new ChoiceAnswer.Infeasible("the gear does not suffice", List.of(), List.of(), none);
        }
        Map<String, String> routes = new LinkedHashMap<>();
        for (int i = 0; i < best.length; i++) {
            ChoiceItem item = problem.items().get(i);
            routes.put(item.id(), item.routes().get(best[i]).id());
        }
        List<Long> costs = new ArrayList<>();
        for (long c : bestCost) {
            costs.add(c);
        }
        Choice choice = new Choice(routes, costs);
        return stopped ? new ChoiceAnswer.Best(choice, bounds, 1, none) : new ChoiceAnswer.Proven(choice, none);
    }
}
