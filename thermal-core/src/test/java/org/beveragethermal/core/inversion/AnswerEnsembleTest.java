/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.Spread;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.junit.jupiter.api.Test;

/** Intervals of answers beside their closed form: a body of lumped capacitance whose conductance carries a normal factor. */
class AnswerEnsembleTest {

    private static final double ZERO = 273.15;
    private static final int DRAWS = 400;
    /** Written down before the first run. */
    private static final long SEED = 20_261_126L;

    private static final double SPREAD = 0.2;
    private static final double CONSTANT_S = 7200;
    private static final Duration LOOKED = Duration.ofMinutes(150);
    private static final Wanted WANTED = Wanted.between(celsius(8), celsius(10));
    private static final List<UncertainInput> FILM =
            List.of(UncertainInput.factor("film", Uncertainty.normalRelative(SPREAD)));

    /** From 20 °C in air of 5 °C: 10 °C after ln 3 time constants. */
    private static Holding question(Draw draw) {
        LumpedBody body = new LumpedBody(3600, 3600 / CONSTANT_S * draw.value("film"), ZERO + 20, ZERO + 5);
        return Holding.until(body.predict(LOOKED), WANTED, Duration.ZERO);
    }

    private static double closedFormS(Draw draw) {
        return CONSTANT_S * Math.log(3) / draw.value("film");
    }

    private static AnswerEnsemble<Holding> asked(Ensemble ensemble) {
        return AnswerEnsemble.of(ensemble, FILM, AnswerEnsembleTest::question);
    }

    @Test
    void intervalsAreThoseOfTheClosedForm() {
        AnswerEnsemble<Holding> asked = asked(Ensemble.of(DRAWS, SEED));
        double[] times = Ensemble.of(DRAWS, SEED).run(FILM, AnswerEnsembleTest::closedFormS).stream()
                .mapToDouble(Double::doubleValue)
                .filter(timeS -> timeS <= LOOKED.toSeconds())
                .toArray();
        for (double probability : new double[] {0.5, 0.68, 0.9}) {
            Spread enters = asked.spread("entersAfterS", probability);
            Interval expected = Interval.of(times, probability);
            assertThat(enters.draws()).isEqualTo(DRAWS);
            assertThat(enters.having()).isEqualTo(times.length).isLessThan(DRAWS);
            Interval interval = enters.interval().orElseThrow();
            assertThat(interval.low()).isCloseTo(expected.low(), within(0.1));
            assertThat(interval.median()).isCloseTo(expected.median(), within(0.1));
            assertThat(interval.high()).isCloseTo(expected.high(), within(0.1));
            assertThat(interval.probability()).isEqualTo(probability);
        }
    }

    /** It enters in time if the factor is at least ln 3 time constants over the time looked at. */
    @Test
    void chancesOfKindsAreThoseOfTheClosedForm() {
        AnswerEnsemble<Holding> asked = asked(Ensemble.of(DRAWS, SEED));
        Chance never = asked.chance(Holding.Never.class);
        double exact =
                new NormalDistribution(1, SPREAD).cumulativeProbability(Math.log(3) * CONSTANT_S / LOOKED.toSeconds());
        BinomialDistribution band = new BinomialDistribution(DRAWS, exact);
        assertThat(never.hits())
                .isBetween(band.inverseCumulativeProbability(0.0005), band.inverseCumulativeProbability(0.9995))
                .isEqualTo(DRAWS - asked.spread("entersAfterS", 0.9).having());
        assertThat(asked.chance(Holding.class).hits()).isEqualTo(DRAWS);
        assertThat(asked.chance(Holding.Throughout.class).hits()).isZero();
    }

    @Test
    void listsAreAskedPlaceByPlaceAndOneFigureByName() {
        AnswerEnsemble<Holding> asked = asked(Ensemble.of(20, SEED));
        assertThat(asked.spread("wantedK", 0.9).interval().orElseThrow().high()).isEqualTo(ZERO + 8);
        assertThat(asked.spread("wantedK", 1, 0.9).interval().orElseThrow().low())
                .isEqualTo(ZERO + 10);
        assertThat(asked.spread("wantedK", 2, 0.9)).isEqualTo(asked.spread("no such figure", 0.9));
        assertThat(asked.spread("no such figure", 0.9).having()).isZero();
        assertThat(asked.spread("no such figure", 0.9).interval()).isEmpty();
        assertThat(asked.spreads(0.9))
                .containsKeys("entersAfterS", "temperatureK")
                .doesNotContainKey("wantedK")
                .containsEntry("entersAfterS", asked.spread("entersAfterS", 0.9));
    }

    @Test
    void explainsItself() {
        String text = asked(Ensemble.of(DRAWS, SEED)).explain(0.9);
        assertThat(text)
                .matches("never in \\d+ of 400 draws\\. notYet in \\d+ of 400 draws\\. .*")
                .containsPattern("entersAfterS: \\d{4} to \\d{4}, median \\d{4}, with 90 % of \\d{3} draws inside\\.")
                .doesNotContain("temperatureK");
    }

    @Test
    void threadsDoNotMatterAndTheMonitorMayCancel() {
        AnswerEnsemble<Holding> alone = asked(Ensemble.of(40, SEED));
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            assertThat(asked(Ensemble.of(40, SEED).on(threads)).answers()).isEqualTo(alone.answers());
        } finally {
            threads.shutdown();
        }
        assertThat(asked(Ensemble.of(40, SEED + 1)).answers()).isNotEqualTo(alone.answers());
        assertThatExceptionOfType(RunCancelledException.class)
                .isThrownBy(() -> asked(Ensemble.of(40, SEED).withMonitor((reached, end, count) -> count < 5)));
    }

    @Test
    void nonsenseIsRefused() {
        AnswerEnsemble<Holding> asked = asked(Ensemble.of(2, SEED));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> asked.spread("wantedK", -1, 0.9))
                .withMessageContaining("place -1");
        assertThatIllegalArgumentException().isThrownBy(() -> asked.spread("wantedK", 1));
        assertThatIllegalArgumentException().isThrownBy(() -> asked.spreads(Double.NaN));
    }
}
