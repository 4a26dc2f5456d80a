/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.beveragethermal.examples.internal.Figure;
import org.jspecify.annotations.Nullable;

/**
 * The sheet on which an example is worked: what is given, step by step what is found, and the same found in another way.
 *
 * <p>An example is a method that fills such a sheet. Given values may be changed from outside, so that one method answers the example,
 * its "what if", its exercises and the examples of textbooks alike.
 */
final class Working {

    private final Map<String, Double> changes;
    private final TreeSet<String> unused;
    private final List<Value> given = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<SecondMethod> checks = new ArrayList<>();
    private final Map<String, Value> values = new LinkedHashMap<>();
    private @Nullable Figure figure;

    private Working(Map<String, Double> changes) {
        this.changes = changes;
        this.unused = new TreeSet<>(changes.keySet());
    }

    /** Works an example with some of the given values changed. */
    static Solution of(Consumer<Working> method, Map<String, Double> changes) {
        Working working = new Working(changes);
        method.accept(working);
        if (!working.unused.isEmpty()) {
            throw new IllegalArgumentException("nothing given is called " + working.unused + ": expected one of "
                    + working.given.stream().map(Value::symbol).toList());
        }
        return new Solution(
                working.given, working.steps, working.checks, working.values, Optional.ofNullable(working.figure));
    }

    /** Whether all values are those of the example. */
    boolean isUnchanged() {
        return changes.isEmpty();
    }

    Term given(String symbol, String name, double value, String unit) {
        unused.remove(symbol);
        Value quantity = new Value(symbol, name, changes.getOrDefault(symbol, value), unit, true);
        given.add(quantity);
        return kept(quantity);
    }

    /** A step by a formula. */
    Term find(String symbol, String name, String unit, Term formula) {
        Value quantity = new Value(symbol, name, formula.value(), unit, false);
        steps.add(new Step(quantity, Optional.of(formula), ""));
        return kept(quantity);
    }

    /** A step that takes a value from the library or from a table. */
    Term look(String symbol, String name, String unit, double value, String from) {
        Value quantity = new Value(symbol, name, value, unit, false);
        steps.add(new Step(quantity, Optional.empty(), from));
        return kept(quantity);
    }

    /** The same quantity found in another way. */
    void check(String symbol, String how, double value, double tolerance, String why) {
        Value first = values.get(symbol);
        if (first == null) {
            throw new IllegalArgumentException("no quantity " + symbol + " to check");
        }
        checks.add(new SecondMethod(first, how, value, tolerance, why));
    }

    void draw(Figure drawn) {
        figure = drawn;
    }

    private Term kept(Value quantity) {
        if (values.put(quantity.symbol(), quantity) != null) {
            throw new IllegalArgumentException("two quantities are called " + quantity.symbol());
        }
        return Term.of(quantity);
    }
}
