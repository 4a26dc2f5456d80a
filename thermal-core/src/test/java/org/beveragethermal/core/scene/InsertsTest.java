/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.grams;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.beveragethermal.core.correlation.Sphere;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.LinearSpread;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.Closure;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Ice, stones, steel and sealed balls in a drink: balances, limits, what a user is told, and what is refused. */
class InsertsTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(22));
    private static final Beverage WINE = Beverage.wine(percentByVolume(12.5));
    private static final FilledVessel GLASS = Vessels.tastingGlass().filledWith(WINE, millilitres(100), celsius(18));
    private static final Duration FIVE = Duration.ofMinutes(5);
    private static final Duration HALF_AN_HOUR = Duration.ofMinutes(30);

    private static Scene.Builder glass() {
        return Scene.builder().gear("room", ROOM).vessel("wine", GLASS, "room");
    }

    private static Scene with(Insert insert) {
        return glass().addToDrink("wine", FIVE, insert).build();
    }

    private static double meanC(Scene scene, Duration time) {
        return scene.predict(HALF_AN_HOUR).vessel("wine").meanTemperatureK(time.toMillis() / 1000.0) - ZERO;
    }

    private static Insert twoCubes() {
        return Insert.ice(grams(14), millimetres(20), celsius(-15));
    }

    @Test
    void massAndEnergyAreConservedWhileIceMelts() {
        ScenePrediction run = with(twoCubes()).predict(Duration.ofHours(1));
        Prediction wine = run.vessel("wine");
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        for (int minutes = 0; minutes <= 60; minutes += 4) {
            double ice = run.iceInDrinkKg("wine", Duration.ofMinutes(minutes));
            // An amount is never told below 0, which hides the last rounding of ice that is gone.
            assertThat(ice + wine.waterAddedKg(60.0 * minutes)).isCloseTo(0.014, within(1e-6));
        }
        assertThat(run.iceInDrinkKg("wine", Duration.ofHours(1))).isCloseTo(0, within(1e-6));
        assertThat(wine.notes()).anyMatch(note -> note.contains("thins the drink: 14 g") && note.contains("% vol"));
        // By volumes without contraction: 100 mL of 12.5 % vol and 14 mL of water make 10.96 % vol.
        assertThat(100 * wine.dilutedStrength(3600).orElseThrow()).isCloseTo(10.98, within(0.05));
        assertThat(100 * wine.dilutedStrength(0).orElseThrow()).isCloseTo(12.5, within(1e-6));
    }

    /** Own balance: heat that reached drink and ice warms them from where they were; published heat of fusion 333.43 kJ/kg (IAPWS). */
    @Test
    void theMixingTemperatureFollowsFromTheBalance() {
        ScenePrediction run = with(twoCubes()).predict(Duration.ofHours(1));
        double end = 3600;
        double mass = GLASS.liquidMassKg();
        double heat = run.ledger().heatInto("wine contents") + run.ledger().heatInto("wine insert 1");
        double drink = mass * WINE.specificHeatCapacity(ZERO + 15);
        double melted = 0.014 * (333_430 + 2060 * 15);
        double expected = (heat + drink * 18 - melted) / (drink + 0.014 * 4190);
        assertThat(run.vessel("wine").meanTemperatureK(end) - ZERO).isCloseTo(expected, within(0.1));
    }

    @Test
    void nothingHappensBeforeAPieceIsInTheDrink() {
        double[] alone = glass().build().predict(HALF_AN_HOUR).vessel("wine").meanTemperaturesK(60, 299, 1800);
        for (Insert insert : List.of(twoCubes(), Insert.cubes(2, millimetres(15), Solids.granite(), celsius(-15)))) {
            ScenePrediction run = with(insert).predict(HALF_AN_HOUR);
            assertThat(run.insertTemperaturesK("wine", Duration.ofSeconds(299)).get(0))
                    .isCloseTo(ZERO - 15, within(1e-6));
            assertThat(run.vessel("wine").meanTemperatureK(299)).isCloseTo(alone[1], within(2e-3));
            assertThat(run.vessel("wine").meanTemperatureK(1800)).isLessThan(alone[2] - 0.5);
        }
    }

    /** Limit: a piece as warm as its drink and its room adds heat capacity and nothing else; under a lid, as an open drink evaporates. */
    @Test
    void aPieceOfTheDrinksOwnTemperatureOnlyAddsHeatCapacity() {
        Insert steel = Insert.balls(3, millimetres(25), Solids.stainlessSteel(), celsius(18));
        FilledVessel covered =
                GLASS.vessel().closedBy(Closure.screwCap()).filledWith(WINE, millilitres(100), celsius(18));
        Scene resting = Scene.builder()
                .gear("room", Air.at(celsius(18)))
                .vessel("wine", covered, "room")
                .addToDrink("wine", Duration.ZERO, steel)
                .build();
        assertThat(meanC(resting, HALF_AN_HOUR)).isCloseTo(18, within(1e-9));
        Duration ten = Duration.ofMinutes(10);
        double alone = meanC(
                Scene.builder()
                        .gear("room", ROOM)
                        .vessel("wine", covered, "room")
                        .build(),
                ten);
        // A film without resistance, so that steel does not lag.
        double slowed = Scene.builder()
                        .gear("room", ROOM)
                        .vessel("wine", covered, "room")
                        .addToDrink("wine", Duration.ZERO, steel)
                        .build()
                        .predict(ten, NetworkSolver.standard().withMultipliers(Map.of(Multipliers.INSERT_FILM, 1e3)))
                        .vessel("wine")
                        .meanTemperatureK(600)
                - ZERO;
        Solid solid = Solids.stainlessSteel();
        double added = steel.massKg() * solid.specificHeatCapacity().value();
        double drink = GLASS.liquidMassKg() * WINE.specificHeatCapacity(ZERO + 18);
        double glass = GLASS.vessel().emptyMassKg()
                * GLASS.vessel().wall().specificHeatCapacity().value();
        // While little has warmed, the rise goes inversely with the heat capacity, to which a part of the glass
        // belongs.
        assertThat((alone - 18) / (slowed - 18)).isBetween(1 + 0.9 * added / (drink + glass), 1 + added / drink);
    }

    @Test
    void steelBallsAndDrinkMeetAtTheirMixingTemperature() {
        Insert steel = Insert.balls(3, millimetres(25), Solids.stainlessSteel(), celsius(-18));
        Scene scene = with(steel);
        ScenePrediction run = scene.predict(
                HALF_AN_HOUR, NetworkSolver.standard().withMultipliers(Map.of(Multipliers.INSERT_FILM, 1e3)));
        double at = 330;
        double drink = GLASS.liquidMassKg() * WINE.specificHeatCapacity(ZERO + 15);
        double balls =
                steel.massKg() * Solids.stainlessSteel().specificHeatCapacity().value();
        double heat = run.trajectory().ledger(at).heatInto("wine contents")
                + run.trajectory().ledger(at).heatInto("wine insert 1");
        double expected = (heat + drink * 18 - balls * 18) / (drink + balls);
        assertThat(run.vessel("wine").meanTemperatureK(at) - ZERO).isCloseTo(expected, within(0.05));
        assertThat(run.insertTemperaturesK("wine", Duration.ofSeconds(330)).get(0) - ZERO)
                .isCloseTo(expected, within(0.3));
    }

    @Test
    void aFrozenInsertHoldsMoreColdThanStoneOrSteelOfItsSize() {
        FilledVessel decanter =
                Vessels.of(VesselShape.DECANTER, litres(0.75)).filledWith(WINE, litres(0.75), celsius(20));
        Insert[] inserts = {
            Insert.rods(1, millimetres(18), millimetres(200), Solids.granite(), celsius(-18)),
            Insert.rods(1, millimetres(18), millimetres(200), Solids.stainlessSteel(), celsius(-18)),
            Insert.sealedRods(1, millimetres(18), millimetres(200), Solids.gelPack(), celsius(-18))
        };
        double[] after = new double[3];
        for (int i = 0; i < 3; i++) {
            Scene scene = Scene.builder()
                    .gear("room", ROOM)
                    .vessel("wine", decanter, "room")
                    .addToDrink("wine", Duration.ZERO, inserts[i])
                    .build();
            ScenePrediction run = scene.predict(HALF_AN_HOUR);
            after[i] = run.vessel("wine").meanTemperatureK(1800) - ZERO;
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            assertThat(run.vessel("wine").waterAddedKg(1800)).isZero();
            assertThat(run.vessel("wine").dilutedStrength(1800)).isEmpty();
        }
        System.out.printf(
                Locale.ROOT,
                "0.75 L of 20 °C with a rod 18 mm by 200 mm of −18 °C, 30 min: granite %.1f, steel %.1f, frozen gel %.1f °C%n",
                after[0],
                after[1],
                after[2]);
        assertThat(after[2]).isLessThan(after[1] - 1);
        assertThat(after[1]).isLessThan(after[0] - 0.3);
    }

    @Test
    void iceAndStonesMayBeAddedOneAfterTheOtherToDrinksThatMove() {
        ScenePrediction run = Scene.builder()
                .gear("room", ROOM)
                .gear("cellar", Air.at(celsius(8)))
                .vessel("wine", GLASS, "room")
                .move("wine", Duration.ofMinutes(12), "cellar")
                .addToDrink(
                        "wine", Duration.ZERO, Insert.sealedBalls(1, millimetres(30), Solids.gelPack(), celsius(-18)))
                .addToDrink("wine", FIVE, twoCubes())
                .addToDrink("wine", Duration.ofMinutes(20), twoCubes())
                .build()
                .predict(HALF_AN_HOUR);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(run.insertTemperaturesK("wine", HALF_AN_HOUR)).hasSize(3);
        assertThat(run.iceInDrinkKg("wine", HALF_AN_HOUR) + run.vessel("wine").waterAddedKg(1800))
                .isCloseTo(0.028, within(1e-6));
        assertThat(run.vessel("wine").meanTemperatureK(1800)).isBetween(ZERO - 5, ZERO + 12);
    }

    @Test
    void theFilmIsDrawnWithTheLawsAndRunsRepeatToTheLastBit() {
        Scene scene = with(twoCubes());
        Duration soon = Duration.ofMinutes(8);
        Prediction wine = scene.predict(HALF_AN_HOUR).vessel("wine");
        double slope =
                LinearSpread.of(wine, LawScatter.all()).contributionsK(soon).getOrDefault(Multipliers.INSERT_FILM, 0.0);
        assertThat(slope).isLessThan(-0.1);
        double up = scene.predict(
                        HALF_AN_HOUR, NetworkSolver.standard().withMultipliers(Map.of(Multipliers.INSERT_FILM, 1.05)))
                .vessel("wine")
                .meanTemperatureK(480);
        double down = scene.predict(
                        HALF_AN_HOUR, NetworkSolver.standard().withMultipliers(Map.of(Multipliers.INSERT_FILM, 0.95)))
                .vessel("wine")
                .meanTemperatureK(480);
        assertThat(slope).isCloseTo(4 * (up - down), within(0.08));
        assertThat(scene.predict(HALF_AN_HOUR).vessel("wine").meanTemperatureK(480))
                .isEqualTo(wine.meanTemperatureK(480));
        System.out.printf(
                Locale.ROOT,
                "100 mL of wine of 18 °C in a glass, 14 g of ice of −15 °C after 5 min: %.1f °C after 8 min, %.1f °C after 15 min, %.1f g melted then%n",
                wine.meanTemperatureK(480) - ZERO,
                wine.meanTemperatureK(900) - ZERO,
                1000 * wine.waterAddedKg(900));
    }

    /** A stream evaluated each time is the stream that is fitted, and its slopes are those of its flow. */
    @Test
    void theStreamOfADrinkIsThatOfWater() {
        Fluid water = Fluid.of(Water.liquid());
        ConvectiveFilm free = ConvectiveFilm.free(0.005, 0.03, water, VerticalPlate.CHURCHILL_CHU);
        HeatFlow out = new HeatFlow();
        HeatFlow fitted = new HeatFlow();
        for (double bulk = ZERO + 1; bulk < ZERO + 80; bulk += 7.3) {
            free.withStream(0.2, 0.03, Sphere.WHITAKER).evaluate(bulk, ZERO, fitted);
            free.withStreamOfDrink(0.2, 0.03, Sphere.WHITAKER).evaluate(bulk, ZERO, out);
            assertThat(out.watts).isCloseTo(fitted.watts, within(1e-4 * fitted.watts));
            assertThat(out.perFromKelvin).isCloseTo(fitted.perFromKelvin, within(1e-3 * fitted.perFromKelvin));
            assertThat(out.perToKelvin).isCloseTo(fitted.perToKelvin, within(1e-3 * -fitted.perToKelvin));
        }
    }

    @Test
    void iceMeltsFasterInADrinkThatIsStirred() {
        Insert large = Insert.ice(grams(20), millimetres(27), celsius(-10));
        FilledVessel tumbler = Vessels.of(VesselShape.TUMBLER, millilitres(300))
                .filledWith(Beverage.water(), millilitres(175), celsius(15));
        double[] melted = new double[3];
        double[] speeds = {0, 0.01, 0.1};
        for (int i = 0; i < 3; i++) {
            melted[i] = Scene.builder()
                    .gear("room", ROOM)
                    .vessel("water", tumbler, "room")
                    .addToDrink("water", Duration.ZERO, large.stirred(metresPerSecond(speeds[i])))
                    .build()
                    .predict(FIVE)
                    .vessel("water")
                    .waterAddedKg(180);
        }
        assertThat(melted[1]).isGreaterThan(melted[0]);
        assertThat(melted[2]).isBetween(1.5 * melted[0], 0.02);
        assertThatThrownBy(() -> large.stirred(metresPerSecond(2))).isInstanceOf(OutOfRangeException.class);
    }

    /** From hot coffee to strong spirit, from crumbs to more ice than drink, from 0 °C to −30 °C, still and stirred. */
    @Test
    void anyIceInAnyDrinkKeepsItsBalance() {
        Random random = new Random(20261126);
        List<Beverage> drinks = List.of(
                WINE,
                Beverage.coffee(),
                Beverage.spirit(percentByVolume(60)),
                Beverage.softDrink(gramsPerLitre(110)),
                Beverage.liqueur(percentByVolume(20), gramsPerLitre(350)));
        for (int i = 0; i < 40; i++) {
            Beverage drink = drinks.get(i % drinks.size());
            FilledVessel tumbler = Vessels.of(VesselShape.TUMBLER, millilitres(300))
                    .filledWith(
                            drink,
                            millilitres(40 + 100 * random.nextDouble()),
                            celsius(drink.kind() == Beverage.Kind.COFFEE ? 85 : 2 + 25 * random.nextDouble()));
            double grams = i % 4 == 0 ? 0.5 : 10 + 110 * random.nextDouble();
            Insert ice = Insert.ice(
                            grams(grams), millimetres(4 + 30 * random.nextDouble()), celsius(-30 * random.nextDouble()))
                    .stirred(metresPerSecond(i % 2 == 0 ? 0 : 0.2));
            ScenePrediction run = Scene.builder()
                    .gear("room", ROOM)
                    .vessel("drink", tumbler, "room")
                    .addToDrink("drink", FIVE, ice)
                    .build()
                    .predict(Duration.ofHours(2));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            for (int minutes = 0; minutes <= 120; minutes += 10) {
                double t = run.vessel("drink").meanTemperatureK(60.0 * minutes);
                assertThat(t).isBetween(ZERO - 31, ZERO + 86);
                assertThat(run.iceInDrinkKg("drink", Duration.ofMinutes(minutes))
                                + run.vessel("drink").waterAddedKg(60.0 * minutes))
                        .isCloseTo(grams / 1000, within(5e-6));
            }
        }
    }

    @Test
    void aDrinkColderThanItsFreezingPointIsTold() {
        ScenePrediction run = Scene.builder()
                .gear("cold", Air.at(celsius(-18)))
                .vessel("wine", GLASS, "cold")
                .addToDrink("wine", Duration.ofHours(3), twoCubes())
                .build()
                .predict(Duration.ofHours(4));
        assertThat(run.vessel("wine").notes()).anyMatch(note -> note.contains("colder than its freezing point"));
        assertThat(with(twoCubes()).predict(HALF_AN_HOUR).vessel("wine").notes())
                .noneMatch(note -> note.contains("colder than its freezing point"));
        // Water of the drink grows on ice that is left in the cold.
        assertThat(run.iceInDrinkKg("wine", Duration.ofHours(4))).isGreaterThan(0.014);
        assertThat(run.vessel("wine").waterAddedKg(4 * 3600)).isNegative();
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThatThrownBy(() -> glass().addToDrink("beer", FIVE, twoCubes()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("beer");
        assertThatThrownBy(() -> glass().addToDrink("wine", Duration.ofMinutes(-1), twoCubes()))
                .isInstanceOf(IllegalArgumentException.class);
        FilledVessel bottle = Vessels.highShouldered750().filledWith(WINE, celsius(18));
        Scene.Builder room = Scene.builder()
                .gear("room", ROOM)
                .vessel("bottle", bottle, "room")
                .vessel("layered", GLASS, "room", VesselModel.axial(), Posture.UPRIGHT);
        assertThatThrownBy(() -> room.addToDrink("layered", FIVE, twoCubes()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected lumped contents");
        assertThatThrownBy(() -> room.addToDrink("bottle", FIVE, twoCubes()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("width of a piece");
        assertThatThrownBy(() -> room.addToDrink("bottle", FIVE, Insert.ice(grams(60), millimetres(10), celsius(-5))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("volume of pieces");
        Scene.Builder full = glass();
        Insert stones = Insert.cubes(4, millimetres(20), Solids.granite(), celsius(-5));
        assertThatThrownBy(() -> {
                    for (int i = 0; i < 10; i++) {
                        full.addToDrink("wine", FIVE, stones);
                    }
                })
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("volume of pieces");
        assertThatThrownBy(() -> Insert.ice(grams(10), millimetres(20), celsius(1)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Insert.ice(grams(0), millimetres(20), celsius(-1)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Insert.cubes(0, millimetres(20), Solids.granite(), celsius(0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Insert.balls(1, millimetres(1), Solids.granite(), celsius(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Insert.sealedBalls(1, millimetres(20), Solids.gelPack(), celsius(-60)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> with(twoCubes()).predict(FIVE).iceInDrinkKg("beer", FIVE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void sizesGiveMassesAndSurfaces() {
        // By hand: a ball of 20 mm has 4.18879 mL and 1256.6 mm²; a rod of 10 mm by 100 mm 7.85398 mL and 3298.7 mm².
        Insert ball = Insert.balls(2, millimetres(20), Solids.stainlessSteel(), celsius(0));
        double density = Solids.stainlessSteel().density().value();
        assertThat(ball.massKg()).isCloseTo(2 * 4.18879e-6 * density, within(1e-7 * density));
        assertThat(ball.areaM2()).isCloseTo(2 * 1256.64e-6, within(1e-8));
        Insert rod = Insert.rods(1, millimetres(10), millimetres(100), Solids.stainlessSteel(), celsius(0));
        assertThat(rod.massKg()).isCloseTo(7.85398e-6 * density, within(1e-7 * density));
        assertThat(rod.areaM2()).isCloseTo(3298.67e-6, within(1e-8));
        assertThat(twoCubes().massKg()).isCloseTo(0.014, within(1e-12));
        assertThat(twoCubes().isIce()).isTrue();
        assertThat(rod.isIce()).isFalse();
        // Ice floats and displaces its own mass: 14 g in wine of 990 kg/m³.
        assertThat(twoCubes().displacedM3(990)).isCloseTo(0.014 / 990, within(1e-9));
    }
}
