/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.examples.scenario.Drink;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.service.plan.BottleCourse;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.plan.Stay;

/**
 * The bottles of one drink with their courses.
 *
 * @param drink the drink
 * @param lines courses that differ, in the order of serving
 */
record DrinkCourses(Drink drink, List<Line> lines) {

    private static final Duration STEP = Duration.ofMinutes(3);

    /**
     * Bottles that fare alike, as one line.
     *
     * @param bottles their plans, one at least
     * @param points their course
     */
    record Line(List<BottlePlan> bottles, List<BottleCourse.Point> points) {
        Line {
            bottles = List.copyOf(bottles);
            points = List.copyOf(points);
        }

        /** Numbers of the bottles, such as 1 or 1, 2; empty for the only bottle of its drink. */
        String numbers(Drink drink) {
            return drink.count() == 1
                    ? ""
                    : String.join(
                            ", ",
                            bottles.stream()
                                    .map(bottle -> String.valueOf(
                                            PlanRequests.number(bottle.order().id())))
                                    .toList());
        }
    }

    DrinkCourses {
        lines = List.copyOf(lines);
    }

    /** One for each drink that is served, in the order in which they are served. */
    static List<DrinkCourses> of(Scenario scenario, ServicePlan plan) {
        List<BottleCourse> courses = BottleCourse.of(plan, STEP);
        Map<String, Map<Fate, List<Integer>>> byDrink = new LinkedHashMap<>();
        for (int i = 0; i < courses.size(); i++) {
            BottlePlan bottle = plan.bottles().get(i);
            byDrink.computeIfAbsent(PlanRequests.drinkId(bottle.order().id()), id -> new LinkedHashMap<>())
                    .computeIfAbsent(Fate.of(bottle), fate -> new ArrayList<>())
                    .add(i);
        }
        List<DrinkCourses> drinks = new ArrayList<>();
        byDrink.forEach((id, lines) -> drinks.add(new DrinkCourses(
                scenario.drink(id),
                lines.values().stream()
                        .map(alike -> new Line(
                                alike.stream().map(plan.bottles()::get).toList(),
                                courses.get(alike.get(0)).points()))
                        .toList())));
        return drinks;
    }

    /** What makes two bottles of one drink fare alike, but for what a solver may be off by. */
    private record Fate(List<Stay> stays, Instant servedAt, Instant finishedAt) {
        static Fate of(BottlePlan bottle) {
            return new Fate(
                    bottle.stays(), bottle.order().servedAt(), bottle.order().finishedAt());
        }
    }
}
