/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;

/**
 * Times work by processor time: the wall clock says more about what else a shared machine does.
 *
 * <p>Compile with {@code -Xbatch}, or the first samples hold code that is not compiled yet.
 */
final class Stopwatch {

    /** How much is measured. */
    enum Effort {
        /** For a look. */
        QUICK(0.4, 0.03, 5, 3),
        /** For the record. */
        FULL(1.5, 0.15, 9, 5);

        private final double warmUpS;
        private final double perSampleS;
        private final int samples;
        /** Of work that takes longer than {@link #SLOW_S}, warmed up once. */
        private final int slowSamples;

        Effort(double warmUpS, double perSampleS, int samples, int slowSamples) {
            this.slowSamples = slowSamples;
            this.warmUpS = warmUpS;
            this.perSampleS = perSampleS;
            this.samples = samples;
        }
    }

    /** Work that takes longer than this counts as slow [s]. */
    private static final double SLOW_S = 1.0;

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static final OperatingSystemMXBean SYSTEM =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private final Effort effort;
    private final Prepared work;
    private double sink;

    private Stopwatch(Effort effort, Prepared work) {
        this.effort = effort;
        this.work = work;
    }

    /** Warms up and samples. */
    static Measured measure(String job, Prepared work, Effort effort) {
        return new Stopwatch(effort, work).measure(job);
    }

    /** Samples work that changes what it works on, each time after it has been made ready. */
    static Measured measure(String job, Effort effort, int operations, Runnable ready, Task task) {
        Stopwatch watch = new Stopwatch(effort, Prepared.of(task));
        double[] samples = new double[effort.samples];
        long bytes = 0;
        for (int i = -effort.samples; i < samples.length; i++) {
            ready.run();
            long before = THREADS.getCurrentThreadAllocatedBytes();
            double took = watch.seconds(1) / operations;
            if (i >= 0) {
                samples[i] = took;
                bytes += THREADS.getCurrentThreadAllocatedBytes() - before;
            }
        }
        return Measured.of(job, samples, bytes / ((double) samples.length * operations), "", "");
    }

    private Measured measure(String job) {
        double first = seconds(1);
        int repeats = 1;
        double spent = first;
        while (spent < effort.warmUpS && first < SLOW_S) {
            double took = seconds(repeats);
            spent += took;
            if (took < effort.perSampleS / 2) {
                repeats *= 2;
            }
        }
        if (first < SLOW_S) {
            repeats = (int) Math.max(1, Math.ceil(repeats * effort.perSampleS / Math.max(1e-6, seconds(repeats))));
        }
        double[] samples = new double[first < SLOW_S ? effort.samples : effort.slowSamples];
        long allocated = THREADS.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < samples.length; i++) {
            samples[i] = seconds(repeats) / ((double) repeats * work.operations());
        }
        double bytes = (THREADS.getCurrentThreadAllocatedBytes() - allocated)
                / ((double) samples.length * repeats * work.operations());
        if (Double.isNaN(sink)) {
            throw new IllegalStateException(job + ": an answer is not a number");
        }
        return Measured.of(job, samples, bytes, work.setting(), work.error());
    }

    private double seconds(int repeats) {
        long start = now();
        double sum = 0;
        for (int i = 0; i < repeats; i++) {
            sum += work.task().run();
        }
        sink += sum;
        return (now() - start) * 1e-9;
    }

    private long now() {
        return work.clock() == Prepared.Clock.THREAD ? THREADS.getCurrentThreadCpuTime() : SYSTEM.getProcessCpuTime();
    }
}
