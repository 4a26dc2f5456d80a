/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.HeatFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * What films, surfaces and stores need of a drink, fitted once for all vessels that hold it, for all that is poured and drunk and for all
 * runs of one model: a fit for every sip would cost more than the run. Immutable.
 *
 * @param fluid for the films
 * @param specificEnthalpy of the drink [J/kg] against temperature [K]
 * @param kilogram a store of 1 kg: a {@link FreezingStore} of a drink that may freeze, else a {@link LiquidStore}
 */
record DrinkFit(Fluid fluid, SmoothFunction specificEnthalpy, Store kilogram) {

    static DrinkFit of(Liquid liquid) {
        // A drink may freeze; of other liquids no freezing curve is known.
        Store kilogram =
                liquid instanceof Beverage drink ? FreezingStore.ofMass(drink, 1) : LiquidStore.ofMass(liquid, 1);
        return new DrinkFit(Fluid.of(liquid), HeatFit.specificEnthalpyOf(liquid), kilogram);
    }

    Store store(double massKg) {
        return kilogram instanceof FreezingStore freezing
                ? freezing.withMass(massKg)
                : ((LiquidStore) kilogram).withMass(massKg);
    }
}
