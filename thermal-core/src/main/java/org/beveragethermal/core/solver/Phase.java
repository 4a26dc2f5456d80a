/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.List;
import org.beveragethermal.core.network.Network;

/**
 * A network and the time from which its connections hold.
 *
 * @param startS start of the phase [s] since the start of the run, finite, ≥ 0
 * @param network nodes (the same in all phases) and active paths
 * @param mixings what is mixed at the start of the phase
 */
public record Phase(double startS, Network network, List<Mixing> mixings) {

    /**
     * Checks the time.
     *
     * @param startS start of the phase [s], finite, ≥ 0
     * @param network nodes and active paths
     * @param mixings what is mixed at the start of the phase, not modified
     * @throws IllegalArgumentException if the time is negative or not finite
     */
    public Phase {
        if (!(startS >= 0) || Double.isInfinite(startS)) {
            throw new IllegalArgumentException("phase starting at " + startS + " s: expected a finite time ≥ 0");
        }
        mixings = List.copyOf(mixings);
    }

    /**
     * A phase at whose start nothing is mixed.
     *
     * @param startS start of the phase [s], finite, ≥ 0
     * @param network nodes and active paths
     * @throws IllegalArgumentException if the time is negative or not finite
     */
    public Phase(double startS, Network network) {
        this(startS, network, List.of());
    }
}
