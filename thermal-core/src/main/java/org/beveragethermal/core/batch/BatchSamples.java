/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import java.util.Arrays;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;

/** A network with the numbers in which its samples differ. Immutable. */
public final class BatchSamples {

    private static final int MOST = 100_000_000;

    private final BatchNetwork network;
    private final int count;
    /** By node, then sample. Of a node of constant capacity [J/K], else a factor on its store. */
    private final double[][] capacities;

    private final double[][] startsK;
    private final double[][] boundariesK;
    private final double[][] multipliers;

    private BatchSamples(Builder b) {
        network = b.network;
        count = b.count;
        capacities = b.capacities.clone();
        startsK = b.startsK.clone();
        boundariesK = b.boundariesK.clone();
        multipliers = b.multipliers.clone();
    }

    /** Collects numbers; each array is copied. A number given for all samples stands for an array of it. Not thread-safe. */
    public static final class Builder {

        private final BatchNetwork network;
        private final int count;
        private final double[][] capacities;
        private final double[][] startsK;
        private final double[][] boundariesK;
        private final double[][] multipliers;

        Builder(BatchNetwork network, int count) {
            if (count < 1 || count > MOST) {
                throw new IllegalArgumentException("samples " + count + ": expected 1 to " + MOST);
            }
            this.network = network;
            this.count = count;
            capacities = new double[network.nodes().size()][];
            startsK = new double[network.nodes().size()][];
            boundariesK = new double[network.boundaries().size()][];
            multipliers = new double[network.multipliers().size()][];
            for (int i = 0; i < capacities.length; i++) {
                Node node = network.nodes().get(i).original();
                if (node != null) {
                    capacities[i] = all(network.nodes().get(i).sensible() ? BatchNetwork.capacityJPerK(node) : 1);
                    startsK[i] = all(BatchNetwork.startK(node));
                }
            }
            for (Path path : network.paths()) {
                for (End end : path.ends()) {
                    if (end instanceof Boundary boundary) {
                        boundariesK[network.boundaries().indexOf(boundary.name())] =
                                all(boundary.temperatureK().at(0));
                    }
                }
            }
            for (int m = 0; m < multipliers.length; m++) {
                multipliers[m] = all(1);
            }
        }

        private double[] all(double value) {
            double[] values = new double[count];
            Arrays.fill(values, value);
            return values;
        }

        /**
         * Heat capacities of a node of constant capacity.
         *
         * @param node name of the node
         * @param values heat capacities [J/K], one for all or one per sample, finite, > 0, not modified
         * @return this
         * @throws IllegalArgumentException if there is no such node, its capacity is not constant, the number of values is wrong or
         *     a value is outside its range
         */
        public Builder capacityJPerK(String node, double... values) {
            int i = network.node(node);
            if (!network.nodes().get(i).sensible()) {
                throw new IllegalArgumentException(
                        "node " + node + " has a store of its own: expected capacityFactor, which scales it");
            }
            capacities[i] = checked("heat capacity of " + node + " [J/K]", values, true);
            return this;
        }

        /**
         * Factors on what a node holds: on its heat capacity, or on the mass of its store.
         *
         * @param node name of the node
         * @param values factors, one for all or one per sample, finite, > 0, not modified
         * @return this
         * @throws IllegalArgumentException if there is no such node, it has no capacity yet, the number of values is wrong or a value
         *     is outside its range
         */
        public Builder capacityFactor(String node, double... values) {
            int i = network.node(node);
            if (capacities[i] == null) {
                throw missing("heat capacity of " + node);
            }
            double[] factors = checked("factor on the capacity of " + node, values, true);
            double[] products = new double[count];
            for (int s = 0; s < count; s++) {
                products[s] = capacities[i][s] * factors[s];
            }
            capacities[i] = products;
            return this;
        }

        /**
         * Temperatures of a node at the start.
         *
         * @param node name of the node
         * @param values temperatures [K], one for all or one per sample, finite, > 0, not modified
         * @return this
         * @throws IllegalArgumentException if there is no such node, the number of values is wrong or a value is outside its range
         */
        public Builder startK(String node, double... values) {
            startsK[network.node(node)] = checked("temperature of " + node + " [K]", values, true);
            return this;
        }

        /**
         * Temperatures of a boundary.
         *
         * @param boundary name of the boundary
         * @param values temperatures [K], one for all or one per sample, finite, > 0, not modified
         * @return this
         * @throws IllegalArgumentException if there is no such boundary, the number of values is wrong or a value is outside its
         *     range
         */
        public Builder boundaryK(String boundary, double... values) {
            boundariesK[index(network.boundaries(), boundary, "boundary")] =
                    checked("temperature of " + boundary + " [K]", values, true);
            return this;
        }

        /**
         * Factors on laws.
         *
         * @param name name of the link or, of a network of the engine, of the multiplier
         * @param values factors, one for all or one per sample, finite, ≥ 0, not modified
         * @return this
         * @throws IllegalArgumentException if there is no such factor, the number of values is wrong or a value is outside its range
         */
        public Builder multiplier(String name, double... values) {
            multipliers[index(network.multipliers(), name, "multiplier")] =
                    checked("multiplier " + name, values, false);
            return this;
        }

        private static int index(List<String> names, String name, String what) {
            int index = names.indexOf(name);
            if (index < 0) {
                throw new IllegalArgumentException(what + " " + name + ": expected one of " + names);
            }
            return index;
        }

        private double[] checked(String what, double[] values, boolean positive) {
            if (values.length != 1 && values.length != count) {
                throw new IllegalArgumentException(
                        what + ": " + values.length + " values, expected 1 or " + count + ", one per sample");
            }
            for (int s = 0; s < values.length; s++) {
                if (!(positive ? values[s] > 0 : values[s] >= 0) || Double.isInfinite(values[s])) {
                    throw new IllegalArgumentException(what + " of sample " + s + ": " + values[s]
                            + ", expected a finite value " + (positive ? "> 0" : "≥ 0"));
                }
            }
            return values.length == count ? values.clone() : all(values[0]);
        }

        private static IllegalArgumentException missing(String what) {
            return new IllegalArgumentException(what + " is missing: expected it for one or for every sample");
        }

        /**
         * Ends the numbers.
         *
         * @return the samples
         * @throws IllegalArgumentException if a capacity or temperature is missing
         */
        public BatchSamples build() {
            for (int i = 0; i < capacities.length; i++) {
                String name = network.nodes().get(i).name();
                if (capacities[i] == null) {
                    throw missing("heat capacity of " + name);
                }
                if (startsK[i] == null) {
                    throw missing("temperature of " + name + " at the start");
                }
            }
            for (int b = 0; b < boundariesK.length; b++) {
                if (boundariesK[b] == null) {
                    throw missing("temperature of " + network.boundaries().get(b));
                }
            }
            return new BatchSamples(this);
        }
    }

    /**
     * Number of samples.
     *
     * @return at least 1
     */
    public int count() {
        return count;
    }

    BatchNetwork network() {
        return network;
    }

    double capacity(int node, int sample) {
        return capacities[node][sample];
    }

    double startK(int node, int sample) {
        return startsK[node][sample];
    }

    double boundaryK(int boundary, int sample) {
        return boundariesK[boundary][sample];
    }

    double multiplier(int multiplier, int sample) {
        return multipliers[multiplier][sample];
    }
}
