/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import static org.assertj.core.api.Assertions.assertThat;
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

/** Layers after a long time against resistances in series, and a glass wall through a waterline against two fins. */
final class SteadyConductionTest {

    private static final double ZERO = 273.15;
    private static final double LONG_S = 1e7;

    /** A wall between two films, after a long time. */
    private record Wall(LayerStack stack, Trajectory run) {

        static Wall between(LayerStack stack, double innerH, double innerK, double outerH, double outerK) {
            List<Path> paths = new ArrayList<>(stack.paths());
            paths.add(JunctionPath.of(
                    "in",
                    Link.of(
                            Boundary.constant("inside", innerK),
                            "convection",
                            HeatLaw.conductance(innerH * stack.innerAreaM2())),
                    stack.innerSurface()));
            paths.add(JunctionPath.of(
                    "out",
                    stack.outerSurface(),
                    Link.of(
                            Boundary.constant("outside", outerK),
                            "convection",
                            HeatLaw.conductance(outerH * stack.outerAreaM2()))));
            return new Wall(
                    stack,
                    NetworkSolver.standard().withToleranceK(1e-7).solve(Network.of(stack.nodes(), paths), LONG_S));
        }

        double heat() {
            return run.evaluate("out", LONG_S).flowOf(0);
        }

        double outerSurfaceK() {
            JunctionPath out =
                    (JunctionPath) run.paths(LONG_S).get(run.paths(LONG_S).size() - 1);
            return out.surfaceTemperatureK(run.evaluate("out", LONG_S));
        }
    }

    @Test
    void insulatedPipe() {
        Wall pipe = Wall.between(
                LayerStack.cylinder(1, 0.0779272 / 2)
                        .layer("steel", 0.0054864, 56.045, 3.6e6, 3)
                        .layer("insulation", 0.05, 0.0598535265, 1e5, 12)
                        .build("pipe", 301.15),
                1e12,
                453.15,
                22.697193,
                301.15);
        String source = "closed form: composite cylinder, logarithmic series resistances";
        OutsideChecks.published("conduction-pipe-conductance", source)
                .what("conductance of an insulated steel pipe per metre")
                .unit("W/K")
                .expected(0.4810526897414057)
                .withinRelative(1e-6)
                .check(pipe.heat() / 152);
        OutsideChecks.published("conduction-pipe-steel", source)
                .what("between steel and insulation of that pipe")
                .unit("K")
                .expected(453.1226455776871)
                .within(1e-4)
                .check(pipe.stack().outerEdgeK("steel", pipe.run(), LONG_S));
        OutsideChecks.published("conduction-pipe-surface", source)
                .what("outer surface of that pipe")
                .unit("K")
                .expected(306.5785301474453)
                .within(1e-4)
                .check(pipe.outerSurfaceK());
    }

    @Test
    void glassWithAndWithoutASleeve() {
        double bare = resistance(LayerStack.cylinder(1, 0.035).layer("glass", 0.0035, 1.05, 2.1e6, 4));
        double dressed = resistance(LayerStack.cylinder(1, 0.035)
                .layer("glass", 0.0035, 1.05, 2.1e6, 4)
                .layer("sleeve", 0.005, 0.045, 1.8e5, 5));
        String source = "closed form: steady radial resistances in series";
        OutsideChecks.published("conduction-glass-bare", source)
                .what("resistance of a glass wall and its film of 8 W/(m² K), per metre")
                .unit("K/W")
                .expected(0.53118357702314)
                .withinRelative(1e-6)
                .check(bare);
        OutsideChecks.published("conduction-glass-sleeve", source)
                .what("the same with a foam sleeve of 5 mm")
                .unit("K/W")
                .expected(0.9036384895347456)
                .withinRelative(1e-6)
                .check(dressed);
    }

    private static double resistance(LayerStack.Builder wall) {
        return 20 / Wall.between(wall.build("wall", 300), 1e12, 300, 8, 280).heat();
    }

    @Test
    void insulationOnAThinRodIsWorstAtTheCriticalRadius() {
        // k/h = 0.045/8 m = 5.625 mm (any textbook of heat transfer).
        double below = rod(0.0054);
        double critical = rod(0.005625);
        double above = rod(0.0059);
        assertThat(critical).isGreaterThan(below).isGreaterThan(above);
        double radius = 0.002;
        double closed = 20 * 2 * Math.PI / (Math.log(0.005625 / radius) / 0.045 + 1 / (8 * 0.005625));
        assertThat(critical).isCloseTo(closed, within(1e-5 * closed));
    }

    private static double rod(double outerM) {
        LayerStack foam = LayerStack.cylinder(1, 0.002)
                .layer("foam", outerM - 0.002, 0.045, 1.8e5, 6)
                .build("foam", 300);
        return Wall.between(foam, 1e12, 300, 8, 280).heat();
    }

    @Test
    void contactResistanceInEveryGeometry() {
        // Closed form: resistances in series, the contact on the area where the layers meet.
        double a = 0.02;
        double b = 0.03;
        double c = 0.05;
        double contact = 0.004;
        double plane = (b - a) / 0.5 + contact + (c - b) / 2.0;
        assertContact(LayerStack.plane(3, a), plane / 3, contact / 3);
        double perRound = 2 * Math.PI * 0.7;
        double round = Math.log(b / a) / 0.5 + contact / b + Math.log(c / b) / 2;
        assertContact(LayerStack.cylinder(0.7, a), round / perRound, contact / b / perRound);
        double ball = (1 / a - 1 / b) / 0.5 + contact / (b * b) + (1 / b - 1 / c) / 2;
        assertContact(LayerStack.sphere(a), ball / (4 * Math.PI), contact / (b * b) / (4 * Math.PI));
    }

    private static void assertContact(LayerStack.Builder builder, double resistance, double contact) {
        LayerStack stack = builder.layer("inner", 0.01, 0.5, 1e6, 3)
                .contact(0.004)
                .layer("outer", 0.02, 2.0, 2e6, 4)
                .build("wall", 300);
        double film = 1e4;
        double total = resistance + 1 / (film * stack.innerAreaM2()) + 1 / (film * stack.outerAreaM2());
        Wall wall = Wall.between(stack, film, 310, film, 290);
        assertThat(wall.heat()).isCloseTo(20 / total, within(1e-6 / total));
        double jump = stack.outerEdgeK("inner", wall.run(), LONG_S) - stack.nextInnerEdgeK("inner", wall.run(), LONG_S);
        assertThat(jump).isCloseTo(20 * contact / total, within(1e-5));
    }

    @Test
    void glassWallThroughAWaterline() {
        // An empty glass tube half in water, half in air: two fins without an end. Conduction along the wall, films
        // outside.
        double outer = 0.0385;
        double area = Math.PI * (outer * outer - 0.035 * 0.035);
        LayerStack glass = LayerStack.plane(area, 0)
                .layer("deep", 0.035, 1.05, 2.1e6, 140)
                .layer("wet", 0.005, 1.05, 2.1e6, 40)
                .layer("dry", 0.02, 1.05, 2.1e6, 80)
                .layer("high", 0.2, 1.05, 2.1e6, 400)
                .build("glass", ZERO + 12);
        Boundary water = Boundary.constant("water", ZERO);
        Boundary air = Boundary.constant("air", ZERO + 24);
        List<Path> paths = new ArrayList<>(glass.paths());
        double[] sizes = {0.035 / 140, 0.005 / 40, 0.02 / 80, 0.2 / 400};
        String[] layers = {"deep", "wet", "dry", "high"};
        for (Node node : glass.nodes()) {
            int layer = 0;
            while (!node.name().contains(" " + layers[layer] + " ")) {
                layer++;
            }
            double side = 2 * Math.PI * outer * sizes[layer];
            paths.add(DirectPath.of(
                    node.name() + " side",
                    node,
                    layer < 2 ? water : air,
                    "convection",
                    HeatLaw.conductance((layer < 2 ? 300 : 9) * side)));
        }
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-5).solve(Network.of(glass.nodes(), paths), 40_000);
        String source = "closed form: two fins without an end that meet at the waterline";
        double[] expected = {3.5432184929539234, 16.57182755908159, 0.8210641956293342};
        double[] actual = {
            glass.outerEdgeK("wet", run, 40_000),
            glass.outerEdgeK("dry", run, 40_000),
            glass.outerEdgeK("deep", run, 40_000)
        };
        String[] places = {"at the waterline", "20 mm above it", "5 mm below it"};
        for (int i = 0; i < 3; i++) {
            OutsideChecks.published("conduction-waterline", source)
                    .what("glass wall " + places[i] + ", cells of 0.125 to 0.5 mm")
                    .unit("°C")
                    .expected(expected[i])
                    .within(2e-3)
                    .check(actual[i] - ZERO);
        }
        OutsideChecks.published("conduction-waterline-heat", source)
                .what("heat that crosses the waterline in the glass")
                .unit("W")
                .expected(0.8792778600003407)
                .withinRelative(1e-3)
                .check(-run.evaluate("glass conduction 180", 40_000).flowOf(0));
    }
}
