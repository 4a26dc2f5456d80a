/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.plan.BottleOrder;
import org.beveragethermal.service.plan.Gear;
import org.beveragethermal.service.plan.GearKind;
import org.beveragethermal.service.plan.IceStock;
import org.beveragethermal.service.plan.Place;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;

/** Evenings that cannot work as they are wanted; invented for the documents, every figure of them. */
final class InventedEvenings {

    private static final Instant SIX = Instant.parse("2027-06-18T18:00:00Z");
    private static final Air ROOM = Air.at(celsius(25));

    private InventedEvenings() {}

    /** By what the documents call them. */
    static Map<String, PlanRequest> all() {
        Map<String, PlanRequest> all = new LinkedHashMap<>();
        all.put("Two whites in half an hour, a bucket that takes 4 kg of ice, and 2 kg of ice", littleIce());
        all.put("Three whites in 40 minutes, and a bucket for two", fewPlaces());
        all.put("A white in an hour, and a refrigerator", littleTime());
        return all;
    }

    private static PlanRequest littleIce() {
        return room().gear(bucket(2))
                .ice(IceStock.of(2))
                .bottle(white("first white", 30))
                .bottle(white("second white", 30))
                .build();
    }

    private static PlanRequest fewPlaces() {
        return room().gear(bucket(2))
                .bottle(white("first white", 40))
                .bottle(white("second white", 40))
                .bottle(white("third white", 40))
                .build();
    }

    private static PlanRequest littleTime() {
        return room().gear(new Gear("cold", "refrigerator", GearKind.REFRIGERATOR, Refrigerator.at(celsius(4)), 6))
                .bottle(white("the white", 60))
                .build();
    }

    private static PlanRequest.Builder room() {
        return PlanRequest.startingAt(SIX).place(new Place("room", "room", ROOM));
    }

    private static Gear bucket(int capacity) {
        IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(250), millimetres(330)), ROOM)
                .ice(kilograms(4), millimetres(25), celsius(-5))
                .water(kilograms(4), celsius(15))
                .build();
        return new Gear("bucket", "bucket", GearKind.ICE_BATH, bath, capacity);
    }

    private static BottleOrder white(String id, int servedAfterMinutes) {
        return new BottleOrder(
                id,
                id,
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(25)),
                "room",
                1,
                Targets.of(Targets.style("white-full"), RangePolicy.own(celsius(8), celsius(14))),
                SIX.plus(Duration.ofMinutes(servedAfterMinutes)),
                "room",
                Duration.ofMinutes(20));
    }
}
