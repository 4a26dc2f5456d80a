/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Whole weights on rows of a model, and what follows from the inequality that they sum the limits to.
 *
 * <p>Theory manual, equation (9.2).
 */
final class Cut {
    private static final long MOST = 1L << 59;

    private final int[] row;
    private final long[] weight;
    /** Whether a proof needs it. */
    boolean needed;

    private Cut(int[] row, long[] weight) {
        this.row = row;
        this.weight = weight;
    }

    /** Weight 1 on one row. */
    static Cut unit(int row) {
        return new Cut(new int[] {row}, new long[] {1});
    }

    /** The weights that are not 0. */
    static Cut of(long[] weights) {
        int[] row =
                IntStream.range(0, weights.length).filter(q -> weights[q] != 0).toArray();
        return new Cut(row, Arrays.stream(row).mapToLong(q -> weights[q]).toArray());
    }

    /** What comes of a cut under given limits. */
    static final class Sum {
        /** The weighed sum of each route. */
        final long[] ofRoute;
        /** The least of these for each item, over the routes left. */
        final long[] leastOfItem;
        /** The sum of the least, less the weighed limits: above 0 means that the limits cannot be kept. */
        final long excess;

        Sum(long[] ofRoute, long[] leastOfItem, long excess) {
            this.ofRoute = ofRoute;
            this.leastOfItem = leastOfItem;
            this.excess = excess;
        }
    }

    /**
     * Sums with the weights.
     *
     * @throws ArithmeticException if the weights are too large for whole numbers of 64 bits
     */
    Sum sum(Model model, BitSet alive, long[] costLimits) {
        long[] dense = new long[model.capacities() + model.levels()];
        long limits = 0;
        for (int e = 0; e < row.length; e++) {
            int q = row[e];
            dense[q] = weight[e];
            long limit = q < model.capacities() ? model.slots.get(q).capacity() : costLimits[q - model.capacities()];
            limits = Math.addExact(limits, Math.multiplyExact(weight[e], limit));
        }
        long[] ofRoute = new long[model.routes.size()];
        long[] least = new long[model.items()];
        long total = 0;
        for (int i = 0; i < least.length; i++) {
            least[i] = Long.MAX_VALUE;
            for (int r = alive.nextSetBit(model.first[i]);
                    r >= 0 && r < model.first[i + 1];
                    r = alive.nextSetBit(r + 1)) {
                ofRoute[r] = ofRoute(model, r, dense);
                least[i] = Math.min(least[i], modest(ofRoute[r]));
            }
            total = modest(Math.addExact(total, least[i]));
        }
        return new Sum(ofRoute, least, modest(Math.subtractExact(total, limits)));
    }

    /** Leaves room for a few further sums. */
    static long modest(long sum) {
        if (Math.abs(sum) > MOST) {
            throw new ArithmeticException("a weighed sum is too large: " + sum);
        }
        return sum;
    }

    private static long ofRoute(Model model, int route, long[] weights) {
        long sum = 0;
        int[] rows = model.rows[route];
        for (int e = 0; e < rows.length; e++) {
            if (weights[rows[e]] != 0) {
                sum = Math.addExact(sum, Math.multiplyExact(weights[rows[e]], model.places[route][e]));
            }
        }
        for (int k = 0; k < model.levels(); k++) {
            long weight = weights[model.capacities() + k];
            if (weight != 0) {
                sum = Math.addExact(sum, Math.multiplyExact(weight, model.costs[k][route]));
            }
        }
        return sum;
    }

    /** Strikes out the routes with which the limits cannot be kept; true if there were any. */
    static boolean strike(Model model, BitSet alive, Sum sum) {
        boolean any = false;
        for (int r = alive.nextSetBit(0); r >= 0; r = alive.nextSetBit(r + 1)) {
            if (sum.excess + (sum.ofRoute[r] - sum.leastOfItem[model.itemOf[r]]) > 0) {
                alive.clear(r);
                any = true;
            }
        }
        return any;
    }

    Certificate.Weights weights(Model model) {
        List<Certificate.OnSlot> onSlots = new ArrayList<>();
        List<Long> onLevels = new ArrayList<>();
        for (int e = 0; e < row.length; e++) {
            if (row[e] < model.capacities()) {
                Model.Slot slot = model.slots.get(row[e]);
                onSlots.add(new Certificate.OnSlot(slot.gearId(), slot.slot(), weight[e]));
            } else {
                while (onLevels.size() < row[e] - model.capacities()) {
                    onLevels.add(0L);
                }
                onLevels.add(weight[e]);
            }
        }
        return new Certificate.Weights(onSlots, onLevels);
    }

    Cut copy() {
        return new Cut(row, weight);
    }

    boolean weighs(int q) {
        return Arrays.binarySearch(row, q) >= 0;
    }

    /** The last row with a weight, -1 if there is none. */
    int lastRow() {
        return row.length == 0 ? -1 : row[row.length - 1];
    }

    int[] rows() {
        return row.clone();
    }
}
