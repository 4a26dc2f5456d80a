/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/**
 * Probabilities beside their closed form: a body of lumped capacitance whose film carries a normal factor. Seeds were written down
 * before the first run.
 */
class ChancesTest {

    private static final double ZERO = 273.15;
    /** 400 draws, 4000 in the thorough profile. */
    private static final int DRAWS = 4 * Integer.getInteger("jqwik.tries.default", 100);

    private static final long SEED = 20_261_126L;
    private static final long OTHER_SEED = 405L;
    private static final double SPREAD = 0.2;
    private static final LumpedBody BODY = new LumpedBody(3600, 0.5, ZERO + 20, ZERO + 5);
    private static final Duration LONG = Duration.ofHours(5);
    private static final Wanted WANTED = Wanted.between(celsius(8), celsius(10));

    private static PredictionEnsemble ensemble(int draws, long seed) {
        return ensemble(draws, seed, BODY.mediumK());
    }

    private static PredictionEnsemble ensemble(int draws, long seed, double mediumK) {
        return PredictionEnsemble.of(
                Ensemble.of(draws, seed),
                List.of(UncertainInput.factor("film", Uncertainty.normalRelative(SPREAD))),
                draw -> new LumpedBody(
                                BODY.capacityJPerK(),
                                BODY.conductanceWPerK() * draw.value("film"),
                                BODY.startK(),
                                mediumK)
                        .predict(LONG));
    }

    private static Chances chances(int draws, long seed) {
        return Chances.of(ensemble(draws, seed));
    }

    private static Chances chances(long seed) {
        return chances(DRAWS, seed);
    }

    /** Probability that 20 → 8..10 °C in air of 5 °C: the factor lies between ln 3 and ln 5 time constants. */
    private static double closedForm(double ageS) {
        double constants = ageS * BODY.conductanceWPerK() / BODY.capacityJPerK();
        NormalDistribution factor = new NormalDistribution(1, SPREAD);
        return factor.cumulativeProbability(Math.log(5) / constants)
                - factor.cumulativeProbability(Math.log(3) / constants);
    }

    private static void assertInBand(int hits, double probability) {
        BinomialDistribution band = new BinomialDistribution(DRAWS, probability);
        assertThat(hits)
                .as("hits of %d at probability %s", DRAWS, probability)
                .isBetween(band.inverseCumulativeProbability(0.0005), band.inverseCumulativeProbability(0.9995));
    }

    @Test
    void frequenciesLieInTheBinomialBandOfTheClosedForm() {
        for (long seed : new long[] {SEED, OTHER_SEED}) {
            Chances chances = chances(seed);
            for (int minutes = 100; minutes <= 220; minutes += 20) {
                Chance chance = chances.inRange(WANTED, Duration.ofMinutes(minutes));
                assertInBand(chance.hits(), closedForm(60.0 * minutes));
                double p = chance.probability();
                assertThat(chance.standardError()).isCloseTo(Math.sqrt(p * (1 - p) / DRAWS), within(1e-12));
                assertThat(chance.low()).isLessThanOrEqualTo(p);
                assertThat(chance.high()).isGreaterThanOrEqualTo(p);
            }
        }
    }

    @Test
    void theStartIsThatOfTheClosedForm() {
        // Colder than 10 °C for sure enough, never mind how cold: the factor is above ln 3 time constants in 95 %.
        Wanted cold = Wanted.between(celsius(5), celsius(10));
        SureStart.Starts starts = (SureStart.Starts) chances(SEED).latestStart(cold, LONG, 0.95);
        double ageS = Times.seconds(LONG.minus(starts.latest()));
        double constants = ageS * BODY.conductanceWPerK() / BODY.capacityJPerK();
        double reached = 1 - new NormalDistribution(1, SPREAD).cumulativeProbability(Math.log(3) / constants);
        assertInBand((int) Math.round(0.95 * DRAWS), reached);
        assertThat(starts.chance().probability()).isGreaterThanOrEqualTo(0.95);
        assertThat(chances(SEED).inRange(cold, LONG.minus(starts.latest())).hits())
                .isBetween(starts.chance().hits() - 1, starts.chance().hits());
        assertThat(starts.spread().orElseThrow().length()).isPositive();
        assertThat(starts.explain()).contains("at the latest");
        // The frequency in other draws agrees.
        assertInBand(
                chances(OTHER_SEED).inRange(cold, LONG.minus(starts.latest())).hits(), reached);
    }

    @Test
    void moreSureIsEarlierAndNotAlwaysPossible() {
        Wanted cold = Wanted.between(celsius(5), celsius(10));
        Chances chances = chances(SEED);
        Duration before = LONG;
        for (double probability : new double[] {0.5, 0.8, 0.9, 0.95, 0.99}) {
            SureStart answer = chances.latestStart(cold, LONG, probability);
            Duration latest = ((SureStart.Starts) answer).latest();
            assertThat(latest).isLessThan(before);
            before = latest;
        }
        SureStart.NeverSure never = (SureStart.NeverSure) chances.latestStart(WANTED, LONG, 0.95);
        DoubleUnaryOperator form = ChancesTest::closedForm;
        double best = 0;
        for (int minute = 60; minute < 300; minute++) {
            best = Math.max(best, form.applyAsDouble(60.0 * minute));
        }
        // The best of many frequencies lies above the best probability by chance.
        assertThat(never.best().probability()).isBetween(best - 0.08, best + 0.08);
        assertThat(never.explain()).startsWith("No start is sure enough");
    }

    @Test
    void anEnsembleForEachStartAgreesWithOneForAll() {
        Wanted cold = Wanted.between(celsius(5), celsius(10));
        SureStart.Starts once = (SureStart.Starts) chances(40, SEED).latestStart(cold, LONG, 0.95);
        SureStart.Starts each = (SureStart.Starts) Chances.latestStart(start -> ensemble(40, SEED), cold, LONG, 0.95);
        assertThat(Times.seconds(each.latest())).isCloseTo(Times.seconds(once.latest()), within(4.0));
        assertThat(each.chance().probability()).isGreaterThanOrEqualTo(0.95);
        assertThat(each.spread()).isEmpty();
        assertThat(each.explain()).endsWith("confidence).");
        // Before two hours on the clock the medium is too warm: a start must not lie there.
        SureStart.Starts later = (SureStart.Starts) Chances.latestStart(
                start -> ensemble(20, SEED, start.compareTo(Duration.ofHours(2)) < 0 ? ZERO + 15 : ZERO + 5),
                cold,
                LONG,
                0.5);
        assertThat(later.windows().get(0).from()).isBetween(Duration.ofHours(2), Duration.ofMinutes(121));
        assertThat(Chances.latestStart(start -> ensemble(20, SEED), WANTED, LONG, 1))
                .isInstanceOf(SureStart.NeverSure.class);
    }

    @Test
    void aSmallProbabilityStillNeedsADraw() {
        // At 40 °C nothing is cold: no draw is as wanted at any start, which is not sure enough of one in a hundred.
        SureStart each = Chances.latestStart(start -> ensemble(20, SEED, ZERO + 40), WANTED, LONG, 0.01);
        assertThat(((SureStart.NeverSure) each).best().hits()).isZero();
        assertThat(Chances.of(ensemble(20, SEED, ZERO + 40)).latestStart(WANTED, LONG, 1e-12))
                .isInstanceOf(SureStart.NeverSure.class);
    }

    @Test
    void theIntervalIsThatOfClopperAndPearson() {
        // 10 successes in 50: 0.100 to 0.337; none in 20: 0 to 0.168.
        OutsideChecks.fromMemory("clopper-pearson-low", "exact binomial limits, tables of Diem and Lentner, 10 of 50")
                .what("lower limit of the 95 % interval of 10 in 50")
                .unit("1")
                .expected(0.1003)
                .within(0.0005)
                .check(Chance.of(10, 50).low());
        OutsideChecks.fromMemory("clopper-pearson-high", "exact binomial limits, tables of Diem and Lentner, 10 of 50")
                .what("upper limit of the 95 % interval of 10 in 50")
                .unit("1")
                .expected(0.3372)
                .within(0.0005)
                .check(Chance.of(10, 50).high());
        OutsideChecks.fromMemory("clopper-pearson-none", "exact binomial limits, tables of Diem and Lentner, 0 of 20")
                .what("upper limit of the 95 % interval of none in 20")
                .unit("1")
                .expected(0.1684)
                .within(0.0001)
                .check(Chance.of(0, 20).high());
        assertThat(Chance.of(20, 20).low()).isCloseTo(1 - 0.1684, within(1e-4));
    }

    @Test
    void aBottleUnderTheScatterOfAllLaws() {
        FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
        Chances chances = Chances.of(PredictionEnsemble.of(
                Ensemble.of(60, SEED),
                LawScatter.all(),
                draw -> Lumped.of(bottle)
                        .with(NetworkSolver.standard().withMultipliers(draw.values()))
                        .expose(in(Refrigerator.at(celsius(4)), Duration.ofHours(8)))));
        SureStart.Starts sure = (SureStart.Starts)
                chances.latestStart(Wanted.between(celsius(4), celsius(10)), Duration.ofHours(8), 0.95);
        StartAnswer.Starts best = (StartAnswer.Starts) StartSearch.of(bottle, Refrigerator.at(celsius(4)))
                .latestStart(Wanted.between(celsius(4), celsius(10)), Duration.ofHours(8));
        assertThat(sure.latest())
                .isLessThan(best.latest())
                .isGreaterThan(best.latest().minusHours(2));
    }

    @Test
    void nonsenseIsRefused() {
        Chances chances = Chances.of(
                PredictionEnsemble.of(Ensemble.of(2, 1), List.of(), draw -> BODY.predict(Duration.ofHours(1))));
        assertThatThrownBy(() -> chances.inRange(Wanted.at(celsius(8)), Duration.ofMinutes(5)))
                .hasMessageContaining("has no probability");
        assertThatThrownBy(() -> chances.latestStart(WANTED, LONG, 0.9)).hasMessageContaining("length of the runs");
        assertThatThrownBy(() -> chances.latestStart(WANTED, Duration.ofMinutes(30), 0))
                .hasMessageContaining("above 0");
        assertThatThrownBy(() -> new Chance(10, 11, 0, 1)).hasMessageContaining("11 of 10");
    }
}
