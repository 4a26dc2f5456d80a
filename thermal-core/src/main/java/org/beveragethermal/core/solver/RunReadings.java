/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.network.SensibleStore;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;

/**
 * Temperatures of a run at many ascending times, in one walk through its steps, and how they change with the multipliers of its laws.
 *
 * <p>Slopes are those of the run's own networks: dS/dt = J S + ∂f/∂p is integrated on the steps of the run, with the derivatives that
 * the paths state, by the Lobatto IIIC method of three stages, of order 4 and L-stable (E. Hairer and G. Wanner, Solving Ordinary
 * Differential Equations II, section IV.5). What a change of a multiplier would do to the steps themselves, or to how the networks are
 * set up, is not in them.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>Theory manual, equation (8.1).
 */
public final class RunReadings {

    private final Trajectory run;
    private final List<Node> nodes;
    private final List<Double> shares;

    private RunReadings(Trajectory run, List<Node> nodes, List<Double> shares) {
        this.run = run;
        this.nodes = nodes;
        this.shares = shares;
    }

    /**
     * Readings of the mean temperature of nodes.
     *
     * @param run the run
     * @param nodes nodes of the run, at least one, not modified
     * @param shares weight of each in the sum, finite, ≥ 0; those of a mean add up to 1; not modified
     * @return the readings
     * @throws IllegalArgumentException if there is no node, as many shares are missing, a share is outside its range or a node is not in the run
     */
    public static RunReadings of(Trajectory run, List<Node> nodes, List<Double> shares) {
        if (nodes.isEmpty() || nodes.size() != shares.size()) {
            throw new IllegalArgumentException(nodes.size() + " nodes and " + shares.size()
                    + " shares: expected as many shares as nodes, at least one");
        }
        shares.forEach(share -> {
            if (!(share >= 0) || Double.isInfinite(share)) {
                throw new IllegalArgumentException("share " + share + " of a mean: expected a finite number ≥ 0");
            }
        });
        nodes.forEach(run.legs().get(0).network()::offset);
        return new RunReadings(run, List.copyOf(nodes), List.copyOf(shares));
    }

    /**
     * The same networks, with the same changes at the same times, run again with other multipliers. Nothing is set up anew.
     *
     * @param run the run
     * @param solver how to run them
     * @param factors factor by name; multipliers of the run that are not named stay as they were; not modified
     * @return the new run
     * @throws IllegalArgumentException if a factor is negative or not finite
     * @throws SolverException if a network cannot be integrated
     */
    public static Trajectory again(Trajectory run, NetworkSolver solver, Map<String, Double> factors) {
        Map<String, Double> multipliers = new HashMap<>(run.multipliers());
        multipliers.putAll(factors);
        List<Phase> phases = run.legs().stream()
                .map(leg -> new Phase(leg.startS(), leg.network().network(), leg.changes()))
                .toList();
        return solver.withMultipliers(multipliers).solve(phases, run.endS());
    }

    /**
     * The mean temperature at given times.
     *
     * @param timesS ascending times [s], 0 to the end of the run, not modified
     * @return temperature [K] at each
     * @throws IllegalArgumentException if the times do not ascend or one is not in the run
     */
    public double[] temperaturesK(double[] timesS) {
        double[] temperatures = new double[timesS.length];
        walk(timesS, List.of(), (look, along, mean, theta) -> temperatures[look] = mean.temperatureK(theta));
        return temperatures;
    }

    /**
     * How the mean temperature at given times changes with multipliers.
     *
     * @param multipliers names of multipliers, not modified; those that no path uses have no effect
     * @param timesS ascending times [s], 0 to the end of the run, not modified
     * @return for each multiplier, the change of the temperature at each time per unit of the factor [K]
     * @throws IllegalArgumentException if the times do not ascend or one is not in the run
     * @throws SolverException if a law has no finite derivative on the way
     */
    public double[][] slopes(List<String> multipliers, double[] timesS) {
        double[][] slopes = new double[multipliers.size()][timesS.length];
        walk(timesS, multipliers, (look, along, mean, theta) -> {
            mean.evaluateStores(theta);
            along.look(theta);
            for (int p = 0; p < slopes.length; p++) {
                slopes[p][look] = mean.change(along, p);
            }
        });
        return slopes;
    }

    /** What is done at each look. */
    @FunctionalInterface
    private interface Look {
        void at(int look, StepSlopes slopes, Mean mean, double theta);
    }

    private void walk(double[] timesS, List<String> multipliers, Look look) {
        int next = 0;
        check(timesS);
        double[][] carried =
                new double[multipliers.size()][run.legs().get(0).network().stateSize()];
        for (int l = 0; l < run.legs().size() && next < timesS.length; l++) {
            Trajectory.Leg leg = run.legs().get(l);
            double legEnd = l + 1 < run.legs().size() ? run.legs().get(l + 1).startS() : Double.POSITIVE_INFINITY;
            Mean mean = new Mean(leg);
            StepSlopes slopes = new StepSlopes(run, leg, multipliers, carried);
            StepLog log = leg.log();
            for (int i = 0; i < log.size() && next < timesS.length; i++) {
                StepLog.Step step = log.step(i);
                slopes.advance(step);
                double end = i + 1 < log.size() ? log.step(i + 1).startS() : legEnd;
                mean.step = step;
                while (next < timesS.length && timesS[next] < end) {
                    double theta = (timesS[next] - step.startS()) / step.lengthS();
                    look.at(next, slopes, mean, Math.max(0, Math.min(1, theta)));
                    next++;
                }
            }
            carried = slopes.end();
        }
    }

    private void check(double[] timesS) {
        for (int i = 0; i < timesS.length; i++) {
            if (!(timesS[i] >= (i == 0 ? 0 : timesS[i - 1]) && timesS[i] <= run.endS())) {
                throw new IllegalArgumentException("time of reading " + i + ": " + timesS[i]
                        + " s: expected ascending times from 0 s to " + run.endS() + " s");
            }
        }
    }

    /** The mean of the nodes within one step. */
    private final class Mean {

        private final StepLog log;
        private final Store[] kinds;
        private final double[] weights;
        private final int[] offsets;
        private final StoreState[] stores;
        private final double[][] amounts;
        /** Whether the slopes of the temperatures never change. */
        private final boolean sensible;

        private StepLog.Step step;

        Mean(Trajectory.Leg leg) {
            log = leg.log();
            step = log.step(0);
            kinds = nodes.stream().map(Node::store).toArray(Store[]::new);
            weights = shares.stream().mapToDouble(share -> share).toArray();
            offsets = new int[nodes.size()];
            stores = new StoreState[nodes.size()];
            amounts = new double[nodes.size()][];
            for (int i = 0; i < offsets.length; i++) {
                offsets[i] = leg.network().offset(nodes.get(i));
                int count = kinds[i].amountCount();
                stores[i] = new StoreState(count);
                amounts[i] = new double[count];
            }
            sensible = Arrays.stream(kinds).allMatch(SensibleStore.class::isInstance);
            temperatureK(0);
        }

        /** Makes ready for {@link #change}. */
        void evaluateStores(double theta) {
            if (!sensible) {
                temperatureK(theta);
            }
        }

        /** At a part of the step, 0 to 1. */
        double temperatureK(double theta) {
            double sum = 0;
            for (int i = 0; i < offsets.length; i++) {
                for (int k = 0; k < amounts[i].length; k++) {
                    amounts[i][k] = log.statePart(step, offsets[i] + 1 + k, theta);
                }
                double enthalpy = log.statePart(step, offsets[i], theta);
                kinds[i].evaluate(enthalpy, amounts[i], 0, stores[i]);
                sum += weights[i] * stores[i].temperatureK;
            }
            return sum;
        }

        /** Change of the mean with a multiplier, by the stores evaluated last. */
        double change(StepSlopes slopes, int p) {
            double sum = 0;
            for (int i = 0; i < offsets.length; i++) {
                double change = stores[i].temperaturePerJoule * slopes.at(p, offsets[i]);
                for (int k = 0; k < amounts[i].length; k++) {
                    change += stores[i].temperaturePerAmount[k] * slopes.at(p, offsets[i] + 1 + k);
                }
                sum += weights[i] * change;
            }
            return sum;
        }
    }

    /** Slopes of the state in the multipliers along the steps of one leg. */
    private static final class StepSlopes {

        private static final int STAGES = 3;
        /** Inverse of the matrix of the method, for stages at the beginning, the middle and the end of a step. */
        private static final double[][] INVERSE = {{3, 4, -1}, {-1, 0, 1}, {1, -4, 3}};
        /** Its sum over the first row; the others sum to 0. */
        private static final double FROM_START = 6;

        private final Trajectory.Leg leg;
        private final List<String> multipliers;
        private final PreparedNetwork.Workspace workspace;
        private final double[] knots;
        private final int n;
        private final int[] position;
        private final int band;
        private final BandedMatrix matrix;
        private final double[][] jacobians;
        private final double[][][] directs;
        private final double[] state;
        private final double[] flows;
        private final double[] ordered;
        private final double[] rate;
        private final double[][] start;
        private final double[][] end;
        private final double[][] startRise;
        private final double[][] endRise;
        private double lengthBefore = Double.NaN;
        private double byStart;
        private double byStartRise;
        private double byEnd;
        private double byEndRise;

        StepSlopes(Trajectory run, Trajectory.Leg leg, List<String> multipliers, double[][] before) {
            this.leg = leg;
            this.multipliers = multipliers;
            this.workspace = leg.network().newWorkspace(run.multipliers());
            knots = leg.network().knots();
            n = leg.network().stateSize();
            MatrixLayout layout = MatrixLayout.of(n, workspace);
            position = layout.position;
            band = layout.band;
            int wide = Math.max(STAGES - 1, STAGES * band);
            matrix = new BandedMatrix(STAGES * n, wide, wide);
            jacobians = new double[STAGES][n * (2 * band + 1)];
            directs = new double[STAGES][multipliers.size()][n];
            state = new double[n];
            flows = new double[leg.network().ledgerSize()];
            ordered = new double[STAGES * n];
            rate = new double[n];
            int parameters = multipliers.size();
            start = new double[parameters][n];
            end = new double[parameters][];
            startRise = new double[parameters][n];
            endRise = new double[parameters][n];
            for (int p = 0; p < parameters; p++) {
                end[p] = leg.carried(before[p]);
            }
        }

        double[][] end() {
            return end;
        }

        /** Looks at a part of the step, 0 to 1. */
        void look(double theta) {
            double rest = 1 - theta;
            byStart = rest * rest * (1 + 2 * theta);
            byStartRise = rest * rest * theta;
            byEnd = theta * theta * (1 + 2 * rest);
            byEndRise = -theta * theta * rest;
        }

        /** Where was looked last, on a cubic between both ends of the step. */
        double at(int p, int i) {
            return byStart * start[p][i]
                    + byStartRise * startRise[p][i]
                    + byEnd * end[p][i]
                    + byEndRise * endRise[p][i];
        }

        void advance(StepLog.Step step) {
            if (multipliers.isEmpty()) {
                return;
            }
            double h = step.lengthS();
            double from = step.startS();
            boolean smooth = lengthBefore > 0 && Arrays.binarySearch(knots, from) < 0;
            if (smooth) {
                swapEnds();
            } else {
                evaluate(step, 0, from);
            }
            evaluate(step, 1, from + 0.5 * h);
            // A boundary may jump at the end of the step: what it does from then on is no part of it.
            // Its length may have been rounded up.
            evaluate(step, 2, from + h - 2 * Math.ulp(from + h));
            fill(h);
            if (!matrix.factorise()) {
                throw new SolverException(from, "", "slopes cannot be solved: singular matrix", null);
            }
            for (int p = 0; p < end.length; p++) {
                solve(p, h, smooth);
            }
            lengthBefore = h;
        }

        /** The end of the step before is the beginning of this one. */
        private void swapEnds() {
            double[] jacobian = jacobians[0];
            jacobians[0] = jacobians[2];
            jacobians[2] = jacobian;
            double[][] direct = directs[0];
            directs[0] = directs[2];
            directs[2] = direct;
        }

        private void evaluate(StepLog.Step step, int stage, double timeS) {
            for (int i = 0; i < n; i++) {
                state[i] = leg.log().stateComponent(step, i, timeS);
            }
            if (workspace.evaluate(timeS, state, true) >= 0) {
                throw new SolverException(timeS, "", "slopes cannot be integrated: a derivative is not finite", null);
            }
            double[] jacobian = jacobians[stage];
            Arrays.fill(jacobian, 0);
            int width = 2 * band + 1;
            workspace.jacobian((row, column, value) ->
                    jacobian[position[row] * width + position[column] - position[row] + band] += value);
            for (int p = 0; p < multipliers.size(); p++) {
                workspace.flowByMultiplier(multipliers.get(p), flows);
                workspace.rates(flows, rate);
                for (int i = 0; i < n; i++) {
                    directs[stage][p][position[i]] = rate[i];
                }
            }
        }

        private void fill(double h) {
            matrix.clear();
            int width = 2 * band + 1;
            for (int i = 0; i < n; i++) {
                for (int stage = 0; stage < STAGES; stage++) {
                    for (int other = 0; other < STAGES; other++) {
                        matrix.add(STAGES * i + stage, STAGES * i + other, INVERSE[stage][other] / h);
                    }
                    for (int j = Math.max(0, i - band); j <= Math.min(n - 1, i + band); j++) {
                        matrix.add(STAGES * i + stage, STAGES * j + stage, -jacobians[stage][i * width + j - i + band]);
                    }
                }
            }
        }

        private void solve(int p, double h, boolean smooth) {
            System.arraycopy(end[p], 0, start[p], 0, n);
            for (int i = 0; i < n; i++) {
                int at = STAGES * position[i];
                ordered[at] = FROM_START / h * start[p][i] + directs[0][p][position[i]];
                ordered[at + 1] = directs[1][p][position[i]];
                ordered[at + 2] = directs[2][p][position[i]];
            }
            matrix.solve(ordered);
            for (int i = 0; i < n; i++) {
                int at = STAGES * position[i];
                double middle = ordered[at + 1];
                double last = ordered[at + 2];
                double riseBefore = endRise[p][i];
                end[p][i] = last;
                endRise[p][i] = ordered[at] - 4 * middle + 3 * last;
                // Without a smooth slope from before, the cubic goes through the middle.
                startRise[p][i] = smooth
                        ? riseBefore * h / lengthBefore
                        : 8 * (middle - 0.5 * (start[p][i] + last)) + endRise[p][i];
            }
        }
    }
}
