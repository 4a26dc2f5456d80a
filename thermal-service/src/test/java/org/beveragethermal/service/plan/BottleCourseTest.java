/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.beveragethermal.service.airing.Airing;
import org.junit.jupiter.api.Test;

/** A plan's courses say what the plan says at its pours, and join them. */
class BottleCourseTest {

    private static final Duration STEP = Duration.ofMinutes(5);

    private final ServicePlan plan = Planner.plan(room().gear(bucket())
            .gear(refrigerator())
            .ice(IceStock.of(6))
            .bottle(white("early", 22, "room", 60))
            .bottle(white("late", 22, "room", 200))
            .bottle(white("aired", 22, "room", 150).aired(Airing.carafe(Duration.ofMinutes(40), "room")))
            .build());
    private final List<BottleCourse> courses = BottleCourse.of(plan, STEP);

    /** The run is made again with more bottles in one scene: it may differ by what its solver is allowed, 0.02 K a step. */
    @Test
    void goesThroughThePoursWithTheirIntervals() {
        for (int i = 0; i < courses.size(); i++) {
            BottlePlan bottle = plan.bottles().get(i);
            assertThat(courses.get(i).order()).isEqualTo(bottle.order());
            for (Poured pour : bottle.pours()) {
                Expected here = at(courses.get(i), pour.at());
                assertThat(here.meanK()).isCloseTo(pour.expected().meanK(), within(0.06));
                assertThat(here.high90K() - here.low90K())
                        .isCloseTo(pour.expected().high90K() - pour.expected().low90K(), within(1e-6));
            }
        }
    }

    @Test
    void beginsAsTheBottleIsAndHasEveryMoveInOrderOfTime() {
        for (BottleCourse course : courses) {
            BottlePlan bottle = plan.bottles().get(courses.indexOf(course));
            BottleCourse.Point first = course.points().get(0);
            assertThat(first.at()).isEqualTo(plan.request().startsAt());
            assertThat(first.expected().meanK())
                    .isCloseTo(course.order().bottle().temperatureK(), within(1e-9));
            assertThat(course.points())
                    .extracting(BottleCourse.Point::at)
                    .isSorted()
                    .doesNotHaveDuplicates()
                    .containsAll(bottle.stays().stream().map(Stay::from).toList())
                    .endsWith(course.order().finishedAt());
        }
    }

    @Test
    void hasItsTemperatureInsideItsInterval() {
        for (BottleCourse course : courses) {
            assertThat(course.points())
                    .allMatch(p -> p.expected().low90K() <= p.expected().meanK()
                            && p.expected().meanK() <= p.expected().high90K());
        }
    }

    @Test
    void refusesStepsOutsideTheirRange() {
        for (Duration step : List.of(Duration.ZERO, Duration.ofMillis(999), Duration.ofDays(2))) {
            assertThatThrownBy(() -> BottleCourse.of(plan, step))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining(step.toString())
                    .hasMessageContaining("one second");
        }
    }

    private static Expected at(BottleCourse course, Instant moment) {
        return course.points().stream()
                .filter(point -> point.at().equals(moment))
                .findFirst()
                .orElseThrow()
                .expected();
    }
}
