/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/** What a path can be attached to: a node of the network or a boundary with a given temperature. */
public sealed interface End permits Node, Boundary {

    /**
     * The name by which ledgers and messages call this end.
     *
     * @return a non-blank name
     */
    String name();
}
