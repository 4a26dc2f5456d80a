/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.store.BrineStore;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.solid.Ice;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Salted ice: balances, the liquidus at which it ends, and its two limits. */
class SaltedIceTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(21));
    private static final Bucket BUCKET = Bucket.of(millimetres(200), millimetres(420));
    private static final Agitation STIRRED = Agitation.stirred(metresPerSecond(0.1));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static SaltedIce.Builder bath(double iceKg, double waterKg, double saltKg) {
        return SaltedIce.in(BUCKET, ROOM)
                .ice(kilograms(iceKg), millimetres(25), celsius(-5))
                .water(kilograms(waterKg), celsius(10))
                .salt(kilograms(saltKg));
    }

    private static ScenePrediction run(Surroundings gear, Duration horizon) {
        return Scene.builder()
                .gear("bath", gear)
                .vessel("wine", BOTTLE, "bath")
                .build()
                .predict(horizon);
    }

    private static double brineK(ScenePrediction run, double minutes) {
        return run.gearTemperaturesK("bath", seconds(60 * minutes)).getOrDefault("brine", Double.NaN);
    }

    private static Duration seconds(double s) {
        return Duration.ofMillis(Math.round(1000 * s));
    }

    private static double strength(ScenePrediction run, Duration time) {
        double salt = run.dissolvedSaltKg("bath", time);
        double water = run.gearMassKg("bath", time) - run.iceKg("bath", time);
        return salt / (salt + water);
    }

    @Test
    void waterAndSaltAreConservedAndTheLedgerCloses() {
        for (Agitation agitation : List.of(Agitation.STILL, STIRRED)) {
            ScenePrediction run = run(bath(2, 1.5, 0.5).agitation(agitation).build(), Duration.ofHours(8));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            assertThat(run.iceGone("bath")).isPresent();
            for (int minutes = 0; minutes <= 480; minutes += 40) {
                Duration time = Duration.ofMinutes(minutes);
                assertThat(run.gearMassKg("bath", time)).isCloseTo(3.5, within(1e-4));
                assertThat(run.dissolvedSaltKg("bath", time) + run.undissolvedSaltKg("bath", time))
                        .isCloseTo(0.5, within(1e-6));
                assertThat(brineK(run, minutes)).isGreaterThan(Brine.EUTECTIC_K);
            }
        }
    }

    @Test
    void saltMakesTheWineColderThanIceAndWaterCan() {
        ScenePrediction salted = run(bath(3, 2, 0.6).agitation(STIRRED).build(), Duration.ofMinutes(20));
        ScenePrediction plain = run(
                bath(3, 2, 0.6)
                        .agitation(STIRRED)
                        .effect(SaltedIce.SaltEffect.INEFFECTIVE)
                        .build(),
                Duration.ofMinutes(20));
        double mixed = salted.vessel("wine").meanTemperatureK(1200);
        double ineffective = plain.vessel("wine").meanTemperatureK(1200);
        System.out.printf(
                java.util.Locale.ROOT,
                "750 mL, 3 kg ice, 2 kg water, 0.6 kg salt, stirred, 20 min: mixed %.1f °C (brine %.1f °C), ineffective %.1f °C%n",
                mixed - ZERO,
                brineK(salted, 20) - ZERO,
                ineffective - ZERO);
        assertThat(mixed).isLessThan(ineffective - 1);
        assertThat(brineK(salted, 20)).isLessThan(ZERO - 3);
    }

    /** Limit: ineffective salt is the bath of ice and water, exactly. */
    @Test
    void ineffectiveSaltIsTheBathOfIceAndWater() {
        ScenePrediction ineffective =
                run(bath(3, 2, 0.6).build().with(SaltedIce.SaltEffect.INEFFECTIVE), Duration.ofMinutes(30));
        IceWaterBath plain = IceWaterBath.in(BUCKET, ROOM)
                .ice(kilograms(3), millimetres(25), celsius(-5))
                .water(kilograms(2), celsius(10))
                .build();
        assertThat(ineffective.vessel("wine").meanTemperatureK(1800))
                .isEqualTo(run(plain, Duration.ofMinutes(30)).vessel("wine").meanTemperatureK(1800));
        assertThat(ineffective.vessel("wine").notes()).anyMatch(note -> note.contains("ineffective salt"));
    }

    /**
     * Limit: without salt and stirred, one mixed node is what the two zones of the bath of ice and water become. What remains are the
     * properties of brine without salt, ice that touches above the water, and the order in which cold ice warms.
     */
    @Test
    void withoutSaltItIsNearlyTheStirredBathOfIceAndWater() {
        ScenePrediction none = run(bath(2, 4, 0).agitation(STIRRED).build(), Duration.ofMinutes(60));
        ScenePrediction plain = run(
                IceWaterBath.in(BUCKET, ROOM)
                        .ice(kilograms(2), millimetres(25), celsius(-5))
                        .water(kilograms(4), celsius(10))
                        .agitation(STIRRED)
                        .build(),
                Duration.ofMinutes(60));
        double largest = 0;
        for (int s = 60; s <= 3600; s += 60) {
            double difference = none.vessel("wine").meanTemperatureK(s)
                    - plain.vessel("wine").meanTemperatureK(s);
            largest = Math.max(largest, Math.abs(difference));
        }
        double ice = none.iceKg("bath", Duration.ofHours(1)) - plain.iceKg("bath", Duration.ofHours(1));
        System.out.printf(
                java.util.Locale.ROOT,
                "salted ice without salt against ice and water, stirred, 1 h: wine within %.3f K, ice %+.4f kg%n",
                largest,
                ice);
        assertThat(largest).isLessThan(0.05);
        assertThat(ice).isCloseTo(0, within(0.05));
        // Less and less salt leads there.
        double little = run(bath(2, 4, 1e-4).agitation(STIRRED).build(), Duration.ofMinutes(60))
                .vessel("wine")
                .meanTemperatureK(3600);
        assertThat(little).isCloseTo(none.vessel("wine").meanTemperatureK(3600), within(0.02));
    }

    /** A bath left alone in cold, insulated surroundings ends at the freezing point of its brine. */
    @ParameterizedTest
    @CsvSource({"0.35, 0.8", "0.15, 1.8", "0.25, 1.0"})
    void aBathLeftAloneEndsAtTheLiquidusOfItsBrine(double saltKg, double waterKg) {
        Air cold = Air.at(celsius(-12));
        SaltedIce bath = SaltedIce.in(BUCKET.withWall(wattsPerSquareMetreKelvin(0.05)), cold)
                .ice(kilograms(4), millimetres(10), celsius(-2))
                .water(kilograms(waterKg), celsius(2))
                .salt(kilograms(saltKg))
                .agitation(STIRRED)
                .build();
        Duration end = Duration.ofHours(3);
        ScenePrediction run = Scene.builder()
                .gear("bath", bath)
                .gear("room", cold)
                .vessel("wine", BOTTLE, "room")
                .build()
                .predict(end);
        double w = strength(run, end);
        OutsideChecks.published(
                        "salted-ice-liquidus-" + Math.round(1000 * saltKg),
                        "Lange's Handbook of Chemistry, 15th ed., Table 5.13, sodium chloride brines, freezing points")
                .what("temperature of " + waterKg + " kg water, 4 kg ice and " + saltKg
                        + " kg salt after 3 h, at the strength" + " of their brine")
                .unit("°C")
                .expected(lange(w))
                .within(0.3)
                .check(brineK(run, 180) - ZERO);
        // The same by the balance of Brine alone, with the heat that came from the room.
        double heat = run.ledger().heatInto("bath brine") + run.ledger().heatInto("bath ice");
        double before = waterKg * BRINE_FREE.specificHeatCapacity(ZERO) * 2
                + saltKg * 864 * 2
                + 4 * Ice.specificEnthalpy(ZERO - 2);
        double balance = balanceK(before + heat, 4 + waterKg, saltKg);
        assertThat(brineK(run, 180)).isCloseTo(balance, within(0.2));
    }

    private static final Brine BRINE_FREE = Brine.ofMassFraction(0);

    /** Lange's table, the cubic through the four rows around. */
    private static double lange(double w) {
        double[] fractions = {
            0.04, 0.05, 0.06, 0.07, 0.08, 0.09, 0.15, 0.16, 0.17, 0.18, 0.19, 0.20, 0.21, 0.22, 0.23, 0.233
        };
        double[] celsius = {
            -2.35, -2.97, -3.63, -4.32, -5.03, -5.77, -10.88, -11.9, -12.93, -14.03, -15.21, -16.46, -17.78, -19.19,
            -20.69, -21.1
        };
        assertThat(w).isBetween(fractions[1], fractions[14]);
        int first = 0;
        while (fractions[first + 2] < w) {
            first++;
        }
        double sum = 0;
        for (int i = first; i < first + 4; i++) {
            double term = celsius[i];
            for (int k = first; k < first + 4; k++) {
                term *= k == i ? 1 : (w - fractions[k]) / (fractions[i] - fractions[k]);
            }
            sum += term;
        }
        return sum;
    }

    /** Temperature at which ice, brine and salt that hold an enthalpy are in balance, all salt dissolved. */
    private static double balanceK(double enthalpyJ, double waterKg, double saltKg) {
        double low = Brine.EUTECTIC_K;
        double high = ZERO - 0.1;
        for (int i = 0; i < 60; i++) {
            double t = 0.5 * (low + high);
            Brine brine = Brine.inBalanceWithIceAt(t);
            double liquid = saltKg / brine.massFraction();
            double ice = waterKg + saltKg - liquid;
            double holds = liquid * brine.enthalpyOverWaterAndSalt(t) + ice * Ice.specificEnthalpy(t);
            if (holds > enthalpyJ) {
                high = t;
            } else {
                low = t;
            }
        }
        return 0.5 * (low + high);
    }

    @Test
    void theLowestTemperatureIsTheEutectic() {
        BrineInterface surface = new BrineInterface();
        OutsideChecks.published("salted-ice-eutectic", "Lange's Handbook of Chemistry, 15th ed., Table 5.13")
                .what("lowest liquidus at the ice, 23.3 % salt by mass")
                .unit("°C")
                .expected(-21.1)
                .within(0.2)
                .check(surface.liquidusK(0.233) - ZERO);
        assertThat(surface.liquidusK(0.3)).isEqualTo(Brine.EUTECTIC_K);
        assertThat(surface.liquidusK(0)).isCloseTo(ZERO, within(1e-3));
        for (double w = 0.001; w < 0.232; w += 0.003) {
            assertThat(surface.liquidusK(w)).isCloseTo(Brine.freezingTemperatureK(w), within(1e-6));
        }
    }

    @Test
    void theThreeBalancesHoldAtTheIce() {
        BrineInterface surface = new BrineInterface();
        Random random = new Random(20261125);
        for (int i = 0; i < 200; i++) {
            double w = 0.2 * random.nextDouble();
            double brineK = Brine.freezingTemperatureK(w) + 15 * random.nextDouble();
            double iceK = ZERO - 10 * random.nextDouble();
            double inside = 20 * random.nextDouble();
            double film = 5 + 50 * random.nextDouble();
            double iceEnthalpy = Ice.specificEnthalpy(iceK);
            BrineInterface.Flows flows = surface.solve(brineK, w, 3600, iceK, iceEnthalpy, inside, (a, b) -> film);
            double latent = 4200 * (flows.surfaceK() - ZERO) - iceEnthalpy;
            double scale = film * 20;
            assertThat(film * (brineK - flows.surfaceK()))
                    .isCloseTo(flows.melt() * latent + inside * (flows.surfaceK() - iceK), within(1e-9 * scale));
            double salt = film / 3600 * Math.pow(250, -2.0 / 3) * (w - flows.surfaceFraction());
            if (flows.melt() > 0) {
                assertThat(salt).isCloseTo(flows.melt() * flows.surfaceFraction(), within(1e-9));
            } else {
                assertThat(flows.surfaceFraction()).isEqualTo(w);
            }
            assertThat(flows.surfaceK()).isEqualTo(surface.liquidusK(flows.surfaceFraction()));
        }
        // Fresh water: ice melts at 0 °C.
        assertThat(surface.solve(ZERO + 5, 0, 4200, ZERO, Ice.specificEnthalpy(ZERO), 3, (a, b) -> 10)
                        .surfaceK())
                .isCloseTo(ZERO, within(1e-3));
        // The melt dilutes the brine at the ice: only a part of the difference to the liquidus drives.
        BrineInterface.Flows diluted =
                surface.solve(ZERO - 5, 0.15, 3600, ZERO - 7, Ice.specificEnthalpy(ZERO - 7), 0, (a, b) -> 10);
        double available = ZERO - 5 - Brine.freezingTemperatureK(0.15);
        assertThat(ZERO - 5 - diluted.surfaceK()).isBetween(0.1 * available, 0.5 * available);
    }

    @Test
    void coldIceFreezesBrineAndDoesNotChillItBelowItsLiquidus() {
        for (double iceC : new double[] {-18, -25}) {
            SaltedIce bath = SaltedIce.in(BUCKET, ROOM)
                    .ice(kilograms(4), millimetres(25), celsius(iceC))
                    .water(kilograms(2), celsius(0))
                    .salt(kilograms(0.1))
                    .build();
            ScenePrediction run = run(bath, Duration.ofMinutes(20));
            for (int s = 30; s <= 1200; s += 30) {
                Duration time = Duration.ofSeconds(s);
                double salt = run.dissolvedSaltKg("bath", time);
                double water =
                        run.gearMassKg("bath", time) - run.iceKg("bath", time) - run.undissolvedSaltKg("bath", time);
                double brineK = Objects.requireNonNull(
                        run.gearTemperaturesK("bath", time).get("brine"));
                assertThat(brineK).isGreaterThan(Brine.freezingTemperatureK(salt / water) - 0.1);
            }
        }
    }

    @Test
    void roomsBelowTheEutecticAreRefused() {
        Air polar = Air.at(celsius(-25));
        assertThatThrownBy(() -> SaltedIce.in(BUCKET, polar)
                        .ice(kilograms(2), millimetres(25), celsius(-5))
                        .water(kilograms(2), celsius(5))
                        .salt(kilograms(0.4))
                        .build())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("room of salted ice");
    }

    @Test
    void theStoreIsBrine() {
        BrineStore store = BrineStore.create();
        StoreState out = new StoreState(3);
        for (double salt : new double[] {0, 1e-3, 0.05, 0.2, 0.5}) {
            for (double celsius : new double[] {-20, -5, 0, 12, 38}) {
                double[] amounts = {1.7, salt, 0.1};
                double h = store.enthalpyJ(ZERO + celsius, amounts);
                double w = salt / (1.7 + salt);
                double expected = (1.7 + salt) * Brine.ofMassFraction(w).enthalpyOverWaterAndSalt(ZERO + celsius)
                        + 0.1 * 50.5 / 0.05844 * celsius;
                assertThat(h).isCloseTo(expected, within(600.0));
                store.evaluate(h, amounts, 0, out);
                assertThat(out.temperatureK).isCloseTo(ZERO + celsius, within(1e-8));
                for (int k = 0; k < 3; k++) {
                    double slope = out.temperaturePerAmount[k];
                    double step = 1e-6;
                    double up = moved(store, h, amounts, k, step);
                    double down = moved(store, h, amounts, k, salt == 0 && k == 1 ? 0 : -step);
                    double numeric = (up - down) / (salt == 0 && k == 1 ? step : 2 * step);
                    store.evaluate(h, amounts, 0, out);
                    assertThat(slope).isCloseTo(numeric, within(2e-3 * Math.abs(numeric) + 0.1));
                }
            }
        }
        // Dissolving cools: 1 kg water, 0.1 kg salt; by hand 53 kJ/kg at 25 °C and 1.1 to 1.8 kJ/(kg K) more below, so
        // 0.1 ·
        // (70 to 80) kJ over 1.1 · 3.7 kJ/K, 1.7 to 2.0 K.
        double h = store.enthalpyJ(ZERO + 10, 1, 0, 0.1);
        store.evaluate(h, new double[] {1, 0.1, 0}, 0, out);
        assertThat(out.temperatureK - ZERO).isBetween(8.0, 8.3);
        assertThat(1.1 * Brine.ofMassFraction(0.1 / 1.1).enthalpyOverWaterAndSalt(out.temperatureK))
                .isCloseTo(h, within(100.0));
    }

    private static double moved(BrineStore store, double h, double[] amounts, int k, double step) {
        double[] a = amounts.clone();
        a[k] += step;
        StoreState out = new StoreState(3);
        store.evaluate(h, a, 0, out);
        return out.temperatureK;
    }

    @Test
    void saltBeyondTheStrongestBrineStaysAndIsTold() {
        SaltedIce bath = bath(1, 0.5, 1).agitation(STIRRED).build();
        ScenePrediction run = run(bath, Duration.ofHours(6));
        assertThat(bath.dissolvableKg()).isCloseTo(1.5 * 0.233 / 0.767, within(1e-9));
        assertThat(run.undissolvedSaltKg("bath", Duration.ofHours(6)))
                .isCloseTo(1 - bath.dissolvableKg(), within(0.02));
        assertThat(run.vessel("wine").notes()).anyMatch(note -> note.contains("stay undissolved"));
        assertThat(run.vessel("wine").notes()).anyMatch(note -> note.contains("predicted as mixed"));
        assertThat(run.vessel("wine").notes()).anyMatch(note -> note.contains("bare hands"));
    }

    @Test
    void slowSaltCoolsLater() {
        ScenePrediction fast =
                run(bath(3, 2, 0.6).dissolvingOver(Duration.ofSeconds(30)).build(), Duration.ofMinutes(5));
        ScenePrediction slow =
                run(bath(3, 2, 0.6).dissolvingOver(Duration.ofMinutes(30)).build(), Duration.ofMinutes(5));
        assertThat(slow.dissolvedSaltKg("bath", Duration.ofMinutes(5)))
                .isLessThan(0.5 * fast.dissolvedSaltKg("bath", Duration.ofMinutes(5)));
        assertThat(brineK(slow, 5)).isGreaterThan(brineK(fast, 5) + 1);
    }

    @Test
    void everyPathStatesTheSlopesOfItsFlows() {
        Random random = new Random(20261125);
        Occupant occupant = new Occupant("wine", BOTTLE.vessel());
        for (Agitation agitation : List.of(Agitation.STILL, STIRRED)) {
            Medium medium = bath(1.5, 2, 0.4).agitation(agitation).build().open("bath", 0);
            for (Path path : medium.paths(List.of(occupant))) {
                for (int i = 0; i < 10; i++) {
                    List<Double> amounts = new ArrayList<>();
                    double[] temperatures = new double[path.ends().size()];
                    for (int e = 0; e < temperatures.length; e++) {
                        String name = path.ends().get(e).name();
                        temperatures[e] = name.equals("bath ice")
                                ? ZERO - 9 + 3 * random.nextDouble()
                                : ZERO - 4 + 10 * random.nextDouble();
                        if (name.equals("bath ice")) {
                            double side = 0.006 + 0.018 * random.nextDouble();
                            amounts.add(1.5 * Math.pow(side / 0.025, 3));
                            amounts.add(side);
                        } else if (path.ends().get(e) instanceof Node) {
                            amounts.add(2 + random.nextDouble());
                            amounts.add(0.1 + 0.2 * random.nextDouble());
                            amounts.add(0.2 * random.nextDouble());
                        }
                    }
                    PathDerivatives.check(
                            path,
                            temperatures,
                            amounts.stream().mapToDouble(Double::doubleValue).toArray(),
                            2e-2);
                }
            }
        }
    }

    @Test
    void badSaltedIceIsRefused() {
        assertThatThrownBy(() -> bath(2, 0.1, 0.3).build())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("bath water");
        assertThatThrownBy(() -> bath(9, 3, 0.3).build()).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> bath(1, 3, 2.5).build())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("mass of salt");
        assertThatThrownBy(() -> bath(1, 3, -0.1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> bath(1, 3, 0.1).water(kilograms(1), celsius(45)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> bath(1, 3, 0.1).dissolvingOver(Duration.ofSeconds(1)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SaltedIce.in(BUCKET, ROOM).build()).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> SaltedIce.in(BUCKET, ROOM)
                        .salt(kilograms(0.1))
                        .water(kilograms(1), celsius(5))
                        .build())
                .isInstanceOf(IllegalStateException.class);
    }
}
