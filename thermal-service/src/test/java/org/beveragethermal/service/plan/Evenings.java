/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;

/** Services for tests, our own invention: two places, refrigerators and buckets, wines of several styles. */
final class Evenings {

    static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    static final Air ROOM = Air.at(celsius(23));
    static final Air TERRACE = Air.varying(
            Map.of(Duration.ZERO, celsius(29), Duration.ofHours(3), celsius(26), Duration.ofHours(8), celsius(22)));

    private static final List<String> STYLES =
            List.of("sparkling-dry", "white-light", "white-full", "rose-young", "red-light", "red-full");

    private Evenings() {}

    static PlanRequest.Builder places() {
        return PlanRequest.startingAt(START)
                .place(new Place("room", "room", ROOM))
                .place(new Place("terrace", "terrace", TERRACE));
    }

    static Gear refrigerator(String id, double celsius, int capacity) {
        return new Gear(id, id, GearKind.REFRIGERATOR, Refrigerator.at(celsius(celsius)), capacity);
    }

    static Gear bucket(String id, double iceKg, int capacity) {
        return new Gear(id, id, GearKind.ICE_BATH, bath(iceKg), capacity);
    }

    static IceWaterBath bath(double iceKg) {
        return IceWaterBath.in(Bucket.of(millimetres(260), millimetres(330)), ROOM)
                .ice(kilograms(iceKg), millimetres(25), celsius(-5))
                .water(kilograms(4), celsius(15))
                .build();
    }

    static BottleOrder order(String id, String style, double celsius, String startsIn, int minutes, String servedIn) {
        return new BottleOrder(
                id,
                id,
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(celsius)),
                startsIn,
                1,
                Targets.of(Targets.style(style), RangePolicy.envelope()),
                START.plus(Duration.ofMinutes(minutes)),
                servedIn,
                Duration.ofMinutes(25));
    }

    static List<Gear> gear() {
        return new ArrayList<>(List.of(refrigerator("cold", 5, 2), refrigerator("cool", 9, 2), bucket("bucket", 4, 2)));
    }

    /** Bottles drawn with a seed. */
    static List<BottleOrder> bottles(long seed, int count) {
        Random random = new Random(seed);
        List<BottleOrder> bottles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            bottles.add(order(
                    "bottle " + i,
                    STYLES.get(random.nextInt(STYLES.size())),
                    21 + random.nextInt(4),
                    "room",
                    30 + 5 * random.nextInt(40),
                    random.nextBoolean() ? "room" : "terrace"));
        }
        return bottles;
    }

    static PlanRequest request(List<Gear> gear, List<BottleOrder> bottles) {
        PlanRequest.Builder request = places();
        gear.forEach(request::gear);
        bottles.forEach(request::bottle);
        return request.build();
    }

    static PlanRequest shuffled(List<Gear> gear, List<BottleOrder> bottles, long seed) {
        List<Gear> otherGear = new ArrayList<>(gear);
        List<BottleOrder> otherBottles = new ArrayList<>(bottles);
        Collections.shuffle(otherGear, new Random(seed));
        Collections.shuffle(otherBottles, new Random(seed));
        return request(otherGear, otherBottles);
    }
}
