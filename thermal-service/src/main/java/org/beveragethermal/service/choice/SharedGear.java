/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.Collections;
import java.util.List;

/**
 * Something of which there is only so much in each slot of time: places in a refrigerator, hands, ice made so far.
 *
 * @param id unique among the gear of a problem, not blank
 * @param capacityBySlot how many places there are in each slot, from 0 to {@value #MOST}; as many entries as the problem has slots
 */
public record SharedGear(String id, List<Integer> capacityBySlot) {
    /** The most places in a slot. */
    public static final int MOST = 1_000_000_000;

    /**
     * Checks the capacities.
     *
     * @param id unique among the gear of a problem, not blank
     * @param capacityBySlot how many places there are in each slot, from 0 to {@value #MOST}
     * @throws IllegalArgumentException if the id is blank, there is no slot, or a capacity is out of range
     */
    public SharedGear {
        Checks.id(id, "gear");
        capacityBySlot = List.copyOf(capacityBySlot);
        Checks.within(capacityBySlot.size(), 1, ChoiceProblem.MOST_SLOTS, "number of slots of gear " + id);
        for (int slot = 0; slot < capacityBySlot.size(); slot++) {
            Checks.within(capacityBySlot.get(slot), 0, MOST, "capacity of gear " + id + " in slot " + slot);
        }
    }

    /**
     * Gear with the same capacity in every slot.
     *
     * @param id unique among the gear of a problem, not blank
     * @param capacity places in every slot, from 0 to {@value #MOST}
     * @param slots number of slots, at least 1
     * @return the gear
     * @throws IllegalArgumentException if the id is blank or a number is out of range
     */
    public static SharedGear constant(String id, int capacity, int slots) {
        Checks.within(slots, 1, ChoiceProblem.MOST_SLOTS, "number of slots of gear " + id);
        return new SharedGear(id, Collections.nCopies(slots, capacity));
    }
}
