/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.beveragethermal.core.network.JacobianPlaces;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PreparedNetwork;
import org.jspecify.annotations.Nullable;

/**
 * The workspace of one run: a state, the derivatives there, and one trial step of a {@link Tableau}.
 *
 * <p>The ledger's stages use the same flows, the same derivatives and the same weights as the state's, which is what makes
 * the balance exact. Nothing is allocated after construction.
 *
 * <p>Theory manual, equation (7.1).
 */
final class RosenbrockStep {

    private final PreparedNetwork network;
    private final PreparedNetwork.Workspace workspace;
    private final Tableau tableau;
    private final boolean keepsLedger;
    private final int n;
    private final int m;
    private final int[] position;
    /** Whether the unknowns stand in the matrix in their own order. */
    private final boolean inOrder;

    private final StepMatrix matrix;
    private final JacobianPlaces places;
    /** That part of the Jacobian which never changes. */
    private final double[] constantJacobian;

    private double[] state;
    private double[] newState;
    private final double[] argument;
    private final double[] baseRate;
    private final double[] rate;
    private final double[] ordered;
    private final double[] error;
    private final double[] baseFlow;
    private final double[] flowTimeRate;
    private final double[] stateTimeRate;
    private final double[] flowChange;
    private final double[][] u;
    private final double[][] ledgerU;
    /** Weights of the stages divided by the step. */
    private final double[][] perStep;

    private final double[] ledgerGain;
    /** What was not finite in the evaluation before: index of a path, number of paths plus index of a node, or −1. */
    private int failed = -1;
    /** What the failed part threw, if it did. */
    private @Nullable RuntimeException thrown;

    RosenbrockStep(PreparedNetwork network, Map<String, Double> multipliers) {
        this(network, network.newWorkspace(multipliers), Tableau.RODAS, true);
    }

    RosenbrockStep(PreparedNetwork network, PreparedNetwork.Workspace workspace, Tableau tableau, boolean keepsLedger) {
        this.network = network;
        this.workspace = workspace;
        this.tableau = tableau;
        this.keepsLedger = keepsLedger;
        n = network.stateSize();
        m = network.ledgerSize();
        state = new double[n];
        newState = new double[n];
        argument = new double[n];
        baseRate = new double[n];
        rate = new double[n];
        error = new double[n];
        baseFlow = new double[m];
        flowTimeRate = new double[m];
        stateTimeRate = new double[n];
        int accounts = keepsLedger ? m : 0;
        flowChange = new double[accounts];
        ledgerGain = new double[accounts];
        u = new double[tableau.stages][n];
        ledgerU = new double[tableau.stages][accounts];
        perStep = new double[tableau.stages][];
        for (int s = 0; s < tableau.stages; s++) {
            perStep[s] = new double[s];
        }
        MatrixLayout layout = MatrixLayout.of(n, workspace);
        position = layout.position;
        inOrder = layout.isNatural();
        ordered = inOrder ? new double[0] : new double[n];
        matrix = new StepMatrix(n, layout.band);
        places = network.places((row, column) -> matrix.index(position[row], position[column]), matrix.unusedIndex());
        constantJacobian = new double[matrix.jacobian().length];
        workspace.addConstantJacobian(places, constantJacobian);
    }

    void start(double[] startState) {
        System.arraycopy(startState, 0, state, 0, n);
    }

    double[] state() {
        return state.clone();
    }

    /** The state itself, not to be written. */
    double[] liveState() {
        return state;
    }

    /** Evaluates flows and derivatives at the state; false if one is not finite. */
    boolean begin(double time) {
        if (!evaluates(time, state, true, baseRate)) {
            return false;
        }
        if (keepsLedger) {
            System.arraycopy(workspace.flows(), 0, baseFlow, 0, m);
        }
        if (!workspace.isSteady()) {
            workspace.rates(flowTimeRate, stateTimeRate);
        }
        System.arraycopy(constantJacobian, 0, matrix.jacobian(), 0, constantJacobian.length);
        workspace.addVaryingJacobian(places, matrix.jacobian());
        return true;
    }

    /** A user's law, store or boundary that throws is as good as one that is not finite: a smaller step may avoid it. */
    private boolean evaluates(double time, double[] at, boolean derivatives, double[] rates) {
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

    double fastestRateKPerS() {
        return workspace.sizeK(baseRate);
    }

    /** Why the run cannot go on: a part that failed when evaluated last, else the fastest node. */
    SolverException failure(double time, String reason, String advice) {
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

    /**
     * Tries a step from the state at which {@link #begin} was called.
     *
     * @param time start of the step [s], as given to {@link #begin}
     * @param h length of the step [s]
     * @param latestTime last time [s] at which boundaries may be looked at; at least the start
     * @return size of the error estimate [K], NaN if a stage is not finite
     */
    double attempt(double time, double h, double latestTime) {
        if (!matrix.factorise(1 / (h * tableau.gamma))) {
            return Double.NaN;
        }
        for (int s = 0; s < tableau.stages; s++) {
            if (!stage(s, h, Math.min(time + tableau.time[s] * h, latestTime))) {
                return Double.NaN;
            }
        }
        int last = tableau.stages - 1;
        if (tableau.solutionFollows) {
            Sums.add(argument, u[last], newState);
        } else {
            Sums.of(state, tableau.solution, u, tableau.stages, newState);
        }
        if (keepsLedger) {
            Sums.of(null, tableau.solution, ledgerU, tableau.stages, ledgerGain);
        }
        if (tableau.errorIsLastStage) {
            return workspace.sizeK(u[last]);
        }
        Sums.of(null, tableau.error, u, tableau.stages, error);
        return workspace.sizeK(error);
    }

    private boolean stage(int s, double h, double stageTime) {
        double[] at = baseRate;
        double[] flows = baseFlow;
        if (s > 0) {
            for (int j = 0; j < s; j++) {
                perStep[s][j] = tableau.c[s][j] / h;
            }
            if (tableau.following[s]) {
                Sums.add(argument, u[s - 1], argument);
            } else if (!tableau.repeated[s]) {
                Sums.of(state, tableau.a[s], u, s, argument);
            }
        }
        if (!tableau.usesBase[s]) {
            if (!tableau.repeated[s]) {
                if (!evaluates(stageTime, argument, false, rate)) {
                    return false;
                }
            }
            at = rate;
            flows = workspace.flows();
        }
        double[] right = u[s];
        Sums.of(at, perStep[s], u, s, right);
        double timeWeight = tableau.timeDerivative[s] * h;
        if (timeWeight != 0 && !workspace.isSteady()) {
            Sums.addTimes(timeWeight, stateTimeRate, right);
        }
        solve(right);
        if (keepsLedger) {
            ledgerStage(s, h, timeWeight, flows);
        }
        return true;
    }

    private void solve(double[] right) {
        if (inOrder) {
            matrix.solve(right);
            return;
        }
        for (int i = 0; i < n; i++) {
            ordered[position[i]] = right[i];
        }
        matrix.solve(ordered);
        for (int i = 0; i < n; i++) {
            right[i] = ordered[position[i]];
        }
    }

    private void ledgerStage(int s, double h, double timeWeight, double[] flows) {
        workspace.flowChange(u[s], flowChange);
        Sums.of(flows, perStep[s], ledgerU, s, ledgerU[s]);
        double scale = h * tableau.gamma;
        if (timeWeight != 0 && !workspace.isSteady()) {
            Sums.addTimes(timeWeight, flowTimeRate, ledgerU[s]);
        }
        for (int k = 0; k < m; k++) {
            ledgerU[s][k] = scale * (ledgerU[s][k] + flowChange[k]);
        }
    }

    /** Whether the interpolant is good enough to locate a moment to the accuracy of the steps. */
    boolean locatesByItself() {
        return tableau.denseOrder >= 3;
    }

    /** Makes the end of the step just tried the new state. */
    void accept() {
        double[] old = state;
        state = newState;
        newState = old;
    }

    /** Writes the interpolation coefficients of the step just tried: start, end and two bends per component. */
    void interpolant(double[] stateOut, double[] ledgerOut) {
        for (int i = 0; i < n; i++) {
            stateOut[i] = state[i];
            stateOut[n + i] = newState[i];
            stateOut[2 * n + i] = bend(0, u, i);
            stateOut[3 * n + i] = bend(1, u, i);
        }
        for (int k = 0; k < ledgerGain.length; k++) {
            ledgerOut[k] = ledgerGain[k];
            ledgerOut[m + k] = bend(0, ledgerU, k);
            ledgerOut[2 * m + k] = bend(1, ledgerU, k);
        }
    }

    /** A part of the state within the step just tried. */
    double inside(int i, double part) {
        if (part == 1) {
            return newState[i];
        }
        double first = bend(0, u, i);
        double second = bend(1, u, i);
        return (1 - part) * state[i] + part * (newState[i] + (1 - part) * (first + part * second));
    }

    /** Parts of the step just tried at which a part of the state turns round, ascending; their number. */
    int turns(int i, double[] out) {
        return Turns.of(state[i], newState[i], bend(0, u, i), bend(1, u, i), out);
    }

    private double bend(int which, double[][] stages, int i) {
        double sum = 0;
        for (int j = 0; j < tableau.stages; j++) {
            sum += tableau.dense[which][j] * stages[j][i];
        }
        return sum;
    }
}
