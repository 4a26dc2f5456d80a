/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.materials.liquid.EthanolWater;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The film along the wall at one moment: its two classical limits, its symmetries and its derivatives. */
final class WallFilmLimitsTest {

    private static final double ZERO = 273.15;
    private static final double GRAVITY = 9.80665;
    private static final Liquid WINE = EthanolWater.ofMassFraction(0.10049);

    /** A film path, and the temperatures of slices, then of what lies behind the wall. */
    private record Film(Path path, int slices) {

        static Film of(Liquid liquid, double radiusM, double heightM, int slices, double wallCoefficient) {
            Boundary wall = Boundary.constant("wall", 280);
            StratifiedLiquid column = StratifiedLiquid.ofConstantHeatCapacity(
                    "x",
                    liquid,
                    4.2e6,
                    285,
                    StratifiedLiquid.cylinder(
                            radiusM, StratifiedLiquid.faces(0, heightM, slices), i -> wall, i -> wallCoefficient));
            return new Film(column.paths().get(column.paths().size() - 1), slices);
        }

        PathEvaluation at(double[] temperaturesK) {
            PathEvaluation e = new PathEvaluation(path);
            e.evaluate(path, 0, temperaturesK);
            return e;
        }
    }

    private static double[] temperatures(int slices, java.util.function.IntToDoubleFunction core, double dropK) {
        double[] all = new double[2 * slices];
        for (int i = 0; i < slices; i++) {
            all[i] = core.applyAsDouble(i);
            all[slices + i] = all[i] - dropK;
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({"10, 2, 20", "20, 5, 20", "20, -3, 20", "15, 0.5, 40", "12, 6, 80"})
    void coreOfOneTemperature(double coreC, double dropK, int slices) {
        // Squire and Eckert: Nu = (4/3)^(3/4)/2 Ra^(1/4) = 0.620 Ra^(1/4), a wide vessel with a wall of one
        // temperature.
        double height = 0.2;
        double radius = 0.5;
        Film film = Film.of(WINE, radius, height, slices, 1e7);
        PathEvaluation e = film.at(temperatures(slices, i -> ZERO + coreC, dropK));
        double heat = 0;
        for (int i = 0; i < slices; i++) {
            heat += e.flowOf(i);
        }
        FilmFit fit = FilmFit.of(WINE);
        double core = ZERO + coreC;
        double between = core - 0.5 * dropK;
        double buoyancy =
                Math.abs(fit.density().at(core - dropK) / fit.density().at(core) - 1);
        double rayleigh = GRAVITY
                * buoyancy
                * Math.pow(height, 3)
                * fit.inverseDiffusion().at(between);
        double area = 2 * Math.PI * radius * height;
        double nusselt = Math.abs(heat)
                / (area * Math.abs(dropK))
                * height
                / fit.conductivity().at(between);
        OutsideChecks.published(
                        "layered-film-isothermal",
                        "momentum and energy integrals of a laminar film with Squire and Eckert's profile, Pr large")
                .what(String.format(
                        Locale.ROOT,
                        "Nu/Ra^(1/4) of a core of one temperature, %.0f °C, wall %.1f K colder, %d slices",
                        coreC,
                        dropK,
                        slices))
                .unit("1")
                .expected(0.62)
                .withinRelative(0.05)
                .check(nusselt / Math.pow(rayleigh, 0.25));
        assertThat(Math.signum(heat)).isEqualTo(Math.signum(dropK));
    }

    /** What the film does inside a linear core, over what the buoyancy layer of a linearly stratified fluid does. */
    private static double stratifiedRatio(int slices, double gradient, double dropK) {
        double height = 0.4;
        Film film = Film.of(WINE, 1, height, slices, 1e7);
        double bottom = ZERO + 14;
        double slice = height / slices;
        PathEvaluation e = film.at(temperatures(slices, i -> bottom + gradient * slice * (i + 0.5), dropK));
        FilmFit fit = FilmFit.of(WINE);
        // Where the film has run through three quarters of the column.
        int i = dropK > 0 ? slices / 4 : 3 * slices / 4;
        double core = bottom + gradient * slice * (i + 0.5);
        double between = core - 0.5 * dropK;
        double expansion =
                Math.abs(fit.density().at(core - dropK) / fit.density().at(core) - 1) / Math.abs(dropK);
        double expected = fit.conductivity().at(between)
                * Math.pow(
                        GRAVITY * expansion * gradient * fit.inverseDiffusion().at(between) / 4, 0.25);
        return e.flowOf(i) / (2 * Math.PI * slice * dropK) / expected;
    }

    @ParameterizedTest
    @CsvSource({"20, 3", "40, 2", "10, -1"})
    void linearCore(double gradient, double dropK) {
        // Far from where it starts the film follows the stratification alone: h = k (g β γ/(4 ν α))^(1/4). Slices pass
        // on what
        // they carry by an implicit step, so the difference falls with the size of a slice.
        double coarse = stratifiedRatio(40, gradient, dropK);
        double fine = stratifiedRatio(80, gradient, dropK);
        double finer = stratifiedRatio(160, gradient, dropK);
        String source = "buoyancy layer of a linearly stratified fluid, h = k (g β γ/(4 ν α))^(1/4)";
        String what = String.format(
                Locale.ROOT,
                "film coefficient inside a core of %.0f K/m, wall %.0f K colder, over that of the ",
                gradient,
                dropK);
        OutsideChecks.published("layered-film-stratified", source)
                .what(what + "buoyancy layer, 160 slices")
                .unit("1")
                .expected(1)
                .within(0.05)
                .check(finer);
        OutsideChecks.published("layered-film-stratified-limit", source)
                .what(what + "buoyancy layer, extrapolated from 80 and 160 slices")
                .unit("1")
                .expected(1)
                .within(0.02)
                .check(2 * finer - fine);
        assertThat((fine - coarse) / (finer - fine))
                .as("falls in proportion to the slice")
                .isBetween(1.6, 2.4);
    }

    @Test
    void smallDifferencesHeatAsTheyCool() {
        // Over 0.02 K density is straight in temperature: a film that rises takes as much as one that falls gives.
        int n = 8;
        Film film = Film.of(WINE, 0.035, 0.2, n, 300);
        PathEvaluation falling = film.at(temperatures(n, i -> ZERO + 20 + 0.5 * i, 0.02));
        PathEvaluation rising = film.at(temperatures(n, i -> ZERO + 20 + 0.5 * i, -0.02));
        for (int i = 0; i < n; i++) {
            assertThat(rising.flowOf(i)).isNegative();
            assertThat(falling.flowOf(i)).isPositive();
        }
        double fallingSum = 0;
        double risingSum = 0;
        for (int i = 0; i < n; i++) {
            fallingSum += falling.flowOf(i);
            risingSum += rising.flowOf(i);
        }
        assertThat(-risingSum).isCloseTo(fallingSum, within(0.03 * fallingSum));
    }

    @Test
    void equalTemperaturesCarryNothing() {
        int n = 5;
        PathEvaluation e = Film.of(WINE, 0.035, 0.2, n, 600).at(temperatures(n, i -> ZERO + 12, 0));
        for (int account = 0; account < 2 * n - 1; account++) {
            assertThat(e.flowOf(account)).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void waterNearItsDensestTurnsTheFilm() {
        // At 2 °C a colder wall makes water lighter: the film rises and its cold goes to the slice above; at 12 °C it
        // falls.
        int n = 6;
        Film film = Film.of(Water.liquid(), 0.035, 0.2, n, 1e4);
        PathEvaluation cold = film.at(temperatures(n, i -> ZERO + 2, 1.5));
        PathEvaluation warm = film.at(temperatures(n, i -> ZERO + 12, 1.5));
        for (int i = 0; i + 1 < n; i++) {
            // Account n + i: heat that slice i gives to the one above; a deficit that rises takes it from the upper
            // slice.
            assertThat(cold.flowOf(n + i)).isNegative();
            assertThat(warm.flowOf(n + i)).isPositive();
        }
        assertThat(cold.flowOf(0)).isGreaterThan(cold.flowOf(n - 1));
        assertThat(warm.flowOf(n - 1)).isGreaterThan(warm.flowOf(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"wine, cold wall", "wine, warm wall", "wine, some of each", "water across 4 °C"})
    void derivativesAreThoseOfDifferences(String how) {
        Random random = new Random(20_260_104);
        double worst = 0;
        for (int trial = 0; trial < 100; trial++) {
            int n = 2 + random.nextInt(7);
            boolean water = how.startsWith("water");
            Film film = Film.of(water ? Water.liquid() : WINE, 0.035, 0.2, n, 50 + 800 * random.nextDouble());
            double[] temperatures = new double[2 * n];
            double bottom = ZERO + (water ? 1 : 4) + 12 * random.nextDouble();
            double rise = 1.5 * random.nextDouble();
            for (int i = 0; i < n; i++) {
                temperatures[i] = bottom + rise * i + 0.3 * random.nextDouble();
                double wall = 0.5 + 12 * random.nextDouble();
                boolean colder = how.endsWith("cold wall") || (!how.endsWith("warm wall") && random.nextBoolean());
                temperatures[n + i] = Math.max(ZERO + 0.1, temperatures[i] + (colder ? -wall : wall));
            }
            worst = Math.max(worst, largestDifference(film, temperatures));
        }
        assertThat(worst)
                .as("largest error over the largest derivative of the same flow")
                .isLessThan(1e-4);
    }

    /** Over all flows and inputs, error of the stated derivative as a part of the largest derivative of that flow. */
    private static double largestDifference(Film film, double[] temperatures) {
        PathEvaluation at = film.at(temperatures);
        int accounts = film.path().accounts().size();
        List<double[]> numeric = new ArrayList<>();
        for (int j = 0; j < temperatures.length; j++) {
            double[] coarse = central(film, temperatures, j, 2e-4, accounts);
            double[] fine = central(film, temperatures, j, 1e-4, accounts);
            double[] both = new double[accounts];
            for (int a = 0; a < accounts; a++) {
                both[a] = (4 * fine[a] - coarse[a]) / 3;
            }
            numeric.add(both);
        }
        double worst = 0;
        for (int a = 0; a < accounts; a++) {
            double scale = 1e-6;
            double error = 0;
            for (int j = 0; j < temperatures.length; j++) {
                scale = Math.max(scale, Math.abs(numeric.get(j)[a]));
                error = Math.max(error, Math.abs(at.derivativeOf(a, j) - numeric.get(j)[a]));
            }
            worst = Math.max(worst, error / scale);
        }
        return worst;
    }

    private static double[] central(Film film, double[] temperatures, int j, double step, int accounts) {
        double[] up = temperatures.clone();
        up[j] += step;
        double[] down = temperatures.clone();
        down[j] -= step;
        PathEvaluation above = film.at(up);
        PathEvaluation below = film.at(down);
        double[] slopes = new double[accounts];
        for (int a = 0; a < accounts; a++) {
            slopes[a] = (above.flowOf(a) - below.flowOf(a)) / (2 * step);
        }
        return slopes;
    }
}
