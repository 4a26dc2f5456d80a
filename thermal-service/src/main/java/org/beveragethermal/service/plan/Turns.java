/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Adds routes on which a bottle goes into gear and out of it by turns while it is drunk, where it would get too warm at its table and too
 * cold in the gear (or the other way round).
 */
final class Turns {

    /** How long in, how long out [min]. */
    private static final int[] IN_MIN = {2, 4, 8};

    private static final int[] OUT_MIN = {5, 10, 15};
    private static final int MOST_TURNS = 12;

    private final Site site;
    private final Assessor assessor;
    private final Task task;
    private final List<String> means;

    Turns(Site site, Assessor assessor, List<String> means) {
        this.site = site;
        this.assessor = assessor;
        this.task = assessor.task();
        this.means = means;
    }

    void addTo(List<Candidate> all) {
        if (task.isDecanted()) {
            return;
        }
        for (Candidate atTable : List.copyOf(all)) {
            boolean leaves = atTable.poursOutside() > 0
                    && atTable.poursOutside() < task.pours()
                    && keptIn(atTable).equals(task.order().servedIn());
            for (String id : means) {
                if (leaves && site.gear(id).isPresent() && !keeps(all, atTable, id)) {
                    best(atTable, id)
                            .filter(turns -> turns.servesBetterThan(atTable))
                            .ifPresent(all::add);
                }
            }
        }
    }

    private String keptIn(Candidate candidate) {
        return candidate.route().beginningAtOrBefore(task.servedS()).where();
    }

    /** Whether gear keeps the bottle in range that comes the same way. */
    private boolean keeps(List<Candidate> all, Candidate atTable, String id) {
        String means = atTable.route().endingAtOrAfter(task.readyS()).where();
        return all.stream()
                .filter(other -> other.isInRange() && keptIn(other).equals(id))
                .anyMatch(other ->
                        other.route().endingAtOrAfter(task.readyS()).where().equals(means));
    }

    private Optional<Candidate> best(Candidate atTable, String id) {
        Optional<Candidate> best = Optional.empty();
        for (int in : IN_MIN) {
            for (int out : OUT_MIN) {
                Route route = turning(atTable.route(), id, in, out);
                if (site.isThere(id, task.servedS(), task.finishedS())) {
                    Candidate candidate = assessor.assess(route);
                    boolean takes = best.isEmpty() || candidate.isCheaperThan(best.get());
                    best = takes && !assessor.isDangerous(candidate) ? Optional.of(candidate) : best;
                }
            }
        }
        return best;
    }

    private Route turning(Route atTable, String id, int inMin, int outMin) {
        List<Leg> legs = new ArrayList<>();
        String table = task.order().servedIn();
        for (Leg leg : atTable.legs()) {
            legs.add(new Leg(leg.where(), leg.fromS(), Math.min(leg.toS(), task.servedS())));
        }
        double time = task.servedS();
        for (int turn = 0; turn < MOST_TURNS && time < task.finishedS(); turn++) {
            double taken = Math.min(task.finishedS(), time + outMin * StartTimes.MINUTE_S);
            double back = Math.min(task.finishedS(), taken + inMin * StartTimes.MINUTE_S);
            legs.add(new Leg(table, time, taken));
            legs.add(new Leg(id, taken, back));
            time = back;
        }
        legs.add(new Leg(table, time, task.finishedS()));
        return Route.of(Route.Kind.BY_TURNS, legs.toArray(new Leg[0]));
    }
}
