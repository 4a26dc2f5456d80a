/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/**
 * The surface temperature that a junction found last in a run and how it follows the temperatures of the ends, from which the next one is
 * guessed.
 */
final class SurfaceMemory {

    /**
     * The error that a step of Newton's method leaves is the square of the step times a bend [1/K]; as long as none is known, that of a power 4/3 of
     * a difference of a tenth of a millikelvin.
     */
    private static final double LARGEST_BEND = 1e3;

    private final JunctionPath owner;
    private final double[] temperaturesK;
    private final double[] slopes;
    private double surfaceK = Double.NaN;
    private double bend = LARGEST_BEND;

    SurfaceMemory(JunctionPath owner, int links) {
        this.owner = owner;
        temperaturesK = new double[links];
        slopes = new double[links];
    }

    boolean belongsTo(JunctionPath path) {
        return owner == path;
    }

    /** To first order from what was found last; NaN if nothing was. */
    double guessK(PathEvaluation e) {
        double guess = surfaceK;
        for (int i = 0; i < slopes.length; i++) {
            guess += slopes[i] * (e.temperatureK(i) - temperaturesK[i]);
        }
        return guess;
    }

    double bend() {
        return bend;
    }

    void keepBend(double newBend) {
        bend = newBend;
    }

    /** Remembers a surface at which the evaluation holds all flows with their factors. */
    void keep(PathEvaluation e, double foundK) {
        double sum = 0;
        for (int i = 0; i < slopes.length; i++) {
            sum += e.scratch(i).perToKelvin;
        }
        surfaceK = sum < 0 ? foundK : Double.NaN;
        for (int i = 0; i < slopes.length; i++) {
            temperaturesK[i] = e.temperatureK(i);
            slopes[i] = -e.scratch(i).perFromKelvin / sum;
        }
    }
}
