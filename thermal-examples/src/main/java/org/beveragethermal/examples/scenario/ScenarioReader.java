/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Reads scenarios from JSON files in UTF-8. At most 1 MiB is read; unknown fields, duplicate fields, references that
 * lead nowhere and quantities out of their range are refused.
 */
public final class ScenarioReader {
    /** The longest file that is read [byte]. */
    public static final int LONGEST_FILE_BYTES = 1 << 20;

    private ScenarioReader() {}

    /**
     * Reads a scenario from a file.
     *
     * @param file the file
     * @return the scenario
     * @throws ScenarioException if the file cannot be read or its content is refused
     */
    public static Scenario read(Path file) {
        String name = file.toString();
        return parse(name, decode(name, bytes(name, file)));
    }

    /**
     * Reads a scenario from text.
     *
     * @param name what messages call the text, such as a file name
     * @param json the text, at most {@link #LONGEST_FILE_BYTES} characters
     * @return the scenario
     * @throws ScenarioException if the text is refused
     */
    public static Scenario parse(String name, String json) {
        if (json.length() > LONGEST_FILE_BYTES) {
            throw ScenarioException.ofFile(
                    name, "is too long: expected at most " + LONGEST_FILE_BYTES + " characters, got " + json.length());
        }
        return new ScenarioParts(JsonDocument.parse(name, json)).scenario();
    }

    private static byte[] bytes(String name, Path file) {
        if (Files.isDirectory(file)) {
            throw ScenarioException.ofFile(name, "is a directory: expected a JSON file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LONGEST_FILE_BYTES + 1);
            if (bytes.length > LONGEST_FILE_BYTES) {
                throw ScenarioException.ofFile(
                        name, "is too long: expected at most " + LONGEST_FILE_BYTES + " bytes (1 MiB)");
            }
            return bytes;
        } catch (NoSuchFileException e) {
            throw ScenarioException.ofFile(name, "does not exist: expected a JSON file");
        } catch (IOException e) {
            throw ScenarioException.ofFile(name, "cannot be read: " + OneLine.of(String.valueOf(e.getMessage())));
        }
    }

    private static String decode(String name, byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw ScenarioException.ofFile(name, "is not text in UTF-8: expected a JSON file");
        }
    }
}
