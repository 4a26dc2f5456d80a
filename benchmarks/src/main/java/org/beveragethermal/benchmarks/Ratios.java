/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks and prints what counts: ratios inside the run, and bytes allocated. */
public final class Ratios {

    private static final String BYTES = "gc.alloc.rate.norm";

    private Ratios() {}

    /**
     * Runs and prints.
     *
     * @param arguments any of {@code properties}, {@code solver}, {@code questions}, {@code plans}, {@code tracking} and {@code fit}, or
     *     nothing for all
     * @throws RunnerException if the harness fails
     */
    public static void main(String[] arguments) throws RunnerException {
        List<String> wanted = arguments.length == 0
                ? List.of("properties", "solver", "questions", "plans", "tracking", "fit")
                : List.of(arguments);
        if (wanted.contains("properties")) {
            properties(run(PropertyBenchmark.class));
        }
        if (wanted.contains("solver")) {
            solver(run(SolverBenchmark.class));
        }
        if (wanted.contains("questions")) {
            beside(run(QuestionBenchmark.class), "Question", QuestionBenchmark.REFERENCE);
        }
        if (wanted.contains("plans")) {
            beside(run(PlanBenchmark.class), "Plan", PlanBenchmark.REFERENCE);
        }
        if (wanted.contains("tracking")) {
            tracking(run(TrackingBenchmark.class));
        }
        if (wanted.contains("fit")) {
            fits(run(FitBenchmark.class));
        }
    }

    private static Collection<RunResult> run(Class<?> benchmark) throws RunnerException {
        return new Runner(new OptionsBuilder()
                        .include(benchmark.getName().replace(".", "\\.") + "\\.")
                        .addProfiler(GCProfiler.class)
                        .build())
                .run();
    }

    private static void properties(Collection<RunResult> results) {
        double reference = results.stream()
                .filter(result -> parameter(result, "subject").equals(PropertyBenchmark.REFERENCE))
                .mapToDouble(Ratios::score)
                .findFirst()
                .orElseThrow();
        print("| Property | Time ÷ time of Math.exp | Bytes per call |");
        print("|---|---|---|");
        for (RunResult result : results) {
            print(String.format(
                    Locale.ROOT,
                    "| %s | %.1f | %.0f |",
                    parameter(result, "subject"),
                    score(result) / reference,
                    bytes(result)));
        }
    }

    private static void beside(Collection<RunResult> results, String what, String referenceSubject) {
        double reference = results.stream()
                .filter(result -> parameter(result, "subject").equals(referenceSubject))
                .mapToDouble(Ratios::score)
                .findFirst()
                .orElseThrow();
        print("| " + what + " | Time ÷ time of one prediction | Time, ms |");
        print("|---|---|---|");
        for (RunResult result : results) {
            print(String.format(
                    Locale.ROOT,
                    "| %s | %.1f | %.2f |",
                    parameter(result, "subject"),
                    score(result) / reference,
                    score(result) / 1000));
        }
    }

    private static void tracking(Collection<RunResult> results) {
        double reference = results.stream()
                .filter(result -> result.getPrimaryResult().getLabel().equals("prediction"))
                .mapToDouble(Ratios::score)
                .findFirst()
                .orElseThrow();
        print(
                "| Events for 10 000 vessels | Events per second | Time of one prediction ÷ time of one event | Bytes per event |");
        print("|---|---|---|---|");
        for (RunResult result : results) {
            if (result.getPrimaryResult().getLabel().equals("batch")) {
                double seconds = score(result) / 1e6 / TrackingBenchmark.BATCH;
                print(String.format(
                        Locale.ROOT,
                        "| %s | %.0f | %.0f | %.0f |",
                        parameter(result, "news"),
                        1 / seconds,
                        reference / 1e6 / seconds,
                        bytes(result) / TrackingBenchmark.BATCH));
            }
        }
        print(String.format(Locale.ROOT, "Bytes per tracked vessel: %.0f", TrackingBenchmark.bytesPerVessel()));
    }

    private static void fits(Collection<RunResult> results) {
        print("| Fit | Own time, ms | Time by finite differences ÷ own time |");
        print("|---|---|---|");
        for (RunResult own : results) {
            if (own.getPrimaryResult().getLabel().equals("own")) {
                String subject = parameter(own, "subject");
                double other = results.stream()
                        .filter(result -> parameter(result, "subject").equals(subject)
                                && result.getPrimaryResult().getLabel().equals("finiteDifferences"))
                        .mapToDouble(Ratios::score)
                        .findFirst()
                        .orElseThrow();
                print(String.format(
                        Locale.ROOT, "| %s | %.2f | %.2f |", subject, score(own) / 1000, other / score(own)));
            }
        }
    }

    private static void solver(Collection<RunResult> results) {
        print("| Model | Steps | Time of DP853 ÷ own time | Bytes per step | of which kept | Bytes of setting up |");
        print("|---|---|---|---|---|---|");
        for (String model : List.of(SolverBenchmark.REFRIGERATOR, SolverBenchmark.ICE_WATER)) {
            SolverBenchmark subject = new SolverBenchmark();
            subject.model = model;
            subject.prepare();
            RunResult own = of(results, model, "own");
            print(String.format(
                    Locale.ROOT,
                    "| %s | %d | %s | %.0f | %d | %.0f |",
                    model,
                    subject.steps(),
                    timeOfOther(results, model, own),
                    (bytes(own) - bytes(of(results, model, "ownFirstStep"))) / (subject.steps() - 1),
                    subject.keptBytesPerStep(),
                    bytes(of(results, model, "ownFirstStep"))));
        }
    }

    /** How much longer the explicit integrator takes, if it gets through: its trial steps may leave what any path can answer to. */
    private static String timeOfOther(Collection<RunResult> results, String model, RunResult own) {
        return find(results, model, "dormandPrince853")
                .map(other -> String.format(Locale.ROOT, "%.2f", score(other) / score(own)))
                .orElse("it fails");
    }

    private static RunResult of(Collection<RunResult> results, String model, String method) {
        return find(results, model, method).orElseThrow();
    }

    private static Optional<RunResult> find(Collection<RunResult> results, String model, String method) {
        return results.stream()
                .filter(result -> parameter(result, "model").equals(model)
                        && result.getPrimaryResult().getLabel().equals(method))
                .findFirst();
    }

    private static String parameter(RunResult result, String name) {
        return result.getParams().getParam(name);
    }

    private static double score(RunResult result) {
        return result.getPrimaryResult().getScore();
    }

    private static double bytes(RunResult result) {
        return Objects.requireNonNull(result.getSecondaryResults().get(BYTES), BYTES)
                .getScore();
    }

    private static void print(String line) {
        System.out.println(line);
    }
}
