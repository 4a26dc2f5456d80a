/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The worked examples, to be worked anew with other values. */
public final class WorkedExamples {

    private static final List<WorkedExample> ALL = Stream.of(
                    CoolingExamples.all(),
                    HeatFlowExamples.all(),
                    IceExamples.all(),
                    DrinkExamples.all(),
                    PlanningExamples.all())
            .flatMap(List::stream)
            .toList();

    private WorkedExamples() {}

    static List<WorkedExample> all() {
        return ALL;
    }

    /**
     * Names of the examples.
     *
     * @return names in the order of the book
     */
    public static List<String> names() {
        return ALL.stream().map(WorkedExample::id).toList();
    }

    /** The number of an example in the book. */
    static int number(String name) {
        int index = names().indexOf(name);
        if (index < 0) {
            throw new IllegalArgumentException("no example " + name + ": expected one of " + names());
        }
        return index + 1;
    }

    /**
     * Works an example with the values of the book.
     *
     * @param name one of {@link #names()}
     * @return what is asked, given and found, as plain text
     * @throws IllegalArgumentException if there is no such example
     */
    public static String work(String name) {
        return work(name, Map.of());
    }

    /**
     * Works an example with other values: a new exercise with its answer.
     *
     * @param name one of {@link #names()}
     * @param changes given values that differ, by symbol, in the units of the example
     * @return what is asked, given and found, as plain text
     * @throws IllegalArgumentException if there is no such example, nothing given has such a symbol, or the values have no answer
     */
    public static String work(String name, Map<String, Double> changes) {
        WorkedExample example = ALL.get(number(name) - 1);
        Solution solution = example.with(changes);
        return example.title() + "\n" + solution.fill(example.question()) + "\n\nGiven\n"
                + solution.given().stream().map(WorkedExamples::line).collect(Collectors.joining())
                + "\nFound\n"
                + solution.steps().stream()
                        .map(Step::result)
                        .map(WorkedExamples::line)
                        .collect(Collectors.joining())
                + "\nIn another way\n"
                + solution.checks().stream()
                        .map(check -> line(check.second()) + "      " + check.how() + "\n")
                        .collect(Collectors.joining());
    }

    private static String line(Value value) {
        return "  " + value.symbol() + " = " + value.text() + "   " + value.name() + "\n";
    }
}
