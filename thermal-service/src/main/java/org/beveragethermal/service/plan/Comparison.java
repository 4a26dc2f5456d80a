/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is planned with a bottle beside what was.
 *
 * @param old the plan for it as it was
 * @param now the plan for it as it is
 * @param from when the new plan begins
 * @param because why it is changed, if it is
 */
record Comparison(BottlePlan old, BottlePlan now, Instant from, Phrase because) {

    /** Moments nearer than this are the same. */
    private static final Duration SAME = Duration.ofSeconds(30);

    void addTo(List<Change> changes) {
        String id = old.order().id();
        boolean opened = Resumption.isOpened(old.order(), from);
        if (!opened && !near(old.order().servedAt(), now.order().servedAt())) {
            changes.add(Change.served(id, old.order().servedAt(), now.order().servedAt(), because));
        }
        List<Stay> before = opened ? List.of() : moves(old);
        List<Stay> after = opened ? List.of() : moves(now);
        for (int i = 0; i < Math.max(before.size(), after.size()); i++) {
            Optional<Stay> was = i < before.size() ? Optional.of(before.get(i)) : Optional.empty();
            Optional<Stay> is = i < after.size() ? Optional.of(after.get(i)) : Optional.empty();
            boolean same = was.map(Stay::where).equals(is.map(Stay::where))
                    && near(was.map(Stay::from).orElse(from), is.map(Stay::from).orElse(from));
            if (!same) {
                // What follows from the first change is not told again.
                changes.add(Change.move(id, was, is, because));
                break;
            }
        }
        String keptBefore = opened ? old.stayAt(now.order().servedAt()).where() : old.keptIn();
        if (!keptBefore.equals(now.keptIn())) {
            changes.add(Change.kept(id, keptBefore, now.keptIn(), because));
        }
    }

    /** Stays that begin from now on and before the bottle is served. */
    private List<Stay> moves(BottlePlan bottle) {
        List<Stay> moves = new ArrayList<>();
        String here = bottle.order().startsIn();
        for (Stay stay : bottle.stays()) {
            if (!stay.from().isBefore(bottle.order().servedAt())) {
                break;
            }
            if (!stay.from().isBefore(from) && !stay.where().equals(here)) {
                moves.add(stay);
            }
            here = stay.where();
        }
        return moves;
    }

    private static boolean near(Instant one, Instant other) {
        return Duration.between(one, other).abs().compareTo(SAME) < 0;
    }
}
