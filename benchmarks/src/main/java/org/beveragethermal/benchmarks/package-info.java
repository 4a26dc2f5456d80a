/* SPDX-License-Identifier: Apache-2.0 */
/**
 * Benchmarks whose results are ratios.
 *
 * <p>A time in nanoseconds says more about the machine than about the code. Every benchmark class here therefore measures
 * a reference of general knowledge in the same run, and what counts is how many times that reference a call costs.
 */
@NullMarked
package org.beveragethermal.benchmarks;

import org.jspecify.annotations.NullMarked;
