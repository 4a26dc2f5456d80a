/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.service.caution.DangerLimits;

/** Writes down what was chosen and what comes of it. */
final class PlanWriter {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final Duration MOST_PUT_OFF = Duration.ofHours(24);

    private final PlanRequest request;
    private final Site site;
    private final GearPools pools;
    private final CandidateBook book;
    private final Planning.Round first;
    private final Planning.Round best;
    private final int rounds;

    PlanWriter(
            PlanRequest request,
            Site site,
            GearPools pools,
            CandidateBook book,
            Planning.Round first,
            Planning.Round best,
            int rounds) {
        this.request = request;
        this.site = site;
        this.pools = pools;
        this.book = book;
        this.first = first;
        this.best = best;
        this.rounds = rounds;
    }

    ServicePlan plan() {
        Map<BottleOrder, BottlePlan> bottles = new LinkedHashMap<>();
        best.routes().forEach((order, route) -> bottles.put(order, bottle(order, route)));
        List<GearUse> uses = uses();
        return new ServicePlan(
                request,
                List.copyOf(bottles.values()),
                new InstructionWriter(site, best, bottles, uses).instructions(),
                uses,
                new Occupancy(request, site, best.routes()).conflicts(),
                notes(),
                new ServicePlan.Chosen(best.problem(), best.answer(), rounds));
    }

    private BottlePlan bottle(BottleOrder order, Route route) {
        Outcome outcome = best.outcome(order);
        Candidate chosen = Objects.requireNonNull(best.chosen().get(order));
        boolean repaired =
                !route.equals(first.route(order)) && !first.outcome(order).isInRange();
        Assessor assessor = book.assessor(order);
        List<Instant> times = order.pourTimes();
        List<Poured> pours = new ArrayList<>();
        for (int i = 0; i < times.size(); i++) {
            double kelvins = outcome.poursK().get(i);
            Expected expected = Expected.of(kelvins, chosen.forecast().sigmaK(i));
            pours.add(new Poured(times.get(i), expected, Outcome.inRange(order, kelvins)));
        }
        boolean reached = Outcome.inRange(order, outcome.poursK().get(0));
        return new BottlePlan(
                order,
                outcome.verdict(order, repaired),
                route.legs().stream()
                        .map(leg -> new Stay(leg.where(), site.instant(leg.fromS()), site.instant(leg.toS())))
                        .toList(),
                latest(assessor, chosen, outcome),
                pours,
                outcome.coldestK(),
                outcome.warmestK(),
                reached && outcome.leavesS().isPresent()
                        ? Optional.of(site.instant(outcome.leavesS().getAsDouble()))
                        : Optional.empty(),
                new ReasonFinder(pools, assessor, book.means(assessor.task()))
                        .reasons(
                                chosen,
                                Objects.requireNonNull(best.candidates().get(order)),
                                outcome,
                                repaired ? Optional.of(first.outcome(order)) : Optional.empty()));
    }

    /**
     * Puts off the last thing before serving minute by minute as long as all pours stay in range, each as much warmer or colder than its
     * forecast as the coupled run has it.
     */
    private Optional<Instant> latest(Assessor assessor, Candidate chosen, Outcome outcome) {
        List<Leg> legs = chosen.route().legs();
        Leg last = chosen.route().endingAtOrAfter(assessor.task().readyS());
        int at = legs.indexOf(last);
        if (at == 0 || !outcome.isInRange()) {
            return Optional.empty();
        }
        Forecast planned = assessor.assess(chosen.route()).forecast();
        double latest = last.fromS();
        double most = Math.min(last.toS(), latest + Site.seconds(MOST_PUT_OFF));
        for (double start = latest + StartTimes.MINUTE_S; start < most; start += StartTimes.MINUTE_S) {
            List<Leg> put = new ArrayList<>(legs);
            put.set(at - 1, new Leg(legs.get(at - 1).where(), legs.get(at - 1).fromS(), start));
            put.set(at, new Leg(last.where(), start, last.toS()));
            boolean gearStays =
                    site.isThere(legs.get(at - 1).where(), legs.get(at - 1).fromS(), start);
            Forecast forecast =
                    assessor.assess(new Route(chosen.route().kind(), put)).forecast();
            if (!gearStays || !isInRange(assessor.task(), forecast, planned, outcome)) {
                break;
            }
            latest = start;
        }
        return Optional.of(site.instant(latest));
    }

    private static boolean isInRange(Task task, Forecast forecast, Forecast planned, Outcome outcome) {
        for (int i = 0; i < forecast.pours(); i++) {
            double kelvins = forecast.pourK(i) + outcome.poursK().get(i) - planned.pourK(i);
            if (kelvins < task.lowK() || kelvins > task.highK()) {
                return false;
            }
        }
        return true;
    }

    private List<GearUse> uses() {
        List<GearUse> uses = new ArrayList<>();
        for (Gear gear : site.gear()) {
            CoupledRun run = best.together().baths().get(gear.id());
            if (run != null) {
                uses.add(new GearUse(
                        gear.id(),
                        site.instant(Objects.requireNonNull(run.filledS().get(gear.id()))),
                        gear.surroundings() instanceof IceWaterBath bath ? bath.iceKg() : 0,
                        waterKg(gear),
                        run.iceKg(gear.id(), run.lastS(gear.id())),
                        run.iceGoneS(gear.id()).map(site::instant),
                        run.topUps(gear.id()).stream()
                                .map(topUp -> new GearUse.Added(site.instant(topUp.atS()), topUp.iceKg()))
                                .toList()));
            }
        }
        return uses;
    }

    private static double waterKg(Gear gear) {
        if (gear.surroundings() instanceof IceWaterBath bath) {
            return bath.waterKg();
        }
        return gear.surroundings() instanceof WaterBath bath ? bath.waterKg() : 0;
    }

    private static String overstepped(BottleOrder order, DangerLimits.Breach breach) {
        String what = switch (breach.rule()) {
            case BURSTS_BY_ICE -> "begins to freeze and may burst what it is in: take it out before";
            case FULL_OF_LIQUID -> "fills what it is in to the brim and may burst it: take it out before";
            case VERY_HOT_DRINK -> "is hot enough to scald when it is drunk: let it cool";
            case HOLDING_TIME_OVER ->
                "has been out of its holding temperatures too long: throw it away; local codes go before this";
            default -> throw new IllegalStateException("no limit of danger: " + breach.rule());
        };
        return String.format(
                Locale.ROOT,
                "%s, %d min after the start, %s",
                order.name(),
                (long) Math.floor(breach.afterS() / StartTimes.MINUTE_S),
                what);
    }

    private List<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        for (CoupledRun run : best.together().runs()) {
            notes.addAll(run.notes());
            for (BottleOrder order : run.freezing()) {
                notes.add(String.format(
                        Locale.ROOT,
                        "%s becomes colder than its drink begins to freeze (%.1f °C): it may freeze and burst; take it out before",
                        order.name(),
                        Danger.freezingK(order.bottle()) - ZERO_CELSIUS_K));
            }
            run.orders().forEach(order -> run.breach(order).ifPresent(breach -> notes.add(overstepped(order, breach))));
        }
        return List.copyOf(notes);
    }
}
