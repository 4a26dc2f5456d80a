/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.liquid.EthanolWater;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;

/** What must hold in any column of liquid, half of it perhaps beside something else than the other half. */
final class StratifiedColumnProperties {

    private static final double ZERO = 273.15;
    private static final double END_S = 1800;
    private static final Liquid WINE = EthanolWater.ofMassFraction(0.10049);

    /** A column drawn at random, its run, and the range its temperatures must keep to. */
    private record Drawn(StratifiedLiquid column, Trajectory run, double lowestK, double highestK, double heatIntoJ) {

        static Drawn draw(long seed, boolean ownHeatCapacity) {
            SplittableRandom random = new SplittableRandom(seed);
            Liquid liquid = random.nextInt(3) == 0 ? Water.liquid() : WINE;
            double radius = 0.03 + 0.03 * random.nextDouble();
            double height = 0.1 + 0.2 * random.nextDouble();
            double start = ZERO + 1 + 24 * random.nextDouble();
            double low = ZERO + 0.1 + 25 * random.nextDouble();
            double high = random.nextBoolean() ? low : ZERO + 0.1 + 25 * random.nextDouble();
            double waterline = height * (0.2 + 0.6 * random.nextDouble());
            double[] faces = StratifiedLiquid.faces(0, height, 6 + random.nextInt(8), waterline);
            double lowSide = Math.exp(Math.log(5) + Math.log(60) * random.nextDouble());
            double highSide = Math.exp(Math.log(5) + Math.log(60) * random.nextDouble());
            Boundary below = Boundary.constant("below", low);
            Boundary above = Boundary.constant("above", high);
            List<Slice> slices = StratifiedLiquid.cylinder(
                    radius,
                    faces,
                    i -> faces[i + 1] <= waterline + 1e-9 ? below : above,
                    i -> faces[i + 1] <= waterline + 1e-9 ? lowSide : highSide);
            StratifiedLiquid column = ownHeatCapacity
                    ? StratifiedLiquid.of("x", liquid, liquid.density(start), start, slices)
                    : StratifiedLiquid.ofConstantHeatCapacity("x", liquid, 4.2e6, start, slices);
            List<Path> paths = new ArrayList<>(column.paths());
            paths.add(column.bottom("bottom", liquid, Math.PI * radius * radius, below, lowSide));
            Trajectory run = NetworkSolver.standard().solve(Network.of(column.nodes(), paths), END_S);
            double into = 0;
            for (String side : new String[] {"below", "above"}) {
                into -= run.ledger(END_S).heatInto(side);
            }
            return new Drawn(
                    column, run, Math.min(start, Math.min(low, high)), Math.max(start, Math.max(low, high)), into);
        }
    }

    @Property(seed = "20260112")
    @Label("Hull: no slice of a column leaves the range of start and surroundings")
    void noSliceLeavesTheRangeOfStartAndSurroundings(@ForAll long seed) {
        Drawn drawn = Drawn.draw(seed, false);
        double tolerance = NetworkSolver.DEFAULT_TOLERANCE_K;
        for (int i = 0; i <= 60; i++) {
            double t = END_S * Math.pow(i / 60.0, 3);
            for (double k : drawn.column().profileK(drawn.run(), t)) {
                assertThat(k).isBetween(drawn.lowestK() - tolerance, drawn.highestK() + tolerance);
            }
        }
    }

    @Property(seed = "20260113")
    @Label("Ledger closes: columns of liquid, heat that comes in is heat that is kept")
    void heatThatComesInIsTheHeatThatIsKept(@ForAll long seed) {
        for (boolean own : new boolean[] {false, true}) {
            Drawn drawn = Drawn.draw(seed, own);
            assertThat(drawn.run().ledger(END_S).closure()).isLessThan(1e-9);
            double kept = drawn.column().nodes().stream()
                    .mapToDouble(node ->
                            drawn.run().enthalpyJ(node, END_S) - drawn.run().enthalpyJ(node, 0))
                    .sum();
            double total = drawn.run().ledger(END_S).totalHeatJ();
            assertThat(kept).isCloseTo(drawn.heatIntoJ(), within(1e-9 * total));
        }
    }

    @Property(seed = "20260114")
    @Label("One answer: a column asked twice")
    void theSameQuestionHasTheSameAnswer(@ForAll long seed) {
        Drawn first = Drawn.draw(seed, false);
        Drawn second = Drawn.draw(seed, false);
        assertThat(first.column().profileK(first.run(), 1234.5))
                .containsExactly(second.column().profileK(second.run(), 1234.5));
    }
}
