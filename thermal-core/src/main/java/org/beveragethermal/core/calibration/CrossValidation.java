/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

/**
 * How well readings are predicted by fits that have not seen them.
 *
 * @param parts number of parts that were left out in turn
 * @param rootMeanSquare root of the mean square of prediction minus reading, in units of the readings' deviations
 * @param ofTheFit the same for the fit that has seen them all
 * @param failed number of parts without which no fit was possible
 */
public record CrossValidation(int parts, double rootMeanSquare, double ofTheFit, int failed) {}
