/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/**
 * The whole plan coupled. Bottles that share a bath, or other gear that remembers, run together in one scene; what shares nothing that
 * remembers would not feel the rest and runs by itself, which gives the same numbers sooner. Runs are kept from round to round.
 */
final class CoupledRuns {

    /** Room enough that runs made side by side do not wait for one another. */
    private static final int ROOM = 4096;

    private final Site site;
    private final IceSupply ice;
    private final ConcurrentMap<Object, CoupledRun> runs = new ConcurrentHashMap<>(ROOM);

    CoupledRuns(Site site, IceSupply ice) {
        this.site = site;
        this.ice = ice;
    }

    /**
     * What becomes of a plan.
     *
     * @param outcomes of each bottle, in the order of the routes
     * @param baths the run of each bath in use
     * @param runs all runs
     */
    record Together(Map<BottleOrder, Outcome> outcomes, Map<String, CoupledRun> baths, List<CoupledRun> runs) {}

    Together of(Map<BottleOrder, Route> routes) {
        List<Map<BottleOrder, Route>> groups = groups(routes);
        List<CoupledRun> done = groups.parallelStream().map(this::run).toList();
        Map<BottleOrder, Outcome> outcomes = new LinkedHashMap<>();
        Map<String, CoupledRun> baths = new LinkedHashMap<>();
        for (int i = 0; i < groups.size(); i++) {
            CoupledRun run = done.get(i);
            // A run may be that of another bottle that is alike.
            List<Outcome> found = List.copyOf(run.outcomes().values());
            List<BottleOrder> orders = List.copyOf(groups.get(i).keySet());
            for (int k = 0; k < orders.size(); k++) {
                outcomes.put(orders.get(k), found.get(k));
            }
            run.filledS().keySet().forEach(id -> baths.put(id, run));
        }
        return new Together(outcomes, baths, done.stream().distinct().toList());
    }

    private CoupledRun run(Map<BottleOrder, Route> group) {
        List<Object> key = new ArrayList<>();
        group.forEach((order, route) -> {
            key.add(Task.likeness(order));
            key.add(route.legs());
        });
        return runs.computeIfAbsent(key, same -> new CoupledRun(site, ice, group, Set.of()));
    }

    private List<Map<BottleOrder, Route>> groups(Map<BottleOrder, Route> routes) {
        Map<String, Map<BottleOrder, Route>> byGear = new LinkedHashMap<>();
        List<Map<BottleOrder, Route>> groups = new ArrayList<>();
        routes.forEach((order, route) -> {
            Map<BottleOrder, Route> group = new LinkedHashMap<>();
            groups.add(group);
            group.put(order, route);
            for (Leg leg : route.legs()) {
                if (site.remembers(leg.where())) {
                    Map<BottleOrder, Route> other = byGear.get(leg.where());
                    if (other != null && other != group) {
                        merge(other, group, byGear, groups);
                    }
                    byGear.put(leg.where(), group);
                }
            }
        });
        return groups;
    }

    private static void merge(
            Map<BottleOrder, Route> from,
            Map<BottleOrder, Route> into,
            Map<String, Map<BottleOrder, Route>> byGear,
            List<Map<BottleOrder, Route>> groups) {
        Map<BottleOrder, Route> own = new LinkedHashMap<>(into);
        into.clear();
        into.putAll(from);
        into.putAll(own);
        groups.removeIf(group -> group == from);
        byGear.replaceAll((id, group) -> group == from ? into : group);
    }
}
