/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Objects;
import org.beveragethermal.core.surroundings.Air;

/**
 * A room or terrace where bottles stand or are served.
 *
 * @param id its id, not blank
 * @param name what people call it
 * @param air its air, with times counted from the start of the plan
 */
public record Place(String id, String name, Air air) {

    /**
     * Checks the parts.
     *
     * @param id its id, not blank
     * @param name what people call it
     * @param air its air
     * @throws IllegalArgumentException if the id is blank
     */
    public Place {
        PlanRequest.requireId(id);
        Objects.requireNonNull(air, "air");
    }
}
