/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.special.Erf;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Soil without an end, whose surface is held, heated or joined to air: closed forms at the surface and at two depths. */
final class SemiInfiniteSolidTest {

    private static final double ZERO = 273.15;
    private static final double CONDUCTIVITY = 1.1;
    private static final double CAPACITY = 2.3e6;
    private static final double[] DEPTHS = {0, 0.05, 0.2};
    private static final String BOOK = "Cengel and Ghajar, Heat and Mass Transfer, 5th ed., eqs 4-45 to 4-47";

    /** Layers whose boundaries lie at the depths of interest, and a medium without an end behind them. */
    private static LayerStack soil(int cellsPerMetre, double startC) {
        return LayerStack.plane(1, 0)
                .layer("first", 0.05, CONDUCTIVITY, CAPACITY, (int) Math.round(0.05 * cellsPerMetre))
                .layer("second", 0.15, CONDUCTIVITY, CAPACITY, (int) Math.round(0.15 * cellsPerMetre / 2))
                .layer("third", 0.6, CONDUCTIVITY, CAPACITY, (int) Math.round(0.6 * cellsPerMetre / 8))
                .farMedium("deep", CONDUCTIVITY, CAPACITY, 86_400)
                .build("soil", ZERO + startC);
    }

    /** Temperature over the start at the three depths at 3600 s, then at 86,400 s. */
    private static double[] run(
            HeatLaw fromOutside, Boundary outside, double startC, int cellsPerMetre, double toleranceK) {
        LayerStack soil = soil(cellsPerMetre, startC);
        JunctionPath surface =
                JunctionPath.of("surface", soil.innerSurface(), Link.of(outside, "convection", fromOutside));
        List<Path> paths = new ArrayList<>(soil.paths());
        paths.add(surface);
        Trajectory run =
                NetworkSolver.standard().withToleranceK(toleranceK).solve(Network.of(soil.nodes(), paths), 86_400);
        assertThat(run.ledger(86_400).closure()).isLessThan(1e-9);
        return DoubleStream.of(3600, 86_400)
                .flatMap(t -> DoubleStream.of(
                        surface.surfaceTemperatureK(run.evaluate("surface", t)),
                        soil.outerEdgeK("first", run, t),
                        soil.outerEdgeK("second", run, t)))
                .map(t -> t - ZERO - startC)
                .toArray();
    }

    private static double[] exact(Closed form) {
        return DoubleStream.of(3600, 86_400)
                .flatMap(t -> DoubleStream.of(DEPTHS).map(x -> form.at(x, t)))
                .toArray();
    }

    @FunctionalInterface
    private interface Closed {
        double at(double depthM, double timeS);
    }

    private static double diffusivity() {
        return CONDUCTIVITY / CAPACITY;
    }

    private static double step(double x, double t) {
        return Erf.erfc(x / (2 * Math.sqrt(diffusivity() * t)));
    }

    private static double flux(double x, double t) {
        double at = diffusivity() * t;
        return (2 * Math.sqrt(at / Math.PI) * Math.exp(-x * x / (4 * at)) - x * step(x, t)) / CONDUCTIVITY;
    }

    private static double convection(double x, double t) {
        double h = 12 / CONDUCTIVITY;
        double root = Math.sqrt(diffusivity() * t);
        return step(x, t) - Math.exp(h * x + h * h * root * root) * Erf.erfc(x / (2 * root) + h * root);
    }

    private static void check(String id, String what, double[] expected, double[] loose, double[] tight) {
        double worstLoose = 0;
        double worstTight = 0;
        for (int i = 0; i < expected.length; i++) {
            worstLoose = Math.max(worstLoose, Math.abs(loose[i] - expected[i]));
            worstTight = Math.max(worstTight, Math.abs(tight[i] - expected[i]));
        }
        OutsideChecks.published("conduction-semi-infinite-" + id, BOOK)
                .what(
                        what
                                + ": largest error at 0, 5 and 20 cm after an hour and a day, cells of 1 mm at the surface, default tolerance")
                .unit("K")
                .expected(0)
                .within(2e-3)
                .check(worstLoose);
        OutsideChecks.published("conduction-semi-infinite-" + id + "-tight", BOOK)
                .what(what + ": the same, cells of 0.2 mm at the surface, tolerance 1e-5 K")
                .unit("K")
                .expected(0)
                .within(1e-4)
                .check(worstTight);
    }

    @Test
    void closedFormsAreAsListed() {
        // Independent evaluation of the three closed forms, surface and depths after an hour and a day.
        assertThat(exact(SemiInfiniteSolidTest::step))
                .containsExactly(
                        new double[] {1, 0.39417953517, 0.00065381191, 1, 0.86192324079, 0.48661301425}, within(1e-10));
        assertThat(exact(SemiInfiniteSolidTest::flux))
                .containsExactly(
                        new double[] {
                            0.04256435426, 0.01168978624, 8.953875347e-06, 0.20852189833, 0.16621336379, 0.07522575975
                        },
                        within(1e-10));
        assertThat(exact(SemiInfiniteSolidTest::convection))
                .containsExactly(
                        new double[] {
                            0.35920951939, 0.10692454280, 9.287480052e-05, 0.76600933798, 0.64194712509, 0.33254208699
                        },
                        within(1e-10));
    }

    @Test
    void surfaceHeldAtATemperature() {
        Boundary held = Boundary.constant("held", ZERO + 22);
        HeatLaw perfect = HeatLaw.conductance(1e9);
        check(
                "step",
                "surface raised from 12 °C to 22 °C",
                scaled(10, exact(SemiInfiniteSolidTest::step)),
                run(perfect, held, 12, 1000, 1e-3),
                run(perfect, held, 12, 5000, 1e-5));
    }

    @Test
    void surfaceUnderAConstantFlux() {
        // A junction's surface lies between its ends: a very hot end behind a very small conductance gives a constant
        // flux.
        double hot = 1e8;
        Boundary sun = Boundary.constant("sun", hot + ZERO + 12);
        HeatLaw constant = HeatLaw.conductance(100 / hot);
        check(
                "flux",
                "100 W/m² into soil at 12 °C",
                scaled(100, exact(SemiInfiniteSolidTest::flux)),
                run(constant, sun, 12, 1000, 1e-3),
                run(constant, sun, 12, 5000, 1e-5));
    }

    @Test
    void surfaceUnderAFilm() {
        Boundary air = Boundary.constant("air", ZERO + 26);
        HeatLaw film = HeatLaw.conductance(12);
        check(
                "film",
                "soil of 12 °C under air of 26 °C, 12 W/(m² K)",
                scaled(14, exact(SemiInfiniteSolidTest::convection)),
                run(film, air, 12, 1000, 1e-3),
                run(film, air, 12, 5000, 1e-5));
    }

    private static double[] scaled(double factor, double[] values) {
        return DoubleStream.of(values).map(v -> factor * v).toArray();
    }

    @Test
    void frostGoesDownAsDeepAsTheBookSays() {
        // Soil of 15 °C, surface at −10 °C for 90 days, α = 0.15e-6 m²/s: 0 °C at 0.80 m; more closely 0.800943 m.
        double duration = 90 * 86_400.0;
        double depth = 0.800943462562085;
        LayerStack soil = LayerStack.plane(1, 0)
                .layer("down to the frost", depth, 0.3, 2e6, 160)
                .farMedium("deep", 0.3, 2e6, duration)
                .build("soil", ZERO + 15);
        List<Path> paths = new ArrayList<>(soil.paths());
        paths.add(JunctionPath.of(
                "surface",
                soil.innerSurface(),
                Link.of(Boundary.constant("winter", ZERO - 10), "convection", HeatLaw.conductance(1e9))));
        Trajectory run = NetworkSolver.standard().solve(Network.of(soil.nodes(), paths), duration);
        OutsideChecks.published(
                        "conduction-frost-depth", "Cengel and Ghajar, Heat and Mass Transfer, 5th ed., Example 4-6")
                .what("temperature at the depth of 0.8009 m that the formula gives for 0 °C (printed: 0.80 m)")
                .unit("°C")
                .expected(0)
                .within(2e-3)
                .check(soil.outerEdgeK("down to the frost", run, duration) - ZERO);
    }
}
