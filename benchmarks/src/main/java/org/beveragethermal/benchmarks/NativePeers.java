/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The peers in C: compiled here if gcc and the development files of SUNDIALS are installed, and run as a process. */
final class NativePeers {

    private static final double NEAR = 1e-5;

    private final Path program;

    private NativePeers(Path program) {
        this.program = program;
    }

    /** Compiles them; empty, with a message, if that is not possible on this machine. */
    static Optional<NativePeers> compile(Path module) throws IOException, InterruptedException {
        Path program = module.resolve("target").resolve("peers");
        List<String> command = List.of(
                "gcc",
                "-O3",
                "-march=native",
                "-o",
                program.toString(),
                module.resolve("src/main/c/peers.c").toString(),
                "-lsundials_cvode",
                "-lsundials_arkode",
                "-lsundials_nvecserial",
                "-lsundials_generic",
                "-lm");
        Path log = Files.createTempFile("peers", ".log");
        try {
            Process compiler = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            if (compiler.waitFor() == 0) {
                return Optional.of(new NativePeers(program));
            }
            say("SUNDIALS is skipped, its C program does not compile (Debian: libsundials-dev): "
                    + Files.readString(log).lines().findFirst().orElse(""));
        } catch (IOException missing) {
            say("SUNDIALS is skipped, there is no gcc on this machine");
        } finally {
            Files.delete(log);
        }
        return Optional.empty();
    }

    /** Versions of compiler and library. */
    String versions() throws IOException, InterruptedException {
        String gcc = output(List.of("gcc", "-dumpfullversion")).get(0);
        return "gcc " + gcc + " with -O3 -march=native, "
                + output(List.of(program.toString(), "version")).get(0);
    }

    /** Measures the tools of a problem; each checks its error itself, and the answers are compared with references of our own. */
    List<Measured> run(String problem, Stopwatch.Effort effort) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(program.toString()));
        if (effort == Stopwatch.Effort.QUICK) {
            command.add("quick");
        }
        command.add(problem);
        List<Measured> results = new ArrayList<>();
        for (String line : output(command)) {
            Measured.parse(line).ifPresent(results::add);
            String[] parts = line.split("\t", -1);
            if (parts[0].equals("REFERENCE")) {
                requireSame(parts[1], Double.parseDouble(parts[2]));
            }
        }
        return results;
    }

    /** Both languages must solve the same problem: their tight answers agree. */
    private static void requireSame(String name, double value) {
        double own = switch (name) {
            case "p1" -> TwoNodeCooling.NOMINAL_S;
            case "p1b" -> OneNodeCooling.NOMINAL_S;
            case "p2" -> RadialLayers.of(100, 0).exactC()[0];
            case "p2-swing" -> RadialLayers.of(100, 2).exactC()[0];
            case "p3" -> AxialStack.referenceC()[0];
            default -> throw new IllegalArgumentException("reference " + name);
        };
        if (!(Math.abs(own - value) <= NEAR)) {
            throw new IllegalStateException(name + ": " + value + " in C, " + own + " in Java");
        }
    }

    private static List<String> output(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> lines;
        try (var reader = process.inputReader()) {
            lines = reader.lines().toList();
        }
        int status = process.waitFor();
        if (status != 0) {
            throw new IllegalStateException(command + " ended with status " + status);
        }
        return lines;
    }

    private static void say(String message) {
        System.err.println(message);
    }
}
