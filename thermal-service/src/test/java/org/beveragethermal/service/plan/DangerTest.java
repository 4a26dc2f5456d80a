/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.caution.Jurisdiction;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;

/** What is never done, whatever it would bring. */
class DangerTest {

    /** A freezer would bring a warm white to its range soonest; taken out in time it does, and is never left to freeze. */
    @Test
    void aFreezerIsUsedOnlyAsLongAsNothingFreezes() {
        Gear freezer = Evenings.refrigerator("freezer", -18, 6);
        for (int minutes : new int[] {45, 90, 300}) {
            ServicePlan plan = Planner.plan(Evenings.request(
                    List.of(freezer), List.of(Evenings.order("white", "white-light", 22, "room", minutes, "terrace"))));
            assertThat(plan.notes()).noneMatch(note -> note.contains("begins to freeze"));
            assertThat(plan.bottles().get(0).stays()).extracting(Stay::where).contains("freezer");
        }
        ServicePlan kept = Planner.plan(Evenings.request(
                List.of(freezer), List.of(Evenings.order("white", "white-light", 22, "room", 60, "terrace"))));
        assertThat(kept.notes()).noneMatch(note -> note.contains("begins to freeze"));
        assertThat(kept.bottles().get(0).means()).isEqualTo("freezer");
    }

    /** Glass at 62 °C into ice water: more than the 42 K at which soda-lime glass is stopped (common practice, no source). */
    @Test
    void hotGlassIsNotPlungedIntoIce() {
        BottleOrder like = Evenings.order("punch", "red-full", 22, "room", 40, "room");
        BottleOrder punch = new BottleOrder(
                "punch",
                "punch",
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(10)), litres(0.6), celsius(62)),
                "hot",
                1,
                like.target(),
                like.servedAt(),
                "room",
                Duration.ofMinutes(20));
        ServicePlan plan = Planner.plan(Evenings.places()
                .place(new Place("hot", "hot", Air.at(celsius(60))))
                .gear(Evenings.bucket("bucket", 4, 2))
                .bottle(punch)
                .build());
        assertThat(plan.bottles().get(0).stays()).extracting(Stay::where).doesNotContain("bucket");
        assertThat(plan.bottles().get(0).reasons())
                .contains(Reason.of(Reason.Code.HAZARD, new Argument.Where("bucket")));
    }

    /**
     * FDA Food Code 3-501.19: out of 5 °C for at most 4 h where it has been above 21 °C. On a table of 23 °C a milk that is drunk over six
     * hours is out for too long, whatever range is wanted; in the refrigerator it is not.
     */
    @Test
    void milkIsKeptWhereItsTimeDoesNotRunOut() {
        BottlePlan anywhere = milk(Jurisdiction.EUROPEAN_UNION).bottles().get(0);
        ServicePlan plan = milk(Jurisdiction.US_FOOD_CODE);
        assertThat(anywhere.keptIn()).isEqualTo("room");
        assertThat(plan.bottles().get(0).keptIn()).isEqualTo("cold");
        assertThat(plan.notes()).noneMatch(note -> note.contains("too long"));
    }

    @Test
    void milkThatCannotBeKeptIsSaidToBeOver() {
        ServicePlan plan = Planner.plan(PlanRequest.startingAt(Evenings.START)
                .place(new Place("room", "room", Evenings.ROOM))
                .jurisdiction(Jurisdiction.US_FOOD_CODE)
                .bottle(milk("room", 23))
                .build());
        // It has been out since the start: four hours.
        assertThat(plan.notes()).anyMatch(note -> note.startsWith("milk, 240 min after the start, has been out"));
    }

    /** What is warned of is what happens: in the cold it is ice that bursts a bottle, not heat that scalds. */
    @Test
    void milkThatFreezesIsNotSaidToScald() {
        ServicePlan plan = Planner.plan(PlanRequest.startingAt(Evenings.START)
                .place(new Place("room", "room", Air.at(celsius(-10))))
                .bottle(milk("room", 4))
                .build());
        assertThat(plan.notes())
                .anyMatch(note -> note.startsWith("milk, ") && note.contains("begins to freeze and may burst"))
                .noneMatch(note -> note.contains("scald"));
    }

    private static ServicePlan milk(Jurisdiction jurisdiction) {
        return Planner.plan(PlanRequest.startingAt(Evenings.START)
                .place(new Place("room", "room", Evenings.ROOM))
                .gear(Evenings.refrigerator("cold", 4, 2))
                .jurisdiction(jurisdiction)
                .bottle(milk("cold", 4))
                .build());
    }

    private static BottleOrder milk(String startsIn, double celsius) {
        return new BottleOrder(
                "milk",
                "milk",
                Vessels.highShouldered750().filledWith(Beverage.milk(percent(3.5)), celsius(celsius)),
                startsIn,
                1,
                Targets.of(Targets.style("milk-cold"), RangePolicy.own(celsius(2), celsius(25))),
                Evenings.START.plus(Duration.ofMinutes(60)),
                "room",
                Duration.ofHours(6));
    }
}
