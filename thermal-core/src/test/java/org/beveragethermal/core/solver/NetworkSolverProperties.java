/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;

/** What must hold in any passive network: second law, first law, and one answer to one question. */
final class NetworkSolverProperties {

    private static final double END_S = 20_000;
    private static final int SAMPLES = 200;

    @Property(seed = "20260108")
    @Label("Hull: no node of a passive network leaves the range of start and boundaries")
    void noNodeLeavesTheRangeOfStartAndBoundaries(@ForAll @IntRange(min = 1, max = 8) int size, @ForAll long seed) {
        PassiveNetworks.Drawn drawn = PassiveNetworks.draw(size, new SplittableRandom(seed));
        Trajectory run = NetworkSolver.standard().solve(drawn.network(), END_S);
        double tolerance = NetworkSolver.DEFAULT_TOLERANCE_K;
        for (int i = 0; i <= SAMPLES; i++) {
            // Dense at the beginning, where fast nodes move.
            double time = END_S * Math.pow((double) i / SAMPLES, 4);
            for (Node node : drawn.network().nodes()) {
                assertThat(run.temperatureK(node, time))
                        .isBetween(drawn.lowestK() - tolerance, drawn.highestK() + tolerance);
            }
        }
    }

    @Property(seed = "20260109")
    @Label("Ledger closes: passive networks")
    void ledgerCloses(@ForAll @IntRange(min = 1, max = 8) int size, @ForAll long seed) {
        Network network = PassiveNetworks.draw(size, new SplittableRandom(seed)).network();
        Trajectory run = NetworkSolver.standard().solve(network, END_S);
        for (double time : new double[] {60, 1234.5, END_S}) {
            assertThat(run.ledger(time).closure()).isLessThanOrEqualTo(1e-9);
        }
    }

    @Property(seed = "20260110")
    @Label("N → 2N converges: a tolerance a thousand times tighter agrees")
    void tighterToleranceAgrees(@ForAll @IntRange(min = 1, max = 8) int size, @ForAll long seed) {
        Network network = PassiveNetworks.draw(size, new SplittableRandom(seed)).network();
        Trajectory standard = NetworkSolver.standard().solve(network, END_S);
        Trajectory tight = NetworkSolver.standard().withToleranceK(1e-6).solve(network, END_S);
        for (Node node : network.nodes()) {
            for (double time : new double[] {30, 300, 3000, END_S}) {
                // The tolerance bounds the error of a step; those of several steps add up in a slow node before they
                // decay.
                assertThat(Math.abs(standard.temperatureK(node, time) - tight.temperatureK(node, time)))
                        .isLessThanOrEqualTo(3 * NetworkSolver.DEFAULT_TOLERANCE_K);
            }
        }
    }

    @Property(seed = "20260111")
    @Label("Invariance of order: nodes and paths handed in otherwise give the same")
    void orderOfNodesAndPathsDoesNotMatter(@ForAll @IntRange(min = 2, max = 8) int size, @ForAll long seed) {
        Network network = PassiveNetworks.draw(size, new SplittableRandom(seed)).network();
        List<Node> nodes = new ArrayList<>(network.nodes());
        Collections.reverse(nodes);
        List<Path> paths = new ArrayList<>(network.paths());
        Collections.reverse(paths);
        Trajectory one = NetworkSolver.standard().solve(network, END_S);
        Trajectory other = NetworkSolver.standard().solve(Network.of(nodes, paths), END_S);
        for (Node node : nodes) {
            assertThat(Math.abs(one.temperatureK(node, END_S) - other.temperatureK(node, END_S)))
                    .isLessThan(1e-6);
        }
    }

    @Property(seed = "20260112")
    @Label("Threads: passive networks run again and side by side are alike to the last bit")
    void repeatedRunsAndThreadsAgreeToTheLastBit(@ForAll @IntRange(min = 1, max = 8) int size, @ForAll long seed)
            throws InterruptedException, ExecutionException {
        Network network = PassiveNetworks.draw(size, new SplittableRandom(seed)).network();
        NetworkSolver solver = NetworkSolver.standard();
        List<Long> alone = bits(network, solver.solve(network, END_S));
        assertThat(bits(network, solver.solve(network, END_S))).isEqualTo(alone);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<List<Long>>> runs = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                runs.add(threads.submit(() -> bits(network, solver.solve(network, END_S))));
            }
            for (Future<List<Long>> run : runs) {
                assertThat(run.get()).isEqualTo(alone);
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private static List<Long> bits(Network network, Trajectory run) {
        List<Long> bits = new ArrayList<>();
        for (double time : new double[] {1, 100, 7777.7, END_S}) {
            for (Node node : network.nodes()) {
                bits.add(Double.doubleToLongBits(run.temperatureK(node, time)));
            }
            bits.add(Double.doubleToLongBits(run.ledger(time).totalHeatJ()));
        }
        return bits;
    }
}
