/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.SiValues;

/** How the ranges of several sources become the one range that a plan has to meet. */
public sealed interface RangePolicy {

    /**
     * What all sources have in common: the intersection of their ranges. If they do not intersect, the median of the
     * lower ends and the median of the upper ends are taken, and the target says so.
     */
    record NarrowestCommon() implements RangePolicy {}

    /** Everything that any source allows: from the lowest lower end to the highest upper end. */
    record Envelope() implements RangePolicy {}

    /**
     * What one source says. If it states several ranges for the style, everything it allows.
     *
     * @param sourceKey key of the source, such as {@code common-practice}
     */
    record NamedSource(String sourceKey) implements RangePolicy {}

    /**
     * The caller's own range, whatever the sources say.
     *
     * @param lowK lower end [K]; within 253.15 K to 373.15 K
     * @param highK upper end [K]; at least the lower end
     */
    record OwnRange(double lowK, double highK) implements RangePolicy {
        /**
         * An own range from its ends.
         *
         * @param lowK lower end [K]; within 253.15 K to 373.15 K
         * @param highK upper end [K]; at least the lower end
         * @throws org.beveragethermal.materials.units.OutOfRangeException if an end lies outside 253.15 K to 373.15 K
         * @throws IllegalArgumentException if an end is not finite or the lower end lies above the upper
         */
        public OwnRange {
            ServingRange.SERVABLE.require(lowK, "own range");
            ServingRange.SERVABLE.require(highK, "own range");
            if (lowK > highK) {
                throw new IllegalArgumentException("own serving range, low end " + Celsius.text(lowK)
                        + ": expected at most the high end, " + Celsius.text(highK));
            }
        }
    }

    /**
     * What all sources have in common.
     *
     * @return the policy
     */
    static RangePolicy narrowestCommon() {
        return new NarrowestCommon();
    }

    /**
     * Everything that any source allows.
     *
     * @return the policy
     */
    static RangePolicy envelope() {
        return new Envelope();
    }

    /**
     * What one source says.
     *
     * @param sourceKey key of the source; which sources speak of a style is told by {@link Targets#rangesOf}
     * @return the policy
     */
    static RangePolicy source(String sourceKey) {
        return new NamedSource(sourceKey);
    }

    /**
     * The caller's own range.
     *
     * @param low lower end; -20 °C to 100 °C
     * @param high upper end; at least the lower end, at most 100 °C
     * @return the policy
     * @throws IllegalArgumentException if an end is out of range or the ends are out of order
     */
    static RangePolicy own(Quantity<Temperature> low, Quantity<Temperature> high) {
        return new OwnRange(SiValues.temperatureK(low, "low"), SiValues.temperatureK(high, "high"));
    }
}
