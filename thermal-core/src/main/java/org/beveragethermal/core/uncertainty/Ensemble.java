/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.solver.RunMonitor;
import org.jspecify.annotations.Nullable;

/**
 * Settings of a sampling: how many draws, from which seed, on which threads. Immutable.
 *
 * <p>The result is the same for any executor.
 *
 * <p>Theory manual, equation (8.7).
 */
public final class Ensemble {

    private static final int MOST_SAMPLES = 10_000_000;

    private final int samples;
    private final long seed;
    private final Executor executor;
    private final RunMonitor monitor;

    private Ensemble(int samples, long seed, Executor executor, RunMonitor monitor) {
        this.samples = samples;
        this.seed = seed;
        this.executor = executor;
        this.monitor = monitor;
    }

    /**
     * An ensemble that runs on the calling thread.
     *
     * @param samples number of draws, 2 to 10 million
     * @param seed the seed
     * @return the ensemble
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static Ensemble of(int samples, long seed) {
        if (samples < 2 || samples > MOST_SAMPLES) {
            throw new IllegalArgumentException("samples " + samples + ": expected 2 to " + MOST_SAMPLES);
        }
        return new Ensemble(samples, seed, Runnable::run, RunMonitor.NONE);
    }

    /**
     * The same ensemble on other threads.
     *
     * @param newExecutor runs the draws
     * @return a new ensemble
     */
    public Ensemble on(Executor newExecutor) {
        return new Ensemble(samples, seed, Objects.requireNonNull(newExecutor, "executor"), monitor);
    }

    /**
     * The same ensemble with a monitor that is told of progress and may cancel; draws that have not begun by then never do.
     *
     * @param newMonitor called after each draw, with the number of draws finished so far, from the executor's threads, one call
     *     at a time
     * @return a new ensemble
     */
    public Ensemble withMonitor(RunMonitor newMonitor) {
        return new Ensemble(samples, seed, executor, Objects.requireNonNull(newMonitor, "monitor"));
    }

    /**
     * Number of draws.
     *
     * @return samples
     */
    public int samples() {
        return samples;
    }

    long seed() {
        return seed;
    }

    /**
     * Runs a model for each draw.
     *
     * @param inputs what is uncertain, names unique, not modified
     * @param model from a draw to a result; called from the executor's threads
     * @param <R> the result
     * @return one result per draw, in the order of the draws
     * @throws IllegalArgumentException if two inputs share a name
     * @throws org.beveragethermal.core.solver.RunCancelledException if the monitor says so or the calling thread is interrupted
     * @throws RuntimeException what the model throws, for the first draw that fails
     */
    public <R> List<R> run(List<UncertainInput> inputs, Function<Draw, R> model) {
        requireUniqueNames(inputs);
        return runNumbered(number -> model.apply(Draw.of(inputs, seed, number)));
    }

    static void requireUniqueNames(List<UncertainInput> inputs) {
        Set<String> names = new HashSet<>();
        for (UncertainInput input : inputs) {
            if (!names.add(input.name())) {
                throw new IllegalArgumentException("two inputs named " + input.name() + ": expected unique names");
            }
        }
    }

    /**
     * Runs a model for each draw with a source of random numbers of its own.
     *
     * @param model from a source, which depends on the seed and on the number of the draw alone, to a result; called from the
     *     executor's threads
     * @param <R> the result
     * @return one result per draw, in the order of the draws
     * @throws org.beveragethermal.core.solver.RunCancelledException if the monitor says so or the calling thread is interrupted
     * @throws RuntimeException what the model throws, for the first draw that fails
     */
    public <R> List<R> runSeeded(Function<SplittableRandom, R> model) {
        return runNumbered(number -> model.apply(Draw.source(seed, number)));
    }

    private <R> List<R> runNumbered(IntFunction<R> model) {
        Progress progress = new Progress();
        List<CompletableFuture<R>> futures = new ArrayList<>(samples);
        for (int i = 0; i < samples; i++) {
            int number = i;
            futures.add(CompletableFuture.supplyAsync(
                    () -> {
                        progress.require();
                        R result = model.apply(number);
                        progress.finished();
                        return result;
                    },
                    executor));
        }
        List<R> results = new ArrayList<>(samples);
        try {
            for (CompletableFuture<R> future : futures) {
                results.add(future.get());
            }
        } catch (InterruptedException interruption) {
            progress.cancel(true);
            Thread.currentThread().interrupt();
        } catch (ExecutionException failure) {
            progress.require();
            if (failure.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new CompletionException(failure.getCause());
        }
        progress.require();
        return results;
    }

    /** How many draws of one sampling are finished, and whether it was cancelled. */
    private final class Progress {

        private int finished;
        private @Nullable RunCancelledException cancelled;

        private synchronized void require() {
            if (cancelled != null) {
                throw cancelled;
            }
        }

        private synchronized void finished() {
            finished++;
            if (!monitor.goOn(finished, samples, finished) && finished < samples) {
                cancel(false);
            }
        }

        private synchronized void cancel(boolean interrupted) {
            if (cancelled == null) {
                cancelled = new RunCancelledException(finished, samples, interrupted);
            }
        }
    }
}
