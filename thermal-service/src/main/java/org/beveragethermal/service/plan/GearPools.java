/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Gear that is alike counts as one with more places, as long as all bottles take equally many: then bottles that overlap never more than there
 * are seats can always be seated one by one in order of time.
 */
final class GearPools {

    private final Map<String, Pool> byGear = new LinkedHashMap<>();
    private final List<Pool> pools;
    private final int bottlePlaces;
    private final boolean equalBottles;

    /**
     * Alike gear.
     *
     * @param members the gear, in the order of the request, one at least
     */
    record Pool(List<Gear> members) {

        String id() {
            return members.get(0).id();
        }
    }

    GearPools(PlanRequest request) {
        this.bottlePlaces = request.bottles().get(0).bottlePlaces();
        this.equalBottles = request.bottles().stream().allMatch(order -> order.bottlePlaces() == bottlePlaces);
        List<List<Gear>> classes = new ArrayList<>();
        for (Gear gear : request.gear().values()) {
            classes.stream()
                    .filter(members -> equalBottles && alike(members.get(0), gear))
                    .findFirst()
                    .orElseGet(() -> {
                        classes.add(new ArrayList<>());
                        return classes.get(classes.size() - 1);
                    })
                    .add(gear);
        }
        this.pools =
                classes.stream().map(members -> new Pool(List.copyOf(members))).toList();
        pools.forEach(pool -> pool.members().forEach(gear -> byGear.put(gear.id(), pool)));
    }

    private static boolean alike(Gear one, Gear other) {
        return one.kind() == other.kind()
                && one.surroundings().equals(other.surroundings())
                && one.windows().equals(other.windows());
    }

    /** Bottle places of a piece of gear that can be used: those left over when equal bottles are put into it are of no use. */
    int places(Gear gear) {
        return equalBottles ? gear.capacity() / bottlePlaces * bottlePlaces : gear.capacity();
    }

    List<Pool> pools() {
        return pools;
    }

    /** The gear that is alike with a piece, itself included. */
    List<Gear> members(String gearId) {
        return Objects.requireNonNull(byGear.get(gearId)).members();
    }

    boolean isGear(String id) {
        return byGear.containsKey(id);
    }

    /** The id of the first of the gear that is alike; the same id for places. */
    String poolId(String id) {
        Pool pool = byGear.get(id);
        return pool == null ? id : pool.id();
    }
}
