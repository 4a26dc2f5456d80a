/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import org.beveragethermal.core.prediction.Prediction;

/**
 * Temperature of a drink in its glass from pouring to the last mouthful, as straight lines between looks that lie closer together at the
 * beginning, where the glass itself acts.
 */
final class GlassCourse {

    private static final int LOOKS = 300;
    private static final int HALVINGS = 45;

    private final double[] timesS;
    private final double[] temperaturesK;

    /** Takes the arrays; not modified by anyone afterwards. */
    GlassCourse(double[] timesS, double[] temperaturesK) {
        this.timesS = timesS;
        this.temperaturesK = temperaturesK;
    }

    /** What a prediction tells of a glass, from when it is poured to when it is empty, at most to the end of the run. */
    static GlassCourse of(Prediction glass, double pouredS, double latestS) {
        double lastS = lastS(glass, pouredS, latestS);
        double[] runS = new double[LOOKS + 1];
        double[] timesS = new double[LOOKS + 1];
        for (int i = 0; i <= LOOKS; i++) {
            double part = (double) i / LOOKS;
            timesS[i] = (lastS - pouredS) * part * part;
            runS[i] = i == LOOKS ? lastS : pouredS + timesS[i];
        }
        return new GlassCourse(timesS, glass.meanTemperaturesK(runS));
    }

    /** The last moment at which there is something in the glass. */
    private static double lastS(Prediction glass, double pouredS, double latestS) {
        if (glass.isFilled(latestS)) {
            return latestS;
        }
        double filledS = pouredS;
        double emptyS = latestS;
        for (int n = 0; n < HALVINGS; n++) {
            double middleS = 0.5 * (filledS + emptyS);
            if (glass.isFilled(middleS)) {
                filledS = middleS;
            } else {
                emptyS = middleS;
            }
        }
        return filledS;
    }

    /** The course for an argument between those of three others, by the parabola through them; their times are the same. */
    static GlassCourse between(double at, double[] arguments, GlassCourse[] courses) {
        double[] values = new double[courses[0].temperaturesK.length];
        for (int node = 0; node < arguments.length; node++) {
            double weight = 1;
            for (int other = 0; other < arguments.length; other++) {
                weight *= other == node ? 1 : (at - arguments[other]) / (arguments[node] - arguments[other]);
            }
            for (int i = 0; i < values.length; i++) {
                values[i] += weight * courses[node].temperaturesK[i];
            }
        }
        return new GlassCourse(courses[0].timesS, values);
    }

    double firstK() {
        return temperaturesK[0];
    }

    double lastK() {
        return temperaturesK[temperaturesK.length - 1];
    }

    double lengthS() {
        return timesS[timesS.length - 1];
    }

    /** How far it moves after a quarter of the time, by when the glass has acted [K]. */
    double trendK() {
        return lastK() - temperaturesK[LOOKS / 2];
    }

    /** How long it is in a range, ends included [s]. */
    double insideS(double lowK, double highK) {
        return Math.max(0, lengthS() - belowS(lowK) - aboveS(highK));
    }

    /** Mean over the time. */
    double meanK() {
        double sum = 0;
        for (int i = 1; i < timesS.length; i++) {
            sum += 0.5 * (temperaturesK[i] + temperaturesK[i - 1]) * (timesS[i] - timesS[i - 1]);
        }
        return sum / lengthS();
    }

    /** How long it is above a temperature [s]. */
    double aboveS(double limitK) {
        double sum = 0;
        for (int i = 1; i < timesS.length; i++) {
            double before = temperaturesK[i - 1] - limitK;
            double after = temperaturesK[i] - limitK;
            double spanS = timesS[i] - timesS[i - 1];
            if (before > 0 && after > 0) {
                sum += spanS;
            } else if (before > 0 || after > 0) {
                sum += spanS * Math.max(before, after) / Math.abs(before - after);
            }
        }
        return sum;
    }

    /** How long it is below a temperature [s]. */
    double belowS(double limitK) {
        double[] mirrored = new double[temperaturesK.length];
        for (int i = 0; i < mirrored.length; i++) {
            mirrored[i] = -temperaturesK[i];
        }
        return new GlassCourse(timesS, mirrored).aboveS(-limitK);
    }
}
