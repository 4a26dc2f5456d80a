/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What is drawn lies where it is said to, and does to a bottle what its kind does. */
class UnstatedConditionsTest {

    private static final List<UncertainInput> ALL = UnstatedConditions.all();
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Duration HOUR = Duration.ofHours(1);

    private static double afterAnHour(Surroundings surroundings) {
        return Lumped.of(BOTTLE).expose(Exposure.in(surroundings, HOUR)).meanTemperatureK(3600);
    }

    private static List<Double> drawn(ToDoubleFunction<Draw> figure) {
        return Ensemble.of(2000, 7).run(ALL, figure::applyAsDouble);
    }

    /** All inputs at one part of their way from the lower to the upper end. */
    private static Draw at(double part) {
        return Draw.at(ALL, ALL.stream().mapToDouble(input -> part).toArray());
    }

    /** Means and shares of even distributions, to four standard errors of 2000 draws. */
    @Test
    void isDrawnEvenlyFromWhatIsSaid() {
        List<Double> fans =
                drawn(draw -> UnstatedConditions.fan(draw).getValue().doubleValue());
        assertThat(fans).allMatch(speed -> speed == 0 || (speed >= 0.1 && speed <= 0.5));
        assertThat(fans.stream().filter(speed -> speed == 0).count() / 2000.0).isCloseTo(0.5, within(0.045));
        assertThat(mean(fans.stream().filter(speed -> speed > 0).toList())).isCloseTo(0.3, within(0.015));
        List<Double> stirred = drawn(draw -> UnstatedConditions.stirring(draw).speedMPerS());
        assertThat(stirred).allMatch(speed -> speed >= 0 && speed <= 0.1);
        assertThat(stirred.stream().filter(speed -> speed == 0).count() / 2000.0)
                .isCloseTo(0.5, within(0.045));
        Map<ToDoubleFunction<Draw>, double[]> even = Map.of(
                draw -> UnstatedConditions.draught(draw).getValue().doubleValue(),
                new double[] {0, 0.3},
                draw -> UnstatedConditions.roomHumidity(draw).getValue().doubleValue(),
                new double[] {30, 60},
                draw -> UnstatedConditions.roomTemperature(draw).getValue().doubleValue(),
                new double[] {18, 25},
                UnstatedConditions::convectionLeft,
                new double[] {0.7, 1});
        even.forEach((figure, ends) -> {
            List<Double> values = drawn(figure);
            assertThat(values).allMatch(value -> value >= ends[0] && value <= ends[1]);
            double fourErrors = 4 * (ends[1] - ends[0]) / Math.sqrt(12 * 2000.0);
            assertThat(mean(values)).isCloseTo(0.5 * (ends[0] + ends[1]), within(fourErrors));
        });
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(value -> value).average().orElseThrow();
    }

    /** At its upper end a room moves its air, so that a warm bottle cools faster than in air at rest. */
    @Test
    void roomMovesItsAir() {
        Air still = Air.at(celsius(10));
        assertThat(afterAnHour(UnstatedConditions.room(still, at(0.999)))).isLessThan(afterAnHour(still) - 0.5);
    }

    /** The heat of vessels and of opened doors makes an appliance slower than one that is held; fast air faster than slow. */
    @Test
    void applianceFeelsWhatIsDoneToIt() {
        Draw middle = at(0.5);
        double slow =
                afterAnHour(UnstatedConditions.appliance(celsius(5), metresPerSecond(0.1), Duration.ZERO, middle));
        double fast =
                afterAnHour(UnstatedConditions.appliance(celsius(5), metresPerSecond(0.5), Duration.ZERO, middle));
        assertThat(fast).isLessThan(slow - 0.3);
        Refrigerator held =
                Refrigerator.at(celsius(5)).withFan(metresPerSecond(0.5)).on(Footing.open());
        assertThat(fast).isGreaterThan(afterAnHour(held) + 0.3);
        assertThat(afterAnHour(UnstatedConditions.appliance(celsius(5), Duration.ZERO, at(0.2))))
                .isEqualTo(afterAnHour(
                        UnstatedConditions.appliance(celsius(5), metresPerSecond(0), Duration.ZERO, at(0.2))));
    }

    /** Doors are opened from when the vessel comes, for twelve hours: before it and long after, the air is at its set point. */
    @Test
    void doorsAreOpenedFromWhenTheVesselComes() {
        Duration from = Duration.ofHours(2);
        Refrigerator late = UnstatedConditions.appliance(celsius(5), metresPerSecond(0.3), from, at(0.5));
        FilledVessel cold = BOTTLE.vessel().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(5));
        Prediction run = Lumped.of(cold).expose(Exposure.in(late, Duration.ofHours(40)));
        assertThat(run.meanTemperatureK(7200)).isCloseTo(278.15, within(1e-6));
        assertThat(run.meanTemperatureK(3 * 3600)).isGreaterThan(278.25);
        assertThat(run.meanTemperatureK(40 * 3600)).isCloseTo(278.15, within(0.05));
    }

    @Test
    void anotherDrawIsRefused() {
        Draw other = Draw.of(LawScatter.all(), 1, 0);
        assertThatThrownBy(() -> UnstatedConditions.fan(other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("fan of an appliance");
    }
}
