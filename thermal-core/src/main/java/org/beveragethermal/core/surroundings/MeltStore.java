/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.internal.HeatFit;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.materials.liquid.Water;

/**
 * Melt water that gathers from nothing: its one amount is the mass [kg].
 *
 * <p>What holds it counts as a little water that was at 0 °C when there was none, so that the temperature is defined from
 * the first drop on.
 */
final class MeltStore implements Store {

    /** Heat capacity of what holds the water, as water, per mass of ice; our simplification. */
    private static final double HOLDER_PART = 0.01;

    private static final double WATER_HEAT_CAPACITY = 4200;
    private static final double FUSION_J_PER_KG = 3.3e5;

    private final HeatFit water = HeatFit.of(Water.liquid());
    private final double holderKg;
    private final double errorCapacityJPerK;

    MeltStore(double iceKg) {
        holderKg = HOLDER_PART * iceKg;
        errorCapacityJPerK = WATER_HEAT_CAPACITY * iceKg;
    }

    double specificEnthalpyJPerKg(double enthalpyJ, double massKg) {
        return enthalpyJ / (massKg + holderKg);
    }

    @Override
    public int amountCount() {
        return 1;
    }

    @Override
    public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
        double mass = Math.max(0, amounts[offset]) + holderKg;
        double h = enthalpyJ / mass;
        double slope = water.temperatureOfEnthalpy().slope(h);
        out.temperatureK = water.temperatureOfEnthalpy().at(h);
        out.temperaturePerJoule = slope / mass;
        out.temperaturePerAmount[0] = amounts[offset] < 0 ? 0 : -slope * h / mass;
        out.kelvinPerJoule = slope / mass;
        out.kelvinPerAmount[0] = FUSION_J_PER_KG / errorCapacityJPerK;
    }

    @Override
    public double enthalpyJ(double temperatureK, double... amounts) {
        return (amounts[0] + holderKg) * water.specificEnthalpy().at(temperatureK);
    }
}
