/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.List;

/**
 * Something that has to be served by exactly one of its routes.
 *
 * @param id unique among the items of a problem, not blank
 * @param routes the routes to choose from, at least one, with distinct ids
 */
public record ChoiceItem(String id, List<CandidateRoute> routes) {
    /**
     * Checks the routes.
     *
     * @param id unique among the items of a problem, not blank
     * @param routes the routes to choose from, at least one, with distinct ids
     * @throws IllegalArgumentException if the id is blank, there is no route, or two routes share an id
     */
    public ChoiceItem {
        Checks.id(id, "an item");
        routes = List.copyOf(routes);
        if (routes.isEmpty()) {
            throw new IllegalArgumentException("item " + id + " has no route; at least one is needed");
        }
        Checks.distinct(routes, CandidateRoute::id, "routes", "item " + id);
    }
}
