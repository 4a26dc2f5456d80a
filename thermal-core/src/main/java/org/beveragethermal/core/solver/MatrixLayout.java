/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.beveragethermal.core.network.PreparedNetwork;

/** Where the unknowns of a network stand in a banded matrix. */
final class MatrixLayout {

    /** New place of each unknown. */
    final int[] position;

    /** Largest distance of coupled unknowns. */
    final int band;

    private MatrixLayout(int[] position, int band) {
        this.position = position;
        this.band = band;
    }

    static MatrixLayout of(int size, PreparedNetwork.Workspace workspace) {
        List<TreeSet<Integer>> coupled = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            coupled.add(new TreeSet<>());
        }
        workspace.jacobian((row, column, value) -> {
            if (row != column) {
                coupled.get(row).add(column);
                coupled.get(column).add(row);
            }
        });
        int[] position = Ordering.reverseCuthillMcKee(coupled);
        int band = 0;
        for (int i = 0; i < size; i++) {
            for (int j : coupled.get(i)) {
                band = Math.max(band, Math.abs(position[i] - position[j]));
            }
        }
        return new MatrixLayout(position, band);
    }
}
