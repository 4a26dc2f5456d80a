/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import net.jqwik.api.Property;
import org.beveragethermal.core.surroundings.BareIce;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.surroundings.SaltedIce;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.testsupport.DocumentParts;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** Runs every setting, checks that no surroundings is left out, and leaves the tables and the drawing of {@code docs/surroundings.md}. */
@Tag("ensemble")
final class ComparedTest {

    private static final Set<String> INSIDE_SHOWN = Set.of("fridge-still", "stream");
    private static final long SEED = 20260102L;
    private static final String ROOT_PACKAGE = "org.beveragethermal.";

    @Test
    void everySettingIsRun() {
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        List<Outcome> outcomes;
        try {
            outcomes = Cases.all().stream()
                    .map(row -> Outcome.of(
                            row, Ensemble.of(row.looking().draws(), SEED).on(threads)))
                    .toList();
        } finally {
            threads.shutdown();
        }
        Report.leave(outcomes, Standings.all(), SEED);
        Report.leaveInsideFilm(Cases.all().stream()
                .filter(row -> INSIDE_SHOWN.contains(row.id()))
                .toList());
        DocumentParts.leaveDrawing("surroundings", Ranges.of(outcomes));

        assertThat(outcomes).extracting(o -> o.row().id()).doesNotHaveDuplicates();
        for (Outcome outcome : outcomes) {
            assertThat(outcome.low()).as(outcome.row().id()).isPositive().isLessThanOrEqualTo(outcome.high());
            assertThat(outcome.shares().stream()
                            .mapToDouble(Outcome.Share::part)
                            .sum())
                    .as(outcome.row().id())
                    .isBetween(1 - 1e-9, 1 + 1e-9);
        }
    }

    @Test
    void equalSeedsGiveEqualTimes() {
        Case row = Cases.all().get(0);
        assertThat(Outcome.of(row, Ensemble.of(5, SEED)).minutes())
                .isEqualTo(Outcome.of(row, Ensemble.of(5, SEED)).minutes())
                .isNotEqualTo(Outcome.of(row, Ensemble.of(5, SEED + 1)).minutes());
    }

    /** Every public kind of surroundings in the package, found among its compiled classes. */
    private static List<String> kindsOfTheLibrary() throws IOException, URISyntaxException {
        Path classes = Path.of(Surroundings.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        String name = Surroundings.class.getPackageName();
        try (Stream<Path> files = Files.list(classes.resolve(name.replace('.', '/')))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(".class") && !file.equals("package-info.class"))
                    .map(file -> name + "." + file.substring(0, file.length() - ".class".length()))
                    .filter(ComparedTest::isKind)
                    .toList();
        }
    }

    private static boolean isKind(String className) {
        try {
            Class<?> found = Class.forName(className);
            return !found.isInterface() && Surroundings.class.isAssignableFrom(found);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(className, e);
        }
    }

    @Test
    void everySurroundingsHasItsRows() throws IOException, URISyntaxException {
        Set<String> kinds = new HashSet<>();
        Standings.all().forEach(standing -> kinds.add(standing.kind().getName()));
        assertThat(kinds)
                .as("surroundings that are accounted for")
                .containsExactlyInAnyOrderElementsOf(kindsOfTheLibrary());
        Set<String> told = new HashSet<>();
        Standings.all().forEach(standing -> told.addAll(standing.rows()));
        assertThat(told)
                .as("settings that are accounted for")
                .containsExactlyInAnyOrderElementsOf(
                        Cases.all().stream().map(Case::id).toList());
        for (Standing standing : Standings.all()) {
            assertThat(Cases.all().stream().filter(row -> standing.rows().contains(row.id())))
                    .as("%s, %s", standing.kind(), standing.what())
                    .isNotEmpty()
                    .allMatch(row -> row.kind() == standing.kind());
        }
    }

    @Test
    void everyLawAndEveryDoubtIsKnown() {
        Set<String> doubts = new HashSet<>(Doubts.none().multipliers().keySet());
        Ensemble.of(2, SEED)
                .run(Doubts.all(), draw -> Doubts.of(draw).multipliers().keySet())
                .forEach(doubts::addAll);
        Stream.of(IceWaterBath.assumptions(), BareIce.assumptions(), SaltedIce.assumptions(), RunningTap.assumptions())
                .flatMap(List::stream)
                .map(Constant::name)
                .forEach(doubts::add);
        for (Standing standing : Standings.all()) {
            assertThat(doubts).containsAll(standing.doubts());
            assertThat(standing.laws()).allMatch(law -> Laws.named(law).isPresent());
        }
    }

    /** A test that is named exists and is run, and one that is said to compare with a source names it. */
    @Test
    void everyTestThatIsNamedExists() throws ReflectiveOperationException, IOException {
        for (Standing standing : Standings.all()) {
            for (Standing.Check check : standing.outside()) {
                assertThat(isTest(check.test())).as(check.test()).isTrue();
                assertThat(text(check.test())).as(check.test()).contains(check.source());
            }
            for (String test : Stream.concat(standing.limits().stream(), standing.refusals().stream())
                    .toList()) {
                assertThat(isTest(test)).as(test).isTrue();
            }
        }
    }

    private static boolean isTest(String test) throws ClassNotFoundException {
        int hash = test.indexOf('#');
        Set<Class<? extends Annotation>> marks = Set.of(Test.class, ParameterizedTest.class, Property.class);
        return Arrays.stream(
                        Class.forName(ROOT_PACKAGE + test.substring(0, hash)).getDeclaredMethods())
                .filter(method -> method.getName().equals(test.substring(hash + 1)))
                .map(Method::getAnnotations)
                .flatMap(Arrays::stream)
                .anyMatch(annotation -> marks.contains(annotation.annotationType()));
    }

    /** The source of a test class, with texts that go over several lines joined. */
    private static String text(String test) throws IOException {
        String name = (ROOT_PACKAGE + test.substring(0, test.indexOf('#'))).replace('.', '/');
        Path module = Path.of(System.getProperty("basedir", ""));
        return Files.readString(module.resolve("src/test/java/" + name + ".java"), StandardCharsets.UTF_8)
                .replaceAll("\"\\s*\\+\\s*\"", "");
    }
}
