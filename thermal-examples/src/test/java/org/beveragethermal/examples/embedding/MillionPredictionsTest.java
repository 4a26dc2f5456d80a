/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.solver.RunMonitor;
import org.junit.jupiter.api.Test;

/** The batch against the scene, against itself on other numbers of threads, and as a program. */
class MillionPredictionsTest {

    private static final int COUNT = 10_000;
    private static final long SEED = 7;
    private static final BottleBatch BOTTLE = BottleBatch.bottle();

    private static double[] onThreads(int threads) {
        ExecutorService executor = Executors.newFixedThreadPool(threads);
        try {
            return MillionPredictions.timesS(BOTTLE, Draws.of(COUNT, SEED), executor, RunMonitor.NONE);
        } finally {
            executor.shutdownNow();
        }
    }

    @Test
    void theResultIsTheSameBitForBitOnAnyNumberOfThreads() {
        double[] alone = MillionPredictions.timesS(BOTTLE, Draws.of(COUNT, SEED), Runnable::run, RunMonitor.NONE);
        assertThat(alone)
                .hasSize(COUNT)
                .isEqualTo(onThreads(1))
                .isEqualTo(onThreads(2))
                .isEqualTo(onThreads(5));
    }

    /** The scene has the engine's own laws, heat capacities that go with temperature, and factors on the films themselves. */
    @Test
    void samplesAgreeWithTheScene() {
        Draws draws = Draws.of(30, SEED);
        double[] batch = MillionPredictions.timesS(BOTTLE, draws, Runnable::run, RunMonitor.NONE);
        for (int i = 0; i < batch.length; i++) {
            double scene = MillionPredictions.sceneTimeS(draws, i);
            assertThat(batch[i]).as("sample %d", i).isCloseTo(scene, within(0.003 * scene));
        }
    }

    @Test
    void aBottleInARefrigeratorThatIsTooWarmIsNeverCool() {
        Draws draws = new Draws(
                new double[] {295.15, 295.15}, new double[] {282.65, 278.15}, new double[] {1, 1}, new double[] {1, 1});
        double[] times = MillionPredictions.timesS(BOTTLE, draws, Runnable::run, RunMonitor.NONE);
        assertThat(times[0]).isInfinite();
        assertThat(times[1]).isFinite();
        assertThat(MillionPredictions.sceneTimeS(draws, 0)).isInfinite();
    }

    @Test
    void aFactorBeyondWhatWasAskedOfThePathIsRefused() {
        Draws draws = new Draws(new double[] {295.15}, new double[] {278.15}, new double[] {4}, new double[] {1});
        assertThatThrownBy(() -> BOTTLE.samples(draws)).hasMessage("factor on inside film 4.0: expected 0.35 to 2.9");
    }

    @Test
    void lawsAreFollowedAndTheirSlopesAreThoseOfDifferences() {
        assertThat(BOTTLE.worstLaw()).isLessThan(0.005);
        FittedLaw law = FittedLaw.of((from, to) -> Math.cbrt(from - to) * (from - to) * from / 300, 270, 300, 30);
        double[] from = {295, 280, 290, 285.2};
        double[] to = {278, 290, 289.5, 285};
        int n = from.length;
        double[] watts = new double[n];
        double[] perFrom = new double[n];
        double[] perTo = new double[n];
        law.evaluate(from, to, watts, perFrom, perTo, n);
        assertThat(flows(law, from, to)).containsExactly(watts, within(1e-12));
        double step = 1e-5;
        for (int i = 0; i < n; i++) {
            double[] up = from.clone();
            double[] down = from.clone();
            up[i] += step;
            down[i] -= step;
            assertThat(perFrom[i])
                    .isCloseTo((flows(law, up, to)[i] - flows(law, down, to)[i]) / (2 * step), within(1e-6));
            up = to.clone();
            down = to.clone();
            up[i] += step;
            down[i] -= step;
            assertThat(perTo[i])
                    .isCloseTo((flows(law, from, up)[i] - flows(law, from, down)[i]) / (2 * step), within(1e-6));
        }
        assertThat(watts[0]).isCloseTo(Math.cbrt(17) * 17 * 295 / 300, within(0.01));
        assertThat(watts[1]).isNegative();
    }

    private static double[] flows(FittedLaw law, double[] from, double[] to) {
        double[] watts = new double[from.length];
        law.flows(from, to, watts, new double[from.length], new double[from.length], from.length);
        return watts;
    }

    @Test
    void itSaysHowFarItIsAndCanBeCancelled() {
        AtomicInteger asked = new AtomicInteger();
        assertThatThrownBy(() -> MillionPredictions.timesS(
                        BOTTLE,
                        Draws.of(COUNT, SEED),
                        Runnable::run,
                        (reached, end, count) -> asked.incrementAndGet() < 3))
                .isInstanceOf(RunCancelledException.class);
        assertThat(asked).hasValue(3);
    }

    @Test
    void asAProgramItPrintsTimesProgressAndTheComparison() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        assertThat(run(out, err, new AtomicLong(), 0, "10000")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .containsPattern("10000 predictions on \\d+ cores in 0.00 s")
                .contains("to 9 °C: one in twenty within 15", "not within a day: 0", "20 of them by the scene");
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("100 % done");
    }

    @Test
    void asAProgramItGivesUpAndRefuses() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        assertThat(run(out, err, new AtomicLong(), 2_000_000_000L, "10000", "1"))
                .isEqualTo(3);
        assertThat(run(out, err, new AtomicLong(), 0, "none")).isEqualTo(2);
        assertThat(run(out, err, new AtomicLong(), 0, "10000001")).isEqualTo(2);
        assertThat(run(out, err, new AtomicLong(), 0, "10", "0")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).lines().filter(line -> !line.endsWith("% done")))
                .satisfiesExactly(
                        line -> assertThat(line).matches("given up after 1 s: \\d+ of 10000 were done"),
                        line -> assertThat(line).isEqualTo("number of predictions none: expected 1 to 10000000"),
                        line -> assertThat(line).isEqualTo("number of predictions 10000001: expected 1 to 10000000"),
                        line -> assertThat(line).isEqualTo("seconds 0: expected 1 to 86400"));
        assertThat(out.size()).isZero();
    }

    /** A clock that goes on by a step at each look. */
    private static int run(
            ByteArrayOutputStream out, ByteArrayOutputStream err, AtomicLong clock, long step, String... args) {
        return MillionPredictions.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> clock.getAndAdd(step));
    }

    @Test
    void drawsScatterAsTheySay() {
        Draws draws = Draws.of(COUNT, SEED);
        assertThat(Arrays.stream(draws.startK()).average().orElseThrow()).isCloseTo(295.15, within(0.04));
        assertThat(Arrays.stream(draws.airFilm())
                        .map(Math::log)
                        .map(x -> x * x)
                        .average()
                        .orElseThrow())
                .isCloseTo(0.15 * 0.15, within(0.0015));
        assertThat(Draws.of(5, SEED).airK()).isEqualTo(Arrays.copyOf(draws.airK(), 5));
    }
}
