/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.OptionalDouble;

/**
 * A confidence interval of a parameter.
 *
 * @param low lower end; empty if the readings set none
 * @param estimate the best value
 * @param high upper end; empty if the readings set none
 * @param probability probability that such intervals hold the true value
 */
public record ConfidenceInterval(OptionalDouble low, double estimate, OptionalDouble high, double probability) {

    /**
     * Whether a value lies inside.
     *
     * @param value the value
     * @return true if it is not outside either end
     */
    public boolean contains(double value) {
        return (low.isEmpty() || value >= low.getAsDouble()) && (high.isEmpty() || value <= high.getAsDouble());
    }

    /**
     * Whether an end is missing.
     *
     * @return true if the readings do not bound the parameter on both sides
     */
    public boolean isOpen() {
        return low.isEmpty() || high.isEmpty();
    }
}
