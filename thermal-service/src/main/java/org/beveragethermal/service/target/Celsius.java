/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Temperatures as people read them; decimal arithmetic, so that 285.15 K reads 12 °C and not 12.000000000000002. */
final class Celsius {
    private static final BigDecimal ZERO_CELSIUS_K = new BigDecimal("273.15");

    private Celsius() {}

    static double toKelvin(double celsius) {
        return BigDecimal.valueOf(celsius).add(ZERO_CELSIUS_K).doubleValue();
    }

    /** The temperature in degrees Celsius, rounded to a tenth, with its unit. */
    static String text(double temperatureK) {
        return number(temperatureK) + " °C";
    }

    /** Two temperatures as a range, or one if they read alike. */
    static String text(double lowK, double highK) {
        String low = number(lowK);
        String high = number(highK);
        return low.equals(high) ? low + " °C" : low + " to " + high + " °C";
    }

    private static String number(double temperatureK) {
        BigDecimal rounded =
                BigDecimal.valueOf(temperatureK).subtract(ZERO_CELSIUS_K).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
