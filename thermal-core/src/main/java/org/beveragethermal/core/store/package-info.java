/* SPDX-License-Identifier: Apache-2.0 */
/**
 * What things do with enthalpy: a liquid warms by its own specific heat capacity, ice warms and then melts.
 *
 * <p>Each class is a {@link org.beveragethermal.core.network.Store} for a node of a network; enthalpy counts from liquid
 * water at 0 °C, so that melt water can pass from an ice node to a bath node without bookkeeping of its own.
 */
@NullMarked
package org.beveragethermal.core.store;

import org.jspecify.annotations.NullMarked;
