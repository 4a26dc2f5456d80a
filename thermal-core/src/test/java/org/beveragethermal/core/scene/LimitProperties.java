/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.core.scene.RandomScenes.ZERO;
import static org.beveragethermal.core.scene.RandomScenes.between;
import static org.beveragethermal.core.scene.RandomScenes.logBetween;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.cubicMetres;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.beveragethermal.core.conduction.AxisymmetricBlock;
import org.beveragethermal.core.conduction.LayerStack;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.layered.StratifiedLiquid;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.Resistance;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.Closure;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;

/** Descriptions that must agree in a limit: one temperature and many, coarse and fine, two bottles and one. */
final class LimitProperties {

    private static final NetworkSolver TIGHT = NetworkSolver.standard().withToleranceK(1e-7);

    /** Passes next to nothing: one temperature and shells at rest know no closure, slices do. */
    private static final Closure INSULATING = Closure.of(
            "limit",
            new Solid(
                    "limit",
                    figure("density", 1, "kg/m³"),
                    figure("thermal conductivity", 1e-9, "W/(m K)"),
                    figure("specific heat capacity", 1, "J/(kg K)"),
                    figure("emissivity", 0, "1")),
            millimetres(20),
            millimetres(0));

    private static Constant figure(String what, double value, String unit) {
        Source source = new Source("limit", "a limit, not a material", Source.Kind.OWN_ASSUMPTION);
        return new Constant(what, value, unit, Uncertainty.exact(), source);
    }

    private static LayerStack.Builder geometry(int kind) {
        return switch (kind) {
            case 0 -> LayerStack.plane(0.02, 0);
            case 1 -> LayerStack.cylinder(0.2, 0);
            default -> LayerStack.sphere(0);
        };
    }

    private static Trajectory cooled(LayerStack body, double coefficient, double outsideK, double endS) {
        List<Path> paths = new ArrayList<>(body.paths());
        paths.add(JunctionPath.of(
                "film",
                body.outerSurface(),
                Link.of(
                        Boundary.constant("medium", outsideK),
                        "convection",
                        HeatLaw.conductance(coefficient * body.outerAreaM2()))));
        return TIGHT.solve(Network.of(body.nodes(), paths), endS);
    }

    @Property(seed = "20260321")
    @Label("Lumped = layered as Bi → 0: bodies that conduct, Bi from 1e-4 to 1e-2, by 0.15 Bi of the excess")
    void aBodyThatConductsBecomesOneTemperature(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int kind = random.nextInt(3);
        double size = logBetween(0.003, 0.1, random);
        double conductivity = logBetween(0.1, 50, random);
        double capacity = between(1e6, 5e6, random);
        double biot = logBetween(1e-4, 1e-2, random);
        double start = ZERO + between(0, 40, random);
        double outside = ZERO + between(0, 40, random);
        LayerStack body =
                geometry(kind).layer("body", size, conductivity, capacity, 8).build("x", start);
        double coefficient = biot * conductivity / size;
        // Volume over area is size, size/2, size/3.
        double constant = capacity * size / (kind + 1) / coefficient;
        Trajectory run = cooled(body, coefficient, outside, 3 * constant);
        for (double part : new double[] {0.1, 0.5, 1, 2, 3}) {
            double lumped = outside + (start - outside) * Math.exp(-part);
            // The slowest decay is slower by Bi/3, Bi/4, Bi/5 of itself, which shows most at the time constant: 0.12
            // Bi.
            double allowed = 0.15 * biot * Math.abs(start - outside) + 1e-6;
            assertThat(body.meanK("body", run, part * constant)).isCloseTo(lumped, within(allowed));
        }
    }

    @Property(seed = "20260322")
    @Label(
            "Lumped = layered as Bi → 0: columns of liquid, Bi on the radius from 1e-4 to 1e-2, by 0.25 Bi of the excess")
    void aColumnOfLiquidBecomesOneTemperature(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Liquid liquid = RandomScenes.drink(random);
        double radius = between(0.02, 0.06, random);
        double height = between(0.08, 0.3, random);
        double biot = logBetween(1e-4, 1e-2, random);
        double start = ZERO + between(3, 35, random);
        double outside = ZERO + between(3, 35, random);
        double coefficient = biot * liquid.thermalConductivity(start) / radius;
        Boundary medium = Boundary.constant("medium", outside);
        double[] faces = StratifiedLiquid.faces(0, height, 5);
        StratifiedLiquid column = StratifiedLiquid.ofConstantHeatCapacity(
                "x", liquid, 4e6, start, StratifiedLiquid.cylinder(radius, faces, i -> medium, i -> coefficient));
        List<Path> paths = new ArrayList<>(column.paths());
        paths.add(column.bottom("bottom", liquid, Math.PI * radius * radius, medium, coefficient));
        double perVolume = (2 * height + radius) / (radius * height);
        double constant = 4e6 / (coefficient * perVolume);
        Trajectory run = TIGHT.withToleranceK(1e-5).solve(Network.of(column.nodes(), paths), 2 * constant);
        for (double part : new double[] {0.1, 0.5, 1, 2}) {
            double lumped = outside + (start - outside) * Math.exp(-part);
            double allowed = 0.25 * biot * Math.abs(start - outside) + 1e-4;
            assertThat(column.meanK(run, part * constant)).isCloseTo(lumped, within(allowed));
        }
    }

    @Property(seed = "20260323")
    @Label(
            "Lumped = layered as Bi → 0: slices and shells of a drink in a vessel whose outside films fade, by 0.1 Bi of the excess")
    void slicesAndShellsBecomeOneTemperatureAsTheOutsideFades(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double radius = between(0.025, 0.055, random);
        double height = between(0.1, 0.3, random);
        Vessel tube = Vessel.builder("tube")
                .shape(VesselShape.OTHER)
                .profile(Profile.of(
                        List.of(new Station(0, radius, 0.003), new Station(height, radius, 0.003)), 0.003, 0))
                .nominalVolume(litres(0.1))
                .build()
                .closedBy(INSULATING);
        double startC = between(12, 28, random);
        double outsideC = startC + (random.nextBoolean() ? 1 : -1) * between(1, 5, random);
        Beverage drink = RandomScenes.drink(random);
        FilledVessel filled = tube.filledWith(drink, cubicMetres(0.99 * tube.brimfulVolumeM3()), celsius(startC));
        double fade = logBetween(1e-4, 1e-2, random);
        NetworkSolver solver = NetworkSolver.standard()
                .withToleranceK(1e-5)
                .withMultipliers(Map.of(Multipliers.AIR_FILM, fade, Multipliers.RADIATION, fade));
        Duration horizon = Duration.ofSeconds(Math.min(2_500_000, Math.round(7200 / fade)));
        Exposure exposure = in(Air.at(celsius(outsideC)), horizon);
        Prediction lumped =
                Layered.of(filled, VesselModel.lumped()).with(solver).expose(exposure);
        Prediction slices =
                Layered.of(filled, VesselModel.axial(4)).with(solver).expose(exposure);
        Prediction shells =
                Layered.of(filled, VesselModel.radial(4)).with(solver).expose(exposure);
        List<Resistance> series =
                lumped.explainAt(Duration.ofSeconds(60)).bands().get(0).inSeries();
        double atRest = radius / (drink.thermalConductivity(filled.temperatureK()) * 2 * Math.PI * radius * height);
        double biot = atRest / series.get(series.size() - 1).kelvinPerWatt();
        // Shells keep the heat capacity of the start.
        double change =
                Math.abs(1 - drink.specificHeatCapacity(ZERO + outsideC) / drink.specificHeatCapacity(ZERO + startC));
        double excess = Math.abs(outsideC - startC);
        for (double part : new double[] {0.1, 0.3, 0.6, 1}) {
            double time = part * horizon.toSeconds();
            double expected = lumped.meanTemperatureK(time);
            assertThat(slices.meanTemperatureK(time)).isCloseTo(expected, within(0.1 * biot * excess + 1e-4));
            assertThat(shells.meanTemperatureK(time))
                    .isCloseTo(expected, within((0.1 * biot + 0.4 * change) * excess + 1e-4));
        }
    }

    @Property(seed = "20260324")
    @Label("N → 2N converges: conducting layers, cells doubled twice")
    void layersConvergeAsCellsAreDoubled(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int kind = random.nextInt(3);
        int layers = 1 + random.nextInt(3);
        double[] sizes = random.doubles(layers, 0.003, 0.02).toArray();
        double[] conductivities =
                random.doubles(layers).map(x -> 0.1 * Math.pow(100, x)).toArray();
        double[] capacities = random.doubles(layers, 1e6, 4e6).toArray();
        double coefficient = logBetween(5, 500, random);
        double[][] figures = new double[3][];
        for (int k = 0; k < 3; k++) {
            LayerStack.Builder builder = geometry(kind);
            for (int i = 0; i < layers; i++) {
                builder.layer("layer " + i, sizes[i], conductivities[i], capacities[i], 4 << k);
            }
            LayerStack body = builder.build("x", ZERO + 25);
            Trajectory run = cooled(body, coefficient, ZERO + 5, 3600);
            figures[k] = new double[4 * layers];
            for (int t = 0; t < 4; t++) {
                for (int i = 0; i < layers; i++) {
                    figures[k][t * layers + i] = body.meanK("layer " + i, run, 3600 * (t + 1) / 4.0);
                }
            }
        }
        // Second order: a quarter.
        assertThat(difference(figures[1], figures[2]))
                .isLessThanOrEqualTo(0.3 * difference(figures[0], figures[1]) + 1e-6);
    }

    private static double difference(double[] a, double[] b) {
        double worst = 0;
        for (int i = 0; i < a.length; i++) {
            worst = Math.max(worst, Math.abs(a[i] - b[i]));
        }
        return worst;
    }

    @Property(seed = "20260325")
    @Label("N → 2N converges: rings and layers of a block, both doubled twice")
    void blocksConvergeAsRingsAndLayersAreDoubled(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double radius = between(0.02, 0.06, random);
        // The coarsest layers are no thicker than the depth from which heat has come to an end.
        double depth = between(1, 3, random) * radius;
        double conductivity = logBetween(0.2, 20, random);
        double capacity = between(1e6, 4e6, random);
        // Heat has come through to the middle: before that the four rings of the coarsest block are too thick to see
        // it.
        double end = 0.5 * Math.pow(Math.min(radius, 0.5 * depth), 2) * capacity / conductivity;
        double[] coefficients = random.doubles(3, 5, 300).toArray();
        double[][] figures = new double[3][];
        for (int k = 0; k < 3; k++) {
            int n = 4 << k;
            AxisymmetricBlock block = AxisymmetricBlock.of(
                    "x", equal(radius, n), equal(depth, n), conductivity, capacity, ZERO + 25, 0, 0, 0);
            Boundary medium = Boundary.constant("medium", ZERO + 5);
            List<Path> paths = new ArrayList<>(block.paths());
            paths.addAll(block.top(medium, coefficients[0]));
            paths.addAll(block.bottom(medium, coefficients[1]));
            paths.addAll(block.side(medium, coefficients[2]));
            Trajectory run = NetworkSolver.standard().withToleranceK(1e-4).solve(Network.of(block.nodes(), paths), end);
            figures[k] = new double[] {mean(block, run, 0.6 * end), mean(block, run, end)};
        }
        // Second order, reached with more rings: about a quarter.
        assertThat(difference(figures[1], figures[2]))
                .isLessThanOrEqualTo(0.6 * difference(figures[0], figures[1]) + 1e-3);
    }

    private static double[] equal(double to, int n) {
        double[] faces = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            faces[i] = to * i / n;
        }
        return faces;
    }

    /** Mean by heat: what the block holds. */
    private static double mean(AxisymmetricBlock block, Trajectory run, double timeS) {
        double heat = 0;
        double capacity = 0;
        for (Node node : block.nodes()) {
            double c = node.store().enthalpyJ(ZERO + 1) - node.store().enthalpyJ(ZERO);
            heat += c * run.temperatureK(node, timeS);
            capacity += c;
        }
        return heat / capacity;
    }

    @Property(seed = "20260326")
    @Label("N → 2N converges: slices of a stratifying drink, doubled twice")
    void slicesConvergeAsTheyAreDoubled(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Liquid liquid = RandomScenes.drink(random);
        double radius = between(0.02, 0.06, random);
        double height = between(0.08, 0.3, random);
        double start = ZERO + between(3, 35, random);
        double outside = ZERO + between(3, 35, random);
        double coefficient = logBetween(5, 300, random);
        double[][] figures = new double[3][];
        for (int k = 0; k < 3; k++) {
            Boundary medium = Boundary.constant("medium", outside);
            double[] faces = StratifiedLiquid.faces(0, height, 5 << k);
            StratifiedLiquid column = StratifiedLiquid.ofConstantHeatCapacity(
                    "x", liquid, 4e6, start, StratifiedLiquid.cylinder(radius, faces, i -> medium, i -> coefficient));
            List<Path> paths = new ArrayList<>(column.paths());
            paths.add(column.bottom("bottom", liquid, Math.PI * radius * radius, medium, coefficient));
            Trajectory run = NetworkSolver.standard().solve(Network.of(column.nodes(), paths), 1200);
            figures[k] = new double[] {
                column.meanK(run, 150), column.meanK(run, 300), column.meanK(run, 600), column.meanK(run, 1200)
            };
        }
        // First order: a half, reached with more slices; the solver's tolerance of 1 mK a step comes on top.
        assertThat(difference(figures[1], figures[2]))
                .isLessThanOrEqualTo(0.8 * difference(figures[0], figures[1]) + 2e-3);
    }

    @Property(seed = "20260327")
    @Label("Two bottles in one bath = one of double capacity and double conductance")
    void twoBottlesAreOneOfDoubleCapacityAndConductance(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Bottle bottle = Bottle.draw(random);
        double bathKg = between(2, 20, random);
        double bathK = ZERO + between(1, 40, random);
        double roomK = ZERO + between(5, 35, random);
        double toRoom = logBetween(0.05, 5, random);
        List<List<Node>> nodes = new ArrayList<>();
        List<Trajectory> runs = new ArrayList<>();
        for (int bottles = 1; bottles <= 2; bottles++) {
            Node bath = Node.of("bath", LiquidStore.ofMass(Water.liquid(), bathKg), bathK);
            List<Node> all = new ArrayList<>(List.of(bath));
            List<Path> paths = new ArrayList<>();
            paths.add(DirectPath.of(
                    "bucket", bath, Boundary.constant("room", roomK), "conduction", HeatLaw.conductance(toRoom)));
            for (int i = 0; i < bottles; i++) {
                bottle.add("bottle " + i, bottles == 1 ? 2 : 1, bath, all, paths);
            }
            nodes.add(all);
            runs.add(NetworkSolver.standard().withToleranceK(1e-5).solve(Network.of(all, paths), 1800));
        }
        // Surfaces are found to a part in 10¹², so that lengths of steps, and with them errors of 1e-5 K a step, differ
        // a little.
        for (double time : new double[] {10, 60, 300, 900, 1800}) {
            for (int i = 0; i < 5; i++) {
                int inOne = i > 2 ? i - 2 : i;
                assertThat(runs.get(1).temperatureK(nodes.get(1).get(i), time))
                        .isCloseTo(runs.get(0).temperatureK(nodes.get(0).get(inOne), time), within(1e-6));
            }
        }
    }

    /** A drink behind glass of library parts; a multiple of it has that multiple of mass and area. */
    private record Bottle(Beverage drink, double kg, double startK, double areaM2, double heightM, double wallJPerK) {

        static Bottle draw(SplittableRandom random) {
            return new Bottle(
                    RandomScenes.drink(random),
                    between(0.2, 1.5, random),
                    ZERO + between(3, 35, random),
                    between(0.02, 0.1, random),
                    between(0.1, 0.3, random),
                    between(100, 600, random));
        }

        void add(String name, double times, Node bath, List<Node> nodes, List<Path> paths) {
            Node inside = Node.of(name, FreezingStore.ofMass(drink, times * kg), startK);
            Node wall = Node.sensible(name + " wall", times * wallJPerK, startK);
            double half = 600 * times * areaM2;
            nodes.add(inside);
            nodes.add(wall);
            paths.add(JunctionPath.of(
                    name + " inside",
                    Link.of(
                            inside,
                            "convection",
                            ConvectiveFilm.free(times * areaM2, heightM, Fluid.of(drink), EnclosedLiquid.COOLING)
                                    .whenColder(EnclosedLiquid.WARMING)),
                    Link.of(wall, "conduction", HeatLaw.conductance(half))));
            paths.add(JunctionPath.of(
                    name + " outside",
                    Link.of(wall, "conduction", HeatLaw.conductance(half)),
                    Link.of(
                            bath,
                            "convection",
                            ConvectiveFilm.free(
                                    times * areaM2, heightM, Fluid.of(Water.liquid()), VerticalPlate.CHURCHILL_CHU))));
        }
    }

    @Property(seed = "20260328")
    @Label("Two bottles in one bath are alike, in water and among ice")
    void twoBottlesInOneBathAreAlike(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        FilledVessel vessel = RandomScenes.filled(random);
        VesselModel model = RandomScenes.model(random);
        Surroundings bath = (random.nextBoolean() ? RandomScenes.waterBath(random) : RandomScenes.iceWaterBath(random))
                .surroundings();
        ScenePrediction run = Scene.builder()
                .gear("bath", bath)
                .vessel("one", vessel, "bath", model, Posture.UPRIGHT)
                .vessel("other", vessel, "bath", model, Posture.UPRIGHT)
                .build()
                .predict(Duration.ofMinutes(2));
        for (double time : new double[] {10, 60, 120}) {
            double[] one = run.vessel("one").profileK(time);
            double[] other = run.vessel("other").profileK(time);
            for (int i = 0; i < one.length; i++) {
                assertThat(other[i]).isCloseTo(one[i], within(1e-6));
            }
        }
    }
}
