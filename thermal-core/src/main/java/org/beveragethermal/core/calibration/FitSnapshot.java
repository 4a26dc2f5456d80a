/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;

/**
 * Plain figures of a fit.
 *
 * @param format version of this record's layout, 1
 * @param converged whether the search ended at a minimum
 * @param starts number of starts tried
 * @param agreeingStarts number of starts that ended at the best minimum
 * @param estimates the parameters
 * @param correlations correlation of each two, in the order of the estimates
 * @param residualStandardDeviation scatter of the readings
 * @param residualSumOfSquares sum of squares of readings off predictions
 * @param degreesOfFreedom degrees of freedom
 * @param errorCorrelation correlation of neighbouring errors
 * @param intervals intervals of 95 % by linearisation, in the order of the estimates
 * @param criteria criteria for choosing among models
 * @param residuals examination of the residuals
 */
public record FitSnapshot(
        int format,
        boolean converged,
        int starts,
        int agreeingStarts,
        List<Estimate> estimates,
        List<List<Double>> correlations,
        double residualStandardDeviation,
        double residualSumOfSquares,
        double degreesOfFreedom,
        double errorCorrelation,
        List<ConfidenceInterval> intervals,
        Criteria criteria,
        ResidualDiagnostics residuals) {

    static FitSnapshot of(FitResult result) {
        List<Estimate> estimates = result.estimates();
        List<String> names = estimates.stream().map(Estimate::name).toList();
        return new FitSnapshot(
                1,
                result.converged(),
                result.starts(),
                result.agreeingStarts(),
                estimates,
                names.stream()
                        .map(a -> names.stream()
                                .map(b -> result.correlation(a, b))
                                .toList())
                        .toList(),
                result.residualStandardDeviation(),
                result.residualSumOfSquares(),
                result.degreesOfFreedom(),
                result.errorCorrelation(),
                names.stream()
                        .map(name -> result.interval(name, FitResult.USUAL_PROBABILITY))
                        .toList(),
                result.criteria(),
                result.residuals());
    }
}
