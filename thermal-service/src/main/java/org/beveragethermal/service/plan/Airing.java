/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.Objects;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * A bottle that is decanted before it is served: from then on its drink stands in a carafe.
 *
 * @param before how long before it is served, > 0
 * @param where id of the place where the carafe stands until it is served
 * @param carafe the empty carafe, as warm as the air there; it must take the whole bottle
 */
public record Airing(Duration before, String where, Vessel carafe) {

    /**
     * Checks the parts.
     *
     * @param before how long before it is served, > 0
     * @param where id of the place
     * @param carafe the empty carafe
     * @throws IllegalArgumentException if the time is not positive or the id is blank
     */
    public Airing {
        PlanRequest.requireId(where);
        Objects.requireNonNull(carafe, "carafe");
        if (before.isNegative() || before.isZero()) {
            throw new IllegalArgumentException("decanted " + before + " before serving: expected more than nothing");
        }
    }
}
