/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Numbers in sentences, the same in every locale. */
final class Text {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final long SECONDS_SHOWN_BELOW_S = 600;

    private Text() {}

    static String celsius(double temperatureK) {
        // Adding zero turns a negative zero into zero.
        return format("%.1f °C", Math.rint((temperatureK - ZERO_CELSIUS_K) * 10) / 10 + 0.0);
    }

    static String time(Duration time) {
        long seconds = Math.round(time.toMillis() / 1000.0);
        if (seconds < SECONDS_SHOWN_BELOW_S) {
            return format("%.1f min", seconds / 60.0);
        }
        long minutes = Math.round(seconds / 60.0);
        return minutes < 60 ? format("%d min", minutes) : format("%d h %02d min", minutes / 60, minutes % 60);
    }

    static String time(double timeS) {
        return time(Times.duration(timeS));
    }

    static String window(Window window) {
        return window.length().toMillis() < 1000
                ? "at " + time(window.from())
                : "from " + time(window.from()) + " to " + time(window.to());
    }

    static String windows(List<Window> windows) {
        return windows.stream().map(Text::window).collect(Collectors.joining(", "));
    }

    static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** Sentences after one another. */
    static String sentences(String first, List<String> more) {
        return more.isEmpty() ? first : first + " " + String.join(" ", more);
    }
}
