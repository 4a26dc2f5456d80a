/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
    private final RequestDraft draft;
    private OptionalDouble stockKg = OptionalDouble.empty();

    Resumption(ServicePlan plan, Instant from) {
        this.plan = plan;
        this.from = from;
        this.state = PlanState.of(plan, from);
        this.draft = new RequestDraft(plan.request());
        draft.startsAt = from;
        draft.bottles.clear();
        plan.bottles().forEach(bottle -> remaining(bottle).ifPresent(order -> draft.bottles.put(order.id(), order)));
        draft.gear.replaceAll((id, gear) -> state.isFilled(id) ? state.bath(gear) : gear);
        for (String id : draft.gear.keySet()) {
            if (state.isFilled(id)) {
                draft.filledIceKg.putIfAbsent(id, plan.request().fullIceKg(id));
            }
        }
    }

    PlanState state() {
        return state;
    }

    RequestDraft draft() {
        return draft;
    }

    /** Ice in stock besides what is in baths, instead of what the plan leaves [kg]. */
    void stock(double kg) {
        stockKg = OptionalDouble.of(kg);
    }

    /** Whether a bottle has been served when the new plan begins. */
    static boolean isOpened(BottleOrder order, Instant from) {
        return !order.servedAt().isAfter(from);
    }

    /** Whether nothing more is poured from a bottle when the new plan begins. */
    static boolean isFinished(BottleOrder order, Instant from) {
        return order.pourings().isEmpty()
                ? !order.finishedAt().isAfter(from.plus(NEXT_GLASS))
                : order.pourings().stream().noneMatch(pouring -> pouring.at().isAfter(from));
    }

    /** What is still to be done with a bottle; empty if it is finished. */
    private Optional<BottleOrder> remaining(BottlePlan bottle) {
        BottleOrder order = bottle.order();
        List<Pouring> ahead =
                order.pourings().stream().filter(p -> p.at().isAfter(from)).toList();
        if (isFinished(order, from)) {
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
                bottle.stayAt(from).where(),
                order.bottlePlaces(),
                order.target(),
                served,
                order.servedIn(),
                left.compareTo(NEXT_GLASS) < 0 ? NEXT_GLASS : left,
                ahead,
                state.isAired(order) ? Optional.empty() : order.airing()));
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

    /** What is left of the stock. */
    private IceStock left(Optional<IceStock> stock) {
        double taken = taken();
        double left = stock.map(ice -> ice.kgBy(Duration.between(plan.request().startsAt(), from)) - taken)
                .orElse(0.0);
        double now = Math.max(0, stockKg.orElse(left));
        OptionalDouble cap = OptionalDouble.empty();
        if (stock.isPresent() && stock.get().capKg().isPresent()) {
            cap = OptionalDouble.of(Math.max(now, stock.get().capKg().getAsDouble() - taken));
        }
        return new IceStock(now, stock.map(IceStock::kgPerHour).orElse(0.0), cap);
    }

    /** What the stock has given since the plan began. */
    private double taken() {
        double taken = 0;
        for (GearUse use : plan.gearUses()) {
            boolean before = plan.request().filled().contains(use.gearId());
            taken += !before && state.isFilled(use.gearId()) ? use.iceKg() : 0;
            for (GearUse.Added added : use.added()) {
                boolean ahead = added.at().isBefore(plan.request().startsAt());
                taken += !ahead && added.at().isBefore(from) ? added.iceKg() : 0;
            }
        }
        return taken;
    }
}
