/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.Ledger;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Ice and water: what must be conserved, what must be monotone, and where the clear water stalls. */
class IceWaterBathTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(21));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static IceWaterBath bath(double iceKg, double waterKg, Agitation agitation) {
        return IceWaterBath.in(Bucket.of(millimetres(200), millimetres(420)), ROOM)
                .ice(kilograms(iceKg), millimetres(25), celsius(-5))
                .water(kilograms(waterKg), celsius(15))
                .agitation(agitation)
                .build();
    }

    private static ScenePrediction run(IceWaterBath bath, Duration horizon) {
        return Scene.builder()
                .gear("room", ROOM)
                .gear("bath", bath)
                .vessel("wine", BOTTLE, "room")
                .move("wine", Duration.ofMinutes(20), "bath")
                .build()
                .predict(horizon);
    }

    private static double clear(ScenePrediction run, int minutes) {
        return run.gearTemperaturesK("bath", Duration.ofMinutes(minutes)).getOrDefault("clear water", Double.NaN)
                - ZERO;
    }

    @Test
    void clearWaterUnderFloatingIceStallsAboveTheDensityMaximum() {
        // Water below the ice cannot sink once it is colder than the densest water at 4 °C.
        for (double ice : new double[] {1, 2, 4}) {
            ScenePrediction run = run(bath(ice, 5, Agitation.STILL), Duration.ofHours(2));
            assertThat(run.iceKg("bath", Duration.ofHours(2))).isPositive();
            assertThat(clear(run, 120)).isBetween(4.0, 8.5);
        }
    }

    @Test
    void stirringEndsTheStall() {
        ScenePrediction run = run(bath(4, 5, Agitation.stirred(metresPerSecond(0.1))), Duration.ofHours(2));
        assertThat(clear(run, 120)).isLessThan(0.5);
    }

    @Test
    void iceThroughTheWholeDepthKeepsTheBathNearZero() {
        ScenePrediction run = run(bath(6, 2.5, Agitation.STILL), Duration.ofHours(1));
        assertThat(run.gearTemperaturesK("bath", Duration.ofMinutes(50)).getOrDefault("water among ice", Double.NaN)
                        - ZERO)
                .isBetween(-0.1, 2.0);
    }

    @Test
    void moreIceNeverMakesTheWineWarmer() {
        double before = Double.MAX_VALUE;
        for (double ice : new double[] {0.5, 1, 2, 3, 4}) {
            ScenePrediction run = run(bath(ice, 4, Agitation.stirred(metresPerSecond(0.1))), Duration.ofHours(1));
            double wine = run.vessel("wine").meanTemperatureK(3600);
            assertThat(wine).isLessThan(before + 5e-3);
            before = wine;
        }
    }

    @Test
    void massIsConservedAndTheLedgerCloses() {
        for (Agitation agitation : List.of(Agitation.STILL, Agitation.stirred(metresPerSecond(0.2)))) {
            ScenePrediction run = run(bath(1.5, 4, agitation), Duration.ofHours(5));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            for (int minutes = 0; minutes <= 300; minutes += 60) {
                double total = run.gearMassKg("bath", Duration.ofMinutes(minutes));
                // Conserved by construction; a residue of ice below zero, smaller than the tolerance, is reported as
                // none.
                assertThat(total).isCloseTo(5.5, within(5e-5));
            }
        }
    }

    @Test
    void meltedIceTookTheHeatThatTheLedgerSays() {
        ScenePrediction run = run(bath(2, 4, Agitation.stirred(metresPerSecond(0.1))), Duration.ofHours(1));
        Ledger ledger = run.ledger();
        double melted = 2 - run.iceKg("bath", Duration.ofHours(1));
        // Own arithmetic: 333.4 kJ melt a kilogram; before that 2 kg of ice warm from −5 °C with about 2.08 kJ/(kg K).
        assertThat(ledger.heatInto("bath ice")).isCloseTo(melted * 333_430 + 2 * 2080 * 5, within(1500.0));
    }

    @Test
    void twoBottlesInOneBathAreSlowerThanOneAndAlike() {
        // Deep enough to cover either way, stirred so that only the heat they share tells them apart.
        IceWaterBath small = bath(0.5, 9, Agitation.stirred(metresPerSecond(0.1)));
        ScenePrediction two = Scene.builder()
                .gear("bath", small)
                .vessel("a", BOTTLE, "bath")
                .vessel("b", BOTTLE, "bath")
                .build()
                .predict(Duration.ofMinutes(40));
        ScenePrediction one = Scene.builder()
                .gear("bath", small)
                .vessel("a", BOTTLE, "bath")
                .build()
                .predict(Duration.ofMinutes(40));
        double a = two.vessel("a").meanTemperatureK(2400);
        assertThat(two.vessel("b").meanTemperatureK(2400)).isCloseTo(a, within(1e-9));
        assertThat(a).isGreaterThan(one.vessel("a").meanTemperatureK(2400) + 0.2);
    }

    /**
     * Bucket wall and open surface by hand, from a bath at 0 °C to a room of 21 °C. The wall of 2 W/(m² K) keeps its outside near
     * 17 °C; still air 4 K away has 0.59 Ra^(1/4) k/H on a plate of H = 0.19 m (McAdams, from memory), radiation 4 ε σ T³. The
     * surface: 8 to 12 W/(m² K) (common practice, no source).
     */
    @Test
    void heatThroughWallAndSurfaceByHand() {
        Bucket bucket = Bucket.of(millimetres(200), millimetres(420))
                .withWall(wattsPerSquareMetreKelvin(2))
                .withEmissivity(fraction(0.9));
        IceWaterBath ice = IceWaterBath.in(bucket, ROOM)
                .ice(kilograms(2), millimetres(25), celsius(0))
                .water(kilograms(4), celsius(0))
                .agitation(Agitation.stirred(metresPerSecond(0.3)))
                .build();
        ScenePrediction run = Scene.builder()
                .gear("bath", ice)
                .gear("room", ROOM)
                .vessel("wine", BOTTLE, "room")
                .build()
                .predict(Duration.ofMinutes(10));
        double area = Math.PI / 4 * 0.04;
        double depth = 6e-3 / area;
        double wall = 0;
        double surface = 0;
        for (LedgerEntry entry : run.ledger().entries()) {
            double into = (entry.from().startsWith("bath room") ? 1 : entry.to().startsWith("bath room") ? -1 : 0)
                    * entry.heatJ();
            wall += entry.path().startsWith("bath side wall") ? into : 0;
            surface += entry.path().startsWith("bath surface") ? into : 0;
        }
        double rayleigh = 9.81 / 292 * 4 * Math.pow(depth, 3) / (1.5e-5 * 2.1e-5);
        double outside = 0.59 * Math.pow(rayleigh, 0.25) * 0.0256 / depth + 4 * 0.9 * 5.67e-8 * Math.pow(292, 3);
        double byHand = 600 * Math.PI * 0.2 * depth * 21 / (1 / 2.0 + 1 / outside);
        assertThat(wall).isCloseTo(byHand, within(0.03 * byHand));
        assertThat(surface).isBetween(600 * area * 21 * 8.0, 600 * area * 21 * 12.0);
    }

    @Test
    void anEmptyBathGoesOnMelting() {
        ScenePrediction run = Scene.builder()
                .gear("bath", bath(1, 4, Agitation.STILL))
                .gear("room", ROOM)
                .vessel("wine", BOTTLE, "room")
                .build()
                .predict(Duration.ofHours(24));
        assertThat(run.iceGone("bath")).isPresent();
        assertThat(run.iceKg("bath", Duration.ofHours(24))).isCloseTo(0, within(1e-6));
    }

    @Test
    void gearPreparedLaterWaitsUntilThen() {
        ScenePrediction run = Scene.builder()
                .gear("room", ROOM)
                .gear("bath", bath(1, 4, Agitation.STILL), Duration.ofHours(1))
                .vessel("wine", BOTTLE, "room")
                .build()
                .predict(Duration.ofHours(2));
        assertThat(run.iceKg("bath", Duration.ofMinutes(59))).isCloseTo(1, within(1e-12));
        assertThat(run.iceKg("bath", Duration.ofMinutes(90))).isLessThan(0.95);
    }

    @Test
    void geometryHasItsLimitsAndSlopes() {
        PackGeometry geometry = new PackGeometry(0.3, 0.025, 0.57);
        double reachingFloor = 1000 * 0.57 * 0.025 * 0.3;
        assertThat(geometry.packPart().at(0)).isCloseTo(0, within(1e-12));
        assertThat(geometry.packPart().at(20 * reachingFloor)).isCloseTo(1, within(1e-3));
        assertThat(geometry.wetPart().at(0.01 * reachingFloor)).isCloseTo(1, within(0.01));
        assertThat(geometry.wetPart().at(2 * reachingFloor)).isCloseTo(0.5, within(0.01));
        PackWater water = new PackWater(6, 0.75);
        assertThat(water.at(0)).isCloseTo(0.06, within(1e-9));
        for (SmoothFunction f : List.of(
                geometry.packPart(),
                geometry.clearPart(),
                geometry.packPartOf(0, 0.2),
                geometry.clearPartOf(0, 0.2),
                geometry.packPartOfSurface(),
                geometry.clearPartOfSurface(),
                geometry.wetPart())) {
            for (double m = 0.1; m < 8; m += 0.37) {
                double numeric = (f.at(m + 1e-6) - f.at(m - 1e-6)) / 2e-6;
                assertThat(f.slope(m)).isCloseTo(numeric, within(1e-5));
            }
        }
        for (double m = 0.1; m < 5; m += 0.37) {
            assertThat(water.slope(m)).isCloseTo((water.at(m + 1e-6) - water.at(m - 1e-6)) / 2e-6, within(1e-5));
            assertThat(water.curvature(m))
                    .isCloseTo((water.slope(m + 1e-5) - water.slope(m - 1e-5)) / 2e-5, within(1e-4));
        }
    }

    @Test
    void everyPathOfABathStatesTheDerivativesOfItsFlows() {
        Medium medium = bath(1.5, 4, Agitation.stirred(metresPerSecond(0.05))).open("bath", 0);
        Occupant occupant = new Occupant("wine", BOTTLE.vessel());
        Random random = new Random(20260101);
        for (Path path : medium.paths(List.of(occupant))) {
            for (int i = 0; i < 20; i++) {
                double[] temperatures = new double[path.ends().size()];
                for (int e = 0; e < temperatures.length; e++) {
                    boolean ice = path.ends().get(e).name().equals("bath ice");
                    temperatures[e] = ice ? ZERO - 4 * random.nextDouble() : ZERO + 0.5 + 20 * random.nextDouble();
                }
                double[] amounts = amounts(path, random);
                assertDerivatives(path, temperatures, amounts);
            }
        }
    }

    private static double[] amounts(Path path, Random random) {
        return path.ends().stream()
                .flatMapToDouble(end -> switch (end.name()) {
                    case "bath ice" ->
                        java.util.stream.DoubleStream.of(
                                0.1 + 1.3 * random.nextDouble(),
                                0.004 + 0.02 * random.nextDouble(),
                                50 + 100 * random.nextDouble());
                    case "bath clear water", "bath water among ice" ->
                        java.util.stream.DoubleStream.of(0.5 + random.nextDouble());
                    default -> java.util.stream.DoubleStream.empty();
                })
                .toArray();
    }

    private static void assertDerivatives(Path path, double[] temperatures, double[] amounts) {
        int inputs = temperatures.length + amounts.length;
        PathEvaluation at = new PathEvaluation(path);
        at.evaluate(path, 0, temperatures, amounts);
        for (int account = 0; account < path.accounts().size(); account++) {
            for (int j = 0; j < inputs; j++) {
                double step = j < temperatures.length ? 1e-4 : 1e-6 * Math.max(amounts[j - temperatures.length], 1e-3);
                double numeric = (flow(path, temperatures, amounts, account, j, step)
                                - flow(path, temperatures, amounts, account, j, -step))
                        / (2 * step);
                double stated = at.derivativeOf(account, j);
                double scale = Math.abs(numeric) + Math.abs(at.flowOf(account)) * 1e-3 + 1e-9;
                assertThat(stated)
                        .as(path.name() + " account " + account + " input " + j)
                        .isCloseTo(numeric, within(5e-3 * scale));
            }
        }
    }

    private static double flow(Path path, double[] temperatures, double[] amounts, int account, int j, double step) {
        double[] t = temperatures.clone();
        double[] a = amounts.clone();
        if (j < t.length) {
            t[j] += step;
        } else {
            a[j - t.length] += step;
        }
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, t, a);
        return e.flowOf(account);
    }

    @Test
    void waterHandedDownIsTheDensestBetweenPackAndClearWater() {
        Path melting = bath(1.5, 4, Agitation.STILL).open("bath", 0).paths(List.of()).stream()
                .filter(path -> path.name().endsWith("melting"))
                .findFirst()
                .orElseThrow();
        Water water = Water.liquid();
        // Colder than the density maximum it is light and stays under the ice until it is warmed.
        double[][] packClearDown = {{1, 6, 3.98}, {1, 3, 3}, {5, 9, 5}};
        for (double[] row : packClearDown) {
            PathEvaluation e = new PathEvaluation(melting);
            e.evaluate(melting, 0, new double[] {ZERO + row[0], ZERO, ZERO + row[1]}, 1.0, 1.2, 0.02, 100, 2.5);
            assertThat(e.flowOf(4) / e.flowOf(3)).isCloseTo(water.specificEnthalpy(ZERO + row[2]), within(50.0));
        }
    }

    @Test
    void layersExchangeOnlyWhatIsUnstable() {
        LayerExchange exchange = new LayerExchange(0.02, FilmFit.of(Water.liquid()), ZERO + 3.98);
        HeatFlow out = new HeatFlow();
        exchange.evaluate(ZERO + 3, ZERO + 0.5, out);
        assertThat(out.watts).isZero();
        exchange.evaluate(ZERO + 6, ZERO + 12, out);
        assertThat(out.watts).isZero();
        exchange.evaluate(ZERO + 8, ZERO, out);
        // By hand: q = 0.15 k (g Δρ/ρ /(ν α))^(1/3) (8 − 3.98) with the water's own properties at 8 °C.
        Water water = Water.liquid();
        double t = ZERO + 8;
        double excess = water.density(ZERO + 3.98) / water.density(t) - 1;
        double byHand = 0.02
                * 0.15
                * water.thermalConductivity(t)
                * Math.cbrt(9.80665 * excess / (water.kinematicViscosity(t) * water.thermalDiffusivity(t)))
                * 4.02;
        assertThat(out.watts).isCloseTo(byHand, within(1e-3 * byHand));
    }

    @Test
    void badBathsAreRefused() {
        Bucket bucket = Bucket.of(millimetres(200), millimetres(220));
        assertThatThrownBy(() -> IceWaterBath.of(bucket, kilograms(20), kilograms(3), ROOM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("volume of ice and water");
        assertThatThrownBy(() -> IceWaterBath.of(bucket, kilograms(2), kilograms(0.1), ROOM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("bath water");
        assertThatThrownBy(() -> IceWaterBath.of(bucket, kilograms(-1), kilograms(1), ROOM))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceWaterBath.in(bucket, ROOM).ice(kilograms(1), millimetres(1), celsius(-5)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceWaterBath.in(bucket, ROOM).ice(kilograms(1), millimetres(25), celsius(5)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceWaterBath.in(bucket, ROOM).water(kilograms(1), celsius(-1)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceWaterBath.in(bucket, ROOM).solidFraction(1.2))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> IceWaterBath.in(bucket, ROOM).build()).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> IceWaterBath.in(Bucket.of(millimetres(100), millimetres(400)), ROOM)
                        .ice(kilograms(1), millimetres(200), celsius(-5))
                        .water(kilograms(1), celsius(10))
                        .build())
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Agitation.stirred(metresPerSecond(5))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Bucket.of(millimetres(10), millimetres(200))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Air.at(celsius(-300))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Air.varying(Map.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Refrigerator.at(celsius(25))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> WaterBath.of(bucket, litres(50), celsius(20), ROOM))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> WaterBath.of(bucket, litres(2), celsius(95), ROOM))
                .isInstanceOf(OutOfRangeException.class);
    }
}
