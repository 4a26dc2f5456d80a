/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.OptionalDouble;

/**
 * Criteria for choosing among models of the same readings; smaller is better.
 *
 * <p>Theory manual, equation (8.5).
 *
 * @param logLikelihood logarithm of the likelihood at the estimates, the scatter at its most likely value if it is estimated
 * @param parameters number of estimated parameters, effective where there are priors, with the scatter and the following of errors
 * @param akaike Akaike's criterion (1974)
 * @param akaikeCorrected the same, corrected for few readings (Hurvich and Tsai 1989); empty if there are too few readings for that
 * @param bayesian Schwarz's criterion (1978)
 */
public record Criteria(
        double logLikelihood, double parameters, double akaike, OptionalDouble akaikeCorrected, double bayesian) {

    /** Effective numbers of parameters are sums that are not exact. */
    private static final double ROUNDING = 1e-6;

    static Criteria of(double logLikelihood, double parameters, int readings) {
        double akaike = 2 * parameters - 2 * logLikelihood;
        double rest = readings - parameters - 1;
        return new Criteria(
                logLikelihood,
                parameters,
                akaike,
                rest > ROUNDING
                        ? OptionalDouble.of(akaike + 2 * parameters * (parameters + 1) / rest)
                        : OptionalDouble.empty(),
                parameters * Math.log(readings) - 2 * logLikelihood);
    }
}
