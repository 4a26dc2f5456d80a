/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

/** A request that is being changed; used inside one call, never shared. */
final class RequestDraft {

    Instant startsAt;
    Instant weatherSince;
    Optional<IceStock> ice;
    final OptionalInt movesPerMinute;
    /** Baths that are filled, with the ice they were filled with [kg]. */
    final Map<String, Double> filledIceKg = new LinkedHashMap<>();

    final Map<String, Place> places;
    final Map<String, Gear> gear;
    final Map<String, BottleOrder> bottles = new LinkedHashMap<>();

    RequestDraft(PlanRequest request) {
        startsAt = request.startsAt();
        weatherSince = request.weatherSince();
        ice = request.ice();
        movesPerMinute = request.movesPerMinute();
        request.filled().forEach(id -> filledIceKg.put(id, request.fullIceKg(id)));
        places = request.places();
        gear = request.gear();
        request.bottles().forEach(bottle -> bottles.put(bottle.id(), bottle));
    }

    /** Changes some bottles; ids that are not there are passed over. */
    RequestDraft changing(Iterable<String> bottleIds, UnaryOperator<BottleOrder> change) {
        bottleIds.forEach(id -> bottles.computeIfPresent(id, (key, order) -> change.apply(order)));
        return this;
    }

    /**
     * The request as it is now.
     *
     * @throws IllegalArgumentException if its parts do not fit together
     */
    PlanRequest build() {
        PlanRequest.Builder builder = PlanRequest.startingAt(startsAt).weatherSince(weatherSince);
        places.values().forEach(builder::place);
        gear.values().forEach(builder::gear);
        filledIceKg.forEach((id, kg) -> {
            if (gear.containsKey(id)) {
                builder.filled(id, kg);
            }
        });
        bottles.values().forEach(builder::bottle);
        ice.ifPresent(builder::ice);
        movesPerMinute.ifPresent(builder::hands);
        return builder.build();
    }
}
