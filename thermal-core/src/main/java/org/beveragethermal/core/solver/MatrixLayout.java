/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.beveragethermal.core.network.PreparedNetwork;

/** Where the unknowns of a network stand in a banded matrix. */
final class MatrixLayout {

    /** As narrow as the fast forms of {@link StepMatrix}: no other order is looked for. */
    private static final int NARROW = 2;

    /** New place of each unknown. */
    final int[] position;

    /** Largest distance of coupled unknowns. */
    final int band;

    private MatrixLayout(int[] position, int band) {
        this.position = position;
        this.band = band;
    }

    /** Whether every unknown has its own place. */
    boolean isNatural() {
        for (int i = 0; i < position.length; i++) {
            if (position[i] != i) {
                return false;
            }
        }
        return true;
    }

    static MatrixLayout of(int size, PreparedNetwork.Workspace workspace) {
        int[] natural = new int[size];
        for (int i = 0; i < size; i++) {
            natural[i] = i;
        }
        int[] width = new int[1];
        workspace.jacobian((row, column, value) -> width[0] = Math.max(width[0], Math.abs(row - column)));
        if (width[0] <= NARROW) {
            return new MatrixLayout(natural, width[0]);
        }
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
        return band < width[0] ? new MatrixLayout(position, band) : new MatrixLayout(natural, width[0]);
    }
}
