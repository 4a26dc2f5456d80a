/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What coupled runs teach: how much warmer or colder than forecast a bottle was poured that came out of some gear, because others had been
 * in it. From then on the forecasts of that bottle out of that gear are shifted by as much.
 */
final class Corrections {

    /** Differences below this are those of the flow tables [K]. */
    private static final double NOTABLE_K = 0.02;

    private final Site site;
    private final GearPools pools;
    private final Map<BottleOrder, Map<String, Double>> kelvins = new HashMap<>();

    Corrections(Site site, GearPools pools) {
        this.site = site;
        this.pools = pools;
    }

    /** Learns from a round and says whether there was anything to learn. */
    boolean learn(Planning.Round round) {
        boolean[] learned = {false};
        round.chosen().forEach((order, candidate) -> {
            double more =
                    round.outcome(order).poursK().get(0) - candidate.forecast().pouredK();
            if (Math.abs(more) > NOTABLE_K) {
                kelvins.computeIfAbsent(order, key -> new LinkedHashMap<>())
                        .merge(source(order, candidate.route()), more, Double::sum);
                learned[0] = true;
            }
        });
        return learned[0];
    }

    /** What a bottle's forecasts are to be shifted by, by where it has been last but for its table. */
    Map<String, Double> of(BottleOrder order) {
        return Map.copyOf(kelvins.getOrDefault(order, Map.of()));
    }

    /** What corrections are kept under: the last gear on a route before the bottle is served, or the place where it begins. */
    String source(BottleOrder order, Route route) {
        double servedS = site.seconds(order.servedAt());
        String source = pools.poolId(route.legs().get(0).where());
        for (Leg leg : route.legs()) {
            boolean before = leg.fromS() < servedS;
            source = before && pools.isGear(leg.where()) ? pools.poolId(leg.where()) : source;
        }
        return source;
    }
}
