/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

/**
 * A smooth curve through table points that rises wherever the table rises: piecewise cubic with slopes by the weighted
 * harmonic mean (F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304). Beyond its ends it goes on
 * straight.
 */
final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    private MonotoneCubic(double[] x, double[] y, double[] slope) {
        this.x = x;
        this.y = y;
        this.slope = slope;
    }

    /** Through rising points; the arrays are copied. */
    static MonotoneCubic through(double[] x, double[] y) {
        int last = x.length - 1;
        double[] chord = new double[last];
        for (int i = 0; i < last; i++) {
            chord[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] slope = new double[last + 1];
        slope[0] = chord[0];
        slope[last] = chord[last - 1];
        for (int i = 1; i < last; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            double weight = (before + 2 * after) / (3 * (before + after));
            slope[i] = chord[i - 1] * chord[i] / (weight * chord[i] + (1 - weight) * chord[i - 1]);
        }
        return new MonotoneCubic(x.clone(), y.clone(), slope);
    }

    double value(double at) {
        int i = interval(at);
        double width = x[i + 1] - x[i];
        if (at <= x[0]) {
            return y[0] + slope[0] * (at - x[0]);
        }
        if (at >= x[i + 1]) {
            return y[i + 1] + slope[i + 1] * (at - x[i + 1]);
        }
        double u = (at - x[i]) / width;
        double v = 1 - u;
        return v * v * ((1 + 2 * u) * y[i] + u * width * slope[i])
                + u * u * ((1 + 2 * v) * y[i + 1] - v * width * slope[i + 1]);
    }

    double derivative(double at) {
        int i = interval(at);
        if (at <= x[0]) {
            return slope[0];
        }
        if (at >= x[i + 1]) {
            return slope[i + 1];
        }
        double u = (at - x[i]) / (x[i + 1] - x[i]);
        double chord = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        return 6 * u * (1 - u) * chord + (1 - u) * (1 - 3 * u) * slope[i] + u * (3 * u - 2) * slope[i + 1];
    }

    private int interval(double at) {
        int i = 0;
        while (i < x.length - 2 && at > x[i + 1]) {
            i++;
        }
        return i;
    }
}
