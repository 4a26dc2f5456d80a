/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

/** What a limit is a limit of. */
public enum CautionQuantity {
    /** Temperature of the drink [K]. */
    DRINK_TEMPERATURE("K"),
    /** Difference of temperature that strains a wall [K]. */
    WALL_DIFFERENCE("K"),
    /** Pressure under a closure, less that of the air [Pa]. */
    GAUGE_PRESSURE("Pa"),
    /** Time that a drink that spoils is neither cold nor hot enough [s]. */
    TIME_OUT_OF_CONTROL("s"),
    /** Time of contact with skin [s]. */
    CONTACT_TIME("s"),
    /** Strength by volume as a fraction [-]. */
    STRENGTH("1"),
    /** No quantity: it holds as long as the circumstance does. */
    NONE("1");

    private final String unit;

    CautionQuantity(String unit) {
        this.unit = unit;
    }

    /**
     * The unit in which limits and values of this quantity are given.
     *
     * @return SI unit as text, {@code 1} for a number
     */
    public String unit() {
        return unit;
    }
}
