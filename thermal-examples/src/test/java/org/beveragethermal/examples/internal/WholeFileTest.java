/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is there whole or not at all. */
class WholeFileTest {

    @TempDir
    Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesAndReplaces() throws IOException {
        Path file = folder.resolve("page.html");
        WholeFile.write(file, "first, which is longer");
        WholeFile.write(file, "20 °C");
        assertThat(file).usingCharset(StandardCharsets.UTF_8).hasContent("20 °C");
        assertThat(names()).containsExactly("page.html");
    }

    @Test
    void leavesNothingWhereItFails() throws IOException {
        Path taken = Files.createDirectory(folder.resolve("taken"));
        Files.writeString(taken.resolve("inside"), "kept");
        assertThatIOException().isThrownBy(() -> WholeFile.write(taken, "page")).withMessageContaining("not a folder");
        assertThatIOException()
                .isThrownBy(() -> WholeFile.write(folder.resolve("missing").resolve("page.html"), "page"))
                .withMessageContaining("missing");
        assertThat(names()).containsExactly("taken");
        assertThat(taken.resolve("inside")).hasContent("kept");
    }
}
