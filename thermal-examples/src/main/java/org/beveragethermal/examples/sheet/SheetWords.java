/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.beveragethermal.examples.scenario.Drink;
import org.beveragethermal.examples.scenario.IceStock;
import org.beveragethermal.examples.scenario.RefrigeratorKind;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.GearUse;
import org.beveragethermal.service.plan.PlanTexts;
import org.beveragethermal.service.plan.ServicePlan;

/** Sentences that the sheet as text and the sheet as a page have in common. */
final class SheetWords {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double MILLIMETRES = 1000;

    /** How far the intervals of a sheet can be trusted; the figures are those of the page it names. */
    private static final String INTERVALS =
            "Take intervals of 90 % as too narrow: of 82 measured rows 56 lie inside the library's own"
                    + " (thermal-core/docs/measured.md).";

    private final Scenario scenario;
    private final ServicePlan plan;
    private final PlanTexts texts;

    SheetWords(Scenario scenario, ServicePlan plan, PlanTexts texts) {
        this.scenario = scenario;
        this.plan = plan;
        this.texts = texts;
    }

    /**
     * Ice and water for one bath.
     *
     * @param gear name of the bath
     * @param sentences how much of both, when, and what becomes of it
     */
    record Fill(String gear, String sentences) {}

    /** How many bottles are as wanted, and whether gear is too full. */
    String verdict() {
        long inRange =
                plan.bottles().stream().filter(b -> b.verdict().inRange()).count();
        return String.format(
                Locale.ROOT,
                "%d of %d bottles are in their range when poured and until they are finished%s",
                inRange,
                plan.bottles().size(),
                plan.conflicts().isEmpty() ? "." : "; some gear would be too full (see below).");
    }

    /** A sentence begins with it. */
    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A temperature whose unit stands after the next. */
    static String figure(PlanTexts texts, double temperatureK) {
        return texts.temperature(temperatureK).replace(" °C", "");
    }

    /** Bottles by name, those of one drink together by their numbers. */
    String bottles(List<String> ids) {
        Map<String, List<String>> numbers = new LinkedHashMap<>();
        for (String id : ids) {
            numbers.computeIfAbsent(PlanRequests.drinkId(id), drink -> new ArrayList<>())
                    .add(String.valueOf(PlanRequests.number(id)));
        }
        return numbers.entrySet().stream()
                .map(entry -> {
                    Drink drink = scenario.drink(entry.getKey());
                    String which = drink.count() == 1 ? "" : " " + String.join(", ", entry.getValue());
                    return drink.name() + which;
                })
                .collect(Collectors.joining("; "));
    }

    /** What the ways of an advice are worth. */
    static String found(Advice advice) {
        String stopped = advice.complete() ? "" : "; time ran out before everything was tried";
        return String.format(
                Locale.ROOT,
                advice.ways().isEmpty()
                        ? "Nothing that was tried helps (%d plans were made on trial%s)."
                        : "Each of these is enough by itself (%d plans were made on trial%s).",
                advice.plannerRuns(),
                stopped);
    }

    /** Baths that ice goes into; none where the scenario has no ice. */
    List<Fill> ice() {
        List<Fill> fills = new ArrayList<>();
        for (GearUse use : plan.gearUses()) {
            if (use.iceKg() > 0 && scenario.iceStock().isPresent()) {
                IceStock stock = scenario.iceStock().get();
                double blocks = use.iceKg() / (Ice.density(ZERO_CELSIUS_K) * Math.pow(stock.blockSideM(), 3));
                String sentences = String.format(
                        Locale.ROOT,
                        "%.1f kg of ice (about %.0f blocks of %.0f mm; %.1f kg in stock) and %.1f L of water, at %s. %s",
                        use.iceKg(),
                        blocks,
                        stock.blockSideM() * MILLIMETRES,
                        stock.massKg(),
                        use.waterKg(),
                        texts.clock(use.filledAt()),
                        iceLeft(use));
                fills.add(new Fill(texts.where(use.gearId()), sentences));
            }
        }
        return fills;
    }

    private String iceLeft(GearUse use) {
        return use.iceGoneAt()
                .map(gone -> "All of it has melted by " + texts.clock(gone) + ".")
                .orElse(String.format(
                        Locale.ROOT, "About %.1f kg are left when its last bottle is finished.", use.iceLeftKg()));
    }

    /** What the sheet does not know. */
    List<String> limits() {
        Set<String> limits = new LinkedHashSet<>(plan.notes());
        if (scenario.refrigerators().stream().anyMatch(r -> r.kind() == RefrigeratorKind.FAN_ASSISTED)) {
            limits.add("Refrigerators with a fan are counted as if their air stood still; they chill faster.");
        }
        limits.add(
                "Refrigerators are taken to hold their temperature, however often they are opened and however much warm wine"
                        + " goes in.");
        limits.add(INTERVALS);
        limits.add("Temperatures are means of the whole bottle; what is poured warms further in the glass.");
        limits.add("No sun, draught or moisture on the glass. Drinks are taken by strength alone, without sugar.");
        unused().forEach((name, count) ->
                limits.add(count + " × " + name + " is not needed by any serving and stays where it is."));
        return List.copyOf(limits);
    }

    private Map<String, Integer> unused() {
        Map<String, Integer> unused = new LinkedHashMap<>();
        for (Drink drink : scenario.drinks()) {
            int bottles = PlanRequests.unserved(scenario, drink);
            if (bottles > 0) {
                unused.merge(drink.name(), bottles, Integer::sum);
            }
        }
        return unused;
    }
}
