/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.examples.internal.SvgChart;

/** One example as a section of the book. */
final class ExamplePage {

    private final int number;
    private final WorkedExample example;
    private final Solution solution;
    /** Of the exercises, in their order. */
    private final List<Solution> solved;

    ExamplePage(int number, WorkedExample example) {
        this.number = number;
        this.example = example;
        this.solution = example.solution();
        this.solved = example.exercises().stream()
                .map(exercise -> example.with(exercise.changes()))
                .toList();
    }

    String section() {
        return "<section id=\"" + example.id() + "\">\n<h2>" + number + ". " + Html.text(example.title()) + "</h2>\n"
                + "<p><strong>Question.</strong> " + Html.text(solution.fill(example.question())) + "</p>\n"
                + "<figure>" + example.sketch().apply(solution).svg(example.title()) + "</figure>\n"
                + heading("Given") + given()
                + heading("Worked") + steps() + answer()
                + heading("A second method") + checks()
                + solution.figure()
                        .map(figure -> "<figure role=\"img\" aria-label=\""
                                + Html.text(figure.title() + ": " + figure.yLabel() + " against " + figure.xLabel())
                                + "\">" + SvgChart.draw(figure) + "</figure>\n")
                        .orElse("")
                + heading("What if?") + whatIfs()
                + heading("What others have printed") + published()
                + example.cautions().stream().map(ExamplePage::caution).collect(Collectors.joining())
                + "<p class=\"lesson\"><strong>To take away.</strong> " + Html.text(example.lesson()) + "</p>\n"
                + heading("Exercises") + exercises() + "</section>\n";
    }

    private static String heading(String text) {
        return "<h3>" + text + "</h3>\n";
    }

    static String caution(String text) {
        return "<p class=\"caution\"><strong>Caution.</strong> " + Html.text(text) + "</p>\n";
    }

    private String given() {
        return Html.table(
                List.of("Symbol", "Quantity", "Value"),
                solution.given().stream()
                        .map(value -> List.of(symbol(value), Html.text(value.name()), Html.text(value.text())))
                        .toList());
    }

    private static String symbol(Value value) {
        return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\">" + Term.symbol(value.symbol()) + "</math>";
    }

    private String steps() {
        return solution.steps().stream().map(ExamplePage::step).collect(Collectors.joining("", "<ol>\n", "</ol>\n"));
    }

    private static String step(Step step) {
        String name = Term.symbol(step.result().symbol()) + "<mo>=</mo>";
        String found = "<mn>" + step.result().digits() + "</mn>"
                + (step.result().unit().equals("1")
                        ? ""
                        : "<mtext>\u00a0" + Html.text(step.result().unit()) + "</mtext>");
        String lines = step.formula()
                .map(formula -> math(name + formula.symbols())
                        + math("<mo>=</mo>" + formula.numbers())
                        + math("<mo>=</mo>" + found))
                .orElseGet(
                        () -> math(name + found) + "<span class=\"from\">from: " + Html.text(step.from()) + "</span>");
        return "<li>" + Html.text(step.result().name()) + "<div class=\"math\">" + lines + "</div></li>\n";
    }

    private static String math(String row) {
        return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\" display=\"inline\"><mstyle displaystyle=\"true\">"
                + row + "</mstyle></math>\n";
    }

    private String answer() {
        Value value = solution.value(example.asked());
        return "<p class=\"answer\"><strong>Answer.</strong> " + equation(value) + "</p>\n";
    }

    private String checks() {
        return Html.table(
                List.of("Quantity", "By formula", "Otherwise", "How, and why they may differ"),
                solution.checks().stream()
                        .map(check -> List.of(
                                symbol(check.first()),
                                Html.text(check.first().shortText()),
                                Html.text(check.second().shortText()),
                                Html.text(check.how() + " — " + check.why())))
                        .toList());
    }

    private String whatIfs() {
        return Html.table(
                List.of("If", "instead of", "then", "was"),
                example.whatIfs().stream().map(this::whatIf).toList());
    }

    private List<String> whatIf(WhatIf change) {
        Solution other = example.with(change.changes());
        return List.of(
                equation(other.value(change.symbol())),
                Html.text(solution.value(change.symbol()).text()),
                equation(other.value(change.asked())),
                Html.text(solution.value(change.asked()).text()));
    }

    private static String equation(Value value) {
        return symbol(value) + " = " + Html.text(value.text());
    }

    private String published() {
        if (example.published().isEmpty()) {
            return Html.paragraph("None is known to us for this question; it rests on the second method.");
        }
        return Html.table(
                List.of("Source", "Asked there", "Printed there", "The formulas above with its data"),
                example.published().stream().map(this::printed).toList());
    }

    private List<String> printed(Published each) {
        Solution there = example.with(each.changes());
        Value found = there.value(each.asked());
        Value expected = new Value(found.symbol(), found.name(), each.expected(), found.unit(), false);
        return List.of(
                Html.text(each.citation()),
                Html.text(there.fill(each.what())),
                Html.text(expected.text()),
                Html.text(found.text()));
    }

    private String exercises() {
        return IntStream.range(0, example.exercises().size())
                .mapToObj(i -> "<li>"
                        + Html.text(
                                solved.get(i).fill(example.exercises().get(i).question())) + "</li>\n")
                .collect(Collectors.joining("", "<ol class=\"letters\">\n", "</ol>\n"));
    }

    /** Answers to the exercises, a row for each. */
    List<List<String>> answers() {
        return IntStream.range(0, example.exercises().size())
                .mapToObj(i -> {
                    Value value = solved.get(i).value(example.exercises().get(i).asked());
                    return List.of(link(number + " " + (char) ('a' + i)), equation(value), Html.text(value.name()));
                })
                .toList();
    }

    /** What a teacher should know. */
    List<String> teaching() {
        return List.of(link(number + ". " + example.title()), Html.text(example.teaching()));
    }

    private String link(String text) {
        return Html.link("#" + example.id(), text);
    }

    String contents() {
        return "<li>" + Html.link("#" + example.id(), example.title()) + "</li>\n";
    }
}
