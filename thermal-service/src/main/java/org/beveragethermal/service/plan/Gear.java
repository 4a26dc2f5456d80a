/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.List;
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
 * @param windows when it is there to be used, in order of time, apart from one another; none if always
 */
public record Gear(
        String id, String name, GearKind kind, Surroundings surroundings, int capacity, List<Window> windows) {

    /**
     * Checks the parts.
     *
     * @param id its id, not blank
     * @param name what people call it
     * @param kind what kind of thing it is
     * @param surroundings its thermal description
     * @param capacity bottle places, ≥ 1
     * @param windows when it is there; not modified
     * @throws IllegalArgumentException if the id is blank, the capacity below 1, or the windows overlap, touch or are out of order
     */
    public Gear {
        PlanRequest.requireId(id);
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(surroundings, "surroundings");
        if (capacity < 1) {
            throw new IllegalArgumentException(
                    "capacity of " + id + " " + capacity + ": expected at least 1 bottle place");
        }
        windows = List.copyOf(windows);
        for (int i = 1; i < windows.size(); i++) {
            Window before = windows.get(i - 1);
            Window next = windows.get(i);
            if (!next.from().isAfter(before.to())) {
                throw new IllegalArgumentException("windows of " + id + " " + before + " and " + next
                        + ": expected the second to begin after the first has ended");
            }
        }
    }

    /**
     * Gear that is always there.
     *
     * @param id its id, not blank
     * @param name what people call it
     * @param kind what kind of thing it is
     * @param surroundings its thermal description, freshly prepared
     * @param capacity bottle places, ≥ 1
     * @throws IllegalArgumentException if the id is blank or the capacity below 1
     */
    public Gear(String id, String name, GearKind kind, Surroundings surroundings, int capacity) {
        this(id, name, kind, surroundings, capacity, List.of());
    }

    /**
     * Whether it is there for a whole stretch of time.
     *
     * @param begin when the stretch begins
     * @param end when it ends
     * @return true if one window holds the stretch, or there are no windows
     */
    public boolean isThere(Instant begin, Instant end) {
        return windows.isEmpty() || windows.stream().anyMatch(window -> window.holds(begin, end));
    }
}
