/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * One set of values of uncertain inputs. Immutable.
 */
public final class Draw {

    /** Keeps draws away from the infinite ends of a normal distribution. */
    private static final double SMALLEST_PROBABILITY = 1e-9;

    private final Map<String, Double> values;

    private Draw(Map<String, Double> values) {
        this.values = values;
    }

    /** The draw of a number under a seed. */
    static Draw of(List<UncertainInput> inputs, long seed, int number) {
        return at(inputs, probabilities(inputs.size(), source(seed, number)));
    }

    /** One probability per input, from a source. */
    static double[] probabilities(int inputs, SplittableRandom random) {
        double[] probabilities = new double[inputs];
        for (int i = 0; i < inputs; i++) {
            probabilities[i] = SMALLEST_PROBABILITY + (1 - 2 * SMALLEST_PROBABILITY) * random.nextDouble();
        }
        return probabilities;
    }

    /** The quantiles of the inputs at probabilities; inputs whose best value is above 0 are cut at 0. */
    static Draw at(List<UncertainInput> inputs, double[] probabilities) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (int i = 0; i < inputs.size(); i++) {
            UncertainInput input = inputs.get(i);
            double value = input.uncertainty().quantile(input.value(), probabilities[i]);
            values.put(input.name(), input.value() > 0 ? Math.max(0, value) : value);
        }
        return new Draw(Map.copyOf(values));
    }

    /** The source of random numbers of a draw, the same on any thread. */
    static SplittableRandom source(long seed, int number) {
        return new SplittableRandom(mix(seed, number));
    }

    /** Distinct, well spread seeds for neighbouring numbers (finaliser of SplitMix64, Steele, Lea and Flood 2014). */
    private static long mix(long seed, int number) {
        long z = seed + 0x9E3779B97F4A7C15L * (number + 1L);
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /**
     * The value of an input.
     *
     * @param name its name
     * @return its value in this draw
     * @throws IllegalArgumentException if there is no such input
     */
    public double value(String name) {
        Double value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("input " + name + ": expected one of " + values.keySet());
        }
        return value;
    }

    /**
     * All values, ready for {@code NetworkSolver.withMultipliers}.
     *
     * @return value by name
     */
    public Map<String, Double> values() {
        return values;
    }
}
