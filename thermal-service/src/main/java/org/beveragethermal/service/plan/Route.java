/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the planner decides for a bottle, on the plan's clock.
 *
 * @param order the bottle
 * @param means id of what brings it to its temperature; where it starts if it stays
 * @param startS when it goes there [s]; empty if it stays
 * @param latestStartS latest such moment [s]
 * @param keptIn id of what keeps it while it is drunk
 * @param pouredK temperature when poured, predicted for the bottle alone [K]
 * @param reasons why
 */
record Route(
        BottleOrder order,
        String means,
        OptionalDouble startS,
        OptionalDouble latestStartS,
        String keptIn,
        double pouredK,
        List<Reason> reasons) {

    Route {
        reasons = List.copyOf(reasons);
    }
}
