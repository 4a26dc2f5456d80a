/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.List;

/**
 * One way to serve an item: what it costs and what it takes of the shared gear.
 *
 * @param id unique among the routes of its item, not blank
 * @param costs one cost for each level of the problem, the most important first; from 0 to {@value #MOST_COST}, in whole units of the
 *     caller's choice
 * @param loads what the route takes; empty if it needs no shared gear
 */
public record CandidateRoute(String id, List<Long> costs, List<Load> loads) {
    /** The greatest cost of a route in one level. */
    public static final long MOST_COST = 1_000_000_000L;

    /**
     * Checks the costs.
     *
     * @param id unique among the routes of its item, not blank
     * @param costs one cost for each level of the problem, from 0 to {@value #MOST_COST}
     * @param loads what the route takes
     * @throws IllegalArgumentException if the id is blank or a cost is out of range
     */
    public CandidateRoute {
        Checks.id(id, "a route");
        costs = List.copyOf(costs);
        loads = List.copyOf(loads);
        for (long cost : costs) {
            Checks.within(cost, 0, MOST_COST, "cost of route " + id);
        }
    }
}
