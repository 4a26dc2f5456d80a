/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.cubicMetres;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.kilopascals;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;

/** Vessels, drinks, gear and scenes drawn at random; the same seed draws the same. */
final class RandomScenes {

    static final double ZERO = 273.15;

    private RandomScenes() {}

    /** A piece of gear and the temperatures that it brings along: its air, walls, water and ice. */
    record Gear(Surroundings surroundings, List<Double> sourcesK) {}

    /** A scene, how long it runs, and the temperatures at the start and of all sources. */
    record Drawn(Scene scene, Duration horizon, Map<String, VesselModel> models, List<Double> sourcesK) {

        double lowestK() {
            return sourcesK.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        }

        double highestK() {
            return sourcesK.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        }
    }

    static double between(double low, double high, SplittableRandom random) {
        return low + (high - low) * random.nextDouble();
    }

    static double logBetween(double low, double high, SplittableRandom random) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    static Beverage drink(SplittableRandom random) {
        return switch (random.nextInt(9)) {
            case 0 -> Beverage.wine(percentByVolume(between(9, 15, random)));
            case 1 -> Beverage.sparklingWine(percentByVolume(between(10, 13, random)));
            case 2 -> Beverage.beer(percentByVolume(between(3, 8, random)));
            case 3 -> Beverage.spirit(percentByVolume(between(38, 50, random)));
            case 4 -> Beverage.softDrink(gramsPerLitre(between(20, 110, random)));
            case 5 -> Beverage.juice(percent(between(8, 14, random)));
            case 6 -> Beverage.milk(percent(between(0.5, 4, random)));
            case 7 -> Beverage.sake(percentByVolume(between(14, 16, random)));
            default -> Beverage.water();
        };
    }

    /** A bottle: a plain body, a shoulder and a neck, or no shoulder at all. */
    static Vessel vessel(SplittableRandom random) {
        double radius = between(0.025, 0.055, random);
        double height = between(0.12, 0.35, random);
        double wall = between(0.0015, 0.004, random);
        List<Station> stations = new ArrayList<>();
        stations.add(new Station(0, radius, wall));
        if (random.nextInt(3) > 0) {
            double shoulder = height * between(0.5, 0.7, random);
            stations.add(new Station(shoulder, radius, wall));
            stations.add(new Station(shoulder + 0.2 * height, between(0.3, 0.5, random) * radius, wall));
            stations.add(new Station(height, between(0.25, 0.3, random) * radius, wall));
        } else {
            stations.add(new Station(height, radius, wall));
        }
        Profile profile = Profile.of(stations, between(0.003, 0.006, random), 0);
        return Vessel.builder("drawn")
                .shape(VesselShape.OTHER)
                .profile(profile)
                .wall(random.nextInt(4) == 0 ? Solids.stainlessSteel() : Solids.sodaLimeGlass())
                .nominalVolume(cubicMetres(0.9 * profile.brimfulVolumeM3()))
                .build();
    }

    /** A vessel with a drink of 4 °C to 35 °C that fills most of it. */
    static FilledVessel filled(SplittableRandom random) {
        Vessel vessel = vessel(random);
        return vessel.filledWith(
                drink(random),
                cubicMetres(between(0.5, 0.93, random) * vessel.brimfulVolumeM3()),
                celsius(between(4, 35, random)));
    }

    static Gear room(SplittableRandom random) {
        double air = between(3, 38, random);
        Air room = Air.at(celsius(air));
        if (random.nextBoolean()) {
            return new Gear(room, List.of(ZERO + air));
        }
        double walls = between(3, 38, random);
        return new Gear(
                room.withWalls(celsius(walls)).withPressure(kilopascals(between(80, 105, random))),
                List.of(ZERO + air, ZERO + walls));
    }

    static Gear gear(SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> room(random);
            case 1 -> {
                double cold = between(2, 15, random);
                yield new Gear(Refrigerator.at(celsius(cold)), List.of(ZERO + cold));
            }
            case 2 -> waterBath(random);
            default -> iceWaterBath(random);
        };
    }

    static Bucket bucket(SplittableRandom random) {
        return Bucket.of(millimetres(between(220, 400, random)), millimetres(between(200, 450, random)))
                .withWall(wattsPerSquareMetreKelvin(logBetween(0.5, 500, random)));
    }

    private static Agitation agitation(SplittableRandom random) {
        return random.nextBoolean() ? Agitation.STILL : Agitation.stirred(metresPerSecond(between(0.03, 0.3, random)));
    }

    static Gear waterBath(SplittableRandom random) {
        Bucket bucket = bucket(random);
        Gear room = room(random);
        double water = between(1, 40, random);
        List<Double> sources = new ArrayList<>(room.sourcesK());
        sources.add(ZERO + water);
        return new Gear(
                WaterBath.of(bucket, cubicMetres(between(0.2, 0.6, random) * bucket.volumeM3()), celsius(water), (Air)
                                room.surroundings())
                        .with(agitation(random)),
                sources);
    }

    static Gear iceWaterBath(SplittableRandom random) {
        Bucket bucket = bucket(random);
        Gear room = room(random);
        double water = between(1, 25, random);
        double ice = -between(0, 12, random);
        double kilograms = 1000 * bucket.volumeM3() * between(0.2, 0.6, random);
        double icePart = between(0.1, 0.6, random);
        List<Double> sources = new ArrayList<>(room.sourcesK());
        sources.add(ZERO + water);
        sources.add(ZERO + ice);
        // Ice melts into water of 0 °C.
        sources.add(ZERO);
        return new Gear(
                IceWaterBath.in(bucket, (Air) room.surroundings())
                        .ice(kilograms(icePart * kilograms), millimetres(between(10, 40, random)), celsius(ice))
                        .water(kilograms((1 - icePart) * kilograms), celsius(water))
                        .agitation(agitation(random))
                        .build(),
                sources);
    }

    /** Mostly lumped contents, else a few slices or shells. */
    static VesselModel model(SplittableRandom random) {
        return switch (random.nextInt(5)) {
            case 0 -> VesselModel.axial(3 + random.nextInt(4));
            case 1 -> VesselModel.radial(3 + random.nextInt(4));
            default -> VesselModel.lumped();
        };
    }

    private static Posture posture(SplittableRandom random) {
        return random.nextInt(4) == 0 ? Posture.INVERTED : Posture.UPRIGHT;
    }

    /** One or two vessels, a room and one or two more pieces of gear, up to two moves each, 10 to 60 minutes. */
    static Drawn scene(SplittableRandom random) {
        Map<String, Gear> gear = new LinkedHashMap<>();
        gear.put("room", room(random));
        for (int i = 0; i <= random.nextInt(2); i++) {
            gear.put("gear " + i, gear(random));
        }
        List<String> places = List.copyOf(gear.keySet());
        Scene.Builder builder = Scene.builder();
        List<Double> sources = new ArrayList<>();
        gear.forEach((id, piece) -> {
            builder.gear(id, piece.surroundings());
            sources.addAll(piece.sourcesK());
        });
        Duration horizon = Duration.ofSeconds(600 + random.nextInt(3000));
        Map<String, VesselModel> models = new LinkedHashMap<>();
        for (int i = 0; i <= random.nextInt(2); i++) {
            String id = "vessel " + i;
            FilledVessel vessel = filled(random);
            sources.add(vessel.temperatureK());
            models.put(id, model(random));
            builder.vessel(
                    id,
                    vessel,
                    places.get(places.size() - 1),
                    models.getOrDefault(id, VesselModel.lumped()),
                    posture(random));
            Set<Integer> times = new LinkedHashSet<>();
            for (int move = 0; move < random.nextInt(3); move++) {
                times.add(60 + random.nextInt((int) horizon.toSeconds() - 60));
            }
            for (int time : times) {
                builder.move(id, Duration.ofSeconds(time), places.get(random.nextInt(places.size())), posture(random));
            }
        }
        return new Drawn(builder.build(), horizon, models, sources);
    }

    /** All nodes of a run: those at which a path ends at some time. */
    static Set<Node> nodes(Trajectory run) {
        Set<Node> nodes = new LinkedHashSet<>();
        for (int i = 0; i <= 20; i++) {
            run.paths(run.endS() * i / 20)
                    .forEach(path -> path.ends().forEach(end -> {
                        if (end instanceof Node node) {
                            nodes.add(node);
                        }
                    }));
        }
        return nodes;
    }
}
