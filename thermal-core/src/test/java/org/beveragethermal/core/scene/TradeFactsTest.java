/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fahrenheit;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature.Reached;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Freezer;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/**
 * What the trade takes for granted about a 750 mL bottle of wine of 12.5 % vol, beside what the model gives. Nothing in the
 * model was tuned to these figures.
 */
class TradeFactsTest {

    private static final double GRAVITY = 9.80665;
    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Vessel BOTTLE = Vessels.highShouldered750();
    private static final Air ROOM = Air.at(celsius(21));

    private static double minutesTo(Prediction prediction, double targetFahrenheit) {
        return ((Reached) prediction.timeTo(fahrenheit(targetFahrenheit)))
                        .after()
                        .toMillis()
                / 60_000.0;
    }

    private static Prediction refrigerator(Vessel vessel) {
        FilledVessel filled = vessel.filledWith(WINE, fahrenheit(65));
        return Lumped.of(filled).expose(in(Refrigerator.at(fahrenheit(44)), Duration.ofHours(5)));
    }

    private static Prediction iceWater(Agitation agitation) {
        IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(170), millimetres(400)), ROOM)
                .ice(kilograms(3), millimetres(25), celsius(-5))
                .water(kilograms(3), celsius(15))
                .agitation(agitation)
                .build();
        return Lumped.of(BOTTLE.filledWith(WINE, fahrenheit(65))).expose(in(bath, Duration.ofHours(1)));
    }

    private static Prediction warmWater() {
        WaterBath bath = WaterBath.of(Bucket.of(millimetres(300), millimetres(350)), litres(20), fahrenheit(70), ROOM);
        return Lumped.of(BOTTLE.filledWith(WINE, fahrenheit(55))).expose(in(bath, Duration.ofHours(1)));
    }

    @Test
    void refrigeratorTakesAboutAnHour() {
        Prediction prediction = refrigerator(BOTTLE);
        double minutes = minutesTo(prediction, 55);
        OutsideChecks.commonPractice("trade-a-refrigerator")
                .what("65 to 55 °F in a household refrigerator at 44 °F (about 60 min)")
                .unit("min")
                .between(40, 90)
                .check(minutes);
        OutsideChecks.ruleOfThumb(
                "trade-a-refrigerator",
                "65 to 55 °F in a household refrigerator at 44 °F",
                60,
                minutes,
                "min",
                "still air, base covered; the film in the air decides");
        assertThat(prediction
                        .explainAt(Duration.ofMinutes(30))
                        .bands()
                        .get(0)
                        .deciding()
                        .name())
                .isEqualTo("outside");
    }

    @Test
    void aFreezerTakesAboutAnHour() {
        Prediction prediction = Lumped.of(BOTTLE.filledWith(WINE, fahrenheit(70)))
                .expose(in(Freezer.at(fahrenheit(0)), Duration.ofHours(3)));
        double minutes = minutesTo(prediction, 50);
        OutsideChecks.commonPractice("trade-freezer")
                .what("70 to 50 °F in a household freezer at 0 °F (about an hour, a factor of two either way)")
                .unit("min")
                .between(30, 120)
                .check(minutes);
        OutsideChecks.ruleOfThumb(
                "trade-freezer",
                "70 to 50 °F in a household freezer at 0 °F",
                60,
                minutes,
                "min",
                "still air, base covered; freezers in use are not always that cold");
    }

    @Test
    void iceAndWaterTakeAFewMinutes() {
        for (Agitation agitation : new Agitation[] {Agitation.STILL, Agitation.stirred(metresPerSecond(0.1))}) {
            String how = agitation.moves() ? "stirred" : "still";
            Prediction prediction = iceWater(agitation);
            double minutes = minutesTo(prediction, 55);
            Explanation explanation = prediction.explainAt(Duration.ofMillis(Math.round(minutes * 30_000)));
            System.out.println("Ice and water, " + how + ": " + explanation.text());
            OutsideChecks.commonPractice("trade-b-ice-water-" + how)
                    .what("65 to 55 °F immersed in ice and water, " + how
                            + " (about 8 min, a factor of 2.5 either way)")
                    .unit("min")
                    .between(8 / 2.5, 8 * 2.5)
                    .check(minutes);
            OutsideChecks.ruleOfThumb(
                    "trade-b-ice-water-" + how,
                    "65 to 55 °F immersed in ice and water, " + how,
                    8,
                    minutes,
                    "min",
                    explanation.bands().get(0).deciding().name() + " decides");
        }
    }

    @Test
    void warmWaterTakesAFewMinutes() {
        Prediction prediction = warmWater();
        double minutes = minutesTo(prediction, 65);
        Explanation explanation = prediction.explainAt(Duration.ofMillis(Math.round(minutes * 30_000)));
        System.out.println("Water at 70 °F: " + explanation.text());
        OutsideChecks.commonPractice("trade-c-warm-water")
                .what("55 to 65 °F in water at 70 °F (about 8 min, a factor of 2.5 either way)")
                .unit("min")
                .between(8 / 2.5, 8 * 2.5)
                .check(minutes);
        OutsideChecks.ruleOfThumb(
                "trade-c-warm-water",
                "55 to 65 °F in water at 70 °F",
                8,
                minutes,
                "min",
                explanation.bands().get(0).deciding().name() + " decides, but the three are alike");
    }

    @Test
    void magnumTakesSomewhatLonger() {
        double ratio = minutesTo(refrigerator(Vessels.magnum()), 55) / minutesTo(refrigerator(BOTTLE), 55);
        OutsideChecks.commonPractice("trade-d-magnum")
                .what("time of a magnum over time of a 750 mL bottle in a refrigerator (somewhat longer)")
                .unit("1")
                .between(1.1, 1.8)
                .check(ratio);
    }

    @Test
    void eachResistanceInStillIceWaterIsThatOfAHandComputation() {
        Prediction prediction = iceWater(Agitation.STILL);
        Duration at = Duration.ofMinutes(3);
        Explanation.Band band = prediction.explainAt(at).bands().get(0);
        assertInsideAndWall(prediction, at, band, 0.80, 65);
        // Outside: Churchill and Chu on the wetted height, with the density integral in water, on each part of the
        // wall.
        for (var part : band.outside()) {
            double nu = 0.825
                    + 0.387
                            * Math.pow(part.rayleigh(), 1.0 / 6)
                            / Math.pow(1 + Math.pow(0.492 / part.prandtl(), 9.0 / 16), 8.0 / 27);
            assertThat(part.nusselt()).isCloseTo(nu * nu, within(1e-3 * nu * nu));
        }
    }

    @Test
    void eachResistanceInStirredIceWaterIsThatOfAHandComputation() {
        Prediction prediction = iceWater(Agitation.stirred(metresPerSecond(0.1)));
        Duration at = Duration.ofMinutes(2);
        Explanation.Band band = prediction.explainAt(at).bands().get(0);
        assertInsideAndWall(prediction, at, band, 0.80, 65);
        // Outside: Churchill and Bernstein at 0.1 m/s on the largest diameter, water at a film temperature near 3.5 °C,
        // added to
        // free convection in fourth powers, which hardly matters here.
        Water water = Water.liquid();
        double film = 273.15 + 3.5;
        double diameter = 2 * BOTTLE.profile().maxOuterRadiusM();
        double re = 0.1 * diameter / water.kinematicViscosity(film);
        double pr = water.prandtlNumber(film);
        double nu = 0.3
                + 0.62
                        * Math.sqrt(re)
                        * Math.cbrt(pr)
                        / Math.pow(1 + Math.pow(0.4 / pr, 2.0 / 3), 0.25)
                        * Math.pow(1 + Math.pow(re / 282_000, 0.625), 0.8);
        double h = nu * water.thermalConductivity(film) / diameter;
        for (var part : band.outside()) {
            assertThat(part.coefficient()).isCloseTo(h, within(0.05 * h));
        }
    }

    @Test
    void eachResistanceInWarmWaterIsThatOfAHandComputation() {
        Prediction prediction = warmWater();
        Duration at = Duration.ofMinutes(5);
        Explanation.Band band = prediction.explainAt(at).bands().get(0);
        assertInsideAndWall(prediction, at, band, 0.95, 55);
        var outside = band.inSeries().get(2);
        double nu = 0.825
                + 0.387
                        * Math.pow(outside.rayleigh(), 1.0 / 6)
                        / Math.pow(1 + Math.pow(0.492 / outside.prandtl(), 9.0 / 16), 8.0 / 27);
        assertThat(outside.nusselt()).isCloseTo(nu * nu, within(1e-3 * nu * nu));
        // The water ends just below the rim of the bottle.
        double area =
                BOTTLE.profile().outerSideAreaM2(0, prediction.bands().get(0).highM());
        assertThat(outside.kelvinPerWatt()).isCloseTo(1 / (outside.coefficient() * area), within(1e-6));
    }

    /** Inside film: C Ra^¼ on the liquid's height with β ΔT from its own density, conduction added in fourth powers; wall: t/k. */
    private static void assertInsideAndWall(
            Prediction prediction, Duration at, Explanation.Band band, double c, double startFahrenheit) {
        FilledVessel filled = BOTTLE.filledWith(WINE, fahrenheit(startFahrenheit));
        double height = filled.liquidHeightM();
        double mean = prediction.meanTemperatureK(at.toMillis() / 1000.0);
        var inside = band.inSeries().get(0);
        var wall = band.inSeries().get(1);
        double innerArea = BOTTLE.profile().innerSideAreaM2(0, height);
        double outerArea = BOTTLE.profile().outerSideAreaM2(0, BOTTLE.profile().heightM());
        // Heat flow and surface temperature from the explanation's own resistances, then the law by hand at that
        // surface.
        double surface = surfaceByIteration(mean, band.mediumK(), inside.kelvinPerWatt(), band.kelvinPerWatt());
        double film = 0.5 * (mean + surface);
        double buoyancy = Math.abs(1 - WINE.density(surface) / WINE.density(mean));
        double ra = GRAVITY
                * buoyancy
                * Math.pow(height, 3)
                / (WINE.kinematicViscosity(film) * WINE.thermalDiffusivity(film));
        double free = c * Math.pow(ra, 0.25);
        double radius = Math.sqrt(filled.liquidVolumeM3() / (Math.PI * height));
        double conduction = 2.4048256 * 2.4048256 / 2 * height / radius;
        double nu = Math.pow(Math.pow(free, 4) + Math.pow(conduction, 4), 0.25);
        assertThat(inside.rayleigh()).isCloseTo(ra, within(0.12 * ra));
        assertThat(inside.nusselt()).isCloseTo(nu, within(0.04 * nu));
        assertThat(inside.kelvinPerWatt())
                .isCloseTo(1 / (inside.coefficient() * innerArea), within(1e-3 * inside.kelvinPerWatt()));
        // A cylinder's wall of this height, area and volume; where the drink stands lower than the wall, inside by its
        // own area.
        double tall = BOTTLE.profile().heightM();
        double outerRadius = outerArea / (2 * Math.PI * tall);
        double innerRadius =
                Math.sqrt(outerRadius * outerRadius - BOTTLE.profile().wallVolumeM3(0, tall) / (Math.PI * tall));
        double middle = 0.5 * (innerRadius + outerRadius);
        double k = BOTTLE.wall().thermalConductivity().value();
        double byHand = innerRadius * Math.log(middle / innerRadius) / (k * innerArea)
                + outerRadius * Math.log(outerRadius / middle) / (k * outerArea);
        assertThat(wall.kelvinPerWatt()).isCloseTo(byHand, within(1e-3 * byHand));
    }

    private static double surfaceByIteration(double drinkK, double mediumK, double insideKPerW, double totalKPerW) {
        return drinkK + (mediumK - drinkK) * insideKPerW / totalKPerW;
    }
}
