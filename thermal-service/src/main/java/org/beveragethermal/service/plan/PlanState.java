/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.beveragethermal.materials.units.Measures.cubicMetres;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.kilograms;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.vessel.FilledVessel;

/** Where bottles are and how warm, and what has become of baths, at a moment of a plan, as its coupled run predicts it. */
final class PlanState {

    private static final double ZERO_CELSIUS_K = 273.15;
    /** Nothing is predicted better than this [K]; our choice. */
    private static final double LEAST_SIGMA_K = 0.2;
    /** How far apart two moments are from which a rate is taken [s]. */
    private static final double RATE_S = 60;

    private final ServicePlan plan;
    private final Site site;
    private final double atS;
    private final CoupledRun run;

    private PlanState(ServicePlan plan, Instant at) {
        this.plan = plan;
        this.site = new Site(plan.request());
        this.atS = site.seconds(at);
        this.run = run(site, plan);
    }

    static PlanState of(ServicePlan plan, Instant at) {
        return new PlanState(plan, at);
    }

    /** The whole of a plan in one run. */
    static CoupledRun run(Site site, ServicePlan plan) {
        Map<BottleOrder, Route> routes = new LinkedHashMap<>();
        plan.bottles().forEach(bottle -> routes.put(bottle.order(), route(site, bottle)));
        return new CoupledRun(
                site, new IceSupply(plan.request()), routes, plan.request().filled());
    }

    static Route route(Site site, BottlePlan bottle) {
        List<Leg> legs = new ArrayList<>();
        for (Stay stay : bottle.stays()) {
            legs.add(new Leg(stay.where(), site.seconds(stay.from()), site.seconds(stay.to())));
        }
        return Route.of(Route.Kind.STAY, legs.toArray(new Leg[0]));
    }

    /** What is left of a bottle, or of its carafe, as warm as it is. */
    FilledVessel drink(BottlePlan bottle) {
        BottleOrder order = bottle.order();
        FilledVessel full = isAired(order) ? order.carafe().orElse(order.bottle()) : order.bottle();
        double left = full.liquidVolumeM3();
        for (Pouring pouring : order.pourings()) {
            left -= site.seconds(pouring.at()) <= atS ? pouring.volumeM3() : 0;
        }
        double temperatureK = run.drinkK(order, atS);
        return left < full.liquidVolumeM3() && left > 0
                ? full.vessel().filledWith(full.liquid(), cubicMetres(left), kelvins(temperatureK))
                : full.atTemperature(kelvins(temperatureK));
    }

    /** Whether it has been decanted or opened to stand. */
    boolean isAired(BottleOrder order) {
        return order.airing().isPresent() && site.seconds(order.readyAt()) <= atS;
    }

    /** How sure a predicted temperature is: what it would be off if everything went faster or slower since the bottle came there. */
    double sigmaK(BottlePlan bottle) {
        double since = 0;
        for (Stay stay : bottle.stays()) {
            double from = site.seconds(stay.from());
            since = from <= atS ? from : since;
        }
        double before = Math.max(since, atS - RATE_S);
        double rate = before < atS
                ? (run.drinkK(bottle.order(), atS) - run.drinkK(bottle.order(), before)) / (atS - before)
                : 0;
        return Math.hypot(LEAST_SIGMA_K, Forecaster.SPEED_SIGMA * rate * (atS - since));
    }

    /** Whether a bath has been filled before. */
    boolean isFilled(String gearId) {
        return site.isFilledAtStart(gearId)
                || plan.gearUses().stream()
                        .anyMatch(use -> use.gearId().equals(gearId) && site.seconds(use.filledAt()) < atS);
    }

    /** A bath that has been filled, as it is: its water mixed. */
    Gear bath(Gear gear) {
        Surroundings now = now(gear);
        GearKind kind = now instanceof IceWaterBath ? gear.kind() : GearKind.WATER_BATH;
        return new Gear(gear.id(), gear.name(), kind, now, gear.capacity(), gear.windows());
    }

    private Surroundings now(Gear gear) {
        double waterK = Math.max(ZERO_CELSIUS_K, run.waterK(gear.id(), atS));
        if (gear.surroundings() instanceof IceWaterBath bath) {
            double iceKg = run.iceKg(gear.id(), atS);
            double waterKg = run.bathKg(gear.id(), atS) - iceKg;
            return bath.leaving(kilograms(iceKg), kilograms(waterKg), kelvins(waterK));
        }
        return gear.surroundings() instanceof WaterBath bath
                ? bath.startingAt(kelvins(Math.max(ZERO_CELSIUS_K + 0.5, waterK)))
                : Objects.requireNonNull(gear.surroundings());
    }
}
