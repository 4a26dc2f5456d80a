/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PreparedNetwork;
import org.jspecify.annotations.Nullable;

/**
 * The workspace of one run: a state, the rates there, and one trial step, taken by some method. Nothing is allocated after construction
 * unless something fails.
 */
abstract class TrialStep {

    final PreparedNetwork network;
    final PreparedNetwork.Workspace workspace;
    final int n;
    final double[] baseRate;
    double[] state;
    double[] newState;
    private final double[] flowTimeRate;
    private final boolean keepsLedger;
    /** What was not finite in the evaluation before: index of a path, number of paths plus index of a node, or −1. */
    private int failed = -1;
    /** What the failed part threw, if it did. */
    private @Nullable RuntimeException thrown;

    TrialStep(PreparedNetwork network, PreparedNetwork.Workspace workspace, boolean keepsLedger) {
        this.network = network;
        this.workspace = workspace;
        this.keepsLedger = keepsLedger;
        n = network.stateSize();
        state = new double[n];
        newState = new double[n];
        baseRate = new double[n];
        flowTimeRate = new double[network.ledgerSize()];
    }

    /** Evaluates flows and derivatives at the state; false if one is not finite. */
    abstract boolean begin(double time);

    /**
     * Tries a step from the state at which {@link #begin} was called.
     *
     * @param time start of the step [s], as given to {@link #begin}
     * @param h length of the step [s]
     * @param latestTime last time [s] at which boundaries may be looked at; at least the start
     * @return size of the error estimate [K], NaN if a stage is not finite
     */
    abstract double attempt(double time, double h, double latestTime);

    /** Order of the solution that the error estimate is of. */
    abstract int errorOrder();

    /** The first step lets the fastest node move about this far [K]; the controller takes over from there. */
    double firstMoveK() {
        return 0.1;
    }

    /** A part of the state within the step just tried. */
    abstract double inside(int i, double part);

    /** Parts of the step just tried at which a part of the state turns round, ascending; their number. */
    abstract int turns(int i, double[] out);

    /** Whether the interpolant is good enough to locate a moment to the accuracy of the steps. */
    abstract boolean locatesByItself();

    /** Begins anew at a state. */
    void start(double[] startState) {
        System.arraycopy(startState, 0, state, 0, n);
    }

    /** The state itself, not to be written. */
    final double[] liveState() {
        return state;
    }

    /** Makes the end of the step just tried the new state. */
    final void accept() {
        double[] old = state;
        state = newState;
        newState = old;
    }

    final double fastestRateKPerS() {
        return workspace.sizeK(baseRate);
    }

    /** How flows change with time itself, if something is not steady and derivatives were evaluated. */
    final double[] flowTimeRate() {
        return flowTimeRate;
    }

    /** A user's law, store or boundary that throws is as good as one that is not finite: a smaller step may avoid it. */
    final boolean evaluates(double time, double[] at, boolean derivatives, double[] rates) {
        thrown = null;
        try {
            if (keepsLedger) {
                failed = workspace.evaluate(time, at, derivatives);
                workspace.rates(workspace.flows(), rates);
            } else {
                failed = workspace.evaluateRates(time, at, derivatives, rates);
            }
            if (failed < 0 && derivatives && !workspace.isSteady()) {
                failed = workspace.flowTimeDerivative(time, flowTimeRate);
            }
        } catch (RuntimeException e) {
            failed = workspace.evaluating();
            thrown = e;
        }
        return failed < 0;
    }

    /** Why the run cannot go on: a part that failed when evaluated last, else the fastest node. */
    final SolverException failure(double time, String reason, String advice) {
        if (failed < 0) {
            String node = fastestNode();
            return new SolverException(time, node, reason + "; fastest node " + node + "; " + advice, null);
        }
        List<Path> paths = network.network().paths();
        boolean path = failed < paths.size();
        String name = path
                ? paths.get(failed).name()
                : network.network().nodes().get(failed - paths.size()).name();
        String what = thrown != null
                ? " threw " + thrown
                : path
                        ? " gives a flow or a derivative that is not finite"
                        : " has a store whose temperature, slope or weight of errors is not finite";
        String where = path ? ", at " + ends(paths.get(failed)) + "; check its law there" : "; check its store";
        return new SolverException(
                time, name, reason + "; " + (path ? "path " : "node ") + name + what + where, thrown);
    }

    private String ends(Path path) {
        StringJoiner ends = new StringJoiner(", ");
        for (int e = 0; e < path.ends().size(); e++) {
            ends.add(path.ends().get(e).name() + " " + workspace.endTemperatureK(failed, e) + " K");
        }
        return ends.toString();
    }

    private String fastestNode() {
        String name = "none";
        double fastest = -1;
        double[] single = new double[n];
        for (Node node : network.network().nodes()) {
            int offset = network.offset(node);
            Arrays.fill(single, 0);
            System.arraycopy(baseRate, offset, single, offset, 1 + node.store().amountCount());
            double size = workspace.sizeK(single);
            if (size > fastest) {
                fastest = size;
                name = node.name();
            }
        }
        return name;
    }
}
