/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Puts costs on the routes of one bottle.
 *
 * <p>Theory manual, equation (9.3).
 */
final class Assessor {

    /** What is to be least, the most important first; whole numbers. */
    static final List<String> LEVELS = List.of(
            "drinks with a pour out of range",
            "pours out of range",
            "tenths of a kelvin that margins lack",
            "changes of the earlier plan",
            "moves",
            "tens of grams of ice",
            "minutes of early start");

    /** Nine in ten are on the right side of a normal distribution's mean less so many standard deviations. */
    static final double MARGIN_DEVIATIONS = 1.2816;

    private static final double PER_KELVIN = 10;
    /** Ice is counted in tens of grams. */
    static final double PER_KILOGRAM = 100;

    private final Task task;
    private final Forecaster forecaster;
    private final Danger danger;
    private final Earlier earlier;
    private final ToDoubleFunction<Route> correctionK;

    /**
     * An assessor.
     *
     * @param correctionK what the coupled run taught about the gear on a route [K]
     */
    Assessor(Task task, Forecaster forecaster, Danger danger, Earlier earlier, ToDoubleFunction<Route> correctionK) {
        this.task = task;
        this.forecaster = forecaster;
        this.danger = danger;
        this.earlier = earlier;
        this.correctionK = correctionK;
    }

    Task task() {
        return task;
    }

    Candidate assess(Route route) {
        Forecast forecast = forecaster.of(task, route, correctionK.applyAsDouble(route));
        double lacksK = forecast.shortfallK(task.lowK(), task.highK(), MARGIN_DEVIATIONS)
                - earlier.forgivenK(task.order(), route);
        long outside = forecast.outside(task.lowK(), task.highK());
        return new Candidate(
                route,
                forecast,
                List.of(
                        Math.min(1, outside),
                        outside,
                        (long) Math.ceil(PER_KELVIN * Math.max(0, lacksK) - 1e-6),
                        earlier.changes(task.order(), route),
                        moves(route),
                        Math.round(PER_KILOGRAM * forecast.iceKg()),
                        minutesEarly(route)));
    }

    boolean isDangerous(Candidate candidate) {
        return danger.on(task, candidate.route(), candidate.forecast());
    }

    /** Every change of place, and where it is kept away from its table every glass but the first. */
    private long moves(Route route) {
        Leg first = route.legs().get(0);
        long moves =
                (long) route.legs().size() - (first.where().equals(task.order().startsIn()) ? 1 : 0);
        boolean away = route.kind() != Route.Kind.BY_TURNS
                && !route.beginningAtOrBefore(task.servedS())
                        .where()
                        .equals(task.order().servedIn());
        return moves + (away ? task.pours() - 1 : 0);
    }

    private long minutesEarly(Route route) {
        Leg first = route.legs().get(0);
        double leaves = first.where().equals(task.order().startsIn()) ? first.toS() : 0;
        return Math.round(Math.max(0, task.servedS() - leaves) / StartTimes.MINUTE_S);
    }
}
