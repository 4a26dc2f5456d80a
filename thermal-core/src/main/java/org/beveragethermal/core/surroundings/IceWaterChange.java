/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.List;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.solver.ChangedState;
import org.beveragethermal.core.solver.StateChange;
import org.beveragethermal.core.store.IceStore;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.solid.Ice;

/**
 * Adding ice or water to a bath, pouring off and stirring, as a map of its state. The water is one and mixed while it lasts, and is
 * shared out between the gaps of the ice and the clear water below at the end.
 *
 * @param id the gear's id
 * @param when names the moment in refusals
 * @param bath the bath as it was described
 * @param pack water among the ice
 * @param clear clear water
 * @param ice the ice, which counts its blocks
 * @param tendings what is done, in this order
 * @param runOffKg water that stands above the rim at the end and runs off
 * @param packWater how the water lies afterwards
 * @param waterEnthalpy specific enthalpy of water against its temperature
 */
record IceWaterChange(
        String id,
        String when,
        IceWaterBath bath,
        Node pack,
        Node clear,
        Node ice,
        List<Tending> tendings,
        double runOffKg,
        PackWater packWater,
        SmoothFunction waterEnthalpy)
        implements StateChange {

    private static final double DENSITY = Ice.density(273.15);

    @Override
    public void apply(ChangedState state) {
        new Work(state).run();
    }

    /** One application. */
    private final class Work {

        private final ChangedState state;
        private double waterKg;
        private double waterJ;
        private double iceKg;
        private double iceJ;
        private double left;
        private double blocks;

        Work(ChangedState state) {
            this.state = state;
            waterKg = state.amount(pack, 0) + state.amount(clear, 0);
            waterJ = state.enthalpyJ(pack) + state.enthalpyJ(clear);
            iceKg = state.amount(ice, IceStore.MASS);
            iceJ = state.enthalpyJ(ice);
            left = state.amount(ice, IceStore.SIDE);
            blocks = state.amount(ice, IceStore.BLOCKS);
        }

        void run() {
            for (Tending tending : tendings) {
                if (tending instanceof Tending.AddIce added) {
                    add(added);
                } else if (tending instanceof Tending.AddWater added) {
                    double joules = added.massKg() * waterEnthalpy.at(added.temperatureK());
                    waterKg += added.massKg();
                    waterJ += joules;
                    bring("adding water", id + " water added", pack.name(), joules);
                } else if (tending instanceof Tending.PourOff poured) {
                    take(poured.massKg(), "poured off");
                }
            }
            if (runOffKg > 0) {
                take(runOffKg, "over the rim");
            }
            requireRoom();
            double packKg = packWater.at(Math.max(0, iceKg));
            double clearKg = waterKg - packKg;
            state.set(pack, waterJ * packKg / waterKg, packKg);
            state.set(clear, waterJ * clearKg / waterKg, clearKg);
            state.set(ice, iceJ, iceKg, left, blocks);
        }

        private void bring(String mechanism, String from, String to, double joules) {
            state.bring(id + " tended", mechanism, from, to, joules);
        }

        private void add(Tending.AddIce added) {
            double joules = ice.store().enthalpyJ(added.temperatureK(), added.massKg(), 0, 0);
            bring("adding ice", id + " ice added", ice.name(), joules);
            iceJ += joules;
            IceCount together = new IceCount(bath.block(), blocks, left).plus(added.massKg());
            left = together.leftM();
            blocks = together.blocks();
            iceKg += added.massKg();
        }

        private void take(double massKg, String how) {
            double least = IceWaterBath.LEAST_WATER_PER_ICE * Math.max(0, iceKg);
            new ValidityRange("mass of water " + how + " of " + id + " " + when, 0, Math.max(0, waterKg - least), "kg")
                    .require(massKg, "the water that is there, but for a tenth of the ice");
            double joules = waterJ * massKg / waterKg;
            waterKg -= massKg;
            waterJ -= joules;
            bring("water " + how, pack.name(), id + " water " + how, joules);
        }

        private void requireRoom() {
            double least = IceWaterBath.LEAST_WATER_PER_ICE * Math.max(0, iceKg);
            new ValidityRange("mass of water in " + id + " " + when, least, Math.max(least, IceWaterBath.MOST_KG), "kg")
                    .require(waterKg, "at least a tenth of the ice");
            new ValidityRange(
                            "volume of ice in " + id + " " + when,
                            0,
                            bath.bucket().volumeM3() * bath.solidFraction(),
                            "m³")
                    .require(Math.max(0, iceKg) / DENSITY, "what the bucket holds of a pack of ice");
        }
    }
}
