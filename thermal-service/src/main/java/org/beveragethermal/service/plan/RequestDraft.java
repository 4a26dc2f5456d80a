/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/** A request that is being changed; used inside one call, never shared. */
final class RequestDraft {

    Instant startsAt;
    Instant weatherSince;
    Optional<IceStock> ice;
    final OptionalInt movesPerMinute;
    final Set<String> filled;
    final Map<String, Place> places;
    final Map<String, Gear> gear;
    final Map<String, BottleOrder> bottles = new LinkedHashMap<>();

    RequestDraft(PlanRequest request) {
        startsAt = request.startsAt();
        weatherSince = request.weatherSince();
        ice = request.ice();
        movesPerMinute = request.movesPerMinute();
        filled = new TreeSet<>(request.filled());
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
        filled.stream().filter(gear::containsKey).forEach(builder::filled);
        bottles.values().forEach(builder::bottle);
        ice.ifPresent(builder::ice);
        movesPerMinute.ifPresent(builder::hands);
        return builder.build();
    }
}
