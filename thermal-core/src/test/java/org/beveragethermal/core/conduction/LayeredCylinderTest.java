/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
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

/** A conducting core in glass, with and without foam, against the inverted Laplace transform; layers end to end. */
final class LayeredCylinderTest {

    private static final double ZERO = 273.15;
    private static final String SOURCE =
            "Laplace inversion (Talbot); finite volumes with Richardson extrapolation agree to 4e-6";

    /** Times [s] and temperatures [°C]: axis, mean of the core, its edge, outer side of the glass, outer surface of the foam. */
    private static final double[][] WITH_FOAM = {
        {600, 8.348801, 8.560409, 8.773214, 9.017897, 16.761407},
        {1800, 9.558547, 9.758409, 9.957405, 10.184426, 17.363046},
        {3600, 11.215552, 11.393967, 11.571609, 11.774269, 18.182559},
        {7200, 14.015209, 14.157388, 14.298950, 14.460449, 19.567199},
        {14400, 18.024158, 18.114448, 18.204346, 18.306905, 21.549924},
        {21600, 20.570023, 20.627361, 20.684451, 20.749580, 22.809045},
        {28800, 22.186763, 22.223175, 22.259430, 22.300790, 23.608644},
        {43200, 23.865470, 23.880154, 23.894775, 23.911455, 24.438890},
    };

    /** Times [s] and temperatures [°C]: axis, mean of the core, its edge, outer surface of the glass. */
    private static final double[][] BARE = {
        {30, 22.000000, 21.244876, 18.153352, 9.375438},
        {60, 21.998474, 20.235826, 15.970956, 8.049525},
        {120, 21.831551, 18.404022, 13.436623, 6.697678},
        {300, 18.724145, 14.041654, 9.508256, 4.705808},
        {600, 12.406519, 9.056395, 6.027182, 2.978423},
        {900, 8.031021, 5.851906, 3.889964, 1.922085},
        {1800, 2.167818, 1.579405, 1.049796, 0.518715},
        {3600, 0.157915, 0.115052, 0.076473, 0.037786},
    };

    private static LayerStack.Builder core() {
        return LayerStack.cylinder(1, 0)
                .layer("core", 0.035, 3, 985 * 4100, 80)
                .layer("glass", 0.0035, 1.05, 2500 * 840, 16);
    }

    @Test
    void coreInGlassAndFoamWarmsInAir() {
        LayerStack stack = core().layer("foam", 0.005, 0.045, 120 * 1500, 20).build("x", ZERO + 8);
        check("with foam in air", "conduction-core-foam", stack, WITH_FOAM, 25, 8, 1e-3);
    }

    @Test
    void coreInGlassCoolsInIceWater() {
        check("without foam in ice water", "conduction-core-bare", core().build("x", ZERO + 22), BARE, 0, 300, 0.02);
    }

    private static void check(
            String what, String id, LayerStack stack, double[][] rows, double outside, double h, double limitK) {
        JunctionPath film = JunctionPath.of(
                "film",
                stack.outerSurface(),
                Link.of(
                        Boundary.constant("medium", ZERO + outside),
                        "convection",
                        HeatLaw.conductance(h * stack.outerAreaM2())));
        List<Path> paths = new ArrayList<>(stack.paths());
        paths.add(film);
        double end = rows[rows.length - 1][0];
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-5).solve(Network.of(stack.nodes(), paths), end);
        double worst = 0;
        for (double[] row : rows) {
            double t = row[0];
            List<Double> actual = new ArrayList<>(
                    List.of(stack.middleK(run, t), stack.meanK("core", run, t), stack.outerEdgeK("core", run, t)));
            if (row.length == 6) {
                actual.add(stack.outerEdgeK("glass", run, t));
            }
            actual.add(film.surfaceTemperatureK(run.evaluate("film", t)));
            for (int i = 0; i < actual.size(); i++) {
                worst = Math.max(worst, Math.abs(actual.get(i) - ZERO - row[i + 1]));
            }
        }
        OutsideChecks.referenceLibrary(id, SOURCE)
                .what("conducting core in glass " + what
                        + ": largest error of axis, mean, edges and surface, 96 cells and more")
                .unit("K")
                .expected(0)
                .within(limitK)
                .check(worst);
    }

    @Test
    void stacksEndToEndConductAlongTheirLayers() {
        // Closed form: k A/L through two lengths in series, each layer for itself.
        LayerStack low = sleeve(0.2, 310);
        LayerStack high = sleeve(0.1, 310);
        List<Path> along = low.endToEnd("along", high);
        List<Path> paths = new ArrayList<>(along);
        for (int i = 0; i < 2; i++) {
            paths.add(DirectPath.of(
                    "low " + i,
                    low.nodes().get(i),
                    Boundary.constant("low end", 310),
                    "any",
                    HeatLaw.conductance(1e3)));
            paths.add(DirectPath.of(
                    "high " + i,
                    high.nodes().get(i),
                    Boundary.constant("high end", 290),
                    "any",
                    HeatLaw.conductance(1e3)));
        }
        List<Node> nodes = new ArrayList<>(low.nodes());
        nodes.addAll(high.nodes());
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-8).solve(Network.of(nodes, paths), 1e6);
        double metal = Math.PI * (0.031 * 0.031 - 0.03 * 0.03) * 200 / 0.15;
        double foam = Math.PI * (0.036 * 0.036 - 0.031 * 0.031) * 0.045 / 0.15;
        assertThat(run.evaluate("along 1", 1e6).flowOf(0)).isCloseTo(20 / (1 / metal + 2e-3), within(1e-6));
        assertThat(run.evaluate("along 2", 1e6).flowOf(0)).isCloseTo(20 / (1 / foam + 2e-3), within(1e-6));
        LayerStack other = LayerStack.cylinder(0.1, 0.03)
                .layer("metal", 0.001, 200, 2e6, 1)
                .build("x", 300);
        assertThatThrownBy(() -> low.endToEnd("along", other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 and 1 cells");
        LayerStack plane =
                LayerStack.plane(1, 0).layer("metal", 0.001, 200, 2e6, 2).build("x", 300);
        assertThatThrownBy(() -> low.endToEnd("along", plane)).isInstanceOf(IllegalArgumentException.class);
    }

    private static LayerStack sleeve(double lengthM, double temperatureK) {
        return LayerStack.cylinder(lengthM, 0.03)
                .layer("metal", 0.001, 200, 2e6, 1)
                .layer("foam", 0.005, 0.045, 1.8e5, 1)
                .build("sleeve " + lengthM, temperatureK);
    }
}
