/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.beveragethermal.examples.internal.WholeFile;

/** Writes a whole file or none: into another file of the same folder first, which is then moved. */
final class SafeFile {
    private SafeFile() {}

    /** A path that a file can be written to, as far as can be said before. */
    static Path target(String where, String given) {
        try {
            Path path = Path.of(given);
            if (given.isBlank() || path.getFileName() == null) {
                throw Refusal.usage(where, given, "the path of a file");
            }
            return path;
        } catch (InvalidPathException e) {
            throw Refusal.usage(where, given, "the path of a file (" + e.getReason() + ")");
        }
    }

    /** Refuses what cannot be written, as far as can be said before. */
    static void check(String where, Path file) {
        try {
            place(where, file);
        } catch (IOException e) {
            throw notWritable(where, file, e);
        }
    }

    static void write(String where, Path file, String text) {
        try {
            WholeFile.write(place(where, file), text);
        } catch (IOException e) {
            throw notWritable(where, file, e);
        }
    }

    /** Where the file will lie, in a folder that is there and may be written to. */
    private static Path place(String where, Path file) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw notWritable(where, file, "is no file: expected a file or a name that is free");
        }
        Path whole = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path folder = whole.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw notWritable(where, file, "its folder does not exist: expected a folder that can be written to");
        }
        if (!Files.isWritable(folder)) {
            throw notWritable(where, file, "its folder cannot be written to: expected one that can");
        }
        return whole;
    }

    private static Refusal notWritable(String where, Path file, IOException e) {
        String reason = e instanceof FileSystemException f && f.getReason() != null
                ? f.getReason()
                : e.getClass().getSimpleName();
        return notWritable(where, file, "cannot be written (" + reason + "): expected a folder that can be written to");
    }

    private static Refusal notWritable(String where, Path file, String why) {
        return new Refusal(ExitStatus.NOT_WRITABLE, where + " " + Refusal.quoted(file.toString()) + ": " + why);
    }
}
