/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.beveragethermal.core.conduction.SeriesSolution.Shape;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.ObservedOrders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Order of the finite volumes in the cell, and manufactured solutions: the exact answer is chosen, sources make it true. */
final class ConvergenceOrderTest {

    private static final double BASE_K = 300;

    private static LayerStack.Builder builder(Shape shape) {
        return switch (shape) {
            case WALL -> LayerStack.plane(1, 0);
            case CYLINDER -> LayerStack.cylinder(1, 0);
            case SPHERE -> LayerStack.sphere(0);
        };
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void errorFallsWithTheSquareOfTheCell(Shape shape) {
        double[] surfaceAndMean = new double[3];
        double[] centre = new double[3];
        for (int k = 0; k < 3; k++) {
            double[] errors = seriesErrors(shape, 20 << k);
            centre[k] = errors[0];
            surfaceAndMean[k] = errors[1];
        }
        assertOrder(shape, "surface and mean, against the series", 20, surfaceAndMean, 1.9);
        // On an axis or in a centre the error falls as h² ln(1/h): the resistance of the innermost half cell counts
        // from a
        // radius of half a cell, as if the mean of the cell stood there.
        assertOrder(shape, "centre, against the series", 20, centre, shape == Shape.WALL ? 1.9 : 1.65);
    }

    /** Errors with a number of cells, twice and four times as many. */
    private static void assertOrder(Shape shape, String what, int cells, double[] errors, double atLeast) {
        String family = switch (shape) {
            case WALL -> "conducting layers, plane";
            case CYLINDER -> "conducting shells, cylinder";
            case SPHERE -> "conducting shells, sphere";
        };
        for (int i = 0; i < 2; i++) {
            ObservedOrders.of(family, what, "cells, " + (cells << i) + " to " + (cells << (i + 1)))
                    .check(2, ObservedOrders.order(errors[i], errors[i + 1], 2), atLeast, 2.1);
        }
    }

    /** Largest error of the centre, and of surface and mean, at Bi = 2, Fo = 0.2 and 0.6; ten kelvin, tolerance 1e-8 K. */
    private static double[] seriesErrors(Shape shape, int cells) {
        LayerStack body = builder(shape).layer("body", 1, 1, 1000, cells).build("x", BASE_K + 10);
        JunctionPath film = JunctionPath.of(
                "film",
                body.outerSurface(),
                Link.of(
                        Boundary.constant("medium", BASE_K),
                        "convection",
                        HeatLaw.conductance(2 * body.outerAreaM2())));
        List<Path> paths = new ArrayList<>(body.paths());
        paths.add(film);
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-8).solve(Network.of(body.nodes(), paths), 600);
        SeriesSolution series = SeriesSolution.of(shape, 2);
        double[] worst = new double[2];
        for (double t : new double[] {200, 600}) {
            double fourier = t / 1000;
            double surface = film.surfaceTemperatureK(run.evaluate("film", t)) - BASE_K - 10 * series.at(1, fourier);
            double mean = body.meanK("body", run, t) - BASE_K - 10 * series.mean(fourier);
            double centre = body.middleK(run, t) - BASE_K - 10 * series.at(0, fourier);
            worst[0] = Math.max(worst[0], Math.abs(centre));
            worst[1] = Math.max(worst[1], Math.max(Math.abs(surface), Math.abs(mean)));
        }
        return worst;
    }

    /** A temperature that follows a sine exactly, with its exact rate. */
    private static TimeFunction sine(double mean, double sinePart, double cosinePart, double omega) {
        return new TimeFunction() {
            @Override
            public double at(double t) {
                return mean + sinePart * Math.sin(omega * t) + cosinePart * Math.cos(omega * t);
            }

            @Override
            public double rate(double t) {
                return omega * (sinePart * Math.cos(omega * t) - cosinePart * Math.sin(omega * t));
            }
        };
    }

    /** T = 300 K + 8 K sin ωt cos(β x), made true by a source in every cell and a medium outside that follows. */
    private static final class Manufactured {

        private static final double AMPLITUDE = 8;
        private static final double OMEGA = 2 * Math.PI / 2000;
        private static final double BETA = 30;
        private static final double SIZE = 0.05;
        private static final double CONDUCTIVITY = 0.6;
        private static final double CAPACITY = 4e6;
        private static final double FILM = 40;

        private final Shape shape;
        private final int cells;

        Manufactured(Shape shape, int cells) {
            this.shape = shape;
            this.cells = cells;
        }

        private double area(double x) {
            return switch (shape) {
                case WALL -> 1;
                case CYLINDER -> 2 * Math.PI * x;
                case SPHERE -> 4 * Math.PI * x * x;
            };
        }

        private double integral(DoubleUnaryOperator f, double from, double to) {
            GaussIntegrator rule = new GaussIntegratorFactory().legendre(8, from, to);
            return rule.integrate(x -> area(x) * f.applyAsDouble(x));
        }

        private static double form(double x) {
            return Math.cos(BETA * x);
        }

        private static double formSlope(double x) {
            return -BETA * Math.sin(BETA * x);
        }

        /** Root mean square, weighted by volume, over cells and times of the error of the cells' means. */
        double error() {
            LayerStack body = builder(shape)
                    .layer("body", SIZE, CONDUCTIVITY, CAPACITY, cells)
                    .build("x", BASE_K);
            List<Path> paths = new ArrayList<>(body.paths());
            double[] means = new double[cells];
            double[] volumes = new double[cells];
            for (int i = 0; i < cells; i++) {
                double a = SIZE * i / cells;
                double b = SIZE * (i + 1) / cells;
                double weight = integral(Manufactured::form, a, b);
                volumes[i] = integral(x -> 1, a, b);
                means[i] = weight / volumes[i];
                double storage = CAPACITY * OMEGA * AMPLITUDE * weight;
                double outflow = -CONDUCTIVITY * AMPLITUDE * (area(b) * formSlope(b) - area(a) * formSlope(a));
                // The source's watts are read off an imposed temperature, one kelvin for one watt.
                Boundary source = Boundary.varying("source " + i, sine(BASE_K, outflow, storage, OMEGA));
                Node node = body.nodes().get(i);
                paths.add(DirectPath.of("source " + i, source, node, "source", (from, to, out) -> {
                    out.watts = from - BASE_K;
                    out.perFromKelvin = 1;
                    out.perToKelvin = 0;
                }));
            }
            double outside = AMPLITUDE * (form(SIZE) + CONDUCTIVITY * formSlope(SIZE) / FILM);
            paths.add(JunctionPath.of(
                    "film",
                    body.outerSurface(),
                    Link.of(
                            Boundary.varying("medium", sine(BASE_K, outside, 0, OMEGA)),
                            "convection",
                            HeatLaw.conductance(FILM * body.outerAreaM2()))));
            Trajectory run = NetworkSolver.standard().withToleranceK(1e-7).solve(Network.of(body.nodes(), paths), 2500);
            double squares = 0;
            for (double t : new double[] {500, 1100, 2500}) {
                for (int i = 0; i < cells; i++) {
                    double exact = BASE_K + AMPLITUDE * Math.sin(OMEGA * t) * means[i];
                    squares +=
                            volumes[i] * Math.pow(run.temperatureK(body.nodes().get(i), t) - exact, 2);
                }
            }
            return Math.sqrt(squares / (3 * integral(x -> 1, 0, SIZE)));
        }
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void manufacturedSolutionInAStack(Shape shape) {
        double[] errors = {
            new Manufactured(shape, 10).error(),
            new Manufactured(shape, 20).error(),
            new Manufactured(shape, 40).error()
        };
        assertOrder(shape, "means of cells, against a manufactured solution", 10, errors, 1.9);
        assertThat(errors[2]).isLessThan(0.01);
    }

    /**
     * Three bodies joined by a film ~ ΔT^(5/4), radiation and a coupling that grows with temperature, driven so that each
     * follows a chosen sine.
     */
    private static final class Driven {

        private static final double SIGMA = 5.670374419e-8;
        private static final double[] CAPACITY = {3000, 400, 150};
        private static final double[] MEAN = {295, 290, 285};
        private static final double[] SWING = {6, 9, 12};
        private static final double[] OMEGA = {2 * Math.PI / 3000, 2 * Math.PI / 1800, 2 * Math.PI / 1100};

        private static double film(double from, double to) {
            double d = from - to;
            // Rounded at 0.01 K², so that the law is smooth where the drive changes sign.
            return 3 * d * Math.pow(d * d + 0.01, 0.125);
        }

        private static double radiation(double from, double to) {
            return 0.06 * SIGMA * (Math.pow(from, 4) - Math.pow(to, 4));
        }

        private static double growing(double from, double to) {
            return 0.002 * (from * from - to * to);
        }

        private static double chosen(int i, double t) {
            return MEAN[i] + SWING[i] * Math.sin(OMEGA[i] * t);
        }

        private static double chosenRate(int i, double t) {
            return SWING[i] * OMEGA[i] * Math.cos(OMEGA[i] * t);
        }

        /** Watts that body i needs so that it follows its sine. */
        private static double source(int i, double t) {
            double a = chosen(0, t);
            double b = chosen(1, t);
            double c = chosen(2, t);
            double leaving =
                    i == 0 ? film(a, b) : i == 1 ? growing(b, c) - film(a, b) : radiation(c, 280) - growing(b, c);
            return CAPACITY[i] * chosenRate(i, t) + leaving;
        }

        /** Largest error over the run, and the number of steps. */
        static double[] run(double toleranceK) {
            List<Node> nodes = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                nodes.add(Node.sensible("body " + i, CAPACITY[i], chosen(i, 0)));
            }
            List<Path> paths = new ArrayList<>();
            paths.add(path("film", nodes.get(0), nodes.get(1), Driven::film));
            paths.add(path("growing", nodes.get(1), nodes.get(2), Driven::growing));
            paths.add(path("sky", nodes.get(2), Boundary.constant("sky", 280), Driven::radiation));
            for (int i = 0; i < 3; i++) {
                int body = i;
                Boundary source = Boundary.varying("source " + i, new TimeFunction() {
                    @Override
                    public double at(double t) {
                        return BASE_K + source(body, t);
                    }

                    @Override
                    public double rate(double t) {
                        return (source(body, t + 0.01) - source(body, t - 0.01)) / 0.02;
                    }
                });
                paths.add(path("source " + i, source, nodes.get(i), (from, to) -> from - BASE_K));
            }
            Trajectory run = NetworkSolver.standard().withToleranceK(toleranceK).solve(Network.of(nodes, paths), 3000);
            double worst = 0;
            for (double t = 0; t <= 3000; t += 7.5) {
                for (int i = 0; i < 3; i++) {
                    worst = Math.max(worst, Math.abs(run.temperatureK(nodes.get(i), t) - chosen(i, t)));
                }
            }
            assertThat(run.ledger(3000).closure()).isLessThan(1e-9);
            return new double[] {worst, run.steps()};
        }

        private static Path path(String name, End from, End to, java.util.function.DoubleBinaryOperator watts) {
            return DirectPath.of(name, from, to, name, HeatLaw.of(watts));
        }
    }

    @Test
    void manufacturedSolutionOfANonlinearNetwork() {
        double[] loose = Driven.run(1e-3);
        assertThat(loose[0]).isLessThan(2e-3);
        double[] tight = Driven.run(1e-5);
        assertThat(tight[0]).isLessThan(1e-4);
        double[] tighter = Driven.run(1e-7);
        String family = "lumped network, three bodies under nonlinear laws";
        String quantity = "temperatures of a whole run, against a manufactured solution";
        // The dense output between the steps is of order 3, the steps of order 4.
        ObservedOrders.of(family, quantity, "steps taken, tolerance 1e-5 to 1e-7 K")
                .check(4, ObservedOrders.order(tight[0], tighter[0], tighter[1] / tight[1]), 2.7, 4.6);
        ObservedOrders.of(family, quantity, "tolerance, 1e-5 to 1e-7 K")
                .check(1, ObservedOrders.order(tight[0], tighter[0], 100), 0.7, 1.3);
    }
}
