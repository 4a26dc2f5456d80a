/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.provenance;

import org.beveragethermal.materials.units.OutOfRangeException;

/**
 * The closed interval of a quantity in which a figure or formula holds.
 *
 * @param quantity name of the quantity, for example {@code temperature}; not blank
 * @param low lower end, included; finite
 * @param high upper end, included; finite, at least {@code low}
 * @param unit unit of both ends, for example {@code K}; {@code 1} for a number
 */
public record ValidityRange(String quantity, double low, double high, String unit) {

    /**
     * Checks the parts.
     *
     * @param quantity name of the quantity; not blank
     * @param low lower end; finite
     * @param high upper end; finite, at least {@code low}
     * @param unit unit of both ends
     * @throws IllegalArgumentException if the name is blank, an end is not finite, or the ends are out of order
     */
    public ValidityRange {
        if (quantity.isBlank()) {
            throw new IllegalArgumentException("validity range: expected the name of a quantity, got a blank one");
        }
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
            throw new IllegalArgumentException("validity range of " + quantity
                    + ": expected two finite ends in ascending order, got " + low + " and " + high);
        }
    }

    /**
     * Whether a value lies in the range, ends included and rounding forgiven; see {@link
     * OutOfRangeException#admits}.
     *
     * @param value the value in the range's unit
     * @return true if inside; false outside, for NaN and for infinity
     */
    public boolean contains(double value) {
        return OutOfRangeException.admits(value, low, high);
    }

    /**
     * Passes a value through if it lies in the range; a value beyond an end by mere rounding becomes the end.
     *
     * @param value the value in the range's unit
     * @param source key of the source that states the range, for the message
     * @return the value
     * @throws OutOfRangeException if the value is finite and outside the range
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public double require(double value, String source) {
        if (!contains(value)) {
            throw OutOfRangeException.refusal(quantity, value, low, high, unit, source);
        }
        return Math.min(high, Math.max(low, value));
    }

    /**
     * Passes a value through if it lies in the range; a value beyond an end by mere rounding becomes the end.
     *
     * @param value the value in the range's unit
     * @param source the source that states the range, for the message
     * @return the value
     * @throws OutOfRangeException if the value is finite and outside the range
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public double require(double value, Source source) {
        return require(value, source.key());
    }
}
