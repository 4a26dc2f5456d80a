/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerMetreKelvin;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.beveragethermal.core.conduction.AxisymmetricBlock;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Soil;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** A bottle in a hole in the ground: closed forms, two descriptions of the ground beside each other, limits, and what is refused. */
class EarthTest {

    private static final double ZERO = 273.15;
    private static final double DAY_S = 86_400;
    private static final Source OWN = new Source("test", "made up for a test", Source.Kind.OWN_ASSUMPTION);
    private static final double CONDUCTIVITY = 1.1;
    private static final double HEAT_CAPACITY = 2.3e6;

    private static Solid solid(double conductivity, double volumetric) {
        double density = Math.sqrt(volumetric);
        return new Solid(
                "ground",
                exact(density),
                exact(conductivity),
                exact(volumetric / density),
                new Constant("emissivity", 0.9, "1", Uncertainty.exact(), OWN));
    }

    private static Constant exact(double value) {
        return new Constant("test", value, "1", Uncertainty.exact(), OWN);
    }

    private static FilledVessel bottle(double temperatureC) {
        return Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(temperatureC));
    }

    private static Earth covered(Solid earth, double groundC, double airC) {
        return Earth.hole(millimetres(110), millimetres(450), earth, celsius(groundC), Air.at(celsius(airC)))
                .coveredBy(millimetres(100));
    }

    private static Earth open(Solid earth, double groundC, double airC) {
        return Earth.hole(millimetres(110), millimetres(220), earth, celsius(groundC), Air.at(celsius(airC)));
    }

    private static ScenePrediction run(Surroundings gear, FilledVessel vessel, Duration horizon) {
        return run(gear, vessel, VesselModel.lumped(), Placement.upright(), horizon);
    }

    private static ScenePrediction run(
            Surroundings gear, FilledVessel vessel, VesselModel model, Placement placement, Duration horizon) {
        return Scene.builder()
                .gear("hole", gear)
                .vessel("wine", vessel, "hole", model, placement)
                .build()
                .predict(horizon);
    }

    private static double wineC(ScenePrediction run, double hours) {
        return run.vessel("wine").meanTemperatureK(3600 * hours) - ZERO;
    }

    // The ground by itself.

    @Test
    void aDailyWaveFadesAndLags() {
        GroundTemperature ground =
                GroundTemperature.of(celsius(15)).withDailyWave(kelvinDifference(10), Duration.ofHours(14));
        double diffusivity = CONDUCTIVITY / HEAT_CAPACITY;
        double[][] listed = {
            {0.1, 0.418140378, 3.3305581}, {0.2, 0.174841375, 6.6611162}, {0.4, 0.0305695066, 13.3222324}
        };
        for (double[] row : listed) {
            // Warmest at the depth where the wave of the surface was warmest a lag before.
            double crest = ground.temperatureK(row[0], 3600 * (14 + row[2]), diffusivity) - ZERO - 15;
            double zero = ground.temperatureK(row[0], 3600 * (14 + row[2] + 6), diffusivity) - ZERO - 15;
            OutsideChecks.published(
                            "earth-wave-" + row[0],
                            "H. S. Carslaw, J. C. Jaeger, Conduction of Heat in Solids, 1959, section 2.6: periodic surface")
                    .what("amplitude of the daily wave at " + row[0] + " m over that of the surface, at the listed lag")
                    .unit("1")
                    .expected(row[1])
                    .within(1e-7)
                    .check(crest / 10);
            assertThat(zero).isCloseTo(0, within(1e-6));
        }
    }

    /** Ten days under a surface that swings: what the block carries down is the closed form it started from. */
    @Test
    void theGroundCarriesTheWavesDown() {
        GroundTemperature ground = GroundTemperature.of(celsius(12))
                .withYearlyWave(kelvinDifference(9), Duration.ofDays(40))
                .withDailyWave(kelvinDifference(6), Duration.ofHours(14));
        Earth earth = Earth.hole(
                millimetres(110), millimetres(400), solid(CONDUCTIVITY, HEAT_CAPACITY), ground, Air.at(celsius(12)));
        AxisymmetricBlock block = AxisymmetricBlock.of(
                "ground",
                new double[] {0, 0.1, 0.2},
                AxisymmetricBlock.graded(0, earth.farM(), 0.012, 1.06),
                CONDUCTIVITY,
                HEAT_CAPACITY,
                depthM -> earth.startK(depthM, 0),
                0,
                0,
                0);
        Boundary surface = Boundary.varying(
                "surface", TimeFunction.smooth(timeS -> ground.temperatureK(0, timeS, earth.diffusivity())));
        List<Path> paths = new ArrayList<>(block.paths());
        paths.addAll(block.top(surface, 1e6));
        double end = 10 * DAY_S;
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-3).solve(Network.of(block.nodes(), paths), end);
        for (double depth : new double[] {0.1, 0.2, 0.4, 1.0}) {
            OutsideChecks.published(
                            "earth-waves-carried-" + depth,
                            "H. S. Carslaw, J. C. Jaeger, Conduction of Heat in Solids, 1959, section 2.6: periodic surface")
                    .what("ground after ten days under waves of year and day, " + depth + " m deep")
                    .unit("°C")
                    .expected(ground.temperatureK(depth, end, earth.diffusivity()) - ZERO)
                    .within(0.05)
                    .check(block.atK(0, depth, run, end) - ZERO);
        }
    }

    /** One row of rings that a body fills from top to bottom: the infinitely long bottle. */
    @Test
    void aLongBottleInTheBlock() {
        double[] rings = AxisymmetricBlock.graded(0.0375, 2, 0.002, 1.1);
        double[] radii = new double[rings.length + 1];
        System.arraycopy(rings, 0, radii, 1, rings.length);
        Node body = Node.sensible("body", 3550 / 0.24, ZERO + 24);
        AxisymmetricBlock block = AxisymmetricBlock.of(
                "ground", radii, new double[] {0, 0.5, 1}, CONDUCTIVITY, HEAT_CAPACITY, ZERO + 12, 0.0375, 0, 1);
        List<Path> paths = new ArrayList<>(block.paths());
        paths.addAll(block.hole(body, 45));
        List<Node> nodes = new ArrayList<>(block.nodes());
        nodes.add(body);
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-4).solve(Network.of(nodes, paths), DAY_S);
        double[][] listed = {
            {1800, 18.046592}, {3600, 15.905465}, {7200, 14.139948}, {10_800, 13.418131},
            {21_600, 12.672964}, {43_200, 12.319990}, {64_800, 12.208948}, {86_400, 12.154956}
        };
        for (double[] row : listed) {
            OutsideChecks.referenceLibrary(
                            "earth-long-bottle-" + row[0], "Laplace inversion (Talbot and de Hoog agree to 2e-12 K)")
                    .what("infinitely long bottle in ground of 12 °C, by rings, after " + row[0] + " s")
                    .unit("°C")
                    .expected(row[1])
                    .within(0.01)
                    .check(run.temperatureK(body, row[0]) - ZERO);
        }
    }

    // A round body of 75 mm below 80 mm of ground under warm air: no closed form; the grid halved twice.

    private static double buriedBodyC(int cuts, double horizonS) {
        Earth earth = Earth.hole(
                        millimetres(75),
                        millimetres(320),
                        solid(CONDUCTIVITY, HEAT_CAPACITY),
                        celsius(12),
                        Air.at(celsius(26)))
                .coveredBy(millimetres(80));
        AxisymmetricBlock block = EarthBlock.of("ground", earth, 0, new EarthBlock.Grid(0.012, 1.6, cuts));
        Node body = Node.sensible("body", 3550, ZERO + 24);
        List<Path> paths = new ArrayList<>(block.paths());
        paths.addAll(block.top(Boundary.constant("air", ZERO + 26), 12));
        paths.addAll(block.hole(body, 45));
        List<Node> nodes = new ArrayList<>(block.nodes());
        nodes.add(body);
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-4).solve(Network.of(nodes, paths), horizonS);
        return run.temperatureK(body, horizonS) - ZERO;
    }

    @Test
    void ringsConvergeInSecondOrder() {
        double usual = buriedBodyC(1, 1800);
        double half = buriedBodyC(2, 1800);
        double quarter = buriedBodyC(4, 1800);
        double order = Math.log((usual - half) / (half - quarter)) / Math.log(2);
        double limit = quarter + (quarter - half) / 3;
        assertThat(order).isBetween(1.8, 2.2);
        assertThat(Math.abs(usual - limit)).isLessThan(0.06);
        assertThat(Math.abs(half - limit)).isLessThan(0.016);
        assertThat(Math.abs(quarter - limit)).isLessThan(0.005);
    }

    // A bottle of wine in the hole.

    @Test
    void fineRingsChangeLittle() {
        for (Earth earth : List.of(covered(Solids.dampClay(), 12, 24), open(Solids.drySand(), 12, 24))) {
            Duration horizon = Duration.ofHours(12);
            ScenePrediction usual = run(earth, bottle(22), horizon);
            ScenePrediction fine = run(earth.withModel(Earth.Model.FINE_BLOCK), bottle(22), horizon);
            for (double hours : new double[] {0.5, 1, 2, 4, 8, 12}) {
                assertThat(wineC(usual, hours)).isCloseTo(wineC(fine, hours), within(0.05));
            }
        }
    }

    @Test
    void shellsAreNearTheBlockWhereTheSurfaceIsAsTheGround() {
        Duration horizon = Duration.ofHours(24);
        for (Solid earth : List.of(Solids.dampClay(), Solids.wetSand(), Solids.drySand())) {
            ScenePrediction block = run(covered(earth, 12, 12), bottle(22), horizon);
            ScenePrediction shells = run(covered(earth, 12, 12).withModel(Earth.Model.RADIAL), bottle(22), horizon);
            double worst = 0;
            for (double hours : new double[] {0.5, 1, 2, 4, 8, 16, 24}) {
                double error = wineC(shells, hours) - wineC(block, hours);
                worst = Math.abs(error) > Math.abs(worst) ? error : worst;
            }
            System.out.printf(Locale.ROOT, "shells against rings, %s: at most %.2f K%n", earth.name(), worst);
            // Of a first excess of 10 K.
            assertThat(Math.abs(worst)).as(earth.name()).isLessThan(0.6);
        }
    }

    /** What shells do not know: the surface above. */
    @Test
    void shellsDoNotFeelTheSurface() {
        Duration horizon = Duration.ofHours(24);
        ScenePrediction block = run(covered(Solids.dampClay(), 12, 22), bottle(22), horizon);
        ScenePrediction shells =
                run(covered(Solids.dampClay(), 12, 22).withModel(Earth.Model.RADIAL), bottle(22), horizon);
        System.out.printf(
                Locale.ROOT,
                "shells against rings, air 10 K warmer: %.2f K after 6 h, %.2f K after a day%n",
                wineC(shells, 6) - wineC(block, 6),
                wineC(shells, 24) - wineC(block, 24));
        assertThat(wineC(shells, 6) - wineC(block, 6)).isBetween(-0.6, 0.0);
        assertThat(wineC(shells, 24) - wineC(block, 24)).isBetween(-2.5, -0.5);
    }

    @Test
    void aPerfectConductorIsTheGroundBehindItsContact() {
        double contact = 25;
        Earth earth = covered(solid(1e5, 1e10), 12, 12)
                .withBackfill(wattsPerMetreKelvin(1e6))
                .withContact(wattsPerSquareMetreKelvin(contact));
        Surroundings held = (id, originS) -> new HeldWall(Boundary.constant(id + " ground", ZERO + 12), contact);
        Duration horizon = Duration.ofHours(3);
        ScenePrediction buried = run(earth, bottle(22), horizon);
        ScenePrediction behind = run(held, bottle(22), horizon);
        for (double hours : new double[] {0.5, 1, 3}) {
            assertThat(wineC(buried, hours)).isCloseTo(wineC(behind, hours), within(0.01));
        }
    }

    /** A wall that meets something of one temperature everywhere across a resistance. */
    private record HeldWall(Boundary ground, double coefficient) implements Medium {
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
            HeatLaw law = HeatLaw.conductance(coefficient * patch.outerAreaM2());
            return List.of(Face.whole("ground", List.of(Link.of(ground, "conduction", law))));
        }

        @Override
        public List<String> notes(List<Occupant> occupants) {
            return List.of();
        }
    }

    @Test
    void withoutContactNothingPasses() {
        for (Earth.Model model : List.of(Earth.Model.BLOCK, Earth.Model.RADIAL)) {
            Earth earth =
                    covered(Solids.dampClay(), 12, 26).withModel(model).withContact(wattsPerSquareMetreKelvin(1e-4));
            assertThat(wineC(run(earth, bottle(22), Duration.ofHours(12)), 12)).isCloseTo(22, within(0.003));
        }
    }

    @Test
    void equalTemperaturesStay() {
        for (Earth.Model model : List.of(Earth.Model.BLOCK, Earth.Model.RADIAL)) {
            for (Earth earth : List.of(covered(Solids.dampSand(), 12, 12), open(Solids.dampSand(), 12, 12))) {
                ScenePrediction run = run(earth.withModel(model), bottle(12), Duration.ofDays(30));
                assertThat(wineC(run, 24 * 30)).isCloseTo(12, within(1e-6));
            }
        }
    }

    /** After a month a bottle has the temperature of the half-space at the middle of the wine, 0.34 m deep; its film is known between 5 and 10. */
    @Test
    void afterAMonthItIsTheHalfSpaceUnderAFilm() {
        Earth earth = covered(solid(CONDUCTIVITY, HEAT_CAPACITY), 12, 26);
        double month = wineC(run(earth, bottle(12), Duration.ofDays(30)), 24 * 30);
        OutsideChecks.published(
                        "earth-month",
                        "Cengel and Ghajar, Heat and Mass Transfer, 5th ed., eq. 4-47: semi-infinite solid, convection")
                .what(
                        "wine under 100 mm of ground of 12 °C, air of 26 °C, after thirty days: between films of 5 and 10 W/(m² K)")
                .unit("°C")
                .between(22.152, 22.859)
                .check(month);
    }

    @Test
    void whatSticksOutStandsInTheAir() {
        Duration horizon = Duration.ofHours(6);
        Solid clay = Solids.dampClay();
        Air air = Air.at(celsius(28));
        double shallow = wineC(
                run(Earth.hole(millimetres(110), millimetres(60), clay, celsius(12), air), bottle(12), horizon), 6);
        double deep = wineC(
                run(Earth.hole(millimetres(110), millimetres(280), clay, celsius(12), air), bottle(12), horizon), 6);
        double inAir = wineC(run(air, bottle(12), horizon), 6);
        assertThat(deep).isLessThan(shallow - 1);
        assertThat(shallow).isLessThan(inAir - 0.5);
    }

    @Test
    void slicesAndOnTheNeck() {
        Earth earth = covered(Solids.dampClay(), 12, 20);
        Duration horizon = Duration.ofHours(6);
        double lumped = wineC(run(earth, bottle(22), horizon), 6);
        ScenePrediction slices = run(earth, bottle(22), VesselModel.axial(8), Placement.upright(), horizon);
        assertThat(wineC(slices, 6)).isCloseTo(lumped, within(1.0));
        assertThat(slices.ledger().closure()).isLessThan(1e-9);
        ScenePrediction turned = run(earth, bottle(22), VesselModel.axial(8), Placement.of(Posture.INVERTED), horizon);
        assertThat(wineC(turned, 6)).isCloseTo(lumped, within(1.0));
        assertThat(turned.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void factorsOnContactAndConductionSlowItDown() {
        Earth earth = covered(Solids.dampClay(), 12, 12);
        for (String factor : List.of(Multipliers.EARTH_CONTACT, Multipliers.EARTH_CONDUCTION)) {
            double[] after = new double[2];
            for (int i = 0; i < 2; i++) {
                after[i] = Scene.builder()
                                .gear("hole", earth)
                                .vessel("wine", bottle(22), "hole")
                                .build()
                                .predict(
                                        Duration.ofHours(1),
                                        NetworkSolver.standard().withMultipliers(Map.of(factor, i == 0 ? 0.5 : 1.5)))
                                .vessel("wine")
                                .meanTemperatureK(3600)
                        - ZERO;
            }
            assertThat(after[0]).as(factor).isGreaterThan(after[1] + 0.3);
        }
    }

    /** Heat of the wine goes into the ground; what comes through the surface is counted too. */
    @Test
    void theHeatIsAccountedFor() {
        ScenePrediction run = run(open(Solids.dampSand(), 12, 26), bottle(22), Duration.ofHours(24));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(run.gearTemperaturesK("hole", Duration.ofHours(24)).values())
                .allMatch(kelvin -> kelvin > ZERO + 12 - 1e-6 && kelvin < ZERO + 26);
    }

    /** A second bottle after the first finds the ground warmed. */
    @Test
    void theGroundRemembers() {
        Air room = Air.at(celsius(22));
        ScenePrediction run = Scene.builder()
                .gear("hole", covered(Solids.dampClay(), 12, 12))
                .gear("room", room)
                .vessel("first", bottle(22), "hole")
                .vessel("second", bottle(22), "room")
                .move("first", Duration.ofHours(1), "room")
                .move("second", Duration.ofHours(1), "hole")
                .build()
                .predict(Duration.ofHours(2));
        double first = run.vessel("first").meanTemperatureK(3600);
        double second = run.vessel("second").meanTemperatureK(7200);
        assertThat(second).isGreaterThan(first + 0.3);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void buriedInDampGroundOfTwelveDegrees() {
        // Near is within 2 K. Shade, 18 ± 7 °C in the course of the day, under 200 mm of clay.
        Air shade = Air.periodic(celsius(18), kelvinDifference(7), Duration.ofDays(1), Duration.ofHours(6));
        Earth ground = Earth.hole(millimetres(110), millimetres(550), Solids.dampClay(), celsius(12), shade)
                .coveredBy(millimetres(200));
        ScenePrediction kept = run(ground, bottle(12), Duration.ofHours(24));
        OutsideChecks.commonPractice("trade-earth-keeps")
                .what("wine of 12 °C under 200 mm of damp clay of 12 °C is within 2 K of it after a day")
                .unit("°C")
                .between(10, 14)
                .check(wineC(kept, 24));
        ScenePrediction cooled = run(ground, bottle(24), Duration.ofHours(24));
        assertThat(wineC(cooled, 24)).isBetween(10.0, 15.0);
        for (double hours : new double[] {1, 2, 3, 6, 12, 24}) {
            System.out.printf(
                    Locale.ROOT,
                    "buried in damp clay of 12 °C, after %.0f h: from 12 °C %.2f °C, from 24 °C %.2f °C%n",
                    hours,
                    wineC(kept, hours),
                    wineC(cooled, hours));
        }
        for (Solid sand : List.of(Soil.sand().moist(percent(0)), Soil.sand().moist(percent(5)), Solids.wetSand())) {
            Earth beach = Earth.hole(millimetres(110), millimetres(220), sand, celsius(18), Air.at(celsius(28)));
            ScenePrediction run = run(beach, bottle(24), Duration.ofHours(4));
            System.out.printf(
                    Locale.ROOT,
                    "neck out of %s of 18 °C, air of 28 °C: from 24 °C to %.2f °C in 1 h, %.2f °C in 4 h%n",
                    sand.name(),
                    wineC(run, 1),
                    wineC(run, 4));
        }
        assertThat(kept.vessel("wine").notes()).anyMatch(note -> note.contains("wash wine before it is opened"));
    }

    // Refusals.

    @Test
    void badHolesAreRefused() {
        Air air = Air.at(celsius(20));
        Solid clay = Solids.dampClay();
        assertThatThrownBy(() -> Earth.hole(millimetres(5), millimetres(300), clay, celsius(12), air))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("diameter of a hole");
        assertThatThrownBy(() -> Earth.hole(millimetres(110), metres(5), clay, celsius(12), air))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("depth of a hole");
        assertThatThrownBy(() -> Earth.hole(millimetres(110), millimetres(300), clay, celsius(90), air))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("temperature of the ground");
        Earth hole = Earth.hole(millimetres(110), millimetres(300), clay, celsius(12), air);
        assertThatThrownBy(() -> hole.coveredBy(millimetres(290)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("cover of earth");
        assertThatThrownBy(() -> hole.withContact(wattsPerSquareMetreKelvin(-1)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> hole.withBackfill(wattsPerMetreKelvin(0))).isInstanceOf(OutOfRangeException.class);
        GroundTemperature ground = GroundTemperature.of(celsius(60));
        assertThatThrownBy(() -> ground.withDailyWave(kelvinDifference(11), Duration.ZERO))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("daily wave");
        assertThatThrownBy(() -> ground.withYearlyWave(kelvinDifference(1), Duration.ofDays(5000)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ground.temperatureK(-1, 0, 5e-7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ground.temperatureK(1, Double.NaN, 5e-7)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void vesselsThatDoNotFitAreRefused() {
        Duration hour = Duration.ofHours(1);
        Earth hole = covered(Solids.dampClay(), 12, 20);
        assertThatThrownBy(() -> run(hole, bottle(20), VesselModel.lumped(), Placement.of(Posture.LYING), hour))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("vessel wine in hole hole: it lies");
        Scene.Builder two = Scene.builder()
                .gear("hole", hole)
                .vessel("a", bottle(20), "hole")
                .vessel("b", bottle(20), "hole");
        assertThatThrownBy(() -> two.build().predict(hour))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[a, b] in hole hole: expected one vessel at a time");
        Earth tight =
                Earth.hole(millimetres(60), millimetres(200), Solids.dampClay(), celsius(12), Air.at(celsius(20)));
        assertThatThrownBy(() -> run(tight, bottle(20), hour))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("diameter of vessel wine");
        Earth deep =
                Earth.hole(millimetres(110), millimetres(500), Solids.dampClay(), celsius(12), Air.at(celsius(20)));
        assertThatThrownBy(() -> run(deep, bottle(20), hour))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("takes a cover");
        Earth low = deep.coveredBy(millimetres(300));
        assertThatThrownBy(() -> run(low, bottle(20), hour))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("room below the cover");
    }
}
