/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.layered;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.time.Duration;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.EthanolWater;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The film along the wall where water is densest between core and wall, and where a wall begins to work against a film. */
final class WallFilmNearDensestTest {

    private static final double ZERO = 273.15;
    /** CIPM formula: water is densest at 3.98 °C (from memory). */
    private static final double DENSEST_WATER_K = 277.13;

    private static final double RADIUS = 0.035;
    private static final double HEIGHT = 0.2;
    private static final int SLICES = 4;
    private static final double SIDE = 2 * Math.PI * RADIUS * HEIGHT / SLICES;

    /** Parabolic about 277 K. */
    private static final SmoothFunction PARABOLIC = new SmoothFunction() {
        @Override
        public double at(double kelvin) {
            return 1000 * (1 - 8e-6 * (kelvin - 277) * (kelvin - 277));
        }

        @Override
        public double slope(double kelvin) {
            return -1000 * 16e-6 * (kelvin - 277);
        }
    };

    private static Path film(Liquid liquid, double wallCoefficient) {
        Boundary wall = Boundary.constant("wall", 280);
        StratifiedLiquid column = StratifiedLiquid.ofConstantHeatCapacity(
                "x",
                liquid,
                4.2e6,
                285,
                StratifiedLiquid.cylinder(
                        RADIUS, StratifiedLiquid.faces(0, HEIGHT, SLICES), i -> wall, i -> wallCoefficient));
        return column.paths().get(column.paths().size() - 1);
    }

    private static PathEvaluation at(Path path, double[] temperaturesK) {
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, temperaturesK);
        return e;
    }

    /** Slices each 0.1 K from the next, heavier ones lower, and one temperature behind the wall. */
    private static double[] temperatures(double lowestC, double wallC) {
        double[] all = new double[2 * SLICES];
        for (int i = 0; i < SLICES; i++) {
            all[i] = ZERO + lowestC + (lowestC < 3.5 ? -0.1 : 0.1) * i;
            all[SLICES + i] = ZERO + wallC;
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 60", "2, 60", "3, 300", "5, 60", "5, 300", "5, 1000", "6, 60", "6, 300", "6, 1000", "8, 300", "9, 1000"
    })
    void heatHasNoJumpsAsTheWallPassesTheDensest(double lowestC, double wallCoefficient) {
        Path path = film(Water.liquid(), wallCoefficient);
        double step = 0.002;
        double[] last = null;
        for (double wallC = 0.1; wallC < 12; wallC += step) {
            double[] flows = flows(path, temperatures(lowestC, wallC));
            if (last != null) {
                for (int a = 0; a < flows.length; a++) {
                    // A film in series with a wall passes less per kelvin than the wall alone; films that turn add
                    // their own.
                    double most = a < SLICES ? 2 * wallCoefficient * SIDE : 2 * SLICES * wallCoefficient * SIDE;
                    assertThat(Math.abs(flows[a] - last[a]) / step)
                            .as("flow %s, wall at %s °C", a, wallC)
                            .isLessThan(most);
                }
            }
            last = flows;
        }
    }

    @ParameterizedTest
    @CsvSource({"0.5, 60", "1, 300", "2, 60", "2, 300", "2, 1000", "3, 300", "6, 60", "8, 300", "10, 1000"})
    void heatHasNoJumpsAsTheCorePassesTheDensest(double wallC, double wallCoefficient) {
        Path path = film(Water.liquid(), wallCoefficient);
        double step = 5e-4;
        double[] last = null;
        for (double core = 0.2; core < 12; core += step) {
            double[] temperatures = new double[2 * SLICES];
            for (int i = 0; i < SLICES; i++) {
                temperatures[i] = ZERO + core + 0.1 * i;
                temperatures[SLICES + i] = ZERO + wallC;
            }
            double[] flows = flows(path, temperatures);
            if (last != null) {
                for (int a = 0; a < flows.length; a++) {
                    // What a film carries turns with it: all that the wall passes at 5 K, over 0.2 K.
                    double most = (a < SLICES ? 2 : SLICES * 5 / 0.2) * wallCoefficient * SIDE;
                    assertThat(Math.abs(flows[a] - last[a]) / step)
                            .as("flow %s, core at %s °C", a, core)
                            .isLessThan(most);
                }
            }
            last = flows;
        }
    }

    private static double[] flows(Path path, double[] temperatures) {
        PathEvaluation e = at(path, temperatures);
        double[] flows = new double[path.accounts().size()];
        for (int a = 0; a < flows.length; a++) {
            flows[a] = e.flowOf(a);
        }
        return flows;
    }

    @Test
    void slopesAreThoseOfDifferences() {
        double step = 1e-5;
        for (double coefficient : new double[] {60, 300, 1000}) {
            Path path = film(Water.liquid(), coefficient);
            for (double lowestC = 0.53; lowestC < 10; lowestC += 0.61) {
                for (double wallC = 0.17; wallC < 10; wallC += 0.23) {
                    double[] temperatures = temperatures(lowestC, wallC);
                    PathEvaluation e = at(path, temperatures);
                    for (int j = 0; j < temperatures.length; j++) {
                        double[] up = temperatures.clone();
                        up[j] += step;
                        double[] down = temperatures.clone();
                        down[j] -= step;
                        double[] above = flows(path, up);
                        double[] below = flows(path, down);
                        for (int a = 0; a < above.length; a++) {
                            assertThat(e.derivativeOf(a, j))
                                    .as("flow %s by %s, slices %s °C, wall %s °C", a, j, lowestC, wallC)
                                    .isCloseTo((above[a] - below[a]) / (2 * step), within(2e-3 * coefficient * SIDE));
                        }
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"water", "wine"})
    void whatAFilmCarriesHasNoJumpWhereTheWallBeginsToWorkAgainstIt(String drink) {
        // The two ends of the column cooled by 3 K, the wall beside the slices between them passes from colder to
        // warmer.
        Path path = film(drink.equals("water") ? Water.liquid() : EthanolWater.ofMassFraction(0.10049), 300);
        double step = 1e-4;
        double[] last = null;
        double carried = 0;
        for (double by = -0.1; by < 0.1; by += step) {
            double[] temperatures = new double[2 * SLICES];
            for (int i = 0; i < SLICES; i++) {
                temperatures[i] = ZERO + 15 + 0.5 * i;
                boolean end = i == 0 || i == SLICES - 1;
                temperatures[SLICES + i] = temperatures[i] + (end ? -3 : by);
            }
            double[] flows = flows(path, temperatures);
            for (int a = 0; last != null && a < flows.length; a++) {
                // A film that carries a few watts gives them back over the band of 0.02 K.
                assertThat(Math.abs(flows[a] - last[a]))
                        .as("flow %s, wall %s K warmer", a, by)
                        .isLessThan(0.02);
            }
            last = flows;
            carried = Math.max(carried, flows[SLICES + 1]);
        }
        assertThat(carried).isGreaterThan(0.1);
    }

    @ParameterizedTest
    @CsvSource({"4.5, 9", "9, 4.5", "0.5, 3", "3, 0.5", "20, 12", "5, 5.01"})
    void onOneSideOfTheDensestTheDifferenceOfDensityDrives(double coreC, double surfaceC) {
        FilmFit water = FilmFit.of(Water.liquid());
        WallBuoyancy buoyancy = new WallBuoyancy(water.density(), DENSEST_WATER_K);
        double excess = Water.liquid().density(ZERO + surfaceC) / Water.liquid().density(ZERO + coreC) - 1;
        buoyancy.evaluateDrive(ZERO + coreC, ZERO + surfaceC);
        assertThat(buoyancy.drive).isCloseTo(Math.abs(excess), within(1e-9));
        buoyancy.evaluateDirection(ZERO + coreC, ZERO + surfaceC);
        assertThat(buoyancy.downPart).isCloseTo(excess > 2e-6 ? 1 : excess < -2e-6 ? 0 : 0.5, within(0.5));
        assertThat(Math.abs(excess) < 2e-6 || buoyancy.downPart == (excess > 0 ? 1 : 0))
                .isTrue();
    }

    /** Over the drive that the difference from the densest to the wall, all of it, would have: R = 0 and R = 1 give 1. */
    private static double driveOfRatio(double r) {
        WallBuoyancy buoyancy = new WallBuoyancy(PARABOLIC, 277);
        double difference = 4;
        buoyancy.evaluateDrive(277 + r * difference, 277 - (1 - r) * difference);
        return buoyancy.drive / (8e-6 * difference * difference);
    }

    @Test
    void coefficientFallsToAMinimumBetweenTheSides() {
        // By hand from R² and (1 − R)²: u up to R = 1/2; u (1 + (a − 1)/4), a = 49/9, at R = 3/10.
        assertThat(driveOfRatio(1)).isCloseTo(1, within(1e-3));
        assertThat(driveOfRatio(0)).isCloseTo(1, within(1e-3));
        assertThat(driveOfRatio(0.7)).isCloseTo(0.49, within(1e-3));
        assertThat(driveOfRatio(0.5)).isCloseTo(0.25, within(1e-3));
        assertThat(driveOfRatio(0.3)).isCloseTo(0.19, within(1e-3));
        double least = 1;
        double leastAt = 0;
        for (double r = 0; r <= 1; r += 0.005) {
            if (driveOfRatio(r) < least) {
                least = driveOfRatio(r);
                leastAt = r;
            }
        }
        assertThat(Math.pow(least, 0.25)).isCloseTo(0.64, within(0.01));
        assertThat(leastAt).isCloseTo(0.35, within(0.03));
    }

    @Test
    void driveNeverFallsAsTheSurfaceDrawsAway() {
        WallBuoyancy buoyancy = new WallBuoyancy(FilmFit.of(Water.liquid()).density(), DENSEST_WATER_K);
        for (double core : new double[] {0.5, 2, 3.9, 4.1, 5, 6, 8}) {
            double sign = core < 3.98 ? 1 : -1;
            double last = 0;
            for (double away = 0.01; core + sign * away > 0 && core + sign * away < 20; away += 0.01) {
                buoyancy.evaluateDrive(ZERO + core, ZERO + core + sign * away);
                assertThat(buoyancy.drive).as("%s °C, %s K away", core, away).isGreaterThanOrEqualTo(last - 1e-12);
                last = buoyancy.drive;
            }
        }
    }

    @Test
    void directionTurnsWhereThePublishedSolutionsEnd() {
        // Gebhart and Mollendorf (J. Fluid Mech. 89, 1978), Pr = 11.6: one direction down to R = 0.29, the other from
        // 0.15 on (from memory); R ≥ 1/2 has no reversal of buoyancy at all.
        WallBuoyancy buoyancy = new WallBuoyancy(PARABOLIC, 277);
        double[] ratios = {0.9, 0.5, 0.3, 0.15, 0.05};
        double[] down = {1, 1, 0.5, 0, 0};
        for (int i = 0; i < ratios.length; i++) {
            buoyancy.evaluateDirection(277 + 4 * ratios[i], 277 - 4 * (1 - ratios[i]));
            assertThat(buoyancy.downPart).as("R = %s", ratios[i]).isCloseTo(down[i], within(0.02));
        }
    }

    @Test
    void stillWaterInIceWaterRunsInAFewHundredSteps() {
        Prediction run = Layered.of(
                        Vessels.highShouldered750().filledWith(Beverage.water(), celsius(20)), VesselModel.axial(24))
                .expose(in(
                        IceWaterBath.in(Bucket.of(millimetres(250), millimetres(400)), Air.at(celsius(22)))
                                .ice(kilograms(4), millimetres(25), celsius(0))
                                .water(kilograms(7), celsius(5))
                                .build(),
                        Duration.ofHours(2)));
        assertThat(run.meanTemperatureK(7200)).isLessThan(ZERO + 3);
        assertThat(run.trajectory().stepsTried()).isLessThan(1500);
    }
}
