/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

/**
 * Time from the farthest temperature of a curve as a function of the distance from the equilibrium, and how far it may be off.
 *
 * @param table time [s] by distance [K]
 * @param nearK smallest distance [K]
 * @param farK largest distance [K]
 * @param errorS largest error of a difference of two times [s]
 */
record TimeTable(CubicTable table, double nearK, double farK, double errorS) {

    private static final int FEWEST_BITS = 5;
    private static final int MOST_BITS = 9;
    /** More cells are taken until the error is below this [s]. */
    private static final double WANTED_S = 1e-3;

    private static final double CHECK_S = 1e-4;

    /** The table of a rate on the side of its equilibrium that the sign tells. */
    static TimeTable of(CoolingRate rate, int sign, double nearK, double farK) {
        for (int bits = FEWEST_BITS; ; bits++) {
            TimeTable table = of(rate, sign, nearK, farK, bits);
            if (table.errorS <= WANTED_S || bits == MOST_BITS) {
                return table;
            }
        }
    }

    /**
     * In each cell the time is integrated over the logarithm of the distance by two nodes of Gauss and Legendre, and the cubic has the
     * right values and slopes at both ends. Its slope is off by most where it is looked at, at the nodes: if the fourth derivative
     * changes little within a cell, the cubic itself is off by 3√3/16 of that times the length of the cell, doubled here for what
     * the assumption may miss. The whole length is compared with {@link CoolingRate#timeS}.
     */
    private static TimeTable of(CoolingRate rate, int sign, double nearK, double farK, int bits) {
        double[] knots = CubicTable.knots(nearK, farK, bits);
        CubicTable table = CubicTable.over(nearK, farK, bits);
        double time = 0;
        double error = 0;
        double slopeHigh = -rate.secondsPerKelvin(sign * farK) * sign;
        table.set(farK, 0, slopeHigh, 0, 0);
        for (int i = 0; i + 1 < knots.length; i++) {
            double high = knots[i];
            double low = knots[i + 1];
            double length = Math.log(high / low);
            double ratio = Math.exp(0.5 / Math.sqrt(3) * length);
            double middle = Math.sqrt(high * low);
            double upper = middle * ratio;
            double lower = middle / ratio;
            double slopeUpper = -rate.secondsPerKelvin(sign * upper) * sign;
            double slopeLower = -rate.secondsPerKelvin(sign * lower) * sign;
            double slopeLow = -rate.secondsPerKelvin(sign * low) * sign;
            double next = time - 0.5 * length * (slopeUpper * upper + slopeLower * lower);
            table.set(low, high, next, time, slopeLow, slopeHigh);
            double off = Math.max(Math.abs(table.slope(upper) - slopeUpper), Math.abs(table.slope(lower) - slopeLower));
            error = Math.max(error, 2 * 3 * Math.sqrt(3) / 16 * off * (high - low));
            time = next;
            slopeHigh = slopeLow;
        }
        double whole = rate.timeS(rate.equilibriumK() + sign * farK, rate.equilibriumK() + sign * nearK, CHECK_S);
        return new TimeTable(table, nearK, farK, 2 * error + Math.abs(whole - time) + CHECK_S);
    }

    double timeS(double distanceK) {
        return table.at(distanceK);
    }

    /** Time of the whole table [s]. */
    double endS() {
        return table.at(nearK);
    }

    /** Fastest change of the distance [K/s]. */
    double fastestKPerS() {
        double fastest = 0;
        for (double distance : CubicTable.knots(nearK, farK, FEWEST_BITS)) {
            fastest = Math.max(fastest, -1 / table.slope(distance));
        }
        return fastest;
    }
}
