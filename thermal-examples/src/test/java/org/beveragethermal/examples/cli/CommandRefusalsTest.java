/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused: one line that says what was given, where, and what is allowed; a status; nothing half-written. */
class CommandRefusalsTest {

    private static final List<String> PREDICT = List.of(
            "predict",
            "--vessel",
            "750 mL",
            "--drink",
            "wine 12.5 %",
            "--from",
            "22C",
            "--through",
            "air 24C for 1h",
            "--until",
            "23C",
            "--every",
            "10min",
            "--draws",
            "20",
            "--width",
            "80",
            "--scale",
            "C",
            "--limit",
            "1h");
    private static final List<String> ICE = List.of(
            "ice",
            "--vessel",
            "750 mL",
            "--drink",
            "wine 12 %",
            "--from",
            "16C",
            "--high",
            "8C",
            "--ready",
            "1h",
            "--until",
            "2h",
            "--air",
            "27C",
            "--count",
            "1",
            "--low",
            "0C",
            "--humidity",
            "50%",
            "--diameter",
            "240mm",
            "--height",
            "260mm",
            "--block",
            "30mm",
            "--ice-at",
            "-10C",
            "--water-at",
            "15C",
            "--at-hand",
            "5kg",
            "--top-ups",
            "0",
            "--draws",
            "10");
    private static final List<String> FIT = List.of(
            "fit",
            "no-such.csv",
            "--vessel",
            "750 mL",
            "--drink",
            "wine 12 %",
            "--in",
            "air 20C",
            "--zone",
            "UTC",
            "--unit",
            "C",
            "--dates",
            "day-first",
            "--factor",
            "air-film");
    private static final Map<String, List<String>> LINES = Map.of("predict", PREDICT, "ice", ICE, "fit", FIT);
    private static final List<String> WRONG = List.of(
            "",
            " ",
            "x",
            "12",
            "1e99C",
            "99999999999999999999",
            "-5",
            "NaN",
            "9".repeat(5000),
            "\u0000",
            "5C 5C",
            "750 mL mL",
            "\u202e",
            "1,5C",
            "0x10C",
            "٣C");

    @TempDir
    Path directory;

    /** Each option in turn has each wrong value; none is passed over, none breaks a line or a program. */
    @ParameterizedTest
    @ValueSource(strings = {"predict", "ice", "fit"})
    void everyWrongValueIsRefusedInOneLine(String command) {
        List<String> line = Objects.requireNonNull(LINES.get(command));
        for (int i = command.equals("fit") ? 2 : 1; i < line.size(); i += 2) {
            for (String wrong : WRONG) {
                boolean allowed =
                        wrong.equals("12") && List.of("--draws", "--count").contains(line.get(i));
                // An offset is a zone.
                boolean offset = wrong.equals("-5") && line.get(i).equals("--zone");
                List<String> with = new ArrayList<>(line);
                with.set(i + 1, wrong);
                if (!allowed && !offset) {
                    CommandLineRun run = run(with);
                    assertThat(run.status()).as(line.get(i) + " " + wrong).isEqualTo(ExitStatus.USAGE);
                    run.assertRefused(ExitStatus.USAGE, line.get(i).substring(2));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--through|air 24C|\"for\" with a duration",
                "--through|air for 1h|\"air T [moving SPEED]",
                "--through|attic 24C for 1h|refrigerator T",
                "--through|air 24 for 1h|expected",
                "--through|air 24C for 61d|at most 60 days",
                "--through|air 24C for 0min|above 0",
                "--through|air 24C fan 1m/s for 1h|no \"fan\" for air",
                "--through|air 24C moving for 1h|a quantity behind each word",
                "--through|air 24C lying 3m/s for 1h|a quantity behind each word",
                "--through|air 24C moving 1m/s moving 2m/s for 1h|once only",
                "--through|refrigerator 150C for 1h|what can be",
                "--through|ice-water 3C for 1h|ice-water [ice KG]",
                "--through|ice-water ice 900kg for 1h|900",
                "--through|tap 12C for 1h|a flow, such as",
                "--vessel|751 mL|\"list vessels\" shows them all",
                "--vessel|amphora|a whole name",
                "--drink|wine|a percentage behind the name",
                "--drink|wine 99 %|wine 99 %",
                "--drink|water 12 %|more than this drink has",
                "--drink|fortified wine 19 %|its sugar",
                "--drink|sparkling-dri 12 %|\"list styles\"",
                "--from|22|a temperature with its unit",
                "--from|22R|units: c, f, k",
                "--from|199C|expected",
                "--until|-300C|a temperature from -100C to 200C",
                "--every|1s|at most 2000 rows",
                "--width|39|a whole number from 40 to 400",
                "--scale|R|C, F or K",
                "--draws|19|a whole number from 20 to 10000",
            })
    void refusalsSayWhatIsAllowed(String option, String given, String allowed) {
        List<String> line = new ArrayList<>(PREDICT);
        line.set(line.indexOf(option) + 1, given);
        run(line).assertRefused(ExitStatus.USAGE, option, allowed);
    }

    @Test
    void unknownOptionsAndCombinationsAreRefused() {
        run(with(PREDICT, "--colour", "red")).assertRefused(ExitStatus.USAGE, "--colour");
        run(with(PREDICT, "--json", "--csv")).assertRefused(ExitStatus.USAGE, "--json and --csv");
        run(with(PREDICT, "--from", "3C")).assertRefused(ExitStatus.USAGE, "--from");
        run(with(PREDICT, "@file")).assertRefused(ExitStatus.USAGE, "@file");
        run(List.of("list")).assertRefused(ExitStatus.USAGE, "WHAT");
        run(List.of("list", "people"))
                .assertRefused(ExitStatus.USAGE, "\"people\"", "vessels, drinks, styles, materials");
        run(List.of("list", "drinks", "more")).assertRefused(ExitStatus.USAGE, "more");
        run(List.of("plan")).assertRefused(ExitStatus.USAGE, "SCENARIO");
        run(List.of("plan", "a\0b")).assertRefused(ExitStatus.USAGE, "SCENARIO");
        run(List.of("plan", "x.json", "--advice", "long")).assertRefused(ExitStatus.USAGE, "--advice");
        run(List.of("fit")).assertRefused(ExitStatus.USAGE, "LOG");
    }

    @Test
    void filesThatCannotBeReadHaveTheirStatus() throws IOException {
        run(FIT).assertRefused(ExitStatus.BAD_INPUT, "no-such.csv", "does not exist");
        for (String content :
                List.of("", "\0\0\0\0", "hello", "{\"a\":1}", "time,temp\n", "minutes,C\n1,2\n", "x".repeat(500_000))) {
            Path file = Files.writeString(directory.resolve("log.csv"), content);
            List<String> line = new ArrayList<>(FIT.subList(0, 8));
            line.set(1, file.toString());
            run(line).assertRefused(ExitStatus.BAD_INPUT, "log.csv");
            Path scenario = Files.writeString(directory.resolve("evening.json"), content);
            run(List.of("plan", scenario.toString())).assertRefused(ExitStatus.BAD_INPUT, "evening.json");
        }
        run(List.of("plan", directory.toString())).assertRefused(ExitStatus.BAD_INPUT, "is a directory");
        run(List.of("fit", directory.toString(), "--vessel", "750mL", "--drink", "water", "--in", "air 20C"))
                .assertRefused(ExitStatus.BAD_INPUT, "is no file");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--html", "--to"})
    void outputThatCannotBeWrittenLeavesNothingHalfWritten(String option) throws IOException {
        Path file = Files.writeString(directory.resolve("file"), "kept");
        for (String target : List.of(
                directory.toString(),
                directory.resolve("missing/answer").toString(),
                file.resolve("under-a-file").toString(),
                directory.resolve("x".repeat(300)).toString())) {
            run(List.of("list", "drinks", option, target)).assertRefused(ExitStatus.NOT_WRITABLE, option, "expected");
        }
        run(List.of("list", "drinks", option, "")).assertRefused(ExitStatus.USAGE, option);
        run(List.of("list", "drinks", option, "a\0b")).assertRefused(ExitStatus.USAGE, option);
        // A refusal leaves what was there.
        run(List.of("list", "people", option, file.toString())).assertRefused(ExitStatus.USAGE, "people");
        assertThat(file).hasContent("kept");
        assertThat(names()).containsExactly("file");
        assertThat(run(List.of("list", "drinks", option, file.toString())).status())
                .isEqualTo(ExitStatus.DONE);
        assertThat(Files.readString(file)).contains("Drinks that can be named");
        assertThat(names()).containsExactly("file");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.map(path -> String.valueOf(path.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void outputThatBreaksHasItsStatus() {
        OutputStream broken = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("full");
            }
        };
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        ExitStatus status = new Commands(
                        new PrintStream(broken, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        Optional.empty(),
                        System::nanoTime)
                .run(new String[] {"list", "drinks"});
        assertThat(status).isEqualTo(ExitStatus.NOT_WRITABLE);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("standard output");
    }

    /** The clock of the test moves by a millisecond at each look, so that time runs out without waiting. */
    @Test
    void workEndsWhenItsTimeIsOver() throws IOException {
        Path page = directory.resolve("page.html");
        run(List.of(
                        "predict",
                        "--vessel",
                        "750 mL",
                        "--drink",
                        "water",
                        "--from",
                        "22C",
                        "--through",
                        "air 5C for 2h",
                        "--draws",
                        "500",
                        "--limit",
                        "0.1s",
                        "--html",
                        page.toString()))
                .assertRefused(ExitStatus.CANCELLED, "--limit");
        Path scenario = Files.writeString(directory.resolve("small.json"), CommandsTest.small());
        run(List.of("plan", scenario.toString(), "--limit", "0.01s")).assertRefused(ExitStatus.CANCELLED, "plan");
        assertThat(page).doesNotExist();
    }

    private static List<String> with(List<String> line, String... more) {
        List<String> longer = new ArrayList<>(line);
        longer.addAll(List.of(more));
        return longer;
    }

    private static CommandLineRun run(List<String> line) {
        return CommandLineRun.of(line.toArray(String[]::new));
    }
}
