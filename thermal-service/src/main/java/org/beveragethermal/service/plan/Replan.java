/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan made anew while it is carried out.
 *
 * @param plan what is done from now on; if nothing has changed the plan itself as it was
 * @param from when the new plan begins: now, or the next whole minute of the old plan
 * @param done instructions of the old plan for before that moment, as they were
 * @param finished bottles that were finished before it, as they were planned
 * @param changes what is changed, and why; none if nothing is
 * @param readings what readings say about the prediction
 */
public record Replan(
        ServicePlan plan,
        Instant from,
        List<Instruction> done,
        List<BottlePlan> finished,
        List<Change> changes,
        List<Trust> readings) {

    /**
     * Copies the lists.
     *
     * @param plan what is done from now on
     * @param from when the new plan begins
     * @param done instructions for before that moment, not modified
     * @param finished bottles that were finished before it, not modified
     * @param changes what is changed, not modified
     * @param readings what readings say, not modified
     */
    public Replan {
        done = List.copyOf(done);
        finished = List.copyOf(finished);
        changes = List.copyOf(changes);
        readings = List.copyOf(readings);
    }

    /**
     * What was done and what is to be done.
     *
     * @return all instructions, in order of time
     */
    public List<Instruction> instructions() {
        List<Instruction> all = new ArrayList<>(done);
        plan.instructions().stream()
                .filter(instruction -> !instruction.at().isBefore(from))
                .forEach(all::add);
        return all;
    }
}
