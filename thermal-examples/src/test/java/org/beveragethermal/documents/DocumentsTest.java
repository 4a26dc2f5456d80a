/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.beveragethermal.testsupport.Csv;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Compares the accuracy tables of the documents with the rows of this build, or writes them when the system property
 * {@code documents.write} is set. Runs in phase verify, when the tests of all modules have left their rows.
 *
 * <p>A section is named {@code MODULE:TABLE}, the table being {@code by-source}, {@code all}, {@code cases}, {@code
 * common-practice}, {@code rules-of-thumb}, {@code orders} or {@code properties}, or {@code part-NAME} for a table that a test has
 * left whole.
 */
class DocumentsTest {
    private static final String COMMAND = "mvn verify -Ddocuments.write";
    private static final String PART = "part-";
    private static final String PARTS = "document-parts";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "README.md",
                "thermal-materials/docs/accuracy.md",
                "thermal-materials/docs/data-licences.md",
                "thermal-core/docs/accuracy.md",
                "thermal-core/docs/calibration.md",
                "thermal-core/docs/cases.md",
                "thermal-core/docs/measured.md",
                "thermal-core/docs/questions.md",
                "thermal-core/docs/surroundings.md",
                "thermal-service/docs/accuracy.md",
                "thermal-service/docs/cautions.md",
                "thermal-service/docs/planning.md"
            })
    void accuracyTablesAreThoseOfThisBuild(String name) throws IOException {
        Path root = root();
        Path file = root.resolve(name);
        String committed = Files.readString(file, StandardCharsets.UTF_8);
        assertThat(MarkedSections.names(committed))
                .as("marked sections of %s", name)
                .isNotEmpty();

        String current = MarkedSections.rewritten(
                committed, section -> table(root, section, MarkedSections.body(committed, section)));

        writeOrCompare(file, committed, current);
    }

    @ParameterizedTest
    @CsvSource({"thermal-core, measured.svg", "thermal-core, measured-in-use.svg", "thermal-core, surroundings.svg"})
    void drawingsAreThoseOfThisBuild(String module, String name) throws IOException {
        Path directory = root().resolve(module);
        Path file = directory.resolve("docs").resolve(name);
        String committed = Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";

        writeOrCompare(file, committed, rows(directory.resolve("target").resolve(PARTS), name));
    }

    private static void writeOrCompare(Path file, String committed, String current) throws IOException {
        if (System.getProperty("documents.write") != null) {
            Files.writeString(file, current, StandardCharsets.UTF_8);
        } else {
            assertThat(committed)
                    .as("%s differs from the rows of this build; write it anew with: %s", file, COMMAND)
                    .isEqualTo(current);
        }
    }

    private static String table(Path root, String section, String committed) {
        int colon = section.indexOf(':');
        Path target = root.resolve(section.substring(0, Math.max(colon, 0))).resolve("target");
        String table = section.substring(colon + 1);
        if (table.startsWith(PART)) {
            Path parts = target.resolve(PARTS);
            return AccuracyTables.asTheyAre(Csv.parse(rows(parts, table.substring(PART.length()) + ".csv")));
        }
        return switch (table) {
            case "by-source" -> AccuracyTables.bySource(CheckRow.parse(rows(target, "outside-checks.csv")));
            case "all" -> AccuracyTables.all(CheckRow.parse(rows(target, "outside-checks.csv")));
            case "common-practice" -> AccuracyTables.commonPractice(CheckRow.parse(rows(target, "outside-checks.csv")));
            case "rules-of-thumb" -> AccuracyTables.rulesOfThumb(RuleRow.parse(rows(target, "rules-of-thumb.csv")));
            case "cases" -> AccuracyTables.cases(CheckRow.parse(rows(target, "outside-checks.csv")));
            case "orders" -> AccuracyTables.orders(OrderRow.parse(rows(target, "orders.csv")));
            case "properties" -> properties(PropertyRow.parse(rows(target, "properties.csv")), committed);
            default ->
                throw new IllegalArgumentException("section " + section
                        + ": expected MODULE: and by-source, all, cases, common-practice, rules-of-thumb, orders,"
                        + " properties or part-NAME");
        };
    }

    private static String properties(List<PropertyRow> rows, String committed) {
        return PropertyRow.areThorough(rows) ? committed : AccuracyTables.properties(rows);
    }

    private static String rows(Path target, String name) {
        Path file = target.resolve(name);
        assumeTrue(
                Files.exists(file), () -> file + " is missing: only a build of all modules (mvn verify) has the rows");
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path root() {
        Path directory = Path.of(System.getProperty("basedir", System.getProperty("user.dir", ".")))
                .toAbsolutePath();
        while (!Files.isDirectory(directory.resolve(".mvn"))) {
            Path parent = directory.getParent();
            if (parent == null) {
                throw new IllegalStateException(
                        "no directory above the module holds .mvn: expected the project's root");
            }
            directory = parent;
        }
        return directory;
    }
}
