/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.List;

/**
 * The heat balance of a run up to a time: every account, and how well it closes.
 *
 * @param entries one per path, mechanism and pair of ends
 * @param largestImbalanceJ largest difference over all nodes between the change of enthalpy and the sum of their
 *     accounts [J]
 * @param totalHeatJ sum of the absolute heat on all accounts [J]
 */
public record Ledger(List<LedgerEntry> entries, double largestImbalanceJ, double totalHeatJ) {

    /**
     * Copies the entries.
     *
     * @param entries one per path, mechanism and pair of ends, not modified
     * @param largestImbalanceJ largest imbalance of a node [J]
     * @param totalHeatJ sum of the absolute heat on all accounts [J]
     */
    public Ledger {
        entries = List.copyOf(entries);
    }

    /**
     * How well the balance closes.
     *
     * @return imbalance over total heat [-]; 0 if nothing flowed
     */
    public double closure() {
        return totalHeatJ == 0 ? 0 : largestImbalanceJ / totalHeatJ;
    }

    /**
     * Heat that an end received, net, from all others.
     *
     * @param end name of a node or boundary
     * @return heat [J], negative if it gave
     */
    public double heatInto(String end) {
        double sum = 0;
        for (LedgerEntry entry : entries) {
            if (entry.to().equals(end)) {
                sum += entry.heatJ();
            }
            if (entry.from().equals(end)) {
                sum -= entry.heatJ();
            }
        }
        return sum;
    }
}
