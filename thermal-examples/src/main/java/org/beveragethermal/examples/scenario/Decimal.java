/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text, independent of the locale and without needless zeros. */
final class Decimal {
    private Decimal() {}

    static String text(double value) {
        return plain(BigDecimal.valueOf(value));
    }

    /** A temperature in degrees Celsius, rounded to a tenth, with its unit. */
    static String celsius(double temperatureK) {
        BigDecimal celsius = BigDecimal.valueOf(temperatureK).subtract(new BigDecimal("273.15"));
        return plain(celsius.setScale(1, RoundingMode.HALF_UP)) + " °C";
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
