/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Every answer explains itself, alike in every locale, and gives figures that can be stored. */
class AnswersTest {

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final Duration LONG = Duration.ofHours(6);
    private static final Wanted WHITE = Wanted.between(celsius(8), celsius(10));
    private static final Wanted SWEET = Wanted.between(celsius(2), celsius(4));

    private static List<Answer> answers() {
        Prediction run = Lumped.of(BOTTLE).expose(in(COLD, LONG));
        ValueSearch value = RequiredValues.of(BOTTLE).refrigeratorTemperature(celsius(0), celsius(12));
        Past past = Past.of(BOTTLE, Air.at(celsius(24)));
        Chances chances = Chances.of(PredictionEnsemble.of(
                Ensemble.of(5, 1),
                LawScatter.all(),
                draw -> Lumped.of(BOTTLE)
                        .with(NetworkSolver.standard().withMultipliers(draw.values()))
                        .expose(in(COLD, LONG))));
        return List.of(
                StartSearch.of(BOTTLE, COLD).latestStart(WHITE, LONG),
                StartSearch.of(BOTTLE, COLD).latestStart(SWEET, LONG),
                StartSearch.of(BOTTLE, COLD).earliestReady(WHITE, LONG),
                StartSearch.of(BOTTLE, COLD).earliestReady(SWEET, LONG),
                Holding.until(run, WHITE, Duration.ofHours(3)),
                Holding.until(run, Wanted.between(celsius(4), celsius(21)), Duration.ZERO),
                Holding.until(run, WHITE, Duration.ZERO),
                Holding.until(run, SWEET, Duration.ZERO),
                Passing.of(run, celsius(9), kelvinDifference(0.1)),
                Passing.of(run, celsius(1), kelvinDifference(0.1)),
                value.temperatureAt(Duration.ofHours(3), celsius(9)),
                value.temperatureAt(Duration.ofMinutes(30), celsius(9)),
                past.takenOut(celsius(6), celsius(9), LONG),
                past.takenOut(celsius(6), celsius(23.9), Duration.ofHours(30)),
                past.takenOut(celsius(6), celsius(30), LONG),
                past.was(celsius(9), Duration.ofMinutes(20), celsius(0), celsius(20)),
                chances.inRange(WHITE, Duration.ofHours(3)),
                chances.latestStart(WHITE, LONG, 0.95),
                chances.latestStart(SWEET, LONG, 0.95),
                Stages.of(BOTTLE, in(COLD, Duration.ofHours(2)), in(Refrigerator.at(celsius(2)), Duration.ofHours(2)))
                        .withSteps(2)
                        .endingAt(WHITE),
                Stages.of(BOTTLE, in(COLD, Duration.ofHours(1)), in(COLD, Duration.ofMinutes(5)))
                        .withSteps(2)
                        .endingAt(SWEET));
    }

    @Test
    void everyAnswerExplainsItselfAndGivesItsFigures() {
        for (Answer answer : answers()) {
            String text = answer.explain();
            assertThat(text)
                    .as(answer.toString())
                    .matches("(?s)[A-Z0-9].*\\.")
                    .doesNotContain("NaN")
                    .doesNotContain("-0.0 ")
                    .doesNotContain(" a a")
                    .doesNotContain("null")
                    .doesNotContain("Infinity");
            Snapshot snapshot = answer.snapshot();
            assertThat(snapshot.formatVersion()).isEqualTo(1);
            assertThat(snapshot.valuesSi()).isNotEmpty();
            System.out.println(snapshot.answer() + ": " + text);
        }
    }

    @Test
    void zeroHasNoSignAndFiguresNoPowersOfTen() {
        AskedValue temperature = AskedValue.temperature("temperature");
        for (double below : new double[] {0, 1e-9, 1e-4, 0.03, 0.0499}) {
            assertThat(Text.celsius(273.15 - below)).isEqualTo("0.0 °C");
            assertThat(temperature.text(273.15 - below)).isEqualTo("0.0 °C");
        }
        assertThat(Text.celsius(273.15 - 0.06)).isEqualTo("-0.1 °C");
        assertThat(Text.figure(-0.0, 3)).isEqualTo("0");
        assertThat(Text.figure(1234.5, 3)).isEqualTo("1230");
        assertThat(Text.figure(0.000_123_4, 3)).isEqualTo("0.000123");
        assertThat(temperature.step(100)).isEqualTo("100 K");
        assertThat(temperature.step(Double.MAX_VALUE)).isEqualTo("more than can be said");
        assertThat(AskedValue.of("mass of ice", "kg").text(1.1)).isEqualTo("1.10 kg");
    }

    @Test
    void sentencesAboutValuesReadWell() {
        ValueAnswer speed = RequiredValues.of(BOTTLE)
                .airSpeed(Air.at(celsius(6)), metresPerSecond(0), metresPerSecond(6))
                .temperatureAt(Duration.ofMinutes(75), celsius(12));
        assertThat(speed.explain())
                .matches(
                        "To be at 12\\.0 °C after 1 h 15 min, the air speed must be 0\\.\\d+ m/s; a kelvin more or less moves it by"
                                + " 0\\.\\d+ m/s\\.");
        ValueAnswer cold = RequiredValues.of(BOTTLE)
                .refrigeratorTemperature(celsius(-30), celsius(12))
                .temperatureAt(Duration.ofMinutes(45), celsius(8));
        assertThat(cold.explain())
                .startsWith("To be at 8.0 °C after 45 min, the refrigerator temperature must be -")
                .doesNotContain(" a a")
                .doesNotContain(" a refrigerator");
    }

    @Test
    void numbersAreWrittenAlikeEverywhere() {
        assertThat(Text.celsius(281.15)).isEqualTo("8.0 °C");
        assertThat(Text.celsius(273.14)).isEqualTo("0.0 °C");
        assertThat(Text.time(Duration.ofSeconds(90))).isEqualTo("1.5 min");
        assertThat(Text.time(Duration.ofMinutes(65))).isEqualTo("1 h 05 min");
        assertThat(Text.time(Duration.ofMillis(3_599_900))).isEqualTo("1 h 00 min");
        assertThat(Text.format("%.2f", 1234.5))
                .isEqualTo(String.format(Locale.ENGLISH, "%.2f", 1234.5))
                .isNotEqualTo(String.format(Locale.GERMANY, "%.2f", 1234.5));
    }
}
