/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.testsupport.DocumentParts;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/**
 * Liquid and glass with films of Churchill and Chu on either side, read every 10 s with a lag: inside factor, outside factor and lag from
 * one log of the liquid. Expected values are those of a separate program for the same problem, by Rosenbrock steps and by Commons Math
 * with forward sensitivities.
 */
class TwoNodeFitTest {

    private static final double ZERO_C = 273.15;
    private static final double[] TIMES =
            IntStream.rangeClosed(1, 1000).mapToDouble(i -> 10.0 * i).toArray();

    private static double nusselt(double ra, double pr) {
        return Math.pow(
                0.825 + 0.387 * Math.pow(ra, 1.0 / 6) / Math.pow(1 + Math.pow(0.492 / pr, 9.0 / 16), 8.0 / 27), 2);
    }

    private static double inside(double liquidC, double glassC) {
        double th = 0.5 * (liquidC + glassC);
        double k = 0.50 + 1.1e-3 * th;
        double nu = 2.9e-6 - 9.5e-8 * th + 1.3e-9 * th * th;
        double alpha = k / 4.0e6;
        double beta = 1.2e-4 + 8e-6 * th;
        double drive = liquidC - glassC;
        double ra = 9.81 * beta * Math.abs(drive) * Math.pow(0.20, 3) / (nu * alpha);
        return nusselt(ra, nu / alpha) * k / 0.20 * 0.046 * drive;
    }

    private static double outside(double glassC, double airC) {
        double th = 0.5 * (glassC + airC);
        double nu = 1.335e-5 + 9e-8 * th;
        double k = 0.02436 + 7.2e-5 * th;
        double drive = glassC - airC;
        double ra = 9.81 / (ZERO_C + th) * Math.abs(drive) * Math.pow(0.24, 3) / (nu * nu / 0.711);
        double radiation = 0.9 * 5.670374419e-8 * 0.062 * (Math.pow(glassC + ZERO_C, 4) - Math.pow(airC + ZERO_C, 4));
        return nusselt(ra, 0.711) * k / 0.24 * 0.062 * drive + radiation;
    }

    private interface Heat {
        double watts(double fromC, double toC);
    }

    private static HeatLaw law(Heat heat) {
        return (fromK, toK, out) -> {
            double d = 1e-5;
            double from = fromK - ZERO_C;
            double to = toK - ZERO_C;
            out.watts = heat.watts(from, to);
            out.perFromKelvin = (heat.watts(from + d, to) - heat.watts(from - d, to)) / (2 * d);
            out.perToKelvin = (heat.watts(from, to + d) - heat.watts(from, to - d)) / (2 * d);
        };
    }

    private static final TemperatureModel MODEL = TemperatureModel.of(TIMES, (values, solver) -> {
                Node liquid = Node.sensible("liquid", 3100, 22 + ZERO_C);
                Node glass = Node.sensible("glass", 420, 22 + ZERO_C);
                Boundary air = Boundary.constant("air", 4 + ZERO_C);
                Network network = Network.of(
                        java.util.List.of(liquid, glass),
                        List.of(
                                DirectPath.of("inside", liquid, glass, "convection", law(TwoNodeFitTest::inside))
                                        .scaledBy("inside"),
                                DirectPath.of("outside", glass, air, "convection", law(TwoNodeFitTest::outside))
                                        .scaledBy("outside")));
                return Sensed.in(solver.solve(network, 10_000), liquid, glass);
            })
            .multipliers("inside", "outside")
            .throughLawsAlone()
            .readBy(Sensor.IDEAL.lagging("lag"));

    @Test
    void insideAndOutsideAreNotToldApart() {
        double[] truth = MODEL.at(new double[] {1.15, 0.9, 45}).values();
        Random random = new Random(7);
        double[] readings = new double[truth.length];
        for (int i = 0; i < truth.length; i++) {
            readings[i] = truth[i] + 0.05 * random.nextGaussian();
        }
        FitResult result = Fit.builder()
                .parameter(Parameter.of("inside", 1).between(0.05, 50))
                .parameter(Parameter.of("outside", 1).between(0.05, 50))
                .parameter(Parameter.of("lag", 30).between(0.1, 1000))
                .run("log", MODEL, Observations.of(TIMES, readings))
                .build()
                .run();
        check("inside", "inside factor", 1.159, 0.02, result.estimate("inside").value());
        check("inside-error", "standard error of the inside factor", 0.36, 0.03, error(result, "inside"));
        check("outside-error", "standard error of the outside factor", 0.012, 0.001, error(result, "outside"));
        check("lag-error", "standard error of the lag [s]", 6.4, 0.3, error(result, "lag"));
        check("correlation", "correlation of both factors", -0.9992, 0.0003, result.correlation("inside", "outside"));
        check(
                "correlation-lag",
                "correlation of inside factor and lag",
                0.96,
                0.01,
                result.correlation("inside", "lag"));
        Identifiability report = result.identifiability();
        assertThat(report.isIdentifiable()).isFalse();
        assertThat(report.together()).hasSize(1);
        assertThat(report.further())
                .first()
                .satisfies(further -> assertThat(further.reading()).startsWith("glass"));
        assertThat(report.advice()).anySatisfy(text -> assertThat(text).contains("inside and outside go together"));
        leaveTable(report);
    }

    private static void leaveTable(Identifiability report) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("directions determined", report.rank() + " of " + report.parameters()));
        rows.add(List.of("identifiable", report.isIdentifiable() ? "yes" : "no"));
        report.together()
                .forEach(pair -> rows.add(List.of(
                        "correlation of " + pair.first() + " and " + pair.second(),
                        String.format(Locale.ROOT, "%.3f", pair.correlation()))));
        report.advice().forEach(advice -> rows.add(List.of("advice", advice)));
        report.further()
                .forEach(further -> rows.add(List.of(
                        "reading " + further.reading() + " as well",
                        String.format(Locale.ROOT, "%.0f times surer", further.gain()))));
        DocumentParts.leaveTable("calibration-identifiability", List.of("Inside, outside and lag", "Report"), rows);
    }

    private static double error(FitResult result, String name) {
        return result.estimate(name).standardError().orElseThrow();
    }

    private static void check(String id, String what, double expected, double within, double actual) {
        OutsideChecks.referenceLibrary(
                        "two-node-fit-" + id,
                        "a separate program: Rosenbrock steps, derivatives on the frozen step sequence; Commons Math 3.6.1"
                                + " with forward sensitivities")
                .what("two-node bottle, 1000 readings with a scatter of 0.05 K: " + what)
                .unit("1")
                .expected(expected)
                .within(within)
                .check(actual);
    }
}
