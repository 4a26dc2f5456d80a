/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.util.List;

/**
 * A sitting: what is served to guests who come and go together.
 *
 * @param id identifier, unique in the scenario
 * @param name name for people
 * @param servings what is served, in the order of the file; at least one
 */
public record Sitting(String id, String name, List<Serving> servings) {
    /**
     * A sitting from its parts.
     *
     * @param id identifier, unique in the scenario
     * @param name name for people
     * @param servings what is served, in the order of the file; at least one
     * @throws IllegalArgumentException if nothing is served
     */
    public Sitting {
        servings = List.copyOf(servings);
        if (servings.isEmpty()) {
            throw new IllegalArgumentException("sitting " + id + ": expected at least one serving");
        }
    }
}
