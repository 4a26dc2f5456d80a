/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Rules that the trade passes on about times, printed beside the model; common practice, no source. Nothing was tuned to them. */
class TradeRulesTest {

    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Vessel BOTTLE = Vessels.highShouldered750();

    private static double minutesTo(Vessel vessel, double from, Surroundings place, double to, int hours) {
        ReadyAnswer.Ready ready = (ReadyAnswer.Ready) StartSearch.of(vessel.filledWith(WINE, celsius(from)), place)
                .earliestReady(Wanted.at(celsius(to)), Duration.ofHours(hours));
        return Times.seconds(ready.ready().minus(ready.start())) / 60;
    }

    @Test
    void fortyFiveMinutesInTheRefrigeratorAreNotEnough() {
        Refrigerator five = Refrigerator.at(celsius(5)).on(Footing.open());
        StartAnswer answer = StartSearch.of(BOTTLE.filledWith(WINE, celsius(20)), five)
                .latestStart(Wanted.between(celsius(5), celsius(8)), Duration.ofMinutes(45));
        StartAnswer.Never never = (StartAnswer.Never) answer;
        assertThat(never.help()).contains("more would do");
        ValueAnswer colder = RequiredValues.of(BOTTLE.filledWith(WINE, celsius(20)))
                .refrigeratorTemperature(celsius(-30), celsius(8))
                .temperatureAt(Duration.ofMinutes(45), celsius(8));
        System.out.println("White, 45 min in a refrigerator: " + never.explain() + " " + colder.explain());
        OutsideChecks.ruleOfThumb(
                "inverse-white-45-min",
                "a white at 20 °C to 8 °C in a refrigerator at 5 °C",
                45,
                minutesTo(BOTTLE, 20, five, 8, 20),
                "min",
                "not within 45 min: still air on a wire shelf; by then it is at " + Text.celsius(never.closestK()));
    }

    @Test
    void aBottleOnTheTableWarmsByAKelvinInSomeMinutes() {
        Air room = Air.at(celsius(21));
        double perKelvin = minutesTo(BOTTLE, 8, room, 9, 5);
        OutsideChecks.ruleOfThumb(
                "inverse-table-kelvin",
                "a kelvin of a white at 8 °C on a table in a room of 21 °C (10 to 15 min)",
                12.5,
                perKelvin,
                "min",
                "dry still air, nothing in it; moist air and a glass are faster");
        Prediction run = Lumped.of(BOTTLE.filledWith(WINE, celsius(8))).expose(in(room, Duration.ofHours(3)));
        Holding holding = Holding.until(run, Wanted.between(celsius(7), celsius(10)), Duration.ZERO);
        assertThat(holding).isInstanceOf(Holding.Until.class);
        System.out.println("White on the table: " + holding.explain());
    }

    @Test
    void aRedFromTheCellarWarmsOverHalfADay() {
        OutsideChecks.ruleOfThumb(
                "inverse-red-half-a-day",
                "a red at 13 °C to within a kelvin of a room of 21 °C (half a day)",
                12,
                minutesTo(BOTTLE, 13, Air.at(celsius(21)), 20, 40) / 60,
                "h",
                "base covered; to 18 °C it takes "
                        + Text.time(60 * minutesTo(BOTTLE, 13, Air.at(celsius(21)), 18, 40)));
    }

    @Test
    void anIceBucketTakesMinutesAndAMagnumLonger() {
        double bottle = minutesTo(BOTTLE, 18, bucket(200, 350), 8, 2);
        double magnum = minutesTo(Vessels.magnum(), 18, bucket(240, 430), 8, 3);
        OutsideChecks.ruleOfThumb(
                "inverse-ice-bucket",
                "a bottle from 18 °C to 8 °C in ice and water to the neck (10 to 15 min)",
                12.5,
                bottle,
                "min",
                "still water");
        OutsideChecks.ruleOfThumb(
                "inverse-ice-bucket-magnum",
                "a magnum from 18 °C to 8 °C in ice and water to the neck (about 25 min)",
                25,
                magnum,
                "min",
                "still water");
        System.out.println(Text.format("Ice bucket: bottle %.1f min, magnum %.1f min", bottle, magnum));
        assertThat(magnum).isGreaterThan(bottle);
    }

    private static IceWaterBath bucket(double widthMm, double heightMm) {
        double litres = Math.PI / 4 * widthMm * widthMm * heightMm / 1e6;
        return IceWaterBath.in(Bucket.of(millimetres(widthMm), millimetres(heightMm)), Air.at(celsius(21)))
                .ice(kilograms(0.28 * litres), millimetres(25), celsius(-5))
                .water(kilograms(0.38 * litres), celsius(14))
                .build();
    }
}
