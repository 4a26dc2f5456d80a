/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.cubicMetres;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.Resistance;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Layers around the wall: closed forms and independent computations posed to vessels, limits, and what others are told of them. */
final class WrappedVesselTest {

    private static final double ZERO = 273.15;
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Layer FOAM = Layer.of("foam", 0.005, 0.045, 120 * 1500, 0.9);

    /** A liquid whose properties do not depend on temperature. */
    private record ConstantLiquid(double conductivity, double density, double heatCapacity) implements Liquid {
        @Override
        public String name() {
            return "constant";
        }

        @Override
        public double density(double temperatureK) {
            return density;
        }

        @Override
        public double specificHeatCapacity(double temperatureK) {
            return heatCapacity;
        }

        @Override
        public double thermalConductivity(double temperatureK) {
            return conductivity;
        }

        @Override
        public double dynamicViscosity(double temperatureK) {
            return 1e-3;
        }

        @Override
        public double specificEnthalpy(double temperatureK) {
            return heatCapacity * (temperatureK - ZERO);
        }

        @Override
        public ValidityRange temperatureRange() {
            return new ValidityRange("temperature", 250, 500, "K");
        }

        @Override
        public List<PropertyRecord> properties() {
            return List.of();
        }
    }

    /** Surroundings with one coefficient at the side, insulated ends, which remember the patches they are shown. */
    private static final class Film implements Medium {

        private final Boundary air;
        private final double coefficient;
        private final List<WallPatch> patches = new ArrayList<>();

        private Film(double temperatureK, double coefficient) {
            this.air = Boundary.constant("air", temperatureK);
            this.coefficient = coefficient;
        }

        @Override
        public List<Node> nodes() {
            return List.of();
        }

        @Override
        public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
            return 0;
        }

        @Override
        public List<Path> paths(List<Occupant> occupants) {
            return List.of();
        }

        @Override
        public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
            // Tubes between ends that insulate: the solutions compared with know no ends.
            if (patch.orientation() != Orientation.UPRIGHT_WALL) {
                return List.of();
            }
            patches.add(patch);
            return List.of(Face.whole(
                    "air",
                    List.of(Link.of(air, "convection", HeatLaw.conductance(coefficient * patch.outerAreaM2())))));
        }

        @Override
        public List<String> notes(List<Occupant> occupants) {
            return List.of();
        }
    }

    private static Solid wall(double conductivity, double density, double heatCapacity) {
        return new Solid(
                "wall",
                constant("density", density, "kg/m³"),
                constant("thermal conductivity", conductivity, "W/(m K)"),
                constant("specific heat capacity", heatCapacity, "J/(kg K)"),
                constant("emissivity", 0.9, "1"));
    }

    private static Constant constant(String name, double value, String unit) {
        return new Constant(
                name,
                value,
                unit,
                Uncertainty.exact(),
                new Source("test", "the test's own", Source.Kind.OWN_ASSUMPTION));
    }

    /** A tube one metre long, full, with a base as thin as a film. */
    private static FilledVessel tube(double innerM, double outerM, Solid wall, Liquid liquid, double temperatureK) {
        double base = 1e-6;
        Profile profile = Profile.builder()
                .station(metres(0), metres(2 * outerM), metres(outerM - innerM))
                .station(metres(1), metres(2 * outerM), metres(outerM - innerM))
                .baseThickness(metres(base))
                .build();
        Vessel vessel = Vessel.builder("tube")
                .shape(VesselShape.TUMBLER)
                .open(false)
                .profile(profile)
                .wall(wall)
                .nominalVolume(cubicMetres(profile.brimfulVolumeM3()))
                .build();
        return vessel.filledWith(liquid, kelvins(temperatureK));
    }

    private record Run(Trajectory run, ModelledVessel vessel, Film film) {

        static Run of(
                FilledVessel filled, VesselModel model, Film film, double endS, double toleranceK, Path... further) {
            ModelledVessel vessel = model.isLumped()
                    ? new LumpedVessel("v", filled, List.of(), model.layers())
                    : new RadialVessel("v", filled, DrinkFit.of(filled.liquid()), List.of(), model);
            Occupant occupant = new Occupant("v", filled.vessel());
            List<Path> paths = new ArrayList<>(vessel.paths(film, occupant, List.of(occupant)));
            paths.addAll(List.of(further));
            return new Run(
                    NetworkSolver.standard().withToleranceK(toleranceK).solve(Network.of(vessel.nodes(), paths), endS),
                    vessel,
                    film);
        }

        double surfaceK(String path, double timeS) {
            JunctionPath junction = run.paths(timeS).stream()
                    .filter(candidate -> candidate.name().equals(path))
                    .map(JunctionPath.class::cast)
                    .findFirst()
                    .orElseThrow();
            return junction.surfaceTemperatureK(run.evaluate(path, timeS));
        }

        double meanK(double timeS) {
            double sum = 0;
            List<Node> nodes = vessel.contents().nodes();
            for (int i = 0; i < nodes.size(); i++) {
                sum += vessel.contents().shares().get(i) * run.temperatureK(nodes.get(i), timeS);
            }
            return sum;
        }
    }

    /** A wrapped tube whose contents are held at one temperature, long after the start. */
    private static Run held(FilledVessel filled, double insideK, VesselModel model, Film film) {
        RadialVessel vessel = new RadialVessel("v", filled, DrinkFit.of(filled.liquid()), List.of(), model);
        Occupant occupant = new Occupant("v", filled.vessel());
        List<Path> paths = new ArrayList<>(vessel.paths(film, occupant, List.of(occupant)));
        paths.add(DirectPath.of(
                "held",
                vessel.contents().nodes().get(0),
                Boundary.constant("inside", insideK),
                "any",
                HeatLaw.conductance(1e7)));
        return new Run(
                NetworkSolver.standard().withToleranceK(1e-8).solve(Network.of(vessel.nodes(), paths), 1e7),
                vessel,
                film);
    }

    private static final ConstantLiquid CORE = new ConstantLiquid(3, 985, 4100);

    @Test
    void insulatedPipeOfTheTextbooks() {
        FilledVessel pipe = tube(0.0779272 / 2, 0.0779272 / 2 + 0.0054864, wall(56.045, 7800, 460), CORE, 300);
        Layer insulation = Layer.of("insulation", 0.05, 0.0598535265, 1e5, 0.9);
        Run run = held(pipe, 453.15, VesselModel.mixed().wrappedIn(insulation), new Film(301.15, 22.697193));
        double end = run.run().endS();
        String source = "closed form: composite cylinder, logarithmic series resistances";
        // The half walls are plane ones: 5 % of the steel, which is two ten-thousandths of the whole.
        OutsideChecks.published("wrapped-pipe-conductance", source)
                .what("conductance of an insulated steel pipe per metre, as a mixed vessel in a layer")
                .unit("W/K")
                .expected(0.4810526897414057)
                .withinRelative(2e-5)
                .check(run.run().evaluate("v wall 1 outside, air", end).flowOf(0) / 152);
        OutsideChecks.published("wrapped-pipe-steel", source)
                .what("between steel and insulation of that pipe, as a mixed vessel in a layer")
                .unit("K")
                .expected(453.1226455776871)
                .within(3e-3)
                .check(run.surfaceK("v wall 1 to layers", end));
        OutsideChecks.published("wrapped-pipe-surface", source)
                .what("outer surface of that pipe, as a mixed vessel in a layer")
                .unit("K")
                .expected(306.5785301474453)
                .within(3e-4)
                .check(run.surfaceK("v wall 1 outside, air", end));
    }

    @Test
    void glassWithASleeve() {
        FilledVessel glass = tube(0.035, 0.0385, wall(1.05, 2500, 840), CORE, 300);
        Run run = held(glass, 300, VesselModel.mixed().wrappedIn(FOAM), new Film(280, 8));
        // The wall of a vessel is cut into plane halves, here 4 % too good, which is 0.07 % of the whole.
        OutsideChecks.published("wrapped-glass-sleeve", "closed form: steady radial resistances in series")
                .what(
                        "resistance of glass, a foam sleeve of 5 mm and a film of 8 W/(m² K) per metre, as a wrapped vessel")
                .unit("K/W")
                .expected(0.9036384895347456)
                .withinRelative(1e-5)
                .check(20
                        / run.run()
                                .evaluate("v wall 1 outside, air", run.run().endS())
                                .flowOf(0));
    }

    @Test
    void layersAndContactsLieInSeries() {
        // Closed form of coaxial cylinders.
        FilledVessel glass = tube(0.035, 0.0385, wall(1.05, 2500, 840), CORE, 300);
        List<Layer> layers = List.of(
                Layer.of("label", 0.0002, 0.1, 1e6, 0.9).withContactResistance(0.0007),
                FOAM.withContactResistance(0.002).inCells(3),
                Layer.of("shell", 0.001, 0.2, 2e6, 0.5).withContactResistance(0.001));
        Run run = held(glass, 300, VesselModel.mixed().wrappedIn(layers), new Film(280, 8));
        double round = 2 * Math.PI;
        double inner = round * 0.035;
        double expected = 1 / (1e6 * inner)
                + Math.log(0.0385 / 0.035) / (round * 1.05)
                + 0.0007 / (round * 0.0385)
                + Math.log(0.0387 / 0.0385) / (round * 0.1)
                + 0.002 / (round * 0.0387)
                + Math.log(0.0437 / 0.0387) / (round * 0.045)
                + 0.001 / (round * 0.0437)
                + Math.log(0.0447 / 0.0437) / (round * 0.2)
                + 1 / (8 * round * 0.0447);
        double heat =
                run.run().evaluate("v wall 1 outside, air", run.run().endS()).flowOf(0);
        assertThat(20 / heat).isCloseTo(expected, within(2e-6 * expected));
        WallPatch patch = run.film().patches.get(0);
        assertThat(patch.outerAreaM2()).isCloseTo(round * 0.0447, within(1e-12));
        assertThat(patch.diameterM()).isCloseTo(2 * 0.0447, within(1e-12));
        assertThat(patch.emissivity()).isEqualTo(0.5);
    }

    /** Times [s] and temperatures [°C]: axis, mean of the core, its edge, between glass and foam, outer surface of the foam. */
    private static final double[][] SLEEVED = {
        {600, 8.348801, 8.560409, 8.773214, 9.017897, 16.761407},
        {1800, 9.558547, 9.758409, 9.957405, 10.184426, 17.363046},
        {3600, 11.215552, 11.393967, 11.571609, 11.774269, 18.182559},
        {7200, 14.015209, 14.157388, 14.298950, 14.460449, 19.567199},
        {14400, 18.024158, 18.114448, 18.204346, 18.306905, 21.549924},
        {21600, 20.570023, 20.627361, 20.684451, 20.749580, 22.809045},
        {28800, 22.186763, 22.223175, 22.259430, 22.300790, 23.608644},
        {43200, 23.865470, 23.880154, 23.894775, 23.911455, 24.438890},
    };

    @Test
    void conductingCoreInGlassAndFoamWarms() {
        // Everything is linear and 12 K warmer than in the computation, because a vessel is full at 20 °C.
        FilledVessel glass = tube(0.035, 0.0385, wall(1.05, 2500, 840), CORE, ZERO + 20);
        Run run =
                Run.of(glass, VesselModel.radial(40).wrappedIn(FOAM.inCells(20)), new Film(ZERO + 37, 8), 43_200, 1e-5);
        String[] where = {"mean of the core", "edge of the core", "between glass and foam", "surface of the foam"};
        double[] worst = new double[where.length];
        for (double[] row : SLEEVED) {
            double t = row[0];
            double[] actual = {
                run.meanK(t),
                run.surfaceK("v wall 1 inside", t),
                run.surfaceK("v wall 1 to layers", t),
                run.surfaceK("v wall 1 outside, air", t)
            };
            for (int i = 0; i < where.length; i++) {
                worst[i] = Math.max(worst[i], Math.abs(actual[i] - ZERO - 12 - row[i + 2]));
            }
        }
        for (int i = 0; i < where.length; i++) {
            OutsideChecks.referenceLibrary(
                            "wrapped-core-glass-foam",
                            "Laplace inversion (Talbot); finite volumes with Richardson extrapolation agree to 2e-7")
                    .what(
                            "conducting core in glass and foam from 8 °C in 25 °C as a wrapped radial vessel: largest error, "
                                    + where[i])
                    .unit("K")
                    .expected(0)
                    .within(2e-3)
                    .check(worst[i]);
        }
        assertThat(run.run().ledger(43_200).closure()).isLessThan(1e-9);
    }

    @Test
    void timeConstantOfAWrappedVesselByHand() {
        // Area under the curve of the contents' excess over the excess at the start: each heat capacity times the
        // resistance
        // between it and the outside, whatever the shape of the curve.
        FilledVessel glass = tube(0.035, 0.0385, wall(1.05, 2500, 840), CORE, ZERO + 22);
        Layer foam = FOAM.withContactResistance(0.003);
        Run run = Run.of(glass, VesselModel.mixed().wrappedIn(foam), new Film(ZERO + 2, 8), 160_000, 1e-6);
        double round = 2 * Math.PI;
        double outside = 1 / (8 * round * 0.0435);
        double contact = 0.003 / (round * 0.0385);
        double foamR = Math.log(0.0435 / 0.0385) / (round * 0.045);
        double glassR = Math.log(0.0385 / 0.035) / (round * 1.05);
        double coreC = 985 * 4100 * Math.PI * 0.035 * 0.035;
        double glassC = 2500 * 840 * Math.PI * (0.0385 * 0.0385 - 0.035 * 0.035);
        double foamC = 120 * 1500 * Math.PI * (0.0435 * 0.0435 - 0.0385 * 0.0385);
        double tau = coreC * (glassR + contact + foamR + outside)
                + glassC * (glassR / 2 + contact + foamR + outside)
                + foamC * (foamR / 2 + outside);
        double area = 0;
        for (double t = 10; t < 160_000; t += 20) {
            area += 20 * (run.meanK(t) - ZERO - 2);
        }
        // What is left of the area lies after ten time constants.
        assertThat(area / 20).isCloseTo(tau, within(1e-3 * tau));
        assertThat(run.vessel().heatCapacityJPerK()).isCloseTo(coreC + glassC + foamC, within(1e-3 * coreC));
    }

    @Test
    void vanishingLayersLeaveTheBareVessel() {
        Exposure cold = in(Refrigerator.at(celsius(5)), Duration.ofHours(2));
        for (VesselModel model : List.of(VesselModel.lumped(), VesselModel.axial(8), VesselModel.radial(8))) {
            NetworkSolver solver = NetworkSolver.standard().withToleranceK(1e-6);
            double bare = Layered.of(BOTTLE, model).with(solver).expose(cold).meanTemperatureK(7200);
            double previous = Double.POSITIVE_INFINITY;
            for (double thickness : new double[] {1, 0.1, 0.01}) {
                VesselModel wrapped = model.wrappedIn(
                        Layer.of(BOTTLE.vessel().wall(), millimetres(thickness)).inCells(2));
                double difference = Math.abs(
                        Layered.of(BOTTLE, wrapped).with(solver).expose(cold).meanTemperatureK(7200) - bare);
                assertThat(difference).as("%s, %s mm", model, thickness).isLessThan(0.15 * previous);
                previous = difference;
            }
            assertThat(previous).isLessThan(5e-3);
        }
    }

    @Test
    void foamSlowsAndTheExplanationNamesIt() {
        Exposure table = in(Air.at(celsius(24)), Duration.ofHours(1));
        FilledVessel cold = BOTTLE.atTemperature(celsius(8));
        Layer neoprene = Layer.of(Solids.neopreneFoam(), millimetres(5)).withContactResistance(0.002);
        Prediction bare = Lumped.of(cold).expose(table);
        Prediction wrapped =
                Layered.of(cold, VesselModel.lumped().wrappedIn(neoprene)).expose(table);
        Prediction axial =
                Layered.of(cold, VesselModel.axial(8).wrappedIn(neoprene)).expose(table);
        double rise = bare.meanTemperatureK(3600) - ZERO - 8;
        double slower = wrapped.meanTemperatureK(3600) - ZERO - 8;
        assertThat(slower).isBetween(0.4 * rise, 0.9 * rise);
        // Slices have a closure and a headspace, which one node has not: a tenth of the rise, a judgement.
        assertThat(axial.meanTemperatureK(3600)).isCloseTo(wrapped.meanTemperatureK(3600), within(0.1 * slower));
        assertThat(wrapped.ledger().closure()).isLessThan(1e-9);
        assertThat(axial.ledger().closure()).isLessThan(1e-9);
        Explanation explained = wrapped.explainAt(Duration.ofMinutes(30));
        Explanation.Band band = explained.bands().get(0);
        double height = cold.vessel().profile().heightM();
        double area = cold.vessel().profile().outerSideAreaM2(0, height);
        double radius = area / (2 * Math.PI * height);
        double byHand =
                0.002 / area + Math.log((radius + 0.005) / radius) / (2 * Math.PI * height * neoprene.conductivity());
        assertThat(band.inSeries().stream().map(Resistance::name)).contains(neoprene.name());
        Resistance layer = band.inSeries().get(2);
        assertThat(layer.kelvinPerWatt()).isCloseTo(byHand, within(1e-9 * byHand));
        // The wall itself is the bare one's.
        assertThat(band.inSeries().get(1).kelvinPerWatt())
                .isCloseTo(
                        bare.explainAt(Duration.ofMinutes(30))
                                .bands()
                                .get(0)
                                .inSeries()
                                .get(1)
                                .kelvinPerWatt(),
                        within(1e-9));
        // Heat to the drink over an hour is about what the resistances say half-way.
        double heat = cold.liquidMassKg() * cold.liquid().specificHeatCapacity(ZERO + 10) * slower / 3600;
        double stated = (band.mediumK() - explained.contentsK()) / band.kelvinPerWatt();
        assertThat(heat).isCloseTo(stated, within(0.15 * stated));
    }

    @Test
    void wrappedBottlesStandInBathsAndAreTurnedOver() {
        IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(220)), Air.at(celsius(21)))
                .ice(kilograms(2.2), millimetres(25), celsius(-5))
                .water(kilograms(2), celsius(10))
                .build();
        VesselModel model = VesselModel.axial(10).wrappedIn(Layer.of(Solids.aluminium(), millimetres(0.5)), FOAM);
        ScenePrediction run = Scene.builder()
                .gear("bath", bath)
                .vessel("wine", BOTTLE, "bath", model, Posture.UPRIGHT)
                .move("wine", Duration.ofMinutes(20), "bath", Posture.INVERTED)
                .build()
                .predict(Duration.ofMinutes(40));
        Prediction wine = run.vessel("wine");
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(wine.meanTemperatureK(2400)).isBetween(ZERO + 10, ZERO + 21);
        assertThat(wine.notes()).anyMatch(note -> note.contains("displace no water"));
        assertThat(wine.explainAt(Duration.ofMinutes(10)).text()).contains("foam");
        for (double k : wine.profileK(2400)) {
            assertThat(k).isBetween(ZERO, ZERO + 22.01);
        }
    }

    @Test
    void radialContentsBecomeMixedOnesAsTheyConductBetter() {
        FilledVessel glass = tube(0.035, 0.0385, wall(1.05, 2500, 840), CORE, ZERO + 22);
        double mixed = Run.of(glass, VesselModel.mixed().wrappedIn(FOAM), new Film(ZERO + 2, 8), 6000, 1e-6)
                .meanK(6000);
        double previous = Double.POSITIVE_INFINITY;
        for (double factor : new double[] {1, 10, 100, 1000}) {
            VesselModel model =
                    VesselModel.radial().withConductivityFactor(factor).wrappedIn(FOAM);
            double difference =
                    Run.of(glass, model, new Film(ZERO + 2, 8), 6000, 1e-6).meanK(6000) - mixed;
            assertThat(difference).isPositive().isLessThan(0.12 * previous);
            previous = difference;
        }
        assertThat(previous).isLessThan(1e-3);
        // Lumped contents differ by the film inside alone; it vanishes where the liquid conducts like metal.
        FilledVessel metal = tube(0.035, 0.0385, wall(1.05, 2500, 840), new ConstantLiquid(300, 985, 4100), ZERO + 22);
        Layer thick = Layer.of("foam", 0.04, 0.045, 120 * 1500, 0.9);
        Film air = new Film(ZERO + 2, 8);
        double lumped = Run.of(metal, VesselModel.lumped().wrappedIn(thick), air, 6000, 1e-6)
                .meanK(6000);
        VesselModel best = VesselModel.radial().withConductivityFactor(1000).wrappedIn(thick);
        assertThat(lumped).isCloseTo(Run.of(metal, best, air, 6000, 1e-6).meanK(6000), within(1e-3));
    }

    @Test
    void mixedContentsAreTheFastestAndSaySo() {
        Exposure dip = in(Refrigerator.at(celsius(5)), Duration.ofHours(1));
        Prediction mixed = Layered.of(BOTTLE, VesselModel.mixed()).expose(dip);
        Prediction lumped = Lumped.of(BOTTLE).expose(dip);
        assertThat(mixed.meanTemperatureK(3600)).isLessThan(lumped.meanTemperatureK(3600));
        assertThat(mixed.notes()).anyMatch(note -> note.contains("mixed up to the wall"));
        assertThat(mixed.explainAt(Duration.ofMinutes(30))
                        .bands()
                        .get(0)
                        .inSeries()
                        .get(0)
                        .kelvinPerWatt())
                .isLessThan(1e-4);
        Prediction twice = Layered.of(BOTTLE, VesselModel.radial().withConductivityFactor(2))
                .expose(dip);
        assertThat(twice.notes()).anyMatch(note -> note.contains("2.00 times"));
    }

    @Test
    void nonsenseIsRefusedByName() {
        refused("thickness of foam 0.0 m", () -> Layer.of("foam", 0, 0.045, 1.8e5, 0.9));
        refused("thickness of foam -1.0 m", () -> Layer.of("foam", -1, 0.045, 1.8e5, 0.9));
        refused("thickness of foam NaN", () -> Layer.of("foam", Double.NaN, 0.045, 1.8e5, 0.9));
        refused("thickness", () -> Layer.of(Solids.cork(), millimetres(0)));
        refused("conductivity of foam 0.0", () -> Layer.of("foam", 0.005, 0, 1.8e5, 0.9));
        refused("volumetric heat capacity of foam", () -> Layer.of("foam", 0.005, 0.045, -1, 0.9));
        refused("emissivity of foam 1.1", () -> Layer.of("foam", 0.005, 0.045, 1.8e5, 1.1));
        refused("blank", () -> Layer.of(" ", 0.005, 0.045, 1.8e5, 0.9));
        refused("contact resistance inside foam -0.1", () -> FOAM.withContactResistance(-0.1));
        refused("contact resistance inside foam Infinity", () -> FOAM.withContactResistance(1 / 0.0));
        refused("cells of foam 0", () -> FOAM.inCells(0));
        refused("cells of foam 1001", () -> FOAM.inCells(1001));
        refused("relative error", () -> FOAM.cutFor(60, 0));
        refused("no layers", () -> VesselModel.lumped().wrappedIn(List.of()));
        refused("no layers", () -> VesselModel.axial().wrappedIn());
        VesselModel radial = VesselModel.radial();
        refused("conductivity factor 0.99", () -> radial.withConductivityFactor(0.99));
        refused("conductivity factor NaN", () -> radial.withConductivityFactor(Double.NaN));
        refused("conductivity factor Infinity", () -> radial.withConductivityFactor(1 / 0.0));
        assertThatThrownBy(() -> VesselModel.axial().withConductivityFactor(2))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("radial()");
    }

    private static void refused(String part, ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(part);
    }

    @Test
    void modelsAreEqualByParts() {
        VesselModel one = VesselModel.radial(12).withConductivityFactor(3).wrappedIn(FOAM);
        assertThat(one)
                .isEqualTo(VesselModel.radial(12).withConductivityFactor(3).wrappedIn(List.of(FOAM)))
                .hasSameHashCodeAs(
                        VesselModel.radial(12).withConductivityFactor(3).wrappedIn(FOAM))
                .isNotEqualTo(VesselModel.radial(12).wrappedIn(FOAM))
                .isNotEqualTo(VesselModel.radial(12).withConductivityFactor(3));
        assertThat(VesselModel.lumped()).isNotEqualTo(VesselModel.mixed());
        assertThat(one.toString()).contains("12 shells", "3.0 times", "foam");
        assertThat(FOAM.cutFor(1, 1e-4).cells()).isGreaterThan(FOAM.cells());
    }
}
