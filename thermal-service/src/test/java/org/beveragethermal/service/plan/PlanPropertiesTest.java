/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.service.plan.Evenings.START;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.service.choice.CandidateRoute;
import org.beveragethermal.service.choice.CertificateCheck;
import org.beveragethermal.service.choice.Choice;
import org.beveragethermal.service.choice.ChoiceAnswer;
import org.beveragethermal.service.choice.ChoiceItem;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.beveragethermal.service.choice.Load;
import org.beveragethermal.service.choice.SharedGear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every plan, checked from its public data alone. Seeds are the figures at the tests. */
class PlanPropertiesTest {

    /** A mean temperature this far outside a range counts as in it: the verdict's 0.05 K and twice the solver's 0.02 K. */
    private static final double ALLOWED_K = 0.09;

    private static List<Long> provenCost(ServicePlan plan) {
        assertThat(plan.chosen().answer()).isInstanceOf(ChoiceAnswer.Proven.class);
        assertThat(CertificateCheck.fault(plan.chosen().problem(), plan.chosen().answer()))
                .isEmpty();
        return ((ChoiceAnswer.Proven) plan.chosen().answer()).choice().costByLevel();
    }

    private static int compare(List<Long> one, List<Long> other) {
        for (int i = 0; i < one.size(); i++) {
            if (!one.get(i).equals(other.get(i))) {
                return one.get(i).compareTo(other.get(i));
            }
        }
        return 0;
    }

    private static void requireCapacity(ServicePlan plan) {
        Set<Instant> moments = new TreeSet<>();
        plan.bottles().forEach(bottle -> bottle.stays().forEach(stay -> moments.add(stay.from())));
        for (Gear gear : plan.request().gear().values()) {
            for (Instant moment : moments) {
                int taken = plan.bottles().stream()
                        .filter(bottle -> bottle.stays().stream()
                                .anyMatch(stay -> stay.where().equals(gear.id())
                                        && !stay.from().isAfter(moment)
                                        && stay.to().isAfter(moment)))
                        .mapToInt(bottle -> bottle.order().bottlePlaces())
                        .sum();
                assertThat(taken).as("%s at %s", gear.id(), moment).isLessThanOrEqualTo(gear.capacity());
            }
        }
    }

    private static void requireOrder(ServicePlan plan) {
        for (BottlePlan bottle : plan.bottles()) {
            Instant here = START;
            for (Stay stay : bottle.stays()) {
                assertThat(stay.from()).isEqualTo(here);
                assertThat(stay.to()).isAfter(stay.from());
                here = stay.to();
            }
            assertThat(here).isEqualTo(bottle.order().finishedAt());
        }
        assertThat(plan.instructions())
                .allMatch(instruction -> !instruction.at().isBefore(START));
    }

    /** The whole plan in one scene that is put together from the plan's public data. */
    private static ScenePrediction simulated(ServicePlan plan) {
        Scene.Builder scene = Scene.builder();
        plan.request().places().values().forEach(place -> scene.gear(place.id(), place.air()));
        Map<String, GearUse> uses = plan.gearUses().stream().collect(Collectors.toMap(GearUse::gearId, use -> use));
        for (Gear gear : plan.request().gear().values()) {
            GearUse use = uses.get(gear.id());
            if (use != null) {
                scene.gear(gear.id(), gear.surroundings(), Duration.between(START, use.filledAt()));
            } else if (!gear.kind().isFilled()) {
                scene.gear(gear.id(), gear.surroundings());
            }
        }
        Instant end = START;
        for (BottlePlan bottle : plan.bottles()) {
            String id = bottle.order().id();
            scene.vessel(id, bottle.order().bottle(), bottle.stays().get(0).where());
            for (Stay stay : bottle.stays().subList(1, bottle.stays().size())) {
                scene.move(id, Duration.between(START, stay.from()), stay.where());
            }
            end = bottle.order().finishedAt().isAfter(end) ? bottle.order().finishedAt() : end;
        }
        for (BottlePlan bottle : plan.bottles()) {
            boolean inGear = !bottle.keptIn().equals(bottle.order().servedIn());
            if (inGear && bottle.order().finishedAt().isBefore(end)) {
                scene.move(
                        bottle.order().id(),
                        Duration.between(START, bottle.order().finishedAt()),
                        bottle.order().servedIn());
            }
        }
        return scene.build().predict(Duration.between(START, end));
    }

    @ParameterizedTest
    @ValueSource(longs = {811, 812, 813, 814})
    void plansKeepCapacitiesAndTimesAndHoldInOneScene(long seed) {
        ServicePlan plan = Planner.plan(Evenings.request(Evenings.gear(), Evenings.bottles(seed, 6)));
        requireCapacity(plan);
        requireOrder(plan);
        assertThat(plan.conflicts()).isEmpty();
        ScenePrediction scene = simulated(plan);
        int inRange = 0;
        for (BottlePlan bottle : plan.bottles()) {
            for (Poured pour : bottle.pours()) {
                double kelvins = scene.vessel(bottle.order().id())
                        .meanTemperatureK(Duration.between(START, pour.at()).toMillis() / 1000.0);
                assertThat(kelvins).isCloseTo(pour.expected().meanK(), within(0.05));
                if (bottle.verdict().inRange()) {
                    assertThat(kelvins)
                            .isBetween(
                                    bottle.order().target().lowK() - ALLOWED_K,
                                    bottle.order().target().highK() + ALLOWED_K);
                }
            }
            inRange += bottle.verdict().inRange() ? 1 : 0;
        }
        assertThat(inRange).isGreaterThanOrEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(longs = {821, 822, 823})
    void moreGearIsNeverWorseAndOrderMakesNoDifference(long seed) {
        List<BottleOrder> bottles = Evenings.bottles(seed, 5);
        List<Gear> gear = Evenings.gear().subList(0, 1);
        List<Long> few = provenCost(Planner.plan(Evenings.request(gear, bottles)));
        for (Gear more : List.of(Evenings.refrigerator("more", 7, 2), Evenings.bucket("bucket", 4, 2))) {
            List<Gear> all = new ArrayList<>(gear);
            all.add(more);
            List<Long> many = provenCost(Planner.plan(Evenings.request(all, bottles)));
            assertThat(compare(many, few))
                    .as("%s with %s and %s without", many, more.id(), few)
                    .isNotPositive();
            assertThat(provenCost(Planner.plan(Evenings.shuffled(all, bottles, seed))))
                    .isEqualTo(many);
        }
    }

    /** Every combination of candidates is tried, with capacities counted slot by slot. */
    @ParameterizedTest
    @ValueSource(longs = {831, 832, 833, 834, 835, 836})
    void theChoiceIsTheBestOfAllCombinations(long seed) {
        ServicePlan plan = Planner.plan(Evenings.request(
                List.of(Evenings.refrigerator("cold", 5, 1), Evenings.bucket("bucket", 4, 1)),
                Evenings.bottles(seed, 3)));
        ChoiceProblem problem = plan.chosen().problem();
        Choice choice = plan.chosen().answer().found().orElseThrow();
        assertThat(choice.costByLevel()).isEqualTo(best(problem, 0, new ArrayList<>()));
    }

    private static List<Long> best(ChoiceProblem problem, int item, List<CandidateRoute> taken) {
        if (item == problem.items().size()) {
            return fits(problem, taken) ? cost(problem, taken) : List.of();
        }
        List<Long> best = List.of();
        ChoiceItem next = problem.items().get(item);
        for (CandidateRoute route : next.routes()) {
            taken.add(route);
            List<Long> cost = best(problem, item + 1, taken);
            taken.remove(taken.size() - 1);
            best = !cost.isEmpty() && (best.isEmpty() || compare(cost, best) < 0) ? cost : best;
        }
        return best;
    }

    private static List<Long> cost(ChoiceProblem problem, List<CandidateRoute> taken) {
        List<Long> sums = new ArrayList<>();
        for (int level = 0; level < problem.levels().size(); level++) {
            int here = level;
            sums.add(taken.stream().mapToLong(route -> route.costs().get(here)).sum());
        }
        return sums;
    }

    private static boolean fits(ChoiceProblem problem, List<CandidateRoute> taken) {
        for (SharedGear gear : problem.gear()) {
            for (int slot = 0; slot < problem.slots(); slot++) {
                int now = slot;
                int places = taken.stream()
                        .flatMap(route -> route.loads().stream())
                        .filter(load -> load.gearId().equals(gear.id()))
                        .filter(load -> load.firstSlot() <= now && now < load.endSlot())
                        .mapToInt(Load::places)
                        .sum();
                if (places > gear.capacityBySlot().get(slot)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Two buckets that are alike are one resource for the choice; each bottle gets its own place in the end. */
    @Test
    void alikeGearIsSharedOutPieceByPiece() {
        var bath = Evenings.bath(4);
        List<Gear> gear = List.of(
                new Gear("left", "left", GearKind.ICE_BATH, bath, 1),
                new Gear("right", "right", GearKind.ICE_BATH, bath, 1));
        List<BottleOrder> bottles = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            bottles.add(Evenings.order("white " + i, "white-light", 22, "room", 60, "room"));
        }
        ServicePlan plan = Planner.plan(Evenings.request(gear, bottles));
        requireCapacity(plan);
        assertThat(plan.bottles()).extracting(BottlePlan::means).containsExactlyInAnyOrder("left", "right");
        assertThat(plan.works()).isTrue();
    }

    @Test
    void fiveHundredBottlesAndOneBucketGetAnAnswer() {
        List<BottleOrder> bottles = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            bottles.add(Evenings.order("white " + i, "white-light", 22, "room", 60 + 5 * (i % 24), "room"));
        }
        ServicePlan plan = Planner.planWithin(
                Evenings.request(List.of(Evenings.bucket("bucket", 4, 2)), bottles), Duration.ofSeconds(2));
        requireCapacity(plan);
        assertThat(plan.works()).isFalse();
        assertThat(plan.bottles()).anyMatch(bottle -> bottle.verdict().inRange());
        assertThat(plan.bottles())
                .filteredOn(bottle -> bottle.verdict() == Verdict.NOT_REACHED)
                .isNotEmpty()
                .allMatch(bottle -> bottle.reasons().stream()
                        .anyMatch(reason -> reason.code() == Reason.Code.TAKEN
                                || reason.code() == Reason.Code.CLOSEST
                                || reason.code() == Reason.Code.WILL_NOT_DO));
    }
}
