/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;

/** Forecasts routes by flow tables: what comes out of one leg goes into the next. Thread-safe. */
final class Forecaster {

    /**
     * How much faster or slower than predicted things may go, as a standard deviation: what films inside and outside a wall in series
     * do, each known to 10 % to 25 % (LawScatter of the core names them); a judgement.
     */
    static final double SPEED_SIGMA = 0.15;

    /** Drinks for which the whole course counts are looked at this often [s]. */
    private static final double WATCHED_EVERY_S = 600;

    private final Site site;
    private final FlowTables tables;

    Forecaster(Site site, FlowTables tables) {
        this.site = site;
        this.tables = tables;
    }

    /**
     * A forecast.
     *
     * @param correctionK what the coupled run taught about the gear on the route [K]
     */
    Forecast of(Task task, Route route, double correctionK) {
        Walk walk = new Walk(task, route, 1, 1);
        double[] fasterBefore = new Walk(task, route, 1 + SPEED_SIGMA, 1).poursK;
        double[] fasterAfter = new Walk(task, route, 1, 1 + SPEED_SIGMA).poursK;
        double[] pours = walk.poursK;
        double[] sigmas = new double[pours.length];
        for (int i = 0; i < pours.length; i++) {
            sigmas[i] = Math.hypot(fasterBefore[i] - pours[i], fasterAfter[i] - pours[i]);
            pours[i] += correctionK;
        }
        return new Forecast(
                pours,
                sigmas,
                walk.endsK,
                task.stayingK(0) > pours[0],
                walk.iceKg,
                walk.times.stream().mapToDouble(t -> t).toArray(),
                walk.kelvins.stream().mapToDouble(t -> t).toArray());
    }

    /** How the temperature of a bottle goes on in a place after it has come there at a time with a temperature. */
    private DoubleUnaryOperator inLeg(Task task, Leg leg, double startK) {
        if (leg.fromS() == 0 && leg.where().equals(task.order().startsIn())) {
            return task::stayingK;
        }
        FlowTables.Flow flow = tables.of(task.kindAfter(leg.fromS()), leg.where());
        return after -> flow.after(leg.fromS(), startK, after);
    }

    private static double heatCapacity(FilledVessel bottle, double kelvins) {
        return bottle.liquidMassKg() * bottle.liquid().specificHeatCapacity(kelvins);
    }

    /** One way along a route, with time stretched before and after the bottle is ready. */
    private final class Walk {

        private final double[] poursK;
        private final double[] endsK;
        private double iceKg;
        private final List<Double> times = new ArrayList<>();
        private final List<Double> kelvins = new ArrayList<>();

        Walk(Task task, Route route, double before, double after) {
            poursK = new double[task.pours()];
            endsK = new double[route.legs().size()];
            double here = task.stayingK(0);
            int pour = 0;
            for (int i = 0; i < endsK.length; i++) {
                Leg leg = route.legs().get(i);
                double decantedS = task.readyS();
                double leftK = here;
                if (task.isDecanted() && leg.fromS() < decantedS && decantedS < leg.toS()) {
                    leftK = inLeg(task, leg, here).applyAsDouble(before * (decantedS - leg.fromS()));
                    leg = new Leg(leg.where(), decantedS, leg.toS());
                }
                double beginsK = task.isDecanted() && leg.fromS() == decantedS
                        ? task.decantedK(leftK, site.airK(leg.where(), decantedS))
                        : leftK;
                double stretch = leg.fromS() < decantedS ? before : after;
                DoubleUnaryOperator course = inLeg(task, leg, beginsK);
                while (pour < poursK.length && task.pourS(pour) <= leg.toS()) {
                    poursK[pour] = course.applyAsDouble(stretch * (task.pourS(pour) - leg.fromS()));
                    pour++;
                }
                if (task.watched().isPresent()) {
                    watch(leg, course);
                }
                endsK[i] = course.applyAsDouble(stretch * (leg.toS() - leg.fromS()));
                if (site.isIceBath(leg.where())) {
                    iceKg += Math.max(0, heatCapacity(task.order().bottle(), here) * (here - endsK[i]))
                            / Ice.latentHeatOfFusion().value();
                }
                here = endsK[i];
            }
        }

        private void watch(Leg leg, DoubleUnaryOperator course) {
            for (double time = leg.fromS(); time < leg.toS(); time += WATCHED_EVERY_S) {
                see(time, course.applyAsDouble(time - leg.fromS()));
            }
            see(leg.toS(), course.applyAsDouble(leg.toS() - leg.fromS()));
        }

        /** Times rise: what one leg ends with the next begins with. */
        private void see(double time, double temperatureK) {
            if (times.isEmpty() || time > times.get(times.size() - 1)) {
                times.add(time);
                kelvins.add(temperatureK);
            }
        }
    }
}
