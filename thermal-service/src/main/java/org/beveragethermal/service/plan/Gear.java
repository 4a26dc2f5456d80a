/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.Objects;
import org.beveragethermal.core.surroundings.Surroundings;

/**
 * Something that cools or warms bottles.
 *
 * @param id its id, not blank
 * @param name what people call it
 * @param kind what kind of thing it is
 * @param surroundings its thermal description, freshly prepared
 * @param capacity how many bottle places it has, ≥ 1
 */
public record Gear(String id, String name, GearKind kind, Surroundings surroundings, int capacity) {

    /**
     * Checks the parts.
     *
     * @param id its id, not blank
     * @param name what people call it
     * @param kind what kind of thing it is
     * @param surroundings its thermal description
     * @param capacity bottle places, ≥ 1
     * @throws IllegalArgumentException if the id is blank or the capacity below 1
     */
    public Gear {
        PlanRequest.requireId(id);
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(surroundings, "surroundings");
        if (capacity < 1) {
            throw new IllegalArgumentException(
                    "capacity of " + id + " " + capacity + ": expected at least 1 bottle place");
        }
    }
}
