/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;

/**
 * A porous body with water in it: its one amount is the water [kg], frozen or not, which evaporation takes away. It warms frozen, melts at
 * 0 °C and warms thawed.
 *
 * <p>Heat capacities are constant: water 4190 J/(kg K) and ice 2060 J/(kg K), means of 0 °C to 30 °C and of −15 °C to 0 °C (IAPWS-95 and
 * IAPWS R10-06, from memory), within 2 %. All of it freezes at 0 °C; water in fine pores does so later.
 *
 * @param dryJPerK heat capacity of the dry body [J/K], > 0
 * @param firstKg water at the start [kg], which weighs errors
 */
record WetStore(double dryJPerK, double firstKg) implements Store {

    /** Index of the water [kg]. */
    static final int WATER = 0;

    static final double WATER_J_PER_KG_K = 4190;
    static final double ICE_J_PER_KG_K = 2060;
    static final double FUSION_J_PER_KG = 333_430;
    private static final double ZERO_CELSIUS_K = 273.15;

    @Override
    public int amountCount() {
        return 1;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        boolean gone = amounts[offset] < 0;
        double water = gone ? 0 : amounts[offset];
        double thawed = dryJPerK + water * WATER_J_PER_KG_K;
        double frozen = dryJPerK + water * ICE_J_PER_KG_K;
        double below = enthalpyJ + water * FUSION_J_PER_KG;
        out.kelvinPerJoule = 1 / (below < 0 ? frozen : thawed);
        out.kelvinPerAmount[WATER] = FUSION_J_PER_KG / (dryJPerK + firstKg * WATER_J_PER_KG_K);
        if (enthalpyJ >= 0) {
            double above = enthalpyJ / thawed;
            out.temperatureK = ZERO_CELSIUS_K + above;
            out.temperaturePerJoule = 1 / thawed;
            out.temperaturePerAmount[WATER] = gone ? 0 : -above * WATER_J_PER_KG_K / thawed;
        } else if (below >= 0) {
            out.temperatureK = ZERO_CELSIUS_K;
            out.temperaturePerJoule = 0;
            out.temperaturePerAmount[WATER] = 0;
        } else {
            double under = below / frozen;
            out.temperatureK = ZERO_CELSIUS_K + under;
            out.temperaturePerJoule = 1 / frozen;
            out.temperaturePerAmount[WATER] = gone ? 0 : (FUSION_J_PER_KG - under * ICE_J_PER_KG_K) / frozen;
        }
    }

    /** At 0 °C all of it is taken as water. */
    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        double above = temperatureK - ZERO_CELSIUS_K;
        double water = Math.max(0, amounts[WATER]);
        return above >= 0
                ? above * (dryJPerK + water * WATER_J_PER_KG_K)
                : above * (dryJPerK + water * ICE_J_PER_KG_K) - water * FUSION_J_PER_KG;
    }
}
