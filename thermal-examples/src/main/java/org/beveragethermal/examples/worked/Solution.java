/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.beveragethermal.examples.internal.Figure;

/**
 * An example worked with one set of given values.
 *
 * @param given what was given, in the order of use
 * @param steps how the answer was found
 * @param checks results found in another way
 * @param values all quantities by symbol
 * @param figure a curve, if there is one
 */
record Solution(
        List<Value> given,
        List<Step> steps,
        List<SecondMethod> checks,
        Map<String, Value> values,
        Optional<Figure> figure) {

    private static final Pattern PLACE = Pattern.compile("\\{([^}]+)}");

    /**
     * Copies the lists.
     *
     * @param given what was given, not modified
     * @param steps how the answer was found, not modified
     * @param checks results found in another way, not modified
     * @param values all quantities by symbol, not modified
     * @param figure a curve, if there is one
     */
    Solution {
        given = List.copyOf(given);
        steps = List.copyOf(steps);
        checks = List.copyOf(checks);
        values = Map.copyOf(values);
    }

    /** A quantity that was given or found. */
    Value value(String symbol) {
        Value value = values.get(symbol);
        if (value == null) {
            throw new IllegalArgumentException("no quantity " + symbol + ": expected one of " + values.keySet());
        }
        return value;
    }

    /** A text with each symbol in braces replaced by its value and unit, so that no figure is typed twice. */
    String fill(String text) {
        return PLACE.matcher(text)
                .replaceAll(
                        place -> Matcher.quoteReplacement(value(place.group(1)).spoken()));
    }
}
