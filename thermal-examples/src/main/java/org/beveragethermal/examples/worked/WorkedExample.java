/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A worked example.
 *
 * @param id name of its place in the book
 * @param title heading
 * @param question what is asked, with symbols in braces for values
 * @param method how it is worked
 * @param sketch the drawing, from the solution
 * @param asked symbol of the answer
 * @param whatIfs given values to change, and what to look at then
 * @param exercises questions for the reader
 * @param published printed answers to questions of the kind
 * @param cautions what can hurt someone who tries it
 * @param lesson what to take away
 * @param teaching what a teacher should know
 */
record WorkedExample(
        String id,
        String title,
        String question,
        Consumer<Working> method,
        Function<Solution, Sketch> sketch,
        String asked,
        List<WhatIf> whatIfs,
        List<Exercise> exercises,
        List<Published> published,
        List<String> cautions,
        String lesson,
        String teaching) {

    /** The example with its own values. */
    Solution solution() {
        return with(Map.of());
    }

    /** The example with some given values changed. */
    Solution with(Map<String, Double> changes) {
        return Working.of(method, changes);
    }

    static Builder called(String id, String title) {
        return new Builder(id, title);
    }

    /** Collects the parts of an example. */
    static final class Builder {

        private final String id;
        private final String title;
        private String question = "";
        private Consumer<Working> method = working -> {};
        private Function<Solution, Sketch> sketch = solution -> Sketch.empty();
        private String asked = "";
        private final List<WhatIf> whatIfs = new ArrayList<>();
        private final List<Exercise> exercises = new ArrayList<>();
        private final List<Published> published = new ArrayList<>();
        private final List<String> cautions = new ArrayList<>();
        private String lesson = "";

        private Builder(String id, String title) {
            this.id = id;
            this.title = title;
        }

        Builder question(String text) {
            question = text;
            return this;
        }

        Builder worked(Consumer<Working> how, String answer) {
            method = how;
            asked = answer;
            return this;
        }

        Builder sketched(Function<Solution, Sketch> drawing) {
            sketch = drawing;
            return this;
        }

        /** Another value, and what the answer is then; stands after {@link #worked}, which says what is asked. */
        Builder whatIf(String symbol, double value) {
            return whatIf(symbol, value, asked);
        }

        /** The same where another quantity than the answer of the example is of interest. */
        Builder whatIf(String symbol, double value, String of) {
            whatIfs.add(new WhatIf(symbol, value, of));
            return this;
        }

        Builder exercise(String text, String answer, Map<String, Double> changes) {
            exercises.add(new Exercise(text, answer, changes));
            return this;
        }

        /** A figure that was read in its source. */
        Builder printed(
                String source, String what, String of, double expected, double within, Map<String, Double> data) {
            published.add(new Published(source, true, what, of, expected, within, data));
            return this;
        }

        /** A figure that is remembered. */
        Builder remembered(
                String source, String what, String of, double expected, double within, Map<String, Double> data) {
            published.add(new Published(source, false, what, of, expected, within, data));
            return this;
        }

        Builder caution(String text) {
            cautions.add(text);
            return this;
        }

        Builder lesson(String text) {
            lesson = text;
            return this;
        }

        WorkedExample teaching(String text) {
            return new WorkedExample(
                    id,
                    title,
                    question,
                    method,
                    sketch,
                    asked,
                    List.copyOf(whatIfs),
                    List.copyOf(exercises),
                    List.copyOf(published),
                    List.copyOf(cautions),
                    lesson,
                    text);
        }
    }
}
