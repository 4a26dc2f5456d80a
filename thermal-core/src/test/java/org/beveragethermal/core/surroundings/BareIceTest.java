/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.beveragethermal.core.network.AmountWeight;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ice without added water: what is conserved, how it begins and ends, and its limits. */
class BareIceTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(21));
    private static final Bucket BUCKET = Bucket.of(millimetres(200), millimetres(420));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static BareIce.Builder cubes(double iceKg, double iceC) {
        return BareIce.in(BUCKET, ROOM).ice(kilograms(iceKg), millimetres(25), celsius(iceC));
    }

    private static ScenePrediction run(Surroundings gear, Duration horizon) {
        return run(gear, Placement.upright(), horizon);
    }

    private static ScenePrediction run(Surroundings gear, Placement placement, Duration horizon) {
        return Scene.builder()
                .gear("ice", gear)
                .vessel("wine", BOTTLE, "ice", VesselModel.lumped(), placement)
                .build()
                .predict(horizon);
    }

    @Test
    void waterIsConservedAndTheLedgerClosesUntilTheIceIsGone() {
        for (BareIce gear :
                List.of(cubes(1.5, -15).build(), cubes(1.5, -15).drained().build())) {
            ScenePrediction run = run(gear, Duration.ofHours(30));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            assertThat(run.iceGone("ice")).isPresent();
            for (int hours = 0; hours <= 30; hours += 5) {
                assertThat(run.gearMassKg("ice", Duration.ofHours(hours))).isCloseTo(1.5, within(5e-5));
            }
        }
    }

    @Test
    void meltedIceTookTheHeatThatTheLedgerSays() {
        ScenePrediction run = run(cubes(3, -5).drained().build(), Duration.ofHours(1));
        double melted = 3 - run.iceKg("ice", Duration.ofHours(1));
        assertThat(melted).isGreaterThan(0.1);
        // Own arithmetic: 333.4 kJ melt a kilogram; before that 3 kg of ice warm from −5 °C with about 2.08 kJ/(kg K).
        assertThat(run.ledger().heatInto("ice ice")).isCloseTo(melted * 333_430 + 3 * 2080 * 5, within(1500.0));
    }

    @Test
    void coldIceIsWarmedBeforeItMelts() {
        ScenePrediction run = run(cubes(3, -20).drained().build(), Duration.ofMinutes(90));
        boolean melts = false;
        for (int minutes = 0; minutes <= 90; minutes += 2) {
            double t = run.gearTemperaturesK("ice", Duration.ofMinutes(minutes)).getOrDefault("ice", Double.NaN);
            double melted = 3 - run.iceKg("ice", Duration.ofMinutes(minutes));
            if (t < ZERO - 0.01) {
                assertThat(melted).isCloseTo(0, within(1e-6));
            }
            melts |= melted > 0.01;
            // The surplus that melts the ice shows as a few thousandths of a kelvin.
            assertThat(t).isBetween(ZERO - 20.001, ZERO + 0.02);
        }
        assertThat(melts).isTrue();
    }

    @Test
    void whereTheIceIsGoneTheBottleWarmsInAir() {
        ScenePrediction run = run(cubes(0.5, -2).drained().build(), Duration.ofHours(40));
        double goneH = run.iceGone("ice").orElseThrow().toMinutes() / 60.0;
        assertThat(goneH).isBetween(1.0, 30.0);
        assertThat(run.vessel("wine").meanTemperatureK(40 * 3600) - ZERO).isCloseTo(21, within(1.0));
    }

    @Test
    void drainedIceIsSlowerAtTheEndThanIceWhoseWaterGathers() {
        ScenePrediction drained = run(cubes(2, -5).drained().build(), Duration.ofHours(4));
        ScenePrediction gathered = run(cubes(2, -5).build(), Duration.ofHours(4));
        // Water wets the wall that ice has left.
        assertThat(gathered.vessel("wine").meanTemperatureK(4 * 3600.0))
                .isLessThan(drained.vessel("wine").meanTemperatureK(4 * 3600.0));
    }

    @Test
    void crushedIceTouchesMoreAndCoolsFaster() {
        BareIce crushed = BareIce.crushed(BUCKET, kilograms(3), ROOM);
        BareIce cubes = BareIce.of(BUCKET, kilograms(3), ROOM);
        double radius = BOTTLE.vessel().profile().maxOuterRadiusM();
        assertThat(crushed.contactFraction(2 * radius)).isGreaterThan(1.5 * cubes.contactFraction(2 * radius));
        // By hand: 0.57/3 · (2 √(2 · 38 mm · 1 mm)/25 mm + 2/25 + 2.6/625) = 0.1485 for a wall of 76 mm.
        assertThat(cubes.contactFraction(0.076)).isCloseTo(0.1485, within(1e-4));
        BareIce warmCubes = cubes(3, 0).build();
        assertThat(run(crushed, Duration.ofMinutes(20)).vessel("wine").meanTemperatureK(1200))
                .isLessThan(
                        run(warmCubes, Duration.ofMinutes(20)).vessel("wine").meanTemperatureK(1200) - 0.5);
    }

    @Test
    void aVesselHeldHigherTouchesLessIce() {
        BareIce gear = cubes(5, -5).build();
        double deep = run(gear, Duration.ofMinutes(20)).vessel("wine").meanTemperatureK(1200);
        double shallow = run(gear, Placement.upright().immersedTo(millimetres(100)), Duration.ofMinutes(20))
                .vessel("wine")
                .meanTemperatureK(1200);
        assertThat(shallow).isGreaterThan(deep + 1);
        double lying = run(
                        BareIce.in(Bucket.of(millimetres(400), millimetres(300)), ROOM)
                                .ice(kilograms(8), millimetres(25), celsius(-5))
                                .build(),
                        Placement.of(Posture.LYING),
                        Duration.ofMinutes(20))
                .vessel("wine")
                .meanTemperatureK(1200);
        assertThat(lying - ZERO).isBetween(2.0, 20.0);
    }

    /** Limit: ice that touches everywhere through a film leaves conduction through that film, k/δ, and nothing else. */
    @Test
    void fullContactIsConductionThroughTheFilm() {
        BareIce gear = cubes(3, 0)
                .contact(fraction(1))
                .meltFilm(millimetres(2))
                .drained()
                .build();
        Medium medium = gear.open("ice", 0);
        Occupant occupant = new Occupant("wine", BOTTLE.vessel());
        WallPatch patch = new WallPatch(0.02, 0.06, 0.01, 0.076, 0.9);
        double side = 0.025;
        double watts = 0;
        HeatFlow out = new HeatFlow();
        for (Face face : medium.faces(patch, occupant, List.of(occupant))) {
            AmountWeight share = face.share();
            double part = share == null ? 1 : share.factor().at(side);
            for (Link link : face.links()) {
                link.law().evaluate(ZERO, ZERO + 20, out);
                watts += part * out.watts;
            }
        }
        // By hand: 0.5562 W/(m K) of water at 0 °C (IAPWS) over 2 mm, 0.01 m², 20 K.
        assertThat(watts).isCloseTo(-0.5562 / 2e-3 * 0.01 * 20, within(0.3));
    }

    @Test
    void sharesOfAPatchAddUpToOne() {
        for (BareIce gear : List.of(cubes(3, 0).build(), cubes(3, 0).drained().build())) {
            Medium medium = gear.open("ice", 0);
            Occupant occupant = new Occupant("wine", BOTTLE.vessel());
            for (double low : new double[] {0, 0.03, 0.08}) {
                List<Face> faces =
                        medium.faces(new WallPatch(low, low + 0.02, 0.005, 0.076, 0.9), occupant, List.of(occupant));
                for (double side = 0.0; side <= 0.025; side += 0.001) {
                    double sum = 0;
                    for (Face face : faces) {
                        AmountWeight share = java.util.Objects.requireNonNull(face.share());
                        double part = share.factor().at(side);
                        assertThat(part).isBetween(-1e-12, 1 + 1e-12);
                        sum += part;
                    }
                    assertThat(sum).isCloseTo(1, within(1e-9));
                }
            }
        }
    }

    @Test
    void everyPathStatesTheSlopesOfItsFlows() {
        Random random = new Random(20261125);
        Occupant occupant = new Occupant("wine", BOTTLE.vessel());
        for (BareIce gear :
                List.of(cubes(1.5, -5).build(), cubes(1.5, -5).drained().build())) {
            for (Path path : gear.open("ice", 0).paths(List.of(occupant))) {
                for (int i = 0; i < 20; i++) {
                    List<Double> amounts = new ArrayList<>();
                    double[] temperatures = new double[path.ends().size()];
                    for (int e = 0; e < temperatures.length; e++) {
                        boolean ice = path.ends().get(e).name().equals("ice ice");
                        temperatures[e] =
                                ice ? ZERO - 1 + 1.5 * random.nextDouble() : ZERO + 1 + 20 * random.nextDouble();
                        if (ice) {
                            double side = 0.004 + 0.02 * random.nextDouble();
                            amounts.add(1.5 * Math.pow(side / 0.025, 3));
                            amounts.add(side);
                            amounts.add(1.5 / (Ice.density(ZERO) * Math.pow(0.025, 3)));
                        } else if (path.ends().get(e) instanceof Node) {
                            amounts.add(0.2 + random.nextDouble());
                        }
                    }
                    PathDerivatives.check(
                            path,
                            temperatures,
                            amounts.stream().mapToDouble(Double::doubleValue).toArray(),
                            1e-2);
                }
            }
        }
    }

    /** Blocks at 0 °C in a medium of constant temperature; heat follows a power of the side. */
    private static Trajectory melting(
            double latent, double massKg, double sideM, double firstWatts, double power, double horizonS, Node[] ice) {
        PileGeometry geometry = new PileGeometry(massKg, sideM, 0, 1000, 0.57, false, new FillLevel(0.1, 0.03, false));
        ice[0] = Node.of(
                "ice",
                IceStore.ofConstants(latent, 2100, massKg, sideM, 4200 * massKg).showingSurplus(),
                ZERO,
                massKg,
                sideM);
        Node water = Node.of("water", new MeltStore(massKg), ZERO, 0);
        Boundary around = Boundary.constant("around", ZERO + 10);
        SmoothFunction byPower = geometry.power(power);
        Path heat = JunctionPath.of(
                "heat",
                Link.of(around, "convection", HeatLaw.conductance(firstWatts / 10))
                        .weightedBy(new AmountWeight(ice[0], IceStore.SIDE, byPower)),
                Link.of(ice[0], "contact", HeatLaw.conductance(1e6)));
        // The density belongs to the blocks: geometry takes that of ice.
        Path melt = new ThawPath("melting", ice[0], water, 0, geometry, Ice.density(ZERO), latent);
        return NetworkSolver.standard().solve(Network.of(List.of(ice[0], water), List.of(heat, melt)), horizonS);
    }

    @ParameterizedTest
    @CsvSource({"water, 400, 8, 1433.743828125", "air, 12, 22, 17378.71306818182"})
    void cubesAreGoneWhenTheirFacesHaveReceded(String medium, double coefficient, double kelvin, double listedS) {
        double latent = 333_550;
        double side = 0.03;
        double density = 917;
        // Listed for 917 kg/m³; the library's ice has 916.7, and the time goes with the mass.
        double massKg = density * side * side * side;
        double watts = coefficient * kelvin * 6 * side * side;
        Node[] ice = new Node[1];
        Trajectory run = melting(latent, massKg, side, watts, 2, 1.2 * listedS, ice);
        double goneS = run.firstCrossing(0, t -> run.amount(ice[0], IceStore.SIDE, t) - 1e-3 * side)
                .orElseThrow();
        OutsideChecks.published(
                        "bare-ice-cube-gone-" + medium, "closed form: t = ρ L a/(2 h ΔT), all faces recede evenly")
                .what("time until a cube of 30 mm that melts by its surplus is gone, " + coefficient + " W/(m² K), "
                        + kelvin + " K")
                .unit("s")
                .expected(listedS)
                .withinRelative(5e-3)
                .check(goneS);
        assertThat(run.amount(ice[0], IceStore.MASS, 0.5 * listedS)).isCloseTo(massKg / 8, within(2e-3 * massKg));
    }

    @ParameterizedTest
    @ValueSource(doubles = {147050.64903846156})
    void aSphereInStillAirMeltsByConduction(double listedS) {
        double radius = 0.025;
        double massKg = 917 * 4.0 / 3 * Math.PI * radius * radius * radius;
        Node[] ice = new Node[1];
        double side = Math.cbrt(massKg / Ice.density(ZERO));
        double watts = 4 * Math.PI * radius * 0.026 * 25;
        Trajectory run = melting(333_550, massKg, side, watts, 1, 1.1 * listedS, ice);
        double goneS = run.firstCrossing(0, t -> run.amount(ice[0], IceStore.SIDE, t) - 1e-3 * side)
                .orElseThrow();
        OutsideChecks.published("bare-ice-sphere-gone", "closed form: t = ρ L R²/(2 k ΔT), conduction, Nu = 2")
                .what("time until a sphere of 50 mm that melts by its surplus is gone in air at rest, 25 K")
                .unit("s")
                .expected(listedS)
                .withinRelative(2e-3)
                .check(goneS);
    }

    @Test
    void slicesOfABottleMeetTheIceOneByOne() {
        ScenePrediction axial = Scene.builder()
                .gear("ice", cubes(1, 0).drained().build())
                .vessel("wine", BOTTLE, "ice", VesselModel.axial(8), Posture.UPRIGHT)
                .build()
                .predict(Duration.ofMinutes(30));
        ScenePrediction lumped = run(cubes(1, 0).drained().build(), Duration.ofMinutes(30));
        // Ice at the foot only: what is cooled stays below, and the mean is slower than that of mixed contents.
        double mean = axial.vessel("wine").meanTemperatureK(1800);
        assertThat(mean).isGreaterThan(lumped.vessel("wine").meanTemperatureK(1800));
        assertThat(axial.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void anExplanationNamesContactAndGaps() {
        String text = run(cubes(5, 0).build(), Duration.ofMinutes(20))
                .vessel("wine")
                .explainAt(Duration.ofMinutes(10))
                .text();
        System.out.println("Ice alone: " + text);
        assertThat(text).contains("contact").contains("gaps");
    }

    @Test
    void contactScalesWithItsFactor() {
        Scene scene = Scene.builder()
                .gear("ice", cubes(5, 0).build())
                .vessel("wine", BOTTLE, "ice")
                .build();
        double[] wine = new double[3];
        double[] factors = {0.5, 1, 2};
        for (int i = 0; i < factors.length; i++) {
            wine[i] = scene.predict(
                            Duration.ofMinutes(20),
                            NetworkSolver.standard()
                                    .withMultipliers(java.util.Map.of(Multipliers.ICE_CONTACT, factors[i])))
                    .vessel("wine")
                    .meanTemperatureK(1200);
        }
        System.out.printf(
                java.util.Locale.ROOT,
                "750 mL in 5 kg of ice alone, 20 min, contact halved, as estimated, doubled: %.1f, %.1f, %.1f °C%n",
                wine[0] - ZERO,
                wine[1] - ZERO,
                wine[2] - ZERO);
        assertThat(wine[0]).isGreaterThan(wine[1] + 0.5);
        assertThat(wine[1]).isGreaterThan(wine[2] + 0.5);
    }

    @Test
    void notesSayWhatIsAssumed() {
        ScenePrediction run = run(cubes(3, -5).build(), Duration.ofMinutes(1));
        assertThat(run.vessel("wine").notes()).anyMatch(note -> note.contains("touch 15 % of the wall of wine"));
        assertThat(BareIce.assumptions()).hasSize(5);
        assertThat(SaltedIce.assumptions()).hasSize(7);
    }

    @Test
    void badBucketsOfIceAreRefused() {
        assertThatThrownBy(() -> BareIce.of(BUCKET, kilograms(8), ROOM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("volume of the pile of ice");
        assertThatThrownBy(() -> BareIce.in(BUCKET, ROOM)
                        .ice(kilograms(3), millimetres(250), celsius(-5))
                        .build())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("side of an ice block");
        assertThatThrownBy(() -> BareIce.in(BUCKET, ROOM).build()).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> cubes(1, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> cubes(1, -31)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> cubes(0.001, -5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> BareIce.in(BUCKET, ROOM).ice(kilograms(1), millimetres(1), celsius(-5)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> cubes(1, -5).contact(fraction(0))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> cubes(1, -5).contact(fraction(1.5))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> cubes(1, -5).meltFilm(millimetres(9))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> cubes(1, -5).solidFraction(0.1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> cubes(1, -5).build().contactFraction(0)).isInstanceOf(IllegalArgumentException.class);
    }
}
