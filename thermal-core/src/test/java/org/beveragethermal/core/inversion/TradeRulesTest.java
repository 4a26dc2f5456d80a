/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
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
import org.junit.jupiter.api.Test;

/** What answers say of two rules of the trade; the rules stand beside the model on the page of questions. */
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
        assertThat(colder).isInstanceOf(ValueAnswer.Reached.class);
        assertThat(((ValueAnswer.Reached) colder).solution().value()).isLessThan(263.15);
    }

    @Test
    void anIceBucketTakesMinutesAndAMagnumLonger() {
        double bottle = minutesTo(BOTTLE, 18, bucket(200, 350), 8, 2);
        double magnum = minutesTo(Vessels.magnum(), 18, bucket(240, 430), 8, 3);
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
