/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.materials.provenance.ValidityRange;

/** The run of the engine from which a curve is read, and how far from it runs are that start uniform. */
final class MasterRun {

    /** Runs the engine from a uniform start [K] to a horizon [s]. */
    @FunctionalInterface
    interface Engine {
        ScenePrediction from(double startK, double horizonS);
    }

    private static final String VESSEL = "vessel";
    private static final double DAY_S = 86_400;
    private static final double LONGEST_S = 512 * DAY_S;
    /** Change over the second half of a run that counts as rest [K]. */
    private static final double REST_K = 1e-4;

    private static final double CLOSEST_K = 0.02;
    /** How far before its farthest temperature the master run starts, as a part of the curve. */
    private static final double BEFORE = 0.15;

    private static final int BITS = 5;
    private static final int STARTS = 5;
    private static final int TARGETS = 12;
    private static final int MOMENTS = 2000;
    /** Shortest half of a difference in time [s]. */
    private static final double SHORTEST_S = 5;

    private static final double SOONEST_S = 0.1;
    /** Tolerance of the engine's steps [K]. */
    static final double TIGHT_K = 1e-5;

    private static final double BACKWARDS_K = 1e-4;
    /** On the largest difference found between the curve and other runs, for starts and targets in between. */
    private static final double MARGIN = 1.25;

    private final Engine engine;
    private final Prediction run;
    private final double endS;
    private final double equilibriumK;
    private final int sign;
    private final double nearK;
    private final double farK;

    private MasterRun(Engine engine, Prediction run, double endS, double nearestK, double farthestK) {
        this.engine = engine;
        this.run = run;
        this.endS = endS;
        equilibriumK = run.meanTemperatureK(endS);
        sign = CoolingCurve.side(equilibriumK, nearestK, farthestK);
        nearK = sign * (nearestK - equilibriumK);
        farK = sign * (farthestK - equilibriumK);
        if (nearK < CLOSEST_K) {
            throw new IllegalArgumentException("nearest temperature " + nearestK + " K: expected at least " + CLOSEST_K
                    + " K from " + equilibriumK + " K, to which the drink tends");
        }
    }

    /** The run starts beyond the farthest temperature, so that wall and drink have settled when it is passed. */
    static MasterRun of(Engine engine, double nearestK, double farthestK, ValidityRange range) {
        double beyond = BEFORE * (farthestK - nearestK);
        double room = beyond > 0 ? range.high() - farthestK : farthestK - range.low();
        double startK = farthestK + Math.copySign(Math.min(Math.abs(beyond), Math.max(0, 0.9 * room)), beyond);
        for (double endS = DAY_S; ; endS *= 2) {
            Prediction run = engine.from(startK, endS).vessel(VESSEL);
            double moved = run.meanTemperatureK(endS) - run.meanTemperatureK(0.5 * endS);
            if (Math.abs(moved) <= REST_K) {
                return new MasterRun(engine, run, endS, nearestK, farthestK);
            }
            if (endS >= LONGEST_S) {
                throw new IllegalArgumentException("after " + LONGEST_S / DAY_S + " days the drink still changes by "
                        + moved + " K: expected surroundings in which it comes to rest");
            }
        }
    }

    double equilibriumK() {
        return equilibriumK;
    }

    int sign() {
        return sign;
    }

    private double distanceK(Prediction of, double timeS) {
        return sign * (of.meanTemperatureK(timeS) - equilibriumK);
    }

    /** The times of a course that is under way. Their error is that of the cubic cells and of the run. */
    TimeTable table() {
        requireOneWay();
        double[] knots = CubicTable.knots(nearK, farK, BITS);
        double[] times = new double[knots.length];
        double last = 0;
        for (int i = 0; i < knots.length; i++) {
            times[i] = timeOf(run, knots[i], last, endS);
            last = times[i];
        }
        CubicTable table = CubicTable.over(nearK, farK, BITS);
        double slope = slope(times[0], times[1] - times[0]);
        table.set(farK, 0, slope, 0, 0);
        double error = 0;
        for (int i = 0; i + 1 < knots.length; i++) {
            double next = slope(times[i + 1], times[i + 1] - times[i]);
            table.set(knots[i + 1], knots[i], times[i + 1] - times[0], times[i] - times[0], next, slope);
            for (double part = 0.25; part < 1; part += 0.25) {
                double distance = knots[i + 1] + part * (knots[i] - knots[i + 1]);
                double exact = distanceK(run, times[0] + table.at(distance));
                error = Math.max(error, Math.abs((exact - distance) * table.slope(distance)));
            }
            slope = next;
        }
        return new TimeTable(table, nearK, farK, 4 * error + 2 * TIGHT_K * MasterRun.steepest(table, nearK, farK));
    }

    private static double steepest(CubicTable table, double nearK, double farK) {
        double steepest = 0;
        for (double distance : CubicTable.knots(nearK, farK, BITS)) {
            steepest = Math.max(steepest, -table.slope(distance));
        }
        return steepest;
    }

    /** Slope of the time in the distance at a moment [s/K], by a difference over part of a cell. */
    private double slope(double timeS, double cellS) {
        double half = Math.max(SHORTEST_S, 0.1 * cellS);
        double from = Math.max(0, timeS - half);
        double to = Math.min(endS, timeS + half);
        return (to - from) / (distanceK(run, to) - distanceK(run, from));
    }

    private double timeOf(Prediction of, double distance, double fromS, double toS) {
        double above = distanceK(of, fromS) - distance;
        if (above <= 0) {
            return fromS;
        }
        return new BracketingNthOrderBrentSolver(1e-13, 1e-6, 5)
                .solve(200, t -> distanceK(of, t) - distance, fromS, toS);
    }

    private void requireOneWay() {
        double before = distanceK(run, 0);
        for (int i = 1; i <= MOMENTS; i++) {
            double timeS = endS * Math.pow((double) i / MOMENTS, 3);
            double now = distanceK(run, timeS);
            if (now > before + BACKWARDS_K) {
                throw new IllegalArgumentException("the drink does not change one way only: " + timeS
                        + " s after a uniform start it turns back; predict the run itself instead");
            }
            before = now;
        }
    }

    /**
     * How much later a drink is that starts uniform: at five starts, half-way to the end of the curve; how soon it is so much later, from
     * the target that it would reach after just that time.
     */
    StartLag lag(TimeTable times) {
        double[] logs = new double[STARTS];
        double[] lags = new double[STARTS];
        double settling = 0;
        int settled = 0;
        for (int s = 0; s < STARTS; s++) {
            double start = start(s);
            logs[s] = Math.log(start);
            Prediction uniform = uniform(start, times);
            lags[s] = Math.max(0, laterS(uniform, times, start, 0.5 * (start + nearK)));
            double early = DistanceTable.inverse(times, times.timeS(start) + lags[s], start);
            double part = early > nearK ? laterS(uniform, times, start, early) / lags[s] : 1;
            if (part > 0 && part < 1) {
                settling -= lags[s] / Math.log1p(-part);
                settled++;
            }
        }
        return new StartLag(
                CubicTable.of(nearK, farK, BITS, distance -> Math.max(0, interpolated(logs, lags, Math.log(distance)))),
                Math.max(SOONEST_S, settling / Math.max(1, settled)));
    }

    private double start(double s) {
        return farK * Math.pow(nearK / farK, s / STARTS);
    }

    private Prediction uniform(double start, TimeTable times) {
        double horizonS = 1.5 * (times.endS() - times.timeS(start)) + 7200;
        return engine.from(equilibriumK + sign * start, horizonS).vessel(VESSEL);
    }

    /** How much later than under way a run from a uniform start is at a target [s]. */
    private double laterS(Prediction uniform, TimeTable times, double start, double target) {
        double endS = uniform.end().toMillis() / 1000.0;
        return timeOf(uniform, target, 0, endS) - (times.timeS(target) - times.timeS(start));
    }

    /** The polynomial through given points, by Neville's scheme. */
    private static double interpolated(double[] x, double[] y, double at) {
        double[] p = y.clone();
        for (int k = 1; k < x.length; k++) {
            for (int i = 0; i + k < x.length; i++) {
                p[i] = ((at - x[i + k]) * p[i] + (x[i] - at) * p[i + 1]) / (x[i] - x[i + k]);
            }
        }
        return p[0];
    }

    /** The largest difference in time from runs that start uniform, over starts between those of {@link #lag} and targets [s]. */
    double uniformErrorS(TimeTable times, StartLag lag) {
        double largest = 0;
        for (int s = 0; s <= STARTS; s++) {
            double start = start(Math.max(0, s - 0.5));
            Prediction uniform = uniform(start, times);
            for (int t = 1; t <= TARGETS; t++) {
                double target = start + (nearK - start) * Math.pow((double) t / TARGETS, 2);
                double underWay = times.timeS(target) - times.timeS(start);
                largest = Math.max(
                        largest, Math.abs(laterS(uniform, times, start, target) - lag.laterS(start, underWay)));
            }
        }
        return MARGIN * largest;
    }
}
