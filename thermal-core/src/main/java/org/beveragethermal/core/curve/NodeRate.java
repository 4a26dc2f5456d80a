/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.curve;

import java.util.Arrays;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.beveragethermal.core.internal.Steadiness;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.PreparedNetwork;

/** The rate of change of the only node of a network. Thread-safe: each thread has a workspace of its own. */
final class NodeRate implements DoubleUnaryOperator {

    /** What a refusal of surroundings that vary goes on with. */
    static final String STEADY =
            "one curve holds only where surroundings never change (no swinging air, doors, sun that moves or melting ice);"
                    + " predict the run itself instead";

    private static final double ACCURACY_K = 1e-10;
    private static final double[] NO_AMOUNTS = {};
    /** How far beyond the boundaries an equilibrium is looked for [K]: what brings heat of its own may carry it there. */
    private static final double FARTHEST_K = 200;

    private final Network network;
    private final Node node;
    private final ThreadLocal<Evaluation> evaluation;

    NodeRate(Network network, Map<String, Double> multipliers) {
        if (network.nodes().size() != 1) {
            throw new IllegalArgumentException("network of " + network.nodes().size()
                    + " nodes: the rate of one node was asked for; use VesselCurve or core.batch");
        }
        this.network = network;
        node = network.nodes().get(0);
        if (node.store().amountCount() > 0) {
            throw new IllegalArgumentException(node + ": its " + node.store().amountCount()
                    + " amounts change too, so its rate depends on more than its temperature");
        }
        Map<String, Double> factors = Map.copyOf(multipliers);
        factors.forEach((name, factor) -> {
            if (!(factor >= 0) || Double.isInfinite(factor)) {
                throw new IllegalArgumentException(
                        "multiplier " + name + " = " + factor + ": expected a finite factor ≥ 0");
            }
        });
        PreparedNetwork prepared = network.prepare();
        evaluation = ThreadLocal.withInitial(() -> new Evaluation(prepared, factors));
        new Steadiness(network.paths(), STEADY).require(factors);
    }

    private final class Evaluation {
        private final PreparedNetwork.Workspace workspace;
        private final double[] state = new double[1];
        private final double[] rate = new double[1];

        private Evaluation(PreparedNetwork prepared, Map<String, Double> factors) {
            workspace = prepared.newWorkspace(factors);
        }

        private double kelvinPerSecond(double temperatureK) {
            state[0] = node.store().enthalpyJ(temperatureK, NO_AMOUNTS);
            workspace.forget();
            if (workspace.evaluate(0, state, false) >= 0) {
                return Double.NaN;
            }
            workspace.rates(workspace.flows(), rate);
            return workspace.temperatureChangeK(0, rate);
        }
    }

    @Override
    public double applyAsDouble(double temperatureK) {
        return evaluation.get().kelvinPerSecond(temperatureK);
    }

    /** Where the rate vanishes: between the boundaries, or beyond them if heat comes whatever the temperatures. */
    double equilibriumK() {
        double[] boundaries = network.paths().stream()
                .flatMap(path -> path.ends().stream())
                .flatMapToDouble(end -> end instanceof Boundary boundary
                        ? DoubleStream.of(boundary.temperatureK().at(0))
                        : DoubleStream.empty())
                .toArray();
        if (boundaries.length == 0) {
            throw new IllegalArgumentException(
                    "network without boundaries: expected one or more that the node can come to equilibrium with");
        }
        double low = Arrays.stream(boundaries).min().getAsDouble();
        double high = Arrays.stream(boundaries).max().getAsDouble();
        for (double beyond = 0; beyond <= FARTHEST_K; beyond = 2 * beyond + 1) {
            double atLow = applyAsDouble(Math.max(1, low - beyond));
            double atHigh = applyAsDouble(high + beyond);
            if (atLow == 0) {
                return Math.max(1, low - beyond);
            }
            if (atHigh == 0) {
                return high + beyond;
            }
            if (atLow > 0 && atHigh < 0) {
                return new BracketingNthOrderBrentSolver(ACCURACY_K, 5)
                        .solve(1000, this::applyAsDouble, Math.max(1, low - beyond), high + beyond);
            }
        }
        throw new IllegalArgumentException(node + ": no equilibrium within " + FARTHEST_K + " K of its boundaries, "
                + low + " K to " + high + " K");
    }
}
