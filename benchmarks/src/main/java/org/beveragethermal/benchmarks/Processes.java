/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs jobs in virtual machines of their own. */
final class Processes {

    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private static final String CLASSES = System.getProperty("java.class.path");

    private Processes() {}

    /** Runs one job; empty, with what it said, if it fails, for instance its check of error. */
    static Optional<Measured> run(String job, Stopwatch.Effort effort) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(JAVA, "-Xbatch", "-XX:+UseSerialGC", "-Xmx1500m", "-cp", CLASSES, Case.class.getName(), job));
        if (effort == Stopwatch.Effort.QUICK) {
            command.add("quick");
        }
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        Optional<Measured> result = Optional.empty();
        try (var reader = process.inputReader()) {
            for (String line : reader.lines().toList()) {
                result = Measured.parse(line);
            }
        }
        process.waitFor();
        return result;
    }

    /** Starts of a virtual machine with one prediction and without, in turn, by the clock on the wall. */
    static List<Measured> starts(Stopwatch.Effort effort) throws IOException, InterruptedException {
        int count = effort == Stopwatch.Effort.QUICK ? 5 : 15;
        double[] empty = new double[count];
        double[] first = new double[count];
        for (int i = 0; i < count; i++) {
            empty[i] = start(List.of("empty"));
            first[i] = start(List.of());
        }
        return List.of(
                Measured.of("first/prediction", first, -1, "wall clock", ""),
                Measured.of("first/empty", empty, -1, "wall clock", ""));
    }

    private static double start(List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(JAVA, "-cp", CLASSES, FirstPrediction.class.getName()));
        command.addAll(arguments);
        long begin = System.nanoTime();
        int code = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        if (code != 0) {
            throw new IllegalStateException("a prediction in a fresh virtual machine ended with " + code);
        }
        return (System.nanoTime() - begin) * 1e-9;
    }
}
