/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gives each leg in a pool of alike gear a piece of it: in order of time, the first that has room. */
final class Seating {

    private final GearPools pools;
    private final IceSupply ice;
    private final List<Taken> taken = new ArrayList<>();

    private record Taken(String gearId, double fromS, double toS, int places) {}

    private record Wish(BottleOrder order, int leg) {}

    Seating(GearPools pools, IceSupply ice) {
        this.pools = pools;
        this.ice = ice;
    }

    /** The routes with gear in place of pools. */
    Map<BottleOrder, Route> seated(Map<BottleOrder, Candidate> chosen) {
        Map<BottleOrder, List<Leg>> legs = new LinkedHashMap<>();
        List<Wish> wishes = new ArrayList<>();
        chosen.forEach((order, candidate) -> {
            legs.put(order, new ArrayList<>(candidate.route().legs()));
            for (int i = 0; i < candidate.route().legs().size(); i++) {
                wishes.add(new Wish(order, i));
            }
        });
        Comparator<Wish> inTime = Comparator.comparingDouble(wish ->
                legs.getOrDefault(wish.order(), List.of()).get(wish.leg()).fromS());
        wishes.sort(inTime.thenComparing(wish -> !startsThere(wish, legs)));
        for (Wish wish : wishes) {
            List<Leg> own = legs.getOrDefault(wish.order(), List.of());
            Leg leg = own.get(wish.leg());
            if (pools.isGear(leg.where())) {
                String where = startsThere(wish, legs)
                        ? leg.where()
                        : free(leg, wish.order().bottlePlaces());
                taken.add(new Taken(where, leg.fromS(), leg.toS(), wish.order().bottlePlaces()));
                own.set(wish.leg(), new Leg(where, leg.fromS(), leg.toS()));
            }
        }
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        chosen.forEach((order, candidate) -> routes.put(
                order,
                Route.of(
                        candidate.route().kind(),
                        legs.getOrDefault(order, List.of()).toArray(new Leg[0]))));
        return routes;
    }

    /** What stands in gear at the start stands in that very piece. */
    private static boolean startsThere(Wish wish, Map<BottleOrder, List<Leg>> legs) {
        Leg leg = legs.getOrDefault(wish.order(), List.of()).get(wish.leg());
        return wish.leg() == 0
                && leg.fromS() == 0
                && leg.where().equals(wish.order().startsIn());
    }

    private String free(Leg leg, int places) {
        List<Gear> members = pools.members(leg.where());
        for (Gear gear : members) {
            int used = taken.stream()
                    .filter(other -> other.gearId().equals(gear.id()))
                    .filter(other -> other.fromS() <= leg.fromS() && leg.fromS() < other.toS())
                    .mapToInt(Taken::places)
                    .sum();
            if (ice.readyS(gear.id()) <= leg.fromS() && used + places <= gear.capacity()) {
                return gear.id();
            }
        }
        return members.get(0).id();
    }
}
