/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bottle;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Air;
import org.junit.jupiter.api.Test;

/** Re-plans: what was done stays, what need not change does not, and what changes says why. */
class ReplannerTest {

    private static final PlanLimits LIMITS = PlanLimits.standard();

    /** One white from 22 °C, for which the refrigerator does, poured after five hours. */
    private static ServicePlan oneWhite() {
        return Planner.plan(room().gear(refrigerator())
                .bottle(white("white", 22, "room", 300))
                .build());
    }

    private static Replan replan(ServicePlan plan, long nowMinutes, News... news) {
        return Replanner.replan(plan, after(nowMinutes), List.of(news), LIMITS);
    }

    private static Instant start(ServicePlan plan, String id) {
        return of(plan, id).startAt().orElseThrow();
    }

    private static BottlePlan of(ServicePlan plan, String id) {
        return plan.bottles().stream()
                .filter(bottle -> bottle.order().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String words(Replan replan, Change change) {
        return PlanTexts.in(Locale.ROOT, ZoneOffset.UTC)
                .naming(ReplanEvenings.room()
                        .gear(refrigerator())
                        .gear(bucket())
                        .bottle(white("white", 22, "room", 300))
                        .build())
                .naming(replan.plan().request())
                .words(change.phrase());
    }

    @Test
    void withoutNewsThePlanStaysThePlan() {
        ServicePlan plan = oneWhite();
        Replan replan = replan(plan, 60);
        assertThat(replan.plan()).isEqualTo(plan);
        assertThat(replan.changes()).isEmpty();
        assertThat(replan.instructions()).isEqualTo(plan.instructions());
    }

    @Test
    void aReadingAsPredictedChangesNothing() {
        ServicePlan plan = oneWhite();
        for (long now : new long[] {10, 200, 280}) {
            double predicted = replan(plan, now, new News.Reading("white", 290, 0.5))
                    .readings()
                    .get(0)
                    .predictedK();
            Replan replan = replan(plan, now, new News.Reading("white", predicted, 0.5));
            assertThat(replan.changes()).as("after %d min", now).isEmpty();
            assertThat(replan.readings()).singleElement().satisfies(trust -> {
                assertThat(trust.doubted()).isFalse();
                assertThat(trust.usedK()).isEqualTo(predicted);
            });
        }
    }

    /** What is predicted for a reading is what a scene says that is put together by hand. */
    @Test
    void thePredictionBesideAReadingIsThatOfThePlan() {
        ServicePlan plan = oneWhite();
        Duration start = Duration.between(ReplanEvenings.START, start(plan, "white"));
        double byHand = Scene.builder()
                .gear("room", ReplanEvenings.ROOM)
                .gear("cold", refrigerator().surroundings())
                .vessel("white", bottle(22), "room")
                .move("white", start, "cold")
                .build()
                .predict(Duration.ofHours(4))
                .vessel("white")
                .meanTemperatureK(240 * 60.0);
        Trust trust = replan(plan, 240, new News.Reading("white", 288, 0.5))
                .readings()
                .get(0);
        assertThat(trust.predictedK()).isCloseTo(byHand, within(0.1));
    }

    @Test
    void aReadingBetweenIsWeighted() {
        Trust trust = replan(oneWhite(), 10, new News.Reading("white", 293.15, 0.2))
                .readings()
                .get(0);
        assertThat(trust.predictedK()).isCloseTo(295.15, within(0.01));
        // Both are sure to 0.2 K: the middle.
        assertThat(trust.usedK()).isCloseTo(294.15, within(0.05));
        assertThat(trust.deviations()).isCloseTo(2 / Math.hypot(0.2, 0.2), within(0.1));
        assertThat(trust.doubted()).isTrue();
    }

    @Test
    void aWarmerReadingBeginsEarlierAndSaysWhy() {
        ServicePlan plan = oneWhite();
        Replan replan = replan(plan, 20, new News.Reading("white", 303.15, 0.1));
        assertThat(start(replan.plan(), "white")).isBefore(start(plan, "white"));
        assertThat(replan.changes()).singleElement().satisfies(change -> {
            assertThat(change.kind()).isEqualTo(Change.Kind.TIME);
            assertThat(change.atBefore()).contains(start(plan, "white"));
            assertThat(words(replan, change))
                    .matches(
                            "white: into the refrigerator at \\d\\d:\\d\\d instead of \\d\\d:\\d\\d, because it was read at"
                                    + " 30\\.0 °C, 8\\.0 K warmer than predicted");
        });
    }

    /** A margin that lacks a little is no reason to upset a plan. */
    @Test
    void aSlightlyOtherReadingUpsetsNothing() {
        ServicePlan plan = oneWhite();
        for (double apart : new double[] {-0.2, 0.2}) {
            Replan replan = replan(plan, 10, new News.Reading("white", 295.15 + apart, 0.01));
            assertThat(replan.changes()).isEmpty();
            assertThat(replan.readings().get(0).usedK()).isCloseTo(295.15 + apart, within(0.01));
        }
    }

    @Test
    void lateGuestsArePouredLaterAndWhatIsDoneStays() {
        ServicePlan plan = oneWhite();
        long now = Duration.between(ReplanEvenings.START, start(plan, "white")).toMinutes() + 30;
        Replan replan = replan(plan, now, new News.LateGuests(List.of(), Duration.ofMinutes(30)));
        assertThat(of(replan.plan(), "white").order().servedAt()).isEqualTo(after(330));
        assertThat(replan.done()).isEqualTo(plan.instructions().subList(0, 1));
        assertThat(replan.instructions()).allMatch(i -> replan.done().contains(i) || !i.at().isBefore(after(now)));
        assertThat(replan.changes().get(0).kind()).isEqualTo(Change.Kind.SERVED);
        assertThat(words(replan, replan.changes().get(0)))
                .isEqualTo("white: poured at 20:30 instead of 20:00, because guests come 30 min later");
        assertThat(replan.plan().works()).isTrue();
    }

    @Test
    void earlierGuestsAreNotPouredBeforeNow() {
        ServicePlan plan = oneWhite();
        Replan replan = replan(plan, 250, new News.EarlierGuests(List.of("white"), Duration.ofHours(2)));
        assertThat(of(replan.plan(), "white").order().servedAt()).isEqualTo(after(251));
    }

    @Test
    void lostGearIsUsedNoMore() {
        ServicePlan plan = Planner.plan(room().gear(refrigerator())
                .gear(bucket())
                .bottle(white("white", 22, "room", 300))
                .build());
        String means = of(plan, "white").means();
        Replan replan = replan(plan, 5, new News.GearLost(means, "room"));
        assertThat(of(replan.plan(), "white").stays())
                .noneMatch(stay -> stay.where().equals(means));
        assertThat(replan.plan().works()).isTrue();
        assertThat(replan.changes())
                .isNotEmpty()
                .allMatch(change -> words(replan, change).endsWith("because the refrigerator cannot be used any more"));
    }

    @Test
    void aSwappedBottleIsPlannedAsItIs() {
        ServicePlan plan = oneWhite();
        Replan replan = replan(plan, 30, new News.BottleSwapped("white", bottle(27), "terrace"));
        BottlePlan swapped = of(replan.plan(), "white");
        assertThat(swapped.order().startsIn()).isEqualTo("terrace");
        assertThat(swapped.order().bottle().temperatureK()).isCloseTo(300.15, within(1e-9));
        assertThat(swapped.verdict().inRange()).isTrue();
        assertThat(start(replan.plan(), "white")).isBefore(start(plan, "white"));
    }

    @Test
    void oneMoreBottleLeavesTheOthersAlone() {
        ServicePlan plan = oneWhite();
        Replan replan = replan(plan, 30, new News.BottleAdded(white("second", 22, "room", 320)));
        assertThat(of(replan.plan(), "white").startAt()).contains(start(plan, "white"));
        assertThat(replan.changes()).singleElement().satisfies(change -> {
            assertThat(change.kind()).isEqualTo(Change.Kind.ADDED);
            assertThat(change.bottleId()).isEqualTo("second");
        });
        Replan without = Replanner.replan(replan.plan(), after(40), List.of(new News.BottleRemoved("second")), LIMITS);
        assertThat(without.changes()).singleElement().satisfies(change -> {
            assertThat(change.kind()).isEqualTo(Change.Kind.REMOVED);
            assertThat(words(without, change))
                    .isEqualTo("second: out of the plan, because second is not wanted any more");
        });
        assertThat(of(without.plan(), "white").startAt()).contains(start(plan, "white"));
    }

    /** Half an hour before serving only ice does it; if there is none left, nothing does, and the plan says so. */
    @Test
    void withoutIceNothingIsFilled() {
        ServicePlan plan = Planner.plan(room().gear(refrigerator())
                .gear(bucket())
                .ice(IceStock.of(4))
                .bottle(white("white", 22, "room", 60))
                .build());
        assertThat(of(plan, "white").means()).isEqualTo("bucket");
        long fill = Duration.between(
                        ReplanEvenings.START, plan.gearUses().get(0).filledAt())
                .toMinutes();
        assertThat(fill).isGreaterThan(2);
        Replan replan = replan(plan, fill - 1, new News.IceLeft(0));
        assertThat(replan.plan().gearUses()).isEmpty();
        assertThat(of(replan.plan(), "white").stays())
                .noneMatch(stay -> stay.where().equals("bucket"));
        assertThat(replan.plan().works()).isFalse();
    }

    /** A bucket that is in use goes on: no second filling, and its ice is not taken from the stock again. */
    @Test
    void aBathInUseGoesOn() {
        ServicePlan plan = Planner.plan(room().gear(bucket())
                .ice(IceStock.of(4))
                .bottle(white("white", 22, "room", 60))
                .bottle(white("later", 22, "room", 150))
                .build());
        Instant start = start(plan, "white");
        long now = Duration.between(ReplanEvenings.START, start).toMinutes() + 5;
        Replan replan = replan(plan, now, new News.BottleRemoved("later"));
        assertThat(replan.plan().instructions()).noneMatch(i -> i.action() == Instruction.Action.FILL);
        assertThat(replan.plan().gearUses()).singleElement().satisfies(use -> {
            assertThat(use.filledAt()).isEqualTo(plan.gearUses().get(0).filledAt());
            assertThat(use.iceKg()).isEqualTo(plan.gearUses().get(0).iceKg());
        });
        assertThat(replan.changes()).extracting(Change::bottleId).containsOnly("later");
        assertThat(replan.plan().works()).isTrue();
    }

    @Test
    void aHotterPlaceIsReckonedWith() {
        ServicePlan plan = oneWhite();
        Replan replan = replan(plan, 10, new News.PlaceChanged(new Place("room", "room", Air.at(celsius(35)))));
        assertThat(start(replan.plan(), "white")).isBefore(start(plan, "white"));
        assertThat(words(replan, replan.changes().get(0)))
                .endsWith("because the air of the room is not as was forecast");
    }

    @Test
    void newsOfWhatIsNotThereIsRefused() {
        ServicePlan plan = oneWhite();
        assertThatThrownBy(() -> replan(plan, 10, new News.Reading("red", 290, 0.5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bottle red: expected one of");
        assertThatThrownBy(() -> replan(plan, 10, new News.GearLost("fridge", "room")))
                .hasMessageContaining("gear fridge lost: expected one of [cold]");
        assertThatThrownBy(() -> replan(plan, 10, new News.BottleRemoved("white")))
                .hasMessageContaining("still to be drunk");
        assertThatThrownBy(() -> replan(plan, -1)).hasMessageContaining("from the start of the plan");
        assertThatThrownBy(() -> replan(plan, 305, new News.BottleSwapped("white", bottle(20), "room")))
                .hasMessageContaining("not poured yet");
        assertThatThrownBy(() -> new News.LateGuests(List.of(), Duration.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new News.IceLeft(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new News.Reading("white", 290, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
