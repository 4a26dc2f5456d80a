/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.scene.RandomScenes.Drawn;
import org.beveragethermal.core.solver.Ledger;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;

/** What must hold in any scene: first law, second law, one answer to one question, and paths that know their slopes. */
final class SceneProperties {

    @Property(seed = "20260301")
    @Label("Ledger closes: vessels that are moved between gear")
    void ledgerCloses(@ForAll long seed) {
        Drawn drawn = RandomScenes.scene(new SplittableRandom(seed));
        Trajectory run = drawn.scene().predict(drawn.horizon()).trajectory();
        Ledger ledger = run.ledger(run.endS());
        assertThat(ledger.closure()).isLessThanOrEqualTo(1e-9);
        // The same from outside: what came over the boundaries is what all nodes hold more than at the start.
        Set<String> nodes = new HashSet<>();
        double kept = 0;
        for (Node node : RandomScenes.nodes(run)) {
            nodes.add(node.name());
            kept += run.enthalpyJ(node, run.endS()) - run.enthalpyJ(node, 0);
        }
        double came = 0;
        for (LedgerEntry entry : ledger.entries()) {
            came += nodes.contains(entry.from()) ? 0 : entry.heatJ();
            came -= nodes.contains(entry.to()) ? 0 : entry.heatJ();
        }
        assertThat(kept).isCloseTo(came, within(1e-9 * ledger.totalHeatJ()));
    }

    @Property(seed = "20260302")
    @Label("Hull: no vessel, wall, bath or ice leaves the range of start and sources")
    void nothingLeavesTheRangeOfStartAndSources(@ForAll long seed) {
        Drawn drawn = RandomScenes.scene(new SplittableRandom(seed));
        Trajectory run = drawn.scene().predict(drawn.horizon()).trajectory();
        double tolerance = NetworkSolver.DEFAULT_TOLERANCE_K;
        for (Node node : RandomScenes.nodes(run)) {
            for (int i = 0; i <= 60; i++) {
                double time = run.endS() * Math.pow(i / 60.0, 2);
                assertThat(run.temperatureK(node, time))
                        .as("%s after %s s", node.name(), time)
                        .isBetween(drawn.lowestK() - tolerance, drawn.highestK() + tolerance);
            }
        }
    }

    @Property(seed = "20260303")
    @Label("Threads: scenes run side by side on 1 to 8 threads are alike to the last bit")
    void threadsAgreeToTheLastBit(@ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int threads)
            throws InterruptedException, ExecutionException {
        Drawn drawn = RandomScenes.scene(new SplittableRandom(seed));
        Drawn other = RandomScenes.scene(new SplittableRandom(seed + 1));
        List<Long> alone = bits(drawn);
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<List<Long>>> runs = new ArrayList<>();
            Future<List<Long>> another = pool.submit(() -> bits(other));
            for (int i = 0; i < threads; i++) {
                runs.add(pool.submit(() -> bits(drawn)));
            }
            for (Future<List<Long>> run : runs) {
                assertThat(run.get()).isEqualTo(alone);
            }
            assertThat(another.get()).isNotEqualTo(alone);
        } finally {
            pool.shutdownNow();
        }
    }

    private static List<Long> bits(Drawn drawn) {
        ScenePrediction run = drawn.scene().predict(Duration.ofMinutes(6));
        List<Long> bits = new ArrayList<>();
        double end = run.trajectory().endS();
        for (String id : drawn.models().keySet()) {
            for (double part : new double[] {0.01, 0.2, 0.55, 1}) {
                for (double kelvin : run.vessel(id).profileK(part * end)) {
                    bits.add(Double.doubleToLongBits(kelvin));
                }
            }
        }
        bits.add(Double.doubleToLongBits(run.ledger().totalHeatJ()));
        return bits;
    }

    @Property(seed = "20260304")
    @Label("Path derivatives = differences: every path of vessels and gear")
    void pathsHaveTheSlopesTheyState(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Drawn drawn = RandomScenes.scene(random);
        Trajectory run = drawn.scene()
                .predict(Duration.ofSeconds(120 + random.nextInt(480)))
                .trajectory();
        double time = run.endS() * random.nextDouble();
        for (Path path : run.paths(time)) {
            double[] temperatures = path.ends().stream()
                    .mapToDouble(end -> temperatureK(end, run, time) + (random.nextDouble() - 0.5))
                    .toArray();
            double[] amounts = path.ends().stream()
                    .filter(Node.class::isInstance)
                    .map(Node.class::cast)
                    .flatMapToDouble(node -> java.util.stream.IntStream.range(
                                    0, node.store().amountCount())
                            .mapToDouble(i -> run.amount(node, i, time)))
                    .toArray();
            Slopes.check(path, time, temperatures, amounts);
        }
    }

    private static double temperatureK(End end, Trajectory run, double timeS) {
        return end instanceof Node node
                ? run.temperatureK(node, timeS)
                : ((Boundary) end).temperatureK().at(timeS);
    }

    /** Stated derivatives of a path's flows against differences of the flows. */
    private static final class Slopes {

        static void check(Path path, double timeS, double[] temperatures, double[] amounts) {
            PathEvaluation at = new PathEvaluation(path);
            at.evaluate(path, timeS, temperatures, amounts);
            double steepest = 0;
            for (int account = 0; account < path.accounts().size(); account++) {
                for (int j = 0; j < temperatures.length; j++) {
                    steepest = Math.max(steepest, Math.abs(at.derivativeOf(account, j)));
                }
            }
            for (int account = 0; account < path.accounts().size(); account++) {
                for (int j = 0; j < temperatures.length + amounts.length; j++) {
                    int a = account;
                    int input = j;
                    boolean temperature = j < temperatures.length;
                    double step = temperature ? 1e-4 : 1e-5 * Math.max(amounts[j - temperatures.length], 1e-3);
                    compare(
                            path.name() + ", account " + account + " by input " + j,
                            at.derivativeOf(account, j),
                            step,
                            temperature ? 1e-4 * steepest : 1e-4 * Math.abs(at.derivativeOf(account, j)),
                            x -> flow(path, timeS, temperatures, amounts, a, input, x));
                }
            }
        }

        /**
         * Between the differences to either side, so that a corner within the step does no harm. Where an amount is all but gone its
         * law may bend within the step too; it is then asked again within a hundredth of it.
         */
        private static void compare(String what, double stated, double step, double slack, DoubleUnaryOperator flow) {
            double here = flow.applyAsDouble(0);
            double change = Math.abs(flow.applyAsDouble(step) - here);
            double rounding = 1e-11 * (1 + Math.abs(here)) / step;
            double[] bounds = bounds(step, slack + rounding, flow);
            boolean allButGone = Math.abs(here) < 1e-3 * change;
            if (allButGone && !holds(stated, bounds)) {
                bounds = bounds(0.01 * step, slack + 1e-9 * change / step, flow);
            }
            assertThat(stated).as(what).isBetween(bounds[0], bounds[1]);
        }

        private static boolean holds(double stated, double[] bounds) {
            return stated >= bounds[0] && stated <= bounds[1];
        }

        private static double[] bounds(double step, double slack, DoubleUnaryOperator flow) {
            double here = flow.applyAsDouble(0);
            double up = (flow.applyAsDouble(step) - here) / step;
            double down = (here - flow.applyAsDouble(-step)) / step;
            double allowed = slack + 1e-3 * Math.abs(up);
            return new double[] {Math.min(up, down) - allowed, Math.max(up, down) + allowed};
        }

        private static double flow(
                Path path, double timeS, double[] temperatures, double[] amounts, int account, int input, double by) {
            double[] t = temperatures.clone();
            double[] a = amounts.clone();
            if (input < t.length) {
                t[input] += by;
            } else {
                a[input - t.length] += by;
            }
            PathEvaluation e = new PathEvaluation(path);
            e.evaluate(path, timeS, t, a);
            return e.flowOf(account);
        }
    }
}
