/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.OptionalDouble;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.network.StoreState;
import org.jspecify.annotations.Nullable;

/**
 * Runs of one network for a single answer each: when a node reaches a temperature, or what the state is at a time. No ledger, no record of
 * steps; nothing is allocated while a run goes on, and hardly anything by a call. Where a balance or the course of a run is wanted, {@link
 * NetworkSolver#solve} keeps both.
 *
 * <pre>{@code
 * UnrecordedRun run = NetworkSolver.standard().unrecorded(Network.of(nodes, paths).prepare());
 * OptionalDouble ready = run.timeToReach(wine, 282.15, 6 * 3600);
 * }</pre>
 *
 * <p>Every call starts anew at time 0 and depends on nothing but the network, the start and its arguments. Holds working memory: one
 * thread at a time.
 *
 * <p>Theory manual, equation (7.6).
 */
public final class UnrecordedRun {

    /** Times are located to this part of the step. */
    private static final double TIME_PART = 1e-9;

    /** Difference for the slope of the dense output, in parts of the step. */
    private static final double SLOPE_PART = 1e-3;

    private static final int MOST_HALVINGS = 100;
    /** A reading that follows several parts of the state is looked at in this many parts of a step. */
    private static final int SAMPLES = 4;

    private final PreparedNetwork network;
    private final PreparedNetwork.Workspace workspace;
    private final RosenbrockStep step;
    private final Stepping stepping;
    private final double[] knots;
    private final double[] start;
    private final Crossing crossing;

    UnrecordedRun(PreparedNetwork network, PreparedNetwork.Workspace workspace, Method method, Stepping stepping) {
        this.network = network;
        this.stepping = stepping;
        this.workspace = workspace;
        this.step = new RosenbrockStep(network, workspace, Tableau.of(method), false);
        this.knots = network.knots();
        this.start = network.initialState();
        this.crossing = new Crossing();
        step.start(start);
    }

    /**
     * Starts the runs to come with a node at another temperature; its amounts stay.
     *
     * @param node a node of the network
     * @param temperatureK temperature [K], finite, > 0
     * @throws IllegalArgumentException if the node is not in the network, the temperature is outside its range or the node's store has no
     *     finite enthalpy for it
     */
    public void startAt(Node node, double temperatureK) {
        int offset = network.offset(node);
        double[] amounts = new double[node.store().amountCount()];
        System.arraycopy(start, offset + 1, amounts, 0, amounts.length);
        start[offset] =
                Node.of(node.name(), node.store(), temperatureK, amounts).enthalpyJ();
        step.start(start);
    }

    /**
     * Starts the runs to come from a state.
     *
     * @param state enthalpies [J] and amounts as in {@link PreparedNetwork#initialState}, finite, not modified
     * @throws IllegalArgumentException if the length is not {@link PreparedNetwork#stateSize} or a number is not finite
     */
    public void startFrom(double[] state) {
        if (state.length != start.length) {
            throw new IllegalArgumentException(
                    "state of " + state.length + " numbers: expected " + start.length + ", enthalpies and amounts");
        }
        for (int i = 0; i < state.length; i++) {
            if (!Double.isFinite(state[i])) {
                throw new IllegalArgumentException("state " + i + " is " + state[i] + ": expected a finite number");
            }
        }
        System.arraycopy(state, 0, start, 0, start.length);
        step.start(start);
    }

    /**
     * The first time at which a node has a temperature, come to from either side.
     *
     * <p>Crossings cannot be missed at a node without amounts; one with amounts is looked at in four parts of each step.
     *
     * @param node a node of the network
     * @param temperatureK temperature [K], finite
     * @param endS time at which to give up [s], finite, > 0
     * @return the time [s], 0 if the node has the temperature at the start; empty if it never has it up to the end
     * @throws IllegalArgumentException if an argument is outside its range or the node is not in the network
     * @throws SolverException if the network cannot be integrated
     * @throws RunCancelledException if the monitor says so or the thread is interrupted
     */
    public OptionalDouble timeToReach(Node node, double temperatureK, double endS) {
        if (!Double.isFinite(temperatureK)) {
            throw new IllegalArgumentException(
                    node + " to reach " + temperatureK + " K: expected a finite temperature");
        }
        requireEnd(endS);
        crossing.lookFor(node, temperatureK);
        run(endS);
        return Double.isNaN(crossing.timeS) ? OptionalDouble.empty() : OptionalDouble.of(crossing.timeS);
    }

    /**
     * Runs to a time.
     *
     * @param endS end of the run [s], finite, > 0
     * @throws IllegalArgumentException if the end is not finite and positive
     * @throws SolverException if the network cannot be integrated
     * @throws RunCancelledException if the monitor says so or the thread is interrupted
     */
    public void runTo(double endS) {
        requireEnd(endS);
        crossing.lookForNothing();
        run(endS);
    }

    private static void requireEnd(double endS) {
        if (!(endS > 0) || Double.isInfinite(endS)) {
            throw new IllegalArgumentException("end of the run " + endS + " s: expected a finite time above 0");
        }
    }

    private void run(double endS) {
        stepping.restart(endS);
        workspace.forget();
        step.start(start);
        if (crossing.holdsAtStart()) {
            return;
        }
        double time = 0;
        for (double knot : knots) {
            if (knot > time && knot < endS && !stepping.stopped()) {
                time = stepping.advance(step, time, knot, crossing);
            }
        }
        if (!stepping.stopped()) {
            stepping.advance(step, time, endS, crossing);
        }
    }

    /**
     * Temperature of a node at the end of the last run, or where it stopped (before any run, at the start): no later than a time that was found and at most a step before it.
     *
     * @param node a node of the network
     * @return temperature [K]
     * @throws IllegalArgumentException if the node is not in the network
     */
    public double temperatureK(Node node) {
        StoreState out = new StoreState(node.store().amountCount());
        int offset = network.offset(node);
        node.store().evaluate(step.liveState()[offset], step.liveState(), offset + 1, out);
        return out.temperatureK;
    }

    /**
     * The state at the end of the last run, as {@link #temperatureK}.
     *
     * @param out receives enthalpies [J] and amounts, length {@link PreparedNetwork#stateSize}
     */
    public void state(double[] out) {
        System.arraycopy(step.liveState(), 0, out, 0, start.length);
    }

    /**
     * Steps of the last run that were accepted.
     *
     * @return number of steps
     */
    public int steps() {
        return stepping.taken();
    }

    /**
     * Steps of the last run that were tried, accepted or not.
     *
     * @return number of steps
     */
    public int stepsTried() {
        return stepping.tried();
    }

    /** Looks for a temperature in each step. */
    private final class Crossing implements Stepping.Listener {

        private @Nullable Node node;
        private StoreState reading = new StoreState(0);
        private double[] amounts = new double[0];
        private int offset;
        private double targetK;
        private double excessBefore;
        private double timeS;
        private final double[] cuts = new double[SAMPLES + 2];

        void lookForNothing() {
            node = null;
            timeS = Double.NaN;
        }

        void lookFor(Node wanted, double temperatureK) {
            offset = network.offset(wanted);
            int count = wanted.store().amountCount();
            if (count != amounts.length) {
                reading = new StoreState(count);
                amounts = new double[count];
            }
            node = wanted;
            targetK = temperatureK;
            timeS = Double.NaN;
        }

        boolean holdsAtStart() {
            Node of = node;
            if (of == null) {
                return false;
            }
            of.store().evaluate(start[offset], start, offset + 1, reading);
            excessBefore = reading.temperatureK - targetK;
            timeS = excessBefore == 0 ? 0 : Double.NaN;
            return excessBefore == 0;
        }

        @Override
        public boolean accepted(double time, double h) {
            Node of = node;
            if (of == null) {
                return true;
            }
            double from = 0;
            int count = cuts(of);
            for (int i = 0; i < count; i++) {
                double excess = excess(of, cuts[i]);
                if (excess == 0 || excess > 0 != excessBefore > 0) {
                    timeS = located(of, time, h, part(of, from, excessBefore, cuts[i], excess));
                    return false;
                }
                from = cuts[i];
                excessBefore = excess;
            }
            return true;
        }

        /** Ends of the parts of the step on which the reading only rises or only falls; the last is 1. */
        private int cuts(Node of) {
            int count = 0;
            if (of.store().amountCount() == 0) {
                count = step.turns(offset, cuts);
            } else {
                while (count < SAMPLES - 1) {
                    cuts[count] = (count + 1.0) / SAMPLES;
                    count++;
                }
            }
            cuts[count] = 1;
            return count + 1;
        }

        private double excess(Node of, double part) {
            for (int k = 0; k < amounts.length; k++) {
                amounts[k] = step.inside(offset + 1 + k, part);
            }
            of.store().evaluate(step.inside(offset, part), amounts, 0, reading);
            return reading.temperatureK - targetK;
        }

        /**
         * Where the dense output is of a lower order than the step, a step to the time found tells how far it is off. The slope that
         * carries it on is that of the dense output.
         */
        private double located(Node of, double time, double h, double part) {
            if (step.locatesByItself() || part >= 1) {
                return time + h * part;
            }
            double slope = (excess(of, Math.min(1, part + SLOPE_PART)) - excess(of, part - SLOPE_PART))
                    / (Math.min(1, part + SLOPE_PART) - part + SLOPE_PART);
            double error = step.attempt(time, h * part, time + h);
            double change = -excess(of, 1) / slope;
            return Double.isNaN(error) || !(Math.abs(change) < part) ? time + h * part : time + h * (part + change);
        }

        /** Regula falsi with halved values (Illinois), kept in its bracket. */
        private double part(Node of, double from, double excessFrom, double to, double excessTo) {
            double low = from;
            double high = to;
            double atLow = excessFrom;
            double atHigh = excessTo;
            int side = 0;
            for (int i = 0; i < MOST_HALVINGS && high - low > TIME_PART && atHigh != 0; i++) {
                double middle = (low * atHigh - high * atLow) / (atHigh - atLow);
                double excess = excess(of, middle);
                if (excess == 0 || excess > 0 == atHigh > 0) {
                    if (Math.abs(high - middle) < 0.5 * TIME_PART) {
                        return middle;
                    }
                    high = middle;
                    atHigh = excess;
                    atLow *= side == 1 ? 0.5 : 1;
                    side = 1;
                } else {
                    if (Math.abs(middle - low) < 0.5 * TIME_PART) {
                        return middle;
                    }
                    low = middle;
                    atLow = excess;
                    atHigh *= side == -1 ? 0.5 : 1;
                    side = -1;
                }
            }
            return high;
        }
    }
}
