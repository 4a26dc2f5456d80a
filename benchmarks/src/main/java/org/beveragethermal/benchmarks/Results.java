/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The one command: measures the project beside general-purpose tools and writes the page of results. */
public final class Results {

    private static final String CHECK = "--check";
    private static final String QUICK = "--quick";

    private Results() {}

    /**
     * Measures and writes.
     *
     * @param arguments {@code --quick} for a look that writes nothing; {@code --check} to compare a quick run with the page and write nothing, which ends with
     *     status 1 if a row is less than half as good or misses a floor by a fifth that it reached; names of groups, such as {@code p1}, or nothing for all
     * @throws IOException if a process cannot be started or the page not be written
     * @throws InterruptedException if it is interrupted
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        boolean check = List.of(arguments).contains(CHECK);
        boolean quick = check || List.of(arguments).contains(QUICK);
        Stopwatch.Effort effort = quick ? Stopwatch.Effort.QUICK : Stopwatch.Effort.FULL;
        List<Group> groups = chosen(Arrays.stream(arguments)
                .filter(argument -> !argument.startsWith("--"))
                .map(argument -> argument.toLowerCase(Locale.ROOT))
                .toList());
        Path module = module();
        String machine = Machine.described();
        Optional<NativePeers> natives = NativePeers.compile(module);
        Path file = module.resolve("RESULTS.md");
        ResultsPage page = Files.exists(file) ? ResultsPage.parse(Files.readString(file)) : ResultsPage.empty();
        List<String> fallen = new ArrayList<>();
        for (Group group : groups) {
            Map<String, Measured> results = measure(group, natives, module, effort);
            List<String> ratios =
                    group.rows().stream().map(row -> row.text(results)).toList();
            List<String> times = results.values().stream()
                    .map(measured -> ResultsPage.timeRow(
                            group.name(),
                            group.labels().getOrDefault(measured.job(), measured.job()),
                            measured,
                            !measured.job().equals(Group.JARS)))
                    .toList();
            ratios.forEach(System.out::println);
            if (check) {
                fallen.addAll(Regression.fallen(page.ratios().getOrDefault(group.name(), List.of()), ratios));
                continue;
            }
            if (quick) {
                continue;
            }
            page = page.with(group.name(), ratios, times);
            // After each group, so that a run that is cut short leaves what it has.
            Files.writeString(
                    file,
                    page.text(
                            introduction(machine, natives, groups),
                            Group.all().stream().map(Group::name).toList()));
        }
        if (!fallen.isEmpty()) {
            fallen.forEach(row -> System.err.println("fallen back: " + row));
            System.exit(1);
        }
    }

    private static List<Group> chosen(List<String> names) {
        List<Group> chosen = Group.all().stream()
                .filter(group -> names.isEmpty() || names.contains(group.name().toLowerCase(Locale.ROOT)))
                .toList();
        if (chosen.size() < names.size()) {
            throw new IllegalArgumentException("groups " + names + ": expected some of "
                    + Group.all().stream().map(Group::name).toList());
        }
        return chosen;
    }

    private static Map<String, Measured> measure(
            Group group, Optional<NativePeers> natives, Path module, Stopwatch.Effort effort)
            throws IOException, InterruptedException {
        Map<String, Measured> results = new LinkedHashMap<>();
        for (String job : group.labels().keySet()) {
            if (job.equals(Group.JARS)) {
                results.put(job, jars(module));
            } else if (!group.isNative(job) && !job.startsWith("first/")) {
                Processes.run(job, effort).ifPresent(measured -> results.put(job, measured));
            }
        }
        List<Measured> others = new ArrayList<>();
        if (group.hasNative() && natives.isPresent()) {
            others.addAll(natives.get().run(group.name().toLowerCase(Locale.ROOT), effort));
        }
        if (group.name().equals("First")) {
            others.addAll(Processes.starts(effort));
        }
        others.forEach(measured -> results.put(measured.job(), measured));
        return results;
    }

    private static Measured jars(Path module) throws IOException {
        double kilobytes = 0;
        for (String name : List.of("thermal-materials", "thermal-core", "thermal-service")) {
            Path target = module.resolveSibling(name).resolve("target");
            try (Stream<Path> files = Files.list(target)) {
                for (Path jar : files.filter(
                                file -> file.getFileName().toString().matches(name + "-[^-]*(-SNAPSHOT)?\\.jar"))
                        .toList()) {
                    kilobytes += Files.size(jar) / 1e3;
                }
            }
        }
        return new Measured(Group.JARS, kilobytes, kilobytes, kilobytes, -1, "", "");
    }

    /** The folder of this module, from where its jar lies. */
    private static Path module() {
        Path jar = Path.of(System.getProperty("java.class.path")).toAbsolutePath();
        Path target = jar.getParent();
        Path module = target == null ? null : target.getParent();
        if (module == null || !Files.exists(module.resolve("src/main/c/peers.c"))) {
            throw new IllegalStateException("class path " + jar + ": expected benchmarks/target/benchmarks.jar");
        }
        return module;
    }

    private static String introduction(String machine, Optional<NativePeers> natives, List<Group> groups)
            throws IOException, InterruptedException {
        String peers = natives.isPresent() ? natives.get().versions() : "no SUNDIALS on this machine";
        String which = groups.size() == Group.all().size()
                ? "all rows"
                : "rows " + String.join(", ", groups.stream().map(Group::name).toList());
        return """
                Written by `benchmarks/run`; a run of some rows (`benchmarks/run p1 p3`) leaves the others as they were, and
                `benchmarks/run --quick` takes fewer and shorter samples and writes nothing. Last run: %s.

                Machine of the last run: %s. Other tools: Apache Commons Math 3.6.1, Hipparchus 4.0.3, %s.

                A ratio is one of medians in the same run; its spread is that of the extremes of both sides. Times are processor time
                of the measuring thread, since the wall clock of a shared machine counts what others do; plans, which go on
                several threads, are counted by processor time of the process, and starts of a virtual machine by the wall clock.
                Each Java job runs in a virtual machine of its own with `-Xbatch -XX:+UseSerialGC`, is warmed up and sampled nine
                times (five times if a run of it takes longer than a second; in a quick run five and three times); the collector's own thread is not
                counted but for plans. Before anything is timed each tool gets the loosest tolerance at which it, and so do the next three or four
                tighter ones, keeps the error that all have to keep: 1 s for times, 1 mK for temperatures. A tool that fails is not
                timed. Not tuned so: P2's DP54, which gets the loosest that passes at all; P4, whose batch keeps its error on every sample and whose peer starts at 1e-5, and P5, whose peer needs runs at 1e-10 to find the minimum.
                In P1, P1b and P4 the project evaluates films that were fitted to the stated formulas beforehand, outside the clock, with their error
                in that of the answer; the peers evaluate the formulas (in P1 the table of times has the project's time with the formulas too). In P1b and P4 they are a class of this module, `VectorFilm`, as the library has
                fitted films for one pair of temperatures only. Runs, batches and SUNDIALS are set up outside the clock; Commons Math and Hipparchus make an
                integrator for each solve. Statements and equations of P1 to P6 are in the sources of this module; all their values are made up.""".formatted(which, machine, peers);
    }
}
