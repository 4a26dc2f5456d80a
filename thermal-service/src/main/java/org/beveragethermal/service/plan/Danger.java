/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import org.beveragethermal.core.hazard.ThermalShock;
import org.beveragethermal.core.hazard.WallMargin;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Routes that are never taken, whatever they would bring: a drink that begins to freeze, one that fills its bottle to the brim by warmth,
 * glass that is plunged into a bath more than 42 K colder or warmer than it is.
 */
final class Danger {

    private static final double ZERO_CELSIUS_K = 273.15;

    /** Glass that may break is plunged through less than this only [K]; common practice, no source. */
    private static final double PLUNGE_STOP_K = 42;

    private final Site site;

    Danger(Site site) {
        this.site = site;
    }

    boolean on(Task task, Route route, Forecast forecast) {
        double here = task.stayingK(0);
        for (int i = 0; i < route.legs().size(); i++) {
            Leg leg = route.legs().get(i);
            boolean moved = i > 0 || !leg.where().equals(task.order().startsIn());
            if (moved && breaks(task, leg, here)) {
                return true;
            }
            here = forecast.endK(i);
            if (here < task.freezingK() || here > task.brimfulK()) {
                return true;
            }
        }
        return false;
    }

    /** Below this ice forms in a drink; −∞ where that is not known. */
    static double freezingK(FilledVessel bottle) {
        return bottle.liquid() instanceof Beverage beverage ? beverage.freezingOnsetK() : -Double.MAX_VALUE;
    }

    private boolean breaks(Task task, Leg leg, double wallK) {
        if (!site.isFilled(leg.where())) {
            return false;
        }
        double waterK = site.surroundings(leg.where()) instanceof WaterBath bath ? bath.temperatureK() : ZERO_CELSIUS_K;
        if (Math.abs(wallK - waterK) < PLUNGE_STOP_K) {
            return false;
        }
        WallMargin margin = ThermalShock.ofPlunge(
                task.order().bottle().vessel(), SiValues.celsiusOf(wallK), SiValues.celsiusOf(waterK));
        return margin instanceof WallMargin.Beyond || margin instanceof WallMargin.Doubtful;
    }
}
