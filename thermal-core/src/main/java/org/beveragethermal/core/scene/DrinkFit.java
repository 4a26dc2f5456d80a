/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.HeatFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.liquid.Liquid;

/**
 * What films and surfaces need of a drink, fitted once for all vessels that hold it and for all that is poured and drunk: a fit for every sip
 * would cost more than the run.
 *
 * @param fluid for the films
 * @param specificEnthalpy of the drink [J/kg] against temperature [K]
 */
record DrinkFit(Fluid fluid, SmoothFunction specificEnthalpy) {

    static DrinkFit of(Liquid liquid) {
        return new DrinkFit(Fluid.of(liquid), HeatFit.specificEnthalpyOf(liquid));
    }
}
