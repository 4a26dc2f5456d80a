/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

/** How long and how far lines lie beyond a limit: above it for sign 1, below it for sign −1. */
final class Beyond {

    private Beyond() {}

    /** Time beyond the limit [s]. */
    static double seconds(Lines lines, double limitK, int sign) {
        double sum = 0;
        for (int i = 1; i < lines.points(); i++) {
            double first = sign * (lines.temperatureK(i - 1) - limitK);
            double last = sign * (lines.temperatureK(i) - limitK);
            sum += lines.spanS(i) * part(first, last);
        }
        return sum;
    }

    /** Integral of how far it is beyond the limit [K h]. */
    static double degreeHours(Lines lines, double limitK, int sign) {
        double sum = 0;
        for (int i = 1; i < lines.points(); i++) {
            double first = sign * (lines.temperatureK(i - 1) - limitK);
            double last = sign * (lines.temperatureK(i) - limitK);
            double part = part(first, last);
            double mean = part == 1 ? 0.5 * (first + last) : 0.5 * part * Math.max(first, last);
            sum += lines.spanS(i) * mean;
        }
        return sum / Times.SECONDS_PER_HOUR;
    }

    /** Part of a line that lies above zero. */
    private static double part(double first, double last) {
        double high = Math.max(first, last);
        double low = Math.min(first, last);
        if (high <= 0) {
            return 0;
        }
        return low >= 0 ? 1 : high / (high - low);
    }

    /** When a temperature that is reached is reached first [s]. */
    static double firstAtLeastS(Lines lines, double temperatureK) {
        int at = 0;
        while (lines.temperatureK(at) < temperatureK) {
            at++;
        }
        if (at == 0) {
            return 0;
        }
        double part = (temperatureK - lines.temperatureK(at - 1)) / lines.rise(at);
        return lines.timeS(at - 1) + part * lines.spanS(at);
    }
}
