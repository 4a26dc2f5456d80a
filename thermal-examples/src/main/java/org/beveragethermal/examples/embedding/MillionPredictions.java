/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import org.beveragethermal.core.batch.BatchSolver;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.solver.RunCancelledException;
import org.beveragethermal.core.solver.RunMonitor;

/**
 * A million bottles on all cores: how long each takes in a refrigerator to 9 °C, if starts, films and the refrigerator are known roughly.
 * Says how far it is, gives up when its time is over, and sets a few answers beside those of the scene.
 */
public final class MillionPredictions {

    static final double WANTED_K = 282.15;
    static final double HORIZON_S = 86_400;

    private static final int DONE = 0;
    private static final int REFUSED = 2;
    private static final int CANCELLED = 3;
    private static final int MILLION = 1_000_000;
    private static final int MOST = 10_000_000;
    private static final int LONGEST_S = 86_400;
    private static final int COMPARED = 20;
    private static final long SEED = 20_270_301;
    private static final int TENTHS = 10;
    private static final double NANO = 1e-9;
    private static final double MICROS_PER_SECOND = 1e6;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double PERCENT = 100;

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
        BottleBatch bottle = BottleBatch.bottle();
        Draws draws = Draws.of(count, SEED);
        int cores = Runtime.getRuntime().availableProcessors();
        ExecutorService threads = Executors.newFixedThreadPool(cores);
        try {
            long before = nanos.getAsLong();
            double[] seconds = timesS(
                    bottle, draws, threads, monitor(err, () -> (nanos.getAsLong() - before) * NANO < mostSeconds));
            double took = (nanos.getAsLong() - before) * NANO;
            out.printf(
                    Locale.ROOT,
                    "%d predictions on %d cores in %.2f s: %.2f µs each%n",
                    count,
                    cores,
                    took,
                    took / count * MICROS_PER_SECOND);
            tell(seconds, out);
            compare(bottle, draws, seconds, out, nanos);
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

    /** Says each tenth that is done. It is called by one thread at a time. */
    private static RunMonitor monitor(PrintStream err, BooleanSupplier patience) {
        int[] told = {0};
        return (reached, end, count) -> {
            int tenths = (int) (TENTHS * reached / end);
            if (tenths > told[0]) {
                told[0] = tenths;
                err.println(TENTHS * tenths + " % done");
            }
            return patience.getAsBoolean();
        };
    }

    /** When each bottle is at 9 °C [s]; infinite where that is not within a day. */
    static double[] timesS(BottleBatch bottle, Draws draws, Executor threads, RunMonitor monitor) {
        return BatchSolver.standard()
                .on(threads)
                .withMonitor(monitor)
                .timesToS(bottle.samples(draws), BottleBatch.CONTENTS, WANTED_K, HORIZON_S);
    }

    /** The same by the scene, for one bottle. */
    static double sceneTimeS(Draws draws, int sample) {
        TimeToTemperature time = BottleBatch.course(draws.startK()[sample], draws.airK()[sample], draws.films(sample))
                .timeToK(WANTED_K, 0);
        return time instanceof TimeToTemperature.Reached reached
                ? reached.after().toNanos() * NANO
                : Double.POSITIVE_INFINITY;
    }

    private static void compare(
            BottleBatch bottle, Draws draws, double[] seconds, PrintStream out, LongSupplier nanos) {
        int compared = Math.min(COMPARED, draws.count());
        double worstS = 0;
        double worstPart = 0;
        long before = nanos.getAsLong();
        for (int i = 0; i < compared; i++) {
            int sample = (int) ((long) i * draws.count() / compared);
            double sceneS = sceneTimeS(draws, sample);
            if (sceneS != seconds[sample]) {
                worstS = Math.max(worstS, Math.abs(seconds[sample] - sceneS));
                worstPart = Math.max(worstPart, Math.abs(seconds[sample] / sceneS - 1));
            }
        }
        double each = (nanos.getAsLong() - before) * NANO / compared;
        out.printf(
                Locale.ROOT,
                "%d of them by the scene, %.0f µs each: greatest difference %.1f s, %.3f %%; laws followed to %.3f %%%n",
                compared,
                each * MICROS_PER_SECOND,
                worstS,
                PERCENT * worstPart,
                PERCENT * bottle.worstLaw());
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
