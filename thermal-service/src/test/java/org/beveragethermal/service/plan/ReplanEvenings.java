/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;

/** A small evening of our own invention that re-plans are tried on: a room, a terrace, a refrigerator, a bucket of ice. */
final class ReplanEvenings {

    static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    static final Air ROOM = Air.at(celsius(22));

    private ReplanEvenings() {}

    static Instant after(long minutes) {
        return START.plus(Duration.ofMinutes(minutes));
    }

    static FilledVessel bottle(double celsius) {
        return Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(celsius));
    }

    static BottleOrder white(String id, double celsius, String startsIn, long servedAfterMinutes) {
        return new BottleOrder(
                id,
                id,
                bottle(celsius),
                startsIn,
                1,
                Targets.of(Targets.style("white-full"), RangePolicy.own(celsius(8), celsius(14))),
                after(servedAfterMinutes),
                "room",
                Duration.ofMinutes(20));
    }

    static PlanRequest.Builder room() {
        return PlanRequest.startingAt(START)
                .place(new Place("room", "room", ROOM))
                .place(new Place("terrace", "terrace", Air.at(celsius(27))));
    }

    static Gear refrigerator() {
        return new Gear("cold", "refrigerator", GearKind.REFRIGERATOR, Refrigerator.at(celsius(4)), 6);
    }

    static Gear bucket() {
        IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(250), millimetres(330)), ROOM)
                .ice(kilograms(4), millimetres(25), celsius(-5))
                .water(kilograms(4), celsius(15))
                .build();
        return new Gear("bucket", "bucket", GearKind.ICE_BATH, bath, 3);
    }
}
