/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.service.caution.CautionSubject;
import org.beveragethermal.service.caution.DangerLimits;

/**
 * Routes that are never taken, whatever they would bring: a drink that begins to freeze, one that fills its bottle to the brim by warmth,
 * glass that is plunged through more than its limit into a bath, a drink that spoils and is out of its holding temperatures
 * for too long, one that is very hot when it is poured.
 */
final class Danger {

    private static final double ZERO_CELSIUS_K = 273.15;

    /** Drinks that were or may be as warm as this are watched [K]: a little below what is very hot. */
    private static final double HOT_K = 333.15;

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
        return task.watched().flatMap(forecast::firstBreach).isPresent();
    }

    /**
     * Whether the whole course of a drink counts: for drinks that spoil and such as may be drunk very hot. The dangers of all others
     * the ends of a route's legs show.
     */
    static boolean isWatched(Site site, BottleOrder order) {
        return Math.max(order.bottle().temperatureK(), order.target().highK()) >= HOT_K
                || subject(site, order).spoils();
    }

    static DangerLimits limits(Site site, BottleOrder order) {
        return DangerLimits.of(subject(site, order));
    }

    private static CautionSubject subject(Site site, BottleOrder order) {
        return CautionSubject.of(order.bottle())
                .in(site.jurisdiction())
                .drunkFrom(Site.duration(Math.max(0, site.seconds(order.servedAt()))));
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
        return !task.limits().allowsPlunge(wallK, waterK);
    }
}
