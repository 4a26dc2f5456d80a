/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.List;

/**
 * Carries heat, and where they move amounts, between two or more ends.
 *
 * <p>A path declares its ends and accounts once and states, at each evaluation, the flow on every account and its
 * derivatives in the temperatures and amounts of its ends and in its multipliers. What leaves one end enters another,
 * because accounts pair them. Wrong derivatives cost steps and accuracy, never the balance.
 *
 * <p>Implementations are immutable and thread-safe, return finite flows for any finite input (an implicit step may try
 * states outside the physical range), are smooth where their drive vanishes and write every derivative whenever {@link
 * PathEvaluation#wantsDerivatives} is true.
 */
public interface Path {

    /**
     * The name in ledgers and messages.
     *
     * @return non-blank, unique among the active paths
     */
    String name();

    /**
     * What the path joins.
     *
     * @return two or more ends, or one where an amount changes by itself; the same list at each call
     */
    List<End> ends();

    /**
     * The flows this path states.
     *
     * @return accounts, the same list at each call
     */
    List<Account> accounts();

    /**
     * Names of the factors that scale this path's laws; paths that use the same name share the factor.
     *
     * @return names, possibly empty; the same list at each call
     */
    default List<String> multipliers() {
        return List.of();
    }

    /**
     * Times at which what the path states depends on time otherwise than smoothly, beside the knots of its boundaries; the
     * solver ends a step there.
     *
     * @return times [s]; empty if there are none
     */
    default double[] knots() {
        return new double[0];
    }

    /**
     * Whether the path looks at time in no other way than through the temperatures of its ends.
     *
     * @return true if {@link PathEvaluation#timeS} never matters; false unless a path says so
     */
    default boolean isSteady() {
        return false;
    }

    /**
     * States flows and derivatives.
     *
     * @param e inputs and outputs
     */
    void evaluate(PathEvaluation e);
}
