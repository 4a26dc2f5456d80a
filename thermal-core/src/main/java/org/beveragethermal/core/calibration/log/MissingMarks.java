/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.util.Locale;
import java.util.Set;

/**
 * What loggers and spreadsheets write where there is no temperature. Common practice, no source; −127 °C and 85 °C are what digital sensors
 * with a range to 125 °C report when they are unplugged or have not converted yet.
 */
final class MissingMarks {
    /** What a sensor shows after power-on [°C]. */
    static final double POWER_ON_C = 85;

    private static final double UNPLUGGED_C = -127;
    private static final Set<Double> NUMBERS = Set.of(
            999d, -999d, 999.9, -999.9, 999.99, -999.99, 9999d, -9999d, 9999.9, -9999.9, 99999d, -99999d, 32767d,
            -32768d, 3276.7, -3276.8, 327.67, -327.68, 850d);
    private static final Set<String> WORDS = Set.of(
            "",
            "-",
            "--",
            "---",
            "----",
            "—",
            "–",
            "*",
            "**",
            "***",
            "?",
            "x",
            "na",
            "n/a",
            "#n/a",
            "#na",
            "nan",
            "-nan",
            "nan(ind)",
            "-nan(ind)",
            "1.#qnan",
            "null",
            "nil",
            "none",
            "inf",
            "+inf",
            "-inf",
            "infinity",
            "ol",
            "o.l",
            "o.l.",
            "-ol",
            "ul",
            "lo",
            "hi",
            "over",
            "under",
            "overload",
            "err",
            "error",
            "fail",
            "fault",
            "open",
            "short",
            "lost",
            "missing",
            "no data",
            "nodata",
            "invalid",
            "unavailable",
            "unknown",
            "disconnected",
            "off",
            "#value!",
            "#div/0!",
            "#ref!",
            "#num!",
            "#null!");
    private static final int LONGEST = 12;

    private MissingMarks() {}

    /** Whether a cell, trimmed, stands for no value. */
    static boolean isMissing(char[] text, int from, int to) {
        return to - from <= LONGEST && isMissing(new String(text, from, to - from));
    }

    static boolean isMissing(String cell) {
        return cell.length() <= LONGEST && WORDS.contains(cell.toLowerCase(Locale.ROOT));
    }

    /** Whether a number stands for no value, in its unit as written. */
    static boolean isMissing(double value, TemperatureUnit unit) {
        boolean usual = (value > -126 && value < 146) || (value > 147 && value < 327);
        if (usual) {
            return false;
        }
        return NUMBERS.contains(value)
                || Math.abs(unit.toKelvin(value) - TemperatureUnit.CELSIUS.toKelvin(UNPLUGGED_C)) < 1e-6;
    }
}
