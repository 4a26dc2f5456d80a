/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.units;

import java.math.BigDecimal;

/**
 * A finite value was refused because it lies outside what is allowed. The message reads like
 * {@code wall thickness 0.5 m: expected 0.0001 m to 0.02 m}; the parts are there for programs. Numbers in the message
 * do not depend on the locale.
 */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Numbers from here to {@link #LARGEST_PLAIN} are written without an exponent. */
    private static final double SMALLEST_PLAIN = 1e-7;

    private static final double LARGEST_PLAIN = 1e9;

    /** Part of an end of a range that is put down to rounding. */
    private static final double ROUNDING = 1e-12;

    /** Name of the refused parameter. */
    private final String parameter;
    /** Refused value. */
    private final double given;
    /** Lowest allowed value. */
    private final double low;
    /** Highest allowed value. */
    private final double high;
    /** Unit of the three numbers. */
    private final String unit;

    private OutOfRangeException(String message, String parameter, double given, double low, double high, String unit) {
        super(message);
        this.parameter = parameter;
        this.given = given;
        this.low = low;
        this.high = high;
        this.unit = unit;
    }

    /**
     * The exception for a value that is not in a range: this type if the value is finite, and a plain
     * {@link IllegalArgumentException} if it is NaN or infinite (so that none of its numbers is ever NaN or infinite).
     *
     * @param parameter name of the refused parameter
     * @param given refused value in {@code unit}
     * @param low lowest allowed value in {@code unit}; {@code -Double.MAX_VALUE} if there is none,
     *     {@code Double.MIN_VALUE} if every positive value is allowed
     * @param high highest allowed value in {@code unit}; {@code Double.MAX_VALUE} if there is none
     * @param unit unit as text; {@code 1} for a number
     * @param reason who or what sets the range, for the message; empty if there is nothing to say
     * @return the exception to throw
     */
    public static IllegalArgumentException refusal(
            String parameter, double given, double low, double high, String unit, String reason) {
        return refusal(parameter, withUnit(given, unit), given, low, high, unit, reason);
    }

    /** As above, with the given value as the caller wrote it (in the caller's unit). */
    static IllegalArgumentException refusal(
            String parameter, String asWritten, double given, double low, double high, String unit, String reason) {
        String message = parameter + " " + asWritten + ": expected " + allowed(low, high, unit)
                + (reason.isEmpty() ? "" : " (" + reason + ")");
        return Double.isFinite(given)
                ? new OutOfRangeException(message, parameter, given, low, high, unit)
                : new IllegalArgumentException(message);
    }

    /**
     * Whether a value is inside a range, ends included. A value beyond an end by no more than one part in 10^12 of that
     * end counts as inside: -20 °C is 253.14999999999998 K in doubles, and a range that begins at 253.15 K means it.
     *
     * @param value the value
     * @param low lowest allowed value
     * @param high highest allowed value
     * @return true if inside; false for NaN and infinity
     */
    public static boolean admits(double value, double low, double high) {
        return Double.isFinite(value)
                && value >= low - ROUNDING * Math.abs(low)
                && value <= high + ROUNDING * Math.abs(high);
    }

    private static String allowed(double low, double high, String unit) {
        boolean positive = low == Double.MIN_VALUE;
        String from = positive ? "more than " + withUnit(0, unit) : withUnit(low, unit);
        if (high == Double.MAX_VALUE) {
            return positive ? from : "at least " + from;
        }
        if (low == -Double.MAX_VALUE) {
            return "at most " + withUnit(high, unit);
        }
        return from + " to " + withUnit(high, unit);
    }

    private static String plain(double value) {
        double magnitude = Math.abs(value);
        if (value == 0) {
            return "0";
        }
        return magnitude >= SMALLEST_PLAIN && magnitude <= LARGEST_PLAIN
                ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
                : Double.toString(value);
    }

    /** A number and its unit, without a needless ".0" and independent of the locale. */
    static String withUnit(double value, String unit) {
        String number = plain(value);
        return unit.equals("1") ? number : number + " " + unit;
    }

    /**
     * Name of the refused parameter.
     *
     * @return the name
     */
    public String parameter() {
        return parameter;
    }

    /**
     * Refused value.
     *
     * @return the value in {@link #unit()}, finite
     */
    public double given() {
        return given;
    }

    /**
     * Lowest allowed value.
     *
     * @return the value in {@link #unit()}; {@code -Double.MAX_VALUE} if there is no lower end
     */
    public double low() {
        return low;
    }

    /**
     * Highest allowed value.
     *
     * @return the value in {@link #unit()}; {@code Double.MAX_VALUE} if there is no upper end
     */
    public double high() {
        return high;
    }

    /**
     * Unit of the three numbers.
     *
     * @return the unit as text; {@code 1} for a number
     */
    public String unit() {
        return unit;
    }
}
