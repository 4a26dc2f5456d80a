/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.stream.Collectors;

/** The candidates of all bottles. What is alike is worked out once; different bottles are worked out side by side. */
final class CandidateBook {

    /** Room enough that what is made side by side does not wait for one another. */
    private static final int ROOM = 4096;

    private final PlanRequest request;
    private final Site site;
    private final GearPools pools;
    private final IceSupply ice;
    private final Earlier earlier;
    private final Corrections corrections;
    private final FlowTables tables;
    private final Forecaster forecaster;
    private final Danger danger;
    private final ConcurrentMap<Object, Task> tasks = new ConcurrentHashMap<>(ROOM);
    /** Set between rounds only. */
    private boolean wide;

    private final ConcurrentMap<Wanted, List<Candidate>> known = new ConcurrentHashMap<>(ROOM);

    /** All that candidates of a bottle depend on. */
    private record Wanted(Object likeness, Map<String, Double> correctionsK, Optional<Route> earlier) {}

    CandidateBook(
            PlanRequest request, Site site, GearPools pools, IceSupply ice, Earlier earlier, Corrections corrections) {
        this.request = request;
        this.site = site;
        this.pools = pools;
        this.ice = ice;
        this.earlier = earlier;
        this.corrections = corrections;
        this.tables = new FlowTables(site, request.bottles());
        this.forecaster = new Forecaster(site, tables);
        this.danger = new Danger(site);
    }

    /** Looks for more routes from now on, such as free scarce gear early. */
    void widen() {
        wide = true;
        known.clear();
    }

    /** Candidates by bottle, in the order of the request, the cheapest first. */
    Map<BottleOrder, List<Candidate>> candidates() {
        Map<Wanted, BottleOrder> distinct = request.bottles().stream()
                .collect(Collectors.toMap(this::wanted, order -> order, (one, other) -> one, LinkedHashMap::new));
        distinct.entrySet().parallelStream()
                .forEach(entry -> known.computeIfAbsent(entry.getKey(), key -> search(entry.getValue())));
        Map<BottleOrder, List<Candidate>> candidates = new LinkedHashMap<>();
        for (BottleOrder order : request.bottles()) {
            candidates.put(order, Objects.requireNonNull(known.get(wanted(order))));
        }
        return candidates;
    }

    /** What the earlier plan would do, for each bottle alone; empty if it has nothing for one, or what cannot be or would be dangerous by now. */
    Optional<Map<BottleOrder, List<Candidate>>> earlier() {
        Map<BottleOrder, List<Candidate>> candidates = new LinkedHashMap<>();
        for (BottleOrder order : request.bottles()) {
            Optional<Route> route = earlier.route(order);
            if (route.isEmpty()) {
                return Optional.empty();
            }
            Assessor assessor = assessor(order);
            Candidate candidate = assessor.assess(route.get());
            if (!isThere(route.get()) || assessor.isDangerous(candidate)) {
                return Optional.empty();
            }
            candidates.put(order, List.of(candidate));
        }
        return Optional.of(candidates);
    }

    private boolean isThere(Route route) {
        return route.legs().stream()
                .allMatch(leg ->
                        ice.readyS(leg.where()) <= leg.fromS() && site.isThere(leg.where(), leg.fromS(), leg.toS()));
    }

    private Wanted wanted(BottleOrder order) {
        return new Wanted(Task.likeness(order), corrections.of(order), earlier.route(order));
    }

    private List<Candidate> search(BottleOrder order) {
        Assessor assessor = assessor(order);
        return new CandidateSearch(site, assessor, means(assessor.task()), pools, queueMin())
                .candidates(earlier.route(order), wide);
    }

    /** How long it takes to move every bottle once [min]; 0 if any number can be moved at a time. */
    private int queueMin() {
        int bottles = request.bottles().size();
        return request.movesPerMinute().isPresent()
                ? (bottles - 1) / request.movesPerMinute().getAsInt() + 1
                : 0;
    }

    /** Puts costs on routes of a bottle with what is known by now. */
    Assessor assessor(BottleOrder order) {
        Map<String, Double> correctionsK = corrections.of(order);
        return new Assessor(
                task(order),
                forecaster,
                danger,
                earlier,
                route -> correctionsK.getOrDefault(corrections.source(order, route), 0.0));
    }

    Task task(BottleOrder order) {
        return tasks.computeIfAbsent(Task.likeness(order), key -> new Task(site, tables, order));
    }

    /** Places and pools of gear that the bottle fits into, but for the pool in which it starts. */
    List<String> means(Task task) {
        List<String> means = new ArrayList<>(site.placeIds());
        String start = pools.poolId(task.order().startsIn());
        for (GearPools.Pool pool : pools.pools()) {
            boolean roomy = pool.members().stream()
                    .anyMatch(gear ->
                            gear.capacity() >= task.order().bottlePlaces() && Double.isFinite(ice.readyS(gear.id())));
            if (roomy
                    && !pool.id().equals(start)
                    && tables.of(task.kindAfter(0), pool.id()).table().fits()) {
                means.add(pool.id());
            }
        }
        return means;
    }
}
