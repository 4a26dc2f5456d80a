/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.Objects;

/**
 * A part of the network that holds enthalpy and perhaps amounts.
 *
 * <p>Immutable; two nodes are the same only if they are the same object.
 */
public final class Node implements End {

    private final String name;
    private final Store store;
    private final double enthalpyJ;
    private final double[] amounts;

    private Node(String name, Store store, double enthalpyJ, double[] amounts) {
        this.name = requireName(name);
        this.store = Objects.requireNonNull(store, "store");
        this.enthalpyJ = enthalpyJ;
        this.amounts = amounts.clone();
    }

    /**
     * A node of constant heat capacity.
     *
     * @param name non-blank name, unique in its network
     * @param capacityJPerK heat capacity [J/K], finite, > 0
     * @param temperatureK temperature at the start [K], finite, > 0
     * @return the node
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Node sensible(String name, double capacityJPerK, double temperatureK) {
        return of(name, new SensibleStore(capacityJPerK), temperatureK);
    }

    /**
     * A node with any store.
     *
     * @param name non-blank name, unique in its network
     * @param store maps enthalpy and amounts to temperature
     * @param temperatureK temperature at the start [K], finite, > 0
     * @param amounts amounts at the start, length {@link Store#amountCount}, finite, ≥ 0, not modified
     * @return the node
     * @throws IllegalArgumentException if an argument is outside its range, the number of amounts is wrong or the store has no
     *     finite enthalpy for them
     */
    public static Node of(String name, Store store, double temperatureK, double... amounts) {
        requireTemperature(name, temperatureK);
        if (amounts.length != store.amountCount()) {
            throw new IllegalArgumentException(
                    "node " + name + ": " + amounts.length + " amounts, expected " + store.amountCount());
        }
        for (double amount : amounts) {
            if (!(amount >= 0) || Double.isInfinite(amount)) {
                throw new IllegalArgumentException(
                        "node " + name + ": amount " + amount + ", expected a finite value ≥ 0");
            }
        }
        double enthalpyJ = store.enthalpyJ(temperatureK, amounts);
        if (!Double.isFinite(enthalpyJ)) {
            throw new IllegalArgumentException("node " + name + " at " + temperatureK
                    + " K: its store gives an enthalpy of " + enthalpyJ + " J, expected a finite number");
        }
        return new Node(name, store, enthalpyJ, amounts);
    }

    @Override
    public String name() {
        return name;
    }

    /**
     * The store of this node.
     *
     * @return the map from enthalpy and amounts to temperature
     */
    public Store store() {
        return store;
    }

    /**
     * Enthalpy at the start.
     *
     * @return enthalpy [J] above liquid water at 0 °C
     */
    public double enthalpyJ() {
        return enthalpyJ;
    }

    /**
     * Amounts at the start.
     *
     * @return a copy, length {@link Store#amountCount}
     */
    public double[] amounts() {
        return amounts.clone();
    }

    @Override
    public String toString() {
        return "node " + name;
    }

    static String requireName(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("name '" + name + "': expected a name that is not blank");
        }
        return name;
    }

    static void requireTemperature(String name, double temperatureK) {
        if (!(temperatureK > 0) || Double.isInfinite(temperatureK)) {
            throw new IllegalArgumentException(
                    name + " at " + temperatureK + " K: expected a finite temperature above 0 K");
        }
    }
}
