/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.util.Objects;
import org.beveragethermal.materials.provenance.Uncertainty;

/**
 * A named quantity that is not known exactly: a factor on a law, or any input of a prediction.
 *
 * <p>Draws of an input whose best value is above 0 are cut at 0, so that no factor, length or mass gets a negative one. State temperatures in
 * kelvin, and what may have either sign as a deviation about 0.
 *
 * @param name its name, not blank
 * @param value its best value
 * @param uncertainty how sure it is
 */
public record UncertainInput(String name, double value, Uncertainty uncertainty) {

    /**
     * Checks the parts.
     *
     * @param name its name, not blank
     * @param value its best value, finite
     * @param uncertainty how sure it is
     * @throws IllegalArgumentException if the name is blank or the value not finite
     */
    public UncertainInput {
        Objects.requireNonNull(uncertainty, "uncertainty");
        if (name.isBlank() || !Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "input '" + name + "' = " + value + ": expected a name that is not blank and a finite value");
        }
    }

    /**
     * A factor on a law, 1 at best.
     *
     * @param name name of the multiplier
     * @param uncertainty uncertainty of the factor
     * @return the input
     */
    public static UncertainInput factor(String name, Uncertainty uncertainty) {
        return new UncertainInput(name, 1, uncertainty);
    }

    /**
     * Standard uncertainty.
     *
     * @return in the unit of the value
     */
    public double standardUncertainty() {
        return uncertainty.standardUncertainty(value);
    }
}
