/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.beveragethermal.service.choice.CandidateRoute;
import org.beveragethermal.service.choice.Choice;
import org.beveragethermal.service.choice.ChoiceItem;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.beveragethermal.service.choice.Load;
import org.beveragethermal.service.choice.SharedGear;

/**
 * Candidate routes as a problem of choice: time is divided where anything begins or ends; places in pools of gear, ice that is melted, and
 * hands are what is shared.
 */
final class RouteChoice {

    private static final String PLACES = "places in ";
    private static final String ICE = "ice in ";
    private static final String HANDS = "hands";
    /** More ice than any plan melts, in tens of grams. */
    private static final double MOST_ICE = 1e9;

    private final Site site;
    private final GearPools pools;
    private final IceSupply ice;
    private final OptionalInt movesPerMinute;

    RouteChoice(Site site, GearPools pools, IceSupply ice, OptionalInt movesPerMinute) {
        this.site = site;
        this.pools = pools;
        this.ice = ice;
        this.movesPerMinute = movesPerMinute;
    }

    /** The problem; routes are called by their number in their list. */
    ChoiceProblem problem(Map<BottleOrder, List<Candidate>> candidates) {
        double[] times = times(candidates);
        List<ChoiceItem> items = new ArrayList<>();
        candidates.forEach((order, list) -> {
            List<CandidateRoute> routes = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                routes.add(
                        new CandidateRoute(Integer.toString(i), list.get(i).costs(), loads(order, list.get(i), times)));
            }
            items.add(new ChoiceItem(order.id(), routes));
        });
        return new ChoiceProblem(Assessor.LEVELS, times.length - 1, gear(times), items);
    }

    /** The candidates that a choice names. */
    static Map<BottleOrder, Candidate> chosen(Choice choice, Map<BottleOrder, List<Candidate>> candidates) {
        Map<BottleOrder, Candidate> chosen = new LinkedHashMap<>();
        candidates.forEach((order, list) -> chosen.put(
                order,
                list.get(Integer.parseInt(
                        Objects.requireNonNull(choice.routeByItem().get(order.id()))))));
        return chosen;
    }

    private double[] times(Map<BottleOrder, List<Candidate>> candidates) {
        TreeSet<Double> times = new TreeSet<>();
        times.add(0.0);
        candidates.forEach((order, list) -> {
            double servedS = site.seconds(order.servedAt());
            for (Candidate candidate : list) {
                for (Leg leg : candidate.route().legs()) {
                    if (pools.isGear(leg.where())) {
                        times.add(leg.fromS());
                        times.add(leg.toS());
                    }
                    if (movesPerMinute.isPresent() && leg.fromS() < servedS) {
                        times.add(leg.fromS());
                        times.add(leg.fromS() + StartTimes.MINUTE_S);
                    }
                }
            }
            times.add(site.seconds(order.finishedAt()));
        });
        double end = times.last();
        times.addAll(ice.changesS());
        for (Gear gear : site.gear()) {
            for (double[] window : site.windowsS(gear.id())) {
                times.add(window[0]);
                times.add(window[1]);
            }
        }
        return times.headSet(end, true).stream().mapToDouble(time -> time).toArray();
    }

    private List<Load> loads(BottleOrder order, Candidate candidate, double[] times) {
        List<Load> loads = new ArrayList<>();
        double servedS = site.seconds(order.servedAt());
        int melted =
                (int) Math.round(Assessor.PER_KILOGRAM * candidate.forecast().iceKg());
        List<Leg> legs = candidate.route().legs();
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            int first = slot(times, leg.fromS());
            if (pools.isGear(leg.where())) {
                String pool = pools.poolId(leg.where());
                loads.add(new Load(PLACES + pool, first, slot(times, leg.toS()), order.bottlePlaces()));
                if (site.isIceBath(leg.where()) && melted > 0) {
                    loads.add(new Load(ICE + pool, first, times.length - 1, melted));
                    melted = 0;
                }
            }
            boolean moved = i > 0 || !leg.where().equals(order.startsIn());
            if (movesPerMinute.isPresent() && moved && leg.fromS() < servedS) {
                loads.add(new Load(HANDS, first, slot(times, leg.fromS() + StartTimes.MINUTE_S), 1));
            }
        }
        return loads;
    }

    /** Number of the slot that begins at a time. */
    private static int slot(double[] times, double time) {
        int found = Arrays.binarySearch(times, time);
        return found >= 0 ? Math.min(found, times.length - 1) : Math.min(-found - 1, times.length - 1);
    }

    private List<SharedGear> gear(double[] times) {
        List<SharedGear> gear = new ArrayList<>();
        for (GearPools.Pool pool : pools.pools()) {
            List<Integer> places = new ArrayList<>();
            List<Integer> melting = new ArrayList<>();
            for (int i = 0; i + 1 < times.length; i++) {
                places.add(places(pool, times[i], times[i + 1]));
                double begin = times[i];
                melting.add((int) Math.min(
                        MOST_ICE,
                        Assessor.PER_KILOGRAM
                                * pool.members().stream()
                                        .mapToDouble(item -> ice.meltableKg(item.id(), begin))
                                        .sum()));
            }
            gear.add(new SharedGear(PLACES + pool.id(), places));
            if (site.isIceBath(pool.id())) {
                gear.add(new SharedGear(ICE + pool.id(), melting));
            }
        }
        if (movesPerMinute.isPresent()) {
            gear.add(SharedGear.constant(HANDS, movesPerMinute.getAsInt(), times.length - 1));
        }
        return gear;
    }

    private int places(GearPools.Pool pool, double fromS, double toS) {
        if (!site.isThere(pool.id(), fromS, toS)) {
            return 0;
        }
        return pool.members().stream()
                .filter(item -> ice.readyS(item.id()) <= fromS)
                .mapToInt(pools::places)
                .sum();
    }
}
