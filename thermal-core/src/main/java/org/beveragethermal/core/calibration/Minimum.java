/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

/**
 * Where a search ended.
 *
 * @param theta the parameters
 * @param cost sum of squares there
 * @param atBound which parameters are held at a bound that they push against
 * @param evaluations evaluations of the models
 * @param converged whether nothing smaller is near
 */
@SuppressWarnings("ArrayRecordComponent") // internal, never compared
record Minimum(double[] theta, double cost, boolean[] atBound, int evaluations, boolean converged) {}
