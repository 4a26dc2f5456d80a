/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Holds the theory manual and the code together: classes that it names exist, equations that Javadoc cites exist in it and name the class that
 * cites them, and a number in a formula stands in the source of a class that is named with it. Each package shows its data flow.
 */
class TheoryManualTest {

    private static final Path ROOT = Path.of("..");
    private static final Path MANUAL = ROOT.resolve("thermal-core/docs/theory.md");
    private static final List<String> MODULES =
            List.of("thermal-materials", "thermal-core", "thermal-service", "thermal-examples");

    private static final Pattern ENTRY = Pattern.compile("(?m)^### \\((\\d+\\.\\d+)\\) .*$");
    private static final Pattern CLASS = Pattern.compile("`(org\\.beveragethermal(?:\\.[a-z]+)+\\.[A-Z]\\w*)`");
    private static final Pattern FORMULA = Pattern.compile("(?s)```\\n(.*?)```");
    private static final Pattern DECIMAL = Pattern.compile("(?<![\\w.])\\d+\\.\\d+(?![\\w.]*\\.\\w)");
    private static final Pattern CITATION =
            Pattern.compile("Theory manual, equations? ((?:\\(\\d+\\.\\d+\\)(?:,| and|,\\s*and)? ?)+)");
    private static final Pattern NUMBER = Pattern.compile("\\((\\d+\\.\\d+)\\)");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)(?:#[^)]*)?\\)");

    @Test
    void equationsAreNumberedInOrder() throws IOException {
        int chapter = 0;
        int place = 0;
        for (String number : entries(manual()).keySet()) {
            String[] parts = number.split("\\.", 2);
            int itsChapter = Integer.parseInt(parts[0]);
            int itsPlace = Integer.parseInt(parts[1]);
            boolean next = itsChapter == chapter ? itsPlace == place + 1 : itsChapter == chapter + 1 && itsPlace == 1;
            assertThat(next)
                    .as("equation (%s) after (%d.%d)", number, chapter, place)
                    .isTrue();
            chapter = itsChapter;
            place = itsPlace;
        }
        assertThat(chapter).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"theory.md, 140", "evidence.md, 15"})
    void classesThatAPageNamesExist(String page, int atLeast) throws IOException {
        Set<String> names = classes(Files.readString(MANUAL.resolveSibling(page), StandardCharsets.UTF_8));
        assertThat(names).hasSizeGreaterThanOrEqualTo(atLeast);
        assertThat(names).as("classes that %s names", page).allMatch(TheoryManualTest::exists);
    }

    @Test
    void eachEquationNamesItsCode() throws IOException {
        entries(manual())
                .forEach((number, text) -> assertThat(classes(text))
                        .as("classes of equation (%s)", number)
                        .isNotEmpty());
    }

    @Test
    void numbersOfFormulasStandInTheCode() throws IOException {
        entries(manual()).forEach((number, text) -> {
            StringBuilder code = new StringBuilder();
            classes(text).forEach(name -> code.append(source(name).replace("_", "")));
            for (String decimal : decimals(text)) {
                assertThat(code.toString())
                        .as("%s of equation (%s) in the source of %s", decimal, number, classes(text))
                        .containsPattern("(?<![\\d.])" + Pattern.quote(decimal) + "(?!\\d)");
            }
        });
    }

    @Test
    void equationsThatJavadocCitesExistAndNameTheClass() throws IOException {
        Map<String, String> entries = entries(manual());
        int citations = 0;
        for (Path file : sources()) {
            String text = Files.readString(file, StandardCharsets.UTF_8).replaceAll("\\R\\s*\\*\\s?", " ");
            Matcher citation = CITATION.matcher(text);
            while (citation.find()) {
                Matcher number = NUMBER.matcher(citation.group(1));
                while (number.find()) {
                    citations++;
                    assertThat(entries).as("cited by %s", file).containsKey(number.group(1));
                    if (!file.endsWith("package-info.java")) {
                        assertThat(classes(entries.getOrDefault(number.group(1), "")))
                                .as("classes of equation (%s), which %s cites", number.group(1), file)
                                .contains(className(file));
                    }
                }
            }
        }
        assertThat(citations).isGreaterThan(60);
    }

    @ParameterizedTest
    @ValueSource(strings = {"theory.md", "evidence.md"})
    void equationsThatAPageCitesExist(String page) throws IOException {
        Set<String> numbers = entries(manual()).keySet();
        String text = Files.readString(MANUAL.resolveSibling(page), StandardCharsets.UTF_8);
        assertThat(NUMBER.matcher(text).results().map(found -> found.group(1)))
                .isNotEmpty()
                .allSatisfy(number -> assertThat(numbers).contains(number));
    }

    @Test
    void eachPackageShowsItsDataFlowAndItsUse() throws IOException {
        assertThat(sources())
                .filteredOn(file -> file.endsWith("package-info.java"))
                .hasSizeGreaterThan(40)
                .allSatisfy(file -> assertThat(read(file))
                        .contains("<b>Data flow.</b>\n *\n * <pre>\n")
                        .containsPattern("<b>Use\\.?</b>|Use:"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"theory.md", "evidence.md"})
    void pagesLinkToFilesThatExist(String name) throws IOException {
        Path page = MANUAL.resolveSibling(name);
        Matcher link = LINK.matcher(Files.readString(page, StandardCharsets.UTF_8));
        while (link.find()) {
            assertThat(page.resolveSibling(link.group(1)).normalize())
                    .as("link of %s", name)
                    .exists();
        }
    }

    private static boolean exists(String className) {
        try {
            return Class.forName(className, false, TheoryManualTest.class.getClassLoader())
                    .getName()
                    .equals(className);
        } catch (ClassNotFoundException e) {
            return false;
        }
    }

    private static String manual() throws IOException {
        return Files.readString(MANUAL, StandardCharsets.UTF_8);
    }

    private static Map<String, String> entries(String manual) {
        Map<String, String> entries = new LinkedHashMap<>();
        List<MatchResult> heads = ENTRY.matcher(manual).results().toList();
        for (int i = 0; i < heads.size(); i++) {
            int end = i + 1 < heads.size() ? heads.get(i + 1).start() : manual.length();
            String before = entries.put(
                    heads.get(i).group(1), manual.substring(heads.get(i).end(), end));
            assertThat(before).as("equation (%s) twice", heads.get(i).group(1)).isNull();
        }
        return entries;
    }

    private static Set<String> classes(String text) {
        Set<String> names = new LinkedHashSet<>();
        CLASS.matcher(text).results().forEach(found -> names.add(found.group(1)));
        return names;
    }

    /** Decimal numbers of the formulas, without the numbers of other equations. */
    private static List<String> decimals(String entry) {
        List<String> numbers = new ArrayList<>();
        Matcher formula = FORMULA.matcher(entry);
        while (formula.find()) {
            String plain = NUMBER.matcher(formula.group(1)).replaceAll("");
            DECIMAL.matcher(plain).results().forEach(found -> numbers.add(found.group()));
        }
        return numbers;
    }

    private static String source(String className) {
        String relative = "src/main/java/" + className.replace('.', '/') + ".java";
        return MODULES.stream()
                .map(module -> ROOT.resolve(module).resolve(relative))
                .filter(Files::exists)
                .map(TheoryManualTest::read)
                .findFirst()
                .orElse("");
    }

    private static List<Path> sources() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String module : MODULES) {
            try (Stream<Path> all = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
                all.filter(file -> file.toString().endsWith(".java")).forEach(files::add);
            }
        }
        return files;
    }

    private static String className(Path file) {
        Path java = Path.of("src", "main", "java");
        for (int i = 0; i + 3 < file.getNameCount(); i++) {
            if (file.subpath(i, i + 3).equals(java)) {
                String name =
                        file.subpath(i + 3, file.getNameCount()).toString().replace('\\', '.');
                return name.replace('/', '.').replaceAll("\\.java$", "");
            }
        }
        throw new IllegalStateException(file + ": expected a file below src/main/java");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
