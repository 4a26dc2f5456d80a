/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;

/** Advice: it is true of the plan it is about, it works when it is followed, and a step less does not. */
class AdviserTest {

    private static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    private static final Duration STEP = Duration.ofMinutes(5);

    private static BottleOrder white(String id, int servedAfterMinutes) {
        return new BottleOrder(
                id,
                id,
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22)),
                "room",
                1,
                Targets.of(Targets.style("white-full"), RangePolicy.own(celsius(9), celsius(14))),
                START.plus(Duration.ofMinutes(servedAfterMinutes)),
                "room",
                Duration.ofMinutes(15));
    }

    private static PlanRequest.Builder room(int refrigeratorCapacity) {
        return PlanRequest.startingAt(START)
                .place(new Place("room", "room", Air.at(celsius(22))))
                .gear(new Gear(
                        "cold",
                        "refrigerator",
                        GearKind.REFRIGERATOR,
                        Refrigerator.at(celsius(3)),
                        refrigeratorCapacity));
    }

    private static Advice advise(ServicePlan plan) {
        return Adviser.advise(plan, PlanLimits.within(Duration.ofHours(1)), PlanMonitor.NONE, () -> 0);
    }

    private static <T extends PlanAdvice> Optional<T> change(Advice advice, Class<T> kind) {
        return ways(advice, kind).findFirst();
    }

    private static <T extends PlanAdvice> Stream<T> ways(Advice advice, Class<T> kind) {
        return advice.ways().stream()
                .map(Advice.Way::change)
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    @Test
    void aPlanThatWorksNeedsNone() {
        Advice advice = advise(Planner.plan(room(6).bottle(white("white", 300)).build()));
        assertThat(advice.faults()).isEmpty();
        assertThat(advice.ways()).isEmpty();
        assertThat(advice.plannerRuns()).isZero();
        assertThat(advice.complete()).isTrue();
    }

    /** One bottle, nothing that varies: to start earlier and to serve later are the same thing. */
    @Test
    void aBottleThatComesTooLateNeedsTime() {
        PlanRequest request = room(6).bottle(white("white", 30)).build();
        Advice advice = advise(Planner.plan(request));
        Duration earlier =
                change(advice, PlanAdvice.EarlierStart.class).orElseThrow().by();
        Duration later =
                change(advice, PlanAdvice.LaterServing.class).orElseThrow().by();
        assertThat(later).isEqualTo(earlier);
        assertThat(works(30 + later.toMinutes())).isTrue();
        assertThat(works(30 + later.minus(STEP).toMinutes())).isFalse();
        // Another refrigerator like the one that is not full does not chill faster.
        assertThat(change(advice, PlanAdvice.MoreGear.class)).isEmpty();
        assertThat(advice.complete()).isTrue();
        assertThat(advice.plannerRuns()).isBetween(10, 50);
    }

    private static boolean works(long servedAfterMinutes) {
        return Planner.plan(
                        room(6).bottle(white("white", (int) servedAfterMinutes)).build())
                .works();
    }

    @Test
    void aWiderRangeIsWhereTheBottleCanBe() {
        PlanRequest request = room(6).bottle(white("white", 55)).build();
        ServicePlan plan = Planner.plan(request);
        PlanAdvice.WiderRange wider =
                change(advise(plan), PlanAdvice.WiderRange.class).orElseThrow();
        assertThat(wider.bottles()).singleElement().satisfies(bottle -> {
            assertThat(bottle.fromK()).isEqualTo(287.15);
            assertThat(bottle.toK()).isBetween(287.15 + 0.5, 287.15 + 6.0);
            assertThat(2 * (bottle.toK() - 273.15))
                    .as("steps of half a kelvin")
                    .isEqualTo(Math.rint(2 * (bottle.toK() - 273.15)));
            assertThat(bottle.toK())
                    .isGreaterThanOrEqualTo(plan.bottles().get(0).pouredAtK());
        });
        String words = PlanTexts.in(Locale.ROOT, ZoneOffset.UTC).words(wider.phrase());
        assertThat(words).matches("serve white up to \\d\\d\\.\\d °C instead of 14\\.0 °C");
    }

    /** Two bottles, room for one: a second refrigerator is what is missing. */
    @Test
    void tooFewPlacesNeedMoreGear() {
        PlanRequest request =
                room(1).bottle(white("one", 150)).bottle(white("two", 150)).build();
        ServicePlan plan = Planner.plan(request);
        assertThat(plan.works()).isFalse();
        Advice advice = advise(plan);
        assertThat(change(advice, PlanAdvice.MoreGear.class)).hasValue(new PlanAdvice.MoreGear("cold", 1));
        assertThat(Planner.plan(room(1).gear(new Gear(
                                        "second", "second", GearKind.REFRIGERATOR, Refrigerator.at(celsius(3)), 1))
                                .bottle(white("one", 150))
                                .bottle(white("two", 150))
                                .build())
                        .works())
                .isTrue();
    }

    @Test
    void faultsSayWhatIsWrongAndWhen() {
        ServicePlan plan = Planner.plan(room(6).bottle(white("white", 30)).build());
        assertThat(Fault.of(plan)).singleElement().satisfies(fault -> {
            assertThat(fault.bottleIds()).containsExactly("white");
            assertThat(fault.gearId()).isEmpty();
            assertThat(fault.from()).isEqualTo(START.plus(Duration.ofMinutes(30)));
            assertThat(PlanTexts.in(Locale.ROOT, ZoneOffset.UTC).words(fault.what()))
                    .matches("white is at 1\\d\\.\\d °C at 15:30, warmer than 14\\.0 °C");
            assertThat(fault.why()).isNotEmpty();
        });
    }

    /** A clock that jumps by a second at each look: after three seconds nothing more is tried, and the answer says so. The planner looks at the same clock, so that one
     * plan takes all the time. */
    @Test
    void itStopsWhenTimeIsUpAndSaysSo() {
        ServicePlan plan = Planner.plan(room(6).bottle(white("white", 30)).build());
        AtomicLong seconds = new AtomicLong();
        Advice advice = Adviser.advise(
                plan,
                PlanLimits.within(Duration.ofSeconds(3)),
                PlanMonitor.NONE,
                () -> seconds.getAndIncrement() * 1_000_000_000L);
        assertThat(advice.complete()).isFalse();
        assertThat(advice.plannerRuns()).isEqualTo(1);
        assertThat(advice.faults()).hasSize(1);
    }

    /** Each way that is told works when it is followed, whatever was asked. */
    @Property(seed = "821", tries = 8, shrinking = ShrinkingMode.OFF)
    @Label("advice that is followed helps the bottles it was given for")
    void adviceThatIsFollowedHelps(
            @ForAll @IntRange(min = 5, max = 140) int minutes, @ForAll @IntRange(min = 1, max = 3) int bottles) {
        PlanRequest.Builder builder = room(1);
        for (int i = 0; i < bottles; i++) {
            builder.bottle(white("white " + i, minutes));
        }
        ServicePlan plan = Planner.plan(builder.build());
        Advice advice = advise(plan);
        assertThat(advice.faults().isEmpty()).isEqualTo(plan.works());
        for (Advice.Way way : advice.ways()) {
            ServicePlan followed = Planner.plan(way.change().appliedTo(plan.request()));
            assertThat(followed.bottles())
                    .filteredOn(
                            bottle -> way.bottleIds().contains(bottle.order().id()))
                    .as(way.toString())
                    .hasSameSizeAs(way.bottleIds())
                    .allMatch(bottle -> bottle.verdict().inRange());
        }
    }

    @Test
    void theSameTwice() {
        ServicePlan plan = Planner.plan(room(6).bottle(white("white", 60)).build());
        assertThat(advise(plan)).isEqualTo(advise(plan));
        assertThat(List.copyOf(advise(plan).ways())).isNotEmpty();
    }
}
