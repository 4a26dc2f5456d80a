/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.util.Arrays;

/** A temperature in straight lines between points that begin at time 0; two points or more, their times ascending. Immutable. */
final class Lines {

    private final double[] timesS;
    private final double[] temperaturesK;

    /** Takes the arrays; not modified by anyone afterwards. */
    Lines(double[] timesS, double[] temperaturesK) {
        this.timesS = timesS;
        this.temperaturesK = temperaturesK;
    }

    int points() {
        return timesS.length;
    }

    double timeS(int point) {
        return timesS[point];
    }

    double temperatureK(int point) {
        return temperaturesK[point];
    }

    double[] timesS() {
        return timesS.clone();
    }

    double[] temperaturesK() {
        return temperaturesK.clone();
    }

    double endS() {
        return timesS[timesS.length - 1];
    }

    /** How long the line is that ends at a point, 1 to the last [s]. */
    double spanS(int end) {
        return timesS[end] - timesS[end - 1];
    }

    /** How much the temperature rises along the line that ends at a point [K]. */
    double rise(int end) {
        return temperaturesK[end] - temperaturesK[end - 1];
    }

    /** Temperature at a time; beyond the ends the first and last lines go on. */
    double at(double timeS) {
        int found = Arrays.binarySearch(timesS, timeS);
        if (found >= 0) {
            return temperaturesK[found];
        }
        int after = Math.min(timesS.length - 1, Math.max(1, -found - 1));
        return temperaturesK[after - 1] + (timeS - timesS[after - 1]) / spanS(after) * rise(after);
    }

    /** Arithmetic mean over time [K]. */
    double meanK() {
        double sum = 0;
        for (int i = 1; i < timesS.length; i++) {
            sum += spanS(i) * 0.5 * (temperaturesK[i] + temperaturesK[i - 1]);
        }
        return sum / endS();
    }

    /** What lies between two times, counted from the first. */
    Lines part(double fromS, double toS) {
        int first = firstAfter(fromS);
        int inside = Math.max(0, firstAtOrAfter(toS) - first);
        double[] times = new double[inside + 2];
        double[] temperatures = new double[times.length];
        for (int i = 0; i < inside; i++) {
            times[i + 1] = timesS[first + i] - fromS;
            temperatures[i + 1] = temperaturesK[first + i];
        }
        temperatures[0] = at(fromS);
        times[inside + 1] = toS - fromS;
        temperatures[inside + 1] = at(toS);
        return new Lines(times, temperatures);
    }

    private int firstAfter(double timeS) {
        int found = Arrays.binarySearch(timesS, timeS);
        return found >= 0 ? found + 1 : -found - 1;
    }

    private int firstAtOrAfter(double timeS) {
        int found = Arrays.binarySearch(timesS, timeS);
        return found >= 0 ? found : -found - 1;
    }
}
