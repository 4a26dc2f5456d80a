/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.beveragethermal.core.solver.RunCancelledException;
import org.junit.jupiter.api.Test;

/** Progress and cancelling of samplings. */
final class EnsembleMonitorTest {

    @Test
    void monitorCountsEveryDrawOnAnyThreads() {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            for (Ensemble ensemble :
                    List.of(Ensemble.of(50, 3), Ensemble.of(50, 3).on(threads))) {
                List<Double> seen = new ArrayList<>();
                List<Integer> numbers = ensemble.withMonitor((reached, end, count) -> {
                            assertThat(end).isEqualTo(50);
                            assertThat((double) count).isEqualTo(reached);
                            return seen.add(reached);
                        })
                        .run(List.of(), draw -> 7);
                assertThat(numbers).hasSize(50).containsOnly(7);
                assertThat(seen)
                        .isEqualTo(IntStream.rangeClosed(1, 50)
                                .mapToObj(i -> (double) i)
                                .toList());
            }
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void monitorCancelsWhatHasNotBegun() {
        AtomicInteger run = new AtomicInteger();
        assertThatExceptionOfType(RunCancelledException.class)
                .isThrownBy(() -> Ensemble.of(1000, 3)
                        .withMonitor((reached, end, count) -> count < 10)
                        .run(List.of(), draw -> run.incrementAndGet()))
                .satisfies(e -> assertThat(e.reached()).isEqualTo(10))
                .satisfies(e -> assertThat(e.interrupted()).isFalse());
        assertThat(run).hasValue(10);
    }

    @Test
    void answerAfterTheLastDrawComesTooLate() {
        assertThat(Ensemble.of(5, 3)
                        .withMonitor((reached, end, count) -> reached < end)
                        .run(List.of(), draw -> 1))
                .hasSize(5);
    }

    @Test
    void interruptionOfTheCallerEndsTheSampling() {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        CountDownLatch never = new CountDownLatch(1);
        Thread caller = Thread.currentThread();
        try {
            assertThatExceptionOfType(RunCancelledException.class)
                    .isThrownBy(() -> Ensemble.of(100, 3).on(threads).run(List.of(), draw -> {
                        caller.interrupt();
                        return waitFor(never);
                    }))
                    .satisfies(e -> assertThat(e.interrupted()).isTrue());
        } finally {
            assertThat(Thread.interrupted()).isTrue();
            never.countDown();
            threads.shutdown();
        }
    }

    private static int waitFor(CountDownLatch latch) {
        try {
            latch.await();
            return 1;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void failureOfADrawIsStillItsOwn() {
        assertThatIllegalStateException()
                .isThrownBy(() -> Ensemble.of(20, 3).run(List.of(), draw -> {
                    throw new IllegalStateException("broken model");
                }))
                .withMessage("broken model");
    }
}
