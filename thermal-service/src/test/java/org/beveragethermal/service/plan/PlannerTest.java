/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans: what a person who serves would expect of them, and what they must never do. */
class PlannerTest {

    private static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    private static final Air ROOM = Air.at(celsius(22));

    private static BottleOrder order(String id, String style, double celsius, String startsIn, int servedAfterMinutes) {
        FilledVessel bottle =
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(celsius));
        return new BottleOrder(
                id,
                id,
                bottle,
                startsIn,
                1,
                Targets.of(Targets.style(style), RangePolicy.envelope()),
                START.plus(Duration.ofMinutes(servedAfterMinutes)),
                "room",
                Duration.ofMinutes(20));
    }

    private static PlanRequest.Builder room() {
        return PlanRequest.startingAt(START).place(new Place("room", "room", ROOM));
    }

    private static Gear refrigerator(String id, double celsius, int capacity) {
        return new Gear(id, id, GearKind.REFRIGERATOR, Refrigerator.at(celsius(celsius)), capacity);
    }

    private static Gear ice(String id, double iceKg, double waterKg, int capacity) {
        IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(250), millimetres(330)), ROOM)
                .ice(kilograms(iceKg), millimetres(25), celsius(-5))
                .water(kilograms(waterKg), celsius(15))
                .build();
        return new Gear(id, id, GearKind.ICE_BATH, bath, capacity);
    }

    @Test
    void aBottleInRangeStaysWhereItIs() {
        ServicePlan plan = Planner.plan(room().gear(refrigerator("cold", 5, 6))
                .bottle(order("red", "red-full", 18, "room", 60))
                .build());
        BottlePlan red = plan.bottles().get(0);
        assertThat(red.startAt()).isEmpty();
        assertThat(red.verdict()).isEqualTo(Verdict.VERIFIED);
        assertThat(plan.works()).isTrue();
    }

    @Test
    void aWarmWhiteGoesIntoTheRefrigeratorInTime() {
        PlanRequest request = room().gear(refrigerator("cold", 5, 6))
                .bottle(order("white", "white-full", 22, "room", 300))
                .build();
        ServicePlan plan = Planner.plan(request);
        BottlePlan white = plan.bottles().get(0);
        assertThat(white.verdict()).isEqualTo(Verdict.VERIFIED);
        assertThat(white.means()).isEqualTo("cold");
        // As late as it leaves room for a doubt: between the cold end and the warm end less a little.
        assertThat(white.finishedAtK())
                .isBetween(white.order().target().lowK(), white.order().target().highK() - 0.5);
        Instant latest = white.latestStart().orElseThrow();
        assertThat(latest).isAfterOrEqualTo(white.startAt().orElseThrow());
        double high = white.order().target().highK();
        assertThat(warmest(white, latest)).isLessThan(high + 0.1);
        assertThat(warmest(white, latest.plus(Duration.ofMinutes(20)))).isGreaterThan(high + 0.1);
    }

    /** Warmest mean temperature from the first glass to the last if it goes into the refrigerator at a moment. */
    private static double warmest(BottlePlan plan, Instant start) {
        Duration served = Duration.between(START, plan.order().servedAt());
        Duration finished = Duration.between(START, plan.order().finishedAt());
        Prediction prediction = Scene.builder()
                .gear("room", ROOM)
                .gear("cold", Refrigerator.at(celsius(5)))
                .vessel("white", plan.order().bottle(), "room")
                .move("white", Duration.between(START, start), "cold")
                .move("white", served, plan.keptIn())
                .build()
                .predict(finished)
                .vessel("white");
        double warmest = 0;
        for (Duration time = served; time.compareTo(finished) <= 0; time = time.plusMinutes(1)) {
            warmest = Math.max(warmest, prediction.meanTemperatureK((double) time.toSeconds()));
        }
        return warmest;
    }

    @Test
    void aColdRedWarmsInTheRoom() {
        ServicePlan plan = Planner.plan(room().gear(refrigerator("cold", 8, 6))
                .bottle(order("red", "red-full", 8, "cold", 360))
                .build());
        BottlePlan red = plan.bottles().get(0);
        assertThat(red.means()).isEqualTo("room");
        assertThat(red.verdict()).isEqualTo(Verdict.VERIFIED);
    }

    @Test
    void whatCannotBeReachedIsSaidWithEveryReason() {
        ServicePlan plan = Planner.plan(room().place(new Place("cellar", "cellar", Air.at(celsius(14))))
                .gear(refrigerator("cold", 5, 6))
                .gear(bath("bath", 5))
                .gear(ice("bucket", 4, 4, 3))
                .bottle(order("white", "white-light", 26, "room", 4))
                .build());
        BottlePlan white = plan.bottles().get(0);
        assertThat(white.verdict()).isEqualTo(Verdict.NOT_REACHED);
        assertThat(plan.works()).isFalse();
        for (String means : List.of("cellar", "cold", "bath")) {
            assertThat(white.reasons())
                    .anyMatch(reason -> reason.code() == Reason.Code.WILL_NOT_DO
                            && reason.arguments().contains(new Argument.Where(means)));
        }
        assertThat(white.reasons())
                .anyMatch(reason -> reason.code() == Reason.Code.CLOSEST
                        && reason.arguments().contains(new Argument.Where("bucket")));
        assertThat(white.latestStart()).isEmpty();
    }

    @Test
    void gearThatIsTooSmallIsReportedNeverIgnored() {
        PlanRequest.Builder request = room().gear(refrigerator("cold", 5, 2));
        for (int i = 1; i <= 4; i++) {
            request.bottle(order("white " + i, "white-full", 22, "room", 240));
        }
        ServicePlan plan = Planner.plan(request.build());
        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.works()).isFalse();
        assertThat(plan.bottles())
                .filteredOn(bottle -> bottle.means().equals("cold"))
                .hasSize(2)
                .allMatch(bottle -> bottle.verdict() == Verdict.VERIFIED);
        assertThat(plan.bottles())
                .filteredOn(bottle -> !bottle.means().equals("cold"))
                .hasSize(2)
                .allMatch(bottle -> bottle.verdict() == Verdict.NOT_REACHED)
                .allMatch(
                        bottle -> bottle.reasons().contains(Reason.of(Reason.Code.TAKEN, new Argument.Where("cold"))));
    }

    @Test
    void aFullRefrigeratorSendsTheNextBottleElsewhere() {
        PlanRequest.Builder request = room().gear(refrigerator("cold", 5, 1)).gear(refrigerator("other", 6, 1));
        request.bottle(order("white 1", "white-full", 22, "room", 240));
        request.bottle(order("white 2", "white-full", 22, "room", 240));
        ServicePlan plan = Planner.plan(request.build());
        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.bottles()).extracting(BottlePlan::means).containsExactlyInAnyOrder("cold", "other");
        assertThat(plan.bottles()).allMatch(b -> b.verdict() == Verdict.VERIFIED);
    }

    @Test
    void bottlesThatShareABathFeelEachOther() {
        PlanRequest.Builder one = room().gear(bath("bath", 5));
        PlanRequest.Builder three = room().gear(bath("bath", 5));
        one.bottle(order("white 1", "white-full", 22, "room", 60));
        for (int i = 1; i <= 3; i++) {
            three.bottle(order("white " + i, "white-full", 22, "room", 60));
        }
        double alone = Planner.plan(one.build()).bottles().get(0).pouredAtK();
        double together = Planner.plan(three.build()).bottles().get(0).pouredAtK();
        assertThat(together).isGreaterThan(alone + 0.2);
    }

    private static Gear bath(String id, double litres) {
        WaterBath water = WaterBath.of(Bucket.of(millimetres(250), millimetres(330)), litres(litres), celsius(8), ROOM);
        return new Gear(id, id, GearKind.WATER_BATH, water, 3);
    }

    @Test
    void nothingHappensBeforeTheStartAndEverythingInOrder() {
        ServicePlan plan = Planner.plan(evening(false));
        assertThat(plan.instructions()).allMatch(i -> !i.at().isBefore(START));
        for (int i = 1; i < plan.instructions().size(); i++) {
            assertThat(plan.instructions().get(i).at())
                    .isAfterOrEqualTo(plan.instructions().get(i - 1).at());
        }
        assertThat(plan.gearUses()).allMatch(use -> use.iceLeftKg() >= 0);
    }

    private static PlanRequest evening(boolean reversed) {
        List<BottleOrder> orders = new ArrayList<>(List.of(
                order("white", "white-light", 22, "room", 90),
                order("red", "red-light", 22, "room", 150),
                order("rosé", "rose-young", 22, "room", 200)));
        if (reversed) {
            Collections.reverse(orders);
        }
        PlanRequest.Builder request = room().gear(refrigerator("cold", 5, 6)).gear(ice("bucket", 4, 4, 3));
        orders.forEach(request::bottle);
        return request.build();
    }

    @Test
    void orderOfInputAndRepetitionChangeNothing() {
        PlanRequest request = evening(false);
        ServicePlan plan = Planner.plan(request);
        ServicePlan again = Planner.plan(request);
        ServicePlan reversed = Planner.plan(evening(true));
        assertThat(again.bottles()).isEqualTo(plan.bottles());
        for (BottlePlan bottle : plan.bottles()) {
            BottlePlan other = reversed.bottles().stream()
                    .filter(b -> b.order().id().equals(bottle.order().id()))
                    .findFirst()
                    .orElseThrow();
            assertThat(other.verdict()).isEqualTo(bottle.verdict());
            assertThat(other.startAt()).isEqualTo(bottle.startAt());
            assertThat(other.pouredAtK()).isCloseTo(bottle.pouredAtK(), within(5e-3));
        }
    }

    @Test
    void aDrinkIsTakenOutBeforeItFreezes() {
        Gear freezer = refrigerator("freezer", -20, 6);
        BottleOrder stored = order("white", "white-light", 4, "freezer", 600);
        ServicePlan plan = Planner.plan(room().gear(freezer).bottle(stored).build());
        assertThat(plan.notes()).noneMatch(note -> note.contains("begins to freeze"));
        assertThat(plan.bottles().get(0).stays()).extracting(Stay::where).doesNotContain("freezer");
    }

    /** Whatever the drink, how warm it is and how soon it is wanted: more at hand is never worse. */
    @ParameterizedTest
    @CsvSource({
        "white-light, 22, 30",
        "white-full, 22, 45",
        "red-light, 22, 60",
        "red-full, 8, 45",
        "rose-young, 24, 120"
    })
    void oneMoreRefrigeratorIsNeverWorse(String style, double celsius, int minutes) {
        for (Gear atHand : List.of(refrigerator("cold", 5, 1), ice("bucket", 4, 4, 3))) {
            PlanRequest.Builder without = room().gear(atHand);
            for (int i = 1; i <= 2; i++) {
                without.bottle(order("wine " + i, style, celsius, "room", minutes));
            }
            List<BottlePlan> before = Planner.plan(without.build()).bottles();
            for (double more : new double[] {2, 12}) {
                PlanRequest.Builder with = room().gear(atHand).gear(refrigerator("more", more, 6));
                before.forEach(plan -> with.bottle(plan.order()));
                List<BottlePlan> after = Planner.plan(with.build()).bottles();
                // Bottles that are alike may change places.
                assertThat(inRange(after))
                        .as("%s with %s and one at %s °C", style, atHand.id(), more)
                        .isGreaterThanOrEqualTo(inRange(before));
            }
        }
    }

    private static long inRange(List<BottlePlan> bottles) {
        return bottles.stream().filter(bottle -> bottle.verdict().inRange()).count();
    }

    /** One that is there but not wanted leaves every figure as it was. */
    @Test
    void aRefrigeratorThatIsNotUsedChangesNothing() {
        PlanRequest.Builder without = room().gear(refrigerator("cold", 5, 6));
        PlanRequest.Builder with = room().gear(refrigerator("cold", 5, 6)).gear(refrigerator("unused", 8, 6));
        BottleOrder white = order("white", "white-full", 22, "room", 240);
        BottleOrder red = order("red", "red-full", 18, "room", 60);
        ServicePlan before = Planner.plan(without.bottle(white).bottle(red).build());
        ServicePlan after = Planner.plan(with.bottle(white).bottle(red).build());
        assertThat(after.bottles()).extracting(BottlePlan::means).doesNotContain("unused");
        assertThat(after.instructions()).isEqualTo(before.instructions());
        assertThat(after.works()).isEqualTo(before.works());
        for (int i = 0; i < 2; i++) {
            assertThat(after.bottles().get(i).pouredAtK())
                    .isCloseTo(before.bottles().get(i).pouredAtK(), within(5e-3));
        }
    }

    /** Alike, kept in the same refrigerator, but for two tables: whoever pours must be told where each goes. */
    @Test
    void bottlesForTwoPlacesAreServedApart() {
        Air heat = Air.at(celsius(38));
        PlanRequest.Builder request = PlanRequest.startingAt(START)
                .place(new Place("room", "room", heat))
                .place(new Place("terrace", "terrace", heat))
                .gear(refrigerator("cold", 7, 6));
        for (String place : List.of("room", "terrace")) {
            BottleOrder like = order(place, "white-light", 7, "cold", 60);
            request.bottle(new BottleOrder(
                    "for " + place,
                    "for " + place,
                    like.bottle(),
                    "cold",
                    1,
                    like.target(),
                    like.servedAt(),
                    place,
                    Duration.ofHours(2)));
        }
        ServicePlan plan = Planner.plan(request.build());
        assertThat(plan.bottles()).allMatch(bottle -> bottle.keptIn().equals("cold"));
        assertThat(plan.instructions())
                .filteredOn(i -> i.action() == Instruction.Action.SERVE)
                .hasSize(2)
                .allMatch(i -> i.bottleIds().size() == 1);
    }

    /** The last glass counts, also where it comes between two looks at the temperature. */
    @Test
    void theLastGlassIsLookedAt() {
        BottleOrder like = order("red", "red-full", 18, "room", 60);
        BottlePlan red = Planner.plan(room().bottle(new BottleOrder(
                                "red",
                                "red",
                                like.bottle(),
                                "room",
                                1,
                                like.target(),
                                like.servedAt(),
                                "room",
                                Duration.ofSeconds(29)))
                        .build())
                .bottles()
                .get(0);
        assertThat(red.finishedAtK()).isGreaterThan(red.pouredAtK());
        assertThat(red.warmestK()).isEqualTo(red.finishedAtK());
        assertThat(red.coldestK()).isEqualTo(red.pouredAtK());
    }
}
