/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/**
 * What a {@link Store} says of one state: temperature, its slopes, and how many kelvin an error is worth.
 *
 * <p>A mutable holder, reused by the solver; not thread-safe.
 */
public final class StoreState {

    /** Temperature [K]. */
    public double temperatureK;

    /** Slope of the temperature in the enthalpy at constant amounts [K/J]; 0 on a melting plateau. */
    public double temperaturePerJoule;

    /** Slope of the temperature in each amount at constant enthalpy [K per unit of the amount], length {@link Store#amountCount}. */
    public final double[] temperaturePerAmount;

    /** Error of one joule in kelvin [K/J], > 0: one over the sensible heat capacity, also on a melting plateau. */
    public double kelvinPerJoule;

    /** Error of one unit of each amount in kelvin [K per unit], ≥ 0, length {@link Store#amountCount}. */
    public final double[] kelvinPerAmount;

    /**
     * An empty holder.
     *
     * @param amountCount number of amounts of the store, ≥ 0
     */
    public StoreState(int amountCount) {
        temperaturePerAmount = new double[amountCount];
        kelvinPerAmount = new double[amountCount];
    }
}
