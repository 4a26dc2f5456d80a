/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.beveragethermal.materials.units.MassConcentration;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.units.VolumetricFlowRate;

/**
 * Reads quantities from words: a number with a decimal point and its unit, which is never guessed. Ranges only keep slips out; what the
 * library allows of a quantity it says itself.
 */
final class Quantities {
    private static final Pattern QUANTITY =
            Pattern.compile("\\s*([+-]?[0-9]{1,9}(?:\\.[0-9]{1,9})?)\\s*([^\\s0-9.,+-]\\S*)\\s*");
    private static final Pattern PART = Pattern.compile("\\s*([0-9]{1,9}(?:\\.[0-9]{1,9})?)\\s*(days|d|hours|h|min|s)");
    private static final Map<String, Double> SECONDS =
            Map.of("s", 1.0, "min", 60.0, "h", 3600.0, "hours", 3600.0, "d", 86400.0, "days", 86400.0);
    private static final Duration LONGEST = Duration.ofDays(60);
    private static final char MINUS = 0x2212;
    private static final double COLDEST_K = 173.15;
    private static final double HOTTEST_K = 473.15;

    private Quantities() {}

    static Quantity<Temperature> temperature(String where, String given) {
        Quantity<Temperature> read = read(
                where,
                given,
                "a temperature with its unit, such as 8C, 46F or 281K",
                Map.of(
                        "c", Measures::celsius,
                        "°c", Measures::celsius,
                        "f", Measures::fahrenheit,
                        "°f", Measures::fahrenheit,
                        "k", Measures::kelvins));
        if (!isSensible(read)) {
            throw Refusal.usage(where, given, "a temperature from -100C to 200C");
        }
        return read;
    }

    private static boolean isSensible(Quantity<Temperature> temperature) {
        try {
            double kelvins = kelvins(temperature);
            return kelvins >= COLDEST_K && kelvins <= HOTTEST_K;
        } catch (IllegalArgumentException e) {
            // Below absolute zero.
            return false;
        }
    }

    static double kelvins(Quantity<Temperature> temperature) {
        return SiValues.temperatureK(temperature, "temperature");
    }

    static Quantity<Mass> mass(String where, String given) {
        return read(
                where,
                given,
                "a mass with its unit, such as 3kg or 500g",
                Map.of(
                        "kg", Measures::kilograms,
                        "g", Measures::grams));
    }

    static Quantity<Length> length(String where, String given) {
        return read(
                where,
                given,
                "a length with its unit, such as 240mm, 24cm or 0.24m",
                Map.of(
                        "mm", Measures::millimetres,
                        "cm", Measures::centimetres,
                        "m", Measures::metres));
    }

    static Quantity<Volume> volume(String where, String given) {
        return read(
                where,
                given,
                "a volume with its unit, such as 750mL, 75cL or 1.5L",
                Map.of(
                        "ml", Measures::millilitres,
                        "cl", Measures::centilitres,
                        "l", Measures::litres));
    }

    static Quantity<Speed> speed(String where, String given) {
        return read(
                where,
                given,
                "a speed with its unit, such as 1.5m/s or 5km/h",
                Map.of("m/s", Measures::metresPerSecond, "km/h", value -> Measures.metresPerSecond(value / 3.6)));
    }

    static Quantity<VolumetricFlowRate> flow(String where, String given) {
        return read(where, given, "a flow with its unit, such as 6L/min", Map.of("l/min", Measures::litresPerMinute));
    }

    static Quantity<Dimensionless> percent(String where, String given) {
        return read(where, given, "per cent, such as 50%", Map.of("%", Measures::percent));
    }

    /** Percent as a number, such as a strength by volume. */
    static double percents(String where, String given) {
        Map<String, DoubleFunction<Double>> units = Map.of("%", value -> value);
        return read(where, given, "per cent, such as 12.5%", units);
    }

    static Quantity<MassConcentration> concentration(String where, String given) {
        return read(where, given, "grams per litre, such as 120g/L", Map.of("g/l", Measures::gramsPerLitre));
    }

    /** A duration of one or more parts: {@code 2h}, {@code 1 h 30 min}. */
    static Duration duration(String where, String given) {
        String allowed = "a duration with its unit, above 0 and at most 60 days, such as 90s, 30min, 2h, 1h30min or 1d";
        Matcher part = PART.matcher(given.strip().toLowerCase(Locale.ROOT));
        double seconds = 0;
        int at = 0;
        while (at < part.regionEnd()) {
            part.region(at, part.regionEnd());
            if (!part.lookingAt()) {
                throw Refusal.usage(where, given, allowed);
            }
            seconds += Double.parseDouble(part.group(1)) * SECONDS.getOrDefault(part.group(2), 0.0);
            at = part.end();
        }
        Duration read = Duration.ofMillis(Math.round(1000 * Math.min(seconds, 1e9)));
        if (read.isZero() || read.compareTo(LONGEST) > 0) {
            throw Refusal.usage(where, given, allowed);
        }
        return read;
    }

    private static <Q> Q read(
            String where, String given, String allowed, Map<String, ? extends DoubleFunction<Q>> units) {
        Matcher matcher = QUANTITY.matcher(given.replace(MINUS, '-'));
        DoubleFunction<Q> unit = matcher.matches() ? units.get(matcher.group(2).toLowerCase(Locale.ROOT)) : null;
        if (unit == null) {
            throw Refusal.usage(
                    where,
                    given,
                    allowed + " (units: " + units.keySet().stream().sorted().collect(Collectors.joining(", ")) + ")");
        }
        return unit.apply(Double.parseDouble(matcher.group(1)));
    }
}
