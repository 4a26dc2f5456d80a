/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.util.List;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.PouredStore;

/**
 * The nodes that hold a vessel's contents.
 *
 * @param nodes nodes, from the base of the vessel upwards or from its axis outwards
 * @param shares part of the contents in each, > 0; their sum is 1
 */
public record Contents(List<Node> nodes, List<Double> shares) {

    /**
     * Copies the lists.
     *
     * @param nodes nodes, not modified
     * @param shares part of the contents in each, not modified
     * @throws IllegalArgumentException if the lists differ in length or are empty
     */
    public Contents {
        nodes = List.copyOf(nodes);
        shares = List.copyOf(shares);
        if (nodes.isEmpty() || nodes.size() != shares.size()) {
            throw new IllegalArgumentException(nodes.size() + " nodes and " + shares.size()
                    + " shares: expected as many shares as nodes, at least one");
        }
    }

    /**
     * Contents in one node.
     *
     * @param node the node
     * @return the contents
     */
    public static Contents of(Node node) {
        return new Contents(List.of(node), List.of(1.0));
    }

    double meanK(Trajectory run, double timeS) {
        double sum = 0;
        for (int i = 0; i < nodes.size(); i++) {
            sum += shares.get(i) * run.temperatureK(nodes.get(i), timeS);
        }
        return sum;
    }

    /** Mass of ice per mass of contents in each node [-]. */
    double[] iceFractions(Trajectory run, double timeS) {
        return nodes.stream().mapToDouble(node -> iceFraction(node, run, timeS)).toArray();
    }

    private static double iceFraction(Node node, Trajectory run, double timeS) {
        if (node.store() instanceof PouredStore store) {
            return store.iceFraction(run.enthalpyJ(node, timeS), run.amount(node, PouredStore.MASS, timeS));
        }
        return node.store() instanceof FreezingStore store
                ? store.iceFractionAtEnthalpy(run.enthalpyJ(node, timeS))
                : 0;
    }
}
