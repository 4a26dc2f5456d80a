/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What is minimised at one set of parameters: rows of readings, run after run, then rows of priors.
 *
 * <p>Mutable while it is filled, by {@link Problem} alone.
 */
final class Rows {

    /** Residual of each row: standardised, freed of the error before, and through the loss. */
    final double[] residuals;
    /** Standardised residual of each reading before the loss; 0 for censored and for left-out readings. */
    final double[] innovations;
    /** Prediction minus reading in units of its deviation; NaN for censored and left-out readings. */
    final double[] deviations;
    /** Derivative of each reading's residual in its prediction, before it is freed of the error before; 0 where it does not count. */
    final double[] factors;
    /** What the model of each run said. */
    final List<Predicted> predicted;
    /** Number of rows that are readings. */
    final int readings;

    private final Function<Rows, double[][]> later;
    /** Those of a solution may be asked for first by several threads at once. */
    private volatile double @Nullable [][] slopes;

    Rows(List<Predicted> predicted, int readings, int priors, Function<Rows, double[][]> slopes) {
        this.readings = readings;
        residuals = new double[readings + priors];
        innovations = new double[readings];
        deviations = new double[readings];
        factors = new double[readings];
        this.predicted = predicted;
        this.later = slopes;
    }

    /** For each slot, the derivative of each residual in it; worked out when first asked for. */
    double[][] slopes() {
        double[][] known = slopes;
        if (known == null) {
            known = later.apply(this);
            slopes = known;
        }
        return known;
    }

    /** The same where every reading scatters so many times as much and there are no other rows: plain least squares. */
    Rows scattered(double scatter) {
        Rows scaled = new Rows(
                predicted,
                readings,
                residuals.length - readings,
                rows -> Arrays.stream(slopes())
                        .map(column -> divided(column, scatter))
                        .toArray(double[][]::new));
        System.arraycopy(divided(residuals, scatter), 0, scaled.residuals, 0, residuals.length);
        System.arraycopy(divided(innovations, scatter), 0, scaled.innovations, 0, readings);
        System.arraycopy(divided(factors, scatter), 0, scaled.factors, 0, readings);
        System.arraycopy(deviations, 0, scaled.deviations, 0, readings);
        return scaled;
    }

    private static double[] divided(double[] values, double by) {
        double[] divided = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            divided[i] = values[i] / by;
        }
        return divided;
    }

    double cost() {
        double sum = 0;
        for (double r : residuals) {
            sum += r * r;
        }
        return sum;
    }
}
