/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.junit.jupiter.api.Test;

/** Ice that is to be added to a bath is still to be added after a re-plan, at about the same time. */
class TopUpReplanTest {

    private static List<Instruction> topUps(ServicePlan plan) {
        return plan.instructions().stream()
                .filter(instruction -> instruction.action() == Instruction.Action.ADD_ICE)
                .toList();
    }

    @Test
    void iceIsAddedWhenItWasToBe() {
        IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(250), millimetres(330)), Air.at(celsius(30)))
                .ice(kilograms(2), millimetres(25), celsius(-5))
                .water(kilograms(4), celsius(15))
                .build();
        ServicePlan plan = Planner.plan(room().gear(new Gear("bucket", "bucket", GearKind.ICE_BATH, bath, 3))
                .ice(IceStock.of(5))
                .bottle(white("one", 25, "room", 60))
                .bottle(white("two", 25, "room", 90))
                .bottle(white("three", 25, "room", 150))
                .bottle(white("four", 25, "room", 240))
                .build());
        assertThat(topUps(plan)).hasSize(1);
        Instant due = topUps(plan).get(0).at();
        Instant now = due.minus(Duration.ofMinutes(10));
        double predicted = Replanner.replan(plan, now, List.of(new News.Reading("four", 290, 1)), PlanLimits.standard())
                .readings()
                .get(0)
                .predictedK();
        Replan replan =
                Replanner.replan(plan, now, List.of(new News.Reading("four", predicted, 1)), PlanLimits.standard());
        assertThat(replan.changes()).isEmpty();
        assertThat(topUps(replan.plan())).singleElement().satisfies(topUp -> {
            assertThat(Duration.between(due, topUp.at()).abs()).isLessThan(Duration.ofMinutes(6));
        });
        assertThat(now).isAfter(after(0));
    }
}
