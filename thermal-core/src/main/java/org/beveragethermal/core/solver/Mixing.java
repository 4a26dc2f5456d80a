/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.List;
import org.beveragethermal.core.network.Node;

/**
 * Parts of one liquid that are mixed at a moment, as when a bottle is turned over: each gets its share of the enthalpy.
 *
 * <p>Energy is conserved exactly; amounts stay where they are.
 *
 * @param nodes the parts, at least two
 * @param shares each part's share, for instance its mass; all > 0
 */
public record Mixing(List<Node> nodes, List<Double> shares) implements StateChange {

    /**
     * Checks and copies the lists.
     *
     * @param nodes the parts, not modified
     * @param shares each part's share, not modified
     * @throws IllegalArgumentException if there are fewer than two parts, a share is not positive or the lists differ in length
     */
    public Mixing {
        nodes = List.copyOf(nodes);
        shares = List.copyOf(shares);
        if (nodes.size() < 2 || nodes.size() != shares.size()) {
            throw new IllegalArgumentException(nodes.size() + " parts and " + shares.size()
                    + " shares: expected as many shares as parts, at least two");
        }
        for (double share : shares) {
            if (!(share > 0) || Double.isInfinite(share)) {
                throw new IllegalArgumentException("share " + share + ": expected a finite value above 0");
            }
        }
    }

    @Override
    public void apply(ChangedState state) {
        double enthalpy = 0;
        double sum = 0;
        for (int i = 0; i < nodes.size(); i++) {
            enthalpy += state.enthalpyJ(nodes.get(i));
            sum += shares.get(i);
        }
        for (int i = 0; i < nodes.size(); i++) {
            state.setEnthalpyJ(nodes.get(i), enthalpy * shares.get(i) / sum);
        }
    }
}
