/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What happens to one bottle.
 *
 * @param order the bottle
 * @param verdict whether it is in range at every pour
 * @param stays where it is and when, from the start of the plan until it is finished
 * @param latestStart latest moment at which the last thing before serving could be done and the bottle still be in range at every pour;
 *     empty if it stays where it is or no start is early enough
 * @param pours temperatures when poured, one at least
 * @param coldestK coldest mean temperature from the first glass to the last [K]
 * @param warmestK warmest mean temperature from the first glass to the last [K]
 * @param leavesRangeAt when it leaves its range while it is drunk; empty if it does not, or was never in it
 * @param reasons why this way, and why not another
 */
public record BottlePlan(
        BottleOrder order,
        Verdict verdict,
        List<Stay> stays,
        Optional<Instant> latestStart,
        List<Poured> pours,
        double coldestK,
        double warmestK,
        Optional<Instant> leavesRangeAt,
        List<Reason> reasons) {

    /**
     * Copies the lists.
     *
     * @param order the bottle
     * @param verdict whether it is in range at every pour
     * @param stays where it is and when, one at least, not modified
     * @param latestStart latest moment of the last thing before serving
     * @param pours temperatures when poured, one at least, not modified
     * @param coldestK coldest mean temperature while it is drunk [K]
     * @param warmestK warmest mean temperature while it is drunk [K]
     * @param leavesRangeAt when it leaves its range
     * @param reasons why this way, not modified
     * @throws IllegalArgumentException if there is no stay or no pour
     */
    public BottlePlan {
        stays = List.copyOf(stays);
        pours = List.copyOf(pours);
        reasons = List.copyOf(reasons);
        if (stays.isEmpty() || pours.isEmpty()) {
            throw new IllegalArgumentException("plan of " + order.id() + " with " + stays.size() + " stays and "
                    + pours.size() + " pours: expected one of each at least");
        }
    }

    /** Where it is at a moment; where it goes at the moment counts; the first stay before all. */
    Stay stayAt(Instant at) {
        return last(stay -> !stay.from().isAfter(at));
    }

    private Stay lastBeforeServing() {
        return last(stay -> stay.from().isBefore(order.servedAt()));
    }

    private Stay last(Predicate<Stay> begun) {
        Stay last = stays.get(0);
        for (Stay stay : stays) {
            last = begun.test(stay) ? stay : last;
        }
        return last;
    }

    /**
     * What brings it to its temperature.
     *
     * @return id of the place or gear in which it is until it is served; where it starts if it stays there
     */
    public String means() {
        return lastBeforeServing().where();
    }

    /**
     * When it goes where it is until it is served.
     *
     * @return the moment; empty if it stays where it starts
     */
    public Optional<Instant> startAt() {
        Stay last = lastBeforeServing();
        boolean unmoved = last.equals(stays.get(0)) && last.where().equals(order.startsIn());
        return unmoved ? Optional.empty() : Optional.of(last.from());
    }

    /**
     * Where it is kept while it is drunk.
     *
     * @return id of the place or gear where it stands after the first glass
     */
    public String keptIn() {
        return stayAt(order.servedAt()).where();
    }

    /**
     * The first glass.
     *
     * @return mean temperature when poured first [K]
     */
    public double pouredAtK() {
        return pours.get(0).expected().meanK();
    }

    /**
     * The last glass.
     *
     * @return mean temperature when poured last [K]
     */
    public double finishedAtK() {
        return pours.get(pours.size() - 1).expected().meanK();
    }
}
