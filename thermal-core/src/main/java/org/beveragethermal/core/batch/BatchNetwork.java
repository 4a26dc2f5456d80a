/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.beveragethermal.core.internal.Steadiness;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.SensibleStore;
import org.beveragethermal.core.network.StoreState;
import org.jspecify.annotations.Nullable;

/**
 * A lumped network of a few nodes whose samples differ in numbers only: temperatures, heat capacities, boundaries and factors.
 *
 * <p>Immutable and thread-safe if its laws are.
 */
public final class BatchNetwork {

    /** Most nodes: every step solves a full system of that size. */
    public static final int MOST_NODES = 16;

    /** A node: its name and, if it is not of constant heat capacity, its place in the description. */
    record Body(String name, @Nullable Node original) {

        /** Whether temperature is proportional to enthalpy. */
        boolean sensible() {
            return original == null || original.store() instanceof SensibleStore;
        }
    }

    /** A law between two ends; ends from 0 on are nodes, −1 − b is a boundary. */
    record Joint(String name, int from, int to, BatchLaw law, int multiplier) {}

    private final List<Body> nodes;
    private final List<String> boundaries;
    private final List<String> multipliers;
    private final List<Joint> joints;
    /** Paths of the engine; none if this was built of batch laws. */
    private final List<Path> paths;

    private BatchNetwork(
            List<Body> nodes, List<String> boundaries, List<String> multipliers, List<Joint> joints, List<Path> paths) {
        if (nodes.isEmpty() || nodes.size() > MOST_NODES) {
            throw new IllegalArgumentException("network of " + nodes.size() + " nodes: expected 1 to " + MOST_NODES);
        }
        this.nodes = List.copyOf(nodes);
        this.boundaries = List.copyOf(boundaries);
        this.multipliers = List.copyOf(multipliers);
        this.joints = List.copyOf(joints);
        this.paths = List.copyOf(paths);
    }

    /**
     * Begins a description.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** Describes nodes, boundaries and what joins them. Not thread-safe. */
    public static final class Builder {

        private final List<Body> nodes = new ArrayList<>();
        private final List<String> boundaries = new ArrayList<>();
        private final List<Joint> joints = new ArrayList<>();
        private final Set<String> names = new LinkedHashSet<>();
        private final List<String> multipliers = new ArrayList<>();

        private Builder() {}

        /**
         * Adds a node of constant heat capacity.
         *
         * @param name non-blank name, unique
         * @return this
         * @throws IllegalArgumentException if the name is blank or taken
         */
        public Builder node(String name) {
            nodes.add(new Body(taken(name), null));
            return this;
        }

        /**
         * Adds a temperature imposed from outside, which differs by sample but not in time.
         *
         * @param name non-blank name, unique
         * @return this
         * @throws IllegalArgumentException if the name is blank or taken
         */
        public Builder boundary(String name) {
            boundaries.add(taken(name));
            return this;
        }

        /**
         * Joins two ends by a law, which a factor of the same name may scale.
         *
         * @param name non-blank name, unique
         * @param from name of a node or boundary on the law's giving side
         * @param to name of a node or boundary on its taking side
         * @param law heat between the two temperatures
         * @return this
         * @throws IllegalArgumentException if the name is blank or taken, or an end is not known
         */
        public Builder link(String name, String from, String to, BatchLaw law) {
            Objects.requireNonNull(law, "law");
            int giving = end(from);
            int taking = end(to);
            if (giving == taking || (giving < 0 && taking < 0)) {
                throw new IllegalArgumentException("link " + name + " from " + from + " to " + to
                        + ": expected two different ends, one of them a node");
            }
            multipliers.add(taken(name));
            joints.add(new Joint(name, giving, taking, law, multipliers.size() - 1));
            return this;
        }

        /**
         * Joins two ends by any heat law, as {@link #link(String, String, String, BatchLaw)} does; its batch form is used if it has
         * one.
         *
         * @param name non-blank name, unique
         * @param from name of a node or boundary on the law's giving side
         * @param to name of a node or boundary on its taking side
         * @param law heat between the two temperatures
         * @return this
         * @throws IllegalArgumentException if the name is blank or taken, or an end is not known
         */
        public Builder heatLink(String name, String from, String to, HeatLaw law) {
            return link(name, from, to, BatchLaw.of(law));
        }

        /**
         * Ends the description.
         *
         * @return the network
         * @throws IllegalArgumentException if there is no node or more than {@link BatchNetwork#MOST_NODES}
         */
        public BatchNetwork build() {
            return new BatchNetwork(nodes, boundaries, multipliers, joints, List.of());
        }

        private String taken(String name) {
            if (name.isBlank() || !names.add(name)) {
                throw new IllegalArgumentException("name '" + name + "': expected one that is not blank and not taken");
            }
            return name;
        }

        private int end(String name) {
            for (int i = 0; i < nodes.size(); i++) {
                if (nodes.get(i).name().equals(name)) {
                    return i;
                }
            }
            int boundary = boundaries.indexOf(name);
            if (boundary < 0) {
                throw new IllegalArgumentException("end " + name + ": expected a node or boundary named before, "
                        + nodes.stream().map(Body::name).toList() + " or " + boundaries);
            }
            return -1 - boundary;
        }
    }

    /**
     * Takes over a network of the engine. Paths are evaluated sample by sample, stores too. Nodes with amounts, boundaries that vary
     * and paths that make something of time are refused.
     *
     * @param network nodes without amounts, boundaries that never change
     * @return the same network for batches; samples have its temperatures and capacities unless they are told otherwise
     * @throws IllegalArgumentException if the network cannot be taken over
     */
    public static BatchNetwork of(Network network) {
        return of(network.nodes(), network.paths());
    }

    /**
     * Takes over what a run of the engine has joined, such as a real vessel and the air around it, as {@link #of(Network)} does: {@code
     * BatchNetwork.of(prediction.trajectory().paths(0))}.
     *
     * @param paths paths with one node or more among their ends, not modified
     * @return the same network for batches; nodes that no path ends at are left out
     * @throws IllegalArgumentException if the network cannot be taken over
     */
    public static BatchNetwork of(List<? extends Path> paths) {
        Set<Node> nodes = new LinkedHashSet<>();
        for (Path path : paths) {
            for (End end : path.ends()) {
                if (end instanceof Node node) {
                    nodes.add(node);
                }
            }
        }
        return of(List.copyOf(nodes), paths);
    }

    private static BatchNetwork of(List<Node> described, List<? extends Path> paths) {
        List<Body> nodes = new ArrayList<>();
        for (Node node : described) {
            if (node.store().amountCount() > 0) {
                throw new IllegalArgumentException(
                        node
                                + " has amounts that change: a batch follows temperatures only; run the engine sample by sample");
            }
            nodes.add(new Body(node.name(), node));
        }
        Set<String> boundaries = new LinkedHashSet<>();
        Set<String> multipliers = new LinkedHashSet<>();
        for (Path path : paths) {
            multipliers.addAll(path.multipliers());
            for (End end : path.ends()) {
                if (end instanceof Boundary boundary) {
                    boundaries.add(boundary.name());
                }
            }
        }
        new Steadiness(paths, "a batch has no clock").require(Map.of());
        return new BatchNetwork(
                nodes, List.copyOf(boundaries), List.copyOf(multipliers), List.of(), List.copyOf(paths));
    }

    /**
     * Begins the numbers of samples.
     *
     * @param count number of samples, 1 to 100 million
     * @return a builder
     * @throws IllegalArgumentException if the number is outside its range
     */
    public BatchSamples.Builder samples(int count) {
        return new BatchSamples.Builder(this, count);
    }

    List<Body> nodes() {
        return nodes;
    }

    List<String> boundaries() {
        return boundaries;
    }

    List<String> multipliers() {
        return multipliers;
    }

    List<Joint> joints() {
        return joints;
    }

    /** Paths that are evaluated sample by sample; none if the network was built of batch laws. */
    List<Path> paths() {
        return paths;
    }

    int node(String name) {
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("node " + name + ": expected one of "
                + nodes.stream().map(Body::name).toList());
    }

    /** Temperature of a node at the start of the description [K]. */
    static double startK(Node node) {
        StoreState state = new StoreState(0);
        node.store().evaluate(node.enthalpyJ(), new double[0], 0, state);
        return state.temperatureK;
    }

    /** Sensible heat capacity at the start of the description [J/K]. */
    static double capacityJPerK(Node node) {
        StoreState state = new StoreState(0);
        node.store().evaluate(node.enthalpyJ(), new double[0], 0, state);
        return 1 / state.kelvinPerJoule;
    }
}
