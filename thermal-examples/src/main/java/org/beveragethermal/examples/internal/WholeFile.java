/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Files that are there whole or not at all. */
public final class WholeFile {

    private WholeFile() {}

    /**
     * Writes a text as UTF-8: beside its place first, then moved there. If it fails, what was there before is still there, and nothing else
     * is left.
     *
     * @param file where to; its folder exists
     * @param text the text
     * @throws IOException if it cannot be written
     */
    public static void write(Path file, String text) throws IOException {
        Path whole = file.toAbsolutePath();
        Path folder = whole.getParent();
        if (folder == null || Files.isDirectory(whole)) {
            throw new IOException("expected a file, not a folder");
        }
        if (!Files.isDirectory(folder)) {
            throw new IOException("expected a folder that exists: " + folder);
        }
        // Not a temporary file of the JDK: that could be read by its owner alone, and so could what it becomes.
        Path part = folder.resolve("." + whole.getFileName() + "."
                + ProcessHandle.current().pid() + "-" + Thread.currentThread().getId() + ".part");
        try {
            Files.writeString(part, text, StandardCharsets.UTF_8);
            try {
                Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
