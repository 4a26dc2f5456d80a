/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Follows the proofs of one part of a certificate. */
final class ProofCheck {
    /** Places of gear in one slot. */
    record Place(String gearId, int slot) {}

    /** What a route costs and takes, whatever it is called. */
    private record Burden(List<Long> costs, Map<Place, Long> places) {}

    /** What all parts look up. */
    record Known(Map<String, ChoiceItem> items, Map<Place, Long> capacity) {
        static Known of(ChoiceProblem problem) {
            Map<String, ChoiceItem> items = new HashMap<>();
            problem.items().forEach(item -> items.put(item.id(), item));
            Map<Place, Long> capacity = new HashMap<>();
            problem.gear().forEach(gear -> {
                for (int slot = 0; slot < problem.slots(); slot++) {
                    capacity.put(new Place(gear.id(), slot), (long)
                            gear.capacityBySlot().get(slot));
                }
            });
            return new Known(items, capacity);
        }

        /** What the routes chosen for some items cost in a level. */
        long cost(List<String> ids, Choice choice, int level) {
            long cost = 0;
            for (String id : ids) {
                for (CandidateRoute route : get(items, id).routes()) {
                    cost += route.id().equals(choice.routeByItem().get(id))
                            ? route.costs().get(level)
                            : 0;
                }
            }
            return cost;
        }
    }

    private final Map<Place, Long> capacity;
    private final Map<String, Map<String, Burden>> burdens = new LinkedHashMap<>();
    /** Numbers for what is the same burden, so that it is quickly compared. */
    private final Map<String, Map<String, Integer>> kinds = new HashMap<>();

    private List<Long> limits = List.of();

    /** Reads the items of a part, leaving out slots that they cannot overload and routes that are outdone. */
    ProofCheck(Known known, Certificate.Part part) {
        capacity = known.capacity();
        Map<Place, Long> most = new HashMap<>();
        for (String id : part.items()) {
            ChoiceItem item = known.items().get(id);
            if (item != null) {
                Map<String, Burden> routes = new LinkedHashMap<>();
                Map<Place, Long> mostOfItem = new HashMap<>();
                for (CandidateRoute route : item.routes()) {
                    Map<Place, Long> places = new HashMap<>();
                    for (Load load : route.loads()) {
                        for (int slot = load.firstSlot(); slot < load.endSlot(); slot++) {
                            places.merge(new Place(load.gearId(), slot), (long) load.places(), Math::addExact);
                        }
                    }
                    places.forEach((place, count) -> mostOfItem.merge(place, count, Math::max));
                    routes.put(route.id(), new Burden(route.costs(), places));
                }
                mostOfItem.forEach((place, count) -> most.merge(place, count, Math::addExact));
                burdens.put(item.id(), routes);
            }
        }
        require(burdens.size() == part.items().size(), "the items of a part are not distinct items of the problem");
        burdens.values()
                .forEach(routes -> routes.values()
                        .forEach(burden ->
                                burden.places().keySet().removeIf(place -> get(most, place) <= get(capacity, place))));
        for (Certificate.Outdone outdone : part.outdone()) {
            Map<String, Burden> routes = get(burdens, outdone.item());
            Burden worse = get(routes, outdone.route());
            Burden better = get(routes, outdone.better());
            require(
                    !outdone.route().equals(outdone.better()) && noMore(better, worse),
                    outdone.better() + " does not outdo " + outdone.route());
            routes.remove(outdone.route());
        }
        Map<Burden, Integer> numbers = new HashMap<>();
        burdens.forEach((item, routes) -> {
            Map<String, Integer> ofItem = new HashMap<>();
            routes.forEach(
                    (route, burden) -> ofItem.put(route, numbers.computeIfAbsent(burden, key -> numbers.size())));
            kinds.put(item, ofItem);
        });
    }

    /** The sum of what each item costs at the least. */
    long leastCost(int level) {
        return burdens.values().stream()
                .mapToLong(routes -> routes.values().stream()
                        .mapToLong(route -> route.costs().get(level))
                        .min()
                        .orElseThrow())
                .sum();
    }

    /** Refuses a proof that is not one. */
    void follow(Certificate.Proof proof) {
        limits = proof.costLimits();
        Map<String, Set<String>> all = new LinkedHashMap<>();
        burdens.forEach((item, routes) -> all.put(item, new LinkedHashSet<>(routes.keySet())));
        follow(proof.root(), all, copy(all));
    }

    /** {@code left} are the routes not struck out, {@code allowed} those that the branches above allow, struck out or not. */
    private void follow(Certificate.Node node, Map<String, Set<String>> left, Map<String, Set<String>> allowed) {
        node.weights().forEach(weights -> strike(weights, left));
        if (left.values().stream().anyMatch(Set::isEmpty)) {
            return;
        }
        require(!node.branches().isEmpty(), "a case is left open");
        String item = node.branches().get(0).item();
        Set<String> uncovered = new HashSet<>(get(left, item));
        Set<Integer> earlier = new HashSet<>();
        Set<Integer> ofItem = kindsOf(item, allowed);
        for (Certificate.Branch branch : node.branches()) {
            require(branch.item().equals(item), "the branches of a node are of several items");
            Map<String, Set<String>> below = copy(allowed);
            for (String other : burdens.keySet()) {
                if (!other.equals(item) && kindsOf(other, allowed).equals(ofItem)) {
                    get(below, other).removeIf(route -> earlier.contains(get(get(kinds, other), route)));
                }
            }
            get(below, item).retainAll(branch.routes());
            earlier.addAll(kindsOf(item, below));
            uncovered.removeAll(branch.routes());
            Map<String, Set<String>> leftBelow = copy(below);
            leftBelow.forEach((other, routes) -> routes.retainAll(get(left, other)));
            follow(branch.node(), leftBelow, below);
        }
        require(uncovered.isEmpty(), "routes of " + item + " are in no branch");
    }

    private Set<Integer> kindsOf(String item, Map<String, Set<String>> routes) {
        return get(routes, item).stream()
                .map(route -> get(get(kinds, item), route))
                .collect(Collectors.toSet());
    }

    /** Strikes out each route with which the weighed limits are broken even if all others take what is lightest. */
    private void strike(Certificate.Weights weights, Map<String, Set<String>> left) {
        Map<Place, Long> onPlaces = new HashMap<>();
        long slack = 0;
        for (Certificate.OnSlot on : weights.onSlots()) {
            Place place = new Place(on.gearId(), on.slot());
            require(
                    on.weight() >= 0 && onPlaces.put(place, on.weight()) == null,
                    "a weight is negative or given twice");
            slack = Math.addExact(slack, Math.multiplyExact(on.weight(), get(capacity, place)));
        }
        require(weights.onLevels().size() <= limits.size(), "a weight is on a level without limit");
        for (int k = 0; k < weights.onLevels().size(); k++) {
            require(weights.onLevels().get(k) >= 0, "a weight is negative");
            slack = Math.addExact(slack, Math.multiplyExact(weights.onLevels().get(k), limits.get(k)));
        }
        Map<String, Map<String, Long>> above = new HashMap<>();
        for (Map.Entry<String, Set<String>> entry : left.entrySet()) {
            Map<String, Long> weighed = new HashMap<>();
            entry.getValue()
                    .forEach(route -> weighed.put(
                            route, weigh(get(get(burdens, entry.getKey()), route), onPlaces, weights.onLevels())));
            long least = weighed.values().stream().mapToLong(w -> w).min().orElse(0);
            weighed.replaceAll((route, weight) -> Math.subtractExact(weight, least));
            above.put(entry.getKey(), weighed);
            slack = Math.subtractExact(slack, least);
        }
        long finalSlack = slack;
        left.forEach((item, routes) -> routes.removeIf(route -> get(get(above, item), route) > finalSlack));
    }

    private static long weigh(Burden burden, Map<Place, Long> onPlaces, List<Long> onLevels) {
        long sum = 0;
        for (Map.Entry<Place, Long> place : burden.places().entrySet()) {
            long weight = onPlaces.getOrDefault(place.getKey(), 0L);
            sum = Math.addExact(sum, Math.multiplyExact(weight, place.getValue()));
        }
        for (int k = 0; k < onLevels.size(); k++) {
            sum = Math.addExact(
                    sum, Math.multiplyExact(onLevels.get(k), burden.costs().get(k)));
        }
        return sum;
    }

    private static boolean noMore(Burden better, Burden worse) {
        for (int k = 0; k < better.costs().size(); k++) {
            if (better.costs().get(k) > worse.costs().get(k)) {
                return false;
            }
        }
        return better.places().entrySet().stream()
                .allMatch(place -> place.getValue() <= worse.places().getOrDefault(place.getKey(), 0L));
    }

    private static Map<String, Set<String>> copy(Map<String, Set<String>> sets) {
        Map<String, Set<String>> copy = new LinkedHashMap<>();
        sets.forEach((key, set) -> copy.put(key, new LinkedHashSet<>(set)));
        return copy;
    }

    private static <K, V> V get(Map<K, V> map, K key) {
        V value = map.get(key);
        if (value == null) {
            throw new Refused("the certificate names something unknown: " + key);
        }
        return value;
    }

    static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new Refused(otherwise);
        }
    }

    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Refused(String reason) {
            super(reason);
        }
    }
}
