/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.examples.scenario.Bucket;
import org.beveragethermal.examples.scenario.BucketKind;
import org.beveragethermal.examples.scenario.Drink;
import org.beveragethermal.examples.scenario.IceStock;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.Serving;
import org.beveragethermal.examples.scenario.VesselKind;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.service.plan.BottleOrder;
import org.beveragethermal.service.plan.BucketFill;
import org.beveragethermal.service.plan.Gear;
import org.beveragethermal.service.plan.GearKind;
import org.beveragethermal.service.plan.Place;
import org.beveragethermal.service.plan.PlanRequest;

/** Turns scenarios into requests for a plan. */
public final class PlanRequests {

    /** What lies between a bucket's wall and still air: free convection and radiation, about 8 W/(m² K); our round figure. */
    private static final double OUTSIDE_COEFFICIENT = 8;

    private static final double LEAST_WALL_COEFFICIENT = 0.05;
    /** A wall that conducts this well does not matter beside the air. */
    private static final double BARE_WALL_COEFFICIENT = 16_000;

    /** What an open water surface gives to colder air, evaporation included, about 15 W/(m² K); our round figure. */
    private static final double SURFACE_COEFFICIENT = 15;

    private static final double FREEZING_K = 273.15;
    /** A bath of ice and water is one as long as not more of its water than this has frozen; our round figure. */
    private static final double MOST_FROZEN_PART = 0.8;

    private static final double LITRES_PER_CUBIC_METRE = 1000;
    /** A bucket of water is filled to this part of its height with its bottles in it. */
    private static final double FILL_PART = 0.9;

    private PlanRequests() {}

    /**
     * The request for a scenario.
     *
     * <p>The ice stock is divided equally among the buckets for ice. Bottles of one drink are numbered in the order in which
     * they are served. Bottles that no serving needs stay where they are and keep their places in a refrigerator; one that
     * they fill is no means for others.
     *
     * @param scenario the scenario
     * @return what is at hand and what is wanted
     * @throws IllegalArgumentException if something is served at the very start, or if a bucket cannot be filled: its bottles leave no room
     *     for ice or water, the filling water is too cold for a bath of water, or its place is so cold that the bath may freeze before the
     *     last bottle is finished, in one line
     */
    public static PlanRequest from(Scenario scenario) {
        PlanRequest.Builder request = PlanRequest.startingAt(scenario.startsAt());
        for (org.beveragethermal.examples.scenario.Place place : scenario.places()) {
            request.place(new Place(place.id(), place.name(), air(place)));
        }
        for (org.beveragethermal.examples.scenario.Refrigerator item : scenario.refrigerators()) {
            int places = item.capacityBottles() - placesOfUnservedBottles(scenario, item.id());
            if (places > 0) {
                request.gear(new Gear(
                        item.id(),
                        item.name(),
                        GearKind.REFRIGERATOR,
                        Refrigerator.at(kelvins(item.airTemperatureK())),
                        places));
            }
        }
        for (Bucket bucket : scenario.buckets()) {
            request.gear(filled(scenario, bucket));
        }
        scenario.iceStock()
                .ifPresent(stock -> request.ice(org.beveragethermal.service.plan.IceStock.of(stock.massKg())));
        Map<String, Integer> served = new LinkedHashMap<>();
        for (Serving serving : scenario.servings()) {
            for (int i = 0; i < serving.bottles(); i++) {
                int number = served.merge(serving.drinkId(), 1, Integer::sum);
                request.bottle(order(scenario, serving, number));
            }
        }
        return request.build();
    }

    private static int placesOfUnservedBottles(Scenario scenario, String refrigeratorId) {
        return scenario.drinks().stream()
                .filter(drink -> drink.placeId().equals(refrigeratorId))
                .mapToInt(drink -> drink.vessel().bottlePlaces() * unserved(scenario, drink))
                .sum();
    }

    /** How many bottles of a drink no serving needs. */
    static int unserved(Scenario scenario, Drink drink) {
        return drink.count()
                - scenario.servings().stream()
                        .filter(serving -> serving.drinkId().equals(drink.id()))
                        .mapToInt(Serving::bottles)
                        .sum();
    }

    /** The drink of a bottle of a request made here. */
    static String drinkId(String bottleId) {
        return bottleId.substring(0, bottleId.lastIndexOf(' '));
    }

    /** The number of a bottle among those of its drink, from 1. */
    static int number(String bottleId) {
        return Integer.parseInt(bottleId.substring(bottleId.lastIndexOf(' ') + 1));
    }

    private static Air air(org.beveragethermal.examples.scenario.Place place) {
        Map<Duration, Quantity<Temperature>> air = new LinkedHashMap<>();
        Map<Duration, Quantity<Temperature>> walls = new LinkedHashMap<>();
        place.temperatures().forEach(point -> {
            air.put(point.afterStart(), kelvins(point.airTemperatureK()));
            walls.put(point.afterStart(), kelvins(point.radiantTemperatureK()));
        });
        return Air.varying(air).withWalls(walls);
    }

    private static Gear filled(Scenario scenario, Bucket bucket) {
        try {
            return gear(scenario, bucket);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("bucket " + bucket.id() + ": " + e.getMessage(), e);
        }
    }

    private static Gear gear(Scenario scenario, Bucket bucket) {
        Air room = air(scenario.place(bucket.placeId()));
        org.beveragethermal.core.surroundings.Bucket vessel = bucket(bucket);
        double fillingK =
                scenario.fillingWaterTemperatureK().orElseThrow(() -> new IllegalArgumentException("no filling water"));
        boolean ice = bucket.kind() == BucketKind.ICE_AND_WATER;
        Surroundings bath = ice
                ? iceBath(scenario, bucket, vessel, room, fillingK)
                : WaterBath.of(
                        vessel,
                        litres(waterVolumeM3(scenario, bucket, vessel) * LITRES_PER_CUBIC_METRE),
                        kelvins(fillingK),
                        room);
        requireLiquid(scenario, bucket, vessel, bath, fillingK);
        return new Gear(
                bucket.id(),
                bucket.name(),
                ice ? GearKind.ICE_BATH : GearKind.WATER_BATH,
                bath,
                bucket.capacityBottles());
    }

    /** No model tells what a bath does that freezes: one in a place below 0 °C that might, by what it can lose through wall and surface, is refused. */
    private static void requireLiquid(
            Scenario scenario,
            Bucket bucket,
            org.beveragethermal.core.surroundings.Bucket vessel,
            Surroundings bath,
            double fillingK) {
        double coldestK = scenario.place(bucket.placeId()).temperatures().stream()
                .mapToDouble(point -> Math.min(point.airTemperatureK(), point.radiantTemperatureK()))
                .min()
                .orElseThrow();
        double lastS = scenario.servings().stream()
                .mapToLong(serving -> Duration.between(scenario.startsAt(), serving.servedAt())
                        .plus(serving.finishedAfter())
                        .toSeconds())
                .max()
                .orElseThrow();
        double lostW =
                (bucket.wallConductanceWPerK() + SURFACE_COEFFICIENT * vessel.areaM2()) * (FREEZING_K - coldestK);
        if (lostW > 0 && lostW * lastS > mayLoseJ(scenario, bath, fillingK)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "at %.1f °C its bath may freeze within the %.1f h until all is finished: expected a place that is"
                            + " warmer",
                    coldestK - FREEZING_K,
                    lastS / 3600));
        }
    }

    private static double mayLoseJ(Scenario scenario, Surroundings bath, double fillingK) {
        double perKg = Water.liquid().specificHeatCapacity(fillingK) * (fillingK - FREEZING_K);
        if (bath instanceof IceWaterBath icy) {
            double chill = scenario.iceStock()
                    .map(stock -> icy.iceKg()
                            * Ice.specificHeatCapacity(stock.temperatureK())
                            * (FREEZING_K - stock.temperatureK()))
                    .orElse(0.0);
            double frozen = MOST_FROZEN_PART * Ice.latentHeatOfFusion().value();
            return Math.max(0, icy.waterKg() * (perKg + frozen) - chill);
        }
        return bath instanceof WaterBath water ? water.waterKg() * perKg : Double.POSITIVE_INFINITY;
    }

    private static IceWaterBath iceBath(
            Scenario scenario,
            Bucket bucket,
            org.beveragethermal.core.surroundings.Bucket vessel,
            Air room,
            double fillingK) {
        IceStock stock = scenario.iceStock().orElseThrow(() -> new IllegalArgumentException("no ice stock"));
        long sharing = scenario.buckets().stream()
                .filter(other -> other.kind() == BucketKind.ICE_AND_WATER)
                .count();
        VesselKind usual = usualBottle(scenario);
        BucketFill fill = BucketFill.of(
                vessel,
                usual.vessel(),
                bucket.capacityBottles() / usual.bottlePlaces(),
                stock.massKg() / (double) sharing);
        return IceWaterBath.in(vessel, room)
                .ice(kilograms(fill.iceKg()), metres(stock.blockSideM()), kelvins(stock.temperatureK()))
                .water(kilograms(fill.waterKg()), kelvins(fillingK))
                .build();
    }

    private static double waterVolumeM3(
            Scenario scenario, Bucket bucket, org.beveragethermal.core.surroundings.Bucket vessel) {
        VesselKind usual = usualBottle(scenario);
        Vessel bottle = usual.vessel();
        double depth = FILL_PART * vessel.innerHeightM();
        int bottles = bucket.capacityBottles() / usual.bottlePlaces();
        double displaced = bottles
                * bottle.profile()
                        .outerVolumeM3(0, Math.min(depth, bottle.profile().heightM()));
        return Math.max(0.1 * vessel.volumeM3(), vessel.areaM2() * depth - displaced);
    }

    /** The bottle most drinks come in, by number of bottles. */
    private static VesselKind usualBottle(Scenario scenario) {
        Map<VesselKind, Integer> counts = new LinkedHashMap<>();
        for (Drink drink : scenario.drinks()) {
            counts.merge(drink.vessel(), drink.count(), Integer::sum);
        }
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    /** The scenario gives the conductance of the whole way from bath to air; the library wants the wall's own. */
    private static org.beveragethermal.core.surroundings.Bucket bucket(Bucket bucket) {
        var plain = org.beveragethermal.core.surroundings.Bucket.of(
                metres(bucket.innerDiameterM()), metres(bucket.heightM()));
        double whole = bucket.wallConductanceWPerK() / (plain.circumferenceM() * plain.innerHeightM());
        double wall = whole >= OUTSIDE_COEFFICIENT
                ? BARE_WALL_COEFFICIENT
                : Math.max(LEAST_WALL_COEFFICIENT, 1 / (1 / Math.max(whole, 1e-6) - 1 / OUTSIDE_COEFFICIENT));
        return plain.withWall(wattsPerSquareMetreKelvin(wall));
    }

    private static BottleOrder order(Scenario scenario, Serving serving, int number) {
        Drink drink = scenario.drink(serving.drinkId());
        return new BottleOrder(
                drink.id() + " " + number,
                drink.count() == 1 ? drink.name() : drink.name() + ", bottle " + number,
                drink.vessel().vessel().filledWith(drink.beverage(), kelvins(drink.temperatureK())),
                drink.placeId(),
                drink.vessel().bottlePlaces(),
                scenario.targetOf(drink),
                serving.servedAt(),
                serving.placeId(),
                serving.finishedAfter());
    }
}
