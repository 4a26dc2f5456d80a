/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** How full gear is when routes are taken. */
final class Occupancy {

    private final PlanRequest request;
    private final Site site;
    private final Map<BottleOrder, Route> routes;

    Occupancy(PlanRequest request, Site site, Map<BottleOrder, Route> routes) {
        this.request = request;
        this.site = site;
        this.routes = routes;
    }

    /** Stretches of time in which gear would have to hold more than it can. */
    List<CapacityConflict> conflicts() {
        List<CapacityConflict> conflicts = new ArrayList<>();
        for (Gear gear : request.gear().values()) {
            TreeSet<Double> times = new TreeSet<>();
            routes.values()
                    .forEach(route -> route.legs().stream()
                            .filter(leg -> leg.where().equals(gear.id()))
                            .forEach(leg -> times.addAll(List.of(leg.fromS(), leg.toS()))));
            List<Double> ordered = new ArrayList<>(times);
            for (int i = 0; i + 1 < ordered.size(); i++) {
                conflict(gear, ordered.get(i), ordered.get(i + 1), conflicts);
            }
        }
        return conflicts;
    }

    private void conflict(Gear gear, double fromS, double toS, List<CapacityConflict> out) {
        Set<String> ids = new LinkedHashSet<>();
        int[] needed = {0};
        routes.forEach((order, route) -> {
            if (route.legs().stream()
                    .anyMatch(leg -> leg.where().equals(gear.id()) && leg.fromS() <= fromS && toS <= leg.toS())) {
                ids.add(order.id());
                needed[0] += order.bottlePlaces();
            }
        });
        if (needed[0] > gear.capacity()) {
            out.add(new CapacityConflict(
                    gear.id(), site.instant(fromS), site.instant(toS), needed[0], gear.capacity(), List.copyOf(ids)));
        }
    }
}
