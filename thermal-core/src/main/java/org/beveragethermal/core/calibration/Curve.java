/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

/** A formula in one variable with its exact slopes, such as a decay in time. */
@FunctionalInterface
public interface Curve {

    /**
     * Value and slopes at one place.
     *
     * @param at the variable, such as the time [s]
     * @param parameters values of the parameters, not modified
     * @param slopes receives the derivative of the value in each parameter
     * @return the value
     */
    double value(double at, double[] parameters, double[] slopes);
}
