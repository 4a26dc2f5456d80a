/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What holds whatever comes, in whatever order. */
final class TrackerProperties {

    private static final String VESSEL = "bottle-1";
    private static final Tracker TRACKER = Tracker.of(List.of(Truth.MODEL), TrackingRules.usual());
    private static final TrackingEvent PLACED =
            new TrackingEvent.Placed("placed", Truth.START, VESSEL, "bottle", "cold", Truth.ZERO + 20, 1);

    private static TrackedVessel applied(List<? extends TrackingEvent> events) {
        Optional<TrackedVessel> vessel = TRACKER.apply(Optional.empty(), PLACED).vessel();
        for (TrackingEvent event : events) {
            vessel = TRACKER.apply(vessel, event).vessel();
        }
        return vessel.orElseThrow();
    }

    /** Events of a plausible evening. */
    @Provide
    Arbitrary<List<TrackingEvent>> news() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 10),
                        Arbitraries.integers().between(1, 90),
                        Arbitraries.doubles().between(Truth.ZERO + 2, Truth.ZERO + 25))
                .as(Drawn::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(40)
                .map(drawn -> {
                    List<TrackingEvent> events = new ArrayList<>();
                    for (int i = 0; i < drawn.size(); i++) {
                        events.add(drawn.get(i).event(i));
                    }
                    return events;
                });
    }

    private record Drawn(int kind, int minute, double temperatureK) {
        TrackingEvent event(int number) {
            String id = "event-" + number;
            // No two at one moment: which of two comes first at the edge of what is kept is not defined.
            Instant at = Truth.after(60.0 * minute + number);
            return switch (kind) {
                case 0 -> new TrackingEvent.Moved(id, at, VESSEL, number % 2 == 0 ? "room" : "cold");
                case 1 -> new TrackingEvent.Poured(id, at, VESSEL, 0.1 + 0.9 / (1 + number));
                case 2 -> new TrackingEvent.GearChanged(id, at, VESSEL, temperatureK, 1);
                case 3 -> new TrackingEvent.IceAdded(id, at, VESSEL);
                case 4 -> new TrackingEvent.Opened(id, at, VESSEL);
                case 5 ->
                    new TrackingEvent.Ordered(
                            id,
                            at,
                            VESSEL,
                            new TrackingEvent.Goal(temperatureK, temperatureK + 2, Optional.of(at.plusSeconds(900))));
                default -> new TrackingEvent.Reading(id, at, VESSEL, temperatureK);
            };
        }
    }

    @Property(seed = "20261201")
    @Label("Tracking: an event that comes twice counts once, at once or later")
    void twiceIsOnce(@ForAll("news") List<TrackingEvent> news, @ForAll @IntRange(max = 39) int which) {
        List<TrackingEvent> again = new ArrayList<>(news);
        again.add(news.get(which % news.size()));
        again.addAll(news);
        TrackedVessel once = applied(news);
        TrackedVessel twice = applied(again);
        assertThat(twice.snapshot().before()).isEqualTo(once.snapshot().before());
        assertThat(twice.snapshot().kept()).isEqualTo(once.snapshot().kept());
        assertThat(twice.estimate()).isEqualTo(once.estimate());
        assertThat(twice.goal()).isEqualTo(once.goal());
    }

    @Property(seed = "20261202")
    @Label("Tracking: late news within what is kept give the same belief in any order")
    void orderOfArrivalDoesNotMatter(@ForAll("news") List<TrackingEvent> news, @ForAll @LongRange long shuffle) {
        List<TrackingEvent> inTime =
                news.stream().sorted(Comparator.comparing(TrackingEvent::at)).toList();
        // Any twelve that follow each other in time may come in any order.
        List<TrackingEvent> late = new ArrayList<>();
        for (int i = 0; i < inTime.size(); i += TrackingRules.usual().kept()) {
            List<TrackingEvent> part = new ArrayList<>(inTime.subList(
                    i, Math.min(inTime.size(), i + TrackingRules.usual().kept())));
            Collections.shuffle(part, new Random(shuffle));
            late.addAll(part);
        }
        TrackedVessel one = applied(inTime);
        TrackedVessel other = applied(late);
        assertThat(other.estimate()).isEqualTo(one.estimate());
        assertThat(other.snapshot().before()).isEqualTo(one.snapshot().before());
        assertThat(other.snapshot().kept()).isEqualTo(one.snapshot().kept());
        assertThat(other.goal()).isEqualTo(one.goal());
        assertThat(other.isOpened()).isEqualTo(one.isOpened());
    }

    @Property(seed = "20261203")
    @Label("Tracking: looking again without news says nothing and changes nothing")
    void noNewsNoChange(@ForAll("news") List<TrackingEvent> news) {
        TrackedVessel vessel = applied(news);
        Outcome first =
                TRACKER.apply(Optional.of(vessel), new TrackingEvent.TimePassed("look-1", vessel.now(), VESSEL));
        Outcome again = TRACKER.apply(first.vessel(), new TrackingEvent.TimePassed("look-2", vessel.now(), VESSEL));
        assertThat(first.alerts()).isEmpty();
        assertThat(first.instructions()).isEmpty();
        assertThat(again.alerts()).isEmpty();
        assertThat(again.vessel().orElseThrow().snapshot()).isEqualTo(vessel.snapshot());
    }

    @Property(seed = "20261204")
    @Label("Tracking: what is stored and restored goes on as it would have")
    void restoredGoesOn(@ForAll("news") List<TrackingEvent> news, @ForAll @IntRange(max = 39) int cut) {
        int at = cut % news.size();
        TrackedVessel stored = applied(news.subList(0, at)).snapshot().restore(TRACKER);
        Optional<TrackedVessel> vessel = Optional.of(stored);
        for (TrackingEvent event : news.subList(at, news.size())) {
            vessel = TRACKER.apply(vessel, event).vessel();
        }
        assertThat(vessel.orElseThrow().snapshot()).isEqualTo(applied(news).snapshot());
        assertThat(vessel.orElseThrow().estimate()).isEqualTo(applied(news).estimate());
    }

    @Property(seed = "20261205")
    @Label("Tracking: no reading, however absurd, makes a figure that is not finite")
    void nothingInfiniteLeaves(@ForAll List<Double> values, @ForAll("news") List<TrackingEvent> news) {
        List<TrackingEvent> all = new ArrayList<>(news);
        double[] absurd = {
            Double.NaN, Double.POSITIVE_INFINITY, -1e300, 0, Double.MIN_VALUE, 146.15, 1272.15, 378.1, 233.2
        };
        for (int i = 0; i < values.size() + absurd.length; i++) {
            double value = i < absurd.length ? absurd[i] : values.get(i - absurd.length);
            all.add(new TrackingEvent.Reading("absurd-" + i, Truth.after(977.0 * i + 0.5), VESSEL, value));
        }
        TrackedVessel vessel = applied(all);
        for (Duration later : List.of(Duration.ZERO, Duration.ofDays(3), Duration.ofDays(3000))) {
            Estimate estimate = vessel.estimateAt(vessel.now().plus(later));
            assertThat(List.of(
                            estimate.temperatureK(),
                            estimate.sdK(),
                            estimate.logFactor(),
                            estimate.logFactorSd(),
                            estimate.mediumK(),
                            estimate.mediumSdK(),
                            estimate.biasK(),
                            estimate.biasSdK()))
                    .allSatisfy(value -> assertThat(value).isFinite());
            Arrival arrival = vessel.timeTo(Truth.ZERO + 10, vessel.now().plus(later), 0.9);
            assertThat(arrival.neverChance()).isBetween(0.0, 1.0);
        }
    }

    @Property(seed = "20261206", tries = 30)
    @Label("Tracking: a batch in parts on several threads gives what one thread gives")
    void partsGiveTheSame(@ForAll("news") List<TrackingEvent> news, @ForAll @IntRange(min = 1, max = 7) int shards) {
        List<TrackingEvent> events = new ArrayList<>();
        for (int v = 0; v < 9; v++) {
            events.add(new TrackingEvent.Placed("p" + v, Truth.START, "v" + v, "bottle", "cold", Truth.ZERO + 20, 1));
        }
        for (int i = 0; i < news.size(); i++) {
            if (news.get(i) instanceof TrackingEvent.Reading reading) {
                events.add(new TrackingEvent.Reading(reading.id(), reading.at(), "v" + i % 9, reading.temperatureK()));
            }
        }
        Fleet one = Fleet.of(TRACKER);
        Fleet other = Fleet.of(TRACKER);
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            assertThat(other.apply(events, threads, shards)).isEqualTo(one.apply(events));
        } finally {
            threads.shutdownNow();
        }
        assertThat(other.snapshots()).isEqualTo(one.snapshots());
    }

    @Property(seed = "20261207")
    @Label("Tracking: readings that agree with the model never widen the interval of the time to a temperature")
    void intervalShrinks(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Truth truth = new Truth(new SplittableRandom(seed), Truth.MODEL, Truth.ZERO + 20, 0);
        truth.logFactor *= 0.3;
        truth.offsetK *= 0.3;
        TrackedVessel vessel = applied(List.of());
        Map<Integer, Double> widths = new HashMap<>();
        double now = 0;
        for (int i = 0; i <= 20; i++) {
            if (i % 10 == 0) {
                Arrival arrival = vessel.timeTo(Truth.ZERO + 9, vessel.now(), 0.9);
                Arrival.Expected expected = (Arrival.Expected) arrival;
                widths.put(
                        i,
                        (expected.latest().orElse(Duration.ofDays(400)).toSeconds()
                                        - expected.earliest().toSeconds())
                                * 1.0);
            }
            truth.advance(120);
            now += 120;
            vessel = TRACKER.apply(
                            Optional.of(vessel),
                            new TrackingEvent.Reading("r" + i, Truth.after(now), VESSEL, truth.reading()))
                    .vessel()
                    .orElseThrow();
        }
        assertThat(widths.get(10)).isLessThan(widths.get(0));
        assertThat(widths.get(20)).isLessThan(widths.get(10));
    }
}
