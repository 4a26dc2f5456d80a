/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

/**
 * Maps the enthalpy of a node, and its amounts, to its temperature.
 *
 * <p>Enthalpy is counted from liquid water at 0 °C. Implementations are immutable and thread-safe, and answer for any
 * finite state: outside the range of their properties they continue smoothly instead of failing, because an implicit
 * integrator may look there on its way.
 *
 * <p>Theory manual, equation (1.2).
 */
public interface Store {

    /**
     * Number of amounts (kilograms, a block's side, …) that belong to the state.
     *
     * @return ≥ 0
     */
    int amountCount();

    /**
     * Evaluates one state.
     *
     * @param enthalpyJ enthalpy [J], finite
     * @param amounts array that holds this node's amounts from {@code offset} on, not modified
     * @param offset index of the first amount
     * @param out receives temperature and slopes
     */
    void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out);

    /**
     * The enthalpy at a temperature.
     *
     * @param temperatureK temperature [K]
     * @param amounts this node's amounts, length {@link #amountCount}, not modified
     * @return enthalpy [J]
     */
    double enthalpyJ(double temperatureK, double... amounts);
}
