/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.ChangedState;
import org.beveragethermal.core.solver.StateChange;

/**
 * Drink that goes from vessel to vessel, or is drunk: a mass and its part of the enthalpy, at the mean temperature of what it is taken
 * from. What is drunk leaves the run, and the ledger has an account of it.
 *
 * @param moved what is moved, in this order
 * @param contents nodes of contents by vessel, each with its mass as the one amount
 */
record PourChange(List<Pours.Moved> moved, Map<String, Node> contents) implements StateChange {

    private static final int MASS = 0;

    PourChange {
        moved = List.copyOf(moved);
        contents = Map.copyOf(contents);
    }

    @Override
    public void apply(ChangedState state) {
        moved.forEach(one -> apply(one, state));
    }

    private void apply(Pours.Moved one, ChangedState state) {
        Pours.Asked asked = one.asked();
        Node from = Objects.requireNonNull(contents.get(asked.from()));
        double here = state.amount(from, MASS);
        double enthalpy = state.enthalpyJ(from);
        boolean all = one.leftKg() == 0;
        boolean sip = asked.kind() == Pours.Kind.SIP;
        double planned = one.massKg();
        double mass = all ? here : sip ? here * planned / (planned + one.leftKg()) : planned;
        if (!all && !sip && here - mass < 0.5 * one.leftKg()) {
            throw new IllegalArgumentException(one.massKg() + " kg " + asked.words()
                    + ": so much of it has evaporated that " + here + " kg are there; expected less, or all of it");
        }
        double heat = all ? enthalpy : enthalpy * (mass / here);
        state.set(from, all ? 0 : enthalpy - heat, all ? 0 : here - mass);
        if (asked.to().isEmpty()) {
            state.bring("drunk", "drink", from.name(), "whoever drinks", heat);
        } else {
            Node to = Objects.requireNonNull(contents.get(asked.to()));
            state.set(to, state.enthalpyJ(to) + heat, state.amount(to, MASS) + mass);
        }
    }
}
