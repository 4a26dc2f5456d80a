/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What one job took.
 *
 * @param job key of the job, such as {@code p1/own}
 * @param median median of the samples [s] per operation
 * @param least smallest sample [s]
 * @param most largest sample [s]
 * @param bytes memory allocated per operation by the measuring thread, negative if unknown
 * @param setting how the tool was set
 * @param error error that was found before
 */
record Measured(String job, double median, double least, double most, double bytes, String setting, String error) {

    private static final String MARK = "MEASURED";

    /** Median and spread of samples. */
    static Measured of(String job, double[] samples, double bytes, String setting, String error) {
        double[] sorted = samples.clone();
        Arrays.sort(sorted);
        return new Measured(
                job, sorted[sorted.length / 2], sorted[0], sorted[sorted.length - 1], bytes, setting, error);
    }

    /** One line that {@link #parse} reads back. */
    String line() {
        return String.join(
                "\t",
                MARK,
                job,
                Double.toString(median),
                Double.toString(least),
                Double.toString(most),
                Double.toString(bytes),
                setting.isEmpty() ? "-" : setting,
                error.isEmpty() ? "-" : error);
    }

    /** A line of a measuring process; empty if it is another line. */
    static Optional<Measured> parse(String line) {
        String[] parts = line.split("\t", -1);
        if (parts.length != 8 || !parts[0].equals(MARK)) {
            return Optional.empty();
        }
        return Optional.of(new Measured(
                parts[1],
                Double.parseDouble(parts[2]),
                Double.parseDouble(parts[3]),
                Double.parseDouble(parts[4]),
                Double.parseDouble(parts[5]),
                parts[6],
                parts[7]));
    }

    /** Median and spread in a unit that suits. */
    String timeText() {
        double factor = median < 1e-6 ? 1e9 : median < 1e-3 ? 1e6 : median < 1 ? 1e3 : 1;
        String unit = median < 1e-6 ? "ns" : median < 1e-3 ? "µs" : median < 1 ? "ms" : "s";
        return digits(median * factor) + " [" + digits(least * factor) + " – " + digits(most * factor) + "] " + unit;
    }

    /** Three digits, without an exponent. */
    static String digits(double value) {
        double size = Math.abs(value);
        return String.format(Locale.ROOT, size >= 99.95 ? "%.0f" : size >= 9.995 ? "%.1f" : "%.2f", value);
    }
}
