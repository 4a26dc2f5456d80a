/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.Objects;

/**
 * A factor that depends on one amount of one node, such as the part of a wall that a shrinking ice pack still touches.
 *
 * @param node whose amount decides
 * @param amount index of that amount
 * @param factor the factor as a function of the amount, ≥ 0
 */
public record AmountWeight(Node node, int amount, SmoothFunction factor) {

    /**
     * Checks the index.
     *
     * @param node whose amount decides
     * @param amount index of that amount
     * @param factor the factor as a function of the amount
     * @throws IllegalArgumentException if the node has no such amount
     */
    public AmountWeight {
        Objects.requireNonNull(factor, "factor");
        if (amount < 0 || amount >= node.store().amountCount()) {
            throw new IllegalArgumentException("amount " + amount + " of " + node + ": expected 0 to "
                    + (node.store().amountCount() - 1));
        }
    }
}
