/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

/**
 * The inverse of a {@link TimeTable}: distance from the equilibrium by time, in equal cubic cells. Immutable.
 */
final class DistanceTable {

    private static final int FEWEST_CELLS = 256;
    private static final int MOST_CELLS = 16_384;
    /** More cells are taken until the error is below this [K]. */
    private static final double WANTED_K = 1e-6;

    private static final int MOST_STEPS = 60;

    private final double[] coefficients;
    private final double cellsPerSecond;
    private final double errorK;

    private DistanceTable(double[] coefficients, double widthS, double errorK) {
        this.coefficients = coefficients;
        this.cellsPerSecond = 1 / widthS;
        this.errorK = errorK;
    }

    static DistanceTable of(TimeTable times) {
        for (int cells = FEWEST_CELLS; ; cells *= 2) {
            DistanceTable table = of(times, cells);
            if (table.errorK <= WANTED_K || cells == MOST_CELLS) {
                return table;
            }
        }
    }

    /** The error is the largest that is found at three places in each cell, doubled for what lies between them. */
    private static DistanceTable of(TimeTable times, int cells) {
        double widthS = times.endS() / cells;
        double[] coefficients = new double[4 * cells];
        DistanceTable table = new DistanceTable(coefficients, widthS, 0);
        double at = times.farK();
        double slope = widthS / times.table().slope(at);
        double error = 0;
        for (int i = 0; i < cells; i++) {
            double next = i + 1 == cells ? times.nearK() : inverse(times, (i + 1) * widthS, at);
            double nextSlope = widthS / times.table().slope(next);
            coefficients[4 * i] = at;
            coefficients[4 * i + 1] = slope;
            coefficients[4 * i + 2] = 3 * (next - at) - 2 * slope - nextSlope;
            coefficients[4 * i + 3] = slope + nextSlope - 2 * (next - at);
            for (int part = 1; part < 4; part++) {
                double time = (i + 0.25 * part) * widthS;
                double distance = Math.min(times.farK(), Math.max(times.nearK(), table.at(time)));
                error = Math.max(
                        error,
                        Math.abs((times.timeS(distance) - time) / times.table().slope(distance)));
            }
            at = next;
            slope = nextSlope;
        }
        return new DistanceTable(coefficients, widthS, 2 * error);
    }

    /** The distance at a time, below one that lies before it: Newton's method within a bracket. */
    static double inverse(TimeTable times, double timeS, double aboveK) {
        double high = aboveK;
        double low = times.nearK();
        double distance = aboveK;
        for (int i = 0; i < MOST_STEPS; i++) {
            double late = times.timeS(distance) - timeS;
            if (late < 0) {
                high = distance;
            } else {
                low = distance;
            }
            double next = distance - late / times.table().slope(distance);
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - distance) <= 1e-14 * distance) {
                return next;
            }
            distance = next;
        }
        return distance;
    }

    /** The distance at a time within the table [K]. */
    double at(double timeS) {
        double cell = timeS * cellsPerSecond;
        int i = Math.min((int) cell, coefficients.length / 4 - 1);
        double d = cell - i;
        double[] c = coefficients;
        int k = 4 * i;
        return c[k] + d * (c[k + 1] + d * (c[k + 2] + d * c[k + 3]));
    }

    /** Largest error of a distance, times being exact [K]. */
    double errorK() {
        return errorK;
    }
}
