/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.beveragethermal.core.solver.RunMonitor;

/**
 * Propagation of distributions by as many draws as the wanted digits need (JCGM 101:2008, 7.9). Immutable.
 *
 * <p>Batches of draws are added until the mean, the standard uncertainty and both ends of the interval, each batch taken as one
 * estimate, are sure to the numerical tolerance: half a unit of the last significant digit of the standard uncertainty. There are at
 * least ten batches. The result depends on the seed alone, never on threads.
 *
 * <p>Theory manual, equation (8.7).
 */
public final class AdaptiveMonteCarlo {

    private static final int SMALLEST_BATCH = 10_000;
    /** The guide allows two; how two batches agree is itself a matter of chance. */
    private static final int FEWEST_BATCHES = 10;

    private static final int USUAL_MOST = 2_000_000;

    private final double probability;
    private final int digits;
    private final long seed;
    private final int most;
    private final Executor executor;
    private final RunMonitor monitor;

    private AdaptiveMonteCarlo(
            double probability, int digits, long seed, int most, Executor executor, RunMonitor monitor) {
        this.probability = probability;
        this.digits = digits;
        this.seed = seed;
        this.most = most;
        this.executor = executor;
        this.monitor = monitor;
    }

    /**
     * A propagation on the calling thread with at most 2 million draws.
     *
     * @param probability coverage probability, between 0 and 1
     * @param digits significant digits wanted of the standard uncertainty, 1 to 4; 1 or 2 are usual
     * @param seed the seed
     * @return the settings
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static AdaptiveMonteCarlo of(double probability, int digits, long seed) {
        if (!(probability > 0 && probability < 1) || digits < 1 || digits > 4) {
            throw new IllegalArgumentException("probability " + probability + ", digits " + digits
                    + ": expected a probability between 0 and 1, and 1 to 4 digits");
        }
        return new AdaptiveMonteCarlo(probability, digits, seed, USUAL_MOST, Runnable::run, RunMonitor.NONE);
    }

    /**
     * The same propagation with another limit.
     *
     * @param draws most draws, at least 100,000 (ten batches)
     * @return new settings
     * @throws IllegalArgumentException if the number is outside its range
     */
    public AdaptiveMonteCarlo withAtMost(int draws) {
        int fewest = FEWEST_BATCHES * SMALLEST_BATCH;
        if (draws < fewest) {
            throw new IllegalArgumentException("draws " + draws + ": expected at least " + fewest);
        }
        return new AdaptiveMonteCarlo(probability, digits, seed, draws, executor, monitor);
    }

    /**
     * The same propagation on other threads.
     *
     * @param newExecutor runs the draws
     * @return new settings
     */
    public AdaptiveMonteCarlo on(Executor newExecutor) {
        return new AdaptiveMonteCarlo(
                probability, digits, seed, most, Objects.requireNonNull(newExecutor, "executor"), monitor);
    }

    /**
     * The same propagation with a monitor that is told of progress and may cancel.
     *
     * @param newMonitor called after each draw with the number of draws so far and the most there can be
     * @return new settings
     */
    public AdaptiveMonteCarlo withMonitor(RunMonitor newMonitor) {
        return new AdaptiveMonteCarlo(
                probability, digits, seed, most, executor, Objects.requireNonNull(newMonitor, "monitor"));
    }

    /**
     * Propagates uncertain inputs through a model.
     *
     * @param inputs what is uncertain, names unique, not modified
     * @param model from a draw to the result, finite; called from the executor's threads
     * @return the distribution of the result
     * @throws IllegalArgumentException if two inputs share a name or the model gives no finite number
     * @throws org.beveragethermal.core.solver.RunCancelledException if the monitor says so or the calling thread is interrupted
     */
    public MonteCarloAnswer run(List<UncertainInput> inputs, ToDoubleFunction<Draw> model) {
        return propagate(ensemble -> ensemble.run(inputs, model::applyAsDouble));
    }

    /**
     * Propagates distributions of one's own through a model.
     *
     * @param model draws from the source what it needs and gives the result, finite; called from the executor's threads
     * @return the distribution of the result
     * @throws IllegalArgumentException if the model gives no finite number
     * @throws org.beveragethermal.core.solver.RunCancelledException if the monitor says so or the calling thread is interrupted
     */
    public MonteCarloAnswer runSeeded(ToDoubleFunction<SplittableRandom> model) {
        return propagate(ensemble -> ensemble.runSeeded(model::applyAsDouble));
    }

    private MonteCarloAnswer propagate(Function<Ensemble, List<Double>> batch) {
        int size = Math.max(
                (int) Math.min(Math.ceil(100 / (1 - probability)), (double) most / FEWEST_BATCHES), SMALLEST_BATCH);
        List<double[]> batches = new ArrayList<>();
        List<double[]> figures = new ArrayList<>();
        SplittableRandom seeds = new SplittableRandom(seed);
        while (true) {
            double[] values = drawn(batch, size, batches.size(), seeds.nextLong());
            batches.add(values);
            figures.add(figures(values));
            int drawn = batches.size() * size;
            boolean stable = batches.size() >= FEWEST_BATCHES && stable(figures, tolerance(batches));
            if (stable || drawn + size > most) {
                return answer(batches, stable);
            }
        }
    }

    private double[] drawn(Function<Ensemble, List<Double>> batch, int size, int number, long seedOfBatch) {
        int before = number * size;
        Ensemble ensemble = Ensemble.of(size, seedOfBatch)
                .on(executor)
                .withMonitor((reached, end, count) -> monitor.goOn(before + reached, most, before + count));
        double[] values = batch.apply(ensemble).stream().mapToDouble(v -> v).toArray();
        for (int i = 0; i < size; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(
                        "draw " + (before + i) + " gave " + values[i] + ": expected a finite number");
            }
        }
        return values;
    }

    private double[] figures(double[] values) {
        Interval interval = Interval.of(values, probability);
        double mean = mean(values);
        return new double[] {mean, deviation(values, mean), interval.low(), interval.high()};
    }

    /** Whether twice the standard deviation of the mean over batches is below the tolerance, for each figure. */
    private static boolean stable(List<double[]> figures, double tolerance) {
        for (int k = 0; k < 4; k++) {
            int place = k;
            double[] over = figures.stream().mapToDouble(f -> f[place]).toArray();
            if (2 * deviation(over, mean(over)) / Math.sqrt(over.length) >= tolerance) {
                return false;
            }
        }
        return true;
    }

    /** Half a unit of the last significant digit of the standard uncertainty (JCGM 101, 7.9.2). */
    private double tolerance(List<double[]> batches) {
        double[] all = all(batches);
        return tolerance(deviation(all, mean(all)), digits);
    }

    static double tolerance(double uncertainty, int digits) {
        if (!(uncertainty > 0)) {
            return Double.MIN_NORMAL;
        }
        int exponent = (int) Math.floor(Math.log10(uncertainty)) - digits + 1;
        // Rounding to the wanted digits may bring one more: 0.0996 to two digits is 0.10.
        if (Math.round(uncertainty / Math.pow(10, exponent)) >= Math.pow(10, digits)) {
            exponent++;
        }
        return 0.5 * Math.pow(10, exponent);
    }

    private MonteCarloAnswer answer(List<double[]> batches, boolean stable) {
        double[] all = all(batches);
        double mean = mean(all);
        double uncertainty = deviation(all, mean);
        return new MonteCarloAnswer(
                mean,
                uncertainty,
                Interval.of(all, probability),
                Interval.shortest(all, probability),
                all.length,
                tolerance(uncertainty, digits),
                stable);
    }

    private static double[] all(List<double[]> batches) {
        return batches.stream().flatMapToDouble(Arrays::stream).toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).sum() / values.length;
    }

    private static double deviation(double[] values, double mean) {
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (values.length - 1));
    }
}
