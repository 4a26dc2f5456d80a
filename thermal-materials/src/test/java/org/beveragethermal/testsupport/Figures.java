/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.testsupport;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Figures as text, independent of locale and short enough not to show the last bits of another JDK's arithmetic. */
final class Figures {
    private static final int SIGNIFICANT_DIGITS = 5;
    private static final int MOST_DIGITS = 12;

    private Figures() {}

    /**
     * A figure to five significant digits.
     *
     * @param value any double; NaN and the infinities are spelled out, since a failed check may have met them
     */
    static String figure(double value) {
        return figure(value, 0.0);
    }

    /**
     * A figure to five significant digits, or more (twelve at most) where a hundredth of its tolerance needs them: five
     * digits of 998.2071 say nothing about a tolerance of 0.001.
     */
    static String figure(double value, double tolerance) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal exact = new BigDecimal(value);
        if (exact.signum() == 0) {
            return "0";
        }
        int digits = Math.min(MOST_DIGITS, Math.max(SIGNIFICANT_DIGITS, digitsResolving(exact, tolerance)));
        BigDecimal rounded =
                exact.round(new MathContext(digits, RoundingMode.HALF_EVEN)).stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        return exponent < -5 || exponent > 9 ? rounded.toString() : rounded.toPlainString();
    }

    private static int digitsResolving(BigDecimal value, double tolerance) {
        if (!(tolerance > 0.0) || Double.isInfinite(tolerance)) {
            return 0;
        }
        BigDecimal finest = new BigDecimal(tolerance).movePointLeft(2);
        return exponent(value) - exponent(finest) + 1;
    }

    private static int exponent(BigDecimal value) {
        return value.precision() - value.scale() - 1;
    }
}
