/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * A stated change of state at the start of a phase, such as mixing a liquid or adding ice to a bath.
 *
 * <p>It is a map of states: it may move enthalpy and amounts between nodes, and what comes from outside or leaves it must {@linkplain
 * ChangedState#bring say}, or the ledger does not close. It answers for every state near those of the run, because sensitivities are
 * carried across it by differences.
 */
@FunctionalInterface
public interface StateChange {

    /**
     * Changes a state.
     *
     * @param state the state at the end of the phase before; modified
     * @throws IllegalArgumentException if the change is not possible from there, such as pouring off more than there is
     */
    void apply(ChangedState state);
}
