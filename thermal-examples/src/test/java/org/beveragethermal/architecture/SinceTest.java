/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every package of the libraries says since which version it is there; types without a mark of their own are as old as their package. */
class SinceTest {

    private static final Path ROOT = Path.of(System.getProperty("basedir", "."), "..");
    private static final Pattern SINCE = Pattern.compile("\\* @since (\\d+)\\.(\\d+)(?:\\.(\\d+))?\\R");
    private static final Pattern VERSION =
            Pattern.compile("<revision>(\\d+)\\.(\\d+)\\.(\\d+)(?:-SNAPSHOT)?</revision>");

    @Test
    void everyPackageSaysSinceWhen() throws IOException {
        for (String library : List.of("thermal-materials", "thermal-core", "thermal-service")) {
            try (Stream<Path> tree = Files.walk(ROOT.resolve(library).resolve("src/main/java"))) {
                List<Path> packages =
                        tree.filter(file -> file.endsWith("package-info.java")).toList();
                assertThat(packages).isNotEmpty();
                assertThat(packages)
                        .allSatisfy(file -> assertThat(text(file))
                                .as("@since MAJOR.MINOR in %s", file)
                                .containsPattern(SINCE));
            }
        }
    }

    @Test
    void nothingComesFromTheFuture() throws IOException {
        Matcher version = VERSION.matcher(text(ROOT.resolve("pom.xml")));
        assertThat(version.find()).isTrue();
        try (Stream<Path> tree = Stream.of("thermal-materials", "thermal-core", "thermal-service")
                .flatMap(library -> walk(ROOT.resolve(library).resolve("src/main/java")))) {
            assertThat(tree.filter(file -> file.toString().endsWith(".java")))
                    .allSatisfy(file ->
                            assertThat(newest(file)).as("@since in %s", file).isLessThanOrEqualTo(number(version)));
        }
    }

    private static long newest(Path file) {
        return SINCE.matcher(text(file))
                .results()
                .mapToLong(SinceTest::number)
                .max()
                .orElse(0);
    }

    private static long number(MatchResult version) {
        String patch = version.group(3);
        return (Long.parseLong(version.group(1)) * 1000 + Long.parseLong(version.group(2))) * 1000
                + (patch == null ? 0 : Long.parseLong(patch));
    }

    private static Stream<Path> walk(Path folder) {
        try {
            return Files.walk(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
