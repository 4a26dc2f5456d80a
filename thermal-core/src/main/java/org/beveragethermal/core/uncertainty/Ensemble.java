/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.function.Function;

/**
 * Settings of a sampling: how many draws, from which seed, on which threads. Immutable.
 *
 * <p>The result is the same for any executor.
 */
public final class Ensemble {

    private static final int MOST_SAMPLES = 10_000_000;

    private final int samples;
    private final long seed;
    private final Executor executor;

    private Ensemble(int samples, long seed, Executor executor) {
        this.samples = samples;
        this.seed = seed;
        this.executor = executor;
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
        return new Ensemble(samples, seed, Runnable::run);
    }

    /**
     * The same ensemble on other threads.
     *
     * @param newExecutor runs the draws
     * @return a new ensemble
     */
    public Ensemble on(Executor newExecutor) {
        return new Ensemble(samples, seed, Objects.requireNonNull(newExecutor, "executor"));
    }

    /**
     * Number of draws.
     *
     * @return samples
     */
    public int samples() {
        return samples;
    }

    /**
     * Runs a model for each draw.
     *
     * @param inputs what is uncertain, names unique, not modified
     * @param model from a draw to a result; called from the executor's threads
     * @param <R> the result
     * @return one result per draw, in the order of the draws
     * @throws IllegalArgumentException if two inputs share a name
     * @throws RuntimeException what the model throws, for the first draw that fails
     */
    public <R> List<R> run(List<UncertainInput> inputs, Function<Draw, R> model) {
        Set<String> names = new HashSet<>();
        for (UncertainInput input : inputs) {
            if (!names.add(input.name())) {
                throw new IllegalArgumentException("two inputs named " + input.name() + ": expected unique names");
            }
        }
        List<CompletableFuture<R>> futures = new ArrayList<>(samples);
        for (int i = 0; i < samples; i++) {
            int number = i;
            futures.add(CompletableFuture.supplyAsync(() -> model.apply(Draw.of(inputs, seed, number)), executor));
        }
        List<R> results = new ArrayList<>(samples);
        try {
            futures.forEach(future -> results.add(future.join()));
        } catch (CompletionException failure) {
            if (failure.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failure;
        }
        return results;
    }
}
