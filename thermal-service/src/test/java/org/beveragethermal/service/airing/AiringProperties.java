/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.airing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/** What holds for any airing of a bottle of wine in a room that is warmer than it. */
class AiringProperties {
    private static final double ROUNDING_K = 1e-3;
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(13)), celsius(12));

    private static double firstK(boolean decanted, int minutes, double begin, double room, double vessel) {
        return SiValues.temperatureK(
                forecast(decanted, minutes, begin, room, vessel).firstPour(), "first glass");
    }

    private static AiringForecast forecast(
            boolean decanted, int minutes, double beginCelsius, double roomCelsius, double vesselCelsius) {
        Duration before = Duration.ofMinutes(minutes);
        Airing airing = decanted ? Airing.carafe(before, "place") : Airing.opened(before, "place");
        Air room = Air.at(celsius(roomCelsius)).withRelativeHumidity(percent(50));
        return AiringForecast.of(airing, BOTTLE.atTemperature(celsius(beginCelsius)), room)
                .withVesselAt(celsius(vesselCelsius))
                .drunkOver(Duration.ofMinutes(40));
    }

    @Property(tries = 20, seed = "4715")
    void longerWarmerRoomWarmerVesselOrWarmerBeginningMeanAWarmerFirstGlass(
            @ForAll boolean decanted,
            @ForAll @IntRange(max = 180) int minutes,
            @ForAll @DoubleRange(min = 4, max = 16) double begin,
            @ForAll @DoubleRange(min = 20, max = 34) double room,
            @ForAll @DoubleRange(min = 2, max = 20) double vessel,
            @ForAll @DoubleRange(min = 0.5, max = 4) double more) {
        double first = firstK(decanted, minutes, begin, room, vessel);
        assertThat(firstK(decanted, minutes + 10, begin, room, Math.max(begin, vessel)))
                .isGreaterThanOrEqualTo(first - ROUNDING_K);
        assertThat(firstK(decanted, minutes, begin, room + more, vessel)).isGreaterThanOrEqualTo(first - ROUNDING_K);
        assertThat(firstK(decanted, minutes, begin, room, vessel + more)).isGreaterThanOrEqualTo(first - ROUNDING_K);
        assertThat(firstK(decanted, minutes, begin + more, room, vessel)).isGreaterThan(first);
    }

    /** Evaporation cools no further than to the wet bulb, and cannot cool what is colder than the dew point. */
    @Property(tries = 8, seed = "4716")
    void drinkStaysBetweenWhatTouchesIt(
            @ForAll boolean decanted,
            @ForAll @IntRange(max = 300) int minutes,
            @ForAll @DoubleRange(min = 2, max = 25) double begin,
            @ForAll @DoubleRange(min = 10, max = 34) double room,
            @ForAll @DoubleRange(min = 0, max = 35) double vessel) {
        AiringCourse course = forecast(decanted, minutes, begin, room, vessel).predict();
        double wetBulb = MoistAir.wetBulbK(room + 273.15, 0.5, DryAir.STANDARD_PRESSURE_PA) - 273.15;
        double empty = decanted ? vessel : begin;
        double low = Math.min(Math.min(begin, wetBulb), empty);
        double high = Math.max(Math.max(begin, room), empty);
        for (int i = 0; i <= 10; i++) {
            double here = course.prediction()
                            .meanTemperatureK(i * course.prediction().end().toSeconds() / 10.0)
                    - 273.15;
            assertThat(here).isBetween(low - ROUNDING_K, high + ROUNDING_K);
        }
    }
}
