/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.liquid.EthanolWater;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.testsupport.ObservedOrders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A bottle-size column of wine in ice water, in a refrigerator and in warm water: number of slices, heat capacity, refusals. */
final class StratifiedColumnVariantsTest {

    private static final double ZERO = 273.15;
    private static final double RADIUS = 0.035;
    private static final double HEIGHT = 0.2;
    private static final Liquid WINE = EthanolWater.ofMassFraction(0.10049);

    /** Time for the mean to reach a temperature. */
    private static double timeTo(
            double startC, double outsideC, double coefficient, double targetC, int slices, double heatCapacity) {
        Boundary outside = Boundary.constant("outside", ZERO + outsideC);
        double[] faces = StratifiedLiquid.faces(0, HEIGHT, slices);
        List<Slice> parts = StratifiedLiquid.cylinder(RADIUS, faces, i -> outside, i -> coefficient);
        StratifiedLiquid column = Double.isNaN(heatCapacity)
                ? StratifiedLiquid.of("wine", WINE, WINE.density(ZERO + 15), ZERO + startC, parts)
                : StratifiedLiquid.ofConstantHeatCapacity("wine", WINE, heatCapacity, ZERO + startC, parts);
        List<Path> paths = new ArrayList<>(column.paths());
        paths.add(column.bottom("bottom", WINE, Math.PI * RADIUS * RADIUS, outside, coefficient));
        double end = 20_000;
        Trajectory run = NetworkSolver.standard().solve(Network.of(column.nodes(), paths), end);
        assertThat(run.ledger(end).closure()).isLessThan(1e-9);
        return run.firstCrossing(0, t -> column.meanK(run, t) - ZERO - targetC).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"22, 0, 168, 10", "22, 5, 8, 10", "8, 21, 168, 16"})
    void ownHeatCapacityMatchesTheConstantOneWithinTwoPercent(
            double startC, double outsideC, double coefficient, double targetC) {
        // The constant one is the wine's own at the middle of what it passes through.
        double middle = ZERO + 0.5 * (startC + targetC);
        double constant = WINE.density(ZERO + 15) * WINE.specificHeatCapacity(middle);
        double own = timeTo(startC, outsideC, coefficient, targetC, 20, Double.NaN);
        assertThat(timeTo(startC, outsideC, coefficient, targetC, 20, constant)).isCloseTo(own, within(0.02 * own));
    }

    @ParameterizedTest
    @CsvSource({"22, 0, 168, 10", "22, 5, 8, 10"})
    void timesOfCoolingSettleAsSlicesGetThinner(double startC, double outsideC, double coefficient, double targetC) {
        double coarse = timeTo(startC, outsideC, coefficient, targetC, 20, 4.26e6);
        double fine = timeTo(startC, outsideC, coefficient, targetC, 40, 4.26e6);
        double finer = timeTo(startC, outsideC, coefficient, targetC, 80, 4.26e6);
        assertThat(Math.abs(finer - fine)).isLessThan(Math.abs(fine - coarse)).isLessThan(0.01 * finer);
    }

    @ParameterizedTest
    @CsvSource({"22, 0, 168, 10", "22, 5, 8, 10", "8, 21, 168, 16", "8, 21, 168, 18", "8, 21, 8, 16"})
    void timesConvergeAsSlicesGetThinner(double startC, double outsideC, double coefficient, double targetC) {
        // Upwind film and core: about first order, so the difference halves or nearly so with each doubling. Warming
        // from below is held to the same, film on the bottom included.
        double[] times = new double[4];
        for (int i = 0; i < times.length; i++) {
            times[i] = timeTo(startC, outsideC, coefficient, targetC, 20 << i, 4.26e6);
        }
        String quantity = String.format(
                Locale.ROOT,
                "time from %.0f to %.0f °C in surroundings of %.0f °C, %.0f W/(m² K), by neighbouring refinements",
                startC,
                targetC,
                outsideC,
                coefficient);
        for (int i = 2; i < times.length; i++) {
            double coarse = times[i - 1] - times[i - 2];
            double fine = times[i] - times[i - 1];
            // From a ratio of differences of 0.7 to one of 0.3; one of less than 0 has no order.
            ObservedOrders.of("stratifying column", quantity, "slices, " + (20 << (i - 2)) + " to " + (20 << i))
                    .check(1, ObservedOrders.order(coarse, fine, 2), 0.515, 1.737);
        }
        double limit = 2 * times[3] - times[2];
        assertThat(times[0]).isCloseTo(limit, within(0.025 * limit));
        assertThat(times[2]).isCloseTo(limit, within(0.01 * limit));
    }

    @Test
    void turnedOverInPlaceByPiecesItIsTheColumnTurnedOver() {
        Boundary outside = Boundary.constant("outside", ZERO);
        double[] faces = StratifiedLiquid.faces(0, HEIGHT, 12);
        List<Slice> parts = StratifiedLiquid.cylinder(RADIUS, faces, i -> outside, i -> 168.0);
        StratifiedLiquid column = StratifiedLiquid.of("wine", WINE, 980, ZERO + 20, parts);
        List<Slice> turned = new ArrayList<>();
        List<List<Slice>> beside = new ArrayList<>();
        List<List<Slice>> halves = new ArrayList<>();
        for (Slice slice : parts) {
            Slice there = moved(slice, HEIGHT - slice.highM(), HEIGHT - slice.lowM());
            double middle = 0.5 * (there.lowM() + there.highM());
            turned.add(there);
            beside.add(List.of(there));
            halves.add(List.of(moved(slice, there.lowM(), middle), moved(slice, middle, there.highM())));
        }
        double end = 600;
        double[] means = new double[3];
        StratifiedLiquid[] ways = {
            column.turnedOver("a", WINE),
            column.turnedOver("b", WINE, turned, beside),
            column.turnedOver("c", WINE, turned, halves)
        };
        for (int i = 0; i < ways.length; i++) {
            Trajectory run = NetworkSolver.standard().solve(Network.of(column.nodes(), ways[i].paths()), end);
            assertThat(run.ledger(end).closure()).isLessThan(1e-9);
            means[i] = column.meanK(run, end) - ZERO;
        }
        assertThat(means[1]).isCloseTo(means[0], within(1e-9));
        // Cut in two, the film gives back heat where one slice meets the next, not half-way: a little, of 12 K.
        assertThat(means[2]).isCloseTo(means[0], within(0.15));
        refused(() -> column.turnedOver("d", WINE, turned, List.of()));
        refused(() -> column.turnedOver("d", WINE, List.of(), beside));
    }

    private static Slice moved(Slice slice, double low, double high) {
        double part = (high - low) / (slice.highM() - slice.lowM());
        return new Slice(
                low,
                high,
                part * slice.volumeM3(),
                part * slice.sideAreaM2(),
                slice.faceAreaM2(),
                slice.wall(),
                slice.wallCoefficient());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void numberOfASliceThatIsNone(double bad) {
        Boundary wall = Boundary.constant("wall", 280);
        refused(() -> new Slice(0, 0.01, bad, 1e-3, 1e-3, wall, 100));
        refused(() -> new Slice(0, 0.01, 1e-5, bad, 1e-3, wall, 100));
        refused(() -> new Slice(0, 0.01, 1e-5, 1e-3, bad, wall, 100));
        refused(() -> new Slice(0, 0.01, 1e-5, 1e-3, 1e-3, wall, bad));
        refused(() -> new Slice(0, bad, 1e-5, 1e-3, 1e-3, wall, 100));
    }

    @Test
    void facesAndSlicesThatDoNotFit() {
        Boundary wall = Boundary.constant("wall", 280);
        refused(() -> StratifiedLiquid.faces(0, 0, 5));
        refused(() -> StratifiedLiquid.faces(0, Double.NaN, 5));
        refused(() -> StratifiedLiquid.faces(0, Double.POSITIVE_INFINITY, 5));
        refused(() -> StratifiedLiquid.faces(0, 0.1, 1));
        Slice low = new Slice(0, 0.1, 1e-4, 0.01, 1e-3, wall, 100);
        Slice gap = new Slice(0.11, 0.2, 1e-4, 0.01, 1e-3, wall, 100);
        refused(() -> StratifiedLiquid.of("x", WINE, 980, 290, List.of(low)));
        refused(() -> StratifiedLiquid.ofConstantHeatCapacity("x", WINE, 4e6, 290, List.of()));
        refused(() -> StratifiedLiquid.of("x", WINE, 980, 290, List.of(low, gap)));
        refused(() -> StratifiedLiquid.ofConstantHeatCapacity("x", WINE, 4e6, 290, List.of(low, gap)));
    }

    @Test
    void waterlinesOutsideTheLiquidAreIgnored() {
        assertThat(StratifiedLiquid.faces(0, 0.2, 10, -0.1, 0.2, 0.5))
                .containsExactly(StratifiedLiquid.faces(0, 0.2, 10));
        assertThat(StratifiedLiquid.faces(0, 0.2, 10, 0.05, 0.15))
                .contains(0.05, 0.15)
                .isSorted();
    }

    private static void refused(ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("expected");
    }
}
