/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.math.BigDecimal;
import java.math.MathContext;

/** How numbers are written: the same in every locale. */
final class Show {

    static final String MINUS = "−";

    private static final MathContext FOUR_DIGITS = new MathContext(4);
    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final int HIGHEST_PLAIN_POWER = 5;
    private static final int LOWEST_PLAIN_POWER = -3;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double DAY = 86_400;
    private static final double LONG = 90;
    /** From here on a pressure is rather a stress. */
    private static final double LARGE_PRESSURE = 1e7;

    private Show() {}

    /** Rounded to four significant digits. */
    static String number(double value) {
        return digits(new BigDecimal(value).round(FOUR_DIGITS));
    }

    /** As it was typed. */
    static String exact(double value) {
        return digits(BigDecimal.valueOf(value));
    }

    private static String digits(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal bare = value.stripTrailingZeros();
        int power = bare.precision() - bare.scale() - 1;
        String digits = power > HIGHEST_PLAIN_POWER || power < LOWEST_PLAIN_POWER
                ? bare.scaleByPowerOfTen(-power).toPlainString() + " × 10" + superscript(power)
                : bare.toPlainString();
        return digits.replace("-", MINUS);
    }

    private static String superscript(int power) {
        StringBuilder raised = new StringBuilder();
        for (char c : Integer.toString(power).toCharArray()) {
            raised.append(c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(c - '0'));
        }
        return raised.toString();
    }

    /** The same in a unit that is easier to imagine, as an addition to what is written; empty if there is none. */
    static String inOtherWords(double value, String unit) {
        return switch (unit) {
            case "s" -> time(value);
            case "m" -> Math.abs(value) < 1 && value != 0 ? " = " + rounded(value * 1000) + "\u00a0mm" : "";
            case "Pa" ->
                Math.abs(value) > LARGE_PRESSURE
                        ? " = " + rounded(value / 1e6) + "\u00a0MPa"
                        : " = " + rounded(value / 1e5) + "\u00a0bar";
            case "kg" -> Math.abs(value) < 1 && value != 0 ? " = " + rounded(value * 1000) + "\u00a0g" : "";
            default -> "";
        };
    }

    private static String time(double seconds) {
        if (seconds < LONG) {
            return "";
        }
        if (seconds <= LONG * MINUTE) {
            return " = " + rounded(seconds / MINUTE) + "\u00a0min";
        }
        return seconds < 2 * DAY
                ? " = " + rounded(seconds / HOUR) + "\u00a0h"
                : " = " + rounded(seconds / DAY) + "\u00a0d";
    }

    private static String rounded(double value) {
        return digits(new BigDecimal(value).round(THREE_DIGITS));
    }
}
