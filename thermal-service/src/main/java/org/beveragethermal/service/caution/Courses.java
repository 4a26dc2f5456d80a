/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.OptionalDouble;

/** Courses of temperature as plain numbers: straight lines between points. */
final class Courses {

    private Courses() {}

    static void require(double[] timesS, double[] temperaturesK) {
        if (timesS.length == 0 || timesS.length != temperaturesK.length) {
            throw new IllegalArgumentException(timesS.length + " times and " + temperaturesK.length
                    + " temperatures: expected as many temperatures as times, one or more");
        }
        for (int i = 0; i < timesS.length; i++) {
            if (!Double.isFinite(timesS[i]) || (i > 0 && timesS[i] < timesS[i - 1])) {
                throw new IllegalArgumentException(
                        "time " + i + ", " + timesS[i] + " s: expected a finite time, not before the one before it");
            }
            if (!(temperaturesK[i] > 0) || !Double.isFinite(temperaturesK[i])) {
                throw new IllegalArgumentException("temperature " + i + ", " + temperaturesK[i]
                        + " K: expected a finite temperature above absolute zero");
            }
        }
    }

    /**
     * When a course is first at or beyond a limit, from a time on [s]: at or above it for sign 1, at or below it for sign −1.
     */
    static OptionalDouble firstS(double[] timesS, double[] temperaturesK, double limitK, int sign, double fromS) {
        for (int i = 0; i < timesS.length; i++) {
            if (timesS[i] >= fromS) {
                double beganS = Math.max(fromS, timesS[Math.max(0, i - 1)]);
                if (sign * (atK(timesS, temperaturesK, i, beganS) - limitK) >= 0) {
                    return OptionalDouble.of(beganS);
                }
                if (sign * (temperaturesK[i] - limitK) >= 0) {
                    return OptionalDouble.of(crossingS(timesS, temperaturesK, limitK, i));
                }
            }
        }
        return OptionalDouble.empty();
    }

    /** Temperature on the line that ends at a point; of the first point, its own. */
    private static double atK(double[] timesS, double[] temperaturesK, int end, double timeS) {
        double spanS = end == 0 ? 0 : timesS[end] - timesS[end - 1];
        double part = spanS > 0 ? (timeS - timesS[end - 1]) / spanS : 1;
        return temperaturesK[end] - (1 - part) * (end == 0 ? 0 : temperaturesK[end] - temperaturesK[end - 1]);
    }

    /** Where the line that ends at a point comes to a limit that lies on it. */
    private static double crossingS(double[] timesS, double[] temperaturesK, double limitK, int end) {
        double rise = temperaturesK[end] - temperaturesK[end - 1];
        return timesS[end - 1] + (limitK - temperaturesK[end - 1]) / rise * (timesS[end] - timesS[end - 1]);
    }
}
