/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;

/**
 * A route that could be taken.
 *
 * @param route the route
 * @param forecast what it comes to for the bottle alone
 * @param costs its costs, in the order of {@link Assessor#LEVELS}
 */
record Candidate(Route route, Forecast forecast, List<Long> costs) {

    Candidate {
        costs = List.copyOf(costs);
    }

    /** In range at every pour. */
    boolean isInRange() {
        return costs.get(0) == 0;
    }

    /** Pours out of range. */
    long poursOutside() {
        return costs.get(1);
    }

    /** In range at every pour with all the margin that is wanted. */
    boolean does() {
        return isInRange() && costs.get(2) == 0;
    }

    /** Whether it costs less, the most important level first. */
    boolean isCheaperThan(Candidate other) {
        return compare(other, costs.size()) < 0;
    }

    /** Whether it serves the drink better, whatever the work. */
    boolean servesBetterThan(Candidate other) {
        return compare(other, 3) < 0;
    }

    private int compare(Candidate other, int levels) {
        for (int i = 0; i < levels; i++) {
            int order = Long.compare(costs.get(i), other.costs.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
