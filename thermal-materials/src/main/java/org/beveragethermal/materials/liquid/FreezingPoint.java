/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * The temperature at which a mixture begins to freeze, with the source that set it.
 *
 * @param temperatureK freezing temperature in K, greater than 0
 * @param source the source the value was taken from
 */
public record FreezingPoint(double temperatureK, Source source) {

    /**
     * Checks the temperature.
     *
     * @param temperatureK freezing temperature in K, finite, greater than 0
     * @param source the source the value was taken from
     * @throws OutOfRangeException if the temperature is not greater than 0
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public FreezingPoint {
        if (!(temperatureK > 0 && temperatureK <= Double.MAX_VALUE)) {
            throw OutOfRangeException.refusal(
                    "freezing temperature", temperatureK, Double.MIN_VALUE, Double.MAX_VALUE, "K", "");
        }
    }
}
