/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.List;
import java.util.function.Supplier;

/**
 * Why no choice is better than the one found, or why there is none, so that {@link CertificateCheck} can follow it without searching.
 *
 * <p>Items fall into parts that share nothing. For a part and a level the claim is: no choice for these items keeps the capacity of all gear
 * and costs at most so much in each level up to this one. The proof is a tree. At each node weights are given to some of these limits;
 * summed with the weights, the limits of all make one inequality, and a route with which that inequality cannot hold, even if every other item
 * takes the route lightest by these weights, is struck out. A node in which some item has no route left is done; any other divides the routes
 * of an item among further nodes.
 *
 * @param parts the parts; every item of the problem belongs to one of them, or for a proof that there is no choice, some items do
 */
public record Certificate(List<Part> parts) {
    /**
     * Copies the parts.
     *
     * @param parts the parts
     */
    public Certificate {
        parts = List.copyOf(parts);
    }

    /**
     * Items that are proven together.
     *
     * @param items ids of the items
     * @param outdone routes that need not be looked at, in the order in which they are struck out
     * @param proofs one proof for each level, the most important first, fewer if a limit was reached; or, where there is no choice, one proof
     *     without limits of cost
     */
    public record Part(List<String> items, List<Outdone> outdone, List<Proof> proofs) {
        /**
         * Copies the lists.
         *
         * @param items ids of the items
         * @param outdone routes that need not be looked at
         * @param proofs one proof for each level
         */
        public Part {
            items = List.copyOf(items);
            outdone = List.copyOf(outdone);
            proofs = List.copyOf(proofs);
        }
    }

    /**
     * A route beside another of its item that costs no more in any level and takes no more of any gear in any slot.
     *
     * @param item id of the item
     * @param route id of the route that need not be looked at
     * @param better id of the other, which is not struck out before
     */
    public record Outdone(String item, String route, String better) {}

    /**
     * That no choice for the items of the part keeps the capacities and these limits of cost. The tree of a long search is large; it is put into
     * names each time when it is asked for.
     */
    public static final class Proof {
        private final List<Long> costLimits;
        private final Supplier<Node> root;

        Proof(List<Long> costLimits, Supplier<Node> root) {
            this.costLimits = List.copyOf(costLimits);
            this.root = root;
        }

        /**
         * A proof that is at hand.
         *
         * @param costLimits the most that the levels may cost, from level 0
         * @param root the tree
         * @return the proof
         */
        public static Proof of(List<Long> costLimits, Node root) {
            return new Proof(costLimits, () -> root);
        }

        /**
         * The limits of cost.
         *
         * @return the most that the levels may cost, from level 0; for the last of them the claim is that it is too little. Empty for the claim
         *     that the capacities alone cannot be kept
         */
        public List<Long> costLimits() {
            return costLimits;
        }

        /**
         * The tree of the proof.
         *
         * @return its root
         */
        public Node root() {
            return root.get();
        }
    }

    /**
     * A node of the tree.
     *
     * @param weights weighted sums of the limits, used one after the other to strike out routes
     * @param branches how the routes left to one item are divided; empty if some item has none left
     */
    public record Node(List<Weights> weights, List<Branch> branches) {
        /**
         * Copies the lists.
         *
         * @param weights weighted sums of the limits
         * @param branches how the routes left to one item are divided
         */
        public Node {
            weights = List.copyOf(weights);
            branches = List.copyOf(branches);
        }
    }

    /**
     * One of the cases at a node: the item takes one of these routes. Items that are the same in costs and loads of all routes left to them may be
     * exchanged, so the item is taken to be the one whose case comes first: in later cases the others do not take routes of earlier ones.
     *
     * @param item id of the item, the same in all branches of a node
     * @param routes ids of the routes of this case
     * @param node what follows
     */
    public record Branch(String item, List<String> routes, Node node) {
        /**
         * Copies the routes.
         *
         * @param item id of the item
         * @param routes ids of the routes of this case
         * @param node what follows
         */
        public Branch {
            routes = List.copyOf(routes);
        }
    }

    /**
     * Weights of limits, in whole numbers, none negative. Limits that are not named weigh nothing.
     *
     * @param onSlots weights of the capacities
     * @param onLevels weights of the limits of cost, from level 0; may be shorter than the list of limits
     */
    public record Weights(List<OnSlot> onSlots, List<Long> onLevels) {
        /**
         * Copies the lists.
         *
         * @param onSlots weights of the capacities
         * @param onLevels weights of the limits of cost, from level 0
         */
        public Weights {
            onSlots = List.copyOf(onSlots);
            onLevels = List.copyOf(onLevels);
        }
    }

    /**
     * The weight of the capacity of one gear in one slot.
     *
     * @param gearId id of the gear
     * @param slot the slot
     * @param weight the weight
     */
    public record OnSlot(String gearId, int slot, long weight) {}
}
