/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.solver.Trajectory;
import org.junit.jupiter.api.Test;

/** Batches: closed forms, a reference, the scalar engine, threads, and what is refused. */
class BatchSolverTest {

    private static final BatchSolver SOLVER = BatchSolver.standard();
    private static final double TARGET_K = 282.15;

    private static BatchNetwork oneNode(BatchLaw law) {
        return BatchNetwork.builder()
                .node("drink")
                .boundary("air")
                .link("film", "drink", "air", law)
                .build();
    }

    /** Newton's law: T − Te falls as exp(−t G m/C), cooling and warming. */
    @Test
    void newtonsLawFollowsItsExponential() {
        double[] starts = {303.15, 295.15, 275.15, 279.15};
        double[] factors = {1, 0.5, 2, 1};
        BatchSamples samples = oneNode(BatchLaw.conductance(0.6))
                .samples(4)
                .capacityJPerK("drink", 3000)
                .startK("drink", starts)
                .boundaryK("air", 279.15)
                .multiplier("film", factors)
                .build();
        double[] readAt = {0, 10, 1000, 1000.5, 20_000};
        double[][] temperatures = SOLVER.withToleranceK(1e-6).temperaturesK(samples, "drink", readAt);
        double[] times = SOLVER.withToleranceK(1e-6).timesToS(samples, "drink", new double[] {281, 281, 278, 281}, 1e5);
        for (int s = 0; s < 4; s++) {
            double perSecond = 0.6 * factors[s] / 3000;
            for (int i = 0; i < readAt.length; i++) {
                double exact = 279.15 + (starts[s] - 279.15) * Math.exp(-perSecond * readAt[i]);
                assertThat(temperatures[s][i]).isCloseTo(exact, within(1e-5));
            }
            double target = s == 2 ? 278 : 281;
            double exact = Math.log((starts[s] - 279.15) / (target - 279.15)) / perSecond;
            if (s == 3) {
                assertThat(times[s]).isInfinite();
            } else {
                assertThat(times[s]).isCloseTo(exact, within(0.03));
            }
        }
    }

    /** Radiation alone: the elementary integral of dT/(T⁴ − Te⁴), as in CoolingRateTest. */
    @Test
    void radiationAloneFollowsItsClosedForm() {
        double c = 4e-9;
        double air = 280;
        BatchSamples samples = oneNode(BatchLaw.of(TwoNodes.radiation(c)))
                .samples(3)
                .capacityJPerK("drink", 2000)
                .startK("drink", 360, 300, 290)
                .boundaryK("air", air)
                .build();
        double[] times = SOLVER.withToleranceK(1e-6).timesToS(samples, "drink", 285, 1e5);
        double[] starts = {360, 300, 290};
        for (int s = 0; s < 3; s++) {
            double exact = 2000 / c * (primitive(starts[s], air) - primitive(285, air));
            assertThat(times[s]).isCloseTo(exact, within(0.01));
        }
    }

    private static double primitive(double t, double air) {
        return Math.log((t - air) / (t + air)) / (4 * Math.pow(air, 3)) - Math.atan(t / air) / (2 * Math.pow(air, 3));
    }

    /** 9377.261608 s: SciPy, DOP853 and Radau at 1e-12 on the same formulas. */
    @Test
    void twoNodesAgreeWithAnotherIntegrator() {
        BatchSamples nominal = TwoNodes.network()
                .samples(1)
                .startK("liquid", 295.15)
                .startK("glass", 295.15)
                .boundaryK("air", 277.15)
                .capacityJPerK("liquid", 3100)
                .capacityJPerK("glass", 420)
                .build();
        assertThat(SOLVER.timesToS(nominal, "liquid", TARGET_K, 1e5)[0]).isCloseTo(9377.261608, within(1.0));
        assertThat(SOLVER.withToleranceK(1e-7).timesToS(nominal, "liquid", TARGET_K, 1e5)[0])
                .isCloseTo(9377.261608, within(1e-3));
    }

    @Test
    void everySampleIsWithinASecondOfTheEngine() {
        BatchSamples samples = TwoNodes.samples(0, 60);
        double[] times = SOLVER.timesToS(samples, "liquid", TARGET_K, 40_000);
        double[][] temperatures = SOLVER.temperaturesK(samples, "glass", 30, 500, 5000);
        for (int s = 0; s < samples.count(); s++) {
            ScalarSample scalar = new ScalarSample(samples, s);
            Trajectory run = scalar.run(40_000, 1e-7);
            double engine = run.firstCrossing(0, t -> run.temperatureK(scalar.node(0), t) - TARGET_K)
                    .getAsDouble();
            assertThat(times[s]).isCloseTo(engine, within(1.0));
            assertThat(temperatures[s][0]).isCloseTo(run.temperatureK(scalar.node(1), 30), within(2e-3));
            assertThat(temperatures[s][2]).isCloseTo(run.temperatureK(scalar.node(1), 5000), within(2e-3));
        }
    }

    @Test
    void answersDependOnNothingButTheSample() {
        BatchSamples all = TwoNodes.samples(0, 2500);
        double[] alone = SOLVER.timesToS(all, "liquid", TARGET_K, 40_000);
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            assertThat(SOLVER.on(threads).timesToS(all, "liquid", TARGET_K, 40_000))
                    .isEqualTo(alone);
            double[][] readings = SOLVER.temperaturesK(all, "liquid", 100, 3000);
            assertThat(SOLVER.on(threads).temperaturesK(all, "liquid", 100, 3000))
                    .isDeepEqualTo(readings);
        } finally {
            threads.shutdownNow();
        }
        double[] some = SOLVER.timesToS(TwoNodes.samples(1733, 37), "liquid", TARGET_K, 40_000);
        assertThat(some).isEqualTo(Arrays.copyOfRange(alone, 1733, 1770));
    }

    @Test
    void whatIsNotReachedIsInfiniteAndNothingIsNotANumber() {
        BatchSamples samples = TwoNodes.samples(0, 300);
        assertThat(SOLVER.timesToS(samples, "liquid", 303, 40_000)).containsOnly(Double.POSITIVE_INFINITY);
        assertThat(SOLVER.timesToS(samples, "liquid", 275, 1e7)).containsOnly(Double.POSITIVE_INFINITY);
        assertThat(SOLVER.timesToS(samples, "liquid", TARGET_K, 1)).containsOnly(Double.POSITIVE_INFINITY);
        BatchSamples still = TwoNodes.network()
                .samples(1)
                .startK("liquid", 280)
                .startK("glass", 280)
                .boundaryK("air", 280)
                .capacityJPerK("liquid", 3100)
                .capacityJPerK("glass", 420)
                .build();
        assertThat(SOLVER.timesToS(still, "liquid", 280, 100)).containsExactly(0);
        assertThat(SOLVER.timesToS(still, "liquid", 281, 100)).containsExactly(Double.POSITIVE_INFINITY);
        assertThat(SOLVER.temperaturesK(still, "liquid", 1e6)[0][0]).isCloseTo(280, within(1e-9));
    }

    @Test
    void nearTheEquilibriumTargetsAreStillFound() {
        BatchSamples samples = oneNode(BatchLaw.conductance(1))
                .samples(1)
                .capacityJPerK("drink", 1000)
                .startK("drink", 300)
                .boundaryK("air", 280)
                .build();
        for (double above : new double[] {1, 0.1, 0.01}) {
            double exact = 1000 * Math.log(20 / above);
            assertThat(SOLVER.withToleranceK(1e-6).timesToS(samples, "drink", 280 + above, 1e5)[0])
                    .isCloseTo(exact, within(1000 * 5e-5 / above));
        }
    }

    @Test
    void whatTheBatchGivesUpTheEngineFollows() {
        BatchSamples samples = TwoNodes.samples(0, 5);
        BatchSolver impatient = SOLVER.givingUpAfter(3);
        double[] times = impatient.timesToS(samples, "liquid", TARGET_K, 40_000);
        double[][] readings = impatient.temperaturesK(samples, "liquid", 0, 4000);
        assertThat(times)
                .usingComparatorWithPrecision(1.0)
                .containsExactly(SOLVER.timesToS(samples, "liquid", TARGET_K, 40_000));
        for (int s = 0; s < 5; s++) {
            assertThat(readings[s][1]).isCloseTo(SOLVER.temperaturesK(samples, "liquid", 4000)[s][0], within(1e-3));
            assertThat(readings[s][0]).isEqualTo(samples.startK(0, s));
        }
    }

    /** The law fails for some samples: the earliest is reported on any executor, blocks behind it are not begun, and the solver goes on to work. */
    @Test
    void afterAFailureWhatStandsBehindIsNotRun() {
        int count = 100_000;
        double[] starts = new double[count];
        Arrays.setAll(starts, s -> s < 60_000 ? 290 : 330 + s / 1e4);
        AtomicLong most = new AtomicLong();
        BatchLaw picky = (from, to, watts, perFrom, perTo, n) -> {
            for (int i = 0; i < n; i++) {
                if (from[i] > 320) {
                    most.accumulateAndGet((long) (1e4 * (from[i] - 330)), Math::max);
                    throw new IllegalStateException("law at " + from[i] + " K");
                }
                watts[i] = from[i] - to[i];
                perFrom[i] = 1;
                perTo[i] = -1;
            }
        };
        BatchSamples samples = oneNode(picky)
                .samples(count)
                .capacityJPerK("drink", 3000)
                .startK("drink", starts)
                .boundaryK("air", 275)
                .build();
        ExecutorService executor = Executors.newFixedThreadPool(3);
        try {
            for (BatchSolver solver : List.of(SOLVER, SOLVER.on(executor))) {
                most.set(0);
                assertThatThrownBy(() -> solver.timesToS(samples, "drink", TARGET_K, 1e5))
                        .isInstanceOf(IllegalStateException.class)
                        .hasMessageContaining("law at 33");
                assertThat(most.get()).isLessThan(90_000);
            }
        } finally {
            executor.shutdown();
        }
        assertThat(SOLVER.timesToS(
                                oneNode(picky)
                                        .samples(1)
                                        .capacityJPerK("drink", 3000)
                                        .startK("drink", 290)
                                        .boundaryK("air", 275)
                                        .build(),
                                "drink",
                                TARGET_K,
                                1e5)[0])
                .isCloseTo(3000 * Math.log(15 / (TARGET_K - 275)), within(1.0));
    }

    @Test
    void aMonitorIsToldAndMayCancel() {
        AtomicLong told = new AtomicLong();
        SOLVER.withMonitor((reached, end, count) -> {
                    assertThat(end).isEqualTo(2500);
                    told.set(count);
                    return true;
                })
                .timesToS(TwoNodes.samples(0, 2500), "liquid", 290, 40_000);
        assertThat(told).hasValue(2500);
        assertThatThrownBy(() -> SOLVER.withMonitor((reached, end, count) -> false)
                        .timesToS(TwoNodes.samples(0, 2500), "liquid", 290, 40_000))
                .isInstanceOfSatisfying(
                        RunCancelledException.class,
                        e -> assertThat(e.reached()).isEqualTo(1024));
    }

    @Test
    void badNumbersAreRefused() {
        BatchNetwork network = oneNode(BatchLaw.of(HeatLaw.conductance(1)));
        assertThatThrownBy(() -> network.samples(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> network.samples(3).startK("drink", 280, 281))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 values, expected 1 or 3");
        assertThatThrownBy(() -> network.samples(2).multiplier("film", 1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sample 1");
        assertThatThrownBy(() -> network.samples(2).boundaryK("water", 280))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[air]");
        assertThatThrownBy(() -> network.samples(2).capacityJPerK("glass", 280))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[drink]");
        assertThatThrownBy(() -> network.samples(2).build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("heat capacity of drink is missing");
        BatchSamples samples = TwoNodes.samples(0, 2);
        assertThatThrownBy(() -> SOLVER.timesToS(samples, "cork", 280, 10)).hasMessageContaining("[liquid, glass]");
        assertThatThrownBy(() -> SOLVER.timesToS(samples, "liquid", Double.NaN, 10))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SOLVER.timesToS(samples, "liquid", 280, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SOLVER.temperaturesK(samples, "liquid", 10, 10))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SOLVER.temperaturesK(samples, "liquid")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SOLVER.withToleranceK(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BatchNetwork.builder().node("a").node("a"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BatchNetwork.builder().node("a").link("l", "a", "b", BatchLaw.conductance(1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
