/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Cooling curves.
 */
@NullMarked
package org.beveragethermal.core.curve;

import org.jspecify.annotations.NullMarked;
