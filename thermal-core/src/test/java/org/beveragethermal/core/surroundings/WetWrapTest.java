/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.grams;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Wet wraps: the temperature they settle at, the water they lose, freezing, limits, and what is refused. */
class WetWrapTest {

    private static final double ZERO = 273.15;
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final double DIAMETER =
            2 * Vessels.highShouldered750().profile().maxOuterRadiusM();
    private static final Air BREEZE = air(30, 40, 2);
    private static final Freezer FREEZER =
            Freezer.of(Refrigerator.at(celsius(-18)).withRelativeHumidity(percent(70)));

    private static Air air(double airC, double percentHumidity, double speed) {
        return Air.at(celsius(airC))
                .withRelativeHumidity(percent(percentHumidity))
                .withSpeed(metresPerSecond(speed));
    }

    private static WetWrap towel(double waterGrams, Surroundings around) {
        return WetWrap.cloth(millimetres(2), grams(50), grams(waterGrams), celsius(20), around);
    }

    private static ScenePrediction run(Surroundings gear, FilledVessel vessel, Duration horizon) {
        return Scene.builder()
                .gear("gear", gear)
                .vessel("wine", vessel, "gear")
                .build()
                .predict(horizon);
    }

    private static ScenePrediction run(Surroundings gear, Duration horizon) {
        return run(gear, BOTTLE, horizon);
    }

    private static double wineC(ScenePrediction run, Duration time) {
        return run.vessel("wine").meanTemperatureK((double) time.toSeconds()) - ZERO;
    }

    private static double wrapC(ScenePrediction run, Duration time) {
        return run.gearTemperaturesK("gear", time).getOrDefault("wrap", Double.NaN) - ZERO;
    }

    /** Heat and vapour at a round wet surface across a wind strong enough for free convection not to matter [°C]. */
    private static double balanceC(double airC, double humidity, double speed, double diameterM) {
        double air = ZERO + airC;
        double pressure = 101_325;
        return new BrentSolver(1e-10)
                .solve(
                        200,
                        t -> {
                            double surface = ZERO + t;
                            double film = 0.5 * (air + surface);
                            double viscosity = DryAir.kinematicViscosity(film, pressure);
                            double h = DryAir.thermalConductivity(film)
                                    / diameterM
                                    * CrossflowCylinder.CHURCHILL_BERNSTEIN
                                            .law()
                                            .nusselt(speed * diameterM / viscosity, DryAir.prandtlNumber(film));
                            double vapour = h
                                    / 1006
                                    * 0.621945
                                    * Math.pow(0.85, -2.0 / 3)
                                    * Math.log((pressure - MoistAir.saturationPressure(surface))
                                            / (pressure - humidity * MoistAir.saturationPressure(air)));
                            double radiation = 0.95 * 5.670374e-8 * (Math.pow(air, 4) - Math.pow(surface, 4));
                            return h * (airC - t) + radiation + vapour * MoistAir.latentHeatOfEvaporation(surface);
                        },
                        airC - 40,
                        airC + 0.1);
    }

    @Test
    void settlesWhereHeatAndVapourBalance() {
        double root = balanceC(30, 0.4, 2, DIAMETER + 0.004);
        double height = 1000 * BOTTLE.vessel().profile().heightM();
        ScenePrediction run = run(
                towel(100, BREEZE).covering(millimetres(height)).standingInDish(millimetres(height)),
                Duration.ofHours(24));
        double wrap =
                run.gearTemperaturesK("gear", Duration.ofHours(24)).getOrDefault("wrap in the dish", Double.NaN) - ZERO;
        OutsideChecks.referenceLibrary(
                        "wet-wrap-balance", "Commons Math 3.6.1, BrentSolver, on the balance written out")
                .what("temperature at which a wet wrap in a wind of 2 m/s, 30 °C, 40 %, settles")
                .unit("°C")
                .expected(root)
                .within(0.1)
                .check(wrap);
        OutsideChecks.published(
                        "wet-wrap-textbook",
                        "Y. A. Cengel and A. J. Ghajar, Heat and Mass Transfer, 5th ed., example 14-13")
                .what("drink in a wet cloth before a fan, 30 °C, 40 % (the text leaves out radiation: below 1 K)")
                .unit("°C")
                .expected(19.4)
                .within(1.5)
                .check(wineC(run, Duration.ofHours(24)));
        // Above the thermodynamic wet bulb because of radiation.
        assertThat(wrap).isGreaterThan(MoistAir.wetBulbK(ZERO + 30, 0.4, 101_325) - ZERO);
    }

    @Test
    void aWetWrapInADraughtChillsBelowTheAir() {
        Duration hour = Duration.ofHours(1);
        FilledVessel warm = BOTTLE;
        Air draught = air(25, 50, 1);
        double wet = wineC(
                run(WetWrap.cloth(millimetres(2), grams(50), grams(120), celsius(20), draught), warm, hour), hour);
        double bare = Lumped.of(warm).expose(Exposure.in(draught, hour)).meanTemperatureK(3600) - ZERO;
        double still = wineC(run(towel(120, air(25, 50, 0)), warm, hour), hour);
        System.out.printf(
                Locale.ROOT,
                "750 mL of 22 °C in air of 25 °C, 50 %%, 1 h: wet wrap in 1 m/s %.1f °C, in still air %.1f °C, bare in 1 m/s %.1f °C%n",
                wet,
                still,
                bare);
        OutsideChecks.commonPractice("trade-wet-wrap")
                .what(
                        "bottle at 22 °C in a wet cloth in a draught of 25 °C after 1 h: colder than the air and than it was")
                .unit("°C")
                .between(16, 21.5)
                .check(wet);
        assertThat(wet).isLessThan(still).isLessThan(bare - 3);
        assertThat(still).isLessThan(22);
    }

    @Test
    void whatIsLostIsWhatTheLedgerEvaporated() {
        Duration time = Duration.ofHours(3);
        ScenePrediction run = run(towel(120, BREEZE), time);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        double lost = 0.120 - run.gearMassKg("gear", time);
        double heat = run.ledger().entries().stream()
                .filter(entry -> entry.mechanism().equals("evaporation"))
                .mapToDouble(LedgerEntry::heatJ)
                .sum();
        assertThat(lost).isBetween(0.06, 0.12);
        // Vapour of 15 °C to 25 °C takes 2528 kJ/kg to 2547 kJ/kg along.
        assertThat(-heat / lost).isBetween(2.526e6, 2.548e6);
    }

    @Test
    void stopsWhenDryAndThenInsulates() {
        Duration day = Duration.ofHours(24);
        ScenePrediction run = run(towel(20, BREEZE), day);
        assertThat(run.gearMassKg("gear", day)).isBetween(-1e-6, 1e-4);
        assertThat(wineC(run, day)).isCloseTo(30, within(0.1));
        // It is coldest on the way.
        double coldest = 99;
        for (int minutes = 10; minutes < 600; minutes += 10) {
            coldest = Math.min(coldest, wineC(run, Duration.ofMinutes(minutes)));
        }
        assertThat(coldest).isLessThan(21.8);
        // From the same start a dry cloth keeps the wine cool longer than none.
        Duration hour = Duration.ofHours(1);
        double wrapped = wineC(run(towel(0, BREEZE), hour), hour);
        double bare = Lumped.of(BOTTLE).expose(Exposure.in(BREEZE, hour)).meanTemperatureK(3600) - ZERO;
        assertThat(wrapped).isLessThan(bare - 0.5);
    }

    @Test
    void saturatedAirOfTheSameTemperatureDoesNothing() {
        Duration time = Duration.ofHours(5);
        ScenePrediction run =
                run(WetWrap.cloth(millimetres(2), grams(50), grams(120), celsius(22), air(22, 100, 1)), time);
        assertThat(wineC(run, time)).isCloseTo(22, within(1e-4));
        assertThat(run.gearMassKg("gear", time)).isCloseTo(0.120, within(1e-8));
    }

    /** Limit: next to nothing around the bottle, which stands, lies or stands on its mouth, is the bare bottle. */
    @Test
    void aThinDryWrapChangesNothing() {
        Duration hour = Duration.ofHours(1);
        for (Surroundings around :
                List.of(Air.at(celsius(30)), Air.at(celsius(30)).withSpeed(metresPerSecond(2)))) {
            WetWrap thin = WetWrap.of(
                            Solids.sodaLimeGlass(), millimetres(0.01), kilograms(1e-6), grams(0), celsius(22), around)
                    .withGap(millimetres(0));
            for (Posture posture : Posture.values()) {
                double wrapped = Lumped.of(BOTTLE)
                        .expose(new Exposure(thin, hour, Placement.of(posture)))
                        .meanTemperatureK(3600);
                double bare = Lumped.of(BOTTLE)
                        .expose(new Exposure(around, hour, Placement.of(posture)))
                        .meanTemperatureK(3600);
                // The bottle's patches have the bottle's emissivity, the wrap that of its material, and it is 0.02 mm
                // wider.
                assertThat(wrapped).isCloseTo(bare, within(4e-3));
            }
        }
    }

    @Test
    void aWrapOverHalfTheSideLiesBetween() {
        Duration time = Duration.ofMinutes(40);
        double half = wineC(run(towel(100, BREEZE).covering(millimetres(110)), time), time);
        double all = wineC(run(towel(100, BREEZE), time), time);
        double bare = wineC(run(BREEZE, time), time);
        assertThat(half).isBetween(all + 0.3, bare - 0.3);
    }

    @Test
    void aDishKeepsItWetForAsLongAsItIsFilled() {
        Duration day = Duration.ofHours(24);
        WetWrap alone = towel(60, BREEZE).covering(millimetres(220));
        double fed = wineC(run(alone.standingInDish(millimetres(150)), day), day);
        double dried = wineC(run(alone, day), day);
        assertThat(fed).isLessThan(dried - 3);
        assertThat(run(alone.standingInDish(millimetres(150)), day).ledger().closure())
                .isLessThan(1e-9);
    }

    @Test
    void inAFreezerItsWaterFreezesAndSublimates() {
        Duration time = Duration.ofMinutes(60);
        ScenePrediction wet = run(towel(120, FREEZER), time);
        ScenePrediction bare = run(FREEZER, time);
        assertThat(wet.ledger().closure()).isLessThan(1e-9);
        System.out.printf(
                Locale.ROOT,
                "750 mL of 22 °C in a still freezer of −18 °C, 1 h: in a wet cloth %.1f °C, bare %.1f °C; water lost %.1f g%n",
                wineC(wet, time),
                wineC(bare, time),
                1000 * (0.12 - wet.gearMassKg("gear", time)));
        Duration night = Duration.ofHours(30);
        ScenePrediction frozen = run(towel(120, FREEZER), night);
        assertThat(wrapC(frozen, night)).isLessThan(-10);
        double atTen = frozen.gearMassKg("gear", Duration.ofHours(20));
        assertThat(frozen.gearMassKg("gear", night)).isLessThan(atTen);
        assertThat(frozen.vessel("wine").notes()).anyMatch(note -> note.contains("burst"));
    }

    @Test
    void heatOfFreezingIsThatOfIce() {
        WetStore store = new WetStore(60, 0.1);
        double cooled = store.enthalpyJ(ZERO + 1e-9, 0.1) - store.enthalpyJ(ZERO - 1e-9, 0.1);
        OutsideChecks.published("wet-wrap-fusion", "IAPWS R10-06(2009), heat of fusion of ice Ih at 0 °C, 333.4 kJ/kg")
                .what("heat that 100 g of water in a cloth give off as they freeze")
                .unit("J")
                .expected(33_340)
                .withinRelative(0.001)
                .check(cooled);
        assertThat(WetStore.FUSION_J_PER_KG).isCloseTo(Ice.latentHeatOfFusion().value(), within(500.0));
        // The map and its inverse, and the slopes that it states.
        StoreState state = new StoreState(1);
        StoreState next = new StoreState(1);
        for (double t : new double[] {-20, -0.5, 0.5, 25}) {
            double h = store.enthalpyJ(ZERO + t, 0.07);
            store.evaluate(h, new double[] {0.07}, 0, state);
            assertThat(state.temperatureK).isCloseTo(ZERO + t, within(1e-9));
            store.evaluate(h + 0.01, new double[] {0.07}, 0, next);
            assertThat((next.temperatureK - state.temperatureK) / 0.01)
                    .isCloseTo(state.temperaturePerJoule, within(1e-6));
            store.evaluate(h, new double[] {0.07 + 1e-7}, 0, next);
            assertThat((next.temperatureK - state.temperatureK) / 1e-7)
                    .isCloseTo(state.temperaturePerAmount[0], within(1e-3 * Math.abs(state.temperaturePerAmount[0])));
        }
    }

    @Test
    void slopesOfTheSurfaceAreThoseOfItsFlows() {
        Medium medium = towel(60, BREEZE).open("gear", 0);
        Occupant vessel = new Occupant("wine", Vessels.highShouldered750());
        Path path = medium.paths(List.of(vessel)).get(0);
        assertThat(path).isInstanceOf(WetSurfacePath.class);
        int ends = path.ends().size();
        for (double water : new double[] {0.05, 0.004}) {
            for (double surface : new double[] {18, 33, 5}) {
                double[] inputs = new double[ends];
                java.util.Arrays.fill(inputs, ZERO + 30);
                inputs[ends - 1] = ZERO + surface;
                PathEvaluation e = new PathEvaluation(path);
                for (int account = 0; account < path.accounts().size(); account++) {
                    for (int input = 0; input <= ends; input++) {
                        e.evaluate(path, 0, inputs, water);
                        double stated = e.derivativeOf(account, input);
                        double step = input == ends ? 1e-7 : 1e-4;
                        double up = flow(path, e, account, inputs, water, input, step);
                        double down = flow(path, e, account, inputs, water, input, -step);
                        double slope = (up - down) / (2 * step);
                        assertThat(stated).isCloseTo(slope, within(1e-4 * (Math.abs(slope) + 1e-4)));
                    }
                }
            }
        }
    }

    private static double flow(
            Path path, PathEvaluation e, int account, double[] inputs, double water, int input, double step) {
        double[] moved = inputs.clone();
        if (input < inputs.length) {
            moved[input] += step;
        }
        e.evaluate(path, 0, moved, input == inputs.length ? water + step : water);
        return e.flowOf(account);
    }

    @Test
    void conductsTheBetterTheWetterItIs() {
        PorousLayer layer = new PorousLayer(0.06, 0.002, 0.0002, 0.07);
        double step = 1e-6;
        for (double water : new double[] {0, 0.02, 0.08, 0.11, 0.3}) {
            assertThat(layer.slope(water))
                    .isCloseTo((layer.at(water + step) - layer.at(water - step)) / (2 * step), within(1e-3));
        }
        assertThat(layer.resistance(0))
                .isCloseTo(0.002 / 0.06 + 0.0002 / DryAir.thermalConductivity(293.15), within(1e-12));
        // Six tenths water, as the table has it for wrung cotton.
        PorousLayer cotton =
                new PorousLayer(Solids.cotton().thermalConductivity().value(), 0.002, 0, 0.07);
        assertThat(0.002 / cotton.resistance(0.6 * 998.2 * 0.07 * 0.002))
                .isCloseTo(Solids.wetCotton().thermalConductivity().value(), within(0.01));
    }

    @Test
    void waterRisesInPores() {
        OutsideChecks.fromMemory(
                        "capillary-rise",
                        "Y. A. Cengel and J. M. Cimbala, Fluid Mechanics, ch. 2: glass tube of 0.6 mm in water of 20 °C, 5.0 cm")
                .what("height to which water rises in a pore of 0.3 mm radius")
                .unit("cm")
                .expected(5.0)
                .within(0.1)
                .check(100 * WetWrap.capillaryHeightM(millimetres(0.3)));
    }

    @Test
    void aVesselThatComesAndGoes() {
        WetWrap towel = towel(100, BREEZE);
        ScenePrediction run = Scene.builder()
                .gear("breeze", BREEZE)
                .gear("gear", towel)
                .vessel("wine", BOTTLE, "breeze")
                .move("wine", Duration.ofMinutes(30), "gear")
                .move("wine", Duration.ofMinutes(60), "breeze")
                .build()
                .predict(Duration.ofMinutes(90));
        assertThat(run.gearMassKg("gear", Duration.ofMinutes(30))).isCloseTo(0.1, within(1e-12));
        double left = run.gearMassKg("gear", Duration.ofMinutes(60));
        assertThat(left).isLessThan(0.095);
        assertThat(run.gearMassKg("gear", Duration.ofMinutes(90))).isCloseTo(left, within(1e-12));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void waterPouredOverItIsTakenUpAsFarAsItHolds() {
        Scene.Builder tended = Scene.builder()
                .gear("gear", towel(20, BREEZE))
                .vessel("wine", BOTTLE, "gear")
                .topUpWater("gear", Duration.ofHours(2), kilograms(0.05), celsius(20))
                .topUpWater("gear", Duration.ofHours(8), kilograms(2), celsius(20));
        ScenePrediction run = tended.build().predict(Duration.ofHours(10));
        assertThat(run.gearMassKg("gear", Duration.ofMinutes(119))).isLessThan(0.005);
        double after = run.gearMassKg("gear", Duration.ofSeconds(7201));
        assertThat(after).isCloseTo(0.05 + run.gearMassKg("gear", Duration.ofMinutes(119)), within(1e-3));
        // 2 mm over some 0.07 m² hold little more than 100 g.
        assertThat(run.gearMassKg("gear", Duration.ofSeconds(28_801))).isBetween(0.08, 0.15);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(wineC(run, Duration.ofHours(10)))
                .isLessThan(wineC(run(towel(20, BREEZE), Duration.ofHours(10)), Duration.ofHours(10)) - 2);
        assertThatThrownBy(() -> tended.stir("gear", Duration.ofHours(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("gear");
    }

    @Test
    void layeredVesselsFeelTheSameWrap() {
        Duration time = Duration.ofMinutes(40);
        double lumped = wineC(run(towel(100, BREEZE), time), time);
        double layered = Scene.builder()
                        .gear("gear", towel(100, BREEZE).covering(millimetres(200)))
                        .vessel("wine", BOTTLE, "gear", VesselModel.axial(6), Posture.UPRIGHT)
                        .build()
                        .predict(time)
                        .vessel("wine")
                        .meanTemperatureK((double) time.toSeconds())
                - ZERO;
        assertThat(layered).isCloseTo(lumped, within(1.5));
    }

    @Test
    void badWrapsAreRefused() {
        Air moist = BREEZE;
        assertThatThrownBy(() -> towel(100, Air.at(celsius(20))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("humidity is not stated");
        assertThatThrownBy(() -> towel(
                        100,
                        WaterBath.of(Bucket.of(millimetres(300), millimetres(350)), litres(10), celsius(20), moist)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("WaterBath")
                .hasMessageContaining("expected air");
        assertThatThrownBy(() -> WetWrap.cloth(millimetres(80), grams(50), grams(10), celsius(20), moist))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("thickness of a wrap");
        assertThatThrownBy(() -> WetWrap.paper(millimetres(1), grams(0), grams(10), celsius(20), moist))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("dry mass");
        assertThatThrownBy(() -> WetWrap.clay(millimetres(8), grams(900), kilograms(6), celsius(20), moist))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("water in a wrap");
        assertThatThrownBy(() -> WetWrap.cloth(millimetres(2), grams(50), grams(10), celsius(80), moist))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> towel(100, moist).standingInDish(millimetres(100)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("covering");
        assertThatThrownBy(() -> towel(100, FREEZER).covering(millimetres(200)).standingInDish(millimetres(100)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("freeze");
        assertThatThrownBy(() -> WetWrap.capillaryHeightM(millimetres(0))).isInstanceOf(OutOfRangeException.class);
        assertThat(WetWrap.assumptions()).hasSize(3);
    }

    @Test
    void oneVesselAtATime() {
        Scene two = Scene.builder()
                .gear("towel", towel(100, BREEZE))
                .vessel("red", BOTTLE, "towel")
                .vessel("white", BOTTLE, "towel")
                .build();
        assertThatThrownBy(() -> two.predict(Duration.ofMinutes(10)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("towel")
                .hasMessageContaining("red")
                .hasMessageContaining("white");
        WetWrap fed = towel(100, BREEZE).covering(millimetres(200)).standingInDish(millimetres(100));
        assertThatThrownBy(() ->
                        Lumped.of(BOTTLE).expose(new Exposure(fed, Duration.ofMinutes(5), Placement.of(Posture.LYING))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lies");
        WetWrap high = towel(100, BREEZE).covering(millimetres(500)).standingInDish(millimetres(100));
        assertThatThrownBy(() -> run(high, Duration.ofMinutes(5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("covers 0.500 m of vessel wine");
    }

    @Test
    void tellsOfMoreWaterThanItHolds() {
        ScenePrediction run = run(towel(400, BREEZE), Duration.ofMinutes(5));
        assertThat(run.vessel("wine").notes())
                .anyMatch(note -> note.contains("drip off"))
                .anyMatch(note -> note.contains("own assumptions"));
        Node node = towel(1, BREEZE).open("x", 0).nodes().get(0);
        assertThat(Objects.requireNonNull(node).name()).isEqualTo("x wrap");
    }
}
