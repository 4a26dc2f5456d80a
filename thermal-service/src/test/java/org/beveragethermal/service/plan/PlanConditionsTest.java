/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.service.plan.Evenings.START;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.service.airing.Airing;
import org.junit.jupiter.api.Test;

/** Windows, ice, hands, pourings, airing, limits: each is kept, and refused where it contradicts itself. */
class PlanConditionsTest {

    private static Instant after(int minutes) {
        return START.plus(Duration.ofMinutes(minutes));
    }

    private static Gear there(int from, int to) {
        Gear always = Evenings.refrigerator("cold", 5, 6);
        return new Gear(
                always.id(),
                always.name(),
                always.kind(),
                always.surroundings(),
                always.capacity(),
                List.of(new Window(after(from), after(to))));
    }

    private static BottleOrder white(int minutes) {
        return Evenings.order("white", "white-full", 22, "room", minutes, "room");
    }

    @Test
    void gearIsUsedOnlyWhileItIsThere() {
        ServicePlan plan = Planner.plan(Evenings.request(List.of(there(60, 200)), List.of(white(240))));
        BottlePlan white = plan.bottles().get(0);
        assertThat(white.stays())
                .filteredOn(stay -> stay.where().equals("cold"))
                .singleElement()
                .matches(stay -> !stay.from().isBefore(after(60)) && !stay.to().isAfter(after(200)));
    }

    @Test
    void contradictoryWindowsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Window(after(10), after(10)))
                .withMessageContaining("expected an end after its beginning");
        Gear gear = there(0, 10);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Gear(
                        "cold",
                        "cold",
                        gear.kind(),
                        gear.surroundings(),
                        1,
                        List.of(new Window(after(0), after(20)), new Window(after(10), after(30)))))
                .withMessageContaining("expected the second to begin after the first has ended");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Evenings.places()
                        .gear(there(60, 200))
                        .bottle(Evenings.order("white", "white-full", 5, "cold", 240, "room")))
                .withMessageContaining("expected gear that is there at " + START);
    }

    @Test
    void whatStartsInGearMustFitIntoIt() {
        PlanRequest.Builder request = Evenings.places().gear(Evenings.refrigerator("cold", 5, 1));
        request.bottle(Evenings.order("a", "white-full", 5, "cold", 60, "room"));
        request.bottle(Evenings.order("b", "white-full", 5, "cold", 60, "room"));
        assertThatIllegalArgumentException()
                .isThrownBy(request::build)
                .withMessageContaining("take 2 places: expected at most its 1");
    }

    /** A bath that needs 4 kg cannot be filled before there are 4 kg, nor ever if there never are. */
    @Test
    void iceIsUsedOnlyWhenThereIsSome() {
        BottleOrder soon = Evenings.order("white", "white-light", 22, "room", 60, "room");
        List<Gear> bucket = List.of(Evenings.bucket("bucket", 4, 2));
        PlanRequest.Builder none =
                Evenings.places().gear(bucket.get(0)).bottle(soon).ice(IceStock.of(3.9));
        assertThat(Planner.plan(none.build()).gearUses()).isEmpty();
        PlanRequest.Builder enough =
                Evenings.places().gear(bucket.get(0)).bottle(soon).ice(IceStock.of(4));
        assertThat(Planner.plan(enough.build()).works()).isTrue();
        PlanRequest.Builder later =
                Evenings.places().gear(bucket.get(0)).bottle(soon).ice(new IceStock(3.5, 1, OptionalDouble.empty()));
        ServicePlan plan = Planner.plan(later.build());
        assertThat(plan.gearUses())
                .singleElement()
                .matches(use -> !use.filledAt().isBefore(after(30)));
    }

    /** Ten warm bottles one after the other melt more than a small bucket holds; what is left in the stock is added. */
    @Test
    void iceIsAddedWhereItRunsOut() {
        Gear bucket = Evenings.bucket("bucket", 1.5, 1);
        PlanRequest.Builder few = Evenings.places().gear(bucket).ice(IceStock.of(1.5));
        PlanRequest.Builder more = Evenings.places().gear(bucket).ice(IceStock.of(4));
        for (int i = 0; i < 10; i++) {
            BottleOrder order = Evenings.order("red " + i, "red-light", 24, "room", 60 + 20 * i, "room");
            few.bottle(order);
            more.bottle(order);
        }
        ServicePlan little = Planner.plan(few.build());
        ServicePlan enough = Planner.plan(more.build());
        assertThat(little.gearUses()).allMatch(use -> use.added().isEmpty());
        assertThat(enough.gearUses()).singleElement().satisfies(use -> {
            assertThat(use.added()).hasSize(1);
            assertThat(use.iceKg() + use.added().get(0).iceKg()).isLessThanOrEqualTo(4);
        });
        assertThat(enough.instructions())
                .anyMatch(instruction -> instruction.action() == Instruction.Action.ADD_ICE
                        && instruction.where().equals("bucket"));
        assertThat(inRange(enough)).isGreaterThan(inRange(little));
    }

    private static long inRange(ServicePlan plan) {
        return plan.bottles().stream()
                .filter(bottle -> bottle.verdict().inRange())
                .count();
    }

    @Test
    void iceStocksMakeSense() {
        assertThat(new IceStock(2, 3, OptionalDouble.of(6)).kgBy(Duration.ofHours(1)))
                .isEqualTo(5);
        assertThat(new IceStock(2, 3, OptionalDouble.of(6)).kgBy(Duration.ofHours(5)))
                .isEqualTo(6);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new IceStock(2, 0, OptionalDouble.of(1)))
                .withMessageContaining("expected at least the 2.0 kg");
        assertThatIllegalArgumentException().isThrownBy(() -> IceStock.of(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new IceStock(0, -1, OptionalDouble.empty()));
    }

    @Test
    void noMoreIsMovedInAMinuteThanHandsCan() {
        PlanRequest.Builder request =
                Evenings.places().gear(Evenings.refrigerator("cold", 5, 6)).hands(1);
        for (int i = 0; i < 4; i++) {
            request.bottle(Evenings.order("white " + i, "white-full", 22, "room", 240, "room"));
        }
        ServicePlan plan = Planner.plan(request.build());
        assertThat(plan.works()).isTrue();
        List<Instant> moves = new ArrayList<>();
        plan.bottles().forEach(bottle -> moves.add(bottle.startAt().orElseThrow()));
        assertThat(moves).doesNotHaveDuplicates();
        assertThatIllegalArgumentException().isThrownBy(() -> Evenings.places().hands(0));
    }

    @Test
    void everyRoundOfGlassesIsLookedAt() {
        List<Pouring> rounds = List.of(
                Pouring.of(after(120), litres(0.25)),
                Pouring.of(after(150), litres(0.25)),
                Pouring.of(after(200), litres(0.25)));
        BottleOrder like = white(120);
        BottleOrder order = new BottleOrder(
                        "white",
                        "white",
                        like.bottle(),
                        "room",
                        1,
                        like.target(),
                        after(120),
                        "terrace",
                        Duration.ofMinutes(80))
                .poured(rounds);
        ServicePlan plan = Planner.plan(Evenings.request(List.of(Evenings.refrigerator("cold", 5, 6)), List.of(order)));
        BottlePlan white = plan.bottles().get(0);
        assertThat(white.pours()).extracting(Poured::at).containsExactly(after(120), after(150), after(200));
        assertThat(plan.instructions())
                .filteredOn(instruction -> instruction.action() == Instruction.Action.POUR)
                .hasSize(2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> like.poured(List.of(Pouring.of(after(119), litres(0.1)))))
                .withMessageContaining("expected pourings in order of time");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> like.poured(List.of(Pouring.of(after(121), litres(0.8)))))
                .withMessageContaining("expected at most");
    }

    /** A red that is too cold warms in its carafe; what it is before decanting follows from what it is to be afterwards. */
    @Test
    void anAiredWineIsServedFromItsCarafe() {
        BottleOrder red = Evenings.order("red", "red-full", 14, "room", 120, "room")
                .aired(Airing.carafe(Duration.ofMinutes(40), "room"));
        ServicePlan plan = Planner.plan(Evenings.request(List.of(Evenings.refrigerator("cold", 12, 2)), List.of(red)));
        assertThat(plan.instructions())
                .filteredOn(instruction -> instruction.action() == Instruction.Action.DECANT)
                .singleElement()
                .matches(instruction -> instruction.at().equals(after(80)));
        assertThat(plan.bottles().get(0).pours())
                .hasSize(5)
                .first()
                .satisfies(pour -> assertThat(pour.expected().meanK())
                        .as("warmer than the 14 °C at which it starts")
                        .isGreaterThan(287.15));
    }

    /** One bucket for two, six bottles at one time, a refrigerator that is too slow alone: chilled by twos, held until they are poured. */
    @Test
    void scarceGearChillsInBatchesThatAreHeld() {
        List<BottleOrder> whites = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            whites.add(Evenings.order("white " + i, "white-light", 22, "room", 90, "room"));
        }
        ServicePlan plan = Planner.plan(Evenings.request(
                List.of(Evenings.bucket("bucket", 6, 2), Evenings.refrigerator("cold", 8, 6)), whites));
        assertThat(plan.bottles()).allMatch(bottle -> bottle.verdict().inRange());
        assertThat(plan.bottles())
                .filteredOn(bottle ->
                        bottle.stays().stream().anyMatch(stay -> stay.where().equals("cold")))
                .hasSizeGreaterThanOrEqualTo(4);
    }

    @Test
    void anOpenedWineStandsWhereItIsOpened() {
        BottleOrder red = Evenings.order("red", "red-full", 14, "room", 120, "room")
                .aired(Airing.opened(Duration.ofMinutes(40), "room"));
        ServicePlan plan = Planner.plan(Evenings.request(List.of(Evenings.refrigerator("cold", 12, 2)), List.of(red)));
        assertThat(plan.instructions())
                .filteredOn(instruction -> instruction.action() == Instruction.Action.OPEN)
                .singleElement()
                .matches(instruction -> instruction.at().equals(after(80)));
        BottleOrder begun = new Resumption(plan, after(100)).request().bottles().get(0);
        assertThat(begun.airing()).isEmpty();
        assertThat(begun.bottle().vessel().name())
                .isEqualTo(red.bottle().vessel().name());
    }

    /** Common practice, no source: on a hot terrace a white goes into the bucket and out of it between glasses. */
    @Test
    void byTurnsWhereTheTableIsTooWarmAndTheBucketTooCold() {
        BottleOrder like = Evenings.order("white", "white-light", 22, "room", 60, "hot");
        PlanRequest request = Evenings.places()
                .place(new Place("hot", "hot", Air.at(celsius(38))))
                .gear(Evenings.bucket("bucket", 4, 2))
                .bottle(new BottleOrder(
                        "white",
                        "white",
                        like.bottle(),
                        "room",
                        1,
                        like.target(),
                        like.servedAt(),
                        "hot",
                        Duration.ofMinutes(150)))
                .build();
        BottlePlan white = Planner.plan(request).bottles().get(0);
        assertThat(white.verdict()).isEqualTo(Verdict.VERIFIED);
        assertThat(white.stays())
                .filteredOn(stay -> stay.where().equals("bucket")
                        && stay.from().isAfter(white.order().servedAt()))
                .hasSizeGreaterThan(3);
        assertThat(white.reasons()).anyMatch(reason -> reason.code() == Reason.Code.KEPT_BY_TURNS);
    }

    /** The refrigerator is too slow and the bucket is there for too short a time; one after the other they do. */
    @Test
    void twoMeansWhereNeitherDoesAlone() {
        Gear bucket = Evenings.bucket("bucket", 4, 2);
        Gear late = new Gear(
                "bucket",
                "bucket",
                GearKind.ICE_BATH,
                bucket.surroundings(),
                2,
                List.of(new Window(after(110), after(150))));
        ServicePlan plan = Planner.plan(Evenings.request(
                List.of(Evenings.refrigerator("cold", 6, 2), late),
                List.of(Evenings.order("white", "white-light", 24, "room", 122, "room"))));
        BottlePlan white = plan.bottles().get(0);
        assertThat(white.stays()).extracting(Stay::where).containsSubsequence("cold", "bucket");
        assertThat(white.verdict()).isEqualTo(Verdict.VERIFIED);
    }

    private static PlanRequest fourInASmallBath() {
        WaterBath water =
                WaterBath.of(Bucket.of(millimetres(260), millimetres(330)), litres(8), celsius(4), Evenings.ROOM);
        PlanRequest.Builder request = Evenings.places().gear(new Gear("bath", "bath", GearKind.WATER_BATH, water, 4));
        for (int i = 0; i < 4; i++) {
            request.bottle(Evenings.order("white " + i, "white-light", 22, "room", 60, "room"));
        }
        return request.build();
    }

    /** Four bottles warm a small bath of water more than one: the first choice fails and is put right. */
    @Test
    void theCoupledRunPutsTheChoiceRight() {
        ServicePlan plan = Planner.plan(fourInASmallBath());
        assertThat(plan.chosen().rounds()).isGreaterThan(1);
        assertThat(plan.bottles()).extracting(BottlePlan::verdict).containsOnly(Verdict.REPAIRED);
        assertThat(plan.bottles())
                .allMatch(
                        bottle -> bottle.reasons().stream().anyMatch(reason -> reason.code() == Reason.Code.REPAIRED));
    }

    /** On a clock on which every look takes a second of three, nothing is put right any more, and the verdict says so. */
    @Test
    void whereTimeIsUpTheFirstChoiceStands() {
        AtomicLong clock = new AtomicLong();
        ServicePlan plan = new Planning(
                        fourInASmallBath(),
                        PlanLimits.within(Duration.ofSeconds(3)),
                        PlanMonitor.NONE,
                        Earlier.NONE,
                        () -> clock.addAndGet(1_000_000_000))
                .plan();
        assertThat(plan.chosen().rounds()).isEqualTo(1);
        assertThat(plan.bottles()).extracting(BottlePlan::verdict).doesNotContain(Verdict.VERIFIED, Verdict.REPAIRED);
    }

    @Test
    void progressIsToldAndCancellingEndsIt() {
        PlanRequest request = Evenings.request(Evenings.gear(), Evenings.bottles(1, 2));
        Set<PlanMonitor.Stage> stages = EnumSet.noneOf(PlanMonitor.Stage.class);
        Planner.plan(request, PlanLimits.standard(), (stage, part) -> {
            stages.add(stage);
            return true;
        });
        assertThat(stages).containsExactlyInAnyOrder(PlanMonitor.Stage.values());
        assertThatExceptionOfType(CancellationException.class)
                .isThrownBy(() -> Planner.plan(
                        request, PlanLimits.standard(), (stage, part) -> stage != PlanMonitor.Stage.COUPLED_RUN));
    }

    @Test
    void limitsMakeSense() {
        assertThatIllegalArgumentException().isThrownBy(() -> PlanLimits.within(Duration.ZERO));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlanLimits.standard().withGap(-0.1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlanLimits.standard().withGap(Double.NaN));
    }
}
