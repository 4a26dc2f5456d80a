/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;

/** What holds for plans whatever is at hand: the last moment is the last, more gear never harms, nothing makes it give up. */
class PlannerInvariantsTest {

    private static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    private static final Duration DRUNK_IN = Duration.ofMinutes(20);
    private static final Air ROOM = Air.at(celsius(24));

    private static PlanRequest.Builder places(Air terrace) {
        return PlanRequest.startingAt(START)
                .place(new Place("room", "room", ROOM))
                .place(new Place("terrace", "terrace", terrace));
    }

    private static BottleOrder order(String style, double celsius, String startsIn, String servedIn, int minutes) {
        return new BottleOrder(
                style,
                style,
                Vessels.sparkling750().filledWith(Beverage.wine(percentByVolume(12)), celsius(celsius)),
                startsIn,
                1,
                Targets.of(Targets.style(style), RangePolicy.envelope()),
                START.plus(Duration.ofMinutes(minutes)),
                servedIn,
                DRUNK_IN);
    }

    private static Gear cold(String id, double celsius) {
        return new Gear(id, id, GearKind.REFRIGERATOR, Refrigerator.at(celsius(celsius)), 6);
    }

    /** Warmest from the first glass to the last if the bottle goes into the refrigerator at a moment. */
    private static double warmestK(BottlePlan plan, Instant start) {
        Duration served = Duration.between(START, plan.order().servedAt());
        Duration finished = served.plus(DRUNK_IN);
        Prediction prediction = Scene.builder()
                .gear("room", ROOM)
                .gear("cold", Refrigerator.at(celsius(4)))
                .vessel("bottle", plan.order().bottle(), "room")
                .move("bottle", Duration.between(START, start), "cold")
                .move("bottle", served, "room")
                .build()
                .predict(finished)
                .vessel("bottle");
        double warmest = 0;
        for (long s = served.toSeconds(); s <= finished.toSeconds(); s += 60) {
            warmest = Math.max(warmest, prediction.meanTemperatureK((double) s));
        }
        return warmest;
    }

    @Test
    void theLatestStartIsTheLast() {
        PlanRequest request = places(ROOM)
                .gear(cold("cold", 4))
                .bottle(order("white-light", 24, "room", "room", 400))
                .build();
        BottlePlan white = Planner.plan(request).bottles().get(0);
        double highK = white.order().target().highK();
        Instant latest = white.latestStart().orElseThrow();
        assertThat(white.verdict()).isEqualTo(Verdict.VERIFIED);
        assertThat(white.startAt().orElseThrow()).isBefore(latest);
        assertThat(warmestK(white, latest)).isLessThan(highK + 0.05);
        assertThat(warmestK(white, latest.plus(Duration.ofMinutes(5)))).isGreaterThan(highK);
    }

    /** What the plan predicts is what a scene predicts that is put together by hand. */
    @Test
    void thePlanPredictsWhatAHandmadeSceneDoes() {
        BottlePlan white = Planner.plan(places(ROOM)
                        .gear(cold("cold", 4))
                        .bottle(order("white-light", 24, "room", "room", 400))
                        .build())
                .bottles()
                .get(0);
        assertThat(white.warmestK()).isCloseTo(warmestK(white, white.startAt().orElseThrow()), within(0.02));
    }

    @Property(seed = "701", tries = 8, shrinking = ShrinkingMode.OFF)
    void oneMoreRefrigeratorNeverHarms(
            @ForAll @DoubleRange(min = -2, max = 15) double celsius,
            @ForAll @IntRange(min = 30, max = 500) int minutes) {
        Air terrace = Air.at(celsius(29));
        BottleOrder white = order("white-light", 24, "room", "terrace", minutes);
        ServicePlan without =
                Planner.plan(places(terrace).gear(cold("cold", 4)).bottle(white).build());
        ServicePlan with = Planner.plan(places(terrace)
                .gear(cold("cold", 4))
                .gear(cold("more", celsius))
                .bottle(white)
                .build());
        assertThat(with.bottles().get(0).verdict())
                .isLessThanOrEqualTo(without.bottles().get(0).verdict());
        assertThat(with.conflicts()).isEmpty();
    }

    @Property(seed = "702", tries = 8, shrinking = ShrinkingMode.OFF)
    void everyPlanIsFiniteAndInsideItsTime(
            @ForAll @DoubleRange(min = -5, max = 42) double celsius,
            @ForAll @DoubleRange(min = -29, max = 49) double terraceCelsius,
            @ForAll @IntRange(min = 1, max = 1500) int minutes) {
        BottleOrder order = order("sparkling-dry", celsius, "room", "terrace", minutes);
        ServicePlan plan = Planner.plan(places(Air.at(celsius(terraceCelsius)))
                .gear(cold("cold", 4))
                .bottle(order)
                .build());
        BottlePlan bottle = plan.bottles().get(0);
        assertThat(bottle.coldestK())
                .isFinite()
                .isLessThanOrEqualTo(Math.min(bottle.pouredAtK(), bottle.finishedAtK()) + 1e-6);
        assertThat(bottle.warmestK())
                .isFinite()
                .isGreaterThanOrEqualTo(Math.max(bottle.pouredAtK(), bottle.finishedAtK()) - 1e-6);
        assertThat(plan.instructions())
                .isNotEmpty()
                .allMatch(i -> !i.at().isBefore(START) && !i.at().isAfter(order.finishedAt()));
        assertThat(bottle.reasons()).isNotEmpty();
    }

    /** Left where it is it would freeze hard; it is taken out in time, whatever that does to its temperature. */
    @Test
    void whatWouldFreezeIsTakenOut() {
        ServicePlan plan = Planner.plan(places(ROOM)
                .gear(cold("freezer", -29))
                .bottle(order("white-light", 6, "freezer", "room", 2000))
                .build());
        assertThat(plan.notes()).noneMatch(note -> note.contains("begins to freeze"));
        assertThat(plan.bottles().get(0).means()).isEqualTo("room");
    }

    /** At 60 °C the wine would not fit into the bottle any more; it is planned all the same. */
    @Test
    void aBottleInTheBlazingSunIsPlanned() {
        Air terrace = Air.at(celsius(50)).withWalls(celsius(75));
        ServicePlan plan = Planner.plan(places(terrace)
                .gear(cold("cold", 4))
                .bottle(order("white-light", 40, "terrace", "room", 900))
                .build());
        assertThat(plan.bottles().get(0).means()).isEqualTo("cold");
        assertThat(plan.bottles().get(0).verdict()).isEqualTo(Verdict.VERIFIED);
    }

    /** Common practice, no source: what is too warm when poured stays in the cold between pours, not in the sun. */
    @Test
    void whatIsStillTooWarmIsKeptInTheCold() {
        ServicePlan plan = Planner.plan(places(Air.at(celsius(31)))
                .gear(cold("cold", 4))
                .bottle(order("white-light", 24, "room", "terrace", 40))
                .build());
        BottlePlan white = plan.bottles().get(0);
        assertThat(white.verdict()).isEqualTo(Verdict.NOT_REACHED);
        assertThat(white.means()).isEqualTo("cold");
        assertThat(white.keptIn()).isEqualTo("cold");
        assertThat(white.finishedAtK()).isLessThan(white.pouredAtK());
    }

    @Test
    void aBathOfWaterSaysHowMuchGoesIn() {
        WaterBath bath = WaterBath.of(Bucket.of(millimetres(250), millimetres(330)), litres(8), celsius(9), ROOM);
        ServicePlan plan = Planner.plan(places(ROOM)
                .gear(new Gear("bath", "bath", GearKind.WATER_BATH, bath, 3))
                .bottle(order("white-full", 24, "room", "room", 60))
                .build());
        assertThat(plan.gearUses()).singleElement().satisfies(use -> {
            // 8 L at 9 °C: 999.78 kg/m³, CRC Handbook table of the density of water, from memory.
            assertThat(use.waterKg()).isCloseTo(7.998, within(0.001));
            assertThat(use.iceKg()).isZero();
            assertThat(use.iceGoneAt()).isEmpty();
        });
    }
}
