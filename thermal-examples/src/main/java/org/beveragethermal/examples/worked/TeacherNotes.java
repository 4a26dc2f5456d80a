/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.beveragethermal.examples.internal.Html;

/** The page for teachers. */
final class TeacherNotes {

    private TeacherNotes() {}

    static String section(List<ExamplePage> pages) {
        return "<section id=\"teaching\">\n<h2>Notes for teachers</h2>\n"
                + Html.paragraph(
                        "Needed: the exponential function and its inverse, for a few examples derivatives. Two hours suffice for one"
                                + " example with its exercises. A path for a school: "
                                + numbers(
                                        "cooling-by-hand",
                                        "method-of-mixtures",
                                        "ice-in-the-glass",
                                        "how-much-ice",
                                        "how-long-it-keeps",
                                        "two-stages")
                                + ". For a first course in heat transfer: "
                                + numbers(
                                        "cooling-by-hand",
                                        "one-temperature",
                                        "a-fruit-in-ice-water",
                                        "buried-in-the-ground",
                                        "resistances-in-series",
                                        "film-of-a-room",
                                        "a-spoon-in-mulled-wine",
                                        "a-vacuum-flask",
                                        "freezing-ice-balls")
                                + ". For a course in measuring: "
                                + numbers("time-constant-from-a-log", "interval-of-a-prediction", "two-stages-in-full")
                                + ".")
                + Html.paragraph(
                        "Each example has the same parts, so that they can be covered with a sheet of paper and uncovered one by one:"
                                + " let the class guess, estimate, compute, and only then look at the second method. Ask each time which of the"
                                + " given values is known worst, and what if it were wrong by a tenth.")
                + Html.paragraph("New exercises: start the JShell session (see the README) and enter, for instance,"
                        + " WorkedExamples.work(\"cooling-by-hand\", Map.of(\"h\", 12.0)). It prints question, values, answer and the second"
                        + " method. A symbol that the example does not have is refused.")
                + Html.paragraph("To be measured in class, with tap water instead of wine: examples "
                        + numbers(
                                "cooling-by-hand", "time-constant-from-a-log", "method-of-mixtures", "ice-in-the-glass")
                        + " with a thermometer and a clock. Compare with an interval as in "
                        + numbers("interval-of-a-prediction") + " before calling the model wrong.")
                + Html.table(
                        List.of("Example", "What to know"),
                        pages.stream().map(ExamplePage::teaching).toList())
                + "</section>\n";
    }

    private static String numbers(String... names) {
        return Stream.of(names)
                .map(name -> Integer.toString(WorkedExamples.number(name)))
                .collect(Collectors.joining(", "));
    }
}
