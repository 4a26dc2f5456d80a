/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.store.LiquidStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.Measures;
import org.junit.jupiter.api.Test;

/** Films and mixing between slices colder than the drink begins to freeze, and colder than its properties reach. */
final class FreezingColumnTest {

    private static final int SLICES = 5;
    private static final double COLDEST_K = 245.15;
    /** All ends are then at or below 0 °C. */
    private static final double WARMEST_K = 270.3;

    private final List<Node> walls = new ArrayList<>();

    FreezingColumnTest() {
        for (int i = 0; i < SLICES; i++) {
            walls.add(Node.sensible("wall " + i, 20, 270));
        }
    }

    private StratifiedLiquid column(Liquid liquid) {
        return StratifiedLiquid.of(
                "x",
                liquid,
                1000,
                275,
                StratifiedLiquid.cylinder(0.035, StratifiedLiquid.faces(0, 0.2, SLICES), walls::get, i -> 600.0));
    }

    @Test
    void drinksFreezeAndOtherLiquidsDoNot() {
        assertThat(column(Beverage.water()).nodes()).allMatch(node -> node.store() instanceof FreezingStore);
        assertThat(column(Water.liquid()).nodes()).allMatch(node -> node.store() instanceof LiquidStore);
    }

    @Test
    void lumpedDrinkIsTheLimitThroughFreezing() {
        // The weaker the outside beside the film along the wall, the less the slices differ and the closer the whole is
        // to one node.
        Beverage wine = Beverage.wine(Measures.percentByVolume(12.5));
        Boundary freezer = Boundary.constant("freezer", 255.15);
        double[] differences = new double[3];
        double[] outsides = {30, 3, 0.3};
        for (int i = 0; i < 3; i++) {
            double outside = outsides[i];
            StratifiedLiquid column = StratifiedLiquid.of(
                    "x",
                    wine,
                    980,
                    293.15,
                    StratifiedLiquid.cylinder(
                            0.035, StratifiedLiquid.faces(0, 0.2, SLICES), j -> freezer, j -> outside));
            double volume = Math.PI * 0.035 * 0.035 * 0.2;
            FreezingStore store = FreezingStore.ofMass(wine, 980 * volume);
            Node lumped = Node.of("lumped", store, 293.15);
            List<Path> paths = new ArrayList<>(column.paths());
            paths.add(DirectPath.of(
                    "outside", lumped, freezer, "any", HeatLaw.conductance(outside * 2 * Math.PI * 0.035 * 0.2)));
            List<Node> nodes = new ArrayList<>(column.nodes());
            nodes.add(lumped);
            Trajectory run = NetworkSolver.standard().solve(Network.of(nodes, paths), 6e5 / outside);
            double end = run.endS();
            assertThat(store.iceFraction(run.temperatureK(lumped, end))).isGreaterThan(0.2);
            for (int k = 1; k <= 60; k++) {
                double t = end * k / 60;
                differences[i] = Math.max(differences[i], Math.abs(column.meanK(run, t) - run.temperatureK(lumped, t)));
            }
            assertThat(run.ledger(end).closure()).isLessThan(1e-9);
        }
        assertThat(differences[1]).isLessThan(0.5 * differences[0]);
        assertThat(differences[2]).isLessThan(0.5 * differences[1]).isLessThan(0.05);
    }

    @Test
    void lawsAreFiniteAndContinuousBelowTheOnset() {
        for (Beverage drink : List.of(Beverage.water(), Beverage.wine(Measures.percentByVolume(12.5)))) {
            StratifiedLiquid column = column(drink);
            List<Path> paths = new ArrayList<>(column.paths());
            paths.add(column.bottom("bottom", drink, 0.0038, walls.get(0), 300));
            for (Path path : paths) {
                follow(path);
            }
        }
    }

    /** Moves all ends of a path through the cold, some ahead of others; where flows change most, it looks for a jump. */
    private static void follow(Path path) {
        PathEvaluation e = new PathEvaluation(path);
        double step = 0.05;
        double[] previous = flows(path, e, COLDEST_K);
        for (double at = COLDEST_K; at < WARMEST_K; at += step) {
            double[] next = flows(path, e, at + step);
            for (int a = 0; a < next.length; a++) {
                double jump = jump(path, e, a, at, previous[a], at + step, next[a]);
                assertThat(jump)
                        .as("%s, account %s near %s K", path.name(), a, at)
                        .isLessThan(1e-3 + 1e-4 * Math.abs(next[a]));
            }
            previous = next;
        }
    }

    /** What is left of a change when an interval is halved again and again, always on to the half that changes more. */
    private static double jump(
            Path path, PathEvaluation e, int account, double lowK, double low, double highK, double high) {
        if (highK - lowK < 1e-11 || Math.abs(high - low) < 1e-3) {
            return Math.abs(high - low);
        }
        double middleK = 0.5 * (lowK + highK);
        double middle = flows(path, e, middleK)[account];
        return Math.abs(middle - low) > Math.abs(high - middle)
                ? jump(path, e, account, lowK, low, middleK, middle)
                : jump(path, e, account, middleK, middle, highK, high);
    }

    private static double[] flows(Path path, PathEvaluation e, double coldK) {
        int ends = path.ends().size();
        double[] temperatures = new double[ends];
        for (int i = 0; i < ends; i++) {
            temperatures[i] = coldK + (i < ends / 2 ? 0.7 * i : -3 + 0.4 * i);
        }
        e.evaluate(path, 0, temperatures);
        double[] flows = new double[path.accounts().size()];
        for (int a = 0; a < flows.length; a++) {
            flows[a] = e.flowOf(a);
            assertThat(Double.isFinite(flows[a])).isTrue();
            for (int j = 0; j < ends; j++) {
                assertThat(Double.isFinite(e.derivativeOf(a, j))).isTrue();
            }
        }
        return flows;
    }
}
