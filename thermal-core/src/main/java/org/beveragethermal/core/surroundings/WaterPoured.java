/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.ChangedState;
import org.beveragethermal.core.solver.StateChange;

/**
 * Water poured over something porous, as a map of its state: it brings its enthalpy, and what the pores do not hold runs off as it came.
 *
 * @param id the gear's id
 * @param node what takes up the water, with a {@link WetStore}
 * @param mostKg what its pores hold [kg]
 * @param tendings what is poured, in this order
 */
record WaterPoured(String id, Node node, double mostKg, List<Tending> tendings) implements StateChange {

    private static final double ZERO_CELSIUS_K = 273.15;

    /** The gear as it is, after water was poured over it. */
    static Tended over(Medium gear, String id, Node node, double mostKg, String when, List<Tending> tendings) {
        if (!tendings.stream().allMatch(Tending.AddWater.class::isInstance)) {
            throw new IllegalArgumentException(tendings + " of " + id + " " + when + ": expected water that is added");
        }
        return new Tended(gear, new WaterPoured(id, node, mostKg, List.copyOf(tendings)));
    }

    @Override
    public void apply(ChangedState state) {
        double water = state.amount(node, WetStore.WATER);
        double enthalpy = state.enthalpyJ(node);
        for (Tending tending : tendings) {
            if (tending instanceof Tending.AddWater poured) {
                double taken = Math.max(0, Math.min(poured.massKg(), mostKg - water));
                double joules = taken * WetStore.WATER_J_PER_KG_K * (poured.temperatureK() - ZERO_CELSIUS_K);
                state.bring(id + " tended", "adding water", id + " water added", node.name(), joules);
                enthalpy += joules;
                water += taken;
            }
        }
        state.set(node, enthalpy, water);
    }
}
