/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;

/**
 * The state of a run while a {@link StateChange} works on it. Mutable; not thread-safe.
 */
public final class ChangedState {

    private final PreparedNetwork network;
    private final double[] state;
    private final List<LedgerEntry> brought = new ArrayList<>();

    ChangedState(PreparedNetwork network, double[] state) {
        this.network = network;
        this.state = state.clone();
    }

    double[] values() {
        return state;
    }

    List<LedgerEntry> brought() {
        return brought;
    }

    /**
     * Enthalpy of a node.
     *
     * @param node a node of the run
     * @return enthalpy [J] above liquid water at 0 °C
     * @throws IllegalArgumentException if the node is not in the run
     */
    public double enthalpyJ(Node node) {
        return state[network.offset(node)];
    }

    /**
     * An amount of a node.
     *
     * @param node a node of the run
     * @param amount index of the amount, below the store's number of amounts
     * @return the amount, as the integrator left it: perhaps slightly negative
     * @throws IllegalArgumentException if the node is not in the run
     */
    public double amount(Node node, int amount) {
        return state[network.offset(node) + 1 + amount];
    }

    void setEnthalpyJ(Node node, double enthalpyJ) {
        state[network.offset(node)] = enthalpyJ;
    }

    /**
     * Gives a node a new state.
     *
     * @param node a node of the run
     * @param enthalpyJ enthalpy [J], finite
     * @param amounts all of its amounts, finite, not modified
     * @throws IllegalArgumentException if the node is not in the run, the number of amounts is wrong or a number is not finite
     */
    public void set(Node node, double enthalpyJ, double... amounts) {
        boolean finite = Double.isFinite(enthalpyJ);
        for (double amount : amounts) {
            finite &= Double.isFinite(amount);
        }
        if (!finite || amounts.length != node.store().amountCount()) {
            throw new IllegalArgumentException("change of " + node + " to " + enthalpyJ + " J and " + amounts.length
                    + " amounts: expected finite numbers and " + node.store().amountCount() + " amounts");
        }
        int offset = network.offset(node);
        state[offset] = enthalpyJ;
        System.arraycopy(amounts, 0, state, offset + 1, amounts.length);
    }

    /**
     * Books enthalpy that a change brings from outside the run, or takes out of it; the state itself is {@linkplain #set set}
     * apart from this.
     *
     * @param change name of what is done, such as {@code bath topped up}
     * @param mechanism what carries the enthalpy, such as {@code ice}
     * @param from name of what gives
     * @param to name of what takes; one of the two is a node
     * @param heatJ enthalpy [J] from one to the other, negative for ice
     */
    public void bring(String change, String mechanism, String from, String to, double heatJ) {
        brought.add(new LedgerEntry(change, mechanism, from, to, heatJ));
    }
}
