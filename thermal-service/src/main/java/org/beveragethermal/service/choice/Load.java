/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

/**
 * Places of one gear that a route takes from one slot until another. Loads of a route on the same gear add up where they overlap.
 *
 * @param gearId id of the gear
 * @param firstSlot first slot in which the places are taken, at least 0
 * @param endSlot first slot in which they are free again, greater than {@code firstSlot}
 * @param places how many places, from 1 to {@value SharedGear#MOST}
 */
public record Load(String gearId, int firstSlot, int endSlot, int places) {
    /**
     * Checks the span.
     *
     * @param gearId id of the gear
     * @param firstSlot first slot in which the places are taken, at least 0
     * @param endSlot first slot in which they are free again, greater than {@code firstSlot}
     * @param places how many places, from 1 to {@value SharedGear#MOST}
     * @throws IllegalArgumentException if the id is blank, the span is empty or begins before slot 0, or the places are out of range
     */
    public Load {
        Checks.id(gearId, "the gear of a load");
        Checks.within(firstSlot, 0, ChoiceProblem.MOST_SLOTS - 1, "first slot of a load on " + gearId);
        Checks.within(endSlot, firstSlot + 1, ChoiceProblem.MOST_SLOTS, "end slot of a load on " + gearId);
        Checks.within(places, 1, SharedGear.MOST, "places of a load on " + gearId);
    }
}
