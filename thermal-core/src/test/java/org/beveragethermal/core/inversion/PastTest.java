/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Pasts that are known because they were run forward, and pasts that no reading tells. */
class PastTest {

    private static final double ZERO = 273.15;
    private static final FilledVessel COLD =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(6));
    private static final Air TERRACE = Air.at(celsius(24));
    private static final Past PAST = Past.of(COLD, TERRACE);
    private static final Prediction FORWARD = Lumped.of(COLD).expose(in(TERRACE, Duration.ofHours(30)));

    private static double at(double minutes) {
        return FORWARD.meanTemperatureK(60 * minutes) - ZERO;
    }

    @Test
    void whenItWasTakenOutComesBack() {
        for (double minutes : new double[] {20, 45, 120}) {
            PastAnswer.TakenOut out =
                    (PastAnswer.TakenOut) PAST.takenOut(celsius(6), celsius(at(minutes)), Duration.ofHours(8));
            assertThat(Times.seconds(out.ago())).isCloseTo(60 * minutes, within(2.0));
            assertThat(out.least()).isLessThan(out.ago());
            assertThat(out.most()).isGreaterThan(out.ago());
            assertThat(at(Times.seconds(out.most()) / 60)).isCloseTo(at(minutes) + 0.5, within(0.01));
        }
    }

    @Test
    void whatItWasComesBack() {
        PastAnswer.Was was =
                (PastAnswer.Was) PAST.was(celsius(at(20)), Duration.ofMinutes(20), celsius(0), celsius(23));
        assertThat(was.temperatureK()).isCloseTo(ZERO + 6, within(0.01));
        assertThat(was.kelvinPerKelvin()).isBetween(1.0, 1.5);
        assertThat(was.highK() - was.lowK()).isCloseTo(was.kelvinPerKelvin(), within(0.05));
        assertThat(was.explain()).startsWith("It was at 6.0 °C");
    }

    @Test
    void longAgoIsIllPosed() {
        PastAnswer.IllPosed when = (PastAnswer.IllPosed) PAST.takenOut(celsius(6), celsius(23.8), Duration.ofHours(30));
        assertThat(when.explain()).contains("cannot be told").contains("whenever it was");
        PastAnswer.IllPosed what =
                (PastAnswer.IllPosed) PAST.was(celsius(at(20 * 60)), Duration.ofHours(20), celsius(0), celsius(40));
        assertThat(what.sensitivity()).isGreaterThan(10);
        assertThat(what.explain()).contains("anything from 0.0 °C to 40.0 °C");
        // Eight hours are well posed for a better thermometer and a laxer bound only.
        assertThat(PAST.was(celsius(at(480)), Duration.ofHours(8), celsius(-3), celsius(40)))
                .isInstanceOf(PastAnswer.IllPosed.class);
        PastAnswer.Was was = (PastAnswer.Was) PAST.withReadingError(kelvinDifference(0.05))
                .withBound(100)
                .was(celsius(at(480)), Duration.ofHours(8), celsius(-3), celsius(40));
        assertThat(was.temperatureK()).isCloseTo(ZERO + 6, within(0.2));
    }

    @Test
    void whatCannotBeIsSaid() {
        PastAnswer.Impossible warmer =
                (PastAnswer.Impossible) PAST.takenOut(celsius(6), celsius(28), Duration.ofHours(8));
        assertThat(warmer.closestK()).isLessThan(ZERO + 24.01);
        assertThat(PAST.takenOut(celsius(6), celsius(3), Duration.ofHours(8)))
                .isInstanceOf(PastAnswer.Impossible.class);
        assertThat(PAST.was(celsius(30), Duration.ofMinutes(20), celsius(0), celsius(20)))
                .isInstanceOf(PastAnswer.Impossible.class);
        // Just out: at most so long ago.
        PastAnswer.TakenOut fresh = (PastAnswer.TakenOut) PAST.takenOut(celsius(6), celsius(6.1), Duration.ofHours(8));
        assertThat(fresh.least()).isZero();
        assertThat(fresh.most()).isLessThan(Duration.ofMinutes(20));
    }

    @Test
    void aFreezingPlateauForgetsWhatWas() {
        // However warm it was, by now it is on its way down the plateau: a kelvin now stands for many then.
        PastAnswer answer = Past.of(COLD, Refrigerator.at(celsius(-18)))
                .was(celsius(-5.7), Duration.ofHours(3), celsius(2), celsius(12));
        assertThat(answer).isInstanceOf(PastAnswer.IllPosed.class);
    }

    @Test
    void airThatCyclesMayHaveSeveralPasts() {
        // Taken out at 14 °C into air that swings about it: it comes to the reading again and again.
        Air swing = Air.periodic(celsius(14), kelvinDifference(9), Duration.ofHours(6), Duration.ZERO);
        FilledVessel bottle = COLD.atTemperature(celsius(14));
        Duration now = Duration.ofHours(5);
        Prediction known = Runs.of(bottle).run(Duration.ofHours(2), List.of(in(swing, Duration.ofHours(3))));
        double reading = known.meanTemperatureK(10_800) - ZERO;
        PastAnswer answer = Past.of(bottle, swing)
                .withReadingError(kelvinDifference(0.05))
                .takenOut(celsius(14), celsius(reading), now);
        PastAnswer.Several several = (PastAnswer.Several) answer;
        assertThat(several.times()).anyMatch(time -> Math.abs(Times.seconds(time.ago()) - 10_800) < 60);
        assertThat(several.explain()).contains(" or ");
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> PAST.withReadingError(kelvinDifference(0)))
                .hasMessageContaining("error of the reading");
        assertThatThrownBy(() -> PAST.withBound(0.5)).hasMessageContaining("at least 1");
        assertThatThrownBy(() -> PAST.was(celsius(9), Duration.ofMinutes(20), celsius(9), celsius(9)))
                .hasMessageContaining("above the lower");
        assertThatThrownBy(() -> PAST.was(celsius(9), Duration.ZERO, celsius(0), celsius(9)))
                .hasMessageContaining("more than nothing");
    }
}
