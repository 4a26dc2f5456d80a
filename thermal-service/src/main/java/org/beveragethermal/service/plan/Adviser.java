/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import org.beveragethermal.service.target.ServingTarget;

/**
 * Says what would make a plan work that does not: more ice, an earlier start, more gear, a wider range, a later serving. Each kind
 * of change is tried by planning anew, in steps that double until one helps and are then halved; what is told is the smallest that
 * was found, and it has been planned. First changes are looked for that help all bottles at once; if none does, such as help one
 * bottle and those that are alike.
 *
 * <p>More ice, an earlier start and a wider range are tried at their most first, for less of them does not help where the most does not: 20 kg,
 * two hours, 6 K.
 *
 * <p>A change only counts if no other bottle is worse off with it. Stateless and thread-safe; the same plan gives the same advice
 * unless time runs out.
 */
public final class Adviser {

    private static final double ICE_STEP_KG = 0.5;
    private static final int ICE_STEPS = 40;
    private static final Duration TIME_STEP = Duration.ofMinutes(5);
    private static final int TIME_STEPS = 24;
    private static final int MORE_GEAR = 2;
    private static final double RANGE_STEP_K = 0.5;
    private static final int RANGE_STEPS = 12;
    private static final double ZERO_CELSIUS_K = 273.15;

    private final ServicePlan plan;
    private final Trials trials;

    private Adviser(ServicePlan plan, Trials trials) {
        this.plan = plan;
        this.trials = trials;
    }

    /**
     * Advice for a plan.
     *
     * @param plan the plan
     * @param limits time for all the trials together, and the gap allowed in each
     * @param monitor hears of the progress of each trial, and may cancel
     * @return what does not work and what would help
     * @throws java.util.concurrent.CancellationException if the monitor cancels
     */
    public static Advice advise(ServicePlan plan, PlanLimits limits, PlanMonitor monitor) {
        return advise(plan, limits, monitor, System::nanoTime);
    }

    /**
     * Advice for a plan, timed by a clock that is handed in.
     *
     * @param plan the plan
     * @param limits time for all the trials together, and the gap allowed in each
     * @param monitor hears of the progress of each trial, and may cancel
     * @param nanoClock time in nanoseconds from any origin
     * @return what does not work and what would help
     * @throws java.util.concurrent.CancellationException if the monitor cancels
     */
    public static Advice advise(ServicePlan plan, PlanLimits limits, PlanMonitor monitor, LongSupplier nanoClock) {
        List<Fault> faults = Fault.of(plan);
        Trials trials = new Trials(plan, limits, monitor, nanoClock);
        List<Advice.Way> ways = faults.isEmpty() ? List.of() : new Adviser(plan, trials).ways(faults);
        return new Advice(faults, ways, trials.runs(), !trials.timeUp());
    }

    private List<Advice.Way> ways(List<Fault> faults) {
        Set<String> all = new LinkedHashSet<>();
        faults.forEach(fault -> all.addAll(fault.bottleIds()));
        List<Advice.Way> ways = ways(all);
        if (ways.isEmpty() && all.size() > 1) {
            alike(all).forEach(ids -> ways.addAll(ways(ids)));
        }
        return ways;
    }

    /** Bottles that are alike are helped by the same. */
    private List<Set<String>> alike(Set<String> bottleIds) {
        Map<Object, Set<String>> groups = new LinkedHashMap<>();
        for (BottleOrder order : plan.request().bottles()) {
            if (bottleIds.contains(order.id())) {
                groups.computeIfAbsent(Task.likeness(order), key -> new LinkedHashSet<>())
                        .add(order.id());
            }
        }
        return List.copyOf(groups.values());
    }

    /** Changes each of which helps all these bottles. */
    private List<Advice.Way> ways(Set<String> bottleIds) {
        List<PlanAdvice> found = new ArrayList<>();
        moreIce(bottleIds).ifPresent(found::add);
        earlierStart(bottleIds).ifPresent(found::add);
        found.addAll(moreGear(bottleIds));
        widerRange(bottleIds).ifPresent(found::add);
        laterServing(bottleIds).ifPresent(found::add);
        List<Advice.Way> ways = new ArrayList<>();
        found.forEach(change -> ways.add(new Advice.Way(List.copyOf(bottleIds), change)));
        return ways;
    }

    private Optional<PlanAdvice> moreIce(Set<String> bottleIds) {
        // Where the most does not help, less does not.
        boolean may = plan.request().ice().isPresent()
                && plan.request().gear().values().stream().anyMatch(gear -> gear.kind() == GearKind.ICE_BATH)
                && trials.helps(bottleIds, new PlanAdvice.MoreIce(ICE_STEP_KG * ICE_STEPS));
        return may
                ? trials.least(ICE_STEPS, bottleIds, steps -> new PlanAdvice.MoreIce(ICE_STEP_KG * steps))
                : Optional.empty();
    }

    private Optional<PlanAdvice> earlierStart(Set<String> bottleIds) {
        return trials.helps(bottleIds, new PlanAdvice.EarlierStart(TIME_STEP.multipliedBy(TIME_STEPS)))
                ? trials.least(
                        TIME_STEPS, bottleIds, steps -> new PlanAdvice.EarlierStart(TIME_STEP.multipliedBy(steps)))
                : Optional.empty();
    }

    /** One piece of gear of each kind is multiplied, the one that holds most. */
    private List<PlanAdvice> moreGear(Set<String> bottleIds) {
        Map<GearKind, Gear> largest = new LinkedHashMap<>();
        for (Gear gear : plan.request().gear().values()) {
            largest.merge(gear.kind(), gear, (a, b) -> b.capacity() > a.capacity() ? b : a);
        }
        List<PlanAdvice> found = new ArrayList<>();
        for (Gear like : largest.values()) {
            trials.least(MORE_GEAR, bottleIds, count -> new PlanAdvice.MoreGear(like.id(), count))
                    .ifPresent(found::add);
        }
        return found;
    }

    /** Each bottle's range is widened first to where the plan has it, then step by step for all. */
    private Optional<PlanAdvice> widerRange(Set<String> bottleIds) {
        List<BottlePlan> out = plan.bottles().stream()
                .filter(bottle -> bottleIds.contains(bottle.order().id()))
                .filter(bottle -> !bottle.verdict().inRange())
                .toList();
        boolean may = !out.isEmpty()
                && out.stream().map(bottle -> widened(bottle, 0)).allMatch(Adviser::isServable)
                && trials.helps(
                        bottleIds,
                        new PlanAdvice.WiderRange(
                                out.stream().map(Adviser::widest).toList()));
        for (int steps = 0; may && steps <= RANGE_STEPS && !trials.timeUp(); steps++) {
            double further = RANGE_STEP_K * steps;
            List<PlanAdvice.Widened> wider =
                    out.stream().map(bottle -> widened(bottle, further)).toList();
            PlanAdvice change = new PlanAdvice.WiderRange(wider);
            if (wider.stream().allMatch(Adviser::isServable) && trials.helps(bottleIds, change)) {
                return Optional.of(change);
            }
        }
        return Optional.empty();
    }

    private static PlanAdvice.Widened widened(BottlePlan bottle, double furtherK) {
        ServingTarget target = bottle.order().target();
        String id = bottle.order().id();
        boolean warm = bottle.warmestK() - target.highK() >= target.lowK() - bottle.coldestK();
        return warm
                ? new PlanAdvice.Widened(id, target.highK(), stepAbove(bottle.warmestK()) + furtherK)
                : new PlanAdvice.Widened(id, target.lowK(), stepBelow(bottle.coldestK()) - furtherK);
    }

    private static PlanAdvice.Widened widest(BottlePlan bottle) {
        PlanAdvice.Widened wider = widened(bottle, 0);
        double most = Math.copySign(RANGE_STEP_K * RANGE_STEPS, wider.toK() - wider.fromK());
        return new PlanAdvice.Widened(wider.bottleId(), wider.fromK(), wider.fromK() + most);
    }

    private static double stepAbove(double temperatureK) {
        return ZERO_CELSIUS_K + RANGE_STEP_K * Math.ceil((temperatureK - ZERO_CELSIUS_K) / RANGE_STEP_K);
    }

    private static double stepBelow(double temperatureK) {
        return ZERO_CELSIUS_K + RANGE_STEP_K * Math.floor((temperatureK - ZERO_CELSIUS_K) / RANGE_STEP_K);
    }

    /** A range that has to be widened further than this is another drink's. */
    private static boolean isServable(PlanAdvice.Widened wider) {
        return Math.abs(wider.toK() - wider.fromK()) <= RANGE_STEP_K * RANGE_STEPS;
    }

    private Optional<PlanAdvice> laterServing(Set<String> bottleIds) {
        List<String> ids = List.copyOf(bottleIds);
        return trials.least(
                TIME_STEPS, bottleIds, steps -> new PlanAdvice.LaterServing(ids, TIME_STEP.multipliedBy(steps)));
    }
}
