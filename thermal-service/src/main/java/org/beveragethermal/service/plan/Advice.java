/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;

/**
 * What does not work in a plan, and what would make it work.
 *
 * @param faults what does not work; none if the plan does
 * @param ways changes each of which is enough by itself for the bottles it names, and takes nothing from any other
 * @param plannerRuns how many plans were made to find them
 * @param complete whether every kind of change was tried to its end; if not, time ran out
 */
public record Advice(List<Fault> faults, List<Way> ways, int plannerRuns, boolean complete) {

    /**
     * A change and the bottles for which it is enough.
     *
     * @param bottleIds the bottles that are in range with it and are not without
     * @param change the change
     */
    public record Way(List<String> bottleIds, PlanAdvice change) {

        /**
         * Copies the ids.
         *
         * @param bottleIds the bottles, not modified
         * @param change the change
         */
        public Way {
            bottleIds = List.copyOf(bottleIds);
        }
    }

    /**
     * Copies the lists.
     *
     * @param faults what does not work, not modified
     * @param ways what would help, not modified
     * @param plannerRuns how many plans were made
     * @param complete whether every kind of change was tried
     */
    public Advice {
        faults = List.copyOf(faults);
        ways = List.copyOf(ways);
    }
}
