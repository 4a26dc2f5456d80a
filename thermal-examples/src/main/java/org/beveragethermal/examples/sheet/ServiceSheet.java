/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
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
import org.beveragethermal.service.plan.BottlePlan;
import org.beveragethermal.service.plan.CapacityConflict;
import org.beveragethermal.service.plan.GearKind;
import org.beveragethermal.service.plan.GearUse;
import org.beveragethermal.service.plan.Instruction;
import org.beveragethermal.service.plan.ServicePlan;
import org.beveragethermal.service.target.ServingTarget;

/** A plan as a sheet of plain text, at most 100 columns wide; the same text for any locale, zone and clock. */
public final class ServiceSheet {

    private static final int WIDTH = 98;
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
    private static final String RULE = "-".repeat(WIDTH);

    private final Scenario scenario;
    private final ServicePlan plan;
    private final ReasonWords words;
    private final StringBuilder text = new StringBuilder();

    private ServiceSheet(Scenario scenario, ServicePlan plan) {
        this.scenario = scenario;
        this.plan = plan;
        this.words = new ReasonWords(this::name, this::clock);
    }

    /**
     * Writes the sheet.
     *
     * @param scenario the scenario the plan was made for
     * @param plan the plan
     * @return the sheet, lines ended by line feeds
     */
    public static String text(Scenario scenario, ServicePlan plan) {
        return new ServiceSheet(scenario, plan).write();
    }

    private String write() {
        line("Service sheet: " + scenario.title());
        line(String.format(
                Locale.ROOT,
                "%s, from %s, times in %s",
                DAY.withZone(zone()).format(scenario.startsAt()),
                clock(scenario.startsAt()),
                zone().getId()));
        paragraph("", scenario.note());
        verdict();
        heading("What to do, in order of time");
        plan.instructions().forEach(this::instruction);
        heading("Bottles");
        plan.bottles().forEach(this::bottle);
        ice();
        conflicts();
        heading("Mind");
        cautions().forEach(caution -> paragraph("- ", caution));
        heading("What this sheet does not know");
        limits().forEach(limit -> paragraph("- ", limit));
        return text.toString();
    }

    private ZoneId zone() {
        return scenario.zone();
    }

    private void verdict() {
        long inRange =
                plan.bottles().stream().filter(b -> b.verdict().inRange()).count();
        line("");
        paragraph(
                "",
                String.format(
                        Locale.ROOT,
                        "%d of %d bottles are in their range when poured and until they are finished%s",
                        inRange,
                        plan.bottles().size(),
                        plan.conflicts().isEmpty() ? "." : "; some gear would be too full (see below)."));
    }

    private void instruction(Instruction instruction) {
        String bottles = bottleNames(instruction.bottleIds());
        String where = name(instruction.where());
        String what = switch (instruction.action()) {
            case FILL -> fill(instruction.where());
            case MOVE -> "put " + bottles + " into " + where + latest(instruction);
            case TAKE_OUT -> "take " + bottles + " to " + where + latest(instruction);
            case ADD_ICE -> "add ice to " + where;
            case DECANT -> "decant " + bottles;
            case SERVE -> "pour " + bottles + served(instruction);
            case POUR -> "pour again " + bottles;
        };
        paragraph(clock(instruction.at()) + "  ", what);
        if (instruction.action() == Instruction.Action.MOVE) {
            paragraph("       ", "(" + words.of(instruction.reason()) + ")");
        }
    }

    private String fill(String gearId) {
        GearUse use = plan.gearUses().stream()
                .filter(u -> u.gearId().equals(gearId))
                .findFirst()
                .orElseThrow();
        return use.iceKg() > 0
                ? String.format(
                        Locale.ROOT,
                        "fill %s with %.1f kg of ice and %.1f L of water",
                        name(gearId),
                        use.iceKg(),
                        use.waterKg())
                : String.format(Locale.ROOT, "fill %s with %.1f L of water", name(gearId), use.waterKg());
    }

    private String latest(Instruction instruction) {
        return plans(instruction.bottleIds()).stream()
                .flatMap(p -> p.latestStart().stream())
                .min(Instant::compareTo)
                .filter(latest -> latest.isAfter(instruction.at()))
                .map(latest -> ", at the latest at " + clock(latest))
                .orElse("");
    }

    private String served(Instruction instruction) {
        BottlePlan first = plans(instruction.bottleIds()).get(0);
        String place = name(first.order().servedIn());
        String kept = first.keptIn().equals(first.order().servedIn())
                ? ""
                : "; between pours keep in " + name(first.keptIn());
        return " for " + place + kept;
    }

    private List<BottlePlan> plans(List<String> ids) {
        return plan.bottles().stream().filter(p -> ids.contains(p.order().id())).toList();
    }

    private String bottleNames(List<String> ids) {
        return plans(ids).stream().map(p -> p.order().name()).collect(Collectors.joining(" and "));
    }

    private void bottle(BottlePlan bottle) {
        ServingTarget target = bottle.order().target();
        line(bottle.order().name());
        paragraph(
                "  wanted   ",
                String.format(
                        Locale.ROOT,
                        "%s to %s, aim %s (%s)",
                        celsius(target.lowK()),
                        celsius(target.highK()),
                        celsius(target.aimK()),
                        target.basis()));
        paragraph(
                "  poured   ",
                String.format(
                        Locale.ROOT,
                        "%s at %s; last glass %s at %s; in between %s to %s",
                        clock(bottle.order().servedAt()),
                        celsius(bottle.pouredAtK()),
                        clock(bottle.order().finishedAt()),
                        celsius(bottle.finishedAtK()),
                        celsius(bottle.coldestK()),
                        celsius(bottle.warmestK())));
        paragraph("  verdict  ", verdict(bottle));
        for (int i = 0; i < bottle.reasons().size(); i++) {
            paragraph(
                    i == 0 ? "  why      " : "           ",
                    words.of(bottle.reasons().get(i)));
        }
        line("");
    }

    private String verdict(BottlePlan bottle) {
        return switch (bottle.verdict()) {
            case VERIFIED -> "in range from the first glass to the last";
            case REPAIRED -> "in range from the first glass to the last, after the first choice had been put right";
            case LEAVES_RANGE ->
                "in range when poured, leaves it at "
                        + bottle.leavesRangeAt().map(this::clock).orElse("an unknown time");
            case NOT_REACHED -> "NOT in range when poured";
        };
    }

    private void ice() {
        for (GearUse use : plan.gearUses()) {
            if (use.iceKg() > 0 && scenario.iceStock().isPresent()) {
                heading("Ice and water for " + name(use.gearId()));
                IceStock stock = scenario.iceStock().get();
                double blocks = use.iceKg() / (Ice.density(ZERO_CELSIUS_K) * Math.pow(stock.blockSideM(), 3));
                paragraph(
                        "",
                        String.format(
                                Locale.ROOT,
                                "%.1f kg of ice (about %.0f blocks of %.0f mm; %.1f kg in stock) and %.1f L of water, at %s. "
                                        + "%s",
                                use.iceKg(),
                                blocks,
                                stock.blockSideM() * 1000,
                                stock.massKg(),
                                use.waterKg(),
                                clock(use.filledAt()),
                                iceLeft(use)));
            }
        }
    }

    private String iceLeft(GearUse use) {
        return use.iceGoneAt()
                .map(gone -> "All of it has melted by " + clock(gone) + ".")
                .orElse(String.format(
                        Locale.ROOT, "About %.1f kg are left when its last bottle is finished.", use.iceLeftKg()));
    }

    private void conflicts() {
        if (plan.conflicts().isEmpty()) {
            return;
        }
        heading("Too full");
        for (CapacityConflict conflict : plan.conflicts()) {
            paragraph(
                    "- ",
                    String.format(
                            Locale.ROOT,
                            "%s from %s to %s: %d bottle places needed, %d there (%s)",
                            name(conflict.gearId()),
                            clock(conflict.from()),
                            clock(conflict.to()),
                            conflict.placesNeeded(),
                            conflict.capacity(),
                            bottleNames(conflict.bottleIds())));
        }
    }

    private List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        boolean ice = plan.request().gear().values().stream().anyMatch(g -> g.kind() == GearKind.ICE_BATH);
        if (ice) {
            cautions.add(
                    "Let bottles down into ice gently and look for cracks; never reach into ice with broken glass in it.");
            cautions.add(
                    "Keep the mouths of bottles above the melt water, wipe bottles before pouring, and do not use this ice in"
                            + " drinks.");
        }
        if (plan.bottles().stream().anyMatch(b -> b.order().target().style().sparkling())) {
            cautions.add(
                    "Sparkling bottles are under pressure: open them cold, pointed away from people, holding the stopper.");
        }
        cautions.add(
                "Serve alcohol responsibly. Local codes and licensed practice for food, drink and equipment come first.");
        return cautions;
    }

    private List<String> limits() {
        Set<String> limits = new LinkedHashSet<>(plan.notes());
        if (scenario.refrigerators().stream().anyMatch(r -> r.kind() == RefrigeratorKind.FAN_ASSISTED)) {
            limits.add("Refrigerators with a fan are counted as if their air stood still; they chill faster.");
        }
        limits.add(
                "Refrigerators are taken to hold their temperature, however often they are opened and however much warm wine"
                        + " goes in.");
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

    private String name(String id) {
        var place = plan.request().places().get(id);
        if (place != null) {
            return "the " + place.name();
        }
        var gear = plan.request().gear().get(id);
        return gear == null ? id : "the " + gear.name();
    }

    private String clock(Instant instant) {
        return CLOCK.withZone(zone()).format(instant);
    }

    private static String celsius(double temperatureK) {
        return String.format(Locale.ROOT, "%.1f °C", temperatureK - ZERO_CELSIUS_K);
    }

    private void heading(String heading) {
        if (!text.toString().endsWith("\n\n")) {
            line("");
        }
        line(RULE);
        line(heading);
        line("");
    }

    private void line(String content) {
        text.append(content).append('\n');
    }

    /** Writes words after a prefix, wrapped, further lines indented like the first; a number keeps its unit beside it. */
    private void paragraph(String prefix, String words) {
        String indent = " ".repeat(prefix.length());
        StringBuilder current = new StringBuilder(prefix);
        boolean empty = true;
        for (String word : words.split(" (?!°C)", -1)) {
            if (!empty && current.length() + 1 + word.length() > WIDTH) {
                line(current.toString());
                current = new StringBuilder(indent);
                empty = true;
            }
            if (!empty) {
                current.append(' ');
            }
            current.append(word);
            empty = false;
        }
        line(current.toString());
    }
}
