/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.beveragethermal.examples.sheet.ServiceSheet;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.BottleOrder;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.Fault;
import org.beveragethermal.service.plan.Gear;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.PlanMonitor;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.Poured;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.plan.Stay;
import org.beveragethermal.service.plan.Verdict;

/** Small scenarios that are accepted, planned and written down as a sheet: of the plan is asked what must hold of every plan. */
final class PlanTarget implements FuzzTarget {
    private static final int MOST_BOTTLES = 6;
    private static final PlanLimits LIMITS = PlanLimits.within(Duration.ofSeconds(5));

    @Override
    public String toString() {
        return name();
    }

    @Override
    public String name() {
        return "plans of scenarios";
    }

    @Override
    public List<byte[]> corpus() {
        return Corpus.files("evening.json", "one-bottle.json", "bath.json", "frost.json");
    }

    @Override
    public List<String> words() {
        return List.of();
    }

    @Override
    public Inputs inputs() {
        return new ScenarioTrees(corpus());
    }

    /** The limit of the choice and as much again for predictions, which no limit cuts short. */
    @Override
    public double longestS() {
        return 2 * LIMITS.timeLimit().toSeconds();
    }

    @Override
    public boolean accepts(byte[] input) {
        Optional<ScenarioTarget.Asked> asked = ScenarioTarget.request(input)
                .filter(it -> it.request().bottles().size() <= MOST_BOTTLES);
        if (asked.isEmpty()) {
            return false;
        }
        PlanRequest request = asked.get().request();
        ServicePlan plan = Planner.plan(request, LIMITS, PlanMonitor.NONE);
        Documented.finiteThroughout("bottles", plan.bottles());
        Documented.finiteThroughout("instructions", plan.instructions());
        Documented.finiteThroughout("baths", plan.gearUses());
        List<BottleOrder> planned =
                plan.bottles().stream().map(BottlePlan::order).toList();
        require(planned.equals(request.bottles()), "bottles " + planned);
        plan.bottles().forEach(bottle -> bottle(plan, bottle));
        request.gear().values().forEach(gear -> capacity(plan, gear));
        require(plan.works() == Fault.of(plan).isEmpty(), "faults");
        String sheet = ServiceSheet.text(asked.get().scenario(), plan, new Advice(Fault.of(plan), List.of(), 1, false));
        require(!sheet.contains("NaN") && !sheet.contains("Infinity") && !sheet.contains("null"), sheet);
        return true;
    }

    private static void bottle(ServicePlan plan, BottlePlan bottle) {
        PlanRequest request = plan.request();
        String id = bottle.order().id();
        Instant at = request.startsAt();
        String where = bottle.order().startsIn();
        for (Stay stay : bottle.stays()) {
            require(stay.from().equals(at) && !stay.to().isBefore(at), id + " with stays " + bottle.stays());
            require(
                    request.gear().containsKey(stay.where()) || request.places().containsKey(stay.where()),
                    id + " in " + stay.where());
            require(stay.where().equals(where) || isTold(plan, id, stay), id + " moved untold: " + stay);
            at = stay.to();
            where = stay.where();
        }
        require(at.equals(bottle.order().finishedAt()), id + " until " + at);
        require(bottle.coldestK() <= bottle.warmestK(), id + " coldest and warmest");
        if (bottle.verdict().inRange()) {
            require(bottle.pours().stream().allMatch(Poured::inRange), id + " poured out of range");
        } else {
            require(!bottle.reasons().isEmpty(), id + " out of range without a reason");
        }
        require(
                (bottle.verdict() == Verdict.NOT_REACHED)
                        == !bottle.pours().get(0).inRange(),
                id + " " + bottle.verdict());
    }

    private static boolean isTold(ServicePlan plan, String id, Stay stay) {
        return plan.instructions().stream()
                .anyMatch(told -> told.at().equals(stay.from())
                        && told.where().equals(stay.where())
                        && told.bottleIds().contains(id));
    }

    /** At no moment more than gear holds, unless the plan says so. */
    private static void capacity(ServicePlan plan, Gear gear) {
        TreeSet<Instant> times = new TreeSet<>();
        plan.bottles().forEach(bottle -> bottle.stays().forEach(stay -> times.add(stay.from())));
        for (Instant time : times) {
            int places = plan.bottles().stream()
                    .filter(bottle -> bottle.stays().stream()
                            .anyMatch(stay -> stay.where().equals(gear.id())
                                    && !stay.from().isAfter(time)
                                    && stay.to().isAfter(time)))
                    .mapToInt(bottle -> bottle.order().bottlePlaces())
                    .sum();
            boolean said = plan.conflicts().stream()
                    .anyMatch(conflict -> conflict.gearId().equals(gear.id())
                            && !conflict.from().isAfter(time)
                            && conflict.to().isAfter(time));
            require(places <= gear.capacity() || said, places + " places in " + gear.id() + " at " + time);
        }
    }

    private static void require(boolean condition, String what) {
        if (!condition) {
            throw new AssertionError(what);
        }
    }
}
