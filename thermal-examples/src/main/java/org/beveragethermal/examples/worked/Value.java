/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

/**
 * A quantity of an example.
 *
 * @param symbol its symbol; what follows an underscore is its index
 * @param name what it is
 * @param value number in the unit
 * @param unit coherent SI unit, or °C; {@code 1} for a number without one
 * @param given whether it was given, and is written with all its digits, or found, and is rounded
 */
record Value(String symbol, String name, double value, String unit, boolean given) {

    /**
     * Refuses what is no number.
     *
     * @param symbol its symbol
     * @param name what it is
     * @param value number in the unit, finite
     * @param unit unit
     * @param given whether it was given
     */
    Value {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(symbol + ", " + name + ", is " + value + ": expected a finite number");
        }
    }

    String digits() {
        return given ? Show.exact(value) : Show.number(value);
    }

    /** Number and unit, with a unit that is easier to imagine beside it where there is one. */
    String text() {
        return withUnit(digits(), unit) + Show.inOtherWords(value, unit);
    }

    /** Number and unit alone. */
    String shortText() {
        return withUnit(digits(), unit);
    }

    /** As one says it: minutes and millimetres instead of many seconds and small parts of a metre. */
    String spoken() {
        String words = Show.inOtherWords(value, unit);
        return words.isEmpty() ? shortText() : words.substring(" = ".length());
    }

    static String withUnit(String digits, String unit) {
        return unit.equals("1") ? digits : digits + "\u00a0" + unit;
    }
}
