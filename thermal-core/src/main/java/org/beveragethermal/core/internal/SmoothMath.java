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

    /**
     * The sixth root of a number, to 1e-13 of it: several times as fast as a power.
     *
     * @param x argument, ≥ 0
     * @return x^(1/6); 0 for what is smaller than normal numbers
     */
    public static double sixthRoot(double x) {
        double root = Math.sqrt(x);
        if (!(root > SMALL && root < LARGE)) {
            return root > 0 ? Math.cbrt(root) : root;
        }
        // A third of the exponent and of what follows it is right within 6 %; each of Halley's steps cubes that.
        double y = Double.longBitsToDouble(Double.doubleToRawLongBits(root) / 3 + THIRD_OF_BIAS);
        double cube = y * y * y;
        y *= (cube + 2 * root) / (2 * cube + root);
        cube = y * y * y;
        return y * (cube + 2 * root) / (2 * cube + root);
    }

    private static final double SMALL = 1e-100;
    private static final double LARGE = 1e100;
    /** Two thirds of the bias of exponents, with the correction that makes the largest error least. */
    private static final long THIRD_OF_BIAS = 0x2A9F7893782DA1CEL;
}
