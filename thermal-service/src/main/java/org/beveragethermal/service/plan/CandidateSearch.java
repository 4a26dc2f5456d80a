/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Makes the candidate routes of one bottle: it stays; one means brings it to its temperature; two where neither of them does; by turns
 * where neither table nor gear keeps it.
 *
 * <p>Which candidates there are for some gear never depends on other gear, so that gear added only adds candidates.
 */
final class CandidateSearch {

    /** Moves are made so many minutes earlier where hands are few. */
    private static final List<Integer> STAGGER_MIN = List.of(1, 2, 4, 8);
    /** Where the choice leaves a drink out of range, by each minute of what all bottles take, up to so many. */
    private static final int MOST_STAGGER_MIN = 30;

    private final Site site;
    private final Assessor assessor;
    private final Task task;
    private final List<String> means;
    private final Keepers keepers;
    private final GearPools pools;
    private final int queueMin;

    /**
     * A search.
     *
     * @param means ids of places and pools of gear in which the bottle can stand
     * @param queueMin how long it takes to move every bottle once [min]; 0 if hands are many
     */
    CandidateSearch(Site site, Assessor assessor, List<String> means, GearPools pools, int queueMin) {
        this.site = site;
        this.assessor = assessor;
        this.task = assessor.task();
        this.means = means;
        this.keepers = new Keepers(site, task, means);
        this.pools = pools;
        this.queueMin = queueMin;
    }

    /**
     * Candidates, the cheapest first, one at least; none that another outdoes.
     *
     * @param wide whether such are wanted too that free scarce gear early
     */
    List<Candidate> candidates(Optional<Route> earlier, boolean wide) {
        List<Candidate> all = new ArrayList<>();
        earlier.ifPresent(route -> all.add(assessor.assess(route)));
        Candidate stay = stays(all);
        for (String id : means) {
            if (!id.equals(task.order().startsIn())) {
                all.addAll(oneMeans(id));
            }
        }
        TwoMeans two = new TwoMeans(site, assessor, means, keepers);
        two.addTo(all);
        if (wide) {
            two.addHeldTo(all);
        }
        new Turns(site, assessor, means).addTo(all);
        if (queueMin > 0) {
            stagger(all, wide ? everyMinute() : STAGGER_MIN);
        }
        all.removeIf(assessor::isDangerous);
        if (all.isEmpty()) {
            all.add(stay);
        }
        return Dominance.best(all, pools, queueMin > 0);
    }

    /** It stays as long as it may, at its table or where it starts while it is drunk; also the way out where nothing is safe. */
    private Candidate stays(List<Candidate> all) {
        double until = Math.min(task.readyS(), StartTimes.whole(task.startLimitS()));
        List<Candidate> stays = new ArrayList<>();
        for (String keeper : keepers.with(task.order().startsIn())) {
            addStay(stays, until, keeper);
        }
        if (stays.stream().noneMatch(Candidate::does)) {
            for (String keeper : keepers.others(task.order().startsIn())) {
                addStay(stays, until, keeper);
            }
        }
        all.addAll(stays);
        return stays.get(0);
    }

    private void addStay(List<Candidate> stays, double until, String keeper) {
        Route route = Route.of(
                Route.Kind.STAY,
                new Leg(task.order().startsIn(), 0, until),
                new Leg(task.order().servedIn(), until, task.readyS()),
                keepers.airing(),
                new Leg(keeper, task.servedS(), task.finishedS()));
        if (stays.isEmpty() || keepers.isThere(route)) {
            stays.add(assessor.assess(route));
        }
    }

    private List<Candidate> oneMeans(String id) {
        List<Candidate> found = new ArrayList<>();
        boolean does = false;
        for (String keeper : keepers.with(id)) {
            does |= alternatives(id, keeper, found);
        }
        if (!does) {
            for (String keeper : keepers.others(id)) {
                alternatives(id, keeper, found);
            }
        }
        return found;
    }

    /** The latest of the best moments to begin, and later ones that serve worse but load the gear for less time. */
    private boolean alternatives(String id, String keeper, List<Candidate> out) {
        List<Candidate> tried = new ArrayList<>();
        for (double[] window : site.windowsS(id)) {
            double end = Math.min(task.readyS(), StartTimes.whole(window[1]));
            List<Double> starts = StartTimes.upTo(window[0], end);
            for (int i = 0; i < starts.size() && starts.get(i) <= task.startLimitS(); i++) {
                add(tried, id, starts.get(i), end, keeper);
                if (i == 0 && passesBy(tried)) {
                    break;
                }
            }
        }
        if (tried.isEmpty()) {
            return false;
        }
        Candidate best = refined(id, keeper, tried);
        out.add(best);
        Candidate later = best;
        for (Candidate candidate : tried) {
            boolean sameLevel = candidate.poursOutside() == best.poursOutside();
            if (sameLevel && start(candidate) > start(later) && best.servesBetterThan(candidate)) {
                later = candidate;
            }
        }
        out.add(later);
        return best.does();
    }

    /** Put there at once or never, it is poured first on the same side of its range: then no other moment is better than both. */
    private boolean passesBy(List<Candidate> tried) {
        if (tried.size() != 1) {
            return false;
        }
        double atOnce = tried.get(0).forecast().pouredK();
        double never = task.stayingK(task.servedS());
        return Math.max(atOnce, never) < task.lowK() || Math.min(atOnce, never) > task.highK();
    }

    private void add(List<Candidate> tried, String id, double start, double end, String keeper) {
        Route route = Route.of(
                Route.Kind.ONE_MEANS,
                new Leg(task.order().startsIn(), 0, start),
                new Leg(id, start, end),
                new Leg(task.order().servedIn(), end, task.readyS()),
                keepers.airing(),
                new Leg(keeper, task.servedS(), task.finishedS()));
        if (keepers.isThere(route)) {
            Candidate candidate = assessor.assess(route);
            if (!assessor.isDangerous(candidate)) {
                tried.add(candidate);
            }
        }
    }

    /** The best of all tried and of the whole minutes around it, of equals the latest. */
    private Candidate refined(String id, String keeper, List<Candidate> tried) {
        Candidate best = latestBest(tried);
        int at = tried.indexOf(best);
        double from = start(tried.get(Math.max(0, at - 1)));
        double to = start(tried.get(Math.min(tried.size() - 1, at + 1)));
        Leg leg = best.route().beginningAtOrBefore(start(best));
        List<Candidate> near = new ArrayList<>(List.of(best));
        for (double start : StartTimes.between(from, to, 15)) {
            add(near, id, start, Math.min(task.readyS(), leg.toS()), keeper);
        }
        return latestBest(near);
    }

    private Candidate latestBest(List<Candidate> tried) {
        Candidate best = tried.get(0);
        for (Candidate candidate : tried) {
            if (!best.servesBetterThan(candidate)
                    && (candidate.servesBetterThan(best) || start(candidate) > start(best))) {
                best = candidate;
            }
        }
        return best;
    }

    /** When it leaves where it starts. */
    private double start(Candidate candidate) {
        Leg first = candidate.route().legs().get(0);
        return first.where().equals(task.order().startsIn()) ? first.toS() : 0;
    }

    private List<Integer> everyMinute() {
        return IntStream.rangeClosed(1, Math.min(MOST_STAGGER_MIN, queueMin))
                .boxed()
                .toList();
    }

    private void stagger(List<Candidate> all, List<Integer> byMinutes) {
        for (Candidate candidate : List.copyOf(all)) {
            List<Leg> legs = candidate.route().legs();
            if (legs.size() < 2 || legs.get(0).toS() >= task.readyS()) {
                continue;
            }
            for (int minutes : byMinutes) {
                double earlier = legs.get(0).toS() - minutes * StartTimes.MINUTE_S;
                if (earlier >= 0) {
                    List<Leg> shifted = new ArrayList<>(legs);
                    shifted.set(0, new Leg(legs.get(0).where(), 0, earlier));
                    shifted.set(
                            1, new Leg(legs.get(1).where(), earlier, legs.get(1).toS()));
                    Route route = Route.of(candidate.route().kind(), shifted.toArray(new Leg[0]));
                    if (keepers.isThere(route)) {
                        all.add(assessor.assess(route));
                    }
                }
            }
        }
    }
}
