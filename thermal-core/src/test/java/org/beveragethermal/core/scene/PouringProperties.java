/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.solver.Ledger;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.PathDerivatives;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;

/** What pouring keeps, whatever is poured. */
final class PouringProperties {

    /** Nothing passes between the vessels and the room. */
    private static final NetworkSolver ALONE =
            NetworkSolver.standard().withMultipliers(Map.of(Multipliers.AIR_FILM, 0.0, Multipliers.RADIATION, 0.0));

    private static final Duration POURED = Duration.ofMinutes(3);
    private static final Duration AGAIN = Duration.ofMinutes(7);
    private static final Duration DRUNK = Duration.ofMinutes(9);
    private static final Duration END = Duration.ofMinutes(12);
    private static final List<Liquid> DRINKS = List.of(
            Beverage.wine(percentByVolume(12.5)),
            Beverage.softDrink(gramsPerLitre(105)),
            Beverage.water(),
            Water.liquid());

    private static Node contents(ScenePrediction run, String id) {
        return run.vessel(id).contents().nodes().get(0);
    }

    private static double[] sums(ScenePrediction run, double timeS) {
        Trajectory trajectory = run.trajectory();
        double kilograms = 0;
        double joules = 0;
        for (String id : List.of("bottle", "glass")) {
            kilograms += trajectory.amount(contents(run, id), 0, timeS);
            joules += trajectory.enthalpyJ(contents(run, id), timeS);
        }
        return new double[] {kilograms, joules};
    }

    @Property(tries = 60, seed = "20261126")
    void pouringConservesMassAndEnergy(
            @ForAll @IntRange(max = 3) int drink,
            @ForAll @DoubleRange(min = 300, max = 750) double filledMl,
            @ForAll @DoubleRange(min = 1, max = 140) double firstMl,
            @ForAll @DoubleRange(min = 1, max = 60) double secondMl,
            @ForAll @DoubleRange(min = 2, max = 45) double drinkC,
            @ForAll @DoubleRange(min = 0, max = 40) double glassC,
            @ForAll @DoubleRange(min = 5, max = 35) double roomC) {
        FilledVessel bottle =
                Vessels.highShouldered750().filledWith(DRINKS.get(drink), millilitres(filledMl), celsius(drinkC));
        ScenePrediction run = Scene.builder()
                .gear("room", Air.at(celsius(roomC)))
                .vessel("bottle", bottle, "room")
                .emptyVessel(
                        "glass", Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125)), celsius(glassC), "room")
                .pour("bottle", POURED, millilitres(firstMl), "glass")
                .pour("bottle", AGAIN, millilitres(secondMl), "glass")
                .drink("glass", DRUNK, millilitres(0.7 * firstMl))
                .build()
                .predict(END);

        for (Duration at : List.of(POURED, AGAIN)) {
            double seconds = at.toMillis() / 1000.0;
            double[] before = sums(run, Math.nextDown(seconds));
            double[] after = sums(run, seconds);
            assertThat(after[0]).isCloseTo(before[0], within(1e-12));
            assertThat(after[1]).isCloseTo(before[1], within(1e-9 * Math.abs(before[1]) + 1e-6));
        }
        double density = DRINKS.get(drink).density(293.15);
        assertThat(run.drinkKg("bottle", END))
                .isCloseTo(bottle.liquidMassKg() - density * (firstMl + secondMl) * 1e-6, within(1e-12));
        Ledger ledger = run.ledger();
        assertThat(ledger.closure()).isLessThan(1e-9);
    }

    @Property(tries = 20, seed = "20261126")
    void pouringInPartsAtOneInstantIsPouringOnce(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double part,
            @ForAll @DoubleRange(min = 2, max = 40) double drinkC) {
        Scene.Builder once = table(drinkC, 20).pour("bottle", POURED, millilitres(100), "glass");
        Scene.Builder twice = table(drinkC, 20)
                .pour("bottle", POURED, millilitres(100 * part), "glass")
                .pour("bottle", POURED, millilitres(100 * (1 - part)), "glass");
        ScenePrediction a = once.build().predict(END);
        ScenePrediction b = twice.build().predict(END);
        for (int minute = 3; minute <= 12; minute++) {
            for (String id : List.of("bottle", "glass")) {
                assertThat(b.vessel(id).meanTemperatureK(60.0 * minute))
                        .isCloseTo(a.vessel(id).meanTemperatureK(60.0 * minute), within(1e-6));
            }
        }
    }

    @Property(tries = 20, seed = "20261126")
    void aGlassAtTheDrinksTemperatureMakesNoJump(@ForAll @DoubleRange(min = 2, max = 40) double drinkC) {
        ScenePrediction run = table(drinkC, drinkC)
                .pour("bottle", POURED, millilitres(120), "glass")
                .build()
                .predict(END, ALONE);
        for (int minute = 3; minute <= 12; minute++) {
            assertThat(run.vessel("glass").meanTemperatureK(60.0 * minute)).isCloseTo(273.15 + drinkC, within(1e-6));
        }
    }

    /** Halves of the sip make no difference to speak of. */
    @Example
    void drinkingEvenlyFallsAlongALine() {
        ScenePrediction run = table(8, 20)
                .pour("bottle", Duration.ofMinutes(1), millilitres(120), "glass")
                .drinkEvenly("glass", Duration.ofMinutes(2), Duration.ofMinutes(10), millilitres(40))
                .build()
                .predict(END);
        double density = DRINKS.get(0).density(293.15);
        for (int minute = 2; minute <= 10; minute++) {
            double line = 120 - 80.0 * (minute - 2) / 8;
            assertThat(run.drinkKg("glass", Duration.ofMinutes(minute)) / density * 1e6)
                    .isCloseTo(line, within(8.0));
        }
        assertThat(run.drinkKg("glass", END) / density * 1e6).isCloseTo(40, within(0.2));
    }

    @Property(tries = 100, seed = "20261126")
    void slopesOfASurfaceAreThoseOfItsFlows(
            @ForAll @DoubleRange(min = 1, max = 90) double drinkC,
            @ForAll @DoubleRange(min = 5, max = 35) double airC,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double kilograms) {
        DrinkSurface surface = surface(airC);
        if (Math.abs(drinkC - airC) > 3) {
            double air = 273.15 + airC;
            PathDerivatives.check(
                    surface, new double[] {273.15 + drinkC, air, air, air}, new double[] {kilograms}, 5e-3);
            double[] temperatures = {273.15 + drinkC, air, air, air};
            for (int m = 0; m < surface.multipliers().size(); m++) {
                for (int account = 0; account < surface.accounts().size(); account++) {
                    double numeric = (scaled(surface, temperatures, kilograms, m, 1 + 1e-5)
                                            .flowOf(account)
                                    - scaled(surface, temperatures, kilograms, m, 1 - 1e-5)
                                            .flowOf(account))
                            / 2e-5;
                    PathEvaluation here = scaled(surface, temperatures, kilograms, m, 1);
                    assertThat(here.multiplierDerivativeOf(account, m))
                            .isCloseTo(
                                    numeric,
                                    within(1e-4 * Math.abs(numeric) + 1e-6 * Math.abs(here.flowOf(account)) + 1e-12));
                }
            }
        }
    }

    /** The heat that leaves a surface and the water that does are tied by the latent heat at that surface. */
    @Example
    void whatLeavesIceHasTheHeatOfSublimation() {
        OutsideChecks.fromMemory("drink-surface-sublimation", "ASHRAE Handbook of Fundamentals 2017, ch. 1, table 3")
                .what("heat over mass that a frozen drink of -10 °C gives to air of -18 °C")
                .unit("J/kg")
                .expected(2.8366e6)
                .withinRelative(0.002)
                .check(heatPerKilogram(-10, -18));
        OutsideChecks.fromMemory("drink-surface-evaporation", "ASHRAE Handbook of Fundamentals 2017, ch. 1, table 3")
                .what(
                        "heat over mass that a drink of 20 °C gives to air of 20 °C; its surface is a kelvin or two colder")
                .unit("J/kg")
                .between(2.4536e6, 2.4607e6)
                .check(heatPerKilogram(20, 20));
    }

    private static double heatPerKilogram(double drinkC, double airC) {
        DrinkSurface surface = surface(airC);
        double air = 273.15 + airC;
        PathEvaluation e = scaled(surface, new double[] {273.15 + drinkC, air, air, air}, 0.2, 0, 1);
        return -e.flowOf(surface.evaporation())
                / e.flowOf(surface.junction().accounts().size());
    }

    private static PathEvaluation scaled(
            DrinkSurface surface, double[] temperaturesK, double kilograms, int multiplier, double factor) {
        PathEvaluation e = new PathEvaluation(surface);
        e.setMultiplier(multiplier, factor);
        e.evaluate(surface, 0, temperaturesK, kilograms);
        return e;
    }

    private static DrinkSurface surface(double airC) {
        FilledVessel mug = Vessels.of(VesselShape.MUG, millilitres(250)).filledWith(Beverage.tea(), celsius(60));
        LumpedVessel vessel = new LumpedVessel("mug", mug, List.of(), List.of());
        Occupant occupant = new Occupant("mug", mug.vessel());
        return vessel
                .paths(
                        Air.at(celsius(airC))
                                .withRelativeHumidity(Measures.percent(40))
                                .open("room", 0),
                        occupant,
                        List.of(occupant))
                .stream()
                .filter(DrinkSurface.class::isInstance)
                .map(DrinkSurface.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Scene.Builder table(double drinkC, double glassC) {
        return Scene.builder()
                .gear("room", Air.at(celsius(22)).withRelativeHumidity(Measures.percent(50)))
                .vessel("bottle", Vessels.highShouldered750().filledWith(DRINKS.get(0), celsius(drinkC)), "room")
                .emptyVessel(
                        "glass", Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125)), celsius(glassC), "room");
    }
}
