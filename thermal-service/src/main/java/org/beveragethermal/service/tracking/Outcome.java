/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an event made of a vessel.
 *
 * @param vessel the vessel after it; empty if it is not tracked
 * @param instructions what to do now
 * @param alerts what to know
 * @param notes why the event was not used, if it was not
 */
public record Outcome(
        Optional<TrackedVessel> vessel, List<Instruction> instructions, List<Alert> alerts, List<Note> notes) {

    /**
     * Copies the lists.
     *
     * @param vessel the vessel after it
     * @param instructions what to do now, not modified
     * @param alerts what to know, not modified
     * @param notes why the event was not used, not modified
     */
    public Outcome {
        instructions = List.copyOf(instructions);
        alerts = List.copyOf(alerts);
        notes = List.copyOf(notes);
    }

    /** This and what came of the event after. */
    Outcome and(Outcome next) {
        return new Outcome(
                next.vessel, both(instructions, next.instructions), both(alerts, next.alerts), both(notes, next.notes));
    }

    private static <T> List<T> both(List<T> some, List<T> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    static Outcome unchanged(Optional<TrackedVessel> vessel, Note note) {
        return new Outcome(vessel, List.of(), List.of(), List.of(note));
    }
}
