/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.grams;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.core.surroundings.WetWrap;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Every ready-made question, its answer put forward again; none, several and all values; what is refused. */
class RequiredValuesTest {

    private static final double ZERO = 273.15;
    private static final FilledVessel WARM =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Air ROOM = Air.at(celsius(22));
    private static final Bucket BUCKET = Bucket.of(millimetres(200), millimetres(400));
    private static final WaterBath SINK =
            WaterBath.of(Bucket.of(millimetres(300), millimetres(350)), litres(12), celsius(15), ROOM);
    private static final RequiredValues ASK = RequiredValues.of(WARM);

    private static IceWaterBath bath(double iceKg, double sideMm) {
        return IceWaterBath.in(BUCKET, ROOM)
                .ice(kilograms(iceKg), millimetres(sideMm), celsius(-5))
                .water(kilograms(4), celsius(18))
                .build();
    }

    private static double forward(Surroundings surroundings, Duration time) {
        return Lumped.of(WARM).expose(in(surroundings, time)).meanTemperatureK(Times.seconds(time)) - ZERO;
    }

    /** The temperature that a value gives, asked back, is the value. */
    private static ValueAnswer.Reached assertComesBack(
            ValueSearch search, double valueSi, DoubleFunction<Surroundings> surroundings, Duration time, double part) {
        double temperature = forward(surroundings.apply(valueSi), time);
        ValueAnswer.Reached reached = (ValueAnswer.Reached) search.temperatureAt(time, celsius(temperature));
        assertThat(reached.solution().value()).isCloseTo(valueSi, within(part * Math.abs(valueSi)));
        assertThat(forward(surroundings.apply(reached.solution().value()), time))
                .isCloseTo(temperature, within(0.01));
        assertThat(reached.explain()).contains(reached.asked().name());
        return reached;
    }

    @Test
    void temperaturesOfMediaComeBack() {
        Duration time = Duration.ofHours(2);
        assertComesBack(
                ASK.airTemperature(celsius(-5), celsius(20)), ZERO + 7, k -> Air.at(celsius(k - ZERO)), time, 1e-5);
        ValueAnswer.Reached cold = assertComesBack(
                ASK.refrigeratorTemperature(celsius(-20), celsius(15)),
                ZERO + 4,
                k -> Refrigerator.at(celsius(k - ZERO)),
                time,
                1e-5);
        assertThat(cold.solution().valuePerKelvin()).isGreaterThan(1);
        assertThat(cold.solution().warnings()).isEmpty();
        assertComesBack(
                ASK.bathTemperature(SINK, celsius(1), celsius(40)),
                ZERO + 10,
                k -> SINK.startingAt(celsius(k - ZERO)),
                Duration.ofMinutes(20),
                1e-5);
    }

    @Test
    void iceAndFlowsAndWindComeBack() {
        Duration time = Duration.ofMinutes(20);
        assertComesBack(
                ASK.iceMass(
                        kilograms(0.2),
                        kilograms(3),
                        mass -> IceWaterBath.in(BUCKET, ROOM)
                                .ice(mass, millimetres(25), celsius(-5))
                                .water(kilograms(4), celsius(18))
                                .build()),
                1.1,
                kg -> bath(kg, 25),
                time,
                0.01);
        assertComesBack(
                ASK.blockSide(
                        millimetres(10),
                        millimetres(60),
                        side -> IceWaterBath.in(BUCKET, ROOM)
                                .ice(kilograms(1.5), side, celsius(-5))
                                .water(kilograms(4), celsius(18))
                                .build()),
                0.035,
                side -> bath(1.5, 1000 * side),
                time,
                0.02);
        assertComesBack(
                ASK.tapFlow(celsius(11), ROOM, litresPerMinute(0.5), litresPerMinute(20)),
                4.0 / 60_000,
                flow -> RunningTap.at(celsius(11), litresPerMinute(flow * 60_000), ROOM),
                Duration.ofMinutes(8),
                0.02);
        assertComesBack(
                ASK.inflow(SINK, celsius(9), litresPerMinute(0.5), litresPerMinute(20)),
                3.0 / 60_000,
                flow -> SINK.withInflow(litresPerMinute(flow * 60_000), celsius(9)),
                time,
                0.02);
        Air breeze = Air.at(celsius(6));
        assertComesBack(
                ASK.airSpeed(breeze, metresPerSecond(0), metresPerSecond(5)),
                1.5,
                speed -> breeze.withSpeed(metresPerSecond(speed)),
                Duration.ofHours(1),
                0.01);
    }

    private static final Air BREEZE =
            Air.at(celsius(25)).withRelativeHumidity(percent(40)).withSpeed(metresPerSecond(2));
    private static final FilledVessel AS_WARM = WARM.atTemperature(celsius(25));

    private static WetWrap cloth(Quantity<Mass> water) {
        return WetWrap.cloth(millimetres(2), grams(50), water, celsius(25), BREEZE);
    }

    private static ValueAnswer water(Duration time, double target) {
        return RequiredValues.of(AS_WARM)
                .clothWater(grams(10), grams(200), RequiredValuesTest::cloth)
                .temperatureAt(time, celsius(target));
    }

    private static double afterCloth(double waterKg, Duration time) {
        return Lumped.of(AS_WARM).expose(in(cloth(kilograms(waterKg)), time)).meanTemperatureK(Times.seconds(time))
                - ZERO;
    }

    @Test
    void moreWaterInAClothKeepsCoolForLonger() {
        double before = 0;
        for (int hours = 2; hours <= 8; hours += 2) {
            Duration time = Duration.ofHours(hours);
            ValueAnswer.Solution solution = ((ValueAnswer.Reached) water(time, 19)).solution();
            assertThat(solution.value()).isGreaterThan(before);
            assertThat(afterCloth(solution.value(), time)).isCloseTo(19, within(0.02));
            // A warmer target asks for less water: at this time it is drying.
            assertThat(solution.valuePerKelvin()).isNegative();
            before = solution.value();
        }
        assertThat(water(Duration.ofHours(5), 19).explain())
                .contains("the mass of water in the cloth must be")
                .contains(" g;");
    }

    @Test
    void waterInAClothIsBoundedByTheHeatThatItMustTakeUp() {
        // After an hour a little water has just dried, having cooled the bottle to 21 °C.
        Duration time = Duration.ofHours(1);
        ValueAnswer.Solution solution = ((ValueAnswer.Reached) water(time, 21)).solution();
        double glassJPerK = AS_WARM.vessel().emptyMassKg()
                * AS_WARM.vessel().wall().specificHeatCapacity().value();
        double heatJ = 4 * (AS_WARM.liquidMassKg() * AS_WARM.liquid().specificHeatCapacity(ZERO + 23) + glassJPerK);
        // 2.44 MJ/kg at 25 °C, steam tables, from memory.
        double leastKg = heatJ / 2.44e6;
        OutsideChecks.fromMemory("inverse-cloth-water", "energy bound: latent heat of evaporation 2.44 MJ/kg at 25 °C")
                .what(
                        "water required in a cloth over the least that takes up the heat of the bottle; air and sides warm it meanwhile")
                .unit("1")
                .between(1, 10)
                .check(solution.value() / leastKg);
    }

    @Test
    void noWaterPassesTheWetBulb() {
        // R. Stull, J. Appl. Meteorol. Climatol. 50 (2011) 2267, eq. 1, from memory: good to 1 K; 13.7 °C at 20 °C and
        // 50 %.
        double wetBulb = stull(25, 40);
        assertThat(stull(20, 50)).isCloseTo(13.7, within(0.05));
        ValueAnswer.NeverReached never = (ValueAnswer.NeverReached) water(Duration.ofHours(5), wetBulb - 1);
        OutsideChecks.fromMemory(
                        "inverse-cloth-wet-bulb", "R. Stull, J. Appl. Meteorol. Climatol. 50 (2011) 2267, eq. 1")
                .what(
                        "lowest temperature under a wet cloth less the wet-bulb temperature, air of 25 °C and 40 % at 2 m/s")
                .unit("K")
                .between(-1, 2)
                .check(never.closestK() - ZERO - wetBulb);
        assertThat(never.closestK() - ZERO).isGreaterThan(wetBulb - 1);
        // Left there it dries, and is as warm as the air.
        assertThat(never.asymptote().nearestK(ZERO)).isCloseTo(ZERO + 25, within(0.1));
        assertThat(never.explain()).contains("levels off at 25.0 °C");
    }

    private static double stull(double celsius, double percent) {
        return celsius * Math.atan(0.151977 * Math.sqrt(percent + 8.313659))
                + Math.atan(celsius + percent)
                - Math.atan(percent - 1.676331)
                + 0.00391838 * Math.pow(percent, 1.5) * Math.atan(0.023101 * percent)
                - 4.686035;
    }

    @Test
    void aTargetBeyondEveryMediumSaysWhichWay() {
        ValueSearch search = ASK.refrigeratorTemperature(celsius(2), celsius(12));
        ValueAnswer.NeverReached warm = (ValueAnswer.NeverReached) search.timeTo(celsius(40), Duration.ofHours(2));
        assertThat(warm.closestValue()).isEqualTo(ZERO + 12);
        assertThat(warm.help()).startsWith("A higher refrigerator temperature").contains("levels off at 12.0 °C");
        assertThat(warm.asymptote().nearestK(ZERO)).isCloseTo(ZERO + 12, within(0.02));
        ValueAnswer.NeverReached cold = (ValueAnswer.NeverReached) search.timeTo(celsius(-20), Duration.ofHours(2));
        assertThat(cold.closestValue()).isEqualTo(ZERO + 2);
        assertThat(cold.help()).startsWith("A lower refrigerator temperature");
    }

    @Test
    void theTimeToATemperatureComesBack() {
        Duration time = Duration.ofMinutes(90);
        ValueAnswer.Reached reached = (ValueAnswer.Reached)
                ASK.refrigeratorTemperature(celsius(-10), celsius(18)).timeTo(celsius(12), time);
        double airK = reached.solution().value();
        TimeToTemperature again = Lumped.of(WARM)
                .expose(in(Refrigerator.at(celsius(airK - ZERO)), Duration.ofHours(3)))
                .timeTo(celsius(12));
        assertThat(Times.seconds(((TimeToTemperature.Reached) again).after()))
                .isCloseTo(Times.seconds(time), within(20.0));
    }

    @Test
    void noValueSaysHowNearAndWhatWouldHelp() {
        ValueAnswer.NeverReached never = (ValueAnswer.NeverReached)
                ASK.refrigeratorTemperature(celsius(2), celsius(12)).temperatureAt(Duration.ofMinutes(45), celsius(8));
        assertThat(never.closestValue()).isEqualTo(ZERO + 2);
        assertThat(never.help()).startsWith("A lower refrigerator temperature").contains("more time");
        assertThat(never.closestK()).isGreaterThan(ZERO + 8);
        assertThat(never.snapshot().answer()).isEqualTo("never");
        ValueAnswer beyond =
                ASK.airTemperature(celsius(5), celsius(20)).temperatureAt(Duration.ofHours(9), celsius(40));
        assertThat(beyond).isInstanceOf(ValueAnswer.NeverReached.class);
        assertThat(ASK.refrigeratorTemperature(celsius(2), celsius(12)).timeTo(celsius(1), Duration.ofHours(1)))
                .isInstanceOf(ValueAnswer.NeverReached.class);
    }

    @Test
    void severalValuesAreAllFound() {
        // The phase of air that swings: a bottle is as warm at the instant whether the air was warmest before or after.
        ValueSearch phase = ASK.value(
                AskedValue.of("time at which the air is warmest", "s"),
                0,
                4 * 3600,
                warmestS ->
                        Air.periodic(celsius(20), kelvinDifference(15), Duration.ofHours(4), Times.duration(warmestS)));
        ValueAnswer.Several several = (ValueAnswer.Several) phase.temperatureAt(Duration.ofHours(4), celsius(20.5));
        assertThat(several.solutions()).hasSize(2);
        for (ValueAnswer.Solution solution : several.solutions()) {
            assertThat(solution.temperatureK()).isCloseTo(ZERO + 20.5, within(0.01));
        }
        assertThat(several.solutions().get(0).valuePerKelvin()
                        * several.solutions().get(1).valuePerKelvin())
                .isNegative();
        assertThat(several.explain()).contains("may be").contains(" or ");
    }

    @Test
    void whereItMakesNoDifferenceAllValuesDo() {
        Air same = Air.at(celsius(22));
        ValueAnswer.AllDo all = (ValueAnswer.AllDo) ASK.airSpeed(same, metresPerSecond(0), metresPerSecond(5))
                .temperatureAt(Duration.ofHours(1), celsius(22));
        assertThat(all.spreadK()).isLessThan(0.01);
        assertThat(all.explain()).contains("any air speed");
    }

    @Test
    void nearTheMediumTheAnswerWarns() {
        // After a day the bottle is as warm as the air: the time is worth nothing; more wind changes next to nothing.
        ValueAnswer.Reached level = (ValueAnswer.Reached)
                ASK.airTemperature(celsius(0), celsius(20)).temperatureAt(Duration.ofDays(2), celsius(10));
        assertThat(level.solution().warnings()).anyMatch(text -> text.contains("levels off at 10.0 °C"));
        assertThat(level.solution().value()).isCloseTo(ZERO + 10, within(0.05));
        ValueAnswer.Reached soon = (ValueAnswer.Reached)
                ASK.airTemperature(celsius(-30), celsius(60)).temperatureAt(Duration.ofMinutes(1), celsius(21.98));
        assertThat(soon.solution().warnings()).anyMatch(text -> text.contains("hardly depends"));
        ValueAnswer.Reached freezes = (ValueAnswer.Reached)
                ASK.refrigeratorTemperature(celsius(-30), celsius(5)).temperatureAt(Duration.ofHours(8), celsius(-6.5));
        assertThat(freezes.solution().warnings()).anyMatch(text -> text.contains("begun to freeze"));
    }

    @Test
    void nonsenseIsRefusedByName() {
        assertThatThrownBy(() -> ASK.iceMass(kilograms(-1), kilograms(2), mass -> ROOM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("mass of ice");
        assertThatThrownBy(() -> ASK.iceMass(
                        kilograms(0.1), kilograms(50), mass -> IceWaterBath.of(BUCKET, mass, kilograms(4), ROOM)))
                .hasMessageContaining("bath water");
        assertThatThrownBy(() -> ASK.airTemperature(celsius(20), celsius(5))).hasMessageContaining("above the lower");
        assertThatThrownBy(() -> ASK.airTemperature(celsius(20), celsius(500)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("air temperature");
        assertThatThrownBy(() -> ASK.airSpeed(ROOM, metresPerSecond(-1), metresPerSecond(5)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ASK.tapFlow(celsius(11), ROOM, litresPerMinute(0), litresPerMinute(5)))
                .isInstanceOf(OutOfRangeException.class);
        ValueSearch search = ASK.airTemperature(celsius(5), celsius(20));
        assertThatThrownBy(() -> search.temperatureAt(Duration.ofMinutes(-1), celsius(10)))
                .hasMessageContaining("more than nothing");
        assertThatThrownBy(() -> search.withMostRuns(5)).hasMessageContaining("20 to 10000");
        assertThatThrownBy(() -> new AskedValue(" ", "m", 1, 0)).hasMessageContaining("not blank");
    }
}
