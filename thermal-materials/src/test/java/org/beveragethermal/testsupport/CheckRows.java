/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** The two row files of one module's test run; safe for test classes that run at the same time in one JVM. */
final class CheckRows {
    static final String CHECKS_FILE = "outside-checks.csv";
    static final String RULES_FILE = "rules-of-thumb.csv";
    static final List<String> CHECKS_HEADER =
            List.of("id", "source", "what", "expected", "actual", "tolerance", "unit", "kind", "passed");
    static final List<String> RULES_HEADER = List.of("id", "what", "custom_says", "model_says", "unit", "note");

    private final Path directory;

    private CheckRows(Path directory) {
        this.directory = directory;
    }

    /**
     * Starts both files anew with their headers, so that rows of an earlier run cannot survive.
     *
     * @param directory where they lie; made when it does not exist
     */
    static CheckRows startedIn(Path directory) {
        try {
            Files.createDirectories(directory);
            Files.writeString(directory.resolve(CHECKS_FILE), Csv.line(CHECKS_HEADER), StandardCharsets.UTF_8);
            Files.writeString(directory.resolve(RULES_FILE), Csv.line(RULES_HEADER), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new CheckRows(directory);
    }

    void addCheck(List<String> fields) {
        append(CHECKS_FILE, fields);
    }

    void addRule(List<String> fields) {
        append(RULES_FILE, fields);
    }

    private synchronized void append(String file, List<String> fields) {
        try {
            Files.writeString(
                    directory.resolve(file), Csv.line(fields), StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
