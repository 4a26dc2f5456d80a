/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntBinaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.beveragethermal.core.network.Account.Entry;

/**
 * A network laid out in flat arrays, ready to be integrated.
 *
 * <p>The state vector holds, node after node, the enthalpy [J] and then the node's amounts. Beside it stands the ledger
 * vector: one entry per account of every path, the time integral of its flow. Rates of both come from the same path
 * evaluations, which is why the ledger closes whatever the quality of the derivatives.
 *
 * <p>Immutable and thread-safe; each run owns a {@link Workspace}.
 *
 * <p>Theory manual, equations (1.1), (7.3).
 */
public final class PreparedNetwork {

    private final Network network;
    private final int stateSize;
    private final int ledgerSize;
    private final int[] nodeOffset;
    private final IdentityHashMap<Node, Integer> indices = new IdentityHashMap<>();
    private final List<Boundary> boundaries = new ArrayList<>();
    /** For each boundary the first path that ends there. */
    private final List<Integer> pathOfBoundary = new ArrayList<>();

    private final DirectLinks direct;
    /** The paths that are not among {@link #direct}. */
    private final PathLayout[] layouts;
    /** For each of these its index in the network. */
    private final int[] pathOfLayout;
    /** For each path, its link among {@link #direct}, or −1 − its layout. */
    private final int[] part;
    /** For each layout and account, what one unit of flow does to each row of the state that it reaches. */
    private final double[][][] accountFactors;
    /** What the accounts do to the state: all of them, and those that are not of direct links. */
    private final RowEntries all;

    private final RowEntries ofOthers;
    private final double[] knots;

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
        List<Path> paths = network.paths();
        direct = DirectLinks.of(paths);
        part = new int[paths.size()];
        IdentityHashMap<Path, Integer> linkOf = new IdentityHashMap<>();
        for (int k = 0; k < direct.count; k++) {
            linkOf.put(direct.path(k), k);
        }
        layouts = new PathLayout[paths.size() - direct.count];
        pathOfLayout = new int[layouts.length];
        List<double[]> knotLists = new ArrayList<>();
        RowEntries.Builder entries = new RowEntries.Builder(stateSize);
        RowEntries.Builder others = new RowEntries.Builder(stateSize);
        IdentityHashMap<Boundary, Integer> boundarySlots = new IdentityHashMap<>();
        int account = 0;
        int other = 0;
        for (int p = 0; p < paths.size(); p++) {
            Path path = paths.get(p);
            List<End> ends = path.ends();
            int[] slot = new int[ends.size()];
            int[] row = new int[ends.size()];
            for (int e = 0; e < slot.length; e++) {
                if (ends.get(e) instanceof Node node) {
                    slot[e] = indexOf(node);
                    row[e] = nodeOffset[slot[e]];
                } else if (ends.get(e) instanceof Boundary boundary) {
                    slot[e] = slotOf(boundary, boundarySlots, p, knotLists);
                    row[e] = -1;
                }
            }
            knotLists.add(path.knots());
            part[p] = linkOf.getOrDefault(path, -1 - other);
            if (part[p] >= 0) {
                direct.place(part[p], p, account, slot[0], slot[1], row[0], row[1]);
            } else {
                pathOfLayout[other] = p;
                layouts[other++] = new PathLayout(path, slot, row, account);
            }
            for (Account a : path.accounts()) {
                for (Entry entry : a.entries()) {
                    if (row[entry.end()] >= 0) {
                        int at = row[entry.end()] + 1 + entry.amount();
                        entries.add(at, account, entry.factor());
                        if (part[p] < 0) {
                            others.add(at, account, entry.factor());
                        }
                    }
                }
                account++;
            }
        }
        ledgerSize = account;
        accountFactors = new double[layouts.length][][];
        for (int p = 0; p < layouts.length; p++) {
            accountFactors[p] = factors(p);
        }
        all = entries.build();
        ofOthers = others.build();
        knots = knotLists.stream()
                .flatMapToDouble(Arrays::stream)
                .sorted()
                .distinct()
                .toArray();
    }

    private int slotOf(Boundary boundary, Map<Boundary, Integer> boundarySlots, int path, List<double[]> knotLists) {
        Integer known = boundarySlots.get(boundary);
        if (known != null) {
            return known;
        }
        int slot = nodeOffset.length + boundaries.size();
        boundarySlots.put(boundary, slot);
        boundaries.add(boundary);
        pathOfBoundary.add(path);
        knotLists.add(boundary.temperatureK().knots());
        return slot;
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
        return new Workspace(multipliers, PathEvaluation.SURFACE_ACCURACY_K);
    }

    /**
     * A private workspace for one run that needs surface temperatures of junctions no better than given, which saves evaluations of their laws.
     * Flows balance all the same.
     *
     * @param multipliers factors by name; names that no path uses are ignored
     * @param surfaceAccuracyK accuracy of surface temperatures [K], > 0; best 1e-4 of the tolerance of a step or less
     * @return the workspace
     */
    public Workspace newWorkspace(Map<String, Double> multipliers, double surfaceAccuracyK) {
        if (!(surfaceAccuracyK > 0)) {
            throw new IllegalArgumentException("accuracy of surfaces " + surfaceAccuracyK + " K: expected above 0 K");
        }
        return new Workspace(multipliers, Math.max(PathEvaluation.SURFACE_ACCURACY_K, surfaceAccuracyK));
    }

    /**
     * The mutable part of a run: temperatures, flows and derivatives at one state.
     *
     * <p>Not thread-safe.
     */
    public final class Workspace {

        /** Temperatures of the nodes and after them of the boundaries [K], and what follows them. */
        private final double[] temperature = new double[nodeOffset.length + boundaries.size()];

        /** Slope of each temperature in the enthalpy [K/J], 0 for a boundary. */
        private final double[] slope = new double[temperature.length];
        /** Rate of each boundary [K/s]; 0 for a node. */
        private final double[] boundaryRate = new double[temperature.length];
        /** What an error of each part of the state is worth [K per unit]. */
        private final double[] weight = new double[stateSize];

        /** The boundaries that vary: what they are, their slots and the first path at each. */
        private final TimeFunction[] imposed;

        private final int[] imposedSlot;
        private final int[] imposedPath;
        private final boolean steady;
        /** The nodes of constant heat capacity. */
        private final int[] sensible;
        /** Of these, one over the heat capacity [K/J]. */
        private final double[] inverseCapacity;
        /** Row of each of them. */
        private final int[] sensibleRow;

        private final int[] otherNodes;
        private final Store[] store = new Store[nodeOffset.length];
        private final StoreState[] stores = new StoreState[nodeOffset.length];
        /** Whether every node is sensible: then slots of nodes are rows of the state. */
        private final boolean allSensible;

        private final DirectLinks.Values links;
        private final ConstantLinks constants;
        private final PathEvaluation[] evaluations = new PathEvaluation[layouts.length];
        /** For each layout and account: derivatives in the path's columns. */
        private final double[][][] gradient = new double[layouts.length][][];

        private final Map<String, Double> multipliers;
        private final double[] flow = new double[ledgerSize];
        private double timeS;
        /** The part being evaluated: a path's index, or the number of paths plus a node's index. */
        private int evaluating;

        private Workspace(Map<String, Double> multipliers, double surfaceAccuracyK) {
            this.multipliers = multipliers;
            int nodes = nodeOffset.length;
            sensible = nodesThat(true);
            otherNodes = nodesThat(false);
            inverseCapacity = new double[sensible.length];
            sensibleRow = new int[sensible.length];
            for (int i = 0; i < sensible.length; i++) {
                if (network.nodes().get(sensible[i]).store() instanceof SensibleStore store) {
                    inverseCapacity[i] = 1 / store.capacityJPerK();
                    sensibleRow[i] = nodeOffset[sensible[i]];
                    slope[sensible[i]] = inverseCapacity[i];
                    weight[sensibleRow[i]] = inverseCapacity[i];
                }
            }
            for (int i : otherNodes) {
                store[i] = network.nodes().get(i).store();
                stores[i] = new StoreState(network.nodes().get(i).store().amountCount());
            }
            int[] moving = IntStream.range(0, boundaries.size())
                    .filter(b -> !(boundaries.get(b).temperatureK() instanceof ConstantValue))
                    .toArray();
            imposed = new TimeFunction[moving.length];
            imposedSlot = new int[moving.length];
            imposedPath = new int[moving.length];
            for (int v = 0; v < moving.length; v++) {
                imposed[v] = boundaries.get(moving[v]).temperatureK();
                imposedSlot[v] = nodes + moving[v];
                imposedPath[v] = pathOfBoundary.get(moving[v]);
            }
            for (int b = 0; b < boundaries.size(); b++) {
                if (boundaries.get(b).temperatureK() instanceof ConstantValue constant) {
                    temperature[nodes + b] = constant.value();
                }
            }
            steady = layouts.length == 0 && moving.length == 0;
            links = direct.newValues(multipliers, slope);
            allSensible = otherNodes.length == 0;
            constants = ConstantLinks.of(direct, links, nodes);
            for (int p = 0; p < layouts.length; p++) {
                evaluations[p] = new PathEvaluation(layouts[p].path, multipliers);
                evaluations[p].setSurfaceAccuracyK(surfaceAccuracyK);
                gradient[p] = new double[layouts[p].accounts][layouts[p].columns.length];
            }
        }

        private int[] nodesThat(boolean areSensible) {
            return IntStream.range(0, nodeOffset.length)
                    .filter(i -> network.nodes().get(i).store() instanceof SensibleStore == areSensible)
                    .toArray();
        }

        /** Forgets what earlier evaluations found, so that the next ones depend on what they are given alone. */
        public void forget() {
            for (PathEvaluation evaluation : evaluations) {
                evaluation.forget();
            }
        }

        /**
         * Evaluates all paths at a state.
         *
         * @param timeS time [s]
         * @param state enthalpies and amounts, not modified
         * @param derivatives whether derivatives are wanted too
         * @return −1 if every temperature and flow (and derivative, if wanted) is finite, else the first part found with one
         *     that is not: the index of a path, or the number of paths plus the index of a node
         */
        public int evaluate(double timeS, double[] state, boolean derivatives) {
            return evaluate(timeS, state, derivatives, true);
        }

        /**
         * Evaluates all paths at a state and sums up what they do to it, without stating every flow.
         *
         * @param timeS time [s]
         * @param state enthalpies and amounts, not modified
         * @param derivatives whether derivatives are wanted too
         * @param rates receives the rates of the state, length {@link #stateSize}
         * @return as {@link #evaluate}
         */
        public int evaluateRates(double timeS, double[] state, boolean derivatives, double[] rates) {
            boolean separately = allSensible && direct.count > 0;
            int unfit = evaluate(timeS, state, derivatives, !separately);
            if (unfit >= 0) {
                return unfit;
            }
            if (separately) {
                if (layouts.length == 0) {
                    Arrays.fill(rates, 0);
                } else {
                    ofOthers.sum(flow, rates);
                }
                direct.addVaryingRates(flow, rates);
                constants.addRates(temperature, rates);
            } else {
                rates(flow, rates);
            }
            return -1;
        }

        private int evaluate(double timeS, double[] state, boolean derivatives, boolean constantFlows) {
            this.timeS = timeS;
            int unfit = evaluateStores(state);
            if (unfit >= 0) {
                return unfit;
            }
            for (int v = 0; v < imposed.length; v++) {
                evaluating = imposedPath[v];
                double imposedK = imposed[v].at(timeS);
                temperature[imposedSlot[v]] = imposedK;
                if (!Double.isFinite(imposedK)) {
                    return evaluating;
                }
            }
            if (constantFlows) {
                direct.flows(links, temperature, flow);
            }
            unfit = evaluateLinks(derivatives);
            if (unfit >= 0) {
                return unfit;
            }
            for (int p = 0; p < layouts.length; p++) {
                evaluating = pathOfLayout[p];
                if (!evaluatePath(p, state, derivatives)) {
                    return evaluating;
                }
            }
            return -1;
        }

        private int evaluateStores(double[] state) {
            if (allSensible) {
                linear(state, inverseCapacity, temperature);
            } else {
                for (int i = 0; i < sensible.length; i++) {
                    temperature[sensible[i]] =
                            SensibleStore.ZERO_CELSIUS_K + state[sensibleRow[i]] * inverseCapacity[i];
                }
            }
            for (int i : sensible) {
                // Branches that are never taken wait for nothing, a sum of all would.
                if (!(Math.abs(temperature[i]) < Double.POSITIVE_INFINITY)) {
                    return network.paths().size() + i;
                }
            }
            for (int i : otherNodes) {
                evaluating = network.paths().size() + i;
                StoreState at = stores[i];
                int row = nodeOffset[i];
                store[i].evaluate(state[row], state, row + 1, at);
                if (!isFit(at)) {
                    return evaluating;
                }
                temperature[i] = at.temperatureK;
                slope[i] = at.temperaturePerJoule;
                weight[row] = at.kelvinPerJoule;
                System.arraycopy(at.kelvinPerAmount, 0, weight, row + 1, at.kelvinPerAmount.length);
            }
            return -1;
        }

        private static void linear(double[] state, double[] inverseCapacity, double[] temperatureK) {
            for (int i = 0; i < inverseCapacity.length; i++) {
                temperatureK[i] = SensibleStore.ZERO_CELSIUS_K + state[i] * inverseCapacity[i];
            }
        }

        private static boolean isFit(StoreState store) {
            return Double.isFinite(store.temperatureK)
                    && Double.isFinite(store.temperaturePerJoule)
                    && store.kelvinPerJoule > 0
                    && store.kelvinPerJoule < Double.POSITIVE_INFINITY;
        }

        private int evaluateLinks(boolean derivatives) {
            for (int k = direct.constant; k < direct.count; k++) {
                evaluating = direct.path[k];
                double watts = direct.evaluate(k, links, temperature, derivatives ? slope : null);
                flow[direct.account[k]] = watts;
                // Branches that are never taken wait for nothing.
                if (!(Math.abs(watts) < Double.POSITIVE_INFINITY)) {
                    return evaluating;
                }
                if (derivatives && !(Double.isFinite(links.byFrom[k]) && Double.isFinite(links.byTo[k]))) {
                    return evaluating;
                }
            }
            return -1;
        }

        /**
         * The part that was being evaluated last; if an evaluation threw, the one whose law, store or boundary did.
         *
         * @return index of a path, or the number of paths plus the index of a node
         */
        public int evaluating() {
            return evaluating;
        }

        private boolean evaluatePath(int p, double[] state, boolean derivatives) {
            PathLayout layout = layouts[p];
            PathEvaluation evaluation = evaluations[p];
            setInputs(layout, evaluation, state);
            evaluation.evaluate(layout.path, timeS, derivatives);
            boolean finite = true;
            for (int a = 0; a < layout.accounts; a++) {
                double value = evaluation.flowOf(a);
                flow[layout.firstAccount + a] = value;
                finite &= Double.isFinite(value);
                if (derivatives) {
                    finite &= chain(p, a);
                }
            }
            return finite;
        }

        private void setInputs(PathLayout layout, PathEvaluation evaluation, double[] state) {
            double[] inputs = evaluation.inputs();
            for (int e = 0; e < layout.slot.length; e++) {
                inputs[e] = temperature[layout.slot[e]];
                int amounts = evaluation.amountCount(e);
                if (amounts > 0) {
                    System.arraycopy(state, layout.row[e] + 1, inputs, evaluation.amountOffset(e), amounts);
                }
            }
        }

        /** From derivatives in temperatures and amounts to derivatives in the state; whether all are finite. */
        private boolean chain(int p, int account) {
            PathLayout layout = layouts[p];
            double[] byInput = evaluations[p].derivatives(account);
            double[] row = gradient[p][account];
            Arrays.fill(row, 0);
            for (int e = 0; e < layout.slot.length; e++) {
                int column = layout.enthalpyColumn[e];
                if (column < 0) {
                    continue;
                }
                int node = layout.slot[e];
                row[column] += byInput[e] * slope[node];
                int amounts = evaluations[p].amountCount(e);
                for (int k = 0; k < amounts; k++) {
                    row[column + 1 + k] += byInput[e] * stores[node].temperaturePerAmount[k]
                            + byInput[evaluations[p].amountOffset(e) + k];
                }
            }
            double check = 0;
            for (double derivative : row) {
                check += 0 * derivative;
            }
            return check == 0;
        }

        /**
         * Temperature of a node at the state evaluated last.
         *
         * @param node index of the node
         * @return temperature [K]
         */
        public double temperatureK(int node) {
            return temperature[node];
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
            all.sum(flows, rates);
        }

        /**
         * Adds the Jacobian of the rates in the state to a matrix.
         *
         * @param adder receives (row, column, value) contributions
         */
        public void jacobian(JacobianSink adder) {
            for (int k = 0; k < direct.count; k++) {
                int from = direct.fromRow[k];
                int to = direct.toRow[k];
                double byFrom = links.byFrom[k];
                double byTo = links.byTo[k];
                if (from >= 0) {
                    adder.add(from, from, -byFrom);
                }
                if (from >= 0 && to >= 0) {
                    adder.add(from, to, -byTo);
                    adder.add(to, from, byFrom);
                }
                if (to >= 0) {
                    adder.add(to, to, byTo);
                }
            }
            for (int p = 0; p < layouts.length; p++) {
                int[] columns = layouts[p].columns;
                for (int a = 0; a < layouts[p].accounts; a++) {
                    double[] derivatives = gradient[p][a];
                    eachEntry(p, a, (row, factor) -> {
                        for (int c = 0; c < columns.length; c++) {
                            adder.add(row, columns[c], factor * derivatives[c]);
                        }
                    });
                }
            }
        }

        /**
         * Adds that part of the Jacobian which never changes: constant conductances between constant heat capacities.
         *
         * @param places where its parts go
         * @param values receives them, modified
         */
        public void addConstantJacobian(JacobianPlaces places, double[] values) {
            addLinks(0, direct.constant, places, values);
        }

        /**
         * Adds the rest of the Jacobian at the state evaluated last with derivatives.
         *
         * @param places where its parts go
         * @param values receives them, modified
         */
        public void addVaryingJacobian(JacobianPlaces places, double[] values) {
            addLinks(direct.constant, direct.count, places, values);
            int next = 0;
            for (int p = 0; p < layouts.length; p++) {
                for (int a = 0; a < layouts[p].accounts; a++) {
                    double[] derivatives = gradient[p][a];
                    for (double factor : accountFactors[p][a]) {
                        for (double derivative : derivatives) {
                            values[places.others[next++]] += factor * derivative;
                        }
                    }
                }
            }
        }

        private void addLinks(int first, int end, JacobianPlaces places, double[] values) {
            int[] at = places.links;
            for (int k = first; k < end; k++) {
                double byFrom = links.byFrom[k];
                double byTo = links.byTo[k];
                values[at[4 * k]] -= byFrom;
                values[at[4 * k + 1]] -= byTo;
                values[at[4 * k + 2]] += byFrom;
                values[at[4 * k + 3]] += byTo;
            }
        }

        /**
         * Change of all flows for a change of state, by the derivatives evaluated last.
         *
         * @param change change of the state, length {@link #stateSize}, not modified
         * @param out receives the change of the flows, length {@link #ledgerSize}
         */
        public void flowChange(double[] change, double[] out) {
            for (int k = 0; k < direct.count; k++) {
                int from = direct.fromRow[k];
                int to = direct.toRow[k];
                out[direct.account[k]] =
                        (from < 0 ? 0 : links.byFrom[k] * change[from]) + (to < 0 ? 0 : links.byTo[k] * change[to]);
            }
            for (int p = 0; p < layouts.length; p++) {
                int[] columns = layouts[p].columns;
                for (int a = 0; a < layouts[p].accounts; a++) {
                    double sum = 0;
                    for (int c = 0; c < columns.length; c++) {
                        sum += gradient[p][a][c] * change[columns[c]];
                    }
                    out[layouts[p].firstAccount + a] = sum;
                }
            }
        }

        /**
         * Whether nothing depends on time itself: every boundary is constant, every path joins two ends by a law of their
         * temperatures.
         *
         * @return true if {@link #flowTimeDerivative} gives zeros
         */
        public boolean isSteady() {
            return steady;
        }

        /**
         * Partial derivative of all flows in time: what moving boundaries do, by the derivatives evaluated last.
         *
         * @param timeS time [s]
         * @param out receives the rates of the flows, length {@link #ledgerSize}
         * @return −1 if every rate is finite, else the index of the first path found with one that is not
         */
        public int flowTimeDerivative(double timeS, double[] out) {
            for (int v = 0; v < imposed.length; v++) {
                evaluating = imposedPath[v];
                boundaryRate[imposedSlot[v]] = imposed[v].rate(timeS);
            }
            for (int k = 0; k < direct.count; k++) {
                double sum =
                        links.perFrom[k] * boundaryRate[direct.from[k]] + links.perTo[k] * boundaryRate[direct.to[k]];
                out[direct.account[k]] = sum;
                if (!Double.isFinite(sum)) {
                    return direct.path[k];
                }
            }
            for (int p = 0; p < layouts.length; p++) {
                PathLayout layout = layouts[p];
                for (int a = 0; a < layout.accounts; a++) {
                    double sum = evaluations[p].timeDerivativeOf(a);
                    double[] byInput = evaluations[p].derivatives(a);
                    for (int e = 0; e < layout.slot.length; e++) {
                        if (layout.row[e] < 0) {
                            sum += byInput[e] * boundaryRate[layout.slot[e]];
                        }
                    }
                    out[layout.firstAccount + a] = sum;
                    if (!Double.isFinite(sum)) {
                        return pathOfLayout[p];
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
            for (int k = 0; k < direct.count; k++) {
                out[direct.account[k]] =
                        direct.isScaledBy(k, name) ? direct.wattsWithoutFactor(k, links, temperature) : 0;
            }
            for (int p = 0; p < layouts.length; p++) {
                int index = layouts[p].path.multipliers().indexOf(name);
                for (int a = 0; a < layouts[p].accounts; a++) {
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
            double sum = slope[node] * change[offset];
            int amounts = network.nodes().get(node).store().amountCount();
            for (int k = 0; k < amounts; k++) {
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
            for (int i = 0; i < stateSize; i++) {
                double size = Math.abs(change[i]) * weight[i];
                if (!(size <= largest)) {
                    if (Double.isNaN(size)) {
                        return size;
                    }
                    largest = size;
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
            if (part[path] < 0) {
                return evaluations[-1 - part[path]];
            }
            PathEvaluation evaluation = new PathEvaluation(network.paths().get(path), multipliers);
            evaluation.inputs()[0] = endTemperatureK(path, 0);
            evaluation.inputs()[1] = endTemperatureK(path, 1);
            evaluation.evaluate(network.paths().get(path), timeS, true);
            return evaluation;
        }

        /**
         * The temperature that a path saw at an end when evaluated last.
         *
         * @param path index of the path in {@link Network#paths}
         * @param end index into {@link Path#ends}
         * @return temperature [K]
         */
        public double endTemperatureK(int path, int end) {
            int link = part[path];
            return temperature[
                    link < 0 ? layouts[-1 - link].slot[end] : end == 0 ? direct.from[link] : direct.to[link]];
        }
    }

    private double[][] factors(int layout) {
        double[][] factors = new double[layouts[layout].accounts][];
        for (int a = 0; a < factors.length; a++) {
            DoubleStream.Builder builder = DoubleStream.builder();
            eachEntry(layout, a, (row, factor) -> builder.add(factor));
            factors[a] = builder.build().toArray();
        }
        return factors;
    }

    /** What one unit of flow on an account of a layout does to the state. */
    @FunctionalInterface
    private interface EntrySink {
        void add(int row, double factor);
    }

    private void eachEntry(int layout, int account, EntrySink sink) {
        PathLayout at = layouts[layout];
        for (Entry entry : at.path.accounts().get(account).entries()) {
            if (at.row[entry.end()] >= 0) {
                sink.add(at.row[entry.end()] + 1 + entry.amount(), entry.factor());
            }
        }
    }

    /**
     * Looks up once where the parts of the Jacobian go in a matrix kept as one array.
     *
     * @param index place of a row and a column
     * @param unused a place that nothing reads, for parts that have none
     * @return the places
     */
    public JacobianPlaces places(IntBinaryOperator index, int unused) {
        int[] links = new int[4 * direct.count];
        for (int k = 0; k < direct.count; k++) {
            int from = direct.fromRow[k];
            int to = direct.toRow[k];
            links[4 * k] = from < 0 ? unused : index.applyAsInt(from, from);
            links[4 * k + 1] = from < 0 || to < 0 ? unused : index.applyAsInt(from, to);
            links[4 * k + 2] = from < 0 || to < 0 ? unused : index.applyAsInt(to, from);
            links[4 * k + 3] = to < 0 ? unused : index.applyAsInt(to, to);
        }
        IntStream.Builder others = IntStream.builder();
        for (int p = 0; p < layouts.length; p++) {
            int[] columns = layouts[p].columns;
            for (int a = 0; a < layouts[p].accounts; a++) {
                eachEntry(p, a, (row, factor) -> {
                    for (int column : columns) {
                        others.add(index.applyAsInt(row, column));
                    }
                });
            }
        }
        return new JacobianPlaces(links, others.build().toArray());
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
