/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What happens to one bottle.
 *
 * @param order the bottle
 * @param verdict whether it is in range
 * @param means id of the place or gear that brings it to its temperature; where it starts if it stays there
 * @param startAt when it goes there; empty if it stays where it is
 * @param latestStart latest moment at which it could go there and still be in range when poured and until it is finished (or
 *     as long as it can be kept); empty if it stays where it is or no start is early enough
 * @param keptIn id of the place or gear where it stands while it is drunk
 * @param pouredAtK mean temperature when poured [K]
 * @param coldestK coldest mean temperature from the first glass to the last [K]
 * @param warmestK warmest mean temperature from the first glass to the last [K]
 * @param finishedAtK mean temperature at the last glass [K]
 * @param leavesRangeAt when it leaves its range while it is drunk; empty if it does not, or was never in it
 * @param reasons why this way, and why not another
 */
public record BottlePlan(
        BottleOrder order,
        Verdict verdict,
        String means,
        Optional<Instant> startAt,
        Optional<Instant> latestStart,
        String keptIn,
        double pouredAtK,
        double coldestK,
        double warmestK,
        double finishedAtK,
        Optional<Instant> leavesRangeAt,
        List<String> reasons) {

    /**
     * Copies the reasons.
     *
     * @param order the bottle
     * @param verdict whether it is in range
     * @param means id of what brings it to its temperature
     * @param startAt when it goes there
     * @param latestStart latest moment at which it could go there
     * @param keptIn id of what keeps it while it is drunk
     * @param pouredAtK mean temperature when poured [K]
     * @param coldestK coldest mean temperature while it is drunk [K]
     * @param warmestK warmest mean temperature while it is drunk [K]
     * @param finishedAtK mean temperature at the last glass [K]
     * @param leavesRangeAt when it leaves its range
     * @param reasons why this way, not modified
     */
    public BottlePlan {
        reasons = List.copyOf(reasons);
    }
}
