/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

/**
 * Follows samples in lanes, from a full set of lanes down to none: a sample that is finished makes room for the next. Used by one
 * thread.
 */
abstract class BatchRun {

    private static final int LANES = BatchLaw.MOST_PAIRS;
    /** Tried steps after which a sample is left to the scalar engine. */
    static final int MOST_ATTEMPTS = 2000;
    /** A step that ends within this part of its way to the target is near enough for the rest to be told from the rates. */
    private static final double NEAR = 0.2;

    private final Lanes lanes;
    private final int node;
    private final int mostAttempts;
    private final int[] sample = new int[LANES];
    private final int[] attempts = new int[LANES];
    /** Whether a step was taken since the rates were looked at. */
    private final boolean[] stepped = new boolean[LANES];
    /** Whether the step has been cut so that it ends at the target. */
    private final boolean[] landing = new boolean[LANES];
    /** Whether the step has ended near the target. */
    private final boolean[] landed = new boolean[LANES];

    private final double[] timeS = new double[LANES];
    /** When the sample must be looked at, at the latest. */
    private final double[] stopS = new double[LANES];
    /** Length of the step that the tolerance asks for. */
    private final double[] wantedS = new double[LANES];
    /** State of the node that is looked for; not a number if none is. */
    private final double[] target = new double[LANES];

    private int n;

    BatchRun(BatchSamples samples, int node, double toleranceK, int mostAttempts) {
        lanes = new Lanes(samples, toleranceK);
        this.node = node;
        this.mostAttempts = mostAttempts;
    }

    /** Temperature that a sample is followed to [K]; not a number if to none. */
    abstract double targetK(int sample);

    /** The next time at which a sample is to be looked at [s]; the end of its run if there is none. */
    abstract double stopS(double afterS);

    /** A sample is at a time to look at it: whether it is finished. */
    abstract boolean stopped(int sample, double timeS, double temperatureK);

    /** A sample reaches its target. */
    abstract void reached(int sample, double timeS);

    /** The sample cannot be followed here. */
    abstract void leave(int sample);

    /** Follows the samples of a range. */
    final void run(int from, int to) {
        int next = from;
        while (true) {
            while (n < LANES && next < to) {
                if (load(next)) {
                    n++;
                }
                next++;
            }
            if (n == 0) {
                return;
            }
            lanes.begin(n);
            for (int lane = n - 1; lane >= 0; lane--) {
                if (finished(lane)) {
                    remove(lane);
                }
            }
            lanes.attempt(n);
            for (int lane = n - 1; lane >= 0; lane--) {
                settle(lane);
            }
        }
    }

    private boolean load(int number) {
        double targetK = targetK(number);
        lanes.load(number, n);
        target[n] = lanes.rates().stateOf(node, targetK);
        if (lanes.state[node][n] == target[n]) {
            reached(number, 0);
            return false;
        }
        sample[n] = number;
        attempts[n] = 0;
        stepped[n] = false;
        landing[n] = false;
        landed[n] = false;
        timeS[n] = 0;
        stopS[n] = stopS(0);
        return true;
    }

    private void remove(int lane) {
        n--;
        if (lane == n) {
            return;
        }
        lanes.move(n, lane);
        sample[lane] = sample[n];
        attempts[lane] = attempts[n];
        stepped[lane] = stepped[n];
        landing[lane] = landing[n];
        landed[lane] = landed[n];
        timeS[lane] = timeS[n];
        stopS[lane] = stopS[n];
        wantedS[lane] = wantedS[n];
        target[lane] = target[n];
    }

    /** When the rates at a state are known: whether the sample is finished; else sets up the next step. */
    private boolean finished(int lane) {
        if (stepped[lane]) {
            if (landed[lane]) {
                reached(sample[lane], timeS[lane] + leftS(lane));
                return true;
            }
            if (timeS[lane] == stopS[lane]) {
                if (stopped(sample[lane], timeS[lane], lanes.rates().temperatureOf(node, lanes.state[node][lane]))) {
                    return true;
                }
                stopS[lane] = stopS(timeS[lane]);
            }
        }
        if (attempts[lane] >= mostAttempts) {
            leave(sample[lane]);
            return true;
        }
        if (attempts[lane] == 0) {
            wantedS[lane] = lanes.firstLengthS(lane);
        }
        if (!landing[lane]) {
            lanes.length[lane] = Math.min(wantedS[lane], stopS[lane] - timeS[lane]);
        }
        return false;
    }

    /** Time to the target from near it, by the first two terms of Taylor's series; of either sign. */
    private double leftS(int lane) {
        double left = target[lane] - lanes.state[node][lane];
        double rate = lanes.rate[node][lane];
        double square = rate * rate + 2 * lanes.rates().curvature(node, lanes.rate, lane) * left;
        if (rate == 0) {
            return 0;
        }
        return square > 0 ? 2 * left / (rate + Math.copySign(Math.sqrt(square), rate)) : left / rate;
    }

    /** After an attempt: takes the step if its error is small enough and it does not run past the target. */
    private void settle(int lane) {
        attempts[lane]++;
        double growth = lanes.growth[lane];
        stepped[lane] = lanes.error[lane] <= 1;
        if (!stepped[lane]) {
            lanes.length[lane] *= growth > 0 ? Math.min(growth, 0.9) : 0.1;
            wantedS[lane] = lanes.length[lane];
            return;
        }
        double from = lanes.state[node][lane] - target[lane];
        double to = lanes.next[node][lane] - target[lane];
        landed[lane] = landing[lane] && Math.abs(to) <= NEAR * Math.abs(from);
        if (from * to <= 0 && !landed[lane]) {
            stepped[lane] = false;
            landing[lane] = true;
            lanes.length[lane] *= partBefore(lane, from, to);
            return;
        }
        double length = lanes.length[lane];
        timeS[lane] = length >= stopS[lane] - timeS[lane] ? stopS[lane] : timeS[lane] + length;
        wantedS[lane] = Math.max(length * growth, growth < 1 ? 0 : wantedS[lane]);
        landing[lane] = false;
        lanes.accept(lane);
    }

    /** Part of a step after which the target is reached, by the cubic with the rate and the curvature at its start. */
    private double partBefore(int lane, double from, double to) {
        double length = lanes.length[lane];
        double first = length * lanes.rate[node][lane];
        double second = 0.5 * length * length * lanes.rates().curvature(node, lanes.rate, lane);
        double third = to - from - first - second;
        double low = 0;
        double high = 1;
        for (int i = 0; i < 12; i++) {
            double x = 0.5 * (low + high);
            double there = from + x * (first + x * (second + x * third));
            if (there * from > 0) {
                low = x;
            } else {
                high = x;
            }
        }
        return Math.max(0.02, Math.min(0.98, high));
    }
}
