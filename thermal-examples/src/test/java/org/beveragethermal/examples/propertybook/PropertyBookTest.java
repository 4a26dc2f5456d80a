/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the committed property book to the code, or writes it when the system property {@code documents.write} is set. */
class PropertyBookTest {

    private static final Path BOOK =
            Path.of(System.getProperty("basedir", "."), "../thermal-materials/docs/property-book");
    private static final Pattern REFERENCE = Pattern.compile("(?:src|href)=\"([^\"]+)\"");

    private final Map<String, String> files = PropertyBook.files();

    @Test
    void committedBookIsThatOfTheCode() throws IOException {
        if (System.getProperty("documents.write") != null) {
            PropertyBook.write(BOOK);
        }
        Map<String, String> committed = committed();
        assertThat(committed.keySet())
                .as("files of the property book; write them anew with: mvn verify -Ddocuments.write")
                .isEqualTo(files.keySet());
        files.forEach((name, text) -> assertThat(committed)
                .as("%s of the property book; write it anew with: mvn verify -Ddocuments.write", name)
                .containsEntry(name, text));
    }

    @Test
    void everyReferenceLeadsToAFile() {
        files.forEach((name, text) -> {
            Matcher reference = REFERENCE.matcher(text);
            while (reference.find()) {
                assertThat(files).as("reference in %s", name).containsKey(reference.group(1));
            }
        });
    }

    @Test
    void noFigureIsLeftOut() {
        String pages = String.join(
                "",
                files.entrySet().stream()
                        .filter(file -> file.getKey().endsWith(".html"))
                        .map(Map.Entry::getValue)
                        .toList());
        assertThat(files.keySet().stream().filter(name -> name.endsWith(".svg")))
                .isNotEmpty()
                .allSatisfy(name -> assertThat(pages).contains("src=\"" + name + "\""));
    }

    @Test
    void figuresAndPagesHoldNumbersOnly() {
        files.forEach(
                (name, text) -> assertThat(text).as(name).doesNotContain("NaN").doesNotContain("Infinity"));
    }

    private static Map<String, String> committed() throws IOException {
        Map<String, String> committed = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(BOOK)) {
            paths.filter(Files::isRegularFile)
                    .forEach(path ->
                            committed.put(BOOK.relativize(path).toString().replace('\\', '/'), read(path)));
        }
        return committed;
    }

    private static String read(Path path) {
        try {
            return Files.readString(path, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
