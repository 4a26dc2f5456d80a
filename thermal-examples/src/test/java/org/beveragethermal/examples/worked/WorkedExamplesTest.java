/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example against its second method and against what others have printed. */
class WorkedExamplesTest {

    static List<String> names() {
        return WorkedExamples.names();
    }

    /** Solutions that several tests look at; they depend on the values alone. */
    private static final Map<List<Object>, Solution> SOLVED = new ConcurrentHashMap<>();

    private static Solution solved(WorkedExample example, Map<String, Double> changes) {
        return SOLVED.computeIfAbsent(List.of(example.id(), changes), key -> example.with(changes));
    }

    private static WorkedExample example(String name) {
        return WorkedExamples.all().stream()
                .filter(each -> each.id().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void thereAreEnough() {
        assertThat(names()).hasSizeGreaterThanOrEqualTo(15).doesNotHaveDuplicates();
        assertThat(WorkedExamples.all().stream()
                        .filter(each -> !each.published().isEmpty())
                        .count())
                .as("examples with a printed answer")
                .isGreaterThanOrEqualTo(13);
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyPartIsThere(String name) {
        WorkedExample example = example(name);
        Solution solution = solved(example, Map.of());
        assertThat(example.question()).contains("{");
        assertThat(solution.given()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(solution.steps()).anyMatch(step -> step.formula().isPresent());
        assertThat(solution.checks()).isNotEmpty();
        assertThat(example.whatIfs()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(example.exercises()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(example.lesson()).isNotBlank();
        assertThat(example.teaching()).isNotBlank();
        assertThat(example.sketch().apply(solution).svg("t")).contains("<text");
        solution.steps()
                .forEach(step -> step.formula()
                        .ifPresent(formula -> assertThat(step.result().value())
                                .as(step.result().symbol())
                                .isEqualTo(formula.value())));
    }

    /** The example, each "what if" and each exercise. */
    @ParameterizedTest
    @MethodSource("names")
    void theSecondMethodAgrees(String name) {
        WorkedExample example = example(name);
        Stream.of(
                        Stream.of(Map.<String, Double>of()),
                        example.whatIfs().stream().map(WhatIf::changes),
                        example.exercises().stream().map(Exercise::changes))
                .flatMap(each -> each)
                .forEach(changes -> assertThat(solved(example, changes).checks())
                        .as("%s with %s", name, changes)
                        // Of other glasses than that of the example the library has no limit.
                        .hasSizeGreaterThanOrEqualTo(name.equals("thermal-shock") && !changes.isEmpty() ? 0 : 1)
                        .allSatisfy(check -> assertThat(check.value())
                                .as("%s by %s", check.first().symbol(), check.how())
                                .isCloseTo(check.first().value(), within(check.tolerance()))));
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyWhatIfAndExerciseChangesTheQuestion(String name) {
        WorkedExample example = example(name);
        Solution own = solved(example, Map.of());
        for (Exercise exercise : example.exercises()) {
            exercise.changes()
                    .forEach((symbol, value) -> assertThat(own.value(symbol))
                            .satisfies(given ->
                                    assertThat(given.given()).as(symbol).isTrue()));
            assertThat(solved(example, exercise.changes())
                            .value(exercise.asked())
                            .value())
                    .as(exercise.question())
                    .isNotEqualTo(own.value(exercise.asked()).value());
        }
        assertThat(example.whatIfs())
                .allMatch(change ->
                        solved(example, change.changes()).value(change.asked()).value()
                                != own.value(change.asked()).value());
    }

    /** Figures of others, each worked by the method of the example with the data there. */
    @ParameterizedTest
    @MethodSource("names")
    void whatOthersHavePrintedIsFound(String name) {
        WorkedExample example = example(name);
        for (int i = 0; i < example.published().size(); i++) {
            Published printed = example.published().get(i);
            Value found = solved(example, printed.changes()).value(printed.asked());
            String id = "worked-" + name + "-" + (i + 1);
            OutsideChecks.Check check = printed.read()
                    ? OutsideChecks.published(id, printed.source())
                    : OutsideChecks.fromMemory(id, printed.source());
            check.what("worked example: "
                            + solved(example, printed.changes())
                                    .fill(printed.what())
                                    .replace('\u00a0', ' '))
                    .unit(found.unit())
                    .expected(printed.expected())
                    .within(printed.tolerance())
                    .check(found.value());
        }
    }

    /** What the rule of Bi ≤ 0.1 is for: beyond it one temperature is off by several per cent of the difference that is left. */
    @Test
    void shellsDifferFromOneTemperatureWhereTheBiotNumberIsLarge() {
        WorkedExample example = example("one-temperature");
        List<Solution> large = Stream.concat(
                        example.whatIfs().stream().map(WhatIf::changes),
                        example.exercises().stream().map(Exercise::changes))
                .map(changes -> solved(example, changes))
                .filter(solution -> solution.value("Bi").value() > CoolingExamples.LUMPED)
                .toList();
        assertThat(large).hasSizeGreaterThanOrEqualTo(4).allSatisfy(solution -> {
            double k = solution.value("k").value();
            double drink = solution.value("T_d").value();
            double shells = Networks.sphereMean(
                    solution.value("D").value() / 2,
                    k,
                    k / (solution.value("ρ").value() * solution.value("c").value()),
                    solution.value("h").value(),
                    solution.value("T_0").value(),
                    drink,
                    solution.value("t").value());
            double left = solution.value("T").value() - drink;
            assertThat(Math.abs((shells - drink) / left - 1))
                    .as("at a Biot number of %s", solution.value("Bi").value())
                    .isGreaterThan(0.03);
        });
    }

    /** Answers to exercises once more, by formulas that are typed here and share no code with the examples. */
    @Test
    void answersToExercisesAreThoseOfFormulasTypedHere() {
        assertAnswer("cooling-by-hand", 0, (0.74 * 4260 + 0.5 * 830) / (16 * 0.06) * Math.log(17.0 / 5));
        assertAnswer("cooling-by-hand", 1, 5 + 17 * Math.exp(-3600 * 8.5 * 0.095 / (1.48 * 4260 + 0.95 * 830)));
        assertAnswer("one-temperature", 0, 250 * (0.025 / 6) / 2.8);
        assertAnswer("resistances-in-series", 0, 24 / (1 / 6.0 + 0.004 / 1.0 + 1 / 9.0));
        assertAnswer("a-spoon-in-mulled-wine", 0, 8 + 62 / Math.cosh(0.18 * Math.sqrt(4 * 10 / (200 * 0.008))));
        assertAnswer("method-of-mixtures", 0, (0.2 * 4190 * 90 + 0.3 * 850 * 20) / (0.2 * 4190 + 0.3 * 850));
        assertAnswer("ice-in-the-glass", 0, (1.5 * 4190 * 20 - 0.3 * 333_400) / (1.8 * 4190));
        assertAnswer("freezing-ice-balls", 0, 917 * 333_400 / 18.0 * (0.02 / 66 + 0.0004 / (24 * 2.3)));
        assertAnswer("thermal-shock", 1, 25e6 * 0.78 / (70e9 * 9e-6));
        assertAnswer("scald-time", 0, 30 * Math.pow(5 / 30.0, 0.6));
        assertAnswer("interval-of-a-prediction", 0, intervalAfter(1800));
        assertAnswer("two-stages", 0, 8000 * Math.log(17 / (1 + 7 * Math.exp(0.9) - 5)));
        assertAnswer("two-stages", 1, 1 + 5 * Math.exp(0.6));
    }

    private static double intervalAfter(double s) {
        double left = Math.exp(-s / 7200);
        return 1.645 * Math.hypot((1 - left) * 0.5, 17 * left * s / (7200.0 * 7200) * 700);
    }

    private static void assertAnswer(String name, int number, double expected) {
        WorkedExample example = example(name);
        Exercise exercise = example.exercises().get(number);
        assertThat(solved(example, exercise.changes()).value(exercise.asked()).value())
                .as("%s, exercise %s", name, number)
                .isCloseTo(expected, within(1e-9 * Math.abs(expected)));
    }

    @Test
    void otherValuesCanBeTried() {
        assertThat(WorkedExamples.work("cooling-by-hand", Map.of("h", 12.0)))
                .contains("Given", "h = 12", "Found", "In another way")
                .doesNotContain("{")
                .doesNotContain("NaN");
        assertThat(WorkedExamples.work("scald-time")).contains("14.65");
    }

    @Test
    void badValuesAreRefused() {
        assertThatThrownBy(() -> WorkedExamples.work("cooling"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no example cooling: expected one of [cooling-by-hand");
        assertThatThrownBy(() -> WorkedExamples.work("cooling-by-hand", Map.of("q", 1.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing given is called [q]: expected one of [m, c,");
        assertThatThrownBy(() -> WorkedExamples.work("cooling-by-hand", Map.of("T_w", 4.0)))
                .as("a temperature that is never reached")
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("t_w");
        assertThatThrownBy(() -> WorkedExamples.work("cooling-by-hand", Map.of("h", Double.NaN)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
