/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Snippets in the documentation of packages compile, and every public type of the library is used by an example, a snippet or a test of this
 * module: nothing is offered that nobody has tried to use. README.md is held by {@link ReadmeTest}.
 */
class PublicTypesInUseTest {

    private static final Path ROOT = Path.of("..");
    private static final List<String> LIBRARY = List.of("thermal-materials", "thermal-core", "thermal-service");

    /** Public only because one package of the library hands them to another, with what hands them over. */
    private static final Map<String, String> BETWEEN_PACKAGES = Map.of(
            "org.beveragethermal.core.layered.SliceFilms",
                    "paths of slices describe their films to the explanation of a prediction",
            "org.beveragethermal.core.network.JacobianPlaces",
                    "a prepared network tells the solver where derivatives go",
            "org.beveragethermal.core.prediction.Described", "a scene tells a prediction what it is of",
            "org.beveragethermal.core.surroundings.PassingLight",
                    "a surroundings hands light to the contents of a vessel",
            "org.beveragethermal.core.surroundings.Tended", "a bath hands a scene what it is after ice was added");

    private static List<Snippet> snippets = List.of();
    private static ShownCode shown = new ShownCode(List.of(), Set.of());

    @BeforeAll
    static void compile() throws IOException {
        List<Path> sources = new ArrayList<>(sources("thermal-examples"));
        for (String module : LIBRARY) {
            sources.addAll(sources(module));
        }
        Map<String, List<String>> packages = packagesByType(sources);
        List<Snippet> found = new ArrayList<>();
        for (Path source : sources) {
            if (source.endsWith("package-info.java")) {
                found.addAll(Snippet.of(source, packages));
            }
        }
        snippets = List.copyOf(found);
        shown = ShownCode.of(snippets, Path.of("src", "main", "java"), Path.of("src", "test", "java"));
    }

    @Test
    void snippetsOfPackagesCompile() {
        assertThat(snippets).hasSizeGreaterThan(40);
        assertThat(shown.errors()).isEmpty();
    }

    @Test
    void everyPublicTypeIsUsed() throws IOException {
        Set<String> offered = new TreeSet<>();
        for (String module : LIBRARY) {
            packagesByType(sources(module))
                    .forEach((type, packages) -> packages.forEach(name -> offered.add(name + "." + type)));
        }
        assertThat(offered).hasSizeGreaterThan(400);
        assertThat(offered).containsAll(BETWEEN_PACKAGES.keySet());
        assertThat(BETWEEN_PACKAGES.keySet())
                .hasSizeLessThanOrEqualTo(10)
                .doesNotContainAnyElementsOf(shown.usedTypes());
        offered.removeAll(BETWEEN_PACKAGES.keySet());
        assertThat(shown.usedTypes()).containsAll(offered);
    }

    private static List<Path> sources(String module) throws IOException {
        return ShownCode.javaFiles(ROOT.resolve(module).resolve(Path.of("src", "main", "java")));
    }

    /** Packages of the public top-level types outside packages named internal, by simple name. */
    private static Map<String, List<String>> packagesByType(Collection<Path> sources) throws IOException {
        Map<String, List<String>> packages = new TreeMap<>();
        for (Path source : sources) {
            String type = source.getFileName().toString().replace(".java", "");
            String text = Files.readString(source, StandardCharsets.UTF_8);
            Pattern isPublic = Pattern.compile("(?m)^public [\\w -]*\\b(class|interface|record|enum) " + type + "\\b");
            var declared = Pattern.compile("(?m)^package ([\\w.]+);").matcher(text);
            if (isPublic.matcher(text).find()
                    && declared.find()
                    && !declared.group(1).endsWith(".internal")) {
                packages.computeIfAbsent(type, name -> new ArrayList<>()).add(declared.group(1));
            }
        }
        return packages;
    }
}
