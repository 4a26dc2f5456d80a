/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.service.airing.Airing;
import org.junit.jupiter.api.Test;

/** A plan as a request that begins in its middle: nothing of ice, wine or time is lost or counted twice. */
class ResumptionTest {

    private static BottleOrder order(PlanRequest request, String id) {
        return request.bottles().stream()
                .filter(order -> order.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** From one re-plan to the next the stock is what was not taken, and the bath what has not melted. */
    @Test
    void iceIsCountedOnceHoweverOftenOneReplans() {
        ServicePlan plan = Planner.plan(room().gear(bucket())
                .ice(IceStock.of(6))
                .bottle(white("white", 22, "room", 60))
                .bottle(white("later", 22, "room", 200))
                .build());
        assertThat(plan.gearUses())
                .singleElement()
                .satisfies(use -> assertThat(use.iceKg()).isCloseTo(4, within(1e-9)));
        double before = 4;
        for (int minute : new int[] {50, 70, 120}) {
            PlanRequest request = new Resumption(plan, after(minute)).request();
            double inBath = ((IceWaterBath)
                            Objects.requireNonNull(request.gear().get("bucket")).surroundings())
                    .iceKg();
            assertThat(inBath).isPositive().isLessThan(before);
            assertThat(request.ice().orElseThrow().kgAtStart()).isCloseTo(2, within(1e-6));
            assertThat(request.filled()).containsExactly("bucket");
            before = inBath;
            plan = Replanner.replan(
                            plan,
                            after(minute),
                            List.of(new News.LateGuests(List.of("later"), Duration.ofMinutes(1))),
                            PlanLimits.standard())
                    .plan();
        }
    }

    /** A bath that stands there filled is not filled, and is used though there is no ice in stock. */
    @Test
    void aBathThatIsFilledAtTheStartIsUsedAsItIs() {
        PlanRequest.Builder builder = room().gear(bucket()).gear(refrigerator()).ice(IceStock.of(0));
        assertThatThrownBy(() -> builder.filled("cold")).hasMessageContaining("expected a bath");
        ServicePlan plan = Planner.plan(
                builder.filled("bucket").bottle(white("white", 22, "room", 40)).build());
        assertThat(plan.bottles().get(0).means()).isEqualTo("bucket");
        assertThat(plan.works()).isTrue();
        assertThat(plan.instructions()).noneMatch(i -> i.action() == Instruction.Action.FILL);
    }

    @Test
    void whatWasPouredIsOutOfTheBottle() {
        List<Pouring> rounds = List.of(
                Pouring.of(after(120), litres(0.3)),
                Pouring.of(after(130), litres(0.3)),
                Pouring.of(after(138), litres(0.1)));
        ServicePlan plan = Planner.plan(room().gear(refrigerator())
                .bottle(white("white", 10, "cold", 120).poured(rounds))
                .build());
        BottleOrder left = order(new Resumption(plan, after(125)).request(), "white");
        assertThat(left.bottle().liquidVolumeM3()).isCloseTo(0.45e-3, within(1e-5));
        assertThat(left.pourings()).isEqualTo(rounds.subList(1, 3));
        assertThat(left.servedAt()).isEqualTo(after(130));
        assertThat(left.finishedAt()).isEqualTo(after(140));
        Replan replan =
                Replanner.replan(plan, after(125), List.of(new News.Reading("white", 285, 1)), PlanLimits.standard());
        assertThat(replan.plan().instructions())
                .noneMatch(i -> i.action() == Instruction.Action.SERVE)
                .anyMatch(i -> i.action() == Instruction.Action.POUR && i.at().equals(after(138)));
    }

    @Test
    void whatWasDecantedIsInItsCarafe() {
        Airing airing = Airing.carafe(Duration.ofMinutes(40), "room");
        ServicePlan plan = Planner.plan(room().gear(refrigerator())
                .bottle(white("white", 12, "room", 120).aired(airing))
                .build());
        BottleOrder bottled = order(new Resumption(plan, after(70)).request(), "white");
        assertThat(bottled.airing()).contains(airing);
        BottleOrder decanted = order(new Resumption(plan, after(100)).request(), "white");
        assertThat(decanted.airing()).isEmpty();
        assertThat(decanted.startsIn()).isEqualTo("room");
        // In a carafe, not the bottle; on its way to glasses of 8 to 14 °C through a room of 22 °C.
        assertThat(decanted.bottle().vessel()).isNotEqualTo(bottled.bottle().vessel());
        assertThat(decanted.bottle().temperatureK()).isBetween(281.15, 287.15);
    }
}
