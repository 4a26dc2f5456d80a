/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SensibleStore;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;

/** One sample of a batch as a network of the engine, for what the batch cannot follow. */
final class ScalarSample {

    private final Network network;
    private final Map<String, Double> multipliers = new HashMap<>();

    ScalarSample(BatchSamples samples, int sample) {
        BatchNetwork batch = samples.network();
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < batch.nodes().size(); i++) {
            BatchNetwork.Body body = batch.nodes().get(i);
            double capacity = samples.capacity(i, sample);
            Node original = body.original();
            Store store = original == null || body.sensible()
                    ? new SensibleStore(capacity)
                    : new ScaledStore(original.store(), capacity);
            nodes.add(Node.of(body.name(), store, samples.startK(i, sample)));
        }
        List<Boundary> boundaries = new ArrayList<>();
        for (int b = 0; b < batch.boundaries().size(); b++) {
            boundaries.add(Boundary.constant(batch.boundaries().get(b), samples.boundaryK(b, sample)));
        }
        for (int m = 0; m < batch.multipliers().size(); m++) {
            multipliers.put(batch.multipliers().get(m), samples.multiplier(m, sample));
        }
        List<Path> paths = new ArrayList<>();
        for (BatchNetwork.Joint joint : batch.joints()) {
            paths.add(DirectPath.of(
                            joint.name(),
                            end(joint.from(), nodes, boundaries),
                            end(joint.to(), nodes, boundaries),
                            "heat",
                            joint.law().asHeatLaw())
                    .scaledBy(joint.name()));
        }
        for (Path path : batch.paths()) {
            List<End> ends = new ArrayList<>();
            for (End end : path.ends()) {
                ends.add(
                        end instanceof Node node
                                ? nodes.get(batch.node(node.name()))
                                : boundaries.get(batch.boundaries().indexOf(end.name())));
            }
            paths.add(new Rewired(path, List.copyOf(ends)));
        }
        network = Network.of(nodes, paths);
    }

    private static End end(int index, List<Node> nodes, List<Boundary> boundaries) {
        return index >= 0 ? nodes.get(index) : boundaries.get(-1 - index);
    }

    Trajectory run(double endS, double toleranceK) {
        return NetworkSolver.standard()
                .withToleranceK(toleranceK)
                .withMultipliers(multipliers)
                .solve(network, endS);
    }

    Node node(int index) {
        return network.nodes().get(index);
    }

    /** A path between other ends of the same kind. */
    private record Rewired(Path original, List<End> ends) implements Path {
        @Override
        public String name() {
            return original.name();
        }

        @Override
        public List<Account> accounts() {
            return original.accounts();
        }

        @Override
        public List<String> multipliers() {
            return original.multipliers();
        }

        @Override
        public void evaluate(PathEvaluation e) {
            original.evaluate(e);
        }
    }

    /** A store with more or less in it. */
    private record ScaledStore(Store original, double factor) implements Store {
        @Override
        public int amountCount() {
            return 0;
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            original.evaluate(enthalpyJ / factor, amounts, offset, out);
            out.temperaturePerJoule /= factor;
            out.kelvinPerJoule /= factor;
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            return factor * original.enthalpyJ(temperatureK, amounts);
        }
    }
}
