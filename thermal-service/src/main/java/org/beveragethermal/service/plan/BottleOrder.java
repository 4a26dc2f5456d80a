/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.service.target.ServingTarget;

/**
 * One bottle that is to be served.
 *
 * @param id its id, not blank
 * @param name what people call it
 * @param bottle the bottle with its contents at their temperature at the start of the plan
 * @param startsIn id of the place or gear where it is at the start
 * @param bottlePlaces how many places it takes in gear, ≥ 1
 * @param target the range it is to be served in and the aim inside it
 * @param servedAt when it is poured first
 * @param servedIn id of the place where it is served
 * @param finishedAfter how long it is drunk, > 0
 */
public record BottleOrder(
        String id,
        String name,
        FilledVessel bottle,
        String startsIn,
        int bottlePlaces,
        ServingTarget target,
        Instant servedAt,
        String servedIn,
        Duration finishedAfter) {

    private static final Duration LONGEST_DRINKING = Duration.ofHours(24);

    /**
     * Checks the parts.
     *
     * @param id its id, not blank
     * @param name what people call it
     * @param bottle the bottle with its contents
     * @param startsIn id of the place or gear where it is at the start
     * @param bottlePlaces places it takes in gear, ≥ 1
     * @param target range and aim
     * @param servedAt when it is poured first
     * @param servedIn id of the place where it is served
     * @param finishedAfter how long it is drunk, > 0, at most a day
     * @throws IllegalArgumentException if a condition is broken
     */
    public BottleOrder {
        PlanRequest.requireId(id);
        Objects.requireNonNull(bottle, "bottle");
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(servedAt, "servedAt");
        if (bottlePlaces < 1) {
            throw new IllegalArgumentException("bottle places of " + id + " " + bottlePlaces + ": expected at least 1");
        }
        if (finishedAfter.isNegative() || finishedAfter.isZero() || finishedAfter.compareTo(LONGEST_DRINKING) > 0) {
            throw new IllegalArgumentException(
                    "drinking time of " + id + " " + finishedAfter + ": expected more than nothing and at most a day");
        }
    }

    /**
     * When it is finished.
     *
     * @return the moment of the last glass
     */
    public Instant finishedAt() {
        return servedAt.plus(finishedAfter);
    }
}
