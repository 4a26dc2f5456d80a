/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * The range of temperatures in which one source has a style served.
 *
 * @param style the style
 * @param lowK lower end, included [K]; within 253.15 K to 373.15 K
 * @param highK upper end, included [K]; at least the lower end; equal to it if the source states one temperature
 * @param source who states it
 */
public record ServingRange(DrinkStyle style, double lowK, double highK, Source source) {
    /** Colder than any frozen spirit is poured, and as hot as water boils: wider than any drink is served. */
    static final ValidityRange SERVABLE = new ValidityRange("serving temperature", 253.15, 373.15, "K");

    /**
     * A range from its parts.
     *
     * @param style the style
     * @param lowK lower end, included [K]; within 253.15 K to 373.15 K
     * @param highK upper end, included [K]; at least the lower end; equal to it if the source states one temperature
     * @param source who states it
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an end lies outside 253.15 K to 373.15 K
     * @throws IllegalArgumentException if an end is not finite or the lower end lies above the upper
     */
    public ServingRange {
        SERVABLE.require(lowK, style.id());
        SERVABLE.require(highK, style.id());
        if (lowK > highK) {
            throw new IllegalArgumentException("serving range of " + style.id() + ", low end " + Celsius.text(lowK)
                    + ": expected at most the high end, " + Celsius.text(highK));
        }
    }

    /**
     * Why the style is served in such a range.
     *
     * @return the reason, in one or two sentences
     */
    public String reason() {
        return style.reason();
    }

    /**
     * Whether a temperature lies in the range, ends included.
     *
     * @param temperatureK the temperature [K]
     * @return true if inside; false outside and for NaN
     */
    public boolean contains(double temperatureK) {
        return temperatureK >= lowK && temperatureK <= highK;
    }
}
