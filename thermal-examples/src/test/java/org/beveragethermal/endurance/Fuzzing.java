/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.examples.cli.QuantitiesTarget;

/** Runs changed inputs through every target: {@code mvn -q -DskipTests -Pfuzz -pl thermal-examples -am package}. */
public final class Fuzzing {
    /** Targets with the thousandths of all executions that they get. */
    static final List<Share> SHARES = List.of(
            new Share(ScenarioTarget.ofWords(), 150),
            new Share(ScenarioTarget.ofTrees(), 130),
            new Share(new PlanTarget(), 40),
            new Share(new LogTarget(), 150),
            new Share(new ProfileTarget(), 230),
            new Share(new NetworkTarget(), 150),
            new Share(new QuantitiesTarget(), 150));

    private static final int MOST_SHOWN = 20;
    private static final double NANOS = 1e9;

    private Fuzzing() {}

    /**
     * A target and its part.
     *
     * @param target where input enters
     * @param thousandths part of all executions, in thousandths
     */
    record Share(FuzzTarget target, int thousandths) {}

    /**
     * What came of a target.
     *
     * @param executions inputs handed over
     * @param accepted inputs that were not refused
     * @param cpuS processor time of all [s]
     * @param slowestS processor time of the slowest [s]
     * @param findings inputs that gave what never should come
     */
    record Result(long executions, long accepted, double cpuS, double slowestS, long findings) {}

    /**
     * Prints a row for each target.
     *
     * @param args number of executions, 1,000,000 unless given; first seed, 1 unless given; number of the only target, from 0, all unless
     *     given, which gets its part of the executions
     */
    public static void main(String[] args) {
        long executions = args.length > 0 ? Long.parseLong(args[0]) : 1_000_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        long findings = 0;
        List<Share> shares = args.length > 2 ? List.of(SHARES.get(Integer.parseInt(args[2]))) : SHARES;
        for (Share share : shares) {
            Result result = run(share.target(), executions * share.thousandths() / 1000, seed);
            System.out.println(String.format(
                    Locale.ROOT,
                    "| %s | %,d | %.1f %% | %.0f | %.3f | %d |",
                    share.target().name(),
                    result.executions(),
                    100.0 * result.accepted() / result.executions(),
                    result.cpuS(),
                    result.slowestS(),
                    result.findings()));
            findings += result.findings();
        }
        if (findings > 0) {
            throw new AssertionError(findings + " findings");
        }
    }

    private static Result run(FuzzTarget target, long executions, long firstSeed) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        Inputs inputs = target.inputs();
        long accepted = 0;
        long findings = 0;
        long slowest = 0;
        long start = threads.getCurrentThreadCpuTime();
        for (long seed = firstSeed; seed < firstSeed + executions; seed++) {
            byte[] input = inputs.input(seed);
            long before = threads.getCurrentThreadCpuTime();
            try {
                accepted += target.accepts(input) ? 1 : 0;
            } catch (RuntimeException | AssertionError | StackOverflowError | OutOfMemoryError e) {
                findings++;
                show(target, seed, input, e, findings);
            }
            long took = threads.getCurrentThreadCpuTime() - before;
            if (took > target.longestS() * NANOS) {
                findings++;
                show(target, seed, input, new AssertionError(took / NANOS + " s"), findings);
            }
            slowest = Math.max(slowest, took);
        }
        return new Result(
                executions, accepted, (threads.getCurrentThreadCpuTime() - start) / NANOS, slowest / NANOS, findings);
    }

    private static void show(FuzzTarget target, long seed, byte[] input, Throwable e, long number) {
        if (number > MOST_SHOWN) {
            return;
        }
        System.out.println("FINDING " + target.name() + " seed " + seed + ": " + e);
        Throwable shown = e.getCause() == null ? e : e.getCause();
        for (int i = 0; i < Math.min(6, shown.getStackTrace().length); i++) {
            System.out.println("    " + shown.getStackTrace()[i]);
        }
        System.out.println("    "
                + (input.length < 600
                        ? new String(input, StandardCharsets.UTF_8)
                        : Base64.getEncoder().encodeToString(input)));
    }
}
