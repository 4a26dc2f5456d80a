/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.conduction.SeriesSolution.Shape;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Wall, long cylinder and sphere from Biot number 0.01 to 10 against the series, which is held to listed figures first. */
final class SeriesConductionTest {

    private static final double ZERO = 273.15;
    private static final double RADIUS = 0.035;
    private static final double CONDUCTIVITY = 0.6;
    private static final double CAPACITY = 4e6;
    private static final double START_K = 22;
    private static final double[] BIOT = {0.01, 0.1, 0.2, 0.5, 1, 2, 10};
    private static final double[] FOURIER = {0.02, 0.1, 0.5, 1.5};

    @ParameterizedTest
    @CsvSource({
        "WALL, 0.01, 0.0998, 1.0017",
        "WALL, 0.1, 0.3111, 1.0161",
        "WALL, 0.2, 0.4328, 1.0311",
        "WALL, 0.5, 0.6533, 1.0701",
        "WALL, 1, 0.8603, 1.1191",
        "WALL, 2, 1.0769, 1.1785",
        "WALL, 10, 1.4289, 1.2620",
        "CYLINDER, 0.01, 0.1412, 1.0025",
        "CYLINDER, 0.1, 0.4417, 1.0246",
        "CYLINDER, 0.2, 0.6170, 1.0483",
        "CYLINDER, 0.5, 0.9408, 1.1143",
        "CYLINDER, 1, 1.2558, 1.2071",
        "CYLINDER, 2, 1.5995, 1.3384",
        "CYLINDER, 10, 2.1795, 1.5677",
        "SPHERE, 0.01, 0.1730, 1.0030",
        "SPHERE, 0.1, 0.5423, 1.0298",
        "SPHERE, 0.2, 0.7593, 1.0592",
        "SPHERE, 0.5, 1.1656, 1.1441",
        "SPHERE, 1, 1.5708, 1.2732",
        "SPHERE, 2, 2.0288, 1.4793",
        "SPHERE, 10, 2.8363, 1.9249",
    })
    void firstRootAndCoefficientAreThoseOfTheTable(Shape shape, double biot, double root, double coefficient) {
        // Cengel and Ghajar, Heat and Mass Transfer, 5th ed., Table 4-2: the test's own series, not the library.
        SeriesSolution series = SeriesSolution.of(shape, biot);
        assertThat(series.root(1)).isCloseTo(root, within(6e-5));
        assertThat(series.coefficient(1)).isCloseTo(coefficient, within(6e-5));
    }

    @ParameterizedTest
    @CsvSource({
        "WALL, 5, 4, 9.89275257, 0.02, 0.999999819, 0.523156584, 0.935791771",
        "WALL, 5, 2, 4.03356779, 1.5, 0.0931129597, 0.0236637461, 0.0685440957",
        "CYLINDER, 0.5, 4, 10.2224584, 0.02, 0.999999861, 0.920063907, 0.981065005",
        "CYLINDER, 5, 4, 10.6223003, 0.5, 0.207554165, 0.047695267, 0.120455385",
        "SPHERE, 0.5, 4, 10.9499436, 0.1, 0.972530501, 0.793269757, 0.869911649",
        "SPHERE, 5, 3, 8.30292918, 0.5, 0.0656752623, 0.0138130148, 0.0313591788",
    })
    void seriesIsThatOfTwoHundredTerms(
            Shape shape, double biot, int n, double root, double fourier, double centre, double surface, double mean) {
        // An independent sum of 200 terms, separation of variables.
        SeriesSolution series = SeriesSolution.of(shape, biot);
        assertThat(series.root(n)).isCloseTo(root, within(1e-7));
        assertThat(series.at(0, fourier)).isCloseTo(centre, within(1e-9));
        assertThat(series.at(1, fourier)).isCloseTo(surface, within(1e-9));
        assertThat(series.mean(fourier)).isCloseTo(mean, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void bodiesCoolAsTheSeriesSays(Shape shape) {
        check(shape, "default", 1e-3, 4e-5, 2e-3);
        check(shape, "tight", 1e-5, 2e-6, 1e-4);
    }

    private static void check(Shape shape, String how, double toleranceK, double relativeError, double limitK) {
        double shortestS = FOURIER[0] * RADIUS * RADIUS * CAPACITY / CONDUCTIVITY;
        int cells = LayerStack.cellsFor(RADIUS, CONDUCTIVITY / CAPACITY, shortestS, relativeError);
        String name = shape.name().toLowerCase(Locale.ROOT);
        for (double biot : BIOT) {
            OutsideChecks.published(
                            "conduction-series-" + how + "-" + name,
                            "closed form: series by separation of variables, roots by Brent's method")
                    .what("largest error of centre, surface and mean of a " + name
                            + " of 35 mm from 22 °C in 0 °C, Bi = " + biot + ", Fo = 0.02 to 1.5, " + cells
                            + " cells, tolerance " + toleranceK + " K")
                    .unit("K")
                    .expected(0)
                    .within(limitK)
                    .check(largestError(shape, biot, cells, toleranceK));
        }
    }

    private static double largestError(Shape shape, double biot, int cells, double toleranceK) {
        LayerStack body = builder(shape)
                .layer("body", RADIUS, CONDUCTIVITY, CAPACITY, cells)
                .build("x", ZERO + START_K);
        Boundary medium = Boundary.constant("medium", ZERO);
        JunctionPath film = JunctionPath.of(
                "film",
                body.outerSurface(),
                Link.of(medium, "convection", HeatLaw.conductance(biot * CONDUCTIVITY / RADIUS * body.outerAreaM2())));
        List<Path> paths = new ArrayList<>(body.paths());
        paths.add(film);
        double unitS = RADIUS * RADIUS * CAPACITY / CONDUCTIVITY;
        Trajectory run =
                NetworkSolver.standard().withToleranceK(toleranceK).solve(Network.of(body.nodes(), paths), 1.5 * unitS);
        assertThat(run.ledger(run.endS()).closure()).isLessThan(1e-9);
        SeriesSolution series = SeriesSolution.of(shape, biot);
        double worst = 0;
        for (double fourier : FOURIER) {
            double t = Math.min(fourier * unitS, run.endS());
            double surface = film.surfaceTemperatureK(run.evaluate("film", t));
            worst = Math.max(worst, Math.abs(body.middleK(run, t) - ZERO - START_K * series.at(0, fourier)));
            worst = Math.max(worst, Math.abs(surface - ZERO - START_K * series.at(1, fourier)));
            worst = Math.max(worst, Math.abs(body.meanK("body", run, t) - ZERO - START_K * series.mean(fourier)));
        }
        return worst;
    }

    private static LayerStack.Builder builder(Shape shape) {
        return switch (shape) {
            case WALL -> LayerStack.plane(1, 0);
            case CYLINDER -> LayerStack.cylinder(1, 0);
            case SPHERE -> LayerStack.sphere(0);
        };
    }

    @Test
    void smallBiotNumberIsTheLumpedBody() {
        // θ = exp(−Bi Fo · area over volume): for Bi → 0 the body has one temperature.
        SeriesSolution series = SeriesSolution.of(Shape.CYLINDER, 0.01);
        assertThat(series.mean(1.5)).isCloseTo(Math.exp(-0.01 * 1.5 * 2), within(2e-4));
    }
}
