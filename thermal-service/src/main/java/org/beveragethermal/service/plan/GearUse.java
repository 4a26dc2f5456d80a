/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How a bath fares in the plan.
 *
 * @param gearId the gear
 * @param filledAt when it is filled
 * @param iceKg ice put in [kg], 0 for a water bath
 * @param waterKg water put in [kg]
 * @param iceLeftKg ice left when its last bottle is finished [kg]
 * @param iceGoneAt when its ice is gone, if it is before the end of the plan
 * @param added ice added later
 */
public record GearUse(
        String gearId,
        Instant filledAt,
        double iceKg,
        double waterKg,
        double iceLeftKg,
        Optional<Instant> iceGoneAt,
        List<Added> added) {

    /**
     * Ice added to a bath that has been filled.
     *
     * @param at when
     * @param iceKg how much [kg]
     */
    public record Added(Instant at, double iceKg) {}

    /**
     * Copies the additions.
     *
     * @param gearId the gear
     * @param filledAt when it is filled
     * @param iceKg ice put in [kg]
     * @param waterKg water put in [kg]
     * @param iceLeftKg ice left when its last bottle is finished [kg]
     * @param iceGoneAt when its ice is gone
     * @param added ice added later, not modified
     */
    public GearUse {
        added = List.copyOf(added);
    }
}
