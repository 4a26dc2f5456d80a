/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/** What a command returned and printed, run with a clock of its own that moves by a millisecond each time it is read. */
record CommandLineRun(ExitStatus status, String out, String err) {

    static CommandLineRun of(String... args) {
        return of(Optional.empty(), args);
    }

    static CommandLineRun of(Optional<String> columns, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        AtomicLong clock = new AtomicLong();
        ExitStatus status = new Commands(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        columns,
                        () -> clock.addAndGet(1_000_000))
                .run(args);
        return new CommandLineRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** A usual prediction; further arguments follow. */
    static CommandLineRun predict(String... more) {
        List<String> args = new ArrayList<>(
                List.of("predict", "--vessel", "750 mL", "--drink", "wine 12.5 %", "--from", "22C", "--draws", "20"));
        args.addAll(Arrays.asList(more));
        return of(args.toArray(String[]::new));
    }

    void assertRefused(ExitStatus expected, String... parts) {
        assertThat(err).contains(parts);
        assertThat(status).as(err).isEqualTo(expected);
        assertThat(out).isEmpty();
        assertThat(err.lines()).hasSize(1);
        assertThat(err).hasSizeLessThan(1000).doesNotContain("Exception", "\tat ");
    }
}
