/* SPDX-License-Identifier: Apache-2.0 */
/** What must hold under bad input, many threads, long use and faults of others; figures in {@code thermal-examples/docs/endurance.md}. */
@NullMarked
package org.beveragethermal.endurance;

import org.jspecify.annotations.NullMarked;
