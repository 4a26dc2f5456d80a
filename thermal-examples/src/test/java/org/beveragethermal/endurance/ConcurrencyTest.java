/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.beveragethermal.core.batch.BatchLaw;
import org.beveragethermal.core.batch.BatchSamples;
import org.beveragethermal.core.batch.BatchSolver;
import org.beveragethermal.endurance.Shared.Question;
import org.beveragethermal.service.tracking.Fleet;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What threads share answers all of them as it answers one, to the last bit. */
final class ConcurrencyTest {
    private static final int ROUNDS = Integer.getInteger("endurance.rounds", 2);

    private static long[] bits(double[] values) {
        return Arrays.stream(values).mapToLong(Double::doubleToLongBits).toArray();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 8})
    void sharedObjectsAnswerAllThreadsAlike(int threads) throws InterruptedException, ExecutionException {
        // The expected answers are those of objects that nobody shares.
        List<long[]> expected =
                Shared.questions().stream().map(it -> bits(it.answer().get())).toList();
        List<Question> shared = Shared.questions();
        CyclicBarrier together = new CyclicBarrier(threads);
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<List<String>>> running = new ArrayList<>();
            for (int t = 0; t < threads; t++) {
                int first = t;
                running.add(pool.submit(() -> differing(shared, expected, first, together)));
            }
            for (Future<List<String>> future : running) {
                assertThat(future.get())
                        .as("what differs on %d threads", threads)
                        .isEmpty();
            }
        } finally {
            pool.shutdownNow();
        }
    }

    /** In even rounds all threads ask the same object at once, in odd ones each another. */
    private static List<String> differing(
            List<Question> shared, List<long[]> expected, int first, CyclicBarrier together)
            throws InterruptedException, BrokenBarrierException {
        List<String> differing = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < shared.size(); i++) {
                int which = (i + (round % 2) * first) % shared.size();
                together.await();
                for (int n = 0; n < shared.get(which).times(); n++) {
                    if (!Arrays.equals(bits(shared.get(which).answer().get()), expected.get(which))) {
                        differing.add(shared.get(which).name());
                    }
                }
            }
        }
        return differing;
    }

    @Test
    void partsOfABatchMayRunOnAnyNumberOfThreads() {
        BatchSamples samples = Shared.newSamples(1000, BatchLaw.of(Shared.FILM));
        long[] alone = bits(BatchSolver.standard().timesToS(samples, "drink", 283, 1e6));
        for (int threads : new int[] {1, 2, 4, 8}) {
            ExecutorService pool = Executors.newFixedThreadPool(threads);
            try {
                assertThat(bits(BatchSolver.standard().on(pool).timesToS(samples, "drink", 283, 1e6)))
                        .isEqualTo(alone);
            } finally {
                pool.shutdownNow();
            }
        }
    }

    @Test
    void aFleetMayBeSpreadOverAnyNumberOfThreads() {
        List<TrackingEvent> events = IntStream.range(0, 60 * 40)
                .mapToObj(i -> Shared.event("bottle " + i % 40, i / 40))
                .toList();
        Fleet alone = Fleet.of(Shared.newTracker());
        Fleet.Report report = alone.apply(events);
        for (int threads : new int[] {1, 2, 4, 8}) {
            ExecutorService pool = Executors.newFixedThreadPool(threads);
            try {
                Fleet spread = Fleet.of(Shared.newTracker());
                assertThat(spread.apply(events, pool, 2 * threads)).isEqualTo(report);
                assertThat(spread.snapshots()).isEqualTo(alone.snapshots());
            } finally {
                pool.shutdownNow();
            }
        }
    }
}
