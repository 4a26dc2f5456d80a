/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One route for each item.
 *
 * @param routeByItem id of the route by id of the item, in the order of the problem
 * @param costByLevel the summed costs, the most important level first
 */
public record Choice(Map<String, String> routeByItem, List<Long> costByLevel) {
    /**
     * Copies both.
     *
     * @param routeByItem id of the route by id of the item, in the order of the problem
     * @param costByLevel the summed costs, the most important level first
     */
    public Choice {
        routeByItem = Collections.unmodifiableMap(new LinkedHashMap<>(routeByItem));
        costByLevel = List.copyOf(costByLevel);
    }
}
