/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import java.time.Duration;
import java.util.Locale;

/** Numbers in sentences, the same in every locale, and seconds. */
final class Words {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double SHOWN_IN_HOURS_S = 6000;

    private Words() {}

    static String celsius(double temperatureK) {
        // Adding zero turns a negative zero into zero.
        return format("%.1f °C", Math.rint((temperatureK - ZERO_CELSIUS_K) * 10) / 10 + 0.0);
    }

    static String time(double timeS) {
        return timeS < SHOWN_IN_HOURS_S ? format("%.1f min", timeS / 60) : format("%.1f h", timeS / 3600);
    }

    static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    static Duration duration(double timeS) {
        return Duration.ofMillis(Math.round(timeS * 1000));
    }
}
