/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Many samples of one network.
 */
@NullMarked
package org.beveragethermal.core.batch;

import org.jspecify.annotations.NullMarked;
