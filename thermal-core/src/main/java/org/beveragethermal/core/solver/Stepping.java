/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * Takes the steps of a run, chooses their lengths and counts them.
 *
 * <p>Theory manual, equation (7.3).
 */
final class Stepping {

    private static final double SAFETY = 0.9;
    private static final double SHRINK_LIMIT = 0.2;
    private static final double GROW_LIMIT = 6;
    private static final double LEAST_ERROR = 1e-12;
    /** Below this fraction of the time already run a step is rounding, not progress. */
    private static final double SMALLEST_STEP = 1e-13;
    /** The first step lets the fastest node move about this far [K]; the controller takes over from there. */
    private static final double FIRST_MOVE_K = 0.1;

    /** Told of each accepted step before its end becomes the new state. */
    @FunctionalInterface
    interface Listener {

        /** Whether to go on. */
        boolean accepted(double time, double h);
    }

    private final double toleranceK;
    private final int stepBudget;
    private final RunMonitor monitor;
    private final Method method;
    private double runEndS;
    private int tried;
    private int taken;
    private boolean stopped;
    /** Lengths of the steps to take up to the next call of {@link #follow}, if they are given. */
    private double[] given = new double[0];

    private boolean isGiven;
    private int givenTaken;

    Stepping(double toleranceK, int stepBudget, RunMonitor monitor, Method method) {
        this.toleranceK = toleranceK;
        this.stepBudget = stepBudget;
        this.monitor = monitor;
        this.method = method;
    }

    /** Begins to count anew. */
    void restart(double endS) {
        runEndS = endS;
        tried = 0;
        taken = 0;
        stopped = false;
    }

    /** Takes these steps from now on instead of choosing any. */
    void follow(double[] lengths) {
        given = lengths;
        isGiven = true;
        givenTaken = 0;
    }

    int tried() {
        return tried;
    }

    int taken() {
        return taken;
    }

    /** Whether the listener has ended the run. */
    boolean stopped() {
        return stopped;
    }

    /** Integrates from a time to the next stop, ending a step exactly there; a step for which the listener stops is not accepted. */
    double advance(RosenbrockStep step, double from, double to, Listener listener) {
        double time = from;
        begin(step, time);
        double h = Math.min(to - time, FIRST_MOVE_K / Math.max(step.fastestRateKPerS(), FIRST_MOVE_K / (to - time)));
        boolean rejected = false;
        while (time < to) {
            if (++tried > stepBudget) {
                throw step.failure(
                        time,
                        "step budget of " + stepBudget + " used up at a step of " + h + " s",
                        "try a looser tolerance or a larger budget, and whether all its paths need to be that fast");
            }
            if (Thread.currentThread().isInterrupted()) {
                throw new RunCancelledException(time, runEndS, true);
            }
            h = isGiven ? nextGiven(step, time) : h;
            boolean last = time + h >= to * (1 - 1e-14);
            if (last) {
                h = to - time;
            }
            // A boundary may jump at the stop: what it does from then on is no part of this step.
            double error = step.attempt(time, h, Math.nextDown(to)) / toleranceK;
            if (error <= 1 || (isGiven && !Double.isNaN(error))) {
                taken++;
                if (!listener.accepted(time, h)) {
                    stopped = true;
                    return time;
                }
                step.accept();
                time = last ? to : time + h;
                if (!monitor.goOn(time, runEndS, tried) && time < runEndS) {
                    throw new RunCancelledException(time, runEndS, false);
                }
                double grow = Math.min(rejected ? 1 : GROW_LIMIT, factor(error));
                h *= grow;
                rejected = false;
                if (!last) {
                    begin(step, time);
                }
            } else if (isGiven) {
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

    private double factor(double error) {
        double held = Math.max(error, LEAST_ERROR);
        double root = Tableau.of(method).errorOrder == 3 ? Math.sqrt(Math.sqrt(held)) : Math.cbrt(held);
        return Math.max(SHRINK_LIMIT, Math.min(GROW_LIMIT, SAFETY / root));
    }

    private static void begin(RosenbrockStep step, double time) {
        if (!step.begin(time)) {
            throw step.failure(time, "no step can begin", "");
        }
    }
}
