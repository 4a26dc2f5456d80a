/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.TimeToTemperature.NeverReached;
import org.beveragethermal.core.prediction.TimeToTemperature.Reached;
import org.beveragethermal.core.prediction.TimeToTemperature.ReachedThenLost;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What a prediction answers, against the curve that it answers from. */
class PredictionTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(22));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Prediction IN_THE_COLD = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(5)));

    @Test
    void theTimeConstantIsThatOfTheCurveLate() {
        for (double hours = 2.5; hours <= 4.5; hours += 0.5) {
            double at = 3600 * hours;
            double here = IN_THE_COLD.meanTemperatureK(at);
            double rate = (IN_THE_COLD.meanTemperatureK(at + 30) - IN_THE_COLD.meanTemperatureK(at - 30)) / 60;
            double constant = IN_THE_COLD
                    .explainAt(Duration.ofMillis(Math.round(1000 * at)))
                    .timeConstantS();
            assertThat(constant).isCloseTo(-(here - ZERO - 5) / rate, Percentage.withPercentage(5));
        }
    }

    @Test
    void resistancesTimesHeatAreTheTemperatureDifference() {
        // Quasi-steady: the heat that drink and glass give up passes the outside, that of the drink alone the inside
        // film.
        double at = 3 * 3600;
        Explanation explanation = IN_THE_COLD.explainAt(Duration.ofHours(3));
        Explanation.Band band = explanation.bands().get(0);
        double rate = (IN_THE_COLD.meanTemperatureK(at + 30) - IN_THE_COLD.meanTemperatureK(at - 30)) / 60;
        double drink = BOTTLE.liquidMassKg() * BOTTLE.liquid().specificHeatCapacity(ZERO + 8) * -rate;
        double glass = BOTTLE.vessel().emptyMassKg()
                * BOTTLE.vessel().wall().specificHeatCapacity().value()
                * -rate;
        List<Resistance> parts = band.inSeries();
        double difference = parts.get(0).kelvinPerWatt() * drink
                + parts.get(1).kelvinPerWatt() * (drink + 0.5 * glass)
                + parts.get(2).kelvinPerWatt() * (drink + glass);
        assertThat(parts).hasSize(3);
        assertThat(difference)
                .isCloseTo(IN_THE_COLD.meanTemperatureK(at) - band.mediumK(), Percentage.withPercentage(2));
        assertThat(band.kelvinPerWatt())
                .isCloseTo(parts.stream().mapToDouble(Resistance::kelvinPerWatt).sum(), within(1e-12));
        assertThat(band.mediumK() - ZERO).isCloseTo(5, within(1e-6));
    }

    @Test
    void howLateForAKelvinFurtherIsTheSlopeOfTheCurve() {
        for (double target = 8; target <= 20; target += 2) {
            Reached reached = (Reached) IN_THE_COLD.timeToK(ZERO + target, 0);
            double at = reached.after().toMillis() / 1000.0;
            double rate = (IN_THE_COLD.meanTemperatureK(at + 5) - IN_THE_COLD.meanTemperatureK(at - 5)) / 10;
            assertThat(IN_THE_COLD.meanTemperatureK(at) - ZERO).isCloseTo(target, within(1e-4));
            assertThat(reached.secondsPerKelvin()).isCloseTo(-1 / rate, Percentage.withPercentage(2));
        }
    }

    @Test
    void reachedThenLostNamesBothTimes() {
        Prediction back = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(3)), in(ROOM, Duration.ofHours(4)));
        ReachedThenLost lost = (ReachedThenLost) back.timeTo(celsius(12));
        assertThat(lost.after()).isLessThan(Duration.ofHours(3));
        assertThat(lost.lostAfter()).isBetween(Duration.ofHours(3), Duration.ofHours(7));
        for (Duration at : List.of(lost.after(), lost.lostAfter())) {
            assertThat(back.meanTemperatureK(at.toMillis() / 1000.0) - ZERO).isCloseTo(12, within(1e-3));
        }
        // Asked from a time in the room it is on its way back, and stays beyond.
        assertThat(back.timeToK(ZERO + 12, 3 * 3600)).isInstanceOf(Reached.class);
    }

    @Test
    void neverReachedSaysHowCloseItCame() {
        NeverReached never = (NeverReached) IN_THE_COLD.timeTo(celsius(4));
        double end = IN_THE_COLD.meanTemperatureK(5 * 3600);
        assertThat(never.atEndK()).isEqualTo(end);
        assertThat(never.closestK()).isCloseTo(end, within(1e-9));
        NeverReached warmer = (NeverReached) IN_THE_COLD.timeTo(celsius(30));
        assertThat(warmer.closestK() - ZERO).isCloseTo(22, within(1e-3));
    }

    @Test
    void whatAFactorOnAFilmDoesIsThatOfItsResistance() {
        // The outside decides, so that half as much convection and radiation takes about twice as long, never more.
        Prediction slow = Lumped.of(BOTTLE)
                .with(NetworkSolver.standard()
                        .withMultipliers(Map.of(Multipliers.AIR_FILM, 0.5, Multipliers.RADIATION, 0.5)))
                .expose(in(COLD, Duration.ofHours(10)));
        double ratio = seconds(slow.timeTo(celsius(10))) / seconds(IN_THE_COLD.timeTo(celsius(10)));
        assertThat(ratio).isBetween(1.7, 2.0);
    }

    private static double seconds(TimeToTemperature answer) {
        return ((Reached) answer).after().toMillis() / 1000.0;
    }

    @Test
    void lawsOutsideTheirRangeAreNoted() {
        // A magnum from 35 °C: taller and warmer than the bottles of which 0.80 Ra^¼ was computed (Ra at most 1e9).
        List<String> notes = Lumped.of(Vessels.magnum().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(35)))
                .expose(in(COLD, Duration.ofHours(1)))
                .notes();
        assertThat(notes).anyMatch(note -> note.contains("0.80 Ra^(1/4) used outside its range: Rayleigh number"));
        // The ordinary case stays silent while the drive is strong.
        assertThat(Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(1))).notes())
                .noneMatch(note -> note.contains("used outside its range"));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> IN_THE_COLD.meanTemperatureK(5 * 3600 + 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.meanTemperatureK(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.meanTemperatureK(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.meanTemperaturesK(0, 1e9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.meanTemperatureAt(Duration.ofHours(6)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.profileK(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.wallTemperatureK(0, 1e9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.timeToK(280, 1e9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.explainAt(Duration.ofHours(6)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> IN_THE_COLD.explainAt(Duration.ofSeconds(-1)))
                .isInstanceOf(IllegalArgumentException.class);
        Node node = Node.sensible("n", 1, 280);
        assertThatThrownBy(() -> new Contents(List.of(node), List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Contents(List.of(), List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
