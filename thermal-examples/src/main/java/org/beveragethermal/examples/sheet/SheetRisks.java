/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.CapacityConflict;
import org.beveragethermal.service.plan.Expected;
import org.beveragethermal.service.plan.GearUse;
import org.beveragethermal.service.plan.Instruction;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.Poured;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.target.ServingTarget;

/** What could go wrong with a plan that works as predicted: where it has little room. */
final class SheetRisks {

    /** A move that may be this late and no later is named; our choice. */
    private static final Duration SHORT = Duration.ofMinutes(5);

    private final ServicePlan plan;
    private final PlanTexts texts;
    private final Function<List<String>, String> names;

    private SheetRisks(ServicePlan plan, PlanTexts texts, Function<List<String>, String> names) {
        this.plan = plan;
        this.texts = texts;
        this.names = names;
    }

    static List<String> of(ServicePlan plan, PlanTexts texts, Function<List<String>, String> names) {
        SheetRisks risks = new SheetRisks(plan, texts, names);
        List<String> found = new ArrayList<>();
        plan.conflicts().forEach(conflict -> found.add(risks.tooFull(conflict)));
        plan.gearUses().forEach(use -> use.iceGoneAt().ifPresent(gone -> found.add(risks.melted(use, gone))));
        found.addAll(risks.hurried());
        found.addAll(risks.unsure());
        return found;
    }

    private String tooFull(CapacityConflict conflict) {
        return String.format(
                Locale.ROOT,
                "%s would be too full from %s to %s.",
                SheetWords.capital(texts.where(conflict.gearId())),
                texts.clock(conflict.from()),
                texts.clock(conflict.to()));
    }

    private String melted(GearUse use, Instant gone) {
        return "The ice in " + texts.where(use.gearId()) + " is gone at " + texts.clock(gone)
                + "; what goes in after that cools slowly.";
    }

    private List<String> hurried() {
        List<String> found = new ArrayList<>();
        for (Instruction instruction : plan.instructions()) {
            instruction
                    .latest()
                    .map(latest -> Duration.between(instruction.at(), latest))
                    .filter(room -> !room.isNegative() && !room.isZero() && room.compareTo(SHORT) <= 0)
                    .ifPresent(room -> found.add(String.format(
                            Locale.ROOT,
                            "%s must go on its way between %s and %s: %d min.",
                            SheetWords.capital(names.apply(instruction.bottleIds())),
                            texts.clock(instruction.at()),
                            texts.clock(instruction.latest().orElseThrow()),
                            room.toMinutes())));
        }
        return found;
    }

    /** Bottles whose interval at the first glass reaches out of a range that their mean is in; alike ones together. */
    private List<String> unsure() {
        Map<String, List<String>> byDoubt = new LinkedHashMap<>();
        for (BottlePlan bottle : plan.bottles()) {
            Poured first = bottle.pours().get(0);
            String doubt = doubt(bottle.order().target(), first.expected());
            if (first.inRange() && !doubt.isEmpty()) {
                byDoubt.computeIfAbsent(doubt, same -> new ArrayList<>())
                        .add(bottle.order().id());
            }
        }
        List<String> found = new ArrayList<>();
        byDoubt.forEach((doubt, ids) -> found.add(SheetWords.capital(names.apply(ids)) + " " + doubt));
        return found;
    }

    private String doubt(ServingTarget target, Expected expected) {
        boolean cold = expected.low90K() < target.lowK();
        boolean warm = expected.high90K() > target.highK();
        if (!cold && !warm) {
            return "";
        }
        String how = cold && warm
                ? "too cold or too warm"
                : cold
                        ? "colder than " + texts.temperature(target.lowK())
                        : "warmer than " + texts.temperature(target.highK());
        return String.format(
                Locale.ROOT,
                "could be %s when poured (90 %% between %s and %s): check it before you pour.",
                how,
                texts.temperature(expected.low90K()),
                texts.temperature(expected.high90K()));
    }
}
