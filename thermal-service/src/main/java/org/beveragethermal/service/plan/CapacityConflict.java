/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.List;

/**
 * Gear that would have to hold more than it can.
 *
 * @param gearId the gear
 * @param from when it begins
 * @param to when it ends
 * @param placesNeeded bottle places needed
 * @param capacity bottle places there are
 * @param bottleIds the bottles in it then
 */
public record CapacityConflict(
        String gearId, Instant from, Instant to, int placesNeeded, int capacity, List<String> bottleIds) {

    /**
     * Copies the ids.
     *
     * @param gearId the gear
     * @param from when it begins
     * @param to when it ends
     * @param placesNeeded bottle places needed
     * @param capacity bottle places there are
     * @param bottleIds the bottles in it then, not modified
     */
    public CapacityConflict {
        bottleIds = List.copyOf(bottleIds);
    }
}
