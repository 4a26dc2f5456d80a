/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.List;
import org.beveragethermal.core.network.Network;

/**
 * A network and the time from which its connections hold.
 *
 * @param startS start of the phase [s] since the start of the run, finite, ≥ 0
 * @param network nodes (the same in all phases) and active paths
 * @param changes what is mixed, added or taken away at the start of the phase, in this order
 */
public record Phase(double startS, Network network, List<StateChange> changes) {

    /**
     * Checks the time.
     *
     * @param startS start of the phase [s], finite, ≥ 0
     * @param network nodes and active paths
     * @param changes what is mixed, added or taken away at the start of the phase, in this order, not modified
     * @throws IllegalArgumentException if the time is negative or not finite
     */
    public Phase {
        if (!(startS >= 0) || Double.isInfinite(startS)) {
            throw new IllegalArgumentException("phase starting at " + startS + " s: expected a finite time ≥ 0");
        }
        changes = List.copyOf(changes);
    }

    /**
     * A phase at whose start nothing but connections changes.
     *
     * @param startS start of the phase [s], finite, ≥ 0
     * @param network nodes and active paths
     * @throws IllegalArgumentException if the time is negative or not finite
     */
    public Phase(double startS, Network network) {
        this(startS, network, List.of());
    }
}
