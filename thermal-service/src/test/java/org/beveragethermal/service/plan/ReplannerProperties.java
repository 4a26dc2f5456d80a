/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bottle;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.surroundings.Air;

/** What holds for re-plans at any moment and on any news. */
class ReplannerProperties {

    /** From before anything is done to when the first bottle is being drunk. */
    private static final int LAST_MINUTE = 130;

    private static final ServicePlan PLAN = Planner.plan(ReplanEvenings.room()
            .gear(ReplanEvenings.refrigerator())
            .gear(ReplanEvenings.bucket())
            .ice(IceStock.of(6))
            .bottle(white("first", 24, "room", 120))
            .bottle(white("second", 24, "terrace", 150))
            .bottle(white("third", 5, "cold", 240))
            .build());

    private Replan replan(int minute, List<News> news) {
        return Replanner.replan(PLAN, after(minute), news, PlanLimits.standard());
    }

    @Provide
    Arbitrary<News> news() {
        Arbitrary<String> waiting = Arbitraries.of("second", "third");
        return Arbitraries.oneOf(
                Arbitraries.integers().between(5, 90).map(m -> new News.LateGuests(List.of(), Duration.ofMinutes(m))),
                Arbitraries.integers()
                        .between(5, 30)
                        .map(m -> new News.EarlierGuests(List.of("third"), Duration.ofMinutes(m))),
                waiting.map(id -> new News.BottleSwapped(id, bottle(28), "terrace")),
                waiting.map(News.BottleRemoved::new),
                Arbitraries.of("cold", "bucket").map(id -> new News.GearLost(id, "room")),
                Arbitraries.doubles().between(0, 6).map(News.IceLeft::new),
                Arbitraries.doubles().between(275, 300).map(k -> new News.Reading("third", k, 0.5)),
                Arbitraries.doubles()
                        .between(15, 35)
                        .map(c -> new News.PlaceChanged(new Place("terrace", "terrace", Air.at(celsius(c))))));
    }

    @Property(seed = "811", tries = 12, shrinking = ShrinkingMode.OFF)
    @Label("a re-plan leaves the past as it was and does nothing before its moment")
    void thePastStaysAndNothingIsDoneBeforeNow(
            @ForAll @IntRange(max = LAST_MINUTE) int minute, @ForAll("news") News news) {
        Replan replan = replan(minute, List.of(news));
        Instant now = after(minute);
        assertThat(replan.done())
                .isEqualTo(PLAN.instructions().stream()
                        .filter(i -> i.at().isBefore(now))
                        .toList());
        assertThat(replan.plan().instructions()).allMatch(i -> !i.at().isBefore(now));
        assertThat(replan.plan().bottles()).allSatisfy(bottle -> {
            assertThat(bottle.stays().get(0).from()).isEqualTo(now);
            assertThat(bottle.pouredAtK()).isFinite();
        });
        assertThat(replan.plan().conflicts()).isEmpty();
        assertThat(replan.changes()).allSatisfy(change -> {
            assertThat(change.at().orElse(now)).isAfterOrEqualTo(now);
            assertThat(change.phrase().arguments()).isNotEmpty();
        });
    }

    @Property(seed = "812", tries = 4, shrinking = ShrinkingMode.OFF)
    @Label("without news a plan stays the plan, and a reading as predicted changes nothing in it")
    void noNewsNoChange(@ForAll @IntRange(max = LAST_MINUTE) int minute) {
        assertThat(replan(minute, List.of()).plan()).isSameAs(PLAN);
        double predicted = replan(minute, List.of(new News.Reading("second", 290, 0.5)))
                .readings()
                .get(0)
                .predictedK();
        Replan again = replan(minute, List.of(new News.Reading("second", predicted, 0.5)));
        assertThat(again.changes()).isEmpty();
        assertThat(again.plan().bottles()).allMatch(b -> b.verdict().inRange());
    }

    @Property(seed = "813", tries = 2, shrinking = ShrinkingMode.OFF)
    @Label("the same news at the same moment gives the same re-plan")
    void theSameTwice(@ForAll @IntRange(max = LAST_MINUTE) int minute, @ForAll("news") News news) {
        Replan one = replan(minute, List.of(news));
        Replan two = replan(minute, List.of(news));
        assertThat(two.plan().instructions()).isEqualTo(one.plan().instructions());
        assertThat(two.changes()).isEqualTo(one.changes());
    }
}
