/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;
import org.beveragethermal.service.choice.ChoiceAnswer;
import org.beveragethermal.service.choice.ChoiceProblem;

/**
 * A plan for a service and what comes of it.
 *
 * @param request what was asked
 * @param bottles one plan per bottle, in the order of the request
 * @param instructions everything to be done, in order of time
 * @param gearUses the baths that are filled
 * @param conflicts gear that would have to hold more than it can; the plan cannot be carried out while there are any
 * @param notes what the model leaves out here, and warnings of what happens on the way; English sentences
 * @param chosen what the routes were chosen from, and the answer with its certificate or gap
 */
public record ServicePlan(
        PlanRequest request,
        List<BottlePlan> bottles,
        List<Instruction> instructions,
        List<GearUse> gearUses,
        List<CapacityConflict> conflicts,
        List<String> notes,
        Chosen chosen) {

    /**
     * The last choice of routes: the problem, so that the certificate can be checked, and its answer.
     *
     * @param problem candidate routes with their costs and loads, gear with its capacities
     * @param answer what was chosen
     * @param rounds how often was chosen: 1, or more where the coupled run showed that the first choice did not do
     */
    public record Chosen(ChoiceProblem problem, ChoiceAnswer answer, int rounds) {}

    /**
     * Copies the lists.
     *
     * @param request what was asked
     * @param bottles one plan per bottle, not modified
     * @param instructions everything to be done, not modified
     * @param gearUses the baths that are filled, not modified
     * @param conflicts conflicts, not modified
     * @param notes notes, not modified
     * @param chosen the choice
     */
    public ServicePlan {
        bottles = List.copyOf(bottles);
        instructions = List.copyOf(instructions);
        gearUses = List.copyOf(gearUses);
        conflicts = List.copyOf(conflicts);
        notes = List.copyOf(notes);
    }

    /**
     * Whether every bottle is in range, no gear is too full, and what is shared suffices: whether there is no {@link Fault}.
     *
     * @return true if the plan works as predicted
     */
    public boolean works() {
        return Fault.of(this).isEmpty();
    }
}
