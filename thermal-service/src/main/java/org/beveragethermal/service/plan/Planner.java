/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;

/**
 * Plans a service: candidate routes for each bottle, the best choice of them under shared gear, and a verdict from one coupled run, with
 * which the choice is put right where it fails.
 *
 * <p>Stateless and thread-safe. The same request gives the same plan unless a time limit cuts the choice short.
 */
public final class Planner {

    private Planner() {}

    /**
     * Plans a service within {@linkplain PlanLimits#standard the usual limits}.
     *
     * @param request what is at hand and what is wanted
     * @return the plan and what comes of it
     * @throws IllegalArgumentException if a bottle cannot stand where it starts, or its carafe does not take it
     * @throws org.beveragethermal.core.solver.SolverException if what happens can be followed no further: a bath that freezes through, far
     *     below 0 °C
     */
    public static ServicePlan plan(PlanRequest request) {
        return plan(request, PlanLimits.standard(), PlanMonitor.NONE);
    }

    /**
     * Plans a service within a time. The time goes to the choice; predictions and one coupled run are made however little it is.
     *
     * @param request what is at hand and what is wanted
     * @param limit longest time, > 0
     * @return the plan; its choice states the gap if the time did not suffice for a proof
     * @throws IllegalArgumentException if the time is not positive, a bottle cannot stand where it starts, or its carafe does not take it
     * @throws org.beveragethermal.core.solver.SolverException if what happens can be followed no further: a bath that freezes through, far
     *     below 0 °C
     */
    public static ServicePlan planWithin(PlanRequest request, Duration limit) {
        return plan(request, PlanLimits.within(limit), PlanMonitor.NONE);
    }

    /**
     * Plans a service.
     *
     * @param request what is at hand and what is wanted
     * @param limits how long it may take and how near to the best choice it must come
     * @param monitor is told how far it has come, and may cancel
     * @return the plan and what comes of it
     * @throws IllegalArgumentException if a bottle cannot stand where it starts, or its carafe does not take it
     * @throws org.beveragethermal.core.solver.SolverException if what happens can be followed no further: a bath that freezes through, far
     *     below 0 °C
     * @throws java.util.concurrent.CancellationException if the monitor cancels
     */
    public static ServicePlan plan(PlanRequest request, PlanLimits limits, PlanMonitor monitor) {
        return plan(request, limits, monitor, Earlier.NONE);
    }

    /** Plans a service of which an earlier plan is known: what it changes costs, between margins and moves. */
    static ServicePlan plan(PlanRequest request, PlanLimits limits, PlanMonitor monitor, Earlier earlier) {
        return new Planning(request, limits, monitor, earlier, System::nanoTime).plan();
    }
}
