/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.Locale;
import org.beveragethermal.materials.provenance.Source;

/**
 * The range of temperatures in which one source has a drink kept. It is about keeping, not about drinking: a red wine is
 * kept colder than it is drunk, milk is drunk as it is kept.
 *
 * @param term how long, and whether it was opened
 * @param lowK lower end, included [K]; within 253.15 K to 373.15 K
 * @param highK upper end, included [K]; at least the lower end; equal to it if the source states one temperature
 * @param source who states it
 * @param remark what else matters
 */
public record StorageRange(Term term, double lowK, double highK, Source source, String remark) {

    /** For how long a drink is kept. */
    public enum Term {
        /** Closed, for months or years. */
        LONG_TERM,
        /** Closed, for days or weeks. */
        SHORT_TERM,
        /** Opened. */
        OPENED;

        /**
         * The term in words.
         *
         * @return for example {@code long-term}
         */
        public String label() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * A range from its parts.
     *
     * @param term how long, and whether it was opened
     * @param lowK lower end, included [K]; within 253.15 K to 373.15 K
     * @param highK upper end, included [K]; at least the lower end
     * @param source who states it
     * @param remark what else matters
     * @throws org.beveragethermal.materials.units.OutOfRangeException if an end lies outside 253.15 K to 373.15 K
     * @throws IllegalArgumentException if an end is not finite or the lower end lies above the upper
     */
    public StorageRange {
        ServingRange.SERVABLE.require(lowK, "storage");
        ServingRange.SERVABLE.require(highK, "storage");
        if (lowK > highK) {
            throw new IllegalArgumentException("storage range, low end " + Celsius.text(lowK)
                    + ": expected at most the high end, " + Celsius.text(highK));
        }
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

    /**
     * The range in words.
     *
     * @return term, range in degrees Celsius, remark and source
     */
    @Override
    public String toString() {
        return term.label() + " " + Celsius.text(lowK, highK) + ", " + remark + " (" + source.citation() + ")";
    }
}
