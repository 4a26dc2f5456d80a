/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Forecasts routes by flow tables: what comes out of one leg goes into the next. Thread-safe.
 *
 * <p>Theory manual, equation (9.3).
 */
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
        double[] poursS =
                IntStream.range(0, task.pours()).mapToDouble(task::pourS).toArray();
        Walk walk = new Walk(task, route, poursS, 1, 1);
        double[] pours = walk.looksK;
        double[] sigmas = sigmasK(task, route, poursS, pours);
        for (int i = 0; i < pours.length; i++) {
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

    /**
     * How sure the forecast is at any times, by the same rule as at the pours.
     *
     * @param timesS the times, ascending, none after the end of the route [s]
     * @return a standard deviation for each [K]
     */
    double[] sigmasK(Task task, Route route, double[] timesS) {
        return sigmasK(task, route, timesS, new Walk(task, route, timesS, 1, 1).looksK);
    }

    private double[] sigmasK(Task task, Route route, double[] timesS, double[] kelvins) {
        double[] fasterBefore = new Walk(task, route, timesS, 1 + SPEED_SIGMA, 1).looksK;
        double[] fasterAfter = new Walk(task, route, timesS, 1, 1 + SPEED_SIGMA).looksK;
        double[] sigmas = new double[timesS.length];
        for (int i = 0; i < sigmas.length; i++) {
            sigmas[i] = Math.hypot(fasterBefore[i] - kelvins[i], fasterAfter[i] - kelvins[i]);
        }
        return sigmas;
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

        private final double[] looksS;
        private final double[] looksK;
        private final double[] endsK;
        private int looked;
        private double iceKg;
        private final List<Double> times = new ArrayList<>();
        private final List<Double> kelvins = new ArrayList<>();

        /** The looks at times in ascending order. */
        Walk(Task task, Route route, double[] looksS, double before, double after) {
            this.looksS = looksS;
            looksK = new double[looksS.length];
            endsK = new double[route.legs().size()];
            double here = task.stayingK(0);
            for (int i = 0; i < endsK.length; i++) {
                Leg leg = route.legs().get(i);
                double decantedS = task.readyS();
                double leftK = here;
                if (task.isDecanted() && leg.fromS() < decantedS && decantedS < leg.toS()) {
                    DoubleUnaryOperator inBottle = inLeg(task, leg, here);
                    look(Math.nextDown(decantedS), leg.fromS(), before, inBottle);
                    leftK = inBottle.applyAsDouble(before * (decantedS - leg.fromS()));
                    leg = new Leg(leg.where(), decantedS, leg.toS());
                }
                double beginsK = task.isDecanted() && leg.fromS() == decantedS
                        ? task.decantedK(leftK, site.airK(leg.where(), decantedS))
                        : leftK;
                double stretch = leg.fromS() < decantedS ? before : after;
                DoubleUnaryOperator course = inLeg(task, leg, beginsK);
                look(leg.toS(), leg.fromS(), stretch, course);
                if (task.watched().isPresent()) {
                    watch(leg, course);
                }
                endsK[i] = course.applyAsDouble(stretch * (leg.toS() - leg.fromS()));
                // A bottle that comes out warmer melts nothing, and may have been too cold for its heat capacity to be
                // known.
                if (site.isIceBath(leg.where()) && here > endsK[i]) {
                    iceKg += heatCapacity(task.order().bottle(), here)
                            * (here - endsK[i])
                            / Ice.latentHeatOfFusion().value();
                }
                here = endsK[i];
            }
        }

        private void look(double untilS, double fromS, double stretch, DoubleUnaryOperator course) {
            while (looked < looksS.length && looksS[looked] <= untilS) {
                looksK[looked] = course.applyAsDouble(stretch * (looksS[looked] - fromS));
                looked++;
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
