/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What all comparisons say together.
 *
 * @param comparisons one per row that was run
 */
record Summary(List<Comparison> comparisons) {

    /** The same with other comparisons of some of its rows. */
    Summary with(List<Comparison> others) {
        Map<String, Comparison> other =
                others.stream().collect(Collectors.toMap(c -> c.row().id(), c -> c));
        return new Summary(comparisons.stream()
                .map(c -> other.getOrDefault(c.row().id(), c))
                .toList());
    }

    /** Part of rows inside their interval. */
    double coverage(Predicate<Comparison> which) {
        return (double) count(which.and(Comparison::isInside)) / count(which);
    }

    long count(Predicate<Comparison> which) {
        return comparisons.stream().filter(which).count();
    }

    /** Median of upper over lower end, of rows whose interval does not end at never. */
    double medianRatio(Predicate<Comparison> which) {
        return median(comparisons.stream()
                .filter(which)
                .filter(Comparison::isAlwaysReached)
                .mapToDouble(Comparison::ratio)
                .toArray());
    }

    /** Median size of ln(predicted/measured). */
    double medianLogarithmicError(Predicate<Comparison> which) {
        return median(comparisons.stream()
                .filter(which)
                .mapToDouble(Comparison::logarithmicError)
                .toArray());
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : 0.5 * (sorted[middle - 1] + sorted[middle]);
    }

    static boolean isInAir(Comparison c) {
        return c.run().setting().means().isAir();
    }

    static boolean isInIceWater(Comparison c) {
        return c.run().setting().means() == Setting.Means.ICE_WATER;
    }

    /** Ice without water, or with salt: the first is known to a factor of two and the second in two limits. */
    static boolean isInOtherIce(Comparison c) {
        Setting.Means means = c.run().setting().means();
        return means == Setting.Means.BARE_ICE || means == Setting.Means.SALTED_ICE;
    }

    /** Rows that say when a temperature was reached, and not only that it was not by then, or never. */
    static boolean saysWhen(Comparison c) {
        return c.row().states() == MeasuredRow.States.TIME && !c.row().isLaterThanStated();
    }

    /** Those of them that are published or from an organised test, in a medium whose temperature is stated. */
    static boolean isSoundTime(Comparison c) {
        return saysWhen(c)
                && List.of("A", "B").contains(c.row().provenance())
                && c.row().statesMedium();
    }
}
