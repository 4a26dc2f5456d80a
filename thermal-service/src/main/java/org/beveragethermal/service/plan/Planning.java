/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.LongSupplier;
import org.beveragethermal.service.choice.ChoiceAnswer;
import org.beveragethermal.service.choice.ChoiceLimits;
import org.beveragethermal.service.choice.ChoiceMonitor;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.beveragethermal.service.choice.RouteChooser;

/** One call of the planner: rounds of candidates, choice and coupled run, of which the best is kept. Confined to one thread. */
final class Planning {

    /** The first choice and so many that put it right. */
    private static final int MOST_ROUNDS = 5;
    /** Part of the time left that a choice may take; the rest is for the coupled run and what it teaches. */
    private static final double CHOICE_PART = 0.6;

    private static final long LEAST_CHOICE_NS = 10_000_000;

    private final PlanRequest request;
    private final PlanLimits limits;
    private final PlanMonitor monitor;
    private final LongSupplier nanoClock;
    private final long endNs;
    private final Site site;
    private final GearPools pools;
    private final IceSupply ice;
    private final Earlier earlier;
    private final CandidateBook book;
    private final Corrections corrections;
    private final RouteChoice choice;
    private final CoupledRuns runs;
    /** What the last round took without its choice: about what another takes, or the coupled run of the first. */
    private long workNs;

    Planning(PlanRequest request, PlanLimits limits, PlanMonitor monitor, Earlier earlier, LongSupplier nanoClock) {
        this.request = request;
        this.limits = limits;
        this.monitor = monitor;
        this.nanoClock = nanoClock;
        this.endNs = nanoClock.getAsLong() + limits.timeLimit().toNanos();
        this.site = new Site(request);
        this.pools = new GearPools(request);
        this.ice = new IceSupply(request);
        this.earlier = earlier;
        this.corrections = new Corrections(site, pools);
        this.book = new CandidateBook(request, site, pools, ice, earlier, corrections);
        this.choice = new RouteChoice(site, pools, ice, request.movesPerMinute());
        this.runs = new CoupledRuns(site, ice);
    }

    /**
     * A choice and what comes of it.
     *
     * @param number number of the round, from 1
     * @param problem what was chosen from
     * @param answer the answer
     * @param chosen the candidates taken
     * @param candidates all candidates
     * @param routes the routes taken, with gear in place of pools
     * @param together what the coupled run shows
     */
    record Round(
            int number,
            ChoiceProblem problem,
            ChoiceAnswer answer,
            Map<BottleOrder, Candidate> chosen,
            Map<BottleOrder, List<Candidate>> candidates,
            Map<BottleOrder, Route> routes,
            CoupledRuns.Together together) {

        Outcome outcome(BottleOrder order) {
            return Objects.requireNonNull(together.outcomes().get(order));
        }

        Route route(BottleOrder order) {
            return Objects.requireNonNull(routes.get(order));
        }

        long bottlesOutside() {
            return chosen.keySet().stream()
                    .filter(order -> !outcome(order).isInRange())
                    .count();
        }

        long poursOutside() {
            return chosen.keySet().stream()
                    .mapToLong(order -> outcome(order).outside(order))
                    .sum();
        }

        /** Whether the choice itself leaves a bottle out of range. */
        boolean lacks() {
            return chosen.values().stream().anyMatch(candidate -> !candidate.isInRange());
        }

        /** Whether a bottle fails of which the choice promised otherwise. */
        boolean fails() {
            return chosen.entrySet().stream()
                    .anyMatch(entry -> entry.getValue().isInRange()
                            && !outcome(entry.getKey()).isInRange());
        }
    }

    ServicePlan plan() {
        Optional<Round> kept = kept();
        return kept.isPresent() ? written(kept.get(), kept.get(), 1) : chosen();
    }

    /** The earlier plan as it was, if with it every bottle is still in range and has not lost what counts of its margin. */
    private Optional<Round> kept() {
        return book.earlier()
                .map(candidates -> round(1, candidates, nanoClock.getAsLong()))
                .filter(round -> round.answer().found().isPresent())
                .filter(round -> round.chosen().keySet().stream()
                        .allMatch(order -> round.outcome(order).isInRange()
                                && round.outcome(order).marginK(order) >= earlier.leastMarginK(order)));
    }

    private ServicePlan chosen() {
        Round first = round(1);
        Round best = first;
        Round last = first;
        // Where nothing was learned another round would choose the same.
        if (first.lacks() && hasTime()) {
            book.widen();
            last = round(2);
            best = BETTER.compare(last, first) < 0 ? last : first;
        }
        while (last.number() < MOST_ROUNDS && last.fails() && hasTime() && corrections.learn(last)) {
            last = round(last.number() + 1);
            best = BETTER.compare(last, best) < 0 ? last : best;
        }
        return written(first, best, last.number());
    }

    private ServicePlan written(Round first, Round best, int rounds) {
        return new PlanWriter(request, site, pools, book, first, best, rounds).plan();
    }

    private static final Comparator<Round> BETTER =
            Comparator.comparingLong(Round::bottlesOutside).thenComparingLong(Round::poursOutside);

    private boolean hasTime() {
        return nanoClock.getAsLong() + LEAST_CHOICE_NS + workNs < endNs;
    }

    private Round round(int number) {
        long beganNs = nanoClock.getAsLong();
        tell(number == 1 ? PlanMonitor.Stage.TABLES : PlanMonitor.Stage.CANDIDATES, 0);
        Map<BottleOrder, List<Candidate>> candidates = book.candidates();
        tell(PlanMonitor.Stage.CANDIDATES, 1);
        return round(number, candidates, beganNs);
    }

    private Round round(int number, Map<BottleOrder, List<Candidate>> candidates, long beganNs) {
        ChoiceProblem problem = choice.problem(candidates);
        long readyNs = nanoClock.getAsLong();
        workNs = number == 1 ? readyNs - beganNs : workNs;
        ChoiceAnswer answer = RouteChooser.choose(problem, choiceLimits(), choiceMonitor(), nanoClock);
        long chosenNs = nanoClock.getAsLong();
        tell(PlanMonitor.Stage.CHOICE, 1);
        Map<BottleOrder, Candidate> chosen = answer.found()
                .map(found -> RouteChoice.chosen(found, candidates))
                .orElseGet(() -> FirstFit.of(problem, candidates));
        Map<BottleOrder, Route> routes = new Seating(pools, ice).seated(chosen);
        tell(PlanMonitor.Stage.COUPLED_RUN, 0);
        CoupledRuns.Together together = runs.of(routes);
        tell(PlanMonitor.Stage.COUPLED_RUN, 1);
        workNs = nanoClock.getAsLong() - chosenNs + (number == 1 ? 0 : readyNs - beganNs);
        return new Round(number, problem, answer, chosen, candidates, routes, together);
    }

    private ChoiceLimits choiceLimits() {
        long left = endNs - nanoClock.getAsLong();
        long part = Math.max(LEAST_CHOICE_NS, Math.min((long) (CHOICE_PART * left), left - workNs));
        return ChoiceLimits.within(Duration.ofNanos(part)).withGap(limits.relativeGap());
    }

    private ChoiceMonitor choiceMonitor() {
        return new ChoiceMonitor() {
            @Override
            public boolean cancelled() {
                return !monitor.goOn(PlanMonitor.Stage.CHOICE, 0);
            }
        };
    }

    private void tell(PlanMonitor.Stage stage, double part) {
        if (!monitor.goOn(stage, part)) {
            throw new CancellationException("planning was cancelled at " + stage);
        }
    }
}
