/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;

/**
 * Where a search ended.
 *
 * @param theta the parameters
 * @param predicted what the model of each run says there
 * @param cost sum of squares there
 * @param atBound which parameters are held at a bound that they push against
 * @param evaluations evaluations of the models
 * @param converged whether nothing smaller is near
 */
@SuppressWarnings("ArrayRecordComponent") // internal, never compared
record Minimum(
        double[] theta, List<Predicted> predicted, double cost, boolean[] atBound, int evaluations, boolean converged) {

    /** The same, found after so many evaluations in all. */
    Minimum after(int all, boolean settled) {
        return new Minimum(theta, predicted, cost, atBound, all, settled);
    }
}
