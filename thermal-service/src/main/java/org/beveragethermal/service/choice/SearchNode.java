/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.BitSet;

/** A case still to be looked at. */
final class SearchNode {
    final long number;
    /** Routes not struck out. */
    final BitSet alive;
    /** What the branches above allow, whatever was struck out. */
    final BitSet allowed;

    final ProofTree proof;
    /** No choice in this case costs less. */
    long bound;
    /** The weights that show it. */
    Cut boundBy;

    SearchNode(long number, BitSet alive, BitSet allowed, ProofTree proof, long bound, Cut boundBy) {
        this.number = number;
        this.alive = alive;
        this.allowed = allowed;
        this.proof = proof;
        this.bound = bound;
        this.boundBy = boundBy;
    }

    /** Takes a bound if it is better. */
    void bound(long by, Cut cut) {
        if (by > bound) {
            bound = by;
            boundBy = cut;
        }
    }
}
