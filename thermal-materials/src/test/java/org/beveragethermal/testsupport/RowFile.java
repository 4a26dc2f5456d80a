/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** A file of rows that one module's test run leaves behind; safe for test classes that run at the same time in one JVM. */
final class RowFile {
    private final Path file;
    private final int fields;

    private RowFile(Path file, int fields) {
        this.file = file;
        this.fields = fields;
    }

    /**
     * Starts a file anew with its header, so that rows of an earlier run cannot survive.
     *
     * @param directory where it lies; made when it does not exist
     */
    static RowFile startedIn(Path directory, String name, List<String> header) {
        Path file = directory.resolve(name);
        try {
            Files.createDirectories(directory);
            Files.writeString(file, Csv.line(header), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new RowFile(file, header.size());
    }

    /** The directory of the module whose tests run, for what its build leaves behind. */
    static Path moduleTarget() {
        return Path.of(System.getProperty("basedir", System.getProperty("user.dir", ".")))
                .resolve("target");
    }

    /** Appends a row of as many fields as the header has. */
    synchronized void add(List<String> row) {
        if (row.size() != fields) {
            throw new IllegalArgumentException("row " + row + ": expected " + fields + " fields");
        }
        try {
            Files.writeString(file, Csv.line(row), StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
