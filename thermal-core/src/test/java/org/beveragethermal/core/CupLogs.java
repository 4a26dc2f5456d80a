/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core;

/** Published logs of cups that cool in a room, and whose they are. */
public final class CupLogs {

    /** Source of the class's cup: ten readings through which a line is printed. */
    public static final String CLASS_SOURCE =
            "Queens College, City University of New York, Math 158: line of least squares ln(T − 74.6 °F) = −0.020416 t + 4.535718"
                    + " through ten readings of a cup of water";

    /** Slope of the printed line [1/min]. */
    public static final double CLASS_SLOPE_PER_MIN = -0.020416;

    /** Intercept of the printed line. */
    public static final double CLASS_INTERCEPT = 4.535718;

    /** Room of the class's cup [°F]. */
    public static final double CLASS_ROOM_F = 74.6;

    /** Source of the mug: 222 readings a minute apart, of freshly poured water. */
    public static final String MUG_SOURCE = "S. Wagon, data set CoolingWater, as in the R package mosaicData 0.20.4";

    private CupLogs() {}

    /**
     * Times of the class's readings.
     *
     * @return ten times [min]
     */
    public static double[] classMinutes() {
        return new double[] {0, 10, 20, 30, 40, 50, 60, 70, 80, 90};
    }

    /**
     * The class's readings.
     *
     * @return ten temperatures [°F]
     */
    public static double[] classFahrenheit() {
        return new double[] {182.0, 151.7, 133.9, 122.0, 113.1, 106.2, 101.1, 96.7, 93.5, 90.9};
    }

    /**
     * Times of fifteen of the mug's readings.
     *
     * @return times [min]
     */
    public static double[] mugMinutes() {
        return new double[] {0, 1, 2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 150, 180, 221};
    }

    /**
     * Fifteen of the mug's readings.
     *
     * @return temperatures [°C]
     */
    public static double[] mugCelsius() {
        return new double[] {98.2, 94.4, 91.4, 84.9, 76.5, 70.3, 65.3, 58.1, 50.5, 45.1, 37.7, 33.2, 30.1, 27.8, 25.8};
    }
}
