/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import org.apache.commons.math3.special.Erf;

/** The lower tail of the standard normal distribution, also where it underflows. */
final class Tail {

    private static final double ASYMPTOTIC_BELOW = -10;
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    private Tail() {}

    /** log Φ(z). */
    static double logProbability(double z) {
        if (z < ASYMPTOTIC_BELOW) {
            return -0.5 * z * z - Math.log(-z * ROOT_TWO_PI) + Math.log(series(z));
        }
        if (z > 5) {
            return Math.log1p(-0.5 * Erf.erfc(z / Math.sqrt(2)));
        }
        return Math.log(0.5 * Erf.erfc(-z / Math.sqrt(2)));
    }

    /** The z of a log Φ(z), by Newton's method on the concave logarithm; infinite at 0. */
    static double quantile(double logProbability) {
        if (logProbability >= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double z = logProbability < -2 ? -Math.sqrt(-2 * logProbability) : Math.min(0, 2 * (logProbability + 0.7));
        for (int i = 0; i < 200; i++) {
            double step = (logProbability - logProbability(z)) / hazard(z);
            z += Math.max(-1, Math.min(1, step));
            if (Math.abs(step) < 1e-12 * Math.max(1, Math.abs(z))) {
                break;
            }
        }
        return z;
    }

    /** φ(z) / Φ(z). */
    static double hazard(double z) {
        if (z < ASYMPTOTIC_BELOW) {
            return -z / series(z);
        }
        return Math.exp(-0.5 * z * z) / ROOT_TWO_PI / (0.5 * Erf.erfc(-z / Math.sqrt(2)));
    }

    /** Φ(z) (−z) / φ(z) for very negative z (asymptotic series of Mills' ratio). */
    private static double series(double z) {
        double v = 1 / (z * z);
        return 1 - v * (1 - 3 * v * (1 - 5 * v * (1 - 7 * v)));
    }
}
