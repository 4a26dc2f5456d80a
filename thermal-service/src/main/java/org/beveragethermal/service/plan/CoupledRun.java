/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.service.choice.ChoiceProblem;
import org.beveragethermal.service.choice.RouteChooser;

/** Runs the whole plan as one scene with shared gear and reads the verdicts from it. */
final class CoupledRun {

    private static final double ZERO_CELSIUS_K = 273.15;
    /** A mean temperature this far outside its range still counts as in it [K]: less than a thermometer shows. */
    private static final double VERDICT_TOLERANCE_K = 0.05;
    /** Temperatures while drinking are looked at this often. */
    private static final Duration LOOK = Duration.ofSeconds(15);
    /** Temperatures are looked at for freezing this often. */
    private static final Duration FREEZING_LOOK = Duration.ofMinutes(5);
    /** A difference from the prediction for the bottle alone that is worth a sentence [K]. */
    private static final double NOTABLE_K = 0.3;

    private final PlanRequest request;
    private final List<Route> routes;
    private final GearBook book;
    private final Map<String, Duration> filledAfter;
    private final ScenePrediction run;

    CoupledRun(PlanRequest request, List<Route> routes, GearBook book) {
        this.request = request;
        this.routes = routes;
        this.book = book;
        this.filledAfter = filledAfter();
        this.run = scene().predict(Duration.between(request.startsAt(), lastMoment()));
    }

    private Instant lastMoment() {
        return request.bottles().stream()
                .map(BottleOrder::finishedAt)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** For each bath in use, when it is filled. */
    private Map<String, Duration> filledAfter() {
        Map<String, Duration> filled = new LinkedHashMap<>();
        for (Gear gear : request.gear().values()) {
            if (gear.kind().isFilled()) {
                book.entries().stream()
                        .filter(entry -> entry.gearId().equals(gear.id()))
                        .mapToDouble(GearBook.Entry::fromS)
                        .min()
                        .ifPresent(first -> filled.put(
                                gear.id(), Forecast.duration(Math.max(0, first - Forecast.FILLED_BEFORE_S))));
            }
        }
        return filled;
    }

    private Scene scene() {
        Scene.Builder scene = Scene.builder();
        request.places().values().forEach(place -> scene.gear(place.id(), place.air()));
        for (Gear gear : request.gear().values()) {
            if (!gear.kind().isFilled()) {
                scene.gear(gear.id(), gear.surroundings());
            } else if (filledAfter.containsKey(gear.id())) {
                scene.gear(gear.id(), gear.surroundings(), filledAfter.get(gear.id()));
            }
        }
        for (Route route : routes) {
            addBottle(scene, route);
        }
        return scene.build();
    }

    private void addBottle(Scene.Builder scene, Route route) {
        BottleOrder order = route.order();
        boolean atOnce = route.startS().isPresent() && route.startS().getAsDouble() == 0;
        String here = atOnce ? route.means() : order.startsIn();
        scene.vessel(order.id(), order.bottle(), here);
        Duration served = after(order.servedAt());
        if (route.startS().isPresent()
                && !atOnce
                && Forecast.duration(route.startS().getAsDouble()).compareTo(served) < 0) {
            scene.move(order.id(), Forecast.duration(route.startS().getAsDouble()), route.means());
            here = route.means();
        }
        if (!route.keptIn().equals(here)) {
            scene.move(order.id(), served, route.keptIn());
        }
        if (!route.keptIn().equals(order.servedIn()) && order.finishedAt().isBefore(lastMoment())) {
            scene.move(order.id(), after(order.finishedAt()), order.servedIn());
        }
    }

    private Duration after(Instant instant) {
        return Duration.between(request.startsAt(), instant);
    }

    ServicePlan plan() {
        List<BottlePlan> bottles = routes.stream().map(this::bottlePlan).toList();
        Set<String> notes = new LinkedHashSet<>();
        for (Route route : routes) {
            notes.addAll(run.vessel(route.order().id()).limits());
            freezing(route.order()).ifPresent(notes::add);
        }
        return new ServicePlan(
                request, bottles, instructions(), gearUses(), book.conflicts(), List.copyOf(notes), nothingChosen());
    }

    private static ServicePlan.Chosen nothingChosen() {
        ChoiceProblem nothing = new ChoiceProblem(List.of("none"), 1, List.of(), List.of());
        return new ServicePlan.Chosen(nothing, RouteChooser.choose(nothing), 1);
    }

    /** A warning if a bottle is ever colder than its drink begins to freeze; ice in the drink is not modelled. */
    private Optional<String> freezing(BottleOrder order) {
        if (!(order.bottle().liquid() instanceof Beverage beverage)) {
            return Optional.empty();
        }
        Prediction prediction = run.vessel(order.id());
        for (Duration time : looks(Duration.ZERO, prediction.end(), FREEZING_LOOK)) {
            if (at(prediction, time) < beverage.freezingOnsetK()) {
                return Optional.of(order.name() + " becomes colder than its drink begins to freeze ("
                        + String.format(Locale.ROOT, "%.1f °C", beverage.freezingOnsetK() - ZERO_CELSIUS_K)
                        + "): it may freeze and burst; take it out before");
            }
        }
        return Optional.empty();
    }

    private BottlePlan bottlePlan(Route route) {
        BottleOrder order = route.order();
        Prediction prediction = run.vessel(order.id());
        Duration served = after(order.servedAt());
        Duration finished = after(order.finishedAt());
        double poured = at(prediction, served);
        double coldest = poured;
        double warmest = poured;
        Optional<Instant> leaves = Optional.empty();
        for (Duration time : looks(served, finished, LOOK)) {
            double here = at(prediction, time);
            coldest = Math.min(coldest, here);
            warmest = Math.max(warmest, here);
            if (leaves.isEmpty() && !inRange(order, here)) {
                leaves = Optional.of(request.startsAt().plus(time));
            }
        }
        boolean reached = inRange(order, poured);
        Verdict verdict = !reached ? Verdict.NOT_REACHED : leaves.isPresent() ? Verdict.LEAVES_RANGE : Verdict.VERIFIED;
        List<Reason> reasons = new ArrayList<>(route.reasons());
        if (Math.abs(poured - route.pouredK()) > NOTABLE_K) {
            reasons.add(Reason.of(
                    Reason.Code.TOGETHER, new Argument.Temperature(route.pouredK()), new Argument.Temperature(poured)));
        }
        return new BottlePlan(
                order,
                verdict,
                stays(route),
                instant(route.latestStartS()),
                order.pourTimes().stream()
                        .map(time -> poured(order, time, at(prediction, after(time))))
                        .toList(),
                coldest,
                warmest,
                reached ? leaves : Optional.empty(),
                reasons);
    }

    private static Poured poured(BottleOrder order, Instant time, double kelvins) {
        return new Poured(time, Expected.of(kelvins, 0), inRange(order, kelvins));
    }

    private List<Stay> stays(Route route) {
        BottleOrder order = route.order();
        List<Stay> stays = new ArrayList<>();
        Instant here = request.startsAt();
        Instant start = instant(route.startS()).orElse(order.servedAt());
        if (start.isAfter(here)) {
            stays.add(new Stay(order.startsIn(), here, start));
        }
        if (start.isBefore(order.servedAt())) {
            stays.add(new Stay(route.means(), start, order.servedAt()));
        }
        stays.add(new Stay(route.keptIn(), order.servedAt(), order.finishedAt()));
        return stays;
    }

    /** Moments at equal distances, and the last one however near. */
    private static List<Duration> looks(Duration from, Duration to, Duration every) {
        List<Duration> looks = new ArrayList<>();
        for (Duration time = from; time.compareTo(to) < 0; time = time.plus(every)) {
            looks.add(time);
        }
        looks.add(to);
        return looks;
    }

    private static double at(Prediction prediction, Duration time) {
        return prediction.meanTemperatureK(Forecast.seconds(time));
    }

    private static boolean inRange(BottleOrder order, double temperatureK) {
        return temperatureK >= order.target().lowK() - VERDICT_TOLERANCE_K
                && temperatureK <= order.target().highK() + VERDICT_TOLERANCE_K;
    }

    private Optional<Instant> instant(OptionalDouble seconds) {
        return seconds.isPresent()
                ? Optional.of(request.startsAt().plus(Forecast.duration(seconds.getAsDouble())))
                : Optional.empty();
    }

    private List<Instruction> instructions() {
        List<Instruction> all = new ArrayList<>();
        filledAfter.forEach((id, time) -> all.add(new Instruction(
                request.startsAt().plus(time),
                Optional.empty(),
                Instruction.Action.FILL,
                List.of(),
                Optional.empty(),
                id,
                Optional.empty(),
                OptionalDouble.empty(),
                Reason.of(Reason.Code.READY_IN_TIME, new Argument.Span(Forecast.duration(Forecast.FILLED_BEFORE_S))))));
        for (Route route : routes) {
            BottleOrder order = route.order();
            instant(route.startS())
                    .ifPresent(start -> all.add(new Instruction(
                            start,
                            instant(route.latestStartS()).filter(latest -> latest.isAfter(start)),
                            Instruction.Action.MOVE,
                            List.of(order.id()),
                            Optional.of(order.startsIn()),
                            route.means(),
                            Optional.empty(),
                            OptionalDouble.empty(),
                            route.reasons().get(route.reasons().size() - 1))));
            all.add(new Instruction(
                    order.servedAt(),
                    Optional.empty(),
                    Instruction.Action.SERVE,
                    List.of(order.id()),
                    Optional.of(route.means()),
                    route.keptIn(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    route.reasons().get(0)));
        }
        return merged(all);
    }

    /** Equal actions at the same moment become one instruction; bottles for different places are poured apart. */
    private List<Instruction> merged(List<Instruction> all) {
        Map<List<Object>, Instruction> byKey = new LinkedHashMap<>();
        for (Instruction next : all) {
            List<Object> key =
                    List.of(next.at(), next.action(), next.from(), next.where(), next.reason(), pouredFor(next));
            byKey.merge(key, next, (a, b) -> {
                List<String> ids = new ArrayList<>(a.bottleIds());
                ids.addAll(b.bottleIds());
                return new Instruction(
                        a.at(),
                        a.latest(),
                        a.action(),
                        ids,
                        a.from(),
                        a.where(),
                        a.expected(),
                        a.marginK(),
                        a.reason());
            });
        }
        return byKey.values().stream()
                .sorted(Comparator.comparing(Instruction::at).thenComparing(Instruction::action))
                .toList();
    }

    /** Where bottles are drunk that are poured together, which need not be where they are kept. */
    private Set<String> pouredFor(Instruction instruction) {
        return routes.stream()
                .map(Route::order)
                .filter(order -> instruction.action() == Instruction.Action.SERVE
                        && instruction.bottleIds().contains(order.id()))
                .map(BottleOrder::servedIn)
                .collect(Collectors.toSet());
    }

    private List<GearUse> gearUses() {
        List<GearUse> uses = new ArrayList<>();
        filledAfter.forEach((id, time) -> {
            Gear gear = request.gear().get(id);
            if (gear != null) {
                uses.add(use(gear, time));
            }
        });
        return uses;
    }

    private GearUse use(Gear gear, Duration filled) {
        double lastS = book.entries().stream()
                .filter(entry -> entry.gearId().equals(gear.id()))
                .mapToDouble(GearBook.Entry::toS)
                .max()
                .orElse(0);
        return new GearUse(
                gear.id(),
                request.startsAt().plus(filled),
                gear.surroundings() instanceof IceWaterBath bath ? bath.iceKg() : 0,
                waterKg(gear),
                run.iceKg(gear.id(), Forecast.duration(lastS)),
                run.iceGone(gear.id()).map(gone -> request.startsAt().plus(gone)),
                List.of());
    }

    private static double waterKg(Gear gear) {
        if (gear.surroundings() instanceof IceWaterBath bath) {
            return bath.waterKg();
        }
        return gear.surroundings() instanceof WaterBath bath ? bath.waterKg() : 0;
    }
}
