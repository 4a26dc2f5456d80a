/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.internal;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The scale of one axis: from where to where, and where it is marked.
 *
 * @param low lower end
 * @param high upper end
 * @param logarithmic whether equal ratios take equal lengths
 * @param ticks marked values, ascending, inside the ends
 */
record Axis(double low, double high, boolean logarithmic, List<BigDecimal> ticks) {

    private static final int MOST_TICKS = 7;
    private static final List<BigDecimal> STEPS =
            List.of(BigDecimal.ONE, BigDecimal.valueOf(2), BigDecimal.valueOf(5), BigDecimal.TEN);
    /** Of a range that has no width of its own. */
    private static final double LEAST_RELATIVE_WIDTH = 1e-6;

    private static final int MARKS_PER_DECADE = 3;
    /** A logarithmic axis over more than this ratio is marked at powers of ten alone. */
    private static final double MANY = 300;

    /** An axis that begins and ends with a mark. */
    static Axis linear(double lowest, double highest) {
        double width = Math.max(highest - lowest, LEAST_RELATIVE_WIDTH * Math.max(1, Math.abs(highest)));
        BigDecimal step = step(width);
        BigDecimal low = times(lowest, step, RoundingMode.FLOOR);
        BigDecimal high = times(highest, step, RoundingMode.CEILING);
        if (high.compareTo(low) == 0) {
            high = high.add(step);
        }
        return linearBetween(low.doubleValue(), high.doubleValue());
    }

    /** An axis with the ends that it is given. */
    static Axis linearBetween(double low, double high) {
        BigDecimal step = step(high - low);
        List<BigDecimal> ticks = new ArrayList<>();
        BigDecimal last = times(high, step, RoundingMode.FLOOR);
        for (BigDecimal tick = times(low, step, RoundingMode.CEILING);
                tick.compareTo(last) <= 0;
                tick = tick.add(step)) {
            ticks.add(tick);
        }
        return new Axis(low, high, false, ticks);
    }

    /** A logarithmic axis; both numbers are greater than 0. */
    static Axis logarithmic(double lowest, double highest) {
        int first = (int) Math.floor(Math.log10(lowest));
        int last = (int) Math.ceil(Math.log10(highest));
        List<BigDecimal> marks = IntStream.rangeClosed(first, last)
                .boxed()
                .flatMap(power -> STEPS.stream().limit(MARKS_PER_DECADE).map(step -> step.scaleByPowerOfTen(power)))
                .toList();
        BigDecimal low = marks.stream()
                .filter(mark -> mark.doubleValue() <= lowest)
                .max(BigDecimal::compareTo)
                .orElseThrow();
        BigDecimal high = marks.stream()
                .filter(mark -> mark.doubleValue() >= highest)
                .min(BigDecimal::compareTo)
                .orElseThrow();
        boolean many = high.doubleValue() / low.doubleValue() > MANY;
        return new Axis(
                low.doubleValue(),
                high.doubleValue(),
                true,
                marks.stream()
                        .filter(mark -> mark.compareTo(low) >= 0 && mark.compareTo(high) <= 0)
                        .filter(mark -> !many || mark.unscaledValue().equals(BigInteger.ONE))
                        .toList());
    }

    /** Where a value lies, 0 at the lower end and 1 at the upper. */
    double position(double value) {
        return logarithmic ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
    }

    /** The least of 1, 2 and 5 times a power of ten that leaves few enough marks. */
    private static BigDecimal step(double width) {
        BigDecimal atLeast = new BigDecimal(width / MOST_TICKS, MathContext.DECIMAL64);
        int power = atLeast.precision() - atLeast.scale() - 1;
        return STEPS.stream()
                .map(step -> step.scaleByPowerOfTen(power))
                .filter(step -> step.compareTo(atLeast) >= 0)
                .findFirst()
                .orElseThrow();
    }

    private static BigDecimal times(double value, BigDecimal step, RoundingMode rounding) {
        return new BigDecimal(value, MathContext.DECIMAL64)
                .divide(step, 0, rounding)
                .multiply(step);
    }
}
