/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.service.airing.Airing;
import org.beveragethermal.service.caution.DangerLimits;

/** Bottles that share gear which remembers, on their routes in one scene: what becomes of them, and of the gear. */
final class CoupledRun {

    /** Temperatures while drinking are looked at this often, where pours are not known [s]. */
    private static final double LOOK_S = 15;
    /** Temperatures are looked at for freezing this often [s]. */
    private static final double FREEZING_LOOK_S = 300;
    /** A pour is looked at so long before it is made [s]. */
    private static final double BEFORE_POUR_S = 0.001;

    /** The verdict allows for more than this. */
    private static final NetworkSolver SOLVER = NetworkSolver.standard().withToleranceK(0.02);

    private static final String CARAFE = "carafe of ";

    private final Site site;
    private final Map<BottleOrder, Route> routes;
    private final Set<String> standing;
    private final Map<String, Double> filledS = new LinkedHashMap<>();
    private final List<TopUp> topUps = new ArrayList<>();
    private final double endS;
    private final ScenePrediction run;

    /**
     * A run.
     *
     * @param standing baths that stand there filled from the start, whether or not a bottle goes in
     */
    CoupledRun(Site site, IceSupply ice, Map<BottleOrder, Route> routes, Set<String> standing) {
        this.site = site;
        this.standing = standing;
        this.routes = routes;
        this.endS = routes.keySet().stream()
                .mapToDouble(order -> site.seconds(order.finishedAt()))
                .max()
                .orElseThrow();
        for (Gear gear : site.gear()) {
            if (gear.kind().isFilled() && uses(gear.id())) {
                double filled = Math.max(0, firstS(gear.id()) - Site.FILLED_BEFORE_S);
                boolean already = site.isFilledAtStart(gear.id());
                filledS.put(gear.id(), already ? 0 : Math.max(filled, ice.readyS(gear.id())));
            }
        }
        ScenePrediction filledOnce = scene().predict(Site.duration(endS), SOLVER);
        topUps.addAll(topUps(ice, filledOnce));
        this.run = topUps.isEmpty() ? filledOnce : scene().predict(Site.duration(endS), SOLVER);
    }

    /** Ice that baths want while bottles are in them, as far as the stock has more than all fills. */
    private List<TopUp> topUps(IceSupply ice, ScenePrediction filledOnce) {
        List<TopUp> wanted = new ArrayList<>();
        filledS.forEach((id, fromS) -> {
            if (site.surroundings(id) instanceof IceWaterBath bath && ice.spareKg(endS) > 0) {
                double goneS = filledOnce
                        .iceGone(id)
                        .map(Site::seconds)
                        .filter(gone -> gone < lastS(id))
                        .orElse(lastS(id));
                TopUp.of(
                                id,
                                bath,
                                site.fullIceKg(id),
                                time -> filledOnce.iceKg(id, Site.duration(time)),
                                time -> ice.spareKg(time) / ice.baths(),
                                fromS,
                                lastS(id),
                                goneS)
                        .ifPresent(wanted::add);
            }
        });
        return wanted;
    }

    private boolean uses(String gearId) {
        return routes.values().stream()
                .anyMatch(route ->
                        route.legs().stream().anyMatch(leg -> leg.where().equals(gearId)));
    }

    double firstS(String gearId) {
        return routes.values().stream()
                .flatMap(route -> route.legs().stream())
                .filter(leg -> leg.where().equals(gearId))
                .mapToDouble(Leg::fromS)
                .min()
                .orElse(0);
    }

    private Scene scene() {
        Scene.Builder scene = Scene.builder().startingAfter(site.weather(0));
        Set<String> used = new LinkedHashSet<>(standing);
        routes.forEach((order, route) -> {
            route.legs().forEach(leg -> used.add(leg.where()));
            used.add(order.servedIn());
            order.airing().ifPresent(airing -> used.add(airing.placeId()));
        });
        for (String id : used) {
            scene.gear(id, site.surroundings(id), Site.duration(filledS.getOrDefault(id, 0.0)));
        }
        routes.forEach((order, route) -> add(scene, order, route));
        topUps.forEach(topUp -> topUp.addTo(scene));
        return scene.build();
    }

    private void add(Scene.Builder scene, BottleOrder order, Route route) {
        List<Leg> legs = route.legs();
        double servedS = site.seconds(order.servedAt());
        double readyS = site.seconds(order.readyAt());
        String bottle = order.id();
        String drink = bottle;
        scene.vessel(bottle, order.bottle(), legs.get(0).where());
        Optional<FilledVessel> carafe = order.carafe();
        if (carafe.isPresent()) {
            Airing airing = order.airing().orElseThrow();
            drink = CARAFE + bottle;
            scene.emptyVessel(
                            drink,
                            carafe.get().vessel(),
                            Measures.kelvins(site.airK(airing.placeId(), readyS)),
                            airing.placeId())
                    .pourAll(bottle, Site.duration(readyS), drink);
        }
        for (Leg leg : legs) {
            String moved = leg.fromS() >= servedS ? drink : bottle;
            boolean inCarafe = carafe.isPresent() && leg.fromS() >= readyS && leg.fromS() < servedS;
            if (leg.fromS() > 0 && !inCarafe) {
                scene.move(moved, Site.duration(leg.fromS()), leg.where());
            }
        }
        pour(scene, order, drink);
        // Once it is empty it takes no more part in shared gear.
        double finishedS = site.seconds(order.finishedAt());
        if (finishedS < endS && !legs.get(legs.size() - 1).where().equals(order.servedIn())) {
            scene.move(drink, Site.duration(finishedS), order.servedIn());
        }
    }

    /** Each round but the last leaves less in the bottle. */
    private void pour(Scene.Builder scene, BottleOrder order, String drink) {
        for (int i = 0; i + 1 < order.pourings().size(); i++) {
            Pouring pouring = order.pourings().get(i);
            scene.drink(drink, Site.duration(site.seconds(pouring.at())), Measures.cubicMetres(pouring.volumeM3()));
        }
    }

    /** What becomes of each bottle, in the order of the routes. */
    Map<BottleOrder, Outcome> outcomes() {
        Map<BottleOrder, Outcome> outcomes = new LinkedHashMap<>();
        routes.keySet().forEach(order -> outcomes.put(order, outcome(order)));
        return outcomes;
    }

    private Outcome outcome(BottleOrder order) {
        Prediction drink = run.vessel(order.carafe().isPresent() ? CARAFE + order.id() : order.id());
        List<Double> pours = new ArrayList<>();
        order.pourTimes().forEach(time -> pours.add(kelvins(drink, justBefore(order, time))));
        double coldest = Double.POSITIVE_INFINITY;
        double warmest = Double.NEGATIVE_INFINITY;
        OptionalDouble leaves = OptionalDouble.empty();
        for (double time : looksS(order)) {
            double here = kelvins(drink, time);
            coldest = Math.min(coldest, here);
            warmest = Math.max(warmest, here);
            if (leaves.isEmpty() && !Outcome.inRange(order, here)) {
                leaves = OptionalDouble.of(time);
            }
        }
        return new Outcome(pours, coldest, warmest, leaves);
    }

    /** What is poured has left the bottle a moment later. */
    private double justBefore(BottleOrder order, Instant pour) {
        double timeS = site.seconds(pour);
        return order.pourings().isEmpty() ? timeS : Math.max(0, timeS - BEFORE_POUR_S);
    }

    private static double kelvins(Prediction drink, double timeS) {
        return drink.drinkTemperatureK(timeS).orElseGet(() -> drink.meanTemperatureK(timeS));
    }

    /** Where pours are known they alone count, else all the time from the first glass to the last. */
    private List<Double> looksS(BottleOrder order) {
        List<Double> looks = new ArrayList<>();
        if (!order.pourings().isEmpty()) {
            order.pourings().forEach(pouring -> looks.add(justBefore(order, pouring.at())));
            return looks;
        }
        double finished = site.seconds(order.finishedAt());
        for (double time = site.seconds(order.servedAt()); time < finished; time += LOOK_S) {
            looks.add(time);
        }
        looks.add(finished);
        return looks;
    }

    /** What the model leaves out; bottles of one kind that are in the same places are asked once, as asking takes as long as running. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        Set<Object> asked = new HashSet<>();
        routes.forEach((order, route) -> {
            Set<String> places = new HashSet<>();
            route.legs().forEach(leg -> places.add(leg.where()));
            if (asked.add(List.of(order.bottle().vessel(), order.bottle().liquid(), places, order.airing()))) {
                notes.addAll(run.vessel(order.id()).limits());
                order.carafe()
                        .ifPresent(carafe ->
                                notes.addAll(run.vessel(CARAFE + order.id()).limits()));
            }
        });
        return notes;
    }

    /** Bottles in which ice begins to form before they are served. */
    List<BottleOrder> freezing() {
        return routes.keySet().stream().filter(this::freezes).toList();
    }

    private boolean freezes(BottleOrder order) {
        if (!(order.bottle().liquid() instanceof Beverage beverage)) {
            return false;
        }
        Prediction bottle = run.vessel(order.id());
        double end = site.seconds(order.servedAt());
        for (double time = 0; time <= end; time += FREEZING_LOOK_S) {
            // Once it is decanted there is nothing in the bottle.
            if (bottle.drinkTemperatureK(time).orElse(Double.POSITIVE_INFINITY) < beverage.freezingOnsetK()) {
                return true;
            }
        }
        return false;
    }

    /** The bottles, in the order of the routes. */
    List<BottleOrder> orders() {
        return List.copyOf(routes.keySet());
    }

    /** The first danger limit that a drink oversteps for which its whole course counts. */
    Optional<DangerLimits.Breach> breach(BottleOrder order) {
        if (!Danger.isWatched(site, order)) {
            return Optional.empty();
        }
        int looks = (int) Math.ceil(site.seconds(order.finishedAt()) / FREEZING_LOOK_S);
        double[] times = new double[looks + 1];
        double[] kelvins = new double[looks + 1];
        for (int i = 0; i <= looks; i++) {
            times[i] = Math.min(i * FREEZING_LOOK_S, site.seconds(order.finishedAt()));
            kelvins[i] = drinkK(order, times[i]);
        }
        return Danger.limits(site, order).firstBreach(times, kelvins);
    }

    /** Mean temperature of a bottle's drink at a time, in its bottle or its carafe [K]. */
    double drinkK(BottleOrder order, double timeS) {
        boolean decanted =
                order.airing().filter(Airing::decanted).isPresent() && timeS >= site.seconds(order.readyAt());
        return kelvins(run.vessel(decanted ? CARAFE + order.id() : order.id()), timeS);
    }

    /** Temperature of all the water in a bath, mixed [K]. */
    double waterK(String gearId, double timeS) {
        return run.mixedWaterK(gearId, Site.duration(timeS)).orElseThrow();
    }

    /** Ice and water in a bath [kg]. */
    double bathKg(String gearId, double timeS) {
        return run.gearMassKg(gearId, Site.duration(timeS));
    }

    /** When each bath in use is filled [s]. */
    Map<String, Double> filledS() {
        return filledS;
    }

    /** Ice added to a bath later. */
    List<TopUp> topUps(String gearId) {
        return topUps.stream().filter(topUp -> topUp.gearId().equals(gearId)).toList();
    }

    double iceKg(String gearId, double timeS) {
        return run.iceKg(gearId, Site.duration(timeS));
    }

    /** When there is no ice in a bath any more [s]; empty if there always is. */
    Optional<Double> iceGoneS(String gearId) {
        return run.iceGone(gearId).map(Site::seconds);
    }

    /** When the last bottle leaves gear [s]. */
    double lastS(String gearId) {
        return routes.values().stream()
                .flatMap(route -> route.legs().stream())
                .filter(leg -> leg.where().equals(gearId))
                .mapToDouble(Leg::toS)
                .max()
                .orElse(0);
    }
}
