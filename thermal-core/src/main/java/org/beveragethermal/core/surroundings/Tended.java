/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.solver.StateChange;

/**
 * What becomes of gear that somebody tends; for use by scenes, unsettled.
 *
 * @param medium the gear from then on, with the same nodes
 * @param change what it does to the state at that moment
 */
public record Tended(Medium medium, StateChange change) {}
