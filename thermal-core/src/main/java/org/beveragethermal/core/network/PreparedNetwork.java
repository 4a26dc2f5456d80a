/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.beveragethermal.core.network.Account.Entry;

/**
 * A network laid out in flat arrays, ready to be integrated.
 *
 * <p>The state vector holds, node after node, the enthalpy [J] and then the node's amounts. Beside it stands the ledger
 * vector: one entry per account of every path, the time integral of its flow. Rates of both come from the same path
 * evaluations, which is why the ledger closes whatever the quality of the derivatives.
 *
 * <p>Immutable and thread-safe; each run owns a {@link Workspace}.
 */
public final class PreparedNetwork {

    private final Network network;
    private final int stateSize;
    private final int ledgerSize;
    private final int[] nodeOffset;
    private final IdentityHashMap<Node, Integer> indices = new IdentityHashMap<>();
    private final PathLayout[] layouts;
    private final int[][] ledgerEntryState;
    private final double[][] ledgerEntryFactor;
    private final double[] knots;

    /** Where a path's inputs and accounts sit in the flat arrays. */
    private static final class PathLayout {
        private final Path path;
        /** For each end: node index, or −1 − boundary. */
        private final int[] endNode;

        private final Boundary[] boundaries;
        private final int firstAccount;
        /** State columns on which the path depends, ascending. */
        private final int[] columns;
        /** For each end: position of the node's enthalpy in {@link #columns}, −1 for a boundary. */
        private final int[] enthalpyColumn;

        private PathLayout(
                Path path,
                int[] endNode,
                Boundary[] boundaries,
                int firstAccount,
                int[] columns,
                int[] enthalpyColumn) {
            this.path = path;
            this.endNode = endNode;
            this.boundaries = boundaries;
            this.firstAccount = firstAccount;
            this.columns = columns;
            this.enthalpyColumn = enthalpyColumn;
        }
    }

    PreparedNetwork(Network network) {
        this.network = network;
        List<Node> nodes = network.nodes();
        nodeOffset = new int[nodes.size()];
        int size = 0;
        for (int i = 0; i < nodes.size(); i++) {
            nodeOffset[i] = size;
            indices.put(nodes.get(i), i);
            size += 1 + nodes.get(i).store().amountCount();
        }
        stateSize = size;
        layouts = new PathLayout[network.paths().size()];
        TreeSet<Double> allKnots = new TreeSet<>();
        List<int[]> entryStates = new ArrayList<>();
        List<double[]> entryFactors = new ArrayList<>();
        int account = 0;
        for (int p = 0; p < layouts.length; p++) {
            Path path = network.paths().get(p);
            layouts[p] = layout(path, account, allKnots);
            for (Account a : path.accounts()) {
                addEntries(layouts[p], a, entryStates, entryFactors);
                account++;
            }
        }
        ledgerSize = account;
        ledgerEntryState = entryStates.toArray(new int[0][]);
        ledgerEntryFactor = entryFactors.toArray(new double[0][]);
        knots = allKnots.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private PathLayout layout(Path path, int firstAccount, Set<Double> allKnots) {
        List<End> ends = path.ends();
        int[] endNode = new int[ends.size()];
        Boundary[] boundaries = new Boundary[ends.size()];
        TreeSet<Integer> columns = new TreeSet<>();
        for (int e = 0; e < ends.size(); e++) {
            if (ends.get(e) instanceof Node node) {
                endNode[e] = indexOf(node);
                for (int k = 0; k <= node.store().amountCount(); k++) {
                    columns.add(nodeOffset[endNode[e]] + k);
                }
            } else if (ends.get(e) instanceof Boundary boundary) {
                endNode[e] = -1;
                boundaries[e] = boundary;
                for (double knot : boundary.temperatureK().knots()) {
                    allKnots.add(knot);
                }
            }
        }
        for (double knot : path.knots()) {
            allKnots.add(knot);
        }
        int[] columnArray = columns.stream().mapToInt(Integer::intValue).toArray();
        int[] enthalpyColumn = new int[ends.size()];
        for (int e = 0; e < ends.size(); e++) {
            enthalpyColumn[e] = endNode[e] < 0 ? -1 : Arrays.binarySearch(columnArray, nodeOffset[endNode[e]]);
        }
        return new PathLayout(path, endNode, boundaries, firstAccount, columnArray, enthalpyColumn);
    }

    private void addEntries(PathLayout layout, Account account, List<int[]> states, List<double[]> factors) {
        List<Entry> onNodes = account.entries().stream()
                .filter(entry -> layout.endNode[entry.end()] >= 0)
                .toList();
        states.add(onNodes.stream()
                .mapToInt(entry -> nodeOffset[layout.endNode[entry.end()]] + 1 + entry.amount())
                .toArray());
        factors.add(onNodes.stream().mapToDouble(Entry::factor).toArray());
    }

    private int indexOf(Node node) {
        return Objects.requireNonNull(indices.get(node));
    }

    /**
     * The description this was made from.
     *
     * @return the network
     */
    public Network network() {
        return network;
    }

    /**
     * Length of the state vector.
     *
     * @return number of enthalpies and amounts
     */
    public int stateSize() {
        return stateSize;
    }

    /**
     * Length of the ledger vector.
     *
     * @return number of accounts of all paths
     */
    public int ledgerSize() {
        return ledgerSize;
    }

    /**
     * Where a node's enthalpy stands in the state vector; its amounts follow.
     *
     * @param node a node of the network
     * @return index
     * @throws IllegalArgumentException if the node is not in the network
     */
    public int offset(Node node) {
        if (!indices.containsKey(node)) {
            throw new IllegalArgumentException(node + ": not in this network");
        }
        return nodeOffset[indexOf(node)];
    }

    /**
     * Times at which a boundary's slope jumps, or what a path itself makes of time.
     *
     * @return ascending times [s], a copy
     */
    public double[] knots() {
        return knots.clone();
    }

    /**
     * The state at the start.
     *
     * @return enthalpies [J] and amounts, a new array of length {@link #stateSize}
     */
    public double[] initialState() {
        double[] state = new double[stateSize];
        for (int i = 0; i < nodeOffset.length; i++) {
            Node node = network.nodes().get(i);
            state[nodeOffset[i]] = node.enthalpyJ();
            double[] amounts = node.amounts();
            System.arraycopy(amounts, 0, state, nodeOffset[i] + 1, amounts.length);
        }
        return state;
    }

    /**
     * A private workspace for one run.
     *
     * @param multipliers factors by name; names that no path uses are ignored
     * @return the workspace
     */
    public Workspace newWorkspace(Map<String, Double> multipliers) {
        return new Workspace(multipliers);
    }

    /**
     * The mutable part of a run: temperatures, flows and derivatives at one state.
     *
     * <p>Not thread-safe.
     */
    public final class Workspace {

        private final StoreState[] stores;
        private final PathEvaluation[] evaluations;
        /** For each path and account: derivatives in the path's columns. */
        private final double[][][] gradient;

        private final double[] flow = new double[ledgerSize];
        /** The part being evaluated: a path's index, or the number of paths plus a node's index. */
        private int evaluating;

        private Workspace(Map<String, Double> multipliers) {
            stores = new StoreState[nodeOffset.length];
            for (int i = 0; i < stores.length; i++) {
                stores[i] = new StoreState(network.nodes().get(i).store().amountCount());
            }
            evaluations = new PathEvaluation[layouts.length];
            gradient = new double[layouts.length][][];
            for (int p = 0; p < layouts.length; p++) {
                Path path = layouts[p].path;
                evaluations[p] = new PathEvaluation(path);
                for (int m = 0; m < path.multipliers().size(); m++) {
                    evaluations[p].setMultiplier(
                            m, multipliers.getOrDefault(path.multipliers().get(m), 1.0));
                }
                gradient[p] = new double[path.accounts().size()][layouts[p].columns.length];
            }
        }

        /**
         * Evaluates all paths at a state.
         *
         * @param timeS time [s]
         * @param state enthalpies and amounts, not modified
         * @param derivatives whether derivatives are wanted too
         * @return −1 if every temperature and flow (and derivative, if wanted) is finite, else the first part with one that
         *     is not: the index of a path, or the number of paths plus the index of a node
         */
        public int evaluate(double timeS, double[] state, boolean derivatives) {
            for (int i = 0; i < stores.length; i++) {
                evaluating = layouts.length + i;
                network.nodes().get(i).store().evaluate(state[nodeOffset[i]], state, nodeOffset[i] + 1, stores[i]);
                if (!isFit(stores[i])) {
                    return evaluating;
                }
            }
            for (int p = 0; p < layouts.length; p++) {
                evaluating = p;
                if (!evaluatePath(p, timeS, state, derivatives)) {
                    return p;
                }
            }
            return -1;
        }

        private static boolean isFit(StoreState store) {
            return Double.isFinite(store.temperatureK)
                    && Double.isFinite(store.temperaturePerJoule)
                    && store.kelvinPerJoule > 0
                    && store.kelvinPerJoule < Double.POSITIVE_INFINITY;
        }

        /**
         * The part that was being evaluated last; if an evaluation threw, the one whose law, store or boundary did.
         *
         * @return index of a path, or the number of paths plus the index of a node
         */
        public int evaluating() {
            return evaluating;
        }

        private boolean evaluatePath(int p, double timeS, double[] state, boolean derivatives) {
            PathLayout layout = layouts[p];
            PathEvaluation evaluation = evaluations[p];
            double[] inputs = evaluation.inputs();
            for (int e = 0; e < layout.endNode.length; e++) {
                int node = layout.endNode[e];
                if (node >= 0) {
                    inputs[e] = stores[node].temperatureK;
                    int amounts = stores[node].temperaturePerAmount.length;
                    System.arraycopy(state, nodeOffset[node] + 1, inputs, evaluation.amountOffset(e), amounts);
                } else {
                    inputs[e] = layout.boundaries[e].temperatureK().at(timeS);
                }
            }
            evaluation.evaluate(layout.path, timeS, derivatives);
            boolean finite = true;
            for (int a = 0; a < gradient[p].length; a++) {
                double value = evaluation.flowOf(a);
                flow[layout.firstAccount + a] = value;
                finite &= Double.isFinite(value);
                if (derivatives) {
                    finite &= chain(p, a);
                }
            }
            return finite;
        }

        /** From derivatives in temperatures and amounts to derivatives in the state; whether all are finite. */
        private boolean chain(int p, int account) {
            PathLayout layout = layouts[p];
            double[] byInput = evaluations[p].derivatives(account);
            double[] row = gradient[p][account];
            Arrays.fill(row, 0);
            for (int e = 0; e < layout.endNode.length; e++) {
                int node = layout.endNode[e];
                if (node < 0) {
                    continue;
                }
                StoreState store = stores[node];
                int column = layout.enthalpyColumn[e];
                row[column] += byInput[e] * store.temperaturePerJoule;
                for (int k = 0; k < store.temperaturePerAmount.length; k++) {
                    row[column + 1 + k] +=
                            byInput[e] * store.temperaturePerAmount[k] + byInput[evaluations[p].amountOffset(e) + k];
                }
            }
            boolean finite = true;
            for (double derivative : row) {
                finite &= Double.isFinite(derivative);
            }
            return finite;
        }

        /**
         * Temperature of a node at the state evaluated last.
         *
         * @param node index of the node
         * @return temperature [K]
         */
        public double temperatureK(int node) {
            return stores[node].temperatureK;
        }

        /**
         * Flows on all accounts at the state evaluated last.
         *
         * @return the live array, length {@link #ledgerSize}; read only
         */
        public double[] flows() {
            return flow;
        }

        /**
         * Rates of the state from flows on the accounts.
         *
         * @param flows flows, length {@link #ledgerSize}, not modified
         * @param rates receives the rates, length {@link #stateSize}
         */
        public void rates(double[] flows, double[] rates) {
            Arrays.fill(rates, 0);
            for (int a = 0; a < ledgerSize; a++) {
                for (int i = 0; i < ledgerEntryState[a].length; i++) {
                    rates[ledgerEntryState[a][i]] += ledgerEntryFactor[a][i] * flows[a];
                }
            }
        }

        /**
         * Adds the Jacobian of the rates in the state to a matrix.
         *
         * @param adder receives (row, column, value) contributions
         */
        public void jacobian(JacobianSink adder) {
            for (int p = 0; p < layouts.length; p++) {
                int[] columns = layouts[p].columns;
                for (int a = 0; a < gradient[p].length; a++) {
                    int account = layouts[p].firstAccount + a;
                    for (int i = 0; i < ledgerEntryState[account].length; i++) {
                        for (int c = 0; c < columns.length; c++) {
                            adder.add(
                                    ledgerEntryState[account][i],
                                    columns[c],
                                    ledgerEntryFactor[account][i] * gradient[p][a][c]);
                        }
                    }
                }
            }
        }

        /**
         * Change of all flows for a change of state, by the derivatives evaluated last.
         *
         * @param change change of the state, length {@link #stateSize}, not modified
         * @param out receives the change of the flows, length {@link #ledgerSize}
         */
        public void flowChange(double[] change, double[] out) {
            for (int p = 0; p < layouts.length; p++) {
                int[] columns = layouts[p].columns;
                for (int a = 0; a < gradient[p].length; a++) {
                    double sum = 0;
                    for (int c = 0; c < columns.length; c++) {
                        sum += gradient[p][a][c] * change[columns[c]];
                    }
                    out[layouts[p].firstAccount + a] = sum;
                }
            }
        }

        /**
         * Partial derivative of all flows in time: what moving boundaries do, by the derivatives evaluated last.
         *
         * @param timeS time [s]
         * @param out receives the rates of the flows, length {@link #ledgerSize}
         * @return −1 if every rate is finite, else the index of the first path with one that is not
         */
        public int flowTimeDerivative(double timeS, double[] out) {
            for (int p = 0; p < layouts.length; p++) {
                evaluating = p;
                PathLayout layout = layouts[p];
                for (int a = 0; a < gradient[p].length; a++) {
                    double sum = evaluations[p].timeDerivativeOf(a);
                    for (int e = 0; e < layout.endNode.length; e++) {
                        if (layout.endNode[e] < 0) {
                            sum += evaluations[p].derivatives(a)[e]
                                    * layout.boundaries[e].temperatureK().rate(timeS);
                        }
                    }
                    out[layout.firstAccount + a] = sum;
                    if (!Double.isFinite(sum)) {
                        return p;
                    }
                }
            }
            return -1;
        }

        /**
         * Partial derivative of all flows in a multiplier, by the derivatives evaluated last.
         *
         * @param name name of the multiplier; a name that no path uses gives zeros
         * @param out receives the derivatives of the flows, length {@link #ledgerSize}
         */
        public void flowByMultiplier(String name, double[] out) {
            for (int p = 0; p < layouts.length; p++) {
                int index = layouts[p].path.multipliers().indexOf(name);
                for (int a = 0; a < gradient[p].length; a++) {
                    out[layouts[p].firstAccount + a] = index < 0 ? 0 : evaluations[p].multiplierDerivativeOf(a, index);
                }
            }
        }

        /**
         * Change of the temperature of a node for a change of state, by the stores evaluated last.
         *
         * @param node index of the node
         * @param change change of the state, length {@link #stateSize}, not modified
         * @return change of its temperature [K]
         */
        public double temperatureChangeK(int node, double[] change) {
            int offset = nodeOffset[node];
            double sum = stores[node].temperaturePerJoule * change[offset];
            for (int k = 0; k < stores[node].temperaturePerAmount.length; k++) {
                sum += stores[node].temperaturePerAmount[k] * change[offset + 1 + k];
            }
            return sum;
        }

        /**
         * Size of a change of state in kelvin: the largest over enthalpies and amounts.
         *
         * @param change change of the state, length {@link #stateSize}, not modified
         * @return the largest component [K]
         */
        public double sizeK(double[] change) {
            double largest = 0;
            for (int i = 0; i < stores.length; i++) {
                int offset = nodeOffset[i];
                largest = Math.max(largest, Math.abs(change[offset]) * stores[i].kelvinPerJoule);
                for (int k = 0; k < stores[i].kelvinPerAmount.length; k++) {
                    largest = Math.max(largest, Math.abs(change[offset + 1 + k]) * stores[i].kelvinPerAmount[k]);
                }
            }
            return largest;
        }

        /**
         * The evaluation of a path at the state evaluated last.
         *
         * @param path index of the path in {@link Network#paths}
         * @return its workspace; read only
         */
        public PathEvaluation evaluation(int path) {
            return evaluations[path];
        }
    }

    /** Receives contributions to a matrix. */
    @FunctionalInterface
    public interface JacobianSink {

        /**
         * Adds a value.
         *
         * @param row row
         * @param column column
         * @param value contribution
         */
        void add(int row, int column, double value);
    }
}
