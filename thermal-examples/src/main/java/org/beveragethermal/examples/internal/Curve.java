/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * One line of a figure.
 *
 * @param name what the legend calls it; empty if it needs no entry of its own
 * @param x abscissas
 * @param y ordinates, as many
 */
public record Curve(String name, List<Double> x, List<Double> y) {

    /**
     * Copies the lists.
     *
     * @param name what the legend calls it
     * @param x abscissas, not modified
     * @param y ordinates, not modified
     */
    public Curve {
        x = List.copyOf(x);
        y = List.copyOf(y);
    }

    /**
     * A function at given places.
     *
     * @param name what the legend calls it
     * @param x abscissas
     * @param y the function
     * @return the curve
     */
    public static Curve of(String name, List<Double> x, DoubleUnaryOperator y) {
        return new Curve(name, x, x.stream().map(y::applyAsDouble).toList());
    }

    /**
     * Evenly spaced numbers, both ends included.
     *
     * @param low first
     * @param high last
     * @param count how many, at least 2
     * @return the numbers
     */
    public static List<Double> spaced(double low, double high, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> low + (high - low) * i / (count - 1))
                .toList();
    }
}
