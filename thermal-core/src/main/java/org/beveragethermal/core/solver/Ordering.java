/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Set;

/**
 * Reverse Cuthill–McKee: an order of the unknowns in which coupled ones stand close together, so that the matrix is
 * banded (E. Cuthill and J. McKee, Proc. 24th ACM National Conference, 1969; reversed after A. George, 1971).
 */
final class Ordering {

    private Ordering() {}

    /**
     * Orders a symmetric pattern.
     *
     * @param neighbours for each unknown the unknowns it is coupled with
     * @return position[i] is the new place of unknown i
     */
    static int[] reverseCuthillMcKee(List<? extends Set<Integer>> neighbours) {
        int n = neighbours.size();
        boolean[] seen = new boolean[n];
        List<Integer> order = new ArrayList<>();
        Comparator<Integer> byDegree =
                Comparator.<Integer>comparingInt(i -> neighbours.get(i).size()).thenComparingInt(i -> i);
        while (order.size() < n) {
            int start = -1;
            for (int i = 0; i < n; i++) {
                if (!seen[i] && (start < 0 || byDegree.compare(i, start) < 0)) {
                    start = i;
                }
            }
            Deque<Integer> queue = new ArrayDeque<>();
            queue.add(start);
            seen[start] = true;
            while (!queue.isEmpty()) {
                int next = queue.remove();
                order.add(next);
                neighbours.get(next).stream()
                        .filter(i -> !seen[i])
                        .sorted(byDegree)
                        .forEach(i -> {
                            seen[i] = true;
                            queue.add(i);
                        });
            }
        }
        int[] position = new int[n];
        for (int i = 0; i < n; i++) {
            position[order.get(i)] = n - 1 - i;
        }
        return position;
    }
}
