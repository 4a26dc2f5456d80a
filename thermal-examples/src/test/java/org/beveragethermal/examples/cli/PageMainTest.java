/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page by command: written whole, or refused in one line with nothing written. */
class PageMainTest {

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        return PageMain.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private Path scenario() throws IOException {
        Path file = folder.resolve("small.json");
        try (var in = Objects.requireNonNull(PageMainTest.class.getResourceAsStream("small.json"))) {
            Files.write(file, in.readAllBytes());
        }
        return file;
    }

    @Test
    void writesThePage() throws IOException {
        Path page = folder.resolve("page.html");
        assertThat(run(scenario().toString(), page.toString())).isEqualTo(Main.DONE);
        assertThat(page)
                .content(StandardCharsets.UTF_8)
                .startsWith("<!DOCTYPE html>")
                .endsWith("</html>\n");
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test
    void refusesInOneLineAndWritesNothing() throws IOException {
        String small = scenario().toString();
        String page = folder.resolve("page.html").toString();
        String[][] wrong = {
            {},
            {small},
            {small, page, "more"},
            {folder.resolve("missing.json").toString(), page},
            {small, folder.toString()},
            {small, folder.resolve("missing").resolve("page.html").toString()},
            {small, "a\0b"}
        };
        for (String[] args : wrong) {
            err.reset();
            assertThat(run(args)).isEqualTo(Main.REFUSED);
            assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(1);
        }
        assertThat(out.size()).isZero();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }
}
