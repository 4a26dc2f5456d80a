/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PreparedNetwork;
import org.jspecify.annotations.Nullable;

/**
 * The workspace of one run: a state, the derivatives there, and one trial step of {@link RosenbrockTableau}.
 *
 * <p>The ledger's stages use the same flows, the same derivatives and the same weights as the state's, which is what makes
 * the balance exact. Nothing is allocated after construction.
 */
final class RosenbrockStep {

    private final PreparedNetwork network;
    private final PreparedNetwork.Workspace workspace;
    private final int n;
    private final int m;
    private final int[] position;
    private final BandedMatrix matrix;
    private final double[] state;
    private final double[] newState;
    private final double[] argument;
    private final double[] rate;
    private final double[] ordered;
    private final double[] baseFlow;
    private final double[] flowTimeRate;
    private final double[] stateTimeRate;
    private final double[] flowChange;
    private final double[][] u = new double[RosenbrockTableau.STAGES][];
    private final double[][] ledgerU = new double[RosenbrockTableau.STAGES][];
    private final double[] ledgerGain;
    private final BandedMatrix jacobian;
    private final PreparedNetwork.JacobianSink addToJacobian;
    private double fastestRateKPerS;
    /** What was not finite in the evaluation before: index of a path, number of paths plus index of a node, or −1. */
    private int failed = -1;
    /** What the failed part threw, if it did. */
    private @Nullable RuntimeException thrown;

    RosenbrockStep(PreparedNetwork network, Map<String, Double> multipliers) {
        this.network = network;
        this.workspace = network.newWorkspace(multipliers);
        n = network.stateSize();
        m = network.ledgerSize();
        state = new double[n];
        newState = new double[n];
        argument = new double[n];
        rate = new double[n];
        ordered = new double[n];
        baseFlow = new double[m];
        flowTimeRate = new double[m];
        stateTimeRate = new double[n];
        flowChange = new double[m];
        ledgerGain = new double[m];
        for (int s = 0; s < RosenbrockTableau.STAGES; s++) {
            u[s] = new double[n];
            ledgerU[s] = new double[m];
        }
        MatrixLayout layout = MatrixLayout.of(n, workspace);
        position = layout.position;
        int band = layout.band;
        matrix = new BandedMatrix(n, band, band);
        jacobian = new BandedMatrix(n, band, band);
        addToJacobian = (row, column, value) -> jacobian.add(position[row], position[column], value);
    }

    void start(double[] startState) {
        System.arraycopy(startState, 0, state, 0, n);
    }

    double[] state() {
        return state.clone();
    }

    /** Evaluates flows and derivatives at the state; false if one is not finite. */
    boolean begin(double time) {
        if (!evaluates(time, state, true)) {
            return false;
        }
        System.arraycopy(workspace.flows(), 0, baseFlow, 0, m);
        workspace.rates(flowTimeRate, stateTimeRate);
        workspace.rates(baseFlow, rate);
        fastestRateKPerS = workspace.sizeK(rate);
        jacobian.clear();
        workspace.jacobian(addToJacobian);
        return true;
    }

    /** A user's law, store or boundary that throws is as good as one that is not finite: a smaller step may avoid it. */
    private boolean evaluates(double time, double[] at, boolean derivatives) {
        thrown = null;
        try {
            failed = workspace.evaluate(time, at, derivatives);
            if (failed < 0 && derivatives) {
                failed = workspace.flowTimeDerivative(time, flowTimeRate);
            }
        } catch (RuntimeException e) {
            failed = workspace.evaluating();
            thrown = e;
        }
        return failed < 0;
    }

    double fastestRateKPerS() {
        return fastestRateKPerS;
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
            ends.add(path.ends().get(e).name() + " "
                    + workspace.evaluation(failed).temperatureK(e) + " K");
        }
        return ends.toString();
    }

    private String fastestNode() {
        workspace.rates(baseFlow, rate);
        String name = "none";
        double fastest = -1;
        double[] single = new double[n];
        for (Node node : network.network().nodes()) {
            int offset = network.offset(node);
            Arrays.fill(single, 0);
            System.arraycopy(rate, offset, single, offset, 1 + node.store().amountCount());
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
        double inverse = 1 / (h * RosenbrockTableau.GAMMA);
        matrix.setShiftedNegative(inverse, jacobian);
        if (!matrix.factorise()) {
            return Double.NaN;
        }
        for (int s = 0; s < RosenbrockTableau.STAGES; s++) {
            if (!stage(s, h, Math.min(time + RosenbrockTableau.TIME[s] * h, latestTime))) {
                return Double.NaN;
            }
        }
        int last = RosenbrockTableau.STAGES - 1;
        for (int i = 0; i < n; i++) {
            newState[i] = argument[i] + u[last][i];
        }
        for (int a = 0; a < m; a++) {
            double gain = ledgerU[last][a];
            for (int j = 0; j < last; j++) {
                gain += RosenbrockTableau.A[last][j] * ledgerU[j][a];
            }
            ledgerGain[a] = gain;
        }
        return workspace.sizeK(u[last]);
    }

    private boolean stage(int s, double h, double stageTime) {
        double[] a = RosenbrockTableau.A[s];
        double[] c = RosenbrockTableau.C[s];
        double timeWeight = RosenbrockTableau.TIME_DERIVATIVE[s] * h;
        double[] flows = baseFlow;
        if (s > 0) {
            for (int i = 0; i < n; i++) {
                double sum = state[i];
                for (int j = 0; j < s; j++) {
                    sum += a[j] * u[j][i];
                }
                argument[i] = sum;
            }
            if (!evaluates(stageTime, argument, false)) {
                return false;
            }
            flows = workspace.flows();
        }
        workspace.rates(flows, rate);
        for (int i = 0; i < n; i++) {
            double right = rate[i] + timeWeight * stateTimeRate[i];
            for (int j = 0; j < s; j++) {
                right += c[j] / h * u[j][i];
            }
            ordered[position[i]] = right;
        }
        matrix.solve(ordered);
        for (int i = 0; i < n; i++) {
            u[s][i] = ordered[position[i]];
        }
        workspace.flowChange(u[s], flowChange);
        double scale = h * RosenbrockTableau.GAMMA;
        for (int k = 0; k < m; k++) {
            double right = flows[k] + flowChange[k] + timeWeight * flowTimeRate[k];
            for (int j = 0; j < s; j++) {
                right += c[j] / h * ledgerU[j][k];
            }
            ledgerU[s][k] = scale * right;
        }
        return true;
    }

    /** Makes the end of the step just tried the new state. */
    void accept() {
        System.arraycopy(newState, 0, state, 0, n);
    }

    /** Writes the interpolation coefficients of the step just tried: start, end and two bends per component. */
    void interpolant(double[] stateOut, double[] ledgerOut) {
        for (int i = 0; i < n; i++) {
            stateOut[i] = state[i];
            stateOut[n + i] = newState[i];
            stateOut[2 * n + i] = bend(0, u, i);
            stateOut[3 * n + i] = bend(1, u, i);
        }
        for (int k = 0; k < m; k++) {
            ledgerOut[k] = ledgerGain[k];
            ledgerOut[m + k] = bend(0, ledgerU, k);
            ledgerOut[2 * m + k] = bend(1, ledgerU, k);
        }
    }

    private static double bend(int which, double[][] stages, int i) {
        double sum = 0;
        for (int j = 0; j < RosenbrockTableau.STAGES; j++) {
            sum += RosenbrockTableau.DENSE[which][j] * stages[j][i];
        }
        return sum;
    }
}
