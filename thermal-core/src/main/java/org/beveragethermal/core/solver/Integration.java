/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.beveragethermal.core.network.PreparedNetwork;
import org.jspecify.annotations.Nullable;

/** One run of the solver: walks through the phases and collects their steps. */
final class Integration {

    private static final double SAFETY = 0.9;
    private static final double SHRINK_LIMIT = 0.2;
    private static final double GROW_LIMIT = 6;
    /** One over the order of the error estimate plus one. */
    private static final double ERROR_EXPONENT = 0.25;
    /** Below this fraction of the time already run a step is rounding, not progress. */
    private static final double SMALLEST_STEP = 1e-13;
    /** The first step lets the fastest node move about this far [K]; the controller takes over from there. */
    private static final double FIRST_MOVE_K = 0.05;

    private final double toleranceK;
    private final int stepBudget;
    private final Map<String, Double> multipliers;
    private final RunMonitor monitor;
    private final @Nullable Trajectory pattern;
    private double runEndS;
    private int stepsTried;
    /** Lengths of the steps to take in the present leg; empty if they are to be chosen. */
    private double[] given = new double[0];

    private int givenTaken;

    Integration(
            double toleranceK,
            int stepBudget,
            Map<String, Double> multipliers,
            RunMonitor monitor,
            @Nullable Trajectory pattern) {
        this.pattern = pattern;
        this.toleranceK = toleranceK;
        this.stepBudget = stepBudget;
        this.multipliers = multipliers;
        this.monitor = monitor;
    }

    Trajectory run(List<Phase> phases, double endS) {
        runEndS = endS;
        List<Trajectory.Leg> legs = new ArrayList<>();
        double[] state = phases.get(0).network().prepare().initialState();
        for (int i = 0; i < phases.size() && phases.get(i).startS() < endS; i++) {
            double legEnd =
                    i + 1 < phases.size() ? Math.min(endS, phases.get(i + 1).startS()) : endS;
            PreparedNetwork network = phases.get(i).network().prepare();
            ChangedState start = changed(network, state, phases.get(i).changes());
            takeGiven(i);
            Trajectory.Leg leg = integrate(network, phases.get(i), legEnd, state, start);
            legs.add(leg);
            state = leg.endState();
        }
        return new Trajectory(legs, stepsTried, multipliers);
    }

    private void takeGiven(int leg) {
        givenTaken = 0;
        if (pattern != null) {
            if (leg >= pattern.legs().size()) {
                throw new SolverException(pattern.endS(), "", "the given steps are those of fewer phases", null);
            }
            StepLog log = pattern.legs().get(leg).log();
            given = new double[log.size()];
            Arrays.setAll(given, i -> log.step(i).lengthS());
        }
    }

    /** What changes make of a state. */
    static ChangedState changed(PreparedNetwork network, double[] state, List<StateChange> changes) {
        ChangedState result = new ChangedState(network, state);
        changes.forEach(change -> change.apply(result));
        return result;
    }

    private Trajectory.Leg integrate(
            PreparedNetwork network, Phase phase, double endS, double[] before, ChangedState start) {
        double[] startState = start.values();
        double startS = phase.startS();
        RosenbrockStep step = new RosenbrockStep(network, multipliers);
        StepLog log = new StepLog(network.stateSize(), network.ledgerSize());
        TreeSet<Double> stops = new TreeSet<>();
        for (double knot : network.knots()) {
            if (knot > startS && knot < endS) {
                stops.add(knot);
            }
        }
        stops.add(endS);
        double time = startS;
        step.start(startState);
        for (double stop : stops) {
            time = advance(step, log, time, stop);
        }
        return new Trajectory.Leg(
                network, startS, endS, phase.changes(), start.brought(), before, startState, log, step.state());
    }

    /** Integrates from a time to the next stop, ending a step exactly there. */
    private double advance(RosenbrockStep step, StepLog log, double from, double to) {
        double time = from;
        beginStep(step, time);
        double h = Math.min(to - time, FIRST_MOVE_K / Math.max(step.fastestRateKPerS(), FIRST_MOVE_K / (to - time)));
        boolean rejected = false;
        while (time < to) {
            if (++stepsTried > stepBudget) {
                throw step.failure(
                        time,
                        "step budget of " + stepBudget + " used up at a step of " + h + " s",
                        "try a looser tolerance or a larger budget, and whether all its paths need to be that fast");
            }
            if (Thread.currentThread().isInterrupted()) {
                throw new RunCancelledException(time, runEndS, true);
            }
            h = pattern == null ? h : nextGiven(step, time);
            boolean last = time + h >= to * (1 - 1e-14);
            if (last) {
                h = to - time;
            }
            // A boundary may jump at the stop: what it does from then on is no part of this step.
            double error = step.attempt(time, h, Math.nextDown(to)) / toleranceK;
            if (error <= 1 || (pattern != null && !Double.isNaN(error))) {
                log.add(time, h, step);
                step.accept();
                time = last ? to : time + h;
                if (!monitor.goOn(time, runEndS, stepsTried) && time < runEndS) {
                    throw new RunCancelledException(time, runEndS, false);
                }
                double grow = Math.min(rejected ? 1 : GROW_LIMIT, factor(error));
                h *= grow;
                rejected = false;
                if (!last) {
                    beginStep(step, time);
                }
            } else if (pattern != null) {
                throw step.failure(time, "the given step of " + h + " s has no result", "");
            } else {
                h *= Double.isNaN(error) ? SHRINK_LIMIT : factor(error);
                rejected = true;
                if (h < SMALLEST_STEP * Math.max(1, time)) {
                    throw step.failure(
                            time,
                            "no step is small enough",
                            "try a looser tolerance, and whether its paths jump there");
                }
            }
        }
        return time;
    }

    private double nextGiven(RosenbrockStep step, double time) {
        if (givenTaken == given.length) {
            throw step.failure(
                    time, "the given steps are used up", "expected a run with the same changes at the same times");
        }
        return given[givenTaken++];
    }

    private static double factor(double error) {
        return Math.max(SHRINK_LIMIT, Math.min(GROW_LIMIT, SAFETY * Math.pow(Math.max(error, 1e-12), -ERROR_EXPONENT)));
    }

    private static void beginStep(RosenbrockStep step, double time) {
        if (!step.begin(time)) {
            throw step.failure(time, "no step can begin", "");
        }
    }
}
