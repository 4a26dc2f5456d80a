/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.beveragethermal.core.prediction.Asymptote;

/** Numbers in sentences, the same in every locale. */
final class Text {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double LEAST_PLAIN = 1e-4;
    private static final double MOST_PLAIN = 1e7;
    private static final long SECONDS_SHOWN_BELOW_S = 600;

    private Text() {}

    static String celsius(double temperatureK) {
        return fixed(temperatureK - ZERO_CELSIUS_K, 1) + " °C";
    }

    /** A number with so many decimals; what rounds to zero has no sign. */
    static String fixed(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** A number with so many digits that count, with a power of ten only where it is very large or very small. */
    static String figure(double value, int digits) {
        double size = Math.abs(value);
        return size == 0 || (size >= LEAST_PLAIN && size < MOST_PLAIN)
                ? new BigDecimal(value).round(new MathContext(digits)).toPlainString()
                : format("%." + (digits - 1) + "e", value);
    }

    /** Where a temperature tends to, as the rest of a sentence about it. */
    static String tends(Asymptote asymptote) {
        if (asymptote instanceof Asymptote.LevelsOff level) {
            return "levels off at " + celsius(level.temperatureK());
        }
        if (asymptote instanceof Asymptote.Swings swings) {
            return "swings between " + celsius(swings.lowK()) + " and " + celsius(swings.highK());
        }
        Asymptote.StillMoving moving = (Asymptote.StillMoving) asymptote;
        return format(
                "is still moving after %s, at %s and by %s K/h",
                time(moving.lookedFor()), celsius(moving.temperatureK()), figure(moving.kelvinPerHour(), 2));
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

    /** When something goes in. */
    static String start(Duration start) {
        return start.isZero() ? "at once" : "at " + time(start);
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
