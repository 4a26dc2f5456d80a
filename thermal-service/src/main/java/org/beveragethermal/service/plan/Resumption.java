/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.beveragethermal.core.surroundings.IceWaterBath;

/**
 * A plan as a request that begins at a moment of it: bottles where they are and as warm as they are predicted to be, baths as they are,
 * ice that is left. Used inside one call, never shared.
 */
final class Resumption {

    /** A bottle that is being drunk is poured again this soon at the earliest. */
    private static final Duration NEXT_GLASS = Duration.ofMinutes(1);

    private final ServicePlan plan;
    private final Instant from;
    private final PlanState state;
    private final Set<String> filled;
    private final RequestDraft draft;
    private OptionalDouble stockKg = OptionalDouble.empty();

    Resumption(ServicePlan plan, Instant from) {
        this.plan = plan;
        this.from = from;
        this.state = PlanState.of(plan, from);
        this.draft = new RequestDraft(plan.request());
        this.filled = plan.request().gear().values().stream()
                .map(Gear::id)
                .filter(state::isFilled)
                .collect(Collectors.toSet());
        draft.startsAt = from;
        draft.bottles.clear();
        plan.bottles().forEach(bottle -> remaining(bottle).ifPresent(order -> draft.bottles.put(order.id(), order)));
        gearAsItIs();
    }

    PlanState state() {
        return state;
    }

    RequestDraft draft() {
        return draft;
    }

    Set<String> filled() {
        return filled;
    }

    /** Ice in stock besides what is in baths, instead of what the plan leaves [kg]. */
    void stock(double kg) {
        stockKg = OptionalDouble.of(kg);
    }

    /** Whether a bottle has been served when the new plan begins. */
    static boolean isOpened(BottleOrder order, Instant from) {
        return !order.servedAt().isAfter(from);
    }

    /** What is still to be done with a bottle; empty if it is finished. */
    private Optional<BottleOrder> remaining(BottlePlan bottle) {
        BottleOrder order = bottle.order();
        List<Pouring> ahead =
                order.pourings().stream().filter(p -> p.at().isAfter(from)).toList();
        boolean finished =
                order.pourings().isEmpty() ? !order.finishedAt().isAfter(from.plus(NEXT_GLASS)) : ahead.isEmpty();
        if (finished) {
            return Optional.empty();
        }
        boolean opened = isOpened(order, from);
        Instant served =
                opened ? (ahead.isEmpty() ? from.plus(NEXT_GLASS) : ahead.get(0).at()) : order.servedAt();
        Duration left = Duration.between(served, order.finishedAt());
        return Optional.of(new BottleOrder(
                order.id(),
                order.name(),
                state.drink(bottle),
                PlanState.where(bottle, from),
                order.bottlePlaces(),
                order.target(),
                served,
                order.servedIn(),
                left.compareTo(NEXT_GLASS) < 0 ? NEXT_GLASS : left,
                ahead,
                state.isDecanted(order) ? Optional.empty() : order.airing()));
    }

    /** Baths that are filled come first: their ice is theirs and no longer in stock. */
    private void gearAsItIs() {
        Map<String, Gear> all = new LinkedHashMap<>(draft.gear);
        draft.gear.clear();
        all.values().stream()
                .filter(gear -> filled.contains(gear.id()))
                .forEach(gear -> draft.gear.put(gear.id(), state.bath(gear)));
        all.forEach(draft.gear::putIfAbsent);
    }

    /**
     * The request.
     *
     * @throws IllegalArgumentException if what the news says does not fit together
     */
    PlanRequest request() {
        if (draft.bottles.isEmpty()) {
            throw new IllegalArgumentException("re-plan at " + from + ": expected a bottle that is still to be drunk");
        }
        Optional<IceStock> stock = plan.request().ice();
        if (stock.isPresent() || stockKg.isPresent()) {
            draft.ice = Optional.of(left(stock));
        }
        return draft.build();
    }

    /** What is left of the stock, with the ice in baths, which the planner counts as taken from it. */
    private IceStock left(Optional<IceStock> stock) {
        double inBaths = 0;
        for (Gear gear : draft.gear.values()) {
            if (filled.contains(gear.id()) && gear.surroundings() instanceof IceWaterBath bath) {
                inBaths += bath.iceKg();
            }
        }
        double taken = taken();
        double left = stock.map(ice -> ice.kgBy(Duration.between(plan.request().startsAt(), from)) - taken)
                .orElse(0.0);
        double now = Math.max(0, stockKg.orElse(left)) + inBaths;
        OptionalDouble cap = OptionalDouble.empty();
        if (stock.isPresent() && stock.get().capKg().isPresent()) {
            cap = OptionalDouble.of(Math.max(now, stock.get().capKg().getAsDouble() - taken + inBaths));
        }
        return new IceStock(now, stock.map(IceStock::kgPerHour).orElse(0.0), cap);
    }

    private double taken() {
        double taken = 0;
        for (GearUse use : plan.gearUses()) {
            taken += use.filledAt().isAfter(from) ? 0 : use.iceKg();
            for (GearUse.Added added : use.added()) {
                taken += added.at().isBefore(from) ? added.iceKg() : 0;
            }
        }
        return taken;
    }
}
