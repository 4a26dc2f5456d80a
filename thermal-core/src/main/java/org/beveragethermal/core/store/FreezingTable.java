/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What lies below the onset of freezing, as functions of the specific enthalpy: temperature, ice, sensible heat capacity.
 *
 * <p>Temperature is piecewise cubic in the enthalpy, with the slopes that the points state, and rises wherever they do; ice and
 * sensible heat capacity are straight between points. Below the coldest point the temperature goes on straight and the others
 * keep their value. Immutable and thread-safe; nothing is allocated by asking.
 *
 * <p>Theory manual, equation (2.2).
 */
final class FreezingTable {

    private static final int MOST_HALVINGS = 24;
    /** How closely the ice follows its curve at the probes. */
    private static final double ICE_ACCURACY = 5e-5;
    /** Where inside an interval the cubic is compared with the curve. */
    private static final double[] PROBES = {0.25, 0.5, 0.75};
    /** Slopes of a cubic up to this multiple of the chord keep it rising (Fritsch and Carlson 1980). */
    private static final double STEEPEST = 3;

    /**
     * One state of the drink.
     *
     * @param temperatureK temperature [K]
     * @param enthalpy specific enthalpy [J/kg]
     * @param slope slope of the temperature in the enthalpy [K kg/J]
     * @param ice mass of ice per mass of drink [-]
     * @param sensibleCapacity sensible specific heat capacity [J/(kg K)]
     */
    record Point(double temperatureK, double enthalpy, double slope, double ice, double sensibleCapacity) {}

    /** A curve of states. */
    @FunctionalInterface
    interface Curve {

        /**
         * The state at a temperature.
         *
         * @param temperatureK temperature [K]
         * @return the state there
         */
        Point at(double temperatureK);
    }

    private final double[] enthalpy;
    private final double[] temperatureK;
    /** Slopes at the lower and the upper end of each interval; they differ from one interval to the next at a kink. */
    private final double[] lowerSlope;

    private final double[] upperSlope;
    private final double[] ice;
    private final double[] sensibleCapacity;

    /** Through points of rising temperature and enthalpy; the slopes of an interval are those of its own ends. */
    private FreezingTable(List<Point> lower, List<Point> upper) {
        int n = lower.size();
        enthalpy = new double[n + 1];
        temperatureK = new double[n + 1];
        ice = new double[n + 1];
        sensibleCapacity = new double[n + 1];
        lowerSlope = new double[n];
        upperSlope = new double[n];
        for (int i = 0; i <= n; i++) {
            Point point = i < n ? lower.get(i) : upper.get(n - 1);
            enthalpy[i] = point.enthalpy();
            temperatureK[i] = point.temperatureK();
            ice[i] = point.ice();
            sensibleCapacity[i] = point.sensibleCapacity();
        }
        for (int i = 0; i < n; i++) {
            lowerSlope[i] = lower.get(i).slope();
            upperSlope[i] = upper.get(i).slope();
        }
    }

    /**
     * Follows curves, one after the other, from the coldest end upwards.
     *
     * @param accuracyK wanted accuracy of the temperature [K]
     * @param curves the curves
     * @param edgesK ends of the curves, ascending, one more than curves
     * @return the table
     */
    static FreezingTable follow(double accuracyK, List<Curve> curves, double... edgesK) {
        List<Point> lower = new ArrayList<>();
        List<Point> upper = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            halve(accuracyK, curve, curve.at(edgesK[i]), curve.at(edgesK[i + 1]), MOST_HALVINGS, lower, upper);
        }
        return new FreezingTable(lower, upper);
    }

    private static void halve(
            double accuracyK, Curve curve, Point low, Point high, int halvings, List<Point> lower, List<Point> upper) {
        if (halvings == 0 || follows(accuracyK, curve, low, high)) {
            lower.add(low);
            upper.add(high);
            return;
        }
        Point middle = curve.at(0.5 * (low.temperatureK() + high.temperatureK()));
        halve(accuracyK, curve, low, middle, halvings - 1, lower, upper);
        halve(accuracyK, curve, middle, high, halvings - 1, lower, upper);
    }

    private static boolean follows(double accuracyK, Curve curve, Point low, Point high) {
        double width = high.enthalpy() - low.enthalpy();
        double rise = high.temperatureK() - low.temperatureK();
        if (Math.max(low.slope(), high.slope()) * width > STEEPEST * rise) {
            return false;
        }
        for (double part : PROBES) {
            Point probe = curve.at(low.temperatureK() + part * rise);
            double u = (probe.enthalpy() - low.enthalpy()) / width;
            double here = cubic(u, low.temperatureK(), high.temperatureK(), low.slope() * width, high.slope() * width);
            double iceHere = (1 - u) * low.ice() + u * high.ice();
            if (!(Math.abs(here - probe.temperatureK()) <= accuracyK
                    && Math.abs(iceHere - probe.ice()) <= ICE_ACCURACY)) {
                return false;
            }
        }
        return true;
    }

    /** Cubic on 0 to 1 with given values and slopes at its ends. */
    private static double cubic(double u, double low, double high, double lowSlope, double highSlope) {
        double v = 1 - u;
        return v * v * ((1 + 2 * u) * low + u * lowSlope) + u * u * ((1 + 2 * v) * high - v * highSlope);
    }

    /** Index of the interval that holds an enthalpy; the first one below all. */
    private int interval(double h) {
        int low = 0;
        int high = lowerSlope.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (enthalpy[middle] <= h) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Temperature [K] at a specific enthalpy [J/kg] up to the warmest point. */
    double temperatureK(double h) {
        if (h <= enthalpy[0]) {
            return temperatureK[0] + lowerSlope[0] * (h - enthalpy[0]);
        }
        return temperatureK(interval(h), h);
    }

    private double temperatureK(int i, double h) {
        double width = enthalpy[i + 1] - enthalpy[i];
        return cubic(
                (h - enthalpy[i]) / width,
                temperatureK[i],
                temperatureK[i + 1],
                lowerSlope[i] * width,
                upperSlope[i] * width);
    }

    /** Slope of the temperature [K kg/J] at a specific enthalpy [J/kg] up to the warmest point, > 0. */
    double slope(double h) {
        if (h <= enthalpy[0]) {
            return lowerSlope[0];
        }
        int i = interval(h);
        double width = enthalpy[i + 1] - enthalpy[i];
        double u = (h - enthalpy[i]) / width;
        double v = 1 - u;
        double chord = (temperatureK[i + 1] - temperatureK[i]) / width;
        return 6 * u * v * chord + v * (1 - 3 * u) * lowerSlope[i] + u * (1 - 3 * v) * upperSlope[i];
    }

    /** Mass of ice per mass of drink [-]. */
    double ice(double h) {
        return straight(ice, h);
    }

    /** Sensible specific heat capacity [J/(kg K)], without what freezing takes. */
    double sensibleCapacity(double h) {
        return straight(sensibleCapacity, h);
    }

    private double straight(double[] values, double h) {
        int i = interval(h);
        double u = Math.min(1, Math.max(0, (h - enthalpy[i]) / (enthalpy[i + 1] - enthalpy[i])));
        return (1 - u) * values[i] + u * values[i + 1];
    }

    /** Specific enthalpy [J/kg] at a temperature [K] up to that of the warmest point; inverse of {@link #temperatureK}. */
    double enthalpy(double wantedK) {
        if (wantedK <= temperatureK[0]) {
            return enthalpy[0] + (wantedK - temperatureK[0]) / lowerSlope[0];
        }
        int found = Arrays.binarySearch(temperatureK, wantedK);
        if (found >= 0) {
            return enthalpy[found];
        }
        int i = Math.min(-found - 2, lowerSlope.length - 1);
        double low = enthalpy[i];
        double high = enthalpy[i + 1];
        double middle = low + (high - low) / 2;
        while (low < middle && middle < high) {
            if (temperatureK(i, middle) < wantedK) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return high;
    }
}
