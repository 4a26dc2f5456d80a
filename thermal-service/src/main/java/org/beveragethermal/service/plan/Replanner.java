/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Makes a plan anew while it is carried out, because something has become known. What was done stays done. Bottles go on from where
 * they are and as warm as the plan's coupled run predicts them, or as a reading and the prediction say together; baths go on with the
 * ice that is left in them, their water mixed.
 *
 * <p>Few changes are wanted. The old plan is kept whole if with it every bottle is still in range in the coupled run and has lost no more
 * than {@value EarlierRoutes#FORGIVEN_K} K of its margin; then its choice is the only one its certificate speaks of. If not, what the
 * old plan would do with a bottle is a candidate of the new one; it is given up only if the drink
 * is served better by it: a pour more in range, or more margin where {@value EarlierRoutes#FORGIVEN_K} K of it are lacking. Among
 * routes that serve the drinks equally well the least changed are taken, before fewer moves, less ice and a later start. A change of
 * time counts 1, another way through places and gear 2. Without news the plan stays the plan.
 *
 * <p>Deterministic but for the time limit; stateless and thread-safe.
 */
public final class Replanner {

    private final ServicePlan plan;
    private final Instant from;

    private Replanner(ServicePlan plan, Instant now) {
        this.plan = plan;
        this.from = wholeMinute(plan.request().startsAt(), now);
    }

    /**
     * Plans anew.
     *
     * @param plan the plan that is being carried out, all of it as planned until now
     * @param now the moment, not before the plan starts; the new plan begins at the next whole minute of the old one
     * @param news what has become known, in order; none leaves the plan as it is
     * @param limits time for planning, and the gap allowed
     * @return what is done from now on, and what is changed
     * @throws IllegalArgumentException if the plan has not begun or all is drunk, or the news names what is not there
     */
    public static Replan replan(ServicePlan plan, Instant now, List<News> news, PlanLimits limits) {
        return replan(plan, now, news, limits, PlanMonitor.NONE);
    }

    /**
     * Plans anew, watched.
     *
     * @param plan the plan that is being carried out, all of it as planned until now
     * @param now the moment, not before the plan starts; the new plan begins at the next whole minute of the old one
     * @param news what has become known, in order; none leaves the plan as it is
     * @param limits time for planning, and the gap allowed
     * @param monitor hears of progress, and may cancel
     * @return what is done from now on, and what is changed
     * @throws IllegalArgumentException if the plan has not begun or all is drunk, or the news names what is not there
     */
    public static Replan replan(
            ServicePlan plan, Instant now, List<News> news, PlanLimits limits, PlanMonitor monitor) {
        if (now.isBefore(plan.request().startsAt())) {
            throw new IllegalArgumentException("re-plan at " + now + ": expected a moment from the start of the plan, "
                    + plan.request().startsAt() + ", on");
        }
        Replanner replanner = new Replanner(plan, now);
        return news.isEmpty() ? replanner.result(plan, List.of(), List.of()) : replanner.replan(news, limits, monitor);
    }

    private static Instant wholeMinute(Instant start, Instant now) {
        Duration since = Duration.between(start, now);
        long minutes = since.toMinutes();
        boolean whole = since.equals(Duration.ofMinutes(minutes));
        return start.plus(Duration.ofMinutes(whole ? minutes : minutes + 1));
    }

    private Replan replan(List<News> news, PlanLimits limits, PlanMonitor monitor) {
        if (plan.bottles().stream().allMatch(bottle -> Resumption.isFinished(bottle.order(), from))) {
            throw new IllegalArgumentException(
                    "re-plan at " + from + ": expected a moment before the last bottle is finished");
        }
        Resumption resumption = new Resumption(plan, from);
        NewsDesk desk = new NewsDesk(plan, from, resumption);
        news.forEach(desk::take);
        PlanRequest request = resumption.request();
        ServicePlan planned = Planner.plan(request, limits, monitor, new EarlierRoutes(plan, request));
        ServicePlan next = continued(planned);
        return result(next, changes(next, desk), desk.readings());
    }

    private Replan result(ServicePlan next, List<Change> changes, List<Trust> readings) {
        List<Instruction> done = plan.instructions().stream()
                .filter(instruction -> instruction.at().isBefore(from))
                .toList();
        List<BottlePlan> finished = plan.bottles().stream()
                .filter(bottle -> Resumption.isFinished(bottle.order(), from))
                .toList();
        return new Replan(next, from, done, finished, changes, readings);
    }

    /** The new plan without what has been done: bottles are opened only once, and what a bath was filled with is on its account. */
    private ServicePlan continued(ServicePlan next) {
        Set<String> opened = new HashSet<>();
        for (BottlePlan bottle : plan.bottles()) {
            if (Resumption.isOpened(bottle.order(), from)) {
                opened.add(bottle.order().id());
            }
        }
        List<Instruction> instructions = new ArrayList<>();
        for (Instruction instruction : next.instructions()) {
            ahead(instruction, opened).ifPresent(instructions::add);
        }
        List<GearUse> uses = new ArrayList<>();
        next.gearUses().forEach(use -> uses.add(next.request().filled().contains(use.gearId()) ? begun(use) : use));
        return new ServicePlan(
                next.request(), next.bottles(), instructions, uses, next.conflicts(), next.notes(), next.chosen());
    }

    private static Optional<Instruction> ahead(Instruction instruction, Set<String> opened) {
        if (instruction.action() != Instruction.Action.SERVE) {
            return Optional.of(instruction);
        }
        List<String> ids = instruction.bottleIds().stream()
                .filter(id -> !opened.contains(id))
                .toList();
        return ids.isEmpty() ? Optional.empty() : Optional.of(instruction.with(ids));
    }

    /** A bath that was filled before has that in its account. */
    private GearUse begun(GearUse use) {
        for (GearUse old : plan.gearUses()) {
            if (old.gearId().equals(use.gearId())) {
                List<GearUse.Added> added = new ArrayList<>();
                old.added().stream().filter(a -> a.at().isBefore(from)).forEach(added::add);
                added.addAll(use.added());
                return new GearUse(
                        use.gearId(),
                        old.filledAt(),
                        old.iceKg(),
                        old.waterKg(),
                        use.iceLeftKg(),
                        use.iceGoneAt(),
                        added);
            }
        }
        return use;
    }

    private List<Change> changes(ServicePlan next, NewsDesk desk) {
        Map<String, BottlePlan> now = new LinkedHashMap<>();
        next.bottles().forEach(bottle -> now.put(bottle.order().id(), bottle));
        List<Change> changes = new ArrayList<>();
        for (BottlePlan old : plan.bottles()) {
            String id = old.order().id();
            BottlePlan bottle = now.remove(id);
            if (bottle != null) {
                new Comparison(old, bottle, from, desk.because(id)).addTo(changes);
            } else if (desk.isRemoved(id)) {
                changes.add(Change.gone(id, desk.because(id)));
            }
        }
        now.forEach((id, bottle) -> changes.add(Change.added(bottle, desk.because(id))));
        return changes;
    }
}
