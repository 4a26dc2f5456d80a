/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Where a figure of an answer lies over the draws of what is uncertain. Not every draw needs to have it: a time at which something never
 * happens in some draws is a time in the others.
 *
 * @param interval coverage interval with equal tails over the draws that have the figure; empty if fewer than two have it
 * @param draws number of draws, at least 1
 * @param having how many of them have the figure, 0 to {@code draws}
 */
public record Spread(Optional<Interval> interval, int draws, int having) {

    /**
     * Checks the counts.
     *
     * @param interval interval over the draws that have the figure
     * @param draws number of draws, at least 1
     * @param having how many have the figure, 0 to {@code draws}
     * @throws IllegalArgumentException if the counts do not fit
     */
    public Spread {
        if (draws < 1 || having < 0 || having > draws || interval.isPresent() != having >= 2) {
            throw new IllegalArgumentException(having + " of " + draws + " draws, interval " + interval
                    + ": expected at least one draw, 0 to all of them, and an interval where two have the figure");
        }
    }

    /**
     * Reads a figure off the answers of all draws.
     *
     * @param answers one per draw, at least one, such as {@link Ensemble#run} gives; not modified
     * @param figure from an answer to the figure, finite; empty where the answer has none
     * @param probability probability inside, between 0 and 1
     * @param <R> the answers
     * @return the spread
     * @throws IllegalArgumentException if there is no answer, a figure is not finite or the probability is outside its range
     */
    public static <R> Spread of(List<R> answers, Function<? super R, OptionalDouble> figure, double probability) {
        if (answers.isEmpty() || !(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("spread of " + answers.size() + " answers at probability " + probability
                    + ": expected at least one answer and a probability between 0 and 1");
        }
        double[] values = answers.stream()
                .map(figure)
                .flatMapToDouble(OptionalDouble::stream)
                .toArray();
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("figure " + value + ": expected a finite number, or none");
            }
        }
        Optional<Interval> interval =
                values.length < 2 ? Optional.empty() : Optional.of(Interval.of(values, probability));
        return new Spread(interval, answers.size(), values.length);
    }
}
