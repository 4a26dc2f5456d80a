/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.beveragethermal.core.surroundings.IceWaterBath;

/**
 * When the stock lets each bath of ice be filled, and how much ice its bottles may melt. Baths are served in the order of the request;
 * without a stock each has its own ice from the start.
 */
final class IceSupply {

    /** Of the ice of a bath this part stays, or it cools no longer as at the start; our choice. */
    static final double WORKING_PART = 1.0 / 3;

    /** Sums of masses may be this much off [kg]. */
    private static final double ROUNDING_KG = 1e-9;

    private final Optional<IceStock> stock;
    private final Map<String, Double> readyS = new LinkedHashMap<>();
    private final Map<String, Double> fillKg = new LinkedHashMap<>();
    private final Set<String> filled;
    private final double allKg;

    IceSupply(PlanRequest request) {
        this.stock = request.ice();
        this.filled = request.filled();
        double taken = 0;
        for (Gear item : request.gear().values()) {
            if (item.surroundings() instanceof IceWaterBath bath) {
                boolean standing = filled.contains(item.id());
                taken += standing ? 0 : bath.iceKg();
                fillKg.put(item.id(), bath.iceKg());
                readyS.put(item.id(), stock.isPresent() && !standing ? whenS(stock.get(), taken) : 0);
            }
        }
        this.allKg = taken;
    }

    private static double whenS(IceStock stock, double kg) {
        if (stock.kgAtStart() >= kg - ROUNDING_KG) {
            return 0;
        }
        boolean never = stock.kgPerHour() <= 0 || kg > stock.capKg().orElse(Double.POSITIVE_INFINITY);
        return never
                ? Double.POSITIVE_INFINITY
                : (kg - stock.kgAtStart()) / stock.kgPerHour() * IceStock.SECONDS_PER_HOUR;
    }

    /** When there is ice enough to fill a bath; ∞ if there never is; 0 for all other gear [s]. */
    double readyS(String gearId) {
        return Objects.requireNonNullElse(readyS.get(gearId), 0.0);
    }

    /** Moments at which something changes [s]. */
    List<Double> changesS() {
        return readyS.values().stream().filter(Double::isFinite).toList();
    }

    /** Ice that bottles may melt in a bath by a time, a fair part of what is left in the stock added [kg]. */
    double meltableKg(String gearId, double timeS) {
        double fill = Objects.requireNonNullElse(fillKg.get(gearId), 0.0);
        // What stands there filled was found enough when it was filled; it is not to be found too little because some
        // has melted.
        double part = filled.contains(gearId) ? 1 : 1 - WORKING_PART;
        return readyS(gearId) <= timeS ? part * fill + spareKg(timeS) / fillKg.size() : 0;
    }

    /** Ice left in the stock when all baths have been filled [kg]. */
    double spareKg(double timeS) {
        return stock.map(ice -> Math.max(0, ice.kgBy(Duration.ofSeconds((long) timeS)) - allKg))
                .orElse(0.0);
    }

    int baths() {
        return fillKg.size();
    }
}
