/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.plan.BottleOrder;
import org.beveragethermal.service.plan.Gear;
import org.beveragethermal.service.plan.GearKind;
import org.beveragethermal.service.plan.Place;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Whole plans, from predictions to the coupled run, beside one forward prediction of a bottle; the evenings are our own invention. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 4)
@Measurement(iterations = 4, time = 5)
@State(Scope.Benchmark)
public class PlanBenchmark {

    /** What all are divided by. */
    static final String REFERENCE = "one prediction of a bottle, 5 h";

    private static final String SMALL = "12 bottles, 4 pieces of gear";
    private static final String LARGE = "60 bottles, 8 pieces of gear";
    private static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    private static final List<String> STYLES =
            List.of("sparkling-dry", "white-light", "white-full", "rose-young", "red-light", "red-full");
    private static final double[] STRENGTHS = {12, 12.5, 13, 11.5, 12.8, 14};
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final Duration LONG = Duration.ofHours(5);
    private static final Duration LIMIT = Duration.ofSeconds(5);

    /** Which plan; the harness sets it. */
    @Param({REFERENCE, SMALL, LARGE})
    public String subject = REFERENCE;

    private PlanRequest request = evening(12, 4);

    /** Describes the evening. */
    @Setup
    public void prepare() {
        request = subject.equals(LARGE) ? evening(60, 8) : evening(12, 4);
    }

    /**
     * Plans.
     *
     * @return the plan, for the harness to consume
     */
    @Benchmark
    public Object plan() {
        return subject.equals(REFERENCE)
                ? Lumped.of(BOTTLE).expose(in(COLD, LONG))
                : Planner.planWithin(request, LIMIT);
    }

    static PlanRequest evening(int bottles, int gear) {
        Air room = Air.varying(Map.of(Duration.ZERO, celsius(24), Duration.ofHours(8), celsius(22)));
        Air terrace = Air.varying(
                Map.of(Duration.ZERO, celsius(30), Duration.ofHours(3), celsius(27), Duration.ofHours(8), celsius(22)));
        PlanRequest.Builder request = PlanRequest.startingAt(START)
                .place(new Place("room", "room", room))
                .place(new Place("terrace", "terrace", terrace));
        for (int i = 0; i < gear; i++) {
            request.gear(
                    i % 2 == 0
                            ? new Gear(
                                    "cold " + i,
                                    "cold",
                                    GearKind.REFRIGERATOR,
                                    Refrigerator.at(celsius(4.0 + i)),
                                    Math.max(4, bottles / 8))
                            : new Gear("bucket " + i, "bucket", GearKind.ICE_BATH, bath(4 + 0.1 * i, room), 3));
        }
        for (int i = 0; i < bottles; i++) {
            request.bottle(order(i, Math.round(60.0 * i / bottles)));
        }
        return request.build();
    }

    private static IceWaterBath bath(double iceKg, Air room) {
        return IceWaterBath.in(Bucket.of(millimetres(260), millimetres(330)), room)
                .ice(kilograms(iceKg), millimetres(25), celsius(-5))
                .water(kilograms(4), celsius(15))
                .build();
    }

    /** One bottle of six styles in turn, served an hour after the start and so many times five minutes. */
    private static BottleOrder order(int number, long fives) {
        int style = number % STYLES.size();
        return new BottleOrder(
                "bottle " + number,
                "bottle " + number,
                (style == 0 ? Vessels.sparkling750() : Vessels.highShouldered750())
                        .filledWith(Beverage.wine(percentByVolume(STRENGTHS[style])), celsius(style < 4 ? 23 : 20)),
                "room",
                1,
                Targets.of(Targets.style(STYLES.get(style)), RangePolicy.envelope()),
                START.plus(Duration.ofMinutes(60 + 5 * fives)),
                number % 2 == 0 ? "room" : "terrace",
                Duration.ofMinutes(25));
    }
}
