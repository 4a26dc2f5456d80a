/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.util.List;
import java.util.Map;

/**
 * A value of a JSON document together with where it stands, so that whoever finds fault with it can say where.
 *
 * @param document name of the file
 * @param path path of the value, such as {@code $.drinks[3].style}
 * @param line line from 1
 * @param column column from 1
 * @param content the value
 */
record Element(String document, String path, int line, int column, Content content) {

    /** What a JSON value can be. */
    sealed interface Content {
        /** An object; the fields in the order of the file. */
        record Fielded(Map<String, Element> fields) implements Content {}

        /** An array. */
        record Listed(List<Element> items) implements Content {}

        /** A string. */
        record Text(String value) implements Content {}

        /** A number as it is written. */
        record Written(String digits) implements Content {}

        /** {@code true}, {@code false} or {@code null}. */
        record Literal(String word) implements Content {}
    }

    ScenarioException refusal(String problem) {
        return new ScenarioException(document, path, line, column, problem);
    }

    ScenarioException wrongKind(String expected) {
        return refusal("expected " + expected + ", got " + described());
    }

    /** The value as it is shown in a message. */
    String described() {
        if (content instanceof Content.Text text) {
            return OneLine.quoted(text.value());
        }
        if (content instanceof Content.Written number) {
            return OneLine.of(number.digits());
        }
        if (content instanceof Content.Literal literal) {
            return literal.word();
        }
        return content instanceof Content.Listed ? "a list" : "an object";
    }
}
