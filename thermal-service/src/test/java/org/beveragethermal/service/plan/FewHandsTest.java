/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.beveragethermal.service.airing.Airing;
import org.beveragethermal.service.choice.ChoiceAnswer;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;

/** One pair of hands: what can be done one after the other is, and what cannot is said. */
class FewHandsTest {

    /** Four come in and are decanted within a minute, for which one pair of hands has two moves: nothing is too full, and yet it cannot be done. */
    private static ServicePlan decantedAtOnce() {
        PlanRequest.Builder request = Evenings.places().hands(1);
        for (int i = 0; i < 4; i++) {
            request.bottle(Evenings.order("red " + i, "red-full", 16, "terrace", 31, "room")
                    .aimedAt(Targets.of(Targets.style("red-full"), RangePolicy.own(celsius(10), celsius(26))))
                    .aired(Airing.carafe(Duration.ofMinutes(30), "room")));
        }
        return Planner.plan(request.build());
    }

    @Test
    void aPlanThatAsksForMoreHandsThanThereAreDoesNotWork() {
        ServicePlan plan = decantedAtOnce();
        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.bottles()).allMatch(bottle -> bottle.verdict().inRange());
        assertThat(plan.chosen().answer()).isInstanceOf(ChoiceAnswer.Infeasible.class);
        assertThat(plan.works()).isFalse();
        assertThat(Fault.of(plan))
                .filteredOn(fault -> fault.what().sentence() == Sentence.FAULT_SHARED)
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.gearId()).isEmpty();
                    assertThat(fault.bottleIds()).hasSizeGreaterThan(1).allMatch(id -> id.startsWith("red "));
                });
    }

    /** What would still need more hands does not help; what is told leaves time to move one after the other. */
    @Test
    void adviceThatStillNeedsMoreHandsIsNone() {
        Advice advice =
                Adviser.advise(decantedAtOnce(), PlanLimits.within(Duration.ofHours(1)), PlanMonitor.NONE, () -> 0);
        assertThat(advice.faults()).isNotEmpty();
        assertThat(advice.ways()).isNotEmpty();
        for (Advice.Way way : advice.ways()) {
            assertThat(Planner.plan(way.change().appliedTo(decantedAtOnce().request()))
                            .works())
                    .as(way.toString())
                    .isTrue();
        }
    }

    /** Twenty-four alike whites and one pair of hands: one a minute, so that they begin over twenty-four minutes. */
    @Test
    void manyBottlesAreMovedOneAMinute() {
        PlanRequest.Builder request =
                Evenings.places().gear(Evenings.refrigerator("cold", 5, 24)).hands(1);
        for (int i = 0; i < 24; i++) {
            request.bottle(Evenings.order("white " + i, "white-light", 22, "room", 240, "room"));
        }
        ServicePlan plan = Planner.plan(request.build());
        assertThat(plan.bottles()).allMatch(bottle -> bottle.verdict().inRange());
        Map<Object, Long> moved = new LinkedHashMap<>();
        plan.instructions().stream()
                .filter(instruction -> instruction.action() == Instruction.Action.MOVE)
                .forEach(instruction -> moved.merge(
                        instruction.at(), (long) instruction.bottleIds().size(), Long::sum));
        assertThat(moved)
                .hasSize(24)
                .allSatisfy((at, count) -> assertThat(count).isEqualTo(1));
    }
}
