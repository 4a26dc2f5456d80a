/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every package of the libraries says since which version it is there; types without a mark of their own are as old as their package. */
class SinceTest {

    private static final Path ROOT = Path.of(System.getProperty("basedir", "."), "..");
    private static final Pattern SINCE = Pattern.compile("\\* @since (\\d+)\\.(\\d+)\\R");
    private static final Pattern VERSION = Pattern.compile("<revision>(\\d+)\\.(\\d+)\\.\\d+(?:-SNAPSHOT)?</revision>");

    @Test
    void everyPackageSaysSinceWhen() throws IOException {
        List<Path> packages = sources().stream()
                .filter(file -> file.endsWith("package-info.java"))
                .toList();
        assertThat(packages).isNotEmpty();
        assertThat(packages)
                .allSatisfy(file -> assertThat(text(file))
                        .as("@since MAJOR.MINOR in %s", file)
                        .containsPattern(SINCE));
    }

    @Test
    void nothingComesFromTheFuture() throws IOException {
        Matcher version = VERSION.matcher(text(ROOT.resolve("pom.xml")));
        assertThat(version.find()).isTrue();
        assertThat(sources())
                .allSatisfy(
                        file -> assertThat(SINCE.matcher(text(file)).results().map(SinceTest::number))
                                .as("@since in %s", file)
                                .allMatch(since -> since <= number(version)));
    }

    private static List<Path> sources() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String library : List.of("thermal-materials", "thermal-core", "thermal-service")) {
            try (Stream<Path> tree = Files.walk(ROOT.resolve(library).resolve("src/main/java"))) {
                tree.filter(file -> file.toString().endsWith(".java")).forEach(all::add);
            }
        }
        return all;
    }

    private static int number(MatchResult version) {
        return Integer.parseInt(version.group(1)) * 1000 + Integer.parseInt(version.group(2));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
