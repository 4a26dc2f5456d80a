/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.LongSupplier;
import org.beveragethermal.core.batch.BatchNetwork;
import org.beveragethermal.core.batch.BatchSamples;
import org.beveragethermal.core.batch.BatchSolver;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.solver.RunMonitor;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;

/**
 * A million bottles on all cores: how long each takes in a refrigerator to 9 °C, if starts, films and fillings are known roughly. Says how
 * far it is, and gives up when its time is over.
 */
public final class MillionPredictions {

    private static final int DONE = 0;
    private static final int REFUSED = 2;
    private static final int CANCELLED = 3;
    private static final int MILLION = 1_000_000;
    private static final int MOST = 10_000_000;
    private static final int LONGEST_S = 86_400;
    private static final long SEED = 20_270_301;
    private static final double START_K = 295.15;
    private static final double START_SD_K = 1;
    private static final double FILM_LOG_SD = 0.15;
    private static final double FILL_SD = 0.01;
    private static final double WANTED_K = 282.15;
    private static final double HORIZON_S = 86_400;
    private static final int TENTHS = 10;
    private static final double NANO = 1e-9;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final String CONTENTS = "vessel contents";
    private static final String WALL = "vessel wall 1";

    private MillionPredictions() {}

    /**
     * Runs the batch and ends the virtual machine with its exit status: 0, 2 where an argument is refused, 3 where time was over.
     *
     * @param args number of predictions (a million) and seconds after which to give up (a day)
     */
    public static void main(String[] args) {
        System.exit(run(
                args,
                new PrintStream(System.out, true, StandardCharsets.UTF_8),
                new PrintStream(System.err, true, StandardCharsets.UTF_8),
                System::nanoTime));
    }

    static int run(String[] args, PrintStream out, PrintStream err, LongSupplier nanos) {
        int count;
        long mostSeconds;
        try {
            count = (int) argument(args, 0, "number of predictions", MILLION, MOST);
            mostSeconds = argument(args, 1, "seconds", LONGEST_S, LONGEST_S);
        } catch (IllegalArgumentException e) {
            err.println(e.getMessage());
            return REFUSED;
        }
        int cores = Runtime.getRuntime().availableProcessors();
        ExecutorService threads = Executors.newFixedThreadPool(cores);
        try {
            long before = nanos.getAsLong();
            RunMonitor monitor = monitor(err, () -> (nanos.getAsLong() - before) * NANO < mostSeconds);
            double[] seconds = timesS(samples(count, SEED), threads, monitor);
            double took = (nanos.getAsLong() - before) * NANO;
            out.printf(Locale.ROOT, "%d predictions on %d cores in %.1f s%n", count, cores, took);
            tell(seconds, out);
            return DONE;
        } catch (RunCancelledException e) {
            err.printf(Locale.ROOT, "given up after %d s: %.0f of %d were done%n", mostSeconds, e.reached(), count);
            return CANCELLED;
        } finally {
            threads.shutdownNow();
        }
    }

    private static long argument(String[] args, int index, String what, long usual, long most) {
        if (args.length <= index) {
            return usual;
        }
        try {
            long given = Long.parseLong(args[index]);
            if (given >= 1 && given <= most) {
                return given;
            }
        } catch (NumberFormatException e) {
            // Refused below, as a number out of range is.
        }
        throw new IllegalArgumentException(what + " " + args[index] + ": expected 1 to " + most);
    }

    /** What is asked after each piece of work: whether to go on. */
    @FunctionalInterface
    interface Patience {
        boolean goOn();
    }

    /** Says each tenth that is done. It is called by one thread at a time. */
    private static RunMonitor monitor(PrintStream err, Patience patience) {
        int[] told = {0};
        return (reached, end, count) -> {
            int tenths = (int) (TENTHS * reached / end);
            if (tenths > told[0]) {
                told[0] = tenths;
                err.println(TENTHS * tenths + " % done");
            }
            return patience.goOn();
        };
    }

    /** When each bottle is at 9 °C [s]; infinite where that is not within a day. */
    static double[] timesS(BatchSamples samples, ExecutorService threads, RunMonitor monitor) {
        return BatchSolver.standard().on(threads).withMonitor(monitor).timesToS(samples, CONTENTS, WANTED_K, HORIZON_S);
    }

    /** A bottle in a refrigerator at 5 °C, its start, films and filling drawn for each sample. */
    static BatchSamples samples(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] startsK = new double[count];
        double[] air = new double[count];
        double[] inside = new double[count];
        double[] fill = new double[count];
        for (int i = 0; i < count; i++) {
            startsK[i] = START_K + START_SD_K * random.nextGaussian();
            air[i] = Math.exp(FILM_LOG_SD * random.nextGaussian());
            inside[i] = Math.exp(FILM_LOG_SD * random.nextGaussian());
            fill[i] = 1 + FILL_SD * random.nextGaussian();
        }
        List<Path> paths = Lumped.of(
                        Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22)))
                .expose(in(Refrigerator.at(celsius(5)), Duration.ofSeconds(1)))
                .trajectory()
                .paths(0);
        return BatchNetwork.of(paths)
                .samples(count)
                .startK(CONTENTS, startsK)
                .startK(WALL, startsK)
                .capacityFactor(CONTENTS, fill)
                .multiplier(Multipliers.AIR_FILM, air)
                .multiplier(Multipliers.INSIDE_FILM, inside)
                .build();
    }

    private static void tell(double[] seconds, PrintStream out) {
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        out.printf(
                Locale.ROOT,
                "to 9 °C: one in twenty within %.0f min, half within %.0f min, nineteen in twenty within %.0f min%n",
                quantile(sorted, 0.05),
                quantile(sorted, 0.5),
                quantile(sorted, 0.95));
        long never = Arrays.stream(sorted).filter(Double::isInfinite).count();
        out.println("not within a day: " + never);
    }

    private static double quantile(double[] sorted, double part) {
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(part * sorted.length))] / SECONDS_PER_MINUTE;
    }
}
