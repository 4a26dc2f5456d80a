/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.tracking.Fleet;
import org.beveragethermal.service.tracking.Sensor;
import org.beveragethermal.service.tracking.TrackedModel;
import org.beveragethermal.service.tracking.Tracker;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.beveragethermal.service.tracking.TrackingRules;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Readings of 10 000 vessels on one thread, beside one forward prediction of a bottle; {@link Ratios} divides. A batch is ten readings of
 * each vessel, a minute apart, with alerts looked at after each.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class TrackingBenchmark {

    /** Number of events in one batch. */
    static final int BATCH = 100_000;

    private static final String IN_ORDER = "in order";
    private static final String SOME_LATE = "one in ten late by up to ten minutes";
    private static final String SHUFFLED = "all in any order within ten minutes";
    private static final int VESSELS = 10_000;
    private static final int ROUNDS = BATCH / VESSELS;
    private static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final TrackedModel MODEL = TrackedModel.from("bottle", BOTTLE)
            .medium("refrigerator", COLD)
            .medium("room", Air.at(celsius(22)))
            .sensor(Sensor.inDrink(0.3, 0.1).withBias(0.2))
            .build();

    /** In what order readings come; the harness sets it. */
    @Param({IN_ORDER, SOME_LATE, SHUFFLED})
    public String news = IN_ORDER;

    private Fleet fleet = Fleet.of(Tracker.of(List.of(MODEL), TrackingRules.usual()));
    private List<TrackingEvent> batch = List.of();
    private int minute;

    /** Places the vessels and lets each have as many readings as it keeps. */
    @Setup(Level.Trial)
    public void place() {
        fleet = filled();
        minute = 15;
    }

    /** Makes the next ten minutes of readings. */
    @Setup(Level.Invocation)
    public void read() {
        batch = readings(minute + 1, ROUNDS);
        minute += ROUNDS;
        Random random = new Random(minute);
        if (news.equals(SHUFFLED)) {
            Collections.shuffle(batch, random);
        } else if (news.equals(SOME_LATE)) {
            for (int i = 0; i < BATCH / 10; i++) {
                int from = random.nextInt(BATCH);
                Collections.swap(batch, from, Math.min(BATCH - 1, from + random.nextInt(BATCH)));
            }
        }
    }

    private static Fleet filled() {
        Fleet fleet = Fleet.of(Tracker.of(List.of(MODEL), TrackingRules.usual()));
        TrackingEvent.Goal goal = TrackingEvent.Goal.between(celsius(8), celsius(10));
        List<TrackingEvent> events = new ArrayList<>();
        for (int v = 0; v < VESSELS; v++) {
            String id = "vessel-" + v;
            events.add(new TrackingEvent.Placed("p" + v, START, id, "bottle", "refrigerator", 293.15, 0.5));
            events.add(new TrackingEvent.Ordered("o" + v, START, id, goal));
        }
        fleet.apply(events);
        fleet.apply(readings(1, 15));
        return fleet;
    }

    private static List<TrackingEvent> readings(int firstMinute, int rounds) {
        Random random = new Random(firstMinute);
        List<TrackingEvent> events = new ArrayList<>(rounds * VESSELS);
        for (int m = firstMinute; m < firstMinute + rounds; m++) {
            double mean = 278.15 + 15 * Math.exp(-m / 180.0);
            for (int v = 0; v < VESSELS; v++) {
                double reading = mean + 0.3 * random.nextGaussian();
                events.add(new TrackingEvent.Reading(
                        "r" + m + "-" + v, START.plusSeconds(60L * m + v % 60), "vessel-" + v, reading));
            }
        }
        return events;
    }

    /**
     * Applies a batch of 100 000 readings.
     *
     * @return what is new
     */
    @Benchmark
    public Fleet.Report batch() {
        return fleet.apply(batch);
    }

    /**
     * One forward prediction of the same bottle.
     *
     * @return the prediction
     */
    @Benchmark
    public Object prediction() {
        return Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(5)));
    }

    /**
     * Memory that a fleet takes for each of its vessels, with full windows and their ids: what the heap holds less what it holds without.
     *
     * @return bytes
     */
    static double bytesPerVessel() {
        Fleet kept = filled();
        long with = used();
        int count = kept.vessels().size();
        kept = Fleet.of(Tracker.of(List.of(MODEL), TrackingRules.usual()));
        long without = used();
        return (double) (with - without) / (count + kept.vessels().size());
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 6; i++) {
            System.gc();
            least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
        }
        return least;
    }
}
