/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Optional;

/** What an earlier plan wanted done, where another is made after it. */
interface Earlier {

    /** There is no earlier plan. */
    Earlier NONE = new Earlier() {
        @Override
        public Optional<Route> route(BottleOrder order) {
            return Optional.empty();
        }

        @Override
        public long changes(BottleOrder order, Route route) {
            return 0;
        }

        @Override
        public double forgivenK(BottleOrder order, Route route) {
            return 0;
        }

        @Override
        public double leastMarginK(BottleOrder order) {
            return Double.POSITIVE_INFINITY;
        }
    };

    /** The route that it had for a bottle, on the clock of the new plan; it is a candidate again. */
    Optional<Route> route(BottleOrder order);

    /** How much another route changes of it, in whole numbers, 0 for nothing. */
    long changes(BottleOrder order, Route route);

    /** How much a route's margins may lack without counting, because it is the one it had [K]. */
    double forgivenK(BottleOrder order, Route route);

    /** The margin that a bottle must have for the plan to stay as it was [K]. */
    double leastMarginK(BottleOrder order);
}
