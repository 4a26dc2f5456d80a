/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Says why a bottle's route was taken and others were not. */
final class ReasonFinder {

    /** A difference from the forecast for the bottle alone that is worth a sentence [K]. */
    private static final double NOTABLE_K = 0.3;

    private final GearPools pools;
    private final Assessor assessor;
    private final Task task;
    private final List<String> means;

    ReasonFinder(GearPools pools, Assessor assessor, List<String> means) {
        this.pools = pools;
        this.assessor = assessor;
        this.task = assessor.task();
        this.means = means;
    }

    /**
     * Reasons: where it is kept, what would not do, what was taken, what it is brought by; the last is the reason of the move.
     *
     * @param failed what became of the first choice, if it failed and another was made instead
     */
    List<Reason> reasons(Candidate chosen, List<Candidate> all, Outcome outcome, Optional<Outcome> failed) {
        List<Reason> reasons = new ArrayList<>();
        reasons.add(kept(chosen, outcome));
        if (chosen.route().kind() != Route.Kind.STAY || !outcome.isInRange()) {
            others(chosen, all, reasons);
        }
        double together = outcome.poursK().get(0);
        double alone = chosen.forecast().pouredK();
        if (Math.abs(together - alone) > NOTABLE_K) {
            reasons.add(Reason.of(Reason.Code.TOGETHER, kelvins(alone), kelvins(together)));
        }
        failed.ifPresent(first -> reasons.add(
                Reason.of(Reason.Code.REPAIRED, kelvins(first.poursK().get(0)))));
        reasons.add(brought(chosen, outcome));
        return reasons;
    }

    private Reason kept(Candidate chosen, Outcome outcome) {
        Route route = chosen.route();
        Argument.Where where = where(route.beginningAtOrBefore(task.servedS()));
        if (route.kind() == Route.Kind.BY_TURNS) {
            Leg out = route.beginningAtOrBefore(task.servedS());
            Leg in = route.beginningAtOrBefore(out.toS());
            return Reason.of(
                    Reason.Code.KEPT_BY_TURNS,
                    where(in),
                    new Argument.Span(Site.duration(in.toS() - in.fromS())),
                    new Argument.Span(Site.duration(out.toS() - out.fromS())));
        }
        if (outcome.isInRange()) {
            return Reason.of(
                    Reason.Code.KEPT_IN,
                    where,
                    kelvins(outcome.poursK().get(0)),
                    kelvins(outcome.coldestK()),
                    kelvins(outcome.warmestK()));
        }
        double part = (double) outcome.outside(task.order()) / task.pours();
        return Reason.of(Reason.Code.KEPT_OUT_OF_RANGE, where, new Argument.Share(part));
    }

    private void others(Candidate chosen, List<Candidate> all, List<Reason> reasons) {
        String taken = pools.poolId(meansOf(chosen.route()));
        Set<String> occupied = new LinkedHashSet<>();
        for (Candidate other : all) {
            if (other.isCheaperThan(chosen)) {
                for (Leg leg : other.route().legs()) {
                    if (pools.isGear(leg.where()) && leg.fromS() < task.readyS()) {
                        occupied.add(pools.poolId(leg.where()));
                    }
                }
            }
        }
        occupied.remove(taken);
        occupied.forEach(id -> reasons.add(Reason.of(Reason.Code.TAKEN, new Argument.Where(id))));
        for (String id : means) {
            boolean does = all.stream()
                    .anyMatch(other -> other.isInRange()
                            && pools.poolId(meansOf(other.route())).equals(id));
            if (!does
                    && !id.equals(taken)
                    && !occupied.contains(id)
                    && !id.equals(task.order().startsIn())) {
                reasons.add(willNotDo(id));
            }
        }
    }

    private Reason willNotDo(String id) {
        Candidate atOnce = assessor.assess(Route.of(
                Route.Kind.ONE_MEANS,
                new Leg(id, 0, task.readyS()),
                new Leg(task.order().servedIn(), task.readyS(), task.finishedS())));
        return assessor.isDangerous(atOnce)
                ? Reason.of(Reason.Code.HAZARD, new Argument.Where(id))
                : Reason.of(
                        Reason.Code.WILL_NOT_DO,
                        new Argument.Where(id),
                        kelvins(atOnce.forecast().pouredK()));
    }

    private Reason brought(Candidate chosen, Outcome outcome) {
        double poured = outcome.poursK().get(0);
        boolean reached = Outcome.inRange(task.order(), poured);
        Route route = chosen.route();
        Leg last = route.endingAtOrAfter(task.readyS());
        if (route.legs().get(0).equals(last) && last.where().equals(task.order().startsIn())) {
            return Reason.of(reached ? Reason.Code.STAYS : Reason.Code.NOTHING_BETTER, kelvins(poured));
        }
        if (!reached) {
            return Reason.of(Reason.Code.CLOSEST, where(last), kelvins(poured));
        }
        if (route.kind() == Route.Kind.TWO_MEANS) {
            Leg before = route.legs().get(Math.max(0, route.legs().indexOf(last) - 1));
            return Reason.of(Reason.Code.BROUGHT_BY_TWO, where(before), where(last), kelvins(poured));
        }
        return Reason.of(Reason.Code.BROUGHT_BY, where(last), kelvins(task.stayingK(task.servedS())), kelvins(poured));
    }

    private String meansOf(Route route) {
        return route.endingAtOrAfter(task.readyS()).where();
    }

    private static Argument.Where where(Leg leg) {
        return new Argument.Where(leg.where());
    }

    private static Argument kelvins(double temperatureK) {
        return new Argument.Temperature(temperatureK);
    }
}
