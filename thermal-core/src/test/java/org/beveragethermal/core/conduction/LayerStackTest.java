/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Conducting layers and blocks against exact solutions; order of the scheme. */
class LayerStackTest {

    private static final double ZERO = 273.15;

    /** A stack and its run under a film on the outside. */
    private record Cooling(LayerStack stack, Trajectory run) {

        static Cooling of(LayerStack stack, double coefficient, double outsideK, double endS, double toleranceK) {
            Boundary outside = Boundary.constant("outside", outsideK);
            List<Path> paths = new ArrayList<>(stack.paths());
            paths.add(JunctionPath.of(
                    "film",
                    stack.outerSurface(),
                    Link.of(outside, "convection", HeatLaw.conductance(coefficient * stack.outerAreaM2()))));
            return new Cooling(
                    stack,
                    NetworkSolver.standard().withToleranceK(toleranceK).solve(Network.of(stack.nodes(), paths), endS));
        }

        double surfaceK(double timeS) {
            return run.paths(timeS).stream()
                    .filter(JunctionPath.class::isInstance)
                    .map(JunctionPath.class::cast)
                    .findFirst()
                    .orElseThrow()
                    .surfaceTemperatureK(run.evaluate("film", timeS));
        }

        double quantity(String name, double t) {
            boolean foam = stack.paths().size() > 1 && hasFoam();
            return switch (name) {
                case "centre" -> stack.middleK(run, t);
                case "liquid_mean" -> stack.meanK("liquid", run, t);
                case "liquid_edge" -> stack.outerEdgeK("liquid", run, t);
                case "glass_out" -> foam ? stack.outerEdgeK("glass", run, t) : surfaceK(t);
                case "foam_in" -> stack.nextInnerEdgeK("glass", run, t);
                case "foam_out" -> surfaceK(t);
                default -> throw new IllegalArgumentException(name);
            };
        }

        private boolean hasFoam() {
            return stack.nodes().stream().anyMatch(node -> node.name().contains("foam"));
        }
    }

    /** A bottle of solid-like liquid (k 3), glass and, in case a, foam: case a in air at 25 °C, case c in ice water. */
    private static Cooling bottle(boolean foam, int factor, double toleranceK) {
        LayerStack.Builder builder = LayerStack.cylinder(1, 0)
                .layer("liquid", 0.035, 3.0, 985 * 4100.0, 40 * factor)
                .layer("glass", 0.0035, 1.05, 2500 * 840.0, 8 * factor);
        LayerStack stack = (foam ? builder.layer("foam", 0.005, 0.045, 120 * 1500.0, 10 * factor) : builder)
                .build("bottle", ZERO + (foam ? 8 : 22));
        return foam
                ? Cooling.of(stack, 8, ZERO + 25, 43_200, toleranceK)
                : Cooling.of(stack, 300, ZERO, 3600, toleranceK);
    }

    private static double largestError(int factor, double toleranceK, double fromS) throws IOException {
        Cooling a = bottle(true, factor, toleranceK);
        Cooling c = bottle(false, factor, toleranceK);
        double worst = 0;
        for (String line : lines("layered-cylinder.csv")) {
            String[] row = line.split(",", -1);
            double t = Double.parseDouble(row[1]);
            if (t >= fromS) {
                double actual = (row[0].equals("a") ? a : c).quantity(row[2], t) - ZERO;
                worst = Math.max(worst, Math.abs(actual - Double.parseDouble(row[3])));
            }
        }
        return worst;
    }

    @Test
    void layeredCylinderFollowsTheExactSolution() throws IOException {
        OutsideChecks.referenceLibrary(
                        "conduction-layered-cylinder-default", "Laplace inversion (Talbot), Richardson extrapolation")
                .what("largest error over liquid, glass and foam from 60 s on; default tolerance, 96 and 116 cells")
                .unit("K")
                .expected(0)
                .within(2e-3)
                .check(largestError(2, 1e-3, 60));
        OutsideChecks.referenceLibrary(
                        "conduction-layered-cylinder-tight", "Laplace inversion (Talbot), Richardson extrapolation")
                .what("largest error over liquid, glass and foam from 60 s on; tolerance 1e-5 K, 480 and 580 cells")
                .unit("K")
                .expected(0)
                .within(1e-4)
                .check(largestError(10, 1e-5, 60));
    }

    @Test
    void errorFallsWithTheSquareOfTheCell() throws IOException {
        double coarse = largestError(1, 1e-6, 120);
        double fine = largestError(2, 1e-6, 120);
        double finer = largestError(4, 1e-6, 120);
        assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(1.8, 2.2);
        assertThat(Math.log(fine / finer) / Math.log(2)).isBetween(1.8, 2.2);
    }

    @Test
    void seriesSolutionsOfWallCylinderAndSphere() {
        // Bi = 5; centre, surface and mean at Fo 0.02, 0.1, 0.5, 1.5 from 200 terms of the series.
        double[] fourier = {0.02, 0.1, 0.5, 1.5};
        check("wall", LayerStack.plane(1, 0), fourier, new double[][] {
            {0.9999998190, 0.5231565837, 0.9357917711},
            {0.9773091062, 0.3087901736, 0.7814165992},
            {0.5231090986, 0.1330320509, 0.3851748424},
            {0.0931129597, 0.0236637461, 0.0685440957}
        });
        check("cylinder", LayerStack.cylinder(1, 0), fourier, new double[][] {
            {0.9999988105, 0.5014241346, 0.8741258714},
            {0.9264858916, 0.2557484251, 0.5973970102},
            {0.2075541647, 0.0476952671, 0.1204553851},
            {0.0039593798, 0.0009097394, 0.0022976916}
        });
        check("sphere", LayerStack.sphere(0), fourier, new double[][] {
            {0.9999950139, 0.4793798785, 0.8150645883},
            {0.8458728591, 0.2059197753, 0.4468370080},
            {0.0656752623, 0.0138130148, 0.0313591788},
            {0.0000887099, 0.0000186573, 0.0000423574}
        });
    }

    private static void check(String name, LayerStack.Builder builder, double[] fourier, double[][] expected) {
        double radius = 0.05;
        double k = 0.6;
        double capacity = 4e6;
        LayerStack stack = builder.layer("body", radius, k, capacity, 300).build("body", 1001);
        double unit = radius * radius * capacity / k;
        Cooling cooling = Cooling.of(stack, 5 * k / radius, 1000, 1.6 * unit, 1e-7);
        double worst = 0;
        for (int i = 0; i < fourier.length; i++) {
            double t = fourier[i] * unit;
            worst = Math.max(worst, Math.abs(cooling.stack().middleK(cooling.run(), t) - 1000 - expected[i][0]));
            worst = Math.max(worst, Math.abs(cooling.surfaceK(t) - 1000 - expected[i][1]));
            worst = Math.max(worst, Math.abs(cooling.stack().meanK("body", cooling.run(), t) - 1000 - expected[i][2]));
        }
        OutsideChecks.published(
                        "conduction-series-" + name,
                        "closed form: series by separation of variables, Bi = 5, 200 terms")
                .what("largest error of centre, surface and mean of a " + name + ", 300 cells")
                .unit("1")
                .expected(0)
                .within(1e-4)
                .check(worst);
    }

    @Test
    void semiInfiniteSolid() {
        // Soil k 1.1 W/(m K), ρc 2.3e6 J/(m³ K); surface through h = 12: (T − Ti)/(T∞ − Ti) = 0.3592 at 1 h, 0.7660 at
        // 1 d
        // (Cengel and Ghajar, eqs 4-45 to 4-47, with the scaled complementary error function).
        LayerStack soil =
                LayerStack.plane(1, 0).farMedium("soil", 1.1, 2.3e6, 86_400).build("soil", 1000);
        Boundary air = Boundary.constant("air", 1001);
        List<Path> paths = new ArrayList<>(soil.paths());
        paths.add(JunctionPath.of("film", soil.innerSurface(), Link.of(air, "convection", HeatLaw.conductance(12))));
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-7).solve(Network.of(soil.nodes(), paths), 86_400);
        JunctionPath film = (JunctionPath) paths.get(paths.size() - 1);
        double[][] expected = {{3600, 0.35920951938879786}, {86_400, 0.7660093379819645}};
        for (double[] row : expected) {
            OutsideChecks.published(
                            "conduction-semi-infinite",
                            "Cengel and Ghajar, Heat and Mass Transfer, 5th ed., eqs 4-45 to 4-47")
                    .what("surface of a semi-infinite solid under convection after " + row[0] + " s")
                    .unit("1")
                    .expected(row[1])
                    .within(2e-3)
                    .check(film.surfaceTemperatureK(run.evaluate("film", row[0])) - 1000);
        }
    }

    @Test
    void bodyInSoilByRadialLayers() {
        Node body = Node.sensible("body", 3550 / 0.24, ZERO + 24);
        LayerStack soil = LayerStack.cylinder(1, 0.0375)
                .farMedium("soil", 1.1, 2.3e6, 86_400)
                .build("soil", ZERO + 12);
        List<Path> paths = new ArrayList<>(soil.paths());
        paths.add(JunctionPath.of(
                "wall",
                Link.of(body, "conduction", HeatLaw.conductance(45 * soil.innerAreaM2())),
                soil.innerSurface()));
        List<Node> nodes = new ArrayList<>(soil.nodes());
        nodes.add(body);
        Trajectory run = NetworkSolver.standard().solve(Network.of(nodes, paths), 86_400);
        double[][] expected = {
            {1800, 18.046592}, {3600, 15.905465}, {7200, 14.139948}, {21_600, 12.672964}, {86_400, 12.154956}
        };
        for (double[] row : expected) {
            OutsideChecks.referenceLibrary(
                            "conduction-body-in-soil", "Laplace inversion (Talbot and de Hoog agree to 2e-12 K)")
                    .what("infinitely long bottle in soil after " + row[0] + " s")
                    .unit("°C")
                    .expected(row[1])
                    .within(0.01)
                    .check(run.temperatureK(body, row[0]) - ZERO);
        }
    }

    @Test
    void pipeWallInSteadyState() {
        // Steel pipe with insulation per metre: UA = 0.481 W/K (composite cylinder, closed form).
        LayerStack wall = LayerStack.cylinder(1, 0.0779272 / 2)
                .layer("steel", 0.0054864, 56.045, 3.6e6, 4)
                .layer("insulation", 0.05, 0.0598535265, 1e5, 20)
                .build("wall", 301.15);
        Boundary steam = Boundary.constant("steam", 453.15);
        Boundary room = Boundary.constant("room", 301.15);
        List<Path> paths = new ArrayList<>(wall.paths());
        paths.add(JunctionPath.of(
                "in", Link.of(steam, "c", HeatLaw.conductance(1e12 * wall.innerAreaM2())), wall.innerSurface()));
        paths.add(JunctionPath.of(
                "out", wall.outerSurface(), Link.of(room, "c", HeatLaw.conductance(22.697193 * wall.outerAreaM2()))));
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-6).solve(Network.of(wall.nodes(), paths), 1e6);
        OutsideChecks.published("conduction-pipe", "closed form: composite cylinder, logarithmic series resistances")
                .what("steady heat through an insulated pipe per metre")
                .unit("W")
                .expected(73.12000884069366)
                .withinRelative(1e-6)
                .check(run.evaluate("out", 1e6).flowOf(0));
    }

    @Test
    void contactResistanceAddsToTheOthers() {
        LayerStack wall = LayerStack.plane(2, 0)
                .layer("a", 0.01, 1, 1e6, 5)
                .contact(0.02)
                .layer("b", 0.01, 2, 1e6, 5)
                .build("wall", 300);
        Boundary hot = Boundary.constant("hot", 310);
        Boundary cold = Boundary.constant("cold", 290);
        List<Path> paths = new ArrayList<>(wall.paths());
        paths.add(JunctionPath.of("in", Link.of(hot, "c", HeatLaw.conductance(1e9)), wall.innerSurface()));
        paths.add(JunctionPath.of("out", wall.outerSurface(), Link.of(cold, "c", HeatLaw.conductance(1e9))));
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-7).solve(Network.of(wall.nodes(), paths), 1e5);
        // 20 K over (0.01/1 + 0.02 + 0.01/2)/2 K/W.
        assertThat(run.evaluate("out", 1e5).flowOf(0)).isCloseTo(20 / (0.035 / 2), within(1e-3));
        assertThat(wall.outerEdgeK("a", run, 1e5) - wall.nextInnerEdgeK("a", run, 1e5))
                .isCloseTo(20 * 0.02 / 0.035, within(1e-5));
    }

    @Test
    void blockWithoutHoleIsASlab() {
        // Adiabatic but for the top: one-dimensional, so it must agree with the plane stack of the same cells.
        double[] depths = AxisymmetricBlock.graded(0, 0.1, 0.002, 1.05);
        double[] radii = AxisymmetricBlock.graded(0, 0.05, 0.01, 1);
        AxisymmetricBlock block = AxisymmetricBlock.of("block", radii, depths, 0.6, 4e6, ZERO + 20, 0, 0, 0);
        Boundary air = Boundary.constant("air", ZERO);
        List<Path> paths = new ArrayList<>(block.paths());
        paths.addAll(block.top(air, 50));
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-6).solve(Network.of(block.nodes(), paths), 7200);
        Cooling slab = Cooling.of(
                LayerStack.plane(1, 0).layer("slab", 0.1, 0.6, 4e6, 400).build("slab", ZERO + 20),
                50,
                ZERO,
                7200,
                1e-6);
        double middle = block.atK(0.02, 0.1 - 1e-9, run, 7200);
        assertThat(middle).isCloseTo(slab.stack().middleK(slab.run(), 7200), within(0.02));
        assertThat(block.atK(0, 0.05, run, 7200)).isCloseTo(block.atK(0.04, 0.05, run, 7200), within(1e-6));
        assertThat(run.ledger(7200).closure()).isLessThan(1e-9);
    }

    @Test
    void buriedBottleInTwoDimensionsConverges() {
        double coarse = buriedBottle(0.012, 1.3);
        double fine = buriedBottle(0.006, 1.14);
        double finer = buriedBottle(0.003, 1.07);
        assertThat(Math.abs(finer - fine)).isLessThan(0.01);
        assertThat(Math.abs(finer - fine)).isLessThan(Math.abs(fine - coarse));
        // The infinitely long bottle in undisturbed soil is near, but knows neither ends nor the warm surface above.
        assertThat(finer - ZERO).isBetween(12.8, 14.5);
    }

    /** A bottle at depth 8 to 32 cm in soil at 12 °C under air at 26 °C, after six hours; mixed, 3550 J/K, from 24 °C. */
    private static double buriedBottle(double cell, double growth) {
        Node bottle = Node.sensible("bottle", 3550, ZERO + 24);
        double[] radii = joined(
                AxisymmetricBlock.graded(0, 0.0375, cell, 1), AxisymmetricBlock.graded(0.0375, 1.4, cell, growth));
        double[] depths = joined(
                joined(AxisymmetricBlock.graded(0, 0.08, cell, 1), AxisymmetricBlock.graded(0.08, 0.32, 1.5 * cell, 1)),
                AxisymmetricBlock.graded(0.32, 1.8, cell, growth));
        AxisymmetricBlock soil = AxisymmetricBlock.of("soil", radii, depths, 1.1, 2.3e6, ZERO + 12, 0.0375, 0.08, 0.32);
        End air = Boundary.constant("air", ZERO + 26);
        List<Path> paths = new ArrayList<>(soil.paths());
        paths.addAll(soil.top(air, 12));
        paths.addAll(soil.hole(bottle, 45));
        List<Node> nodes = new ArrayList<>(soil.nodes());
        nodes.add(bottle);
        return NetworkSolver.standard().solve(Network.of(nodes, paths), 21_600).temperatureK(bottle, 21_600);
    }

    private static double[] joined(double[] a, double[] b) {
        return DoubleStream.concat(Arrays.stream(a), Arrays.stream(b).skip(1)).toArray();
    }

    @Test
    void cellsForAWantedError() {
        assertThat(LayerStack.cellsFor(0.035, 7e-7, 60, 1e-3)).isBetween(20, 60);
        assertThat(LayerStack.cellsFor(0.001, 1, 1e6, 0.1)).isEqualTo(2);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> LayerStack.plane(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LayerStack.cylinder(1, -1)).isInstanceOf(IllegalArgumentException.class);
        LayerStack.Builder builder = LayerStack.cylinder(1, 0);
        assertThatThrownBy(() -> builder.build("x", 300)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> builder.contact(0.1)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> builder.layer("a", 0, 1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.layer("a", 1, 1, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        LayerStack solid = builder.layer("a", 0.01, 1, 1e6, 3).build("x", 300);
        assertThatThrownBy(() -> builder.contact(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(solid::innerSurface).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> LayerStack.cellsFor(1, 1, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        double[] edges = {0, 0.1, 0.2};
        assertThatThrownBy(() -> AxisymmetricBlock.of("b", new double[] {0, 0.1}, edges, 1, 1, 300, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> AxisymmetricBlock.of("b", edges, edges, 1, 1, 300, 0.15, 0, 0.1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> AxisymmetricBlock.of("b", edges, edges, 0, 1, 300, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> AxisymmetricBlock.graded(1, 0, 0.1, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<String> lines(String resource) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(LayerStackTest.class.getResourceAsStream(resource)), StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.startsWith("#")).toList();
        }
    }
}
