/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Adds routes through two means, one after the other: where neither of the two does alone, or where gear is scarce. */
final class TwoMeans {

    /** When the second means begins, before the bottle is ready [min]. */
    private static final int[] SECOND_MIN = {3, 6, 9, 12, 15, 20, 30, 45, 60, 90, 120, 180};
    /** How long the first means lasts [min]. */
    private static final int[] FIRST_MIN = {5, 10, 20, 40, 80, 160, 320};

    private final Site site;
    private final Assessor assessor;
    private final Task task;
    private final List<String> means;
    private final Keepers keepers;

    TwoMeans(Site site, Assessor assessor, List<String> means, Keepers keepers) {
        this.site = site;
        this.assessor = assessor;
        this.task = assessor.task();
        this.means = means;
        this.keepers = keepers;
    }

    void addTo(List<Candidate> all) {
        List<String> failing = new ArrayList<>();
        for (String id : means) {
            boolean does = all.stream().anyMatch(candidate -> candidate.does() && uses(candidate, id));
            if (!does && site.gear(id).isPresent() && !id.equals(task.order().startsIn())) {
                failing.add(id);
            }
        }
        for (String first : failing) {
            for (String second : failing) {
                if (!first.equals(second)) {
                    best(first, second).ifPresent(candidate -> addIfBetter(all, candidate, first, second));
                }
            }
        }
    }

    /**
     * Adds routes on which one means brings the bottle to its temperature early and another, often a refrigerator, holds it there, so that
     * the first is free again: for each time of holding the cheapest that serves in range.
     */
    void addHeldTo(List<Candidate> all) {
        for (String first : means) {
            for (String second : means) {
                boolean two = !first.equals(second)
                        && site.gear(first).isPresent()
                        && site.gear(second).isPresent();
                if (two && !first.equals(task.order().startsIn())) {
                    for (int secondMin : SECOND_MIN) {
                        best(first, second, secondMin, Optional.empty())
                                .filter(Candidate::isInRange)
                                .ifPresent(all::add);
                    }
                }
            }
        }
    }

    /** Whether gear brings a bottle to its temperature on a route, alone. */
    private boolean uses(Candidate candidate, String id) {
        return candidate.route().kind() == Route.Kind.ONE_MEANS
                && candidate.route().endingAtOrAfter(task.readyS()).where().equals(id);
    }

    private static boolean isThrough(Candidate candidate, String id) {
        return candidate.route().legs().stream().anyMatch(leg -> leg.where().equals(id));
    }

    private void addIfBetter(List<Candidate> all, Candidate two, String first, String second) {
        boolean better = all.stream()
                .filter(one -> one.route().kind() == Route.Kind.ONE_MEANS)
                .filter(one -> isThrough(one, first) || isThrough(one, second))
                .allMatch(two::servesBetterThan);
        if (better) {
            all.add(two);
        }
    }

    private Optional<Candidate> best(String first, String second) {
        Optional<Candidate> best = Optional.empty();
        for (int secondMin : SECOND_MIN) {
            best = best(first, second, secondMin, best);
        }
        return best;
    }

    private Optional<Candidate> best(String first, String second, int secondMin, Optional<Candidate> bestSoFar) {
        Optional<Candidate> best = bestSoFar;
        for (int firstMin : FIRST_MIN) {
            double change = StartTimes.wholeAfter(task.readyS() - secondMin * StartTimes.MINUTE_S);
            double start = Math.max(0, change - firstMin * StartTimes.MINUTE_S);
            if (change <= start || start > task.startLimitS()) {
                continue;
            }
            for (String keeper : keepers.with(second)) {
                Route route = Route.of(
                        Route.Kind.TWO_MEANS,
                        new Leg(task.order().startsIn(), 0, start),
                        new Leg(first, start, change),
                        new Leg(second, change, task.readyS()),
                        keepers.airing(),
                        new Leg(keeper, task.servedS(), task.finishedS()));
                if (keepers.isThere(route)) {
                    best = better(best, assessor.assess(route));
                }
            }
        }
        return best;
    }

    private Optional<Candidate> better(Optional<Candidate> best, Candidate candidate) {
        boolean takes = best.isEmpty() || candidate.isCheaperThan(best.get());
        return takes && !assessor.isDangerous(candidate) ? Optional.of(candidate) : best;
    }
}
