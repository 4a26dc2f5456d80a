/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

/** Rounded corners, so that an adaptive integrator does not stumble over geometry. */
public final class SmoothMath {

    private SmoothMath() {}

    /**
     * The smaller of two numbers with a rounded corner.
     *
     * @param a first
     * @param b second
     * @param corner width of the corner, > 0; the result lies at most corner/2 below the minimum
     * @return about min(a, b)
     */
    public static double min(double a, double b, double corner) {
        return 0.5 * (a + b - Math.sqrt((a - b) * (a - b) + corner * corner));
    }

    /**
     * Slope of {@link #min} in its first argument; one minus it is the slope in the second.
     *
     * @param a first
     * @param b second
     * @param corner width of the corner, > 0
     * @return slope, 0 to 1
     */
    public static double minSlope(double a, double b, double corner) {
        return 0.5 * (1 - (a - b) / Math.sqrt((a - b) * (a - b) + corner * corner));
    }

    /**
     * Second slope of {@link #min} in its first argument.
     *
     * @param a first
     * @param b second
     * @param corner width of the corner, > 0
     * @return curvature, ≤ 0
     */
    public static double minCurvature(double a, double b, double corner) {
        double root = Math.sqrt((a - b) * (a - b) + corner * corner);
        return -0.5 * corner * corner / (root * root * root);
    }

    /**
     * Rises from 0 at x ≤ 0 to 1 at x ≥ 1 with level ends.
     *
     * @param x argument
     * @return 3x² − 2x³ in between
     */
    public static double fade(double x) {
        double t = Math.min(1, Math.max(0, x));
        return t * t * (3 - 2 * t);
    }

    /**
     * Slope of {@link #fade}.
     *
     * @param x argument
     * @return 6x(1 − x) in between, else 0
     */
    public static double fadeSlope(double x) {
        double t = Math.min(1, Math.max(0, x));
        return 6 * t * (1 - t);
    }

    /**
     * The positive part of a number with a rounded corner that lies above 0, so that it is exactly 0 up to there.
     *
     * @param x argument
     * @param corner width of the corner, > 0
     * @return 0 up to 0, x²/(2 corner) within the corner, x − corner/2 beyond
     */
    public static double rising(double x, double corner) {
        if (x <= 0) {
            return 0;
        }
        return x < corner ? 0.5 * x * x / corner : x - 0.5 * corner;
    }

    /**
     * Slope of {@link #rising}.
     *
     * @param x argument
     * @param corner width of the corner, > 0
     * @return slope, 0 to 1
     */
    public static double risingSlope(double x, double corner) {
        return Math.min(1, Math.max(0, x / corner));
    }
}
