/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Every argument of every command, as the library of the command line lists them, so that a new one is looked at without being named
 * here: missing, without a value, given twice, and with values of every wrong kind. Each is refused in one line, and nothing is written.
 */
class EveryArgumentTest {

    private static final int HUGE = 1_000_000;
    /** Wrong whatever is asked for, but for {@link #isAllowed}. */
    private static final List<String> WRONG = List.of(
            "",
            "x",
            "1e300",
            "-1e300",
            "1e300C",
            "-1",
            "NaN",
            "Infinity",
            "-Infinity",
            "NaNC",
            "\u0000",
            "9".repeat(HUGE),
            "x".repeat(HUGE),
            " ".repeat(HUGE),
            "1 ".repeat(HUGE / 2));

    private static final Set<ExitStatus> REFUSALS =
            EnumSet.of(ExitStatus.USAGE, ExitStatus.BAD_INPUT, ExitStatus.NOT_WRITABLE);

    @TempDir
    Path directory;

    private Path log = Path.of("log.csv");
    private Path scenario = Path.of("scenario.json");

    @BeforeEach
    void writeWhatCanBeRead() throws IOException {
        log = Files.writeString(directory.resolve("log.csv"), goodLog());
        scenario = Files.writeString(directory.resolve("scenario.json"), CommandsTest.small());
    }

    /** A log of our own invention: half the difference is left after an hour. */
    private static String goodLog() {
        StringBuilder rows = new StringBuilder("elapsed min,bottle °C\n");
        for (int minute = 0; minute <= 60; minute += 10) {
            rows.append(String.format(Locale.ROOT, "%d,%.2f\n", minute, 5 + 17 * Math.pow(0.5, minute / 60.0)));
        }
        return rows.toString();
    }

    private static Map<String, CommandSpec> specs() {
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        Map<String, CommandSpec> specs = new LinkedHashMap<>();
        new CommandLine(new Commands(nowhere, nowhere, Optional.empty(), () -> 0))
                .getSubcommands()
                .forEach((name, command) -> specs.put(name, command.getCommandSpec()));
        return specs;
    }

    static List<String> commands() {
        return List.copyOf(specs().keySet());
    }

    private static CommandSpec spec(String command) {
        return Objects.requireNonNull(specs().get(command));
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static boolean takesValue(ArgSpec argument) {
        return argument.arity().max() > 0;
    }

    /** What a command needs, in a form that is right. */
    private Map<String, String> needed(String command) {
        Map<String, String> needed = new LinkedHashMap<>();
        switch (command) {
            case "plan" -> needed.put("SCENARIO", scenario.toString());
            case "list" -> needed.put("WHAT", "drinks");
            case "fit" -> {
                needed.put("LOG", log.toString());
                needed.put("--in", "refrigerator 5C");
            }
            case "predict" -> {
                needed.put("--from", "22C");
                needed.put("--through", "air 24C for 1h");
            }
            case "ice" ->
                Map.of("--from", "16C", "--high", "8C", "--ready", "1h", "--until", "2h", "--air", "27C")
                        .forEach(needed::put);
            default -> throw new AssertionError(command + ": say here what it needs");
        }
        if (!needed.containsKey("SCENARIO") && !needed.containsKey("WHAT")) {
            needed.put("--vessel", "750 mL");
            needed.put("--drink", "wine 12.5 %");
        }
        return needed;
    }

    private static List<String> line(String command, Map<String, String> values) {
        List<String> line = new ArrayList<>(List.of(command));
        values.forEach((name, value) -> line.addAll(name.startsWith("--") ? List.of(name, value) : List.of(value)));
        return line;
    }

    private static CommandLineRun run(List<String> line) {
        return CommandLineRun.of(line.toArray(String[]::new));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void whatIsNeededIsMissed(String command) {
        Map<String, String> needed = needed(command);
        assertThat(spec(command).args().stream().filter(ArgSpec::required).map(EveryArgumentTest::name))
                .containsExactlyInAnyOrderElementsOf(needed.keySet());
        for (String name : needed.keySet()) {
            Map<String, String> without = new LinkedHashMap<>(needed);
            without.remove(name);
            run(line(command, without)).assertRefused(ExitStatus.USAGE, command + ":", name, "--help");
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void optionsWithoutTheirValueOrTwiceAreRefused(String command) {
        for (OptionSpec option : spec(command).options()) {
            String name = name(option);
            Map<String, String> needed = needed(command);
            needed.remove(name);
            List<String> line = line(command, needed);
            if (takesValue(option)) {
                run(with(line, name)).assertRefused(ExitStatus.USAGE, name);
            } else {
                run(with(line, name + "=x")).assertRefused(ExitStatus.USAGE, name);
            }
            if (!option.isMultiValue()) {
                List<String> once = takesValue(option) ? List.of(name, "1") : List.of(name);
                List<String> twice = new ArrayList<>(with(line, once.toArray(String[]::new)));
                twice.addAll(once);
                run(twice).assertRefused(ExitStatus.USAGE, name);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyWrongValueIsRefused(String command) throws IOException {
        List<String> before = names();
        for (ArgSpec argument : spec(command).args()) {
            for (String wrong : WRONG) {
                if (takesValue(argument) && !isAllowed(name(argument), wrong)) {
                    Map<String, String> values = needed(command);
                    values.put(name(argument), isFile(argument) ? inNoFolder(wrong) : wrong);
                    CommandLineRun run = run(line(command, values));
                    String what = command + " " + name(argument) + " " + Refusal.quoted(wrong) + ": " + run.err();
                    assertThat(run.status()).as(what).isIn(REFUSALS);
                    assertThat(run.err()).as(what).containsAnyOf(name(argument), "Unknown option: '" + wrong + "'");
                    run.assertRefused(run.status(), "");
                }
            }
        }
        assertThat(names()).isEqualTo(before);
    }

    /** Texts that are looked for may be any; an offset is a zone. */
    private static boolean isAllowed(String name, String value) {
        return (name.equals("--like") && value.length() < HUGE) || (name.equals("--zone") && value.equals("-1"));
    }

    private static boolean isFile(ArgSpec argument) {
        return argument.paramLabel().equals("FILE");
    }

    /** A file of a strange name would be written; one in a folder that is not there is not. */
    private String inNoFolder(String name) {
        return name.isBlank() ? name : directory.resolve("missing") + "/" + name;
    }

    @ParameterizedTest
    @MethodSource("commands")
    void whereNothingCanBeWrittenNothingIs(String command) throws IOException {
        Path kept = Files.writeString(directory.resolve("kept"), "kept");
        Path locked = Files.writeString(directory.resolve("locked"), "kept");
        Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r--r--r--"));
        List<Path> targets = new ArrayList<>(List.of(
                directory,
                directory.resolve("missing/answer"),
                kept.resolve("under"),
                directory.resolve("x".repeat(300))));
        // Whoever runs this may be allowed everything.
        if (!Files.isWritable(locked)) {
            targets.add(locked);
        }
        List<String> before = names();
        for (ArgSpec argument : spec(command).args()) {
            for (Path target : isFile(argument) ? targets : List.<Path>of()) {
                run(with(line(command, needed(command)), name(argument), target.toString()))
                        .assertRefused(ExitStatus.NOT_WRITABLE, name(argument), "expected");
            }
        }
        assertThat(names()).isEqualTo(before);
        assertThat(kept).hasContent("kept");
        assertThat(locked).hasContent("kept");
    }

    /** What cannot be a scenario or a log: cut short, of another encoding, empty, no text at all. */
    @Test
    void brokenFilesAreRefused() throws IOException {
        byte[] noise = new byte[5000];
        new Random(17).nextBytes(noise);
        String json = CommandsTest.small().replace("Small", "Sm\u00e4ll");
        List<byte[]> scenarios = new ArrayList<>(List.of(
                new byte[0],
                noise,
                new byte[5000],
                json.getBytes(StandardCharsets.ISO_8859_1),
                json.getBytes(StandardCharsets.UTF_16LE),
                json.getBytes(StandardCharsets.UTF_16),
                (json + json).getBytes(StandardCharsets.UTF_8),
                json.replace("20", "1e300").getBytes(StandardCharsets.UTF_8),
                json.replace("20", "NaN").getBytes(StandardCharsets.UTF_8),
                "x".repeat(HUGE).getBytes(StandardCharsets.UTF_8)));
        for (int end = 1; end < json.length() - 2; end += 97) {
            scenarios.add(json.substring(0, end).getBytes(StandardCharsets.UTF_8));
        }
        for (byte[] content : scenarios) {
            Files.write(scenario, content);
            run(line("plan", needed("plan"))).assertRefused(ExitStatus.BAD_INPUT, "SCENARIO", "scenario.json");
        }
        String csv = goodLog();
        List<byte[]> logs = List.of(
                new byte[0],
                noise,
                new byte[5000],
                new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF},
                csv.substring(0, csv.indexOf('\n')).getBytes(StandardCharsets.UTF_8),
                csv.substring(0, csv.indexOf("20,")).getBytes(StandardCharsets.UTF_8),
                csv.replaceAll(",[0-9.]+\n", ",1e300\n").getBytes(StandardCharsets.UTF_8),
                csv.replaceAll(",[0-9.]+\n", ",NaN\n").getBytes(StandardCharsets.UTF_8),
                csv.replaceAll("\n[0-9]+,", "\n1e300,").getBytes(StandardCharsets.UTF_8),
                csv.replace("\n10,", "\n\"10,").getBytes(StandardCharsets.UTF_8),
                "x".repeat(HUGE).getBytes(StandardCharsets.UTF_8),
                ",".repeat(HUGE).getBytes(StandardCharsets.UTF_8),
                "1,2\n".repeat(HUGE / 4).getBytes(StandardCharsets.UTF_8));
        for (byte[] content : logs) {
            Files.write(log, content);
            run(line("fit", needed("fit"))).assertRefused(ExitStatus.BAD_INPUT, "LOG", "log.csv");
        }
    }

    /** A byte order mark and another encoding that says what it is change nothing. */
    @Test
    void filesOfOtherEncodingsThatCanBeTold() throws IOException {
        List<String> fit = with(line("fit", needed("fit")), "--csv");
        String expected = run(fit).out();
        assertThat(expected).contains("factor on air film");
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            Files.writeString(log, "\uFEFF" + goodLog(), charset);
            assertThat(run(fit).out()).as(charset.name()).isEqualTo(expected);
        }
    }

    /** Without a command there is one argument, the scenario. */
    @Test
    void hugeArgumentsWithoutACommandAreRefused() {
        for (String wrong : WRONG) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int status = Main.run(
                    new String[] {wrong},
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8));
            assertThat(status).isEqualTo(Main.REFUSED);
            assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(1);
            assertThat(err.toString(StandardCharsets.UTF_8))
                    .hasSizeLessThan(1200)
                    .doesNotContain("Exception");
            assertThat(out.size()).isZero();
        }
    }

    private static List<String> with(List<String> line, String... more) {
        return Stream.concat(line.stream(), Arrays.stream(more)).collect(Collectors.toList());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.walk(directory)) {
            return files.map(Path::toString).sorted().toList();
        }
    }
}
