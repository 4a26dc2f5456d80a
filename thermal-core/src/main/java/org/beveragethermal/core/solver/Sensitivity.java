/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.network.StoreState;
import org.jspecify.annotations.Nullable;

/**
 * How the temperatures of a run change with the multipliers of its laws and with the temperatures at its start, to first order.
 *
 * <p>The variational equations dS/dt = J S + ∂f/∂p are integrated along the run with the derivatives that the paths state, by an
 * L-stable method of order 2 (SDIRK with γ = 1 − 1/√2, R. Alexander, SIAM J. Numer. Anal. 14 (1977) 1006) on the steps of the
 * run, each cut in parts. Good to about a hundredth of the slope, which is enough for intervals.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>Theory manual, equation (8.1).
 */
public final class Sensitivity {

    private static final double GAMMA = 1 - Math.sqrt(0.5);
    private static final int PARTS = 4;

    private final Trajectory run;
    private final double[] timesS;
    /** For each parameter, the change of the whole state at each time. */
    private final Map<String, double[][]> slopes;

    private Sensitivity(Trajectory run, double[] timesS, Map<String, double[][]> slopes) {
        this.run = run;
        this.timesS = timesS;
        this.slopes = slopes;
    }

    /**
     * Integrates the sensitivities of a run.
     *
     * @param run the run
     * @param multipliers names of multipliers, not modified
     * @param starts nodes whose temperature at the start is a parameter too, named by the node, not modified
     * @return the sensitivities
     * @throws IllegalArgumentException if a node is not in the run
     */
    public static Sensitivity of(Trajectory run, List<String> multipliers, List<Node> starts) {
        List<String> names = new ArrayList<>(multipliers);
        starts.forEach(node -> names.add(node.name()));
        List<Double> times = new ArrayList<>();
        List<double[][]> states = new ArrayList<>();
        double[][] s = initial(run, multipliers.size(), starts);
        times.add(0.0);
        states.add(copy(s));
        for (Trajectory.Leg leg : run.legs()) {
            new LegWalk(run, leg, multipliers).walk(s, times, states);
        }
        Map<String, double[][]> byName = new LinkedHashMap<>();
        for (int p = 0; p < names.size(); p++) {
            double[][] history = new double[states.size()][];
            for (int t = 0; t < history.length; t++) {
                history[t] = states.get(t)[p];
            }
            byName.put(names.get(p), history);
        }
        return new Sensitivity(
                run, times.stream().mapToDouble(Double::doubleValue).toArray(), byName);
    }

    private static double[][] initial(Trajectory run, int multipliers, List<Node> starts) {
        PreparedNetwork network = run.legs().get(0).network();
        double[][] s = new double[multipliers + starts.size()][network.stateSize()];
        double[] state = run.legs().get(0).startState();
        for (int i = 0; i < starts.size(); i++) {
            int offset = network.offset(starts.get(i));
            StoreState store = new StoreState(starts.get(i).store().amountCount());
            starts.get(i).store().evaluate(state[offset], state, offset + 1, store);
            // With the heat that freezing takes; on a plateau that has no slope, the sensible heat stands in.
            s[multipliers + i][offset] =
                    1 / (store.temperaturePerJoule > 0 ? store.temperaturePerJoule : store.kelvinPerJoule);
        }
        return s;
    }

    private static double[][] copy(double[][] s) {
        return Arrays.stream(s).map(double[]::clone).toArray(double[][]::new);
    }

    /**
     * Slope of a temperature.
     *
     * @param parameter name of a multiplier, or of a node for its temperature at the start
     * @param node the node whose temperature is asked for
     * @param timeS time [s], 0 to the end of the run
     * @return change of the temperature per unit of the parameter [K, or K/K]
     * @throws IllegalArgumentException if the parameter, node or time is unknown
     */
    public double temperatureSlope(String parameter, Node node, double timeS) {
        double[][] history = slopes.get(parameter);
        if (history == null) {
            throw new IllegalArgumentException("parameter " + parameter + ": expected one of " + slopes.keySet());
        }
        StoreState store = run.storeState(node, timeS);
        int found = Arrays.binarySearch(timesS, timeS);
        int before = found >= 0 ? found : -found - 2;
        int after = Math.min(before + 1, timesS.length - 1);
        double part = after == before ? 0 : (timeS - timesS[before]) / (timesS[after] - timesS[before]);
        int offset = run.legs().get(0).network().offset(node);
        double sum = store.temperaturePerJoule * between(history, before, after, part, offset);
        for (int k = 0; k < store.temperaturePerAmount.length; k++) {
            sum += store.temperaturePerAmount[k] * between(history, before, after, part, offset + 1 + k);
        }
        return sum;
    }

    private static double between(double[][] history, int before, int after, double part, int i) {
        return (1 - part) * history[before][i] + part * history[after][i];
    }

    /** Walks through the steps of one leg. */
    private static final class LegWalk {

        private final Trajectory.Leg leg;
        private final List<String> multipliers;
        private final PreparedNetwork.Workspace workspace;
        private final int n;
        private final int[] position;
        private final BandedMatrix jacobian;
        private final BandedMatrix matrix;
        private final double[] state;
        private final double[] flows;
        private final double[] ordered;
        private final double[] argument;
        private final double[] rate;

        LegWalk(Trajectory run, Trajectory.Leg leg, List<String> multipliers) {
            this.leg = leg;
            this.multipliers = multipliers;
            this.workspace = leg.network().newWorkspace(run.multipliers());
            n = leg.network().stateSize();
            MatrixLayout layout = MatrixLayout.of(n, workspace);
            position = layout.position;
            jacobian = new BandedMatrix(n, layout.band, layout.band);
            matrix = new BandedMatrix(n, layout.band, layout.band);
            state = new double[n];
            flows = new double[leg.network().ledgerSize()];
            ordered = new double[n];
            argument = new double[n];
            rate = new double[n];
        }

        void walk(double[][] s, List<Double> times, List<double[][]> states) {
            for (double[] one : s) {
                System.arraycopy(leg.carried(one), 0, one, 0, n);
            }
            for (int i = 0; i < leg.log().size(); i++) {
                StepLog.Step step = leg.log().step(i);
                double h = step.lengthS() / PARTS;
                for (int part = 0; part < PARTS; part++) {
                    double t = step.startS() + part * h;
                    double[][] first = stage(step, t + GAMMA * h, h, s, null);
                    double[][] second = stage(step, t + h, h, s, first);
                    for (int p = 0; p < s.length; p++) {
                        for (int j = 0; j < n; j++) {
                            s[p][j] += h * ((1 - GAMMA) * first[p][j] + GAMMA * second[p][j]);
                        }
                    }
                    times.add(t + h);
                    states.add(copy(s));
                }
            }
        }

        /** One implicit stage for all parameters: (I − hγJ) k = J (S + h (1−γ) k₁) + ∂f/∂p. */
        private double[][] stage(StepLog.Step step, double timeS, double h, double[][] s, double @Nullable [][] first) {
            for (int i = 0; i < n; i++) {
                state[i] = leg.log().stateComponent(step, i, timeS);
            }
            workspace.evaluate(timeS, state, true);
            jacobian.clear();
            workspace.jacobian((row, column, value) -> jacobian.add(position[row], position[column], value));
            double inverse = 1 / (h * GAMMA);
            matrix.setShiftedNegative(inverse, jacobian);
            if (!matrix.factorise()) {
                throw new SolverException(timeS, "", "sensitivities cannot be solved: singular matrix", null);
            }
            double[][] k = new double[s.length][n];
            for (int p = 0; p < s.length; p++) {
                for (int i = 0; i < n; i++) {
                    argument[i] = s[p][i] + (first == null ? 0 : h * (1 - GAMMA) * first[p][i]);
                }
                workspace.flowChange(argument, flows);
                if (p < multipliers.size()) {
                    double[] direct = new double[flows.length];
                    workspace.flowByMultiplier(multipliers.get(p), direct);
                    for (int a = 0; a < flows.length; a++) {
                        flows[a] += direct[a];
                    }
                }
                workspace.rates(flows, rate);
                for (int i = 0; i < n; i++) {
                    ordered[position[i]] = inverse * rate[i];
                }
                matrix.solve(ordered);
                for (int i = 0; i < n; i++) {
                    k[p][i] = ordered[position[i]];
                }
            }
            return k;
        }
    }
}
