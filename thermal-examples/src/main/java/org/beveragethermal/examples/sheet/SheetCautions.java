/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.beveragethermal.service.caution.Caution;
import org.beveragethermal.service.caution.CautionReport;
import org.beveragethermal.service.caution.CautionRule;
import org.beveragethermal.service.caution.CautionSubject;
import org.beveragethermal.service.caution.Cautions;
import org.beveragethermal.service.caution.Circumstance;
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.Gear;
import org.beveragethermal.service.plan.GearKind;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.plan.Stay;

/** What the people who carry out a plan should mind: each caution once, the gravest first, with the bottles it concerns. */
final class SheetCautions {

    private final ServicePlan plan;
    private final Map<CautionRule, Caution> gravest = new LinkedHashMap<>();
    private final Map<CautionRule, List<String>> bottles = new LinkedHashMap<>();

    private SheetCautions(ServicePlan plan) {
        this.plan = plan;
        plan.bottles().forEach(this::look);
    }

    /**
     * The cautions of a plan.
     *
     * @param wording a caution in words
     * @param names bottles in words
     */
    static List<String> of(ServicePlan plan, Function<Caution, String> wording, Function<List<String>, String> names) {
        return new SheetCautions(plan).lines(wording, names);
    }

    private void look(BottlePlan bottle) {
        CautionSubject closed = CautionSubject.of(bottle.order().bottle());
        boolean before = isInIce(bottle, false);
        boolean drunk = isInIce(bottle, true);
        if (before || drunk) {
            closed = closed.with(
                    Circumstance.GLASS_IN_ICE, Circumstance.COOLING_ICE_IN_DRINK, Circumstance.MOUTH_UNDER_WATER);
        }
        keep(bottle, Cautions.of(closed));
        if (drunk) {
            keep(bottle, Cautions.of(closed.with(Circumstance.OPENED)));
        }
    }

    private boolean isInIce(BottlePlan bottle, boolean drunk) {
        for (Stay stay : bottle.stays()) {
            Gear gear = plan.request().gear().get(stay.where());
            boolean then = drunk == !stay.from().isBefore(bottle.order().servedAt());
            if (then && gear != null && gear.kind() == GearKind.ICE_BATH) {
                return true;
            }
        }
        return false;
    }

    private void keep(BottlePlan bottle, CautionReport report) {
        for (Caution caution : report.cautions()) {
            gravest.merge(caution.rule(), caution, SheetCautions::graver);
            List<String> ids = bottles.computeIfAbsent(caution.rule(), rule -> new ArrayList<>());
            if (!ids.contains(bottle.order().id())) {
                ids.add(bottle.order().id());
            }
        }
    }

    private static Caution graver(Caution one, Caution other) {
        int signals = one.signal().compareTo(other.signal());
        boolean more = other.value().orElse(0) > one.value().orElse(0);
        return signals < 0 || (signals == 0 && more) ? other : one;
    }

    private List<String> lines(Function<Caution, String> wording, Function<List<String>, String> names) {
        List<String> lines = new ArrayList<>();
        gravest.values().stream()
                .sorted(Comparator.comparing(Caution::signal).reversed())
                .forEach(caution -> lines.add(wording.apply(caution) + concerned(caution.rule(), names)));
        return lines;
    }

    private String concerned(CautionRule rule, Function<List<String>, String> names) {
        List<String> ids = bottles.getOrDefault(rule, List.of());
        return ids.size() == plan.bottles().size() ? "" : " (" + names.apply(ids) + ")";
    }
}
