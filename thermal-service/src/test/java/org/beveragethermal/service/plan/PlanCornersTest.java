/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.service.plan.ReplanEvenings.START;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bottle;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.airing.Airing;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;

/** Corners of plans: what the coupled run teaches, latest moments, carafes, intervals at the end, evenings that are over or go past midnight. */
class PlanCornersTest {

    private static final String BATH = "bath";

    private static Gear warmBath() {
        return new Gear(
                BATH,
                "warm bath",
                GearKind.WATER_BATH,
                WaterBath.of(
                        Bucket.of(millimetres(260), millimetres(330)), litres(8), celsius(60), ReplanEvenings.ROOM),
                2);
    }

    private static BottleOrder wanted(String id, double celsius, double low, double high, long served, long drunk) {
        return wanted(id, bottle(celsius), low, high, served, drunk);
    }

    /** Not quite full, so that it may be hot. */
    private static FilledVessel water(double celsius) {
        return Vessels.highShouldered750().filledWith(Beverage.water(), litres(0.7), celsius(celsius));
    }

    private static BottleOrder wanted(String id, FilledVessel drink, double low, double high, long served, long drunk) {
        return new BottleOrder(
                id,
                id,
                drink,
                "room",
                1,
                Targets.of(Targets.style("red-full"), RangePolicy.own(celsius(low), celsius(high))),
                after(served),
                "room",
                Duration.ofMinutes(drunk));
    }

    /** Where a bottle is kept once it has been poured does not make its first glass warmer. */
    @Test
    void whatTheRunTeachesIsOfTheGearThatBroughtABottleToItsTemperature() {
        BottleOrder order = white("white", 22, "room", 120);
        PlanRequest request =
                room().gear(refrigerator()).gear(bucket()).bottle(order).build();
        Route route = Route.of(
                Route.Kind.ONE_MEANS,
                new Leg("room", 0, 6000),
                new Leg("bucket", 6000, 7200),
                new Leg("cold", 7200, 8400));
        assertThat(new Corrections(new Site(request), new GearPools(request)).source(order, route))
                .isEqualTo("bucket");
    }

    /** A bath that has stood for a while is colder than its table says; a scene put together by hand has the last word. */
    @Test
    void putOffToItsLatestMomentABottleIsStillInRange() {
        ServicePlan plan = Planner.plan(room().gear(warmBath())
                .bottle(wanted("first", water(85), 55, 65, 60, 10))
                .bottle(wanted("second", water(20), 44, 58, 90, 10))
                .build());
        BottlePlan first = plan.bottles().get(0);
        BottlePlan second = plan.bottles().get(1);
        assertThat(plan.works()).isTrue();
        Duration latest = since(second.latestStart().orElseThrow());
        Scene scene = Scene.builder()
                .gear("room", ReplanEvenings.ROOM)
                .gear(
                        BATH,
                        warmBath().surroundings(),
                        since(plan.gearUses().get(0).filledAt()))
                .vessel("first", water(85), "room")
                .vessel("second", water(20), "room")
                .move("first", since(first.startAt().orElseThrow()), BATH)
                .move("first", since(first.order().servedAt()), first.keptIn())
                .move("second", latest, BATH)
                .move("second", since(second.order().servedAt()), second.keptIn())
                .build();
        Prediction drink = scene.predict(Duration.ofMinutes(110)).vessel("second");
        for (Instant pour : second.order().pourTimes()) {
            assertThat(drink.meanTemperatureK((double) since(pour).toSeconds()))
                    .as("at %s", pour)
                    .isBetween(273.15 + 44 - 0.1, 273.15 + 58 + 0.1);
        }
    }

    private static Duration since(Instant at) {
        return Duration.between(START, at);
    }

    /** A heavy carafe out of a warm room warms what is poured into it; the forecast reckons with it as the coupled run does. */
    @Test
    void theForecastKnowsOfTheCarafe() {
        BottleOrder red = wanted("red", 14, 12, 20, 120, 20).aired(Airing.carafe(Duration.ofMinutes(45), "room"));
        ServicePlan plan = Planner.plan(room().gear(refrigerator()).bottle(red).build());
        assertThat(plan.bottles().get(0).reasons())
                .extracting(Reason::code)
                .doesNotContain(Reason.Code.TOGETHER)
                .isNotEmpty();
    }

    @Test
    void theLastGlassHasAnIntervalToo() {
        BottleOrder red = wanted("red", 14, 12, 20, 60, 30);
        BottlePlan plan = Planner.plan(room().bottle(red).build()).bottles().get(0);
        assertThat(plan.pours())
                .allSatisfy(pour -> assertThat(
                                pour.expected().high90K() - pour.expected().low90K())
                        .isGreaterThan(0.5));
    }

    @Test
    void anEveningThatIsOverIsNotPlannedAnew() {
        ServicePlan plan = Planner.plan(room().gear(refrigerator())
                .bottle(white("white", 8, "cold", 60))
                .build());
        assertThatThrownBy(() -> Replanner.replan(
                        plan, after(200), List.of(new News.Reading("white", 285, 0.3)), PlanLimits.standard()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("before the last bottle is finished");
    }

    /** No reason says that a bath was filled a minute before so that it would settle. */
    @Test
    void aBathThatIsFilledLateSaysSo() {
        ServicePlan plan = Planner.plan(
                room().gear(bucket()).bottle(white("white", 22, "room", 20)).build());
        assertThat(plan.instructions().get(0).action()).isEqualTo(Instruction.Action.FILL);
        assertThat(plan.instructions().get(0).reason()).isEqualTo(Reason.of(Reason.Code.FILLED_LATE));
    }

    @Test
    void momentsOfOtherDaysAreToldWithTheirDate() {
        PlanRequest request = room().bottle(white("white", 10, "room", 60)).build();
        PlanTexts texts = PlanTexts.in(Locale.ROOT, ZoneOffset.UTC);
        assertThat(texts.clock(after(600))).isEqualTo("01:00");
        assertThat(texts.naming(request).clock(after(60))).isEqualTo("16:00");
        assertThat(texts.naming(request).clock(after(600))).isEqualTo("2027-06-19 01:00");
    }

    /** A host may say "always" by the first and the last of all instants. */
    @Test
    void aWindowWithoutEndsIsAsGoodAsNone() {
        Gear always = refrigerator();
        Gear windowed = new Gear(
                always.id(),
                always.name(),
                always.kind(),
                always.surroundings(),
                always.capacity(),
                List.of(new Window(Instant.MIN, Instant.MAX)));
        BottleOrder order = white("white", 22, "room", 240);
        assertThat(Planner.plan(room().gear(windowed).bottle(order).build()).instructions())
                .isEqualTo(
                        Planner.plan(room().gear(always).bottle(order).build()).instructions());
    }

    @Test
    void aTimeLimitThatCannotBeCountedIsRefused() {
        assertThatThrownBy(() -> PlanLimits.within(ChronoUnit.FOREVER.getDuration()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at most a day");
    }
}
