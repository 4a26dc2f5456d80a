/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.Map;
import org.beveragethermal.core.network.JacobianPlaces;
import org.beveragethermal.core.network.PreparedNetwork;

/**
 * The workspace of one run: a state, the derivatives there, and one trial step of a {@link Tableau}.
 *
 * <p>The ledger's stages use the same flows, the same derivatives and the same weights as the state's, which is what makes
 * the balance exact. Nothing is allocated after construction.
 *
 * <p>Theory manual, equation (7.1).
 */
final class RosenbrockStep extends TrialStep {

    private final Tableau tableau;
    private final boolean keepsLedger;
    private final int m;
    private final int[] position;
    /** Whether the unknowns stand in the matrix in their own order. */
    private final boolean inOrder;

    private final StepMatrix matrix;
    private final JacobianPlaces places;
    /** That part of the Jacobian which never changes. */
    private final double[] constantJacobian;

    private final double[] argument;
    private final double[] rate;
    private final double[] ordered;
    private final double[] error;
    private final double[] baseFlow;
    private final double[] stateTimeRate;
    private final double[] flowChange;
    private final double[][] u;
    private final double[][] ledgerU;
    /** Weights of the stages divided by the step. */
    private final double[][] perStep;

    private final double[] ledgerGain;

    RosenbrockStep(PreparedNetwork network, Map<String, Double> multipliers) {
        this(network, network.newWorkspace(multipliers), Tableau.RODAS, true);
    }

    RosenbrockStep(PreparedNetwork network, PreparedNetwork.Workspace workspace, Tableau tableau, boolean keepsLedger) {
        super(network, workspace, keepsLedger);
        this.tableau = tableau;
        this.keepsLedger = keepsLedger;
        m = network.ledgerSize();
        argument = new double[n];
        rate = new double[n];
        error = new double[n];
        baseFlow = new double[m];
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

    double[] state() {
        return state.clone();
    }

    @Override
    boolean begin(double time) {
        if (!evaluates(time, state, true, baseRate)) {
            return false;
        }
        if (keepsLedger) {
            System.arraycopy(workspace.flows(), 0, baseFlow, 0, m);
        }
        if (!workspace.isSteady()) {
            workspace.rates(flowTimeRate(), stateTimeRate);
        }
        System.arraycopy(constantJacobian, 0, matrix.jacobian(), 0, constantJacobian.length);
        workspace.addVaryingJacobian(places, matrix.jacobian());
        return true;
    }

    @Override
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
            Sums.addTimes(timeWeight, flowTimeRate(), ledgerU[s]);
        }
        for (int k = 0; k < m; k++) {
            ledgerU[s][k] = scale * (ledgerU[s][k] + flowChange[k]);
        }
    }

    @Override
    int errorOrder() {
        return tableau.errorOrder;
    }

    @Override
    boolean locatesByItself() {
        return tableau.denseOrder >= 3;
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

    @Override
    double inside(int i, double part) {
        if (part == 1) {
            return newState[i];
        }
        double first = bend(0, u, i);
        double second = bend(1, u, i);
        return (1 - part) * state[i] + part * (newState[i] + (1 - part) * (first + part * second));
    }

    @Override
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
