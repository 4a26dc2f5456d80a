/* SPDX-License-Identifier: Apache-2.0 */
/** Logs. */
@NullMarked
package org.beveragethermal.core.calibration.log;

import org.jspecify.annotations.NullMarked;
