/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes down what is to be done, in order of time. */
final class InstructionWriter {

    private final Site site;
    private final Planning.Round round;
    private final Map<BottleOrder, BottlePlan> bottles;
    private final List<GearUse> uses;
    private final Map<List<Object>, Instruction> byKey = new LinkedHashMap<>();

    InstructionWriter(Site site, Planning.Round round, Map<BottleOrder, BottlePlan> bottles, List<GearUse> uses) {
        this.site = site;
        this.round = round;
        this.bottles = bottles;
        this.uses = uses;
    }

    List<Instruction> instructions() {
        uses.forEach(this::fill);
        bottles.forEach(this::bottle);
        return byKey.values().stream()
                .sorted(Comparator.comparing(Instruction::at).thenComparing(Instruction::action))
                .toList();
    }

    private void fill(GearUse use) {
        CoupledRun bath = Objects.requireNonNull(round.together().baths().get(use.gearId()));
        if (!site.isFilledAtStart(use.gearId())) {
            Duration before = Duration.between(use.filledAt(), site.instant(bath.firstS(use.gearId())));
            Reason inTime = Site.seconds(before) < Site.FILLED_BEFORE_S
                    ? Reason.of(Reason.Code.FILLED_LATE)
                    : Reason.of(Reason.Code.READY_IN_TIME, new Argument.Span(before));
            tend(use.gearId(), use.filledAt(), Instruction.Action.FILL, inTime);
        }
        for (TopUp topUp : bath.topUps(use.gearId())) {
            Reason gone = Reason.of(Reason.Code.ICE_RUNS_OUT, new Argument.Moment(site.instant(topUp.goneS())));
            tend(use.gearId(), site.instant(topUp.atS()), Instruction.Action.ADD_ICE, gone);
        }
    }

    private void tend(String gearId, Instant at, Instruction.Action action, Reason reason) {
        Instruction next = new Instruction(
                at,
                Optional.empty(),
                action,
                List.of(),
                Optional.empty(),
                gearId,
                Optional.empty(),
                OptionalDouble.empty(),
                reason);
        byKey.put(List.of(next), next);
    }

    private void bottle(BottleOrder order, BottlePlan plan) {
        List<Stay> stays = plan.stays();
        String from = order.startsIn();
        for (int i = 0; i < stays.size(); i++) {
            Stay stay = stays.get(i);
            boolean moved = i > 0 || !stay.where().equals(order.startsIn());
            if (moved && !stay.from().equals(order.servedAt())) {
                add(order, plan, moving(order, plan, stay, from, i));
            }
            from = stay.where();
        }
        order.airing()
                .ifPresent(airing -> add(
                        order,
                        plan,
                        instruction(
                                order,
                                plan,
                                new Stay(airing.placeId(), order.readyAt(), order.servedAt()),
                                airing.decanted() ? Instruction.Action.DECANT : Instruction.Action.OPEN,
                                plan.means(),
                                Reason.of(Reason.Code.AIRED, new Argument.Span(airing.before())))));
        Stay kept = new Stay(plan.keptIn(), order.servedAt(), order.finishedAt());
        add(
                order,
                plan,
                instruction(
                        order,
                        plan,
                        kept,
                        Instruction.Action.SERVE,
                        plan.means(),
                        plan.reasons().get(0)));
        for (int i = 1; i < order.pourings().size(); i++) {
            Stay again = new Stay(plan.keptIn(), order.pourings().get(i).at(), order.finishedAt());
            add(
                    order,
                    plan,
                    instruction(
                            order, plan, again, Instruction.Action.POUR, plan.keptIn(), Reason.of(Reason.Code.SERVED)));
        }
    }

    private Instruction moving(BottleOrder order, BottlePlan plan, Stay stay, String from, int number) {
        boolean out = site.gear(from).isPresent() && site.gear(stay.where()).isEmpty();
        boolean drunk = stay.from().isAfter(order.servedAt());
        Reason reason = plan.reasons().get(drunk ? 0 : plan.reasons().size() - 1);
        boolean last = !drunk && plan.startAt().filter(stay.from()::equals).isPresent();
        boolean gearLeaves = out
                && !last
                && number > 0
                && site.gear(from).orElseThrow().windows().stream()
                        .anyMatch(window -> window.to().equals(stay.from()));
        return instruction(
                order,
                plan,
                stay,
                out ? Instruction.Action.TAKE_OUT : Instruction.Action.MOVE,
                from,
                gearLeaves
                        ? Reason.of(Reason.Code.GEAR_LEAVES, new Argument.Where(from), new Argument.Moment(stay.from()))
                        : reason);
    }

    private Instruction instruction(
            BottleOrder order, BottlePlan plan, Stay stay, Instruction.Action action, String from, Reason reason) {
        Poured next = plan.pours().stream()
                .filter(pour -> !pour.at().isBefore(stay.from()))
                .findFirst()
                .orElse(plan.pours().get(plan.pours().size() - 1));
        boolean last = plan.startAt().filter(stay.from()::equals).isPresent()
                && (action == Instruction.Action.MOVE || action == Instruction.Action.TAKE_OUT);
        return new Instruction(
                stay.from(),
                last ? plan.latestStart().filter(latest -> latest.isAfter(stay.from())) : Optional.empty(),
                action,
                List.of(order.id()),
                Optional.of(from),
                stay.where(),
                Optional.of(next.expected()),
                OptionalDouble.of(order.target().marginK(next.expected().meanK())),
                reason);
    }

    /** Equal actions at the same moment become one instruction; bottles for different tables are poured apart. */
    private void add(BottleOrder order, BottlePlan plan, Instruction next) {
        boolean poured = next.action() == Instruction.Action.SERVE || next.action() == Instruction.Action.POUR;
        List<Object> key = List.of(
                next.at(),
                next.action(),
                Objects.requireNonNull(next.from()),
                next.where(),
                next.latest(),
                poured ? order.servedIn() : "",
                plan.order().target().style());
        byKey.merge(key, next, InstructionWriter::joined);
    }

    private static Instruction joined(Instruction one, Instruction other) {
        List<String> ids = new ArrayList<>(one.bottleIds());
        ids.addAll(other.bottleIds());
        Instruction tight = one.marginK().orElse(0) <= other.marginK().orElse(0) ? one : other;
        return new Instruction(
                one.at(),
                one.latest(),
                one.action(),
                ids,
                one.from(),
                one.where(),
                tight.expected(),
                tight.marginK(),
                one.reason());
    }
}
