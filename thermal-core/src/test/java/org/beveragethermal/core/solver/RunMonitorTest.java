/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Progress and cancelling of runs. */
final class RunMonitorTest {

    private static final double END_S = 7200;

    @Test
    void monitorSeesEveryStepAndChangesNothing() {
        List<Double> times = new ArrayList<>();
        List<Long> counts = new ArrayList<>();
        Trajectory watched = NetworkSolver.standard()
                .withMonitor((reached, end, count) -> {
                    assertThat(end).isEqualTo(END_S);
                    times.add(reached);
                    counts.add(count);
                    return true;
                })
                .withToleranceK(1e-4)
                .solve(ThreeNodeProblem.phases(), END_S);
        Trajectory alone = NetworkSolver.standard().withToleranceK(1e-4).solve(ThreeNodeProblem.phases(), END_S);
        assertThat(times).hasSize(watched.steps()).isSorted().endsWith(END_S).contains(3600.0);
        assertThat(counts).isSorted().endsWith((long) watched.stepsTried());
        assertThat(watched.stepsTried()).isEqualTo(alone.stepsTried());
        for (double t = 0; t <= END_S; t += 97) {
            assertThat(watched.temperatureK(ThreeNodeProblem.DRINK, t))
                    .isEqualTo(alone.temperatureK(ThreeNodeProblem.DRINK, t));
        }
    }

    @Test
    void monitorCancelsWithTheTimeReached() {
        NetworkSolver impatient = NetworkSolver.standard().withMonitor((reached, end, count) -> reached < 4000);
        assertThatExceptionOfType(RunCancelledException.class)
                .isThrownBy(() -> impatient.solve(ThreeNodeProblem.phases(), END_S))
                .withMessageContaining("by the monitor")
                .satisfies(e -> assertThat(e.reached()).isBetween(4000.0, END_S))
                .satisfies(e -> assertThat(e.interrupted()).isFalse());
    }

    @Test
    void answerAfterTheLastStepComesTooLate() {
        Trajectory run = NetworkSolver.standard()
                .withMonitor((reached, end, count) -> reached < end)
                .solve(ThreeNodeProblem.phases(), END_S);
        assertThat(run.endS()).isEqualTo(END_S);
    }

    @Test
    void interruptionEndsTheRunAndStaysVisible() {
        NetworkSolver solver = NetworkSolver.standard().withMonitor((reached, end, count) -> {
            if (reached > 1000) {
                Thread.currentThread().interrupt();
            }
            return true;
        });
        try {
            assertThatExceptionOfType(RunCancelledException.class)
                    .isThrownBy(() -> solver.solve(ThreeNodeProblem.phases(), END_S))
                    .satisfies(e -> assertThat(e.interrupted()).isTrue())
                    .satisfies(e -> assertThat(e.reached()).isBetween(1000.0, END_S));
            assertThat(Thread.currentThread().isInterrupted()).isTrue();
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }
}
