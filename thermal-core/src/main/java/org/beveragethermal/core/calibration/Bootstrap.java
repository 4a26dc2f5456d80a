/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.beveragethermal.core.uncertainty.Interval;

/**
 * Estimates from readings that might as well have been: the fit repeated on redrawn readings. Immutable.
 *
 * <p>Theory manual, equation (8.4).
 */
public final class Bootstrap {

    /** How readings are redrawn. */
    public enum Kind {
        /** Predictions plus residuals of the fit, drawn with replacement within their run. */
        RESIDUAL,
        /** Predictions plus normal errors of the estimated or known scatter. */
        PARAMETRIC,
        /**
         * Residuals as well, but the fit is repeated on the tangent of the models at the estimates, its errors as they were estimated: it
         * asks no model and says nothing of how far they bend.
         */
        TANGENT
    }

    private final Kind kind;
    private final List<String> names;
    private final List<double[]> estimates;
    private final int failed;

    Bootstrap(Kind kind, List<String> names, List<double[]> estimates, int failed) {
        this.kind = kind;
        this.names = List.copyOf(names);
        this.estimates = List.copyOf(estimates);
        this.failed = failed;
    }

    /**
     * How readings were redrawn.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Number of repeated fits that converged.
     *
     * @return number
     */
    public int size() {
        return estimates.size();
    }

    /**
     * Number of repeated fits that had no answer or did not converge.
     *
     * @return number
     */
    public int failed() {
        return failed;
    }

    /**
     * Estimates of a parameter.
     *
     * @param name the parameter
     * @return one per repeated fit
     * @throws IllegalArgumentException if there is no such parameter
     */
    public double[] estimates(String name) {
        int k = names.indexOf(name);
        if (k < 0) {
            throw new IllegalArgumentException("parameter " + name + ": expected one of " + names);
        }
        return estimates.stream().mapToDouble(theta -> theta[k]).toArray();
    }

    /**
     * Percentile interval of a parameter.
     *
     * @param name the parameter
     * @param probability probability inside, between 0 and 1
     * @return the interval of the repeated estimates
     * @throws IllegalArgumentException if there is no such parameter or fewer than two fits converged
     */
    public Interval interval(String name, double probability) {
        return Interval.of(estimates(name), probability);
    }

    /**
     * Standard error of a parameter.
     *
     * @param name the parameter
     * @return standard deviation of the repeated estimates, 0 if fewer than two fits converged
     * @throws IllegalArgumentException if there is no such parameter
     */
    public double standardError(String name) {
        double[] values = estimates(name);
        return values.length < 2 ? 0 : new StandardDeviation().evaluate(values);
    }
}
