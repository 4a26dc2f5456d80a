/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What constant conductances between sensible nodes and to boundaries do to the rates of a run, in loops that the compiler can vectorise: links
 * between nodes that stand the same number of places apart lie on one diagonal.
 */
final class ConstantLinks {

    /** A diagonal pays if at least this part of its places is taken. */
    private static final double FULL_ENOUGH = 0.3;

    /** Distance of the nodes on each diagonal. */
    private final int[] distance;
    /** For each diagonal the conductance from node i to the one its distance away [W/K], 0 where there is none. */
    private final double[][] conductance;

    private final double[] flow;
    /** Links that lie on no diagonal, node by node: slot of the other end and conductance. */
    private final int[] node;

    private final int[] other;
    private final double[] otherConductance;

    private ConstantLinks(
            int[] distance, double[][] conductance, int[] node, int[] other, double[] otherConductance, int nodes) {
        this.distance = distance;
        this.conductance = conductance;
        this.flow = new double[distance.length == 0 ? 0 : nodes];
        this.node = node;
        this.other = other;
        this.otherConductance = otherConductance;
    }

    static ConstantLinks of(DirectLinks direct, DirectLinks.Values values, int nodes) {
        Map<Integer, List<Integer>> byDistance = new TreeMap<>();
        List<Integer> scattered = new ArrayList<>();
        for (int k = 0; k < direct.constant; k++) {
            if (direct.from[k] < nodes && direct.to[k] < nodes) {
                byDistance
                        .computeIfAbsent(Math.abs(direct.from[k] - direct.to[k]), d -> new ArrayList<>())
                        .add(k);
            } else {
                scattered.add(k);
            }
        }
        byDistance.entrySet().removeIf(entry -> {
            boolean full = entry.getValue().size() >= FULL_ENOUGH * (nodes - entry.getKey()) && entry.getKey() > 0;
            if (!full) {
                scattered.addAll(entry.getValue());
            }
            return !full;
        });
        int[] distance =
                byDistance.keySet().stream().mapToInt(Integer::intValue).toArray();
        double[][] conductance = new double[distance.length][];
        for (int d = 0; d < distance.length; d++) {
            conductance[d] = new double[nodes - distance[d]];
            for (int k : byDistance.getOrDefault(distance[d], List.of())) {
                conductance[d][Math.min(direct.from[k], direct.to[k])] += values.perFrom[k];
            }
        }
        return scattered(direct, values, scattered, distance, conductance, nodes);
    }

    private static ConstantLinks scattered(
            DirectLinks direct,
            DirectLinks.Values values,
            List<Integer> scattered,
            int[] distance,
            double[][] conductance,
            int nodes) {
        int count = 0;
        int[] node = new int[2 * scattered.size()];
        int[] other = new int[node.length];
        double[] otherConductance = new double[node.length];
        for (int k : scattered) {
            for (int side = 0; side < 2; side++) {
                int here = side == 0 ? direct.from[k] : direct.to[k];
                if (here < nodes) {
                    node[count] = here;
                    other[count] = side == 0 ? direct.to[k] : direct.from[k];
                    otherConductance[count++] = values.perFrom[k];
                }
            }
        }
        return new ConstantLinks(
                distance,
                conductance,
                java.util.Arrays.copyOf(node, count),
                java.util.Arrays.copyOf(other, count),
                java.util.Arrays.copyOf(otherConductance, count),
                nodes);
    }

    /** Adds what the links bring to each node [W]; nodes are the first slots and their rows those of the rates. */
    void addRates(double[] temperatureK, double[] rates) {
        for (int d = 0; d < distance.length; d++) {
            diagonal(distance[d], conductance[d], temperatureK, flow, rates);
        }
        for (int i = 0; i < node.length; i++) {
            rates[node[i]] += otherConductance[i] * (temperatureK[other[i]] - temperatureK[node[i]]);
        }
    }

    private static void diagonal(int distance, double[] g, double[] t, double[] flow, double[] rates) {
        for (int i = 0; i < g.length; i++) {
            flow[i] = g[i] * (t[i + distance] - t[i]);
        }
        for (int i = 0; i < g.length; i++) {
            rates[i] += flow[i];
        }
        for (int i = 0; i < g.length; i++) {
            rates[i + distance] -= flow[i];
        }
    }
}
