/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;

/**
 * A plan for a service and what comes of it.
 *
 * @param request what was asked
 * @param bottles one plan per bottle, in the order of the request
 * @param instructions everything to be done, in order of time
 * @param gearUses the baths that are filled
 * @param conflicts gear that would have to hold more than it can; the plan cannot be carried out while there are any
 * @param notes what the model leaves out here
 */
public record ServicePlan(
        PlanRequest request,
        List<BottlePlan> bottles,
        List<Instruction> instructions,
        List<GearUse> gearUses,
        List<CapacityConflict> conflicts,
        List<String> notes) {

    /**
     * Copies the lists.
     *
     * @param request what was asked
     * @param bottles one plan per bottle, not modified
     * @param instructions everything to be done, not modified
     * @param gearUses the baths that are filled, not modified
     * @param conflicts conflicts, not modified
     * @param notes notes, not modified
     */
    public ServicePlan {
        bottles = List.copyOf(bottles);
        instructions = List.copyOf(instructions);
        gearUses = List.copyOf(gearUses);
        conflicts = List.copyOf(conflicts);
        notes = List.copyOf(notes);
    }

    /**
     * Whether every bottle is in range and no gear is overfull.
     *
     * @return true if the plan works as predicted
     */
    public boolean works() {
        return conflicts.isEmpty() && bottles.stream().allMatch(b -> b.verdict().inRange());
    }
}
