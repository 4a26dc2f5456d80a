/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/**
 * A continuously differentiable function of one variable that gives its slope too.
 *
 * <p>Implementations are immutable, thread-safe and finite for any finite argument.
 */
public interface SmoothFunction {

    /**
     * The value.
     *
     * @param x argument, finite
     * @return value
     */
    double at(double x);

    /**
     * The slope.
     *
     * @param x argument, finite
     * @return derivative of {@link #at}
     */
    double slope(double x);
}
