/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Tables and pictures that a test leaves behind for the documents, in {@code target/document-parts} of its module.
 *
 * <p>A table is a file of comma-separated values whose first record is the head; documents show it as it is. A part is written
 * whole, so that rows of an earlier run cannot survive.
 */
public final class DocumentParts {
    private static final String DIRECTORY = "document-parts";

    private DocumentParts() {}

    /**
     * Leaves a table.
     *
     * @param name name of the table, the one by which documents ask for it
     * @param head head of each column
     * @param rows cells, each row as long as the head
     * @throws IllegalArgumentException if a row is longer or shorter than the head
     */
    public static void leaveTable(String name, List<String> head, List<List<String>> rows) {
        RowFile file = RowFile.startedIn(RowFile.moduleTarget().resolve(DIRECTORY), name + ".csv", head);
        rows.forEach(file::add);
    }

    /**
     * Leaves a drawing.
     *
     * @param name name of the drawing, without an ending
     * @param svg its text
     */
    public static void leaveDrawing(String name, String svg) {
        Path directory = RowFile.moduleTarget().resolve(DIRECTORY);
        try {
            Files.createDirectories(directory);
            Files.writeString(directory.resolve(name + ".svg"), svg, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
