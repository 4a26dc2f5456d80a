/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Corrects predictions with measurement.
 */
@NullMarked
package org.beveragethermal.core.calibration;

import org.jspecify.annotations.NullMarked;
