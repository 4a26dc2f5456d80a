/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * How warm a bottle's drink is from the start of its plan until it is finished, to be drawn or looked up.
 *
 * @param order the bottle
 * @param points points in order of time, two at least
 */
public record BottleCourse(BottleOrder order, List<Point> points) {

    private static final Duration SHORTEST_STEP = Duration.ofSeconds(1);
    private static final Duration LONGEST_STEP = Duration.ofDays(1);

    /**
     * A point of a course.
     *
     * @param at when
     * @param expected mean temperature of the drink and its interval, by the rule by which the plan states those of the pours
     */
    public record Point(Instant at, Expected expected) {}

    /**
     * Copies the points.
     *
     * @param order the bottle
     * @param points points in order of time, not modified
     */
    public BottleCourse {
        points = List.copyOf(points);
    }

    /**
     * The courses of a plan: its coupled run made once more, which takes about as long as one round of planning, with intervals from
     * the same forecasts as those of its pours.
     *
     * @param plan the plan
     * @param step time between points, from a second to a day; there is a point at each move and each pour too
     * @return one course per bottle, in the order of the plan
     * @throws IllegalArgumentException if the step is outside its range
     */
    public static List<BottleCourse> of(ServicePlan plan, Duration step) {
        if (step.compareTo(SHORTEST_STEP) < 0 || step.compareTo(LONGEST_STEP) > 0) {
            throw new IllegalArgumentException("step " + step + ": expected from one second to one day");
        }
        Site site = new Site(plan.request());
        CoupledRun run = PlanState.run(site, plan);
        FlowTables tables = new FlowTables(site, plan.request().bottles());
        Forecaster forecaster = new Forecaster(site, tables);
        List<BottleCourse> courses = new ArrayList<>();
        for (BottlePlan bottle : plan.bottles()) {
            BottleOrder order = bottle.order();
            double[] timesS = timesS(site, bottle, Site.seconds(step));
            double[] sigmas = forecaster.sigmasK(new Task(site, tables, order), PlanState.route(site, bottle), timesS);
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < timesS.length; i++) {
                points.add(new Point(site.instant(timesS[i]), Expected.of(run.drinkK(order, timesS[i]), sigmas[i])));
            }
            courses.add(new BottleCourse(order, points));
        }
        return courses;
    }

    private static double[] timesS(Site site, BottlePlan bottle, double stepS) {
        double endS = site.seconds(bottle.order().finishedAt());
        TreeSet<Double> times = new TreeSet<>();
        for (int i = 0; i * stepS < endS; i++) {
            times.add(i * stepS);
        }
        bottle.stays().forEach(stay -> times.add(site.seconds(stay.from())));
        bottle.pours().forEach(pour -> times.add(site.seconds(pour.at())));
        times.add(endS);
        return times.stream().mapToDouble(time -> time).toArray();
    }
}
