/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Which bottle takes how many places of which gear, and when. */
final class GearBook {

    private final PlanRequest request;
    private final List<Entry> entries = new ArrayList<>();

    /** A stay in a piece of gear, from inclusive, to exclusive [s]. */
    record Entry(String gearId, double fromS, double toS, BottleOrder order) {}

    GearBook(PlanRequest request) {
        this.request = request;
    }

    void add(String gearId, double fromS, double toS, BottleOrder order) {
        if (request.gear().containsKey(gearId) && toS > fromS) {
            entries.add(new Entry(gearId, fromS, toS, order));
        }
    }

    void remove(BottleOrder order) {
        entries.removeIf(entry -> entry.order().equals(order));
    }

    List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** Whether a bottle that is not in the book for it yet fits; always true for places. */
    boolean fits(String gearId, double fromS, double toS, BottleOrder order) {
        Gear gear = request.gear().get(gearId);
        if (gear == null) {
            return true;
        }
        for (double time : changes(gearId, fromS, toS)) {
            int taken = entries.stream()
                    .filter(e -> !e.order().equals(order))
                    .filter(e -> e.gearId().equals(gearId) && e.fromS() <= time && time < e.toS())
                    .mapToInt(e -> e.order().bottlePlaces())
                    .sum();
            if (taken + order.bottlePlaces() > gear.capacity()) {
                return false;
            }
        }
        return true;
    }

    private Set<Double> changes(String gearId, double fromS, double toS) {
        TreeSet<Double> times = new TreeSet<>();
        times.add(fromS);
        for (Entry entry : entries) {
            if (entry.gearId().equals(gearId) && entry.fromS() > fromS && entry.fromS() < toS) {
                times.add(entry.fromS());
            }
        }
        return times;
    }

    /** Stretches of time in which gear would have to hold more than it can. */
    List<CapacityConflict> conflicts() {
        List<CapacityConflict> conflicts = new ArrayList<>();
        for (Gear gear : request.gear().values()) {
            TreeSet<Double> times = new TreeSet<>();
            for (Entry entry : entries) {
                if (entry.gearId().equals(gear.id())) {
                    times.add(entry.fromS());
                    times.add(entry.toS());
                }
            }
            List<Double> ordered = new ArrayList<>(times);
            for (int i = 0; i + 1 < ordered.size(); i++) {
                conflict(gear, ordered.get(i), ordered.get(i + 1), conflicts);
            }
        }
        return conflicts;
    }

    private void conflict(Gear gear, double fromS, double toS, List<CapacityConflict> out) {
        Set<String> ids = new LinkedHashSet<>();
        int needed = 0;
        for (Entry entry : entries) {
            if (entry.gearId().equals(gear.id()) && entry.fromS() <= fromS && toS <= entry.toS()) {
                ids.add(entry.order().id());
                needed += entry.order().bottlePlaces();
            }
        }
        if (needed > gear.capacity()) {
            out.add(new CapacityConflict(
                    gear.id(),
                    request.startsAt().plus(Forecast.duration(fromS)),
                    request.startsAt().plus(Forecast.duration(toS)),
                    needed,
                    gear.capacity(),
                    List.copyOf(ids)));
        }
    }
}
