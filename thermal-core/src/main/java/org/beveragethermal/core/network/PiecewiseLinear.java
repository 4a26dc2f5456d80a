/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/** Straight lines between points, constant outside them. */
final class PiecewiseLinear implements TimeFunction {

    private final double[] timesS;
    private final double[] values;

    PiecewiseLinear(double[] timesS, double[] values) {
        if (timesS.length == 0 || timesS.length != values.length) {
            throw new IllegalArgumentException(timesS.length + " times and " + values.length
                    + " values: expected as many values as times, at least one");
        }
        for (int i = 0; i < timesS.length; i++) {
            if (!Double.isFinite(timesS[i]) || !Double.isFinite(values[i])) {
                throw new IllegalArgumentException(
                        "point " + i + " (" + timesS[i] + " s, " + values[i] + "): expected finite numbers");
            }
            if (i > 0 && timesS[i] <= timesS[i - 1]) {
                throw new IllegalArgumentException(
                        "time " + timesS[i] + " s after " + timesS[i - 1] + " s: expected ascending times");
            }
        }
        this.timesS = timesS.clone();
        this.values = values.clone();
    }

    @Override
    public double at(double timeS) {
        int i = interval(timeS);
        if (i < 0) {
            return values[0];
        }
        if (i == timesS.length - 1) {
            return values[i];
        }
        return values[i] + slope(i) * (timeS - timesS[i]);
    }

    @Override
    public double rate(double timeS) {
        int i = interval(timeS);
        return i < 0 || i == timesS.length - 1 ? 0 : slope(i);
    }

    @Override
    public double[] knots() {
        return timesS.clone();
    }

    private double slope(int i) {
        return (values[i + 1] - values[i]) / (timesS[i + 1] - timesS[i]);
    }

    /** Index of the last point at or before the time, -1 if there is none. */
    private int interval(double timeS) {
        int i = timesS.length - 1;
        while (i >= 0 && timesS[i] > timeS) {
            i--;
        }
        return i;
    }
}
