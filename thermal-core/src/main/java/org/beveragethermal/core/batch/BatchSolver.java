/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.solver.RunMonitor;
import org.beveragethermal.core.solver.Trajectory;
import org.jspecify.annotations.Nullable;

/**
 * Follows all samples of a batch; immutable settings, safe to share.
 *
 * <p>A sample's answer is the same, bit for bit, for any executor, any number of threads and any other samples beside it.
 */
public final class BatchSolver {

    /** Samples of one task: their answers are computed by one thread. */
    private static final int BLOCK = 1024;

    private final double toleranceK;
    private final Executor executor;
    private final RunMonitor monitor;
    private final int mostAttempts;

    private BatchSolver(double toleranceK, Executor executor, RunMonitor monitor, int mostAttempts) {
        this.toleranceK = toleranceK;
        this.executor = executor;
        this.monitor = monitor;
        this.mostAttempts = mostAttempts;
    }

    /**
     * A solver with the engine's default tolerance of 1 mK on the estimated error of each step, on the calling thread.
     *
     * @return the solver
     */
    public static BatchSolver standard() {
        return new BatchSolver(
                NetworkSolver.DEFAULT_TOLERANCE_K, Runnable::run, RunMonitor.NONE, BatchRun.MOST_ATTEMPTS);
    }

    /**
     * The same solver with another tolerance on the estimated error of each step in the node that is asked for; an error in another
     * node counts by its heat, as that of the same heat in this one.
     *
     * @param newToleranceK tolerance [K], 1e-9 to 1
     * @return a new solver
     * @throws IllegalArgumentException if the tolerance is outside its range
     */
    public BatchSolver withToleranceK(double newToleranceK) {
        if (!(newToleranceK >= 1e-9 && newToleranceK <= 1)) {
            throw new IllegalArgumentException("tolerance " + newToleranceK + " K: expected 1e-9 K to 1 K");
        }
        return new BatchSolver(newToleranceK, executor, monitor, mostAttempts);
    }

    /**
     * The same solver on other threads.
     *
     * @param newExecutor runs blocks of 1024 samples
     * @return a new solver
     */
    public BatchSolver on(Executor newExecutor) {
        return new BatchSolver(toleranceK, Objects.requireNonNull(newExecutor, "executor"), monitor, mostAttempts);
    }

    /**
     * The same solver with a monitor that is told of progress and may cancel; blocks that have not begun by then never do.
     *
     * @param newMonitor called after each block of 1024 samples, with the number of samples finished so far, from the executor's
     *     threads, one call at a time
     * @return a new solver
     */
    public BatchSolver withMonitor(RunMonitor newMonitor) {
        return new BatchSolver(toleranceK, executor, Objects.requireNonNull(newMonitor, "monitor"), mostAttempts);
    }

    /** The same solver that leaves a sample to the scalar engine after fewer tried steps, for tests. */
    BatchSolver givingUpAfter(int attempts) {
        return new BatchSolver(toleranceK, executor, monitor, attempts);
    }

    /**
     * When a node first reaches a temperature, from above or from below.
     *
     * @param samples the samples
     * @param node name of the node
     * @param targetsK temperature to be reached [K], one for all or one per sample, finite, > 0, not modified
     * @param horizonS how far to look [s], finite, > 0
     * @return times [s], one per sample; 0 where the sample starts there, +∞ where it does not get there within the horizon
     * @throws IllegalArgumentException if there is no such node, a number is outside its range or their number is wrong
     * @throws RunCancelledException if the monitor says so or the calling thread is interrupted
     * @throws org.beveragethermal.core.solver.SolverException if a sample cannot be integrated, by the scalar engine either
     */
    public double[] timesToS(BatchSamples samples, String node, double[] targetsK, double horizonS) {
        int index = samples.network().node(node);
        requirePositive("horizon", horizonS, "s");
        if (targetsK.length != 1 && targetsK.length != samples.count()) {
            throw new IllegalArgumentException(
                    "targets: " + targetsK.length + " values, expected 1 or " + samples.count() + ", one per sample");
        }
        double[] targets = targetsK.clone();
        for (double target : targets) {
            requirePositive("target", target, "K");
        }
        double[] times = new double[samples.count()];
        follow(samples, () -> new Crossings(samples, index, targets, horizonS, times));
        return times;
    }

    /**
     * When a node first reaches a temperature, the same for all samples.
     *
     * @param samples the samples
     * @param node name of the node
     * @param targetK temperature to be reached [K], finite, > 0
     * @param horizonS how far to look [s], finite, > 0
     * @return times [s], one per sample; 0 where the sample starts there, +∞ where it does not get there within the horizon
     * @throws IllegalArgumentException if there is no such node or a number is outside its range
     * @throws RunCancelledException if the monitor says so or the calling thread is interrupted
     * @throws org.beveragethermal.core.solver.SolverException if a sample cannot be integrated, by the scalar engine either
     */
    public double[] timesToS(BatchSamples samples, String node, double targetK, double horizonS) {
        return timesToS(samples, node, new double[] {targetK}, horizonS);
    }

    /**
     * Temperatures of a node at given times.
     *
     * @param samples the samples
     * @param node name of the node
     * @param timesS strictly ascending times [s], the last finite and above 0, the first ≥ 0, not modified
     * @return temperatures [K], by sample and time
     * @throws IllegalArgumentException if there is no such node or the times do not ascend
     * @throws RunCancelledException if the monitor says so or the calling thread is interrupted
     * @throws org.beveragethermal.core.solver.SolverException if a sample cannot be integrated, by the scalar engine either
     */
    public double[][] temperaturesK(BatchSamples samples, String node, double... timesS) {
        int index = samples.network().node(node);
        double[] times = timesS.clone();
        for (int i = 0; i < times.length; i++) {
            if (!(i == 0 ? times[i] >= 0 : times[i] > times[i - 1]) || Double.isInfinite(times[i])) {
                throw new IllegalArgumentException(
                        "time " + i + ": " + times[i] + " s, expected finite, strictly ascending times ≥ 0");
            }
        }
        requirePositive("last time", times.length == 0 ? 0 : times[times.length - 1], "s");
        double[][] temperatures = new double[samples.count()][times.length];
        follow(samples, () -> new Readings(samples, index, times, temperatures));
        return temperatures;
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " " + value + " " + unit + ": expected a finite value > 0");
        }
    }

    private void follow(BatchSamples samples, Supplier<BatchRun> run) {
        Progress progress = new Progress(samples.count());
        List<CompletableFuture<Void>> blocks = new ArrayList<>();
        for (int from = 0; from < samples.count(); from += BLOCK) {
            int first = from;
            int last = Math.min(samples.count(), from + BLOCK);
            blocks.add(CompletableFuture.runAsync(
                    () -> {
                        progress.require(first);
                        try {
                            run.get().run(first, last);
                            progress.finished(last - first);
                        } catch (RuntimeException failure) {
                            progress.failed(first);
                            throw failure;
                        }
                    },
                    executor));
        }
        try {
            for (CompletableFuture<Void> block : blocks) {
                block.get();
            }
        } catch (InterruptedException interruption) {
            progress.cancel(true);
            Thread.currentThread().interrupt();
        } catch (ExecutionException failure) {
            progress.require(0);
            if (failure.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new CompletionException(failure.getCause());
        }
        progress.require(0);
    }

    /** How many samples are finished, and whether the rest was cancelled or makes no sense any more. */
    private final class Progress {

        private final int count;
        private int finished;
        private @Nullable RunCancelledException cancelled;
        /** First sample of the earliest block that failed. What stands before it is run still, so that the same failure is reported on any number of threads. */
        private int firstFailed = Integer.MAX_VALUE;

        private Progress(int count) {
            this.count = count;
        }

        /** Whether a block is still to be run. */
        private synchronized void require(int first) {
            if (cancelled != null) {
                throw cancelled;
            }
            if (first > firstFailed) {
                throw new RunCancelledException(finished, count, false);
            }
        }

        private synchronized void failed(int first) {
            firstFailed = Math.min(firstFailed, first);
        }

        private synchronized void finished(int more) {
            finished += more;
            if (!monitor.goOn(finished, count, finished) && finished < count) {
                cancel(false);
            }
        }

        private synchronized void cancel(boolean interrupted) {
            if (cancelled == null) {
                cancelled = new RunCancelledException(finished, count, interrupted);
            }
        }
    }

    /** Times to a temperature. */
    private final class Crossings extends BatchRun {

        private final BatchSamples samples;
        private final int node;
        private final double[] targetsK;
        private final double horizonS;
        private final double[] answers;

        private Crossings(BatchSamples samples, int node, double[] targetsK, double horizonS, double[] answers) {
            super(samples, node, toleranceK, mostAttempts);
            this.samples = samples;
            this.node = node;
            this.targetsK = targetsK;
            this.horizonS = horizonS;
            this.answers = answers;
        }

        @Override
        double targetK(int sample) {
            return targetsK[targetsK.length == 1 ? 0 : sample];
        }

        @Override
        double stopS(double afterS) {
            return horizonS;
        }

        @Override
        boolean stopped(int sample, double timeS, double temperatureK) {
            answers[sample] = Double.POSITIVE_INFINITY;
            return true;
        }

        @Override
        void reached(int sample, double timeS) {
            answers[sample] = timeS <= horizonS ? timeS : Double.POSITIVE_INFINITY;
        }

        @Override
        void leave(int sample) {
            ScalarSample scalar = new ScalarSample(samples, sample);
            Trajectory run = scalar.run(horizonS, toleranceK);
            Node body = scalar.node(node);
            OptionalDouble crossing = run.firstCrossing(0, t -> run.temperatureK(body, t) - targetK(sample));
            answers[sample] = crossing.orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** Temperatures at times. */
    private final class Readings extends BatchRun {

        private final BatchSamples samples;
        private final int node;
        private final double[] timesS;
        private final double[][] temperatures;

        private Readings(BatchSamples samples, int node, double[] timesS, double[][] temperatures) {
            super(samples, node, toleranceK, mostAttempts);
            this.samples = samples;
            this.node = node;
            this.timesS = timesS;
            this.temperatures = temperatures;
        }

        @Override
        double targetK(int sample) {
            if (timesS[0] == 0) {
                temperatures[sample][0] = samples.startK(node, sample);
            }
            return Double.NaN;
        }

        @Override
        double stopS(double afterS) {
            int i = Arrays.binarySearch(timesS, afterS);
            return timesS[i < 0 ? -1 - i : i + 1];
        }

        @Override
        boolean stopped(int sample, double timeS, double temperatureK) {
            int i = Arrays.binarySearch(timesS, timeS);
            temperatures[sample][i] = temperatureK;
            return i == timesS.length - 1;
        }

        @Override
        void reached(int sample, double timeS) {
            throw new IllegalStateException("sample " + sample + " reached a target without having one");
        }

        @Override
        void leave(int sample) {
            ScalarSample scalar = new ScalarSample(samples, sample);
            Trajectory run = scalar.run(timesS[timesS.length - 1], toleranceK);
            for (int i = 0; i < timesS.length; i++) {
                temperatures[sample][i] = run.temperatureK(scalar.node(node), timesS[i]);
            }
        }
    }
}
