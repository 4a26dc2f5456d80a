/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.LongSupplier;
import org.beveragethermal.service.choice.ChoiceAnswer;

/** Plans made on trial: counts them and stops when time is up. */
final class Trials {

    private final ServicePlan before;
    private final PlanLimits limits;
    private final LongSupplier nanoClock;
    private final long deadline;
    private final PlanMonitor monitor;
    private int runs;
    private boolean timeUp;

    Trials(ServicePlan before, PlanLimits limits, PlanMonitor monitor, LongSupplier nanoClock) {
        this.before = before;
        this.limits = limits;
        this.nanoClock = nanoClock;
        this.deadline = nanoClock.getAsLong() + limits.timeLimit().toNanos();
        this.monitor = monitor;
    }

    int runs() {
        return runs;
    }

    boolean timeUp() {
        return timeUp;
    }

    /** The plan with a change; empty if the request does not fit together with it, or time is up. */
    private Optional<ServicePlan> plan(PlanAdvice change) {
        long left = deadline - nanoClock.getAsLong();
        if (left <= 0) {
            timeUp = true;
            return Optional.empty();
        }
        PlanRequest changed;
        try {
            changed = change.appliedTo(before.request());
        } catch (IllegalArgumentException e) {
            // A change may ask for what cannot be, such as a start before gear is there.
            return Optional.empty();
        }
        runs++;
        PlanLimits rest = new PlanLimits(Duration.ofNanos(left), limits.relativeGap());
        return Optional.of(new Planning(changed, rest, monitor, Earlier.NONE, nanoClock).plan());
    }

    /** Whether with a change some bottles are in range, what is shared suffices, nothing of theirs is too full and no other bottle is worse off. */
    boolean helps(Set<String> bottleIds, PlanAdvice change) {
        return plan(change).map(plan -> helps(bottleIds, plan)).orElse(false);
    }

    private boolean helps(Set<String> bottleIds, ServicePlan plan) {
        Map<String, Verdict> old = new HashMap<>();
        before.bottles().forEach(bottle -> old.put(bottle.order().id(), bottle.verdict()));
        for (BottlePlan bottle : plan.bottles()) {
            Verdict was = old.getOrDefault(bottle.order().id(), Verdict.VERIFIED);
            boolean wanted = was.inRange() || bottleIds.contains(bottle.order().id());
            if (wanted ? !bottle.verdict().inRange() : bottle.verdict().compareTo(was) > 0) {
                return false;
            }
        }
        return !(plan.chosen().answer() instanceof ChoiceAnswer.Infeasible)
                && plan.conflicts().size() <= before.conflicts().size()
                && plan.conflicts().stream()
                        .noneMatch(c -> c.bottleIds().stream().anyMatch(bottleIds::contains));
    }

    /**
     * The least change of a kind that helps: steps are doubled until one does, then the gap is halved.
     *
     * @param most the largest number of steps that is tried
     * @param change the change of so many steps
     */
    Optional<PlanAdvice> least(int most, Set<String> bottleIds, IntFunction<PlanAdvice> change) {
        int fails = 0;
        int step = 1;
        while (!helps(bottleIds, change.apply(step))) {
            if (step == most || timeUp) {
                return Optional.empty();
            }
            fails = step;
            step = Math.min(most, 2 * step);
        }
        while (step - fails > 1) {
            int middle = (step + fails) / 2;
            if (helps(bottleIds, change.apply(middle))) {
                step = middle;
            } else {
                fails = middle;
            }
        }
        return Optional.of(change.apply(step));
    }
}
