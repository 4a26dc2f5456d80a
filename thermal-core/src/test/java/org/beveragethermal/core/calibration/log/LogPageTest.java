/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds docs/logs.md to the files that it speaks of. */
class LogPageTest {
    private static final Path FILES = Path.of("src/test/resources/org/beveragethermal/core/calibration/log");

    static List<String> lines() throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("docs/logs.md"))) {
            return lines.filter(line -> line.startsWith("| `")).toList();
        }
    }

    private static List<String> cells(String line) {
        return Stream.of(line.replace("\\|", "\u0001").split("\\|"))
                .skip(1)
                .map(cell -> cell.replace('\u0001', '|').replace("`", "").strip())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void lineSaysWhatTheReportSays(String line) throws IOException {
        List<String> cells = cells(line);
        LogFormat.Builder told = LogFormat.builder();
        if (cells.get(3).contains("zone")) {
            told.zone(ZoneId.of("Europe/Vienna"));
        }
        if (cells.get(3).contains("form")) {
            told.timeForm(TimeForm.SERIAL_1904);
        }
        LogReport report = DialectsTest.read(cells.get(0), told.build()).report();
        String separator = report.separator() == '\t' ? "tab" : String.valueOf(report.separator());
        assertThat(cells.get(1)).isEqualTo(separator + " " + report.decimalMark());
        assertThat(cells.get(2)).isEqualTo(report.timeForm().text());
        assertThat(cells.get(4)).isEqualTo(Long.toString(report.rows()));
        assertThat(cells.get(5)).isEqualTo(Long.toString(report.keptReadings()));
    }

    @Test
    void eachFileHasItsLine() throws IOException {
        List<String> onPage =
                lines().stream().map(line -> cells(line).get(0)).sorted().toList();
        try (Stream<Path> files = Files.list(FILES)) {
            assertThat(onPage)
                    .isEqualTo(files.map(file -> file.getFileName().toString())
                            .filter(name -> !name.equals("README.md"))
                            .sorted()
                            .toList());
        }
    }
}
