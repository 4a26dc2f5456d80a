/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A quantity given as a function of time since the start of a run.
 *
 * <p>Implementations are immutable and thread-safe.
 */
public interface TimeFunction {

    /**
     * The value at a time.
     *
     * @param timeS time since the start [s], finite
     * @return the value, finite
     */
    double at(double timeS);

    /**
     * The rate of change at a time; at a knot, the rate just after it.
     *
     * @param timeS time since the start [s], finite
     * @return the derivative of {@link #at} [1/s]
     */
    double rate(double timeS);

    /**
     * Times at which the function or its slope jumps; the solver ends a step there.
     *
     * @return ascending times [s]; empty if the function is smooth
     */
    default double[] knots() {
        return new double[0];
    }

    /**
     * The same function on a clock that starts later.
     *
     * @param originS time on this function's clock at which the new clock shows 0 [s], finite
     * @return the function of the new clock's time
     */
    default TimeFunction startingAt(double originS) {
        TimeFunction original = this;
        return new TimeFunction() {
            @Override
            public double at(double timeS) {
                return original.at(originS + timeS);
            }

            @Override
            public double rate(double timeS) {
                return original.rate(originS + timeS);
            }

            @Override
            public double[] knots() {
                return Arrays.stream(original.knots())
                        .map(knot -> knot - originS)
                        .toArray();
            }
        };
    }

    /**
     * The same function times a factor.
     *
     * @param factor factor, finite
     * @return the product
     * @throws IllegalArgumentException if the factor is not finite
     */
    default TimeFunction times(double factor) {
        requireFinite(factor);
        TimeFunction original = this;
        return new TimeFunction() {
            @Override
            public double at(double timeS) {
                return factor * original.at(timeS);
            }

            @Override
            public double rate(double timeS) {
                return factor * original.rate(timeS);
            }

            @Override
            public double[] knots() {
                return original.knots();
            }
        };
    }

    /**
     * A value that never changes.
     *
     * @param value finite value
     * @return the constant function
     * @throws IllegalArgumentException if value is not finite
     */
    static TimeFunction constant(double value) {
        return new ConstantValue(requireFinite(value));
    }

    /**
     * Straight lines between given points; constant before the first and after the last.
     *
     * @param timesS strictly ascending times [s], length n ≥ 1, not modified
     * @param values value at each time, length n, not modified
     * @return the piecewise linear function
     * @throws IllegalArgumentException if the lengths differ, the times do not ascend or a number is not finite
     */
    static TimeFunction linear(double[] timesS, double[] values) {
        return new PiecewiseLinear(timesS, values);
    }

    /**
     * Any smooth function; its rate is taken by a central difference over two seconds.
     *
     * @param function the value as a function of time [s]
     * @return the function
     */
    static TimeFunction smooth(DoubleUnaryOperator function) {
        return new TimeFunction() {
            @Override
            public double at(double timeS) {
                return requireFinite(function.applyAsDouble(timeS));
            }

            @Override
            public double rate(double timeS) {
                return (at(timeS + 1) - at(timeS - 1)) / 2;
            }
        };
    }

    private static double requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value " + value + ": expected a finite number");
        }
        return value;
    }
}
