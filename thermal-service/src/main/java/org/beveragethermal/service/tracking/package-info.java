/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Follows vessels live.
 */
@NullMarked
package org.beveragethermal.service.tracking;

import org.jspecify.annotations.NullMarked;
