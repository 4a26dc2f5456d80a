/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * The loosest tolerance at which a tool keeps the error that all tools have to keep.
 *
 * @param tolerance the tolerance
 * @param error largest error at it
 * @param unit unit of the error
 */
record Tuned(double tolerance, double error, String unit) {

    private static final int PER_DECADE = 5;
    private static final int LAST = 12 * PER_DECADE;

    /**
     * Looks for it on the grid 10^(-j/5), from 1 or a given start down to 1e-12.
     *
     * @param first loosest tolerance to try
     * @param tighter how many of the next tighter tolerances have to pass as well, so that none passes by luck
     * @param limit largest error allowed
     * @param unit unit of the error
     * @param errorAt largest error at a tolerance; a run that fails counts as infinite
     * @throws IllegalStateException if none passes: such a tool is not timed
     */
    static Tuned loosest(double first, int tighter, double limit, String unit, DoubleUnaryOperator errorAt) {
        int passed = 0;
        double smallest = Double.POSITIVE_INFINITY;
        double[] errors = new double[LAST + 1];
        for (int j = (int) Math.round(-PER_DECADE * Math.log10(first)); j <= LAST; j++) {
            errors[j] = attempt(errorAt, Math.pow(10, -(double) j / PER_DECADE));
            smallest = Math.min(smallest, errors[j]);
            passed = errors[j] <= limit ? passed + 1 : 0;
            if (passed == tighter + 1) {
                int loosest = j - tighter;
                return new Tuned(Math.pow(10, -(double) loosest / PER_DECADE), errors[loosest], unit);
            }
        }
        throw new IllegalStateException(
                "no tolerance keeps the error of " + limit + " " + unit + "; smallest seen: " + smallest);
    }

    private static double attempt(DoubleUnaryOperator errorAt, double tolerance) {
        try {
            double error = errorAt.applyAsDouble(tolerance);
            return Double.isNaN(error) ? Double.POSITIVE_INFINITY : error;
        } catch (RuntimeException failure) {
            // Explicit trial steps may leave the range of the formulas; what is thrown then differs by tool.
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Checks an error that no tolerance decides. */
    static Tuned fixed(double error, double limit, String unit) {
        if (!(error <= limit)) {
            throw new IllegalStateException("error " + error + " " + unit + ", allowed " + limit);
        }
        return new Tuned(0, error, unit);
    }

    /** The tolerance in words, empty if there is none. */
    String setting() {
        return tolerance == 0 ? "" : String.format(Locale.ROOT, "tolerance %.1e", tolerance);
    }

    /** The error in words. */
    String errorText() {
        return String.format(Locale.ROOT, "%.2g %s", error, unit);
    }
}
