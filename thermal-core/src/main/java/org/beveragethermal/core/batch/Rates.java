/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import java.util.Arrays;
import java.util.List;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.jspecify.annotations.Nullable;

/**
 * Rates and Jacobians of many samples side by side: an array per quantity, an element per lane.
 *
 * <p>The state of a node of constant capacity is its temperature; of any other, its enthalpy over a fixed capacity, so that both
 * are of the size of kelvins. Loops are short and plain on purpose: the compiler makes vector instructions of them.
 */
final class Rates {

    private static final double[] NO_AMOUNTS = {};

    private final BatchSamples samples;
    private final int nodes;
    /** Per node, the store if temperature is not the state itself. */
    private final @Nullable Store[] stores;
    /** What the enthalpy of such a store is divided by [J/K]. */
    private final double[] unitJPerK;

    private final double[][] temperature;
    private final double[][] byState;
    private final double[][] heat;
    /** Rates of the state [K/s] after {@link #evaluate}. */
    final double[][] rate;
    /** Derivatives of the rates, row after row [1/s] after {@link #evaluate} with derivatives. */
    final double[][] jacobian;
    /** Per lane: one over the capacity [K/J], boundaries [K], factors. */
    private final double[][] inverseCapacity;

    private final double[][] boundary;
    private final double[][] factor;
    private final double[] flow = new double[BatchLaw.MOST_PAIRS];
    private final double[] perFrom = new double[BatchLaw.MOST_PAIRS];
    private final double[] perTo = new double[BatchLaw.MOST_PAIRS];
    private final BatchNetwork.Joint[] joints;
    private final Looped[] looped;
    private final StoreState storeState = new StoreState(0);

    Rates(BatchSamples samples) {
        this.samples = samples;
        BatchNetwork network = samples.network();
        nodes = network.nodes().size();
        stores = new Store[nodes];
        unitJPerK = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            Node original = network.nodes().get(i).original();
            if (original != null && !network.nodes().get(i).sensible()) {
                stores[i] = original.store();
                unitJPerK[i] = BatchNetwork.capacityJPerK(original);
            }
        }
        temperature = lanes(nodes);
        byState = lanes(nodes);
        heat = lanes(nodes);
        rate = lanes(nodes);
        jacobian = lanes(nodes * nodes);
        inverseCapacity = lanes(nodes);
        boundary = lanes(network.boundaries().size());
        factor = lanes(network.multipliers().size());
        joints = network.joints().toArray(new BatchNetwork.Joint[0]);
        looped = network.paths().stream().map(path -> new Looped(path, network)).toArray(Looped[]::new);
    }

    /** Second derivative of the state of a node in time, from rates and derivatives at one state [1/s²]. */
    double curvature(int node, double[][] rates, int lane) {
        double sum = 0;
        for (int j = 0; j < nodes; j++) {
            sum += jacobian[node * nodes + j][lane] * rates[j][lane];
        }
        return sum;
    }

    static double[][] lanes(int count) {
        return new double[count][BatchLaw.MOST_PAIRS];
    }

    int nodes() {
        return nodes;
    }

    /** Takes a sample's numbers into a lane and its start into the state. */
    void load(int sample, int lane, double[][] state) {
        for (int i = 0; i < nodes; i++) {
            Store store = stores[i];
            double capacity = samples.capacity(i, sample);
            inverseCapacity[i][lane] = 1 / (store == null ? capacity : capacity * unitJPerK[i]);
            state[i][lane] = stateOf(i, samples.startK(i, sample));
        }
        for (int b = 0; b < boundary.length; b++) {
            boundary[b][lane] = samples.boundaryK(b, sample);
        }
        for (int m = 0; m < factor.length; m++) {
            factor[m][lane] = samples.multiplier(m, sample);
        }
    }

    /** Heat capacity of a node, that at which the description starts if it is not constant [J/K]. */
    double capacityJPerK(int node, int lane) {
        return 1 / inverseCapacity[node][lane];
    }

    void move(int from, int to) {
        move(inverseCapacity, from, to);
        move(boundary, from, to);
        move(factor, from, to);
        move(jacobian, from, to);
    }

    static void move(double[][] lanes, int from, int to) {
        for (double[] lane : lanes) {
            lane[to] = lane[from];
        }
    }

    /** The state of a node at a temperature. */
    double stateOf(int node, double temperatureK) {
        Store store = stores[node];
        return store == null ? temperatureK : store.enthalpyJ(temperatureK, NO_AMOUNTS) / unitJPerK[node];
    }

    /** The temperature of a node in a state [K]. */
    double temperatureOf(int node, double state) {
        Store store = stores[node];
        if (store == null) {
            return state;
        }
        store.evaluate(state * unitJPerK[node], NO_AMOUNTS, 0, storeState);
        return storeState.temperatureK;
    }

    private double[] temperature(int node, double[][] state) {
        return stores[node] == null ? state[node] : temperature[node];
    }

    /** Rates, and if wanted derivatives, in the states of the first n lanes. */
    void evaluate(double[][] state, int n, boolean derivatives) {
        for (int i = 0; i < nodes; i++) {
            Arrays.fill(heat[i], 0, n, 0);
            Store store = stores[i];
            if (store != null) {
                evaluate(store, unitJPerK[i], state[i], temperature[i], byState[i], n);
            }
        }
        if (derivatives) {
            for (double[] element : jacobian) {
                Arrays.fill(element, 0, n, 0);
            }
        }
        for (BatchNetwork.Joint joint : joints) {
            add(joint, state, n, derivatives);
        }
        for (Looped path : looped) {
            path.add(state, n, derivatives);
        }
        for (int i = 0; i < nodes; i++) {
            product(heat[i], inverseCapacity[i], rate[i], n);
            for (int j = 0; j < nodes && derivatives; j++) {
                double[] element = jacobian[i * nodes + j];
                product(element, inverseCapacity[i], element, n);
                if (stores[j] != null) {
                    product(element, byState[j], element, n);
                }
            }
        }
    }

    private void evaluate(Store store, double unit, double[] state, double[] temperatureK, double[] slope, int n) {
        for (int l = 0; l < n; l++) {
            store.evaluate(state[l] * unit, NO_AMOUNTS, 0, storeState);
            temperatureK[l] = storeState.temperatureK;
            slope[l] = storeState.temperaturePerJoule * unit;
        }
    }

    private void add(BatchNetwork.Joint joint, double[][] state, int n, boolean derivatives) {
        int from = joint.from();
        int to = joint.to();
        double[] fromK = from < 0 ? boundary[-1 - from] : temperature(from, state);
        double[] toK = to < 0 ? boundary[-1 - to] : temperature(to, state);
        double[] scale = factor[joint.multiplier()];
        if (derivatives) {
            joint.law().evaluate(fromK, toK, flow, perFrom, perTo, n);
        } else {
            joint.law().flows(fromK, toK, flow, perFrom, perTo, n);
        }
        if (from >= 0) {
            subtractProduct(heat[from], flow, scale, n);
        }
        if (to >= 0) {
            addProduct(heat[to], flow, scale, n);
        }
        if (derivatives && from >= 0) {
            subtractProduct(jacobian[from * nodes + from], perFrom, scale, n);
            if (to >= 0) {
                subtractProduct(jacobian[from * nodes + to], perTo, scale, n);
            }
        }
        if (derivatives && to >= 0) {
            addProduct(jacobian[to * nodes + to], perTo, scale, n);
            if (from >= 0) {
                addProduct(jacobian[to * nodes + from], perFrom, scale, n);
            }
        }
    }

    private static void product(double[] a, double[] b, double[] out, int n) {
        for (int l = 0; l < n; l++) {
            out[l] = a[l] * b[l];
        }
    }

    private static void addProduct(double[] to, double[] a, double[] b, int n) {
        for (int l = 0; l < n; l++) {
            to[l] += a[l] * b[l];
        }
    }

    private static void subtractProduct(double[] to, double[] a, double[] b, int n) {
        for (int l = 0; l < n; l++) {
            to[l] -= a[l] * b[l];
        }
    }

    /** A path of the engine, evaluated lane by lane. */
    private final class Looped {

        private final Path path;
        private final PathEvaluation evaluation;
        private final double[] inputs;
        /** Of each end, index of the node or −1 − boundary. */
        private final int[] ends;

        private final int[] multipliers;
        /** Of each account, indices into the ends of who gives and who takes. */
        private final int[] givers;

        private final int[] takers;

        private Looped(Path path, BatchNetwork network) {
            this.path = path;
            evaluation = new PathEvaluation(path);
            List<End> all = path.ends();
            inputs = new double[all.size()];
            ends = all.stream()
                    .mapToInt(end -> end instanceof Node
                            ? network.node(end.name())
                            : -1 - network.boundaries().indexOf(end.name()))
                    .toArray();
            multipliers = path.multipliers().stream()
                    .mapToInt(network.multipliers()::indexOf)
                    .toArray();
            givers = path.accounts().stream()
                    .mapToInt(account -> end(account, -1))
                    .toArray();
            takers = path.accounts().stream()
                    .mapToInt(account -> end(account, 1))
                    .toArray();
        }

        private static int end(Account account, double sign) {
            return account.entries().stream()
                    .filter(entry -> Math.signum(entry.factor()) == sign)
                    .mapToInt(Account.Entry::end)
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "account " + account.mechanism() + " is not of heat from one end to another"));
        }

        private void add(double[][] state, int n, boolean derivatives) {
            for (int l = 0; l < n; l++) {
                for (int e = 0; e < ends.length; e++) {
                    int end = ends[e];
                    inputs[e] = end < 0 ? boundary[-1 - end][l] : temperature(end, state)[l];
                }
                for (int m = 0; m < multipliers.length; m++) {
                    evaluation.setMultiplier(m, factor[multipliers[m]][l]);
                }
                // A lane beside this one is another sample: nothing of it may be remembered.
                evaluation.forget();
                evaluation.evaluate(path, 0, inputs, NO_AMOUNTS);
                for (int a = 0; a < givers.length; a++) {
                    add(a, l, derivatives);
                }
            }
        }

        private void add(int account, int lane, boolean derivatives) {
            int giver = ends[givers[account]];
            int taker = ends[takers[account]];
            double watts = evaluation.flowOf(account);
            if (giver >= 0) {
                heat[giver][lane] -= watts;
            }
            if (taker >= 0) {
                heat[taker][lane] += watts;
            }
            for (int e = 0; e < ends.length && derivatives; e++) {
                if (ends[e] >= 0) {
                    double slope = evaluation.derivativeOf(account, e);
                    if (giver >= 0) {
                        jacobian[giver * nodes + ends[e]][lane] -= slope;
                    }
                    if (taker >= 0) {
                        jacobian[taker * nodes + ends[e]][lane] += slope;
                    }
                }
            }
        }
    }
}
