/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;

/**
 * What is minimised at one set of parameters: rows of readings, run after run, then rows of priors.
 *
 * <p>Mutable while it is filled, by {@link Problem} alone.
 */
final class Rows {

    /** Residual of each row: standardised, freed of the error before, and through the loss. */
    final double[] residuals;
    /** Derivative of each residual in each slot. */
    final double[][] slopes;
    /** Standardised residual of each reading before the loss; 0 for censored and for left-out readings. */
    final double[] innovations;
    /** Prediction minus reading in units of its deviation; NaN for censored and left-out readings. */
    final double[] deviations;
    /** What the model of each run said. */
    final List<Predicted> predicted;
    /** Number of rows that are readings. */
    final int readings;

    Rows(List<Predicted> predicted, int readings, int priors, int slots) {
        this.readings = readings;
        residuals = new double[readings + priors];
        slopes = new double[readings + priors][slots];
        innovations = new double[readings];
        deviations = new double[readings];
        this.predicted = predicted;
    }

    double cost() {
        double sum = 0;
        for (double r : residuals) {
            sum += r * r;
        }
        return sum;
    }
}
