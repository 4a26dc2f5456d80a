/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.List;

/**
 * One flow of a path: who gives, who takes, and by which mechanism.
 *
 * <p>A heat account takes enthalpy from one end and gives the same to another. An amount account changes amounts in
 * fixed proportion (melting: −1 kg of ice, +1 kg of water). Conservation follows from the account, not from what a path
 * computes.
 *
 * <p>Theory manual, equation (1.1).
 *
 * @param mechanism what carries the flow, such as {@code convection}
 * @param heat whether the account carries heat [W]; otherwise an amount [unit/s]
 * @param entries what one unit of flow does to each end
 */
public record Account(String mechanism, boolean heat, List<Entry> entries) {

    /**
     * What one unit of flow does to one end.
     *
     * @param end index into {@link Path#ends}
     * @param amount index of the amount of that end, or −1 for its enthalpy
     * @param factor change per unit of flow
     */
    public record Entry(int end, int amount, double factor) {}

    /**
     * Checks and copies the entries.
     *
     * @param mechanism what carries the flow
     * @param heat whether the account carries heat
     * @param entries what one unit of flow does to each end, not modified
     */
    public Account {
        entries = List.copyOf(entries);
    }

    /**
     * Heat that leaves one end and enters another.
     *
     * @param mechanism what carries the heat
     * @param from index of the end that gives
     * @param to index of the end that takes
     * @return the account, flow in watts
     */
    public static Account heat(String mechanism, int from, int to) {
        return new Account(mechanism, true, List.of(new Entry(from, -1, -1), new Entry(to, -1, 1)));
    }

    /**
     * An amount that leaves one end and enters another.
     *
     * @param mechanism what carries the amount
     * @param from index of the end that gives
     * @param fromAmount index of its amount
     * @param to index of the end that takes
     * @param toAmount index of its amount
     * @return the account, flow in units of the amount per second
     */
    public static Account amount(String mechanism, int from, int fromAmount, int to, int toAmount) {
        return new Account(mechanism, false, List.of(new Entry(from, fromAmount, -1), new Entry(to, toAmount, 1)));
    }

    /**
     * A single amount that changes by itself, such as the side of a melting block.
     *
     * @param mechanism what changes it
     * @param end index of the end
     * @param amount index of its amount
     * @return the account, flow in units of the amount per second
     */
    public static Account change(String mechanism, int end, int amount) {
        return new Account(mechanism, false, List.of(new Entry(end, amount, 1)));
    }
}
