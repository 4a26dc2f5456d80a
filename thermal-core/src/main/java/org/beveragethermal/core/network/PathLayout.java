/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/** Where the inputs, the derivatives and the accounts of a path sit in the flat arrays of a network. */
final class PathLayout {

    final Path path;
    /** For each end, its slot: nodes first, then boundaries. */
    final int[] slot;
    /** For each end, the row of its node's enthalpy; −1 for a boundary. */
    final int[] row;

    final int firstAccount;
    final int accounts;
    /** State columns on which the path depends, ascending. */
    final int[] columns;
    /** For each end: position of the node's enthalpy in {@link #columns}, −1 for a boundary. */
    final int[] enthalpyColumn;

    PathLayout(Path path, int[] slot, int[] row, int firstAccount) {
        this.path = path;
        this.slot = slot;
        this.row = row;
        this.firstAccount = firstAccount;
        List<End> ends = path.ends();
        accounts = path.accounts().size();
        TreeSet<Integer> all = new TreeSet<>();
        for (int e = 0; e < slot.length; e++) {
            if (ends.get(e) instanceof Node node) {
                for (int k = 0; k <= node.store().amountCount(); k++) {
                    all.add(row[e] + k);
                }
            }
        }
        columns = all.stream().mapToInt(Integer::intValue).toArray();
        enthalpyColumn = new int[slot.length];
        for (int e = 0; e < slot.length; e++) {
            enthalpyColumn[e] = row[e] < 0 ? -1 : Arrays.binarySearch(columns, row[e]);
        }
    }
}
