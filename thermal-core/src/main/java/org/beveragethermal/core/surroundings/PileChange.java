/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.ChangedState;
import org.beveragethermal.core.solver.StateChange;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Ice;

/**
 * Adding ice to a bucket of ice and pouring off its melt water, as a map of its state.
 *
 * @param id the gear's id
 * @param when names the moment in refusals
 * @param gear the gear as it was described
 * @param ice the ice, which counts its blocks
 * @param water the melt water
 * @param store what the melt water does with enthalpy
 * @param tendings what is done, in this order
 * @param runOffKg water that stands above the rim at the end and runs off
 * @param blocks number of blocks afterwards
 */
record PileChange(
        String id,
        String when,
        BareIce gear,
        Node ice,
        Node water,
        MeltStore store,
        List<Tending> tendings,
        double runOffKg,
        double blocks)
        implements StateChange {

    private static final double DENSITY = Ice.density(273.15);

    @Override
    public void apply(ChangedState state) {
        double iceKg = state.amount(ice, IceStore.MASS);
        double iceJ = state.enthalpyJ(ice);
        double side = state.amount(ice, IceStore.SIDE);
        for (Tending tending : tendings) {
            if (tending instanceof Tending.AddIce added) {
                double joules = ice.store().enthalpyJ(added.temperatureK(), added.massKg(), 0, 0);
                state.bring(id + " tended", "adding ice", id + " ice added", ice.name(), joules);
                iceJ += joules;
                iceKg += added.massKg();
                side = Math.cbrt(Math.max(0, iceKg) / (DENSITY * blocks));
            } else if (tending instanceof Tending.PourOff poured) {
                take(state, poured.massKg(), "poured off");
            }
        }
        if (runOffKg > 0) {
            take(state, runOffKg, "over the rim");
        }
        new ValidityRange(
                        "volume of ice in " + id + " " + when, 0, gear.bucket().volumeM3() * gear.solidFraction(), "m³")
                .require(Math.max(0, iceKg) / DENSITY, "what the bucket holds of a pile of ice");
        state.set(ice, iceJ, iceKg, side, blocks);
    }

    private void take(ChangedState state, double massKg, String how) {
        double waterKg = Math.max(0, state.amount(water, 0));
        new ValidityRange("mass of water " + how + " of " + id + " " + when, 0, waterKg, "kg")
                .require(massKg, "the melt water that is there");
        double enthalpy = state.enthalpyJ(water);
        double joules = massKg * store.specificEnthalpyJPerKg(enthalpy, waterKg);
        state.bring(id + " tended", "water " + how, water.name(), id + " water " + how, joules);
        state.set(water, enthalpy - joules, waterKg - massKg);
    }
}
