/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How full gear is, against a count of every minute. */
class OccupancyTest {

    private static final int MINUTES = 120;
    private static final int CAPACITY = 2;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void conflictsAreTheMinutesInWhichThereIsTooMuch(long seed) {
        Random random = new Random(seed);
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        List<BottleOrder> orders = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            BottleOrder order = Evenings.order("bottle " + i, "white-light", 22, "room", MINUTES, "room");
            orders.add(order);
            int in = 1 + random.nextInt(60);
            int out = in + 1 + random.nextInt(50);
            routes.put(
                    order,
                    Route.of(
                            Route.Kind.ONE_MEANS,
                            new Leg("room", 0, 60.0 * in),
                            new Leg("cold", 60.0 * in, 60.0 * out),
                            new Leg("room", 60.0 * out, 60.0 * MINUTES)));
        }
        PlanRequest request = Evenings.request(List.of(Evenings.refrigerator("cold", 5, CAPACITY)), orders);
        List<CapacityConflict> conflicts = new Occupancy(request, new Site(request), routes).conflicts();
        assertThat(conflicts)
                .isNotEmpty()
                .allMatch(conflict -> conflict.gearId().equals("cold"));
        for (int minute = 0; minute < MINUTES; minute++) {
            double middleS = 60.0 * minute + 30;
            List<String> there = new ArrayList<>();
            routes.forEach((order, route) -> route.legs().stream()
                    .filter(leg -> leg.where().equals("cold") && leg.fromS() < middleS && middleS < leg.toS())
                    .forEach(leg -> there.add(order.id())));
            Instant middle = Evenings.START.plus(Duration.ofSeconds((long) middleS));
            List<CapacityConflict> now = conflicts.stream()
                    .filter(conflict ->
                            conflict.from().isBefore(middle) && conflict.to().isAfter(middle))
                    .toList();
            if (there.size() <= CAPACITY) {
                assertThat(now).as("minute " + minute).isEmpty();
            } else {
                assertThat(now).as("minute " + minute).singleElement().satisfies(conflict -> {
                    assertThat(conflict.bottleIds()).containsExactlyInAnyOrderElementsOf(there);
                    assertThat(conflict.placesNeeded()).isEqualTo(there.size());
                    assertThat(conflict.capacity()).isEqualTo(CAPACITY);
                });
            }
        }
    }
}
