/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.service.choice.ChoiceAnswer;

/**
 * What does not work in a plan.
 *
 * @param bottleIds the bottles it concerns, at least one
 * @param gearId the gear that is too full; empty for other faults
 * @param from when it begins: the first pour out of range, or when the gear becomes too full
 * @param to when it ends: the last pour out of range, or when the gear is no longer too full
 * @param what what is wrong
 * @param why why no better was found, as far as it is known
 */
public record Fault(
        List<String> bottleIds, Optional<String> gearId, Instant from, Instant to, Phrase what, List<Reason> why) {

    /**
     * Copies the lists.
     *
     * @param bottleIds the bottles it concerns, at least one; not modified
     * @param gearId the gear that is too full
     * @param from when it begins
     * @param to when it ends
     * @param what what is wrong
     * @param why why no better was found; not modified
     */
    public Fault {
        bottleIds = List.copyOf(bottleIds);
        why = List.copyOf(why);
    }

    /**
     * The faults of a plan.
     *
     * @param plan the plan
     * @return bottles that are out of range at a pour, in the order of the plan, then gear that is too full, or bottles that cannot all have
     *     what they share; none if the plan works
     */
    public static List<Fault> of(ServicePlan plan) {
        List<Fault> faults = new ArrayList<>();
        for (BottlePlan bottle : plan.bottles()) {
            if (!bottle.verdict().inRange()) {
                faults.add(outOfRange(bottle));
            }
        }
        for (CapacityConflict conflict : plan.conflicts()) {
            faults.add(overfull(conflict));
        }
        if (plan.conflicts().isEmpty() && plan.chosen().answer() instanceof ChoiceAnswer.Infeasible none) {
            faults.add(shared(plan, none.items()));
        }
        return faults;
    }

    /** What is shared does not suffice though no gear is too full: ice, or hands. */
    private static Fault shared(ServicePlan plan, List<String> bottleIds) {
        return new Fault(
                bottleIds,
                Optional.empty(),
                plan.request().startsAt(),
                plan.bottles().stream()
                        .map(bottle -> bottle.order().finishedAt())
                        .max(Comparator.naturalOrder())
                        .orElseThrow(),
                Phrase.of(Sentence.FAULT_SHARED, new Argument.Bottles(bottleIds)),
                List.of());
    }

    private static Fault outOfRange(BottlePlan bottle) {
        List<Poured> missed =
                bottle.pours().stream().filter(pour -> !pour.inRange()).toList();
        // It may leave its range between two pours and be back in time for the next: then its extreme is what is wrong.
        List<Poured> shown = missed.isEmpty() ? bottle.pours() : missed;
        double lowK = bottle.order().target().lowK();
        double highK = bottle.order().target().highK();
        boolean warm = bottle.warmestK() - highK >= lowK - bottle.coldestK();
        Poured worst = shown.get(0);
        for (Poured pour : shown) {
            double better = pour.expected().meanK() - worst.expected().meanK();
            worst = (warm ? better > 0 : better < 0) ? pour : worst;
        }
        return new Fault(
                List.of(bottle.order().id()),
                Optional.empty(),
                shown.get(0).at(),
                shown.get(shown.size() - 1).at(),
                Phrase.of(
                        warm ? Sentence.FAULT_TOO_WARM : Sentence.FAULT_TOO_COLD,
                        new Argument.Bottle(bottle.order().id()),
                        new Argument.Moment(worst.at()),
                        new Argument.Temperature(worst.expected().meanK()),
                        new Argument.Temperature(warm ? highK : lowK)),
                bottle.reasons());
    }

    private static Fault overfull(CapacityConflict conflict) {
        return new Fault(
                conflict.bottleIds(),
                Optional.of(conflict.gearId()),
                conflict.from(),
                conflict.to(),
                Phrase.of(
                        Sentence.FAULT_OVERFULL,
                        new Argument.Where(conflict.gearId()),
                        new Argument.Moment(conflict.from()),
                        new Argument.Moment(conflict.to()),
                        new Argument.Count(conflict.placesNeeded()),
                        new Argument.Count(conflict.capacity())),
                List.of());
    }
}
