/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What is left to be done of an earlier plan, on the clock of the new request. */
final class EarlierRoutes implements Earlier {

    /** What a plan's margins may lack for a small gain not to upset it [K]; our choice, about what a thermometer tells. */
    static final double FORGIVEN_K = 0.3;
    /** Moments nearer than this are the same [s]. */
    private static final double SAME_S = 30;
    /** A way through other places or gear is more of a change than another time. */
    private static final long OTHER_WAY = 2;

    private final Site site;
    private final GearPools pools;
    private final Map<String, Route> routes = new HashMap<>();
    private final Map<String, Double> marginsK = new HashMap<>();

    EarlierRoutes(ServicePlan plan, PlanRequest request) {
        this.site = new Site(request);
        this.pools = new GearPools(request);
        Map<String, BottlePlan> old = new HashMap<>();
        plan.bottles().forEach(bottle -> old.put(bottle.order().id(), bottle));
        for (BottleOrder order : request.bottles()) {
            BottlePlan bottle = old.get(order.id());
            if (bottle != null) {
                route(bottle, order).ifPresent(route -> routes.put(order.id(), route));
                marginsK.put(order.id(), marginK(bottle));
            }
        }
    }

    @Override
    public Optional<Route> route(BottleOrder order) {
        return Optional.ofNullable(routes.get(order.id()));
    }

    @Override
    public long changes(BottleOrder order, Route route) {
        Route earlier = routes.get(order.id());
        if (earlier == null) {
            return 0;
        }
        List<Leg> before = earlier.legs();
        List<Leg> now = route.legs();
        if (before.size() != now.size()) {
            return OTHER_WAY;
        }
        long changes = 0;
        for (int i = 0; i < now.size(); i++) {
            if (!pool(before.get(i), i).equals(pool(now.get(i), i))) {
                return OTHER_WAY;
            }
            changes += Math.abs(before.get(i).fromS() - now.get(i).fromS()) > SAME_S ? 1 : 0;
        }
        return changes;
    }

    @Override
    public double forgivenK(BottleOrder order, Route route) {
        return routes.containsKey(order.id()) && changes(order, route) == 0 ? FORGIVEN_K : 0;
    }

    @Override
    public double leastMarginK(BottleOrder order) {
        return marginsK.getOrDefault(order.id(), Double.POSITIVE_INFINITY) - FORGIVEN_K;
    }

    /** Distance of the pour ahead that is nearest to an end of the range. */
    private double marginK(BottlePlan bottle) {
        return bottle.pours().stream()
                .filter(pour -> site.seconds(pour.at()) > 0)
                .mapToDouble(
                        pour -> bottle.order().target().marginK(pour.expected().meanK()))
                .min()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private String pool(Leg leg, int number) {
        return number == 0 ? leg.where() : pools.poolId(leg.where());
    }

    /** The old stays from now on; what is served at another time stays longer or shorter where it was before. */
    private Optional<Route> route(BottlePlan bottle, BottleOrder order) {
        double servedS = site.seconds(order.servedAt());
        double readyS = site.seconds(order.readyAt());
        double oldServedS = site.seconds(bottle.order().servedAt());
        double oldReadyS = site.seconds(bottle.order().readyAt());
        double shiftS = oldServedS > 0 ? servedS - oldServedS : 0;
        TreeMap<Double, String> begins = new TreeMap<>();
        for (Stay stay : bottle.stays()) {
            double from = site.seconds(stay.from());
            if (from < oldReadyS && (from < readyS || from <= 0)) {
                begins.put(Math.max(0, from), stay.where());
            } else if (from >= oldServedS) {
                begins.put(Math.max(0, from + shiftS), stay.where());
            }
        }
        order.airing().ifPresent(airing -> begins.put(readyS, airing.placeId()));
        begins.put(0.0, order.startsIn());
        return route(begins.headMap(site.seconds(order.finishedAt())), order);
    }

    private Optional<Route> route(SortedMap<Double, String> begins, BottleOrder order) {
        List<Leg> legs = new ArrayList<>();
        double end = site.seconds(order.finishedAt());
        List<Double> times = List.copyOf(begins.keySet());
        for (int i = 0; i < times.size(); i++) {
            double from = times.get(i);
            String where = Objects.requireNonNull(begins.get(from));
            String pool = from > 0 ? pools.poolId(where) : where;
            if (!pools.isGear(pool) && !site.placeIds().contains(pool)) {
                return Optional.empty();
            }
            legs.add(new Leg(pool, from, i + 1 < times.size() ? times.get(i + 1) : end));
        }
        return Optional.of(Route.of(kind(legs, site.seconds(order.servedAt())), legs.toArray(new Leg[0])));
    }

    private static Route.Kind kind(List<Leg> legs, double servedS) {
        long before = legs.stream().filter(leg -> leg.fromS() < servedS).count();
        if (legs.size() - before > 1) {
            return Route.Kind.BY_TURNS;
        }
        return before <= 1 ? Route.Kind.STAY : before == 2 ? Route.Kind.ONE_MEANS : Route.Kind.TWO_MEANS;
    }
}
