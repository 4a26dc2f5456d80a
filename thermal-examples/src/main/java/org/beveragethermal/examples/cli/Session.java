/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.io.PrintStream;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.beveragethermal.core.solver.RunMonitor;

/** One run of a command: tells on the error stream how far long work has come, and ends it when its time is over. */
final class Session {
    private static final long NANOS_BETWEEN = Duration.ofSeconds(2).toNanos();

    private final PrintStream err;
    private final LongSupplier nanoTime;
    private final long began;
    private final Optional<Duration> limit;
    private long told;

    Session(PrintStream err, LongSupplier nanoTime, Optional<Duration> limit) {
        this.err = err;
        this.nanoTime = nanoTime;
        this.began = nanoTime.getAsLong();
        this.limit = limit;
        this.told = began;
    }

    /** Whether the time that was allowed is over. */
    boolean isOver() {
        return limit.filter(most -> nanoTime.getAsLong() - began >= most.toNanos())
                        .isPresent()
                || Thread.currentThread().isInterrupted();
    }

    /** Called often; says now and then how far the work has come. */
    synchronized boolean goOn(String what, double part) {
        long now = nanoTime.getAsLong();
        if (now - told >= NANOS_BETWEEN) {
            told = now;
            err.println(String.format(Locale.ROOT, "%s: %.0f %%", what, 100 * part));
        }
        return !isOver();
    }

    /** Watches draws of an ensemble, or a run. */
    RunMonitor watching(String what) {
        return (reached, end, count) -> goOn(what, end > 0 ? reached / end : 0);
    }

    /** Watches work of unknown length that is made of runs. */
    RunMonitor counting(String what) {
        return (reached, end, count) -> {
            synchronized (this) {
                long now = nanoTime.getAsLong();
                if (now - told >= NANOS_BETWEEN) {
                    told = now;
                    err.println(String.format(Locale.ROOT, "%s: %d s", what, (now - began) / 1_000_000_000));
                }
            }
            return !isOver();
        };
    }
}
