/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.assertj.core.data.Percentage;
import org.beveragethermal.core.layered.SliceFilm;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Explanations of slices and shells, heat accounts and arrays for plotting, each against a computation of its own. */
class ExplanationOfPartsTest {

    private static final double ZERO = 273.15;
    private static final double GRAVITY = 9.80665;
    private static final Beverage WINE = Beverage.wine(percentByVolume(12.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(22));
    private static final WaterBath BATH =
            WaterBath.of(Bucket.of(millimetres(300), millimetres(350)), litres(20), celsius(6), Air.at(celsius(6)));
    private static final Prediction AXIAL = Layered.axial(BOTTLE).expose(in(BATH, Duration.ofMinutes(40)));
    private static final Duration MOMENT = Duration.ofMinutes(10);

    @Test
    void filmsOfSlicesByHand() {
        // Heat times resistance is the difference from slice to wall surface, and again from there to the wall's
        // middle;
        // Nusselt and Rayleigh number by their definitions, from the liquid's own properties.
        double timeS = 600;
        double[] profile = AXIAL.profileK(timeS);
        double bottom = BOTTLE.vessel().profile().baseThicknessM();
        double height = BOTTLE.liquidHeightM() - bottom;
        List<Explanation.Band> bands = AXIAL.explainAt(MOMENT).bands();
        assertThat(bands).hasSize(profile.length);
        for (int i = 0; i < bands.size(); i++) {
            SliceFilm film = bands.get(i).films().get(0);
            WallBand band = AXIAL.bands().get(i);
            double wall = AXIAL.wallTemperatureK(i, timeS);
            double area = BOTTLE.vessel().profile().innerSideAreaM2(Math.max(bottom, band.lowM()), band.highM());
            assertThat(film.direction()).isEqualTo(SliceFilm.Direction.DOWN);
            assertThat(film.heatW() * film.kelvinPerWatt()).isCloseTo(profile[i] - film.surfaceK(), within(1e-9));
            assertThat(film.heatW() * film.wallKelvinPerWatt()).isCloseTo(film.surfaceK() - wall, within(1e-9));
            Resistance first = bands.get(i).inSeries().get(0);
            assertThat(first.kelvinPerWatt() * first.coefficient() * area).isCloseTo(1, within(1e-6));
            double filmK = 0.5 * (profile[i] + film.surfaceK());
            assertThat(first.nusselt())
                    .isCloseTo(
                            first.coefficient() * height / WINE.thermalConductivity(filmK),
                            Percentage.withPercentage(0.01));
            double excess = WINE.density(film.surfaceK()) / WINE.density(profile[i]) - 1;
            double rayleigh = GRAVITY
                    * excess
                    * Math.pow(height, 3)
                    / (WINE.kinematicViscosity(filmK) * WINE.thermalDiffusivity(filmK));
            assertThat(first.rayleigh()).isCloseTo(rayleigh, Percentage.withPercentage(0.1));
            assertThat(first.prandtl()).isCloseTo(WINE.prandtlNumber(filmK), Percentage.withPercentage(0.01));
            assertThat(film.thicknessM())
                    .isCloseTo(WINE.thermalConductivity(filmK) / first.coefficient(), Percentage.withPercentage(0.01));
        }
        assertThat(AXIAL.explainAt(MOMENT).text()).contains("runs down").contains("Squire and Eckert");
    }

    @Test
    void onItsMouthTheFilmsStillPassWhatTheDrinkLoses() {
        // Several slices may lie beside a band then, and bands beside the gas hold no liquid.
        Prediction turned = Scene.builder()
                .gear("bath", BATH)
                .vessel("bottle", BOTTLE, "bath", VesselModel.axial(), Posture.INVERTED)
                .build()
                .predict(Duration.ofMinutes(20))
                .vessel("bottle");
        double films = 0;
        for (Explanation.Band band : turned.explainAt(MOMENT).bands()) {
            assertThat(band.films()).isNotEmpty();
            assertThat(band.inSeries()).allMatch(part -> part.kelvinPerWatt() > 0);
            films += band.films().stream().mapToDouble(SliceFilm::heatW).sum();
        }
        double fall = (turned.meanTemperatureK(595) - turned.meanTemperatureK(605)) / 10;
        double lost = BOTTLE.liquidMassKg() * WINE.specificHeatCapacity(turned.meanTemperatureK(600)) * fall;
        // Closure, base and gas take a little.
        assertThat(films).isCloseTo(lost, Percentage.withPercentage(6));
    }

    @Test
    void biotNumberIsTheRatioOfResistances() {
        Explanation lumped = Lumped.of(BOTTLE)
                .expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(2)))
                .explainAt(Duration.ofHours(1));
        Explanation.Band band = lumped.bands().get(0);
        double inside = band.inSeries().get(0).kelvinPerWatt();
        double rest =
                band.inSeries().get(1).kelvinPerWatt() + band.inSeries().get(2).kelvinPerWatt();
        assertThat(band.biotNumber()).isCloseTo(inside / rest, within(1e-12));
        assertThat(lumped.biotNumber()).isCloseTo(inside / rest, within(1e-12));
        assertThat(lumped.text()).contains("Biot number").contains("Since the start the drink received");
    }

    @Test
    void withoutDriveNothingIsNonsense() {
        Explanation even = Layered.axial(Vessels.highShouldered750().filledWith(WINE, celsius(6)))
                .expose(in(Refrigerator.at(celsius(6)), Duration.ofMinutes(10)))
                .explainAt(Duration.ZERO);
        for (Explanation.Band band : even.bands()) {
            assertThat(band.films().get(0).direction()).isEqualTo(SliceFilm.Direction.NONE);
            assertThat(band.inSeries()).allMatch(part -> part.kelvinPerWatt() > 0 && part.kelvinPerWatt() < 1e6);
        }
        assertThat(even.text())
                .contains("carries no heat")
                .doesNotContain("NaN")
                .doesNotContain("Infinity");
        assertThat(even.timeConstantS()).isPositive().isFinite();
    }

    @Test
    void shellsAtRestLateAreTheFirstEigenmode() {
        // Carslaw and Jaeger (from memory): a cylinder cooled evenly has its mean q'/(8 π k) above its surface; one
        // whose
        // surface is held cold decays with 2.405², its mean q'/(2.405² π k) above it. A bottle lies between.
        Prediction radial = Layered.radial(BOTTLE).expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(6)));
        Explanation.Band band = radial.explainAt(Duration.ofHours(5)).bands().get(0);
        Resistance inside = band.inSeries().get(0);
        double kL = WINE.thermalConductivity(BOTTLE.temperatureK()) * BOTTLE.liquidHeightM();
        assertThat(inside.name()).isEqualTo("conduction inside");
        assertThat(inside.kelvinPerWatt()).isBetween(0.99 / (8 * Math.PI * kL), 1.01 / (2.405 * 2.405 * Math.PI * kL));
        assertThat(band.biotNumber()).isBetween(0.05, 2.0);
        // At the start nothing flows yet: the value for even cooling.
        assertThat(radial.explainAt(Duration.ZERO)
                        .bands()
                        .get(0)
                        .inSeries()
                        .get(0)
                        .kelvinPerWatt())
                .isCloseTo(1 / (8 * Math.PI * kL), Percentage.withPercentage(0.1));
    }

    @Test
    void theAccountClosesWithTheEnthalpyOfTheDrink() {
        HeatAccount account = AXIAL.explainAt(MOMENT).account();
        assertThat(account.closure()).isLessThan(1e-6);
        assertThat(account.intoDrink()).isNotEmpty();
        double fall = AXIAL.meanTemperatureK(0) - AXIAL.meanTemperatureK(600);
        double heat = BOTTLE.liquidMassKg() * WINE.specificHeatCapacity(ZERO + 17) * fall;
        assertThat(account.intoDrinkJ()).isCloseTo(-heat, Percentage.withPercentage(1));
        assertThat(account.intoWallJ()).isLessThan(account.intoDrinkJ());
        assertThat(HeatAccount.none().closure()).isZero();
    }

    @Test
    void sunlightIsHeatAndNotAResistance() {
        // Steady: drink and wall where 2 W/K to a room of 20 °C carry the 6 W away: 23 °C.
        Node drink = Node.sensible("drink", 1000, ZERO + 23);
        Node wall = Node.sensible("wall", 100, ZERO + 23);
        Boundary room = Boundary.constant("room", ZERO + 20);
        Boundary sun = Boundary.constant("sun", ZERO + 20);
        Network network = Network.of(
                List.of(drink, wall),
                List.of(
                        JunctionPath.of(
                                "wall inside",
                                Link.of(drink, "conduction", HeatLaw.conductance(10)),
                                Link.of(wall, "conduction", HeatLaw.conductance(1000))),
                        JunctionPath.of(
                                "wall outside, air",
                                Link.of(wall, "conduction", HeatLaw.conductance(1000)),
                                Link.of(room, "convection", HeatLaw.conductance(2)),
                                Link.of(sun, "sunlight", HeatLaw.of((fromK, toK) -> 6.0)))));
        Prediction prediction = Prediction.of(
                NetworkSolver.standard().solve(network, 3600),
                Contents.of(drink),
                1100,
                List.of(new WallBand("wall", wall, "wall inside", "wall outside", 0, 0.3, -1)),
                List.of());
        Explanation explanation = prediction.explainAt(Duration.ofMinutes(30));
        Explanation.Band band = explanation.bands().get(0);
        assertThat(band.heats()).containsExactly(new HeatInput("sun, sunlight", 6));
        assertThat(band.outside()).hasSize(1);
        assertThat(band.outside().get(0).kelvinPerWatt()).isCloseTo(0.5, within(1e-9));
        assertThat(band.mediumK()).isCloseTo(ZERO + 20, within(1e-9));
        assertThat(explanation.text()).contains("sun, sunlight brings 6.00 W, whatever the temperatures");
        assertThat(prediction.advice()).isEmpty();
    }

    @Test
    void arraysForPlotting() {
        double[] times = {0, 60, 1200, 2400};
        double[][] profiles = AXIAL.profilesK(times);
        int top = AXIAL.contents().nodes().size() - 1;
        for (int i = 0; i < times.length; i++) {
            assertThat(profiles[i]).containsExactly(AXIAL.profileK(times[i]));
            assertThat(AXIAL.topTemperaturesK(times)[i]).isEqualTo(profiles[i][top]);
            assertThat(AXIAL.bottomTemperaturesK(times)[i]).isEqualTo(profiles[i][0]);
            assertThat(AXIAL.wallTemperaturesK(2, times)[i]).isEqualTo(AXIAL.wallTemperatureK(2, times[i]));
            assertThat(AXIAL.temperaturesK(AXIAL.contents().nodes().get(3), times)[i])
                    .isEqualTo(profiles[i][3]);
        }
        // Warm drink rises.
        assertThat(AXIAL.topTemperaturesK(600)[0]).isGreaterThan(AXIAL.bottomTemperaturesK(600)[0] + 1);
        assertThat(AXIAL.topTemperatureAt(MOMENT).getValue().doubleValue() + ZERO)
                .isCloseTo(AXIAL.topTemperaturesK(600)[0], within(1e-9));
        assertThat(AXIAL.bottomTemperatureAt(MOMENT).getValue().doubleValue() + ZERO)
                .isCloseTo(AXIAL.bottomTemperaturesK(600)[0], within(1e-9));
        for (double outside : new double[] {-1, 2401, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> AXIAL.profilesK(0, outside)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> AXIAL.topTemperaturesK(outside)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> AXIAL.bottomTemperaturesK(outside)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> AXIAL.wallTemperaturesK(0, outside)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> AXIAL.meanTemperaturesK(outside)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> AXIAL.topTemperatureAt(Duration.ofHours(1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> AXIAL.bottomTemperatureAt(Duration.ofSeconds(-1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void eightThreadsGetTheSameBits() throws Exception {
        String alone = answers();
        CountDownLatch start = new CountDownLatch(1);
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Future<String>> all = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                all.add(threads.submit(() -> {
                    start.await();
                    return answers();
                }));
            }
            start.countDown();
            for (Future<String> one : all) {
                assertThat(one.get()).isEqualTo(alone);
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** Every digit of many answers; Double.toString tells any two doubles apart. */
    private static String answers() {
        StringBuilder text = new StringBuilder();
        for (double timeS = 0; timeS <= 2400; timeS += 37) {
            text.append(Arrays.toString(AXIAL.profileK(timeS)))
                    .append(AXIAL.wallTemperatureK(1, timeS))
                    .append(AXIAL.meanTemperatureK(timeS));
        }
        return text.append(AXIAL.timeTo(celsius(12)))
                .append(AXIAL.explainAt(MOMENT))
                .append(AXIAL.ledger())
                .toString();
    }
}
