/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

/**
 * What a value is called and how it is shown in sentences; figures are in SI all the same. One with an offset, a temperature, is shown with
 * one decimal, others with three digits that count.
 *
 * @param name what it is, without an article, such as {@code mass of ice}; sentences put "the", "no" or "any" before it
 * @param unit unit in which it is shown
 * @param perSi shown figure for one SI unit, finite, not 0
 * @param offset shown figure at 0 in SI, finite
 */
public record AskedValue(String name, String unit, double perSi, double offset) {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final int SHOWN_DIGITS = 3;
    private static final int STEP_DIGITS = 2;
    /** A step that is larger stands for "it depends on nothing". */
    private static final double BEYOND_ALL = 1e9;

    /**
     * Checks the parts.
     *
     * @param name what it is, not blank
     * @param unit unit in which it is shown
     * @param perSi shown figure for one SI unit, finite, not 0
     * @param offset shown figure at 0 in SI, finite
     * @throws IllegalArgumentException if the name is blank or a number is not fit
     */
    public AskedValue {
        if (name.isBlank() || !Double.isFinite(perSi) || perSi == 0 || !Double.isFinite(offset)) {
            throw new IllegalArgumentException("value '" + name + "' shown as " + perSi + " per SI unit and " + offset
                    + ": expected a name that is not blank, a finite factor other than 0 and a finite offset");
        }
    }

    /**
     * A value shown in its SI unit.
     *
     * @param name what it is, not blank
     * @param unit its SI unit
     * @return the value
     * @throws IllegalArgumentException if the name is blank
     */
    public static AskedValue of(String name, String unit) {
        return new AskedValue(name, unit, 1, 0);
    }

    /** A temperature, shown in °C. */
    static AskedValue temperature(String name) {
        return new AskedValue(name, "°C", 1, -ZERO_CELSIUS_K);
    }

    String text(double valueSi) {
        double shown = valueSi * perSi + offset;
        return (offset == 0 ? Text.figure(shown, SHOWN_DIGITS) : Text.fixed(shown, 1)) + unitText(unit);
    }

    /** A difference, without the offset. */
    String step(double stepSi) {
        double shown = Math.abs(stepSi * perSi);
        return shown > BEYOND_ALL
                ? "more than can be said"
                : Text.figure(shown, STEP_DIGITS) + unitText(unit.equals("°C") ? "K" : unit);
    }

    private static String unitText(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }
}
