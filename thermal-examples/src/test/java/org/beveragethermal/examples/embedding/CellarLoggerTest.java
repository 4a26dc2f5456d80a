/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The logger as a program: what it prints, and its exit status. */
class CellarLoggerTest {

    @TempDir
    private Path folder;

    private ByteArrayOutputStream out = new ByteArrayOutputStream();
    private ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void nothingPrinted() {
        out = new ByteArrayOutputStream();
        err = new ByteArrayOutputStream();
    }

    private int run(Path file) {
        return CellarLogger.run(
                new String[] {file.toString()},
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> 0);
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("cellar.csv"), bytes);
    }

    @Test
    void aFileIsToldOf() throws IOException {
        String csv = CellarReadings.csv(CellarReadings.TAKEN, Duration.ofHours(40), Duration.ofHours(1), 5);
        assertThat(run(file(csv.getBytes(StandardCharsets.UTF_8)))).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("DRIFT: b10037 is warmer")
                .contains("37 bottles, 1487 rows in 0.0 s; 8 readings not used, 0 rows left out")
                .contains("warmest at the end: b10037");
        assertThat(err.size()).isZero();
    }

    @Test
    void rowsThatAreNotUtf8AreLeftOutWithTheirLine() throws IOException {
        String csv = "at,bottle,temperature_celsius\n2027-01-11T05:00:00Z,fl\u00e4che,12\n2027-01-11T05:00:00Z,b2,12\n";
        assertThat(run(file(csv.getBytes(StandardCharsets.ISO_8859_1)))).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8)).startsWith("line 2 is left out: bottle 'fl\uFFFDche'");
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("1 bottles, 2 rows in 0.0 s; 0 readings not used, 1 rows");
    }

    @Test
    void manyBadRowsAreCountedAndNotAllShown() throws IOException {
        String csv = "at,bottle,temperature_celsius\n" + "bad\n".repeat(1000);
        assertThat(run(file(csv.getBytes(StandardCharsets.UTF_8)))).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(21);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("1000 rows left out");
    }

    @Test
    void whatCannotBeReadIsRefused() throws IOException {
        assertThat(run(folder.resolve("none.csv"))).isEqualTo(2);
        assertThat(run(folder)).isEqualTo(2);
        assertThat(run(file(new byte[] {0, 1, 2}))).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).lines())
                .hasSize(3)
                .allMatch(line -> line.startsWith("readings "));
    }
}
