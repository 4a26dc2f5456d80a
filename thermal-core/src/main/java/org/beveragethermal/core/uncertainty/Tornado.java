/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What each input does alone: the result with one input at either end of its interval and all others at their best.
 *
 * @param atBest the result with all inputs at their best
 * @param bars one per input, the widest first
 */
public record Tornado(double atBest, List<Bar> bars) {

    /**
     * What one input does.
     *
     * @param name the input
     * @param low its value at the lower end
     * @param high its value at the upper end
     * @param atLow the result there
     * @param atHigh the result at the upper end
     */
    public record Bar(String name, double low, double high, double atLow, double atHigh) {

        /**
         * How far apart the results are.
         *
         * @return size of the difference
         */
        public double width() {
            return Math.abs(atHigh - atLow);
        }
    }

    /**
     * Checks the parts.
     *
     * @param atBest the result with all inputs at their best
     * @param bars one per input, the widest first, not modified
     */
    public Tornado {
        bars = List.copyOf(bars);
    }

    /**
     * Moves each input alone.
     *
     * @param inputs what is uncertain, names unique, not modified
     * @param probability probability between the ends of each input, between 0 and 1
     * @param model from values by name to the result, finite
     * @return the bars
     * @throws IllegalArgumentException if two inputs share a name, the probability is outside its range or the model gives no finite number
     */
    public static Tornado of(
            List<UncertainInput> inputs, double probability, ToDoubleFunction<Map<String, Double>> model) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability " + probability + ": expected between 0 and 1");
        }
        Ensemble.requireUniqueNames(inputs);
        Map<String, Double> best = new LinkedHashMap<>();
        inputs.forEach(input -> best.put(input.name(), input.value()));
        List<Bar> bars = new ArrayList<>();
        double tail = (1 - probability) / 2;
        for (UncertainInput input : inputs) {
            double low = input.uncertainty().quantile(input.value(), tail);
            double high = input.uncertainty().quantile(input.value(), 1 - tail);
            bars.add(new Bar(
                    input.name(),
                    low,
                    high,
                    with(best, input.name(), low, model),
                    with(best, input.name(), high, model)));
        }
        bars.sort(Comparator.comparingDouble(Bar::width).reversed());
        return new Tornado(finite(model.applyAsDouble(Collections.unmodifiableMap(best)), "best values"), bars);
    }

    private static double with(
            Map<String, Double> best, String name, double value, ToDoubleFunction<Map<String, Double>> model) {
        Map<String, Double> moved = new LinkedHashMap<>(best);
        moved.put(name, value);
        return finite(model.applyAsDouble(Collections.unmodifiableMap(moved)), name + " = " + value);
    }

    private static double finite(double result, String at) {
        if (!Double.isFinite(result)) {
            throw new IllegalArgumentException("result " + result + " at " + at + ": expected a finite number");
        }
        return result;
    }
}
