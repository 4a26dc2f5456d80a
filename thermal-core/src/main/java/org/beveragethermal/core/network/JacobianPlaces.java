/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/**
 * Where the parts of a Jacobian go in a matrix kept as one array, so that nothing has to be looked up while a run goes on.
 *
 * <p>Made by {@link PreparedNetwork#places}; immutable.
 */
public final class JacobianPlaces {

    /** Four for each direct link: row and column at the giver, giver and taker, taker and giver, taker. */
    final int[] links;
    /** In the order in which the other paths state theirs. */
    final int[] others;

    JacobianPlaces(int[] links, int[] others) {
        this.links = links;
        this.others = others;
    }
}
