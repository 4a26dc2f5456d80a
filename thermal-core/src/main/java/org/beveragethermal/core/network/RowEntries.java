/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.ArrayList;
import java.util.List;

/** Which accounts change each row of a state, laid out one row after the other. */
final class RowEntries {

    /** Entries of row r are start[r] to start[r + 1] of the other two. */
    private final int[] start;

    private final int[] account;
    private final double[] factor;

    private RowEntries(int[] start, int[] account, double[] factor) {
        this.start = start;
        this.account = account;
        this.factor = factor;
    }

    /** Sums up what flows on the accounts do to the state. */
    void sum(double[] flows, double[] rates) {
        int entry = 0;
        for (int r = 0; r + 1 < start.length; r++) {
            int end = start[r + 1];
            double sum = 0;
            while (entry < end) {
                sum += factor[entry] * flows[account[entry]];
                entry++;
            }
            rates[r] = sum;
        }
    }

    /** Collects entries in any order of rows. */
    static final class Builder {

        private record Entry(int account, double factor) {}

        private final List<List<Entry>> rows = new ArrayList<>();
        private int count;

        Builder(int size) {
            for (int r = 0; r < size; r++) {
                rows.add(new ArrayList<>(4));
            }
        }

        void add(int row, int account, double factor) {
            rows.get(row).add(new Entry(account, factor));
            count++;
        }

        RowEntries build() {
            int[] start = new int[rows.size() + 1];
            int[] account = new int[count];
            double[] factor = new double[count];
            int next = 0;
            for (int r = 0; r < rows.size(); r++) {
                for (Entry entry : rows.get(r)) {
                    account[next] = entry.account();
                    factor[next++] = entry.factor();
                }
                start[r + 1] = next;
            }
            return new RowEntries(start, account, factor);
        }
    }
}
