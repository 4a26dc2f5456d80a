/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.joulesPerKelvin;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerKelvin;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Brine;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/** What holds for baths with ice, whatever is in them, and for an empty refrigerator. */
final class IceBathProperties {

    private static final double ZERO = 273.15;
    private static final int MINUTES = 90;
    private static final Bucket BUCKET = Bucket.of(millimetres(220), millimetres(420));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static ScenePrediction run(Surroundings gear, Placement placement, Duration horizon) {
        return Scene.builder()
                .gear("bath", gear)
                .vessel("wine", BOTTLE, "bath", VesselModel.lumped(), placement)
                .build()
                .predict(horizon);
    }

    private static ScenePrediction run(Surroundings gear) {
        return run(gear, Placement.upright(), Duration.ofMinutes(MINUTES));
    }

    /** Ice colder than 0 °C may freeze water onto itself until it is warm: c ΔT / L of its mass (from memory, 2.1 and 333 kJ). */
    private static double mostIceKg(double iceKg, double iceC) {
        return iceKg * (1 - 2.1 * iceC / 333) + 1e-6;
    }

    @Property(tries = 100, seed = "20261125")
    void bareIceKeepsItsWater(
            @ForAll @DoubleRange(min = 0.05, max = 5) double iceKg,
            @ForAll @DoubleRange(min = 4, max = 60) double sideMm,
            @ForAll @DoubleRange(min = -30, max = 0) double iceC,
            @ForAll @DoubleRange(min = 0, max = 40) double roomC,
            @ForAll boolean drained) {
        BareIce.Builder builder =
                BareIce.in(BUCKET, Air.at(celsius(roomC))).ice(kilograms(iceKg), millimetres(sideMm), celsius(iceC));
        ScenePrediction run = run(drained ? builder.drained().build() : builder.build());
        double left = iceKg;
        for (int minutes = 0; minutes <= MINUTES; minutes += 10) {
            Duration time = Duration.ofMinutes(minutes);
            assertThat(run.gearMassKg("bath", time)).isCloseTo(iceKg, within(1e-4 * Math.max(1, iceKg)));
            double ice = run.iceKg("bath", time);
            assertThat(ice).isBetween(0.0, left + 1e-6);
            left = ice;
            assertThat(run.vessel("wine").meanTemperatureK(60.0 * minutes))
                    .isBetween(ZERO + iceC - 0.01, ZERO + Math.max(22, roomC) + 0.01);
        }
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Property(tries = 100, seed = "20261126")
    void saltedIceKeepsItsWaterAndItsSalt(
            @ForAll @DoubleRange(min = 0.2, max = 4) double iceKg,
            @ForAll @DoubleRange(min = 5, max = 50) double sideMm,
            @ForAll @DoubleRange(min = -20, max = 0) double iceC,
            @ForAll @DoubleRange(min = 0.12, max = 1) double waterPerIce,
            @ForAll @DoubleRange(min = 0, max = 30) double waterC,
            @ForAll @DoubleRange(min = 0, max = 0.5) double saltPerIce,
            @ForAll @DoubleRange(min = 0, max = 0.3) double speed) {
        SaltedIce bath = SaltedIce.in(BUCKET, Air.at(celsius(21)))
                .ice(kilograms(iceKg), millimetres(sideMm), celsius(iceC))
                .water(kilograms(iceKg * waterPerIce), celsius(waterC))
                .salt(kilograms(iceKg * saltPerIce))
                .agitation(Agitation.stirred(metresPerSecond(speed)))
                .build();
        ScenePrediction run = run(bath);
        double total = iceKg * (1 + waterPerIce);
        double salt = iceKg * saltPerIce;
        for (int minutes = 0; minutes <= MINUTES; minutes += 10) {
            Duration time = Duration.ofMinutes(minutes);
            assertThat(run.gearMassKg("bath", time)).isCloseTo(total, within(2e-4 * Math.max(1, total)));
            assertThat(run.iceKg("bath", time)).isBetween(0.0, total);
            double dissolved = run.dissolvedSaltKg("bath", time);
            assertThat(dissolved + run.undissolvedSaltKg("bath", time)).isCloseTo(salt, within(1e-5));
            assertThat(dissolved).isLessThanOrEqualTo(bath.dissolvableKg() + 1e-3 * total);
            double brineK = run.gearTemperaturesK("bath", time).getOrDefault("brine", Double.NaN);
            assertThat(brineK).isBetween(Math.min(Brine.EUTECTIC_K, ZERO + iceC) - 0.01, ZERO + 30.0);
        }
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Property(tries = 60, seed = "20261201")
    void iceAndWaterKeepTheirWater(
            @ForAll @DoubleRange(min = 0.05, max = 4) double iceKg,
            @ForAll @DoubleRange(min = 5, max = 60) double sideMm,
            @ForAll @DoubleRange(min = -30, max = 0) double iceC,
            @ForAll @DoubleRange(min = 0.15, max = 1.8) double waterPerIce,
            @ForAll @DoubleRange(min = 0, max = 60) double waterC,
            @ForAll @DoubleRange(min = 1, max = 40) double roomC,
            @ForAll @DoubleRange(min = 0, max = 0.3) double speed) {
        // Ice that would freeze the water is refused: 2.1 kJ/(kg K), 4.2 kJ/(kg K) and 333 kJ/kg from memory.
        double frozen = (-2.1 * iceC - 4.2 * waterC * waterPerIce) / 333;
        Assume.that(waterPerIce > frozen + 0.06 * (1 + waterPerIce));
        IceWaterBath bath = IceWaterBath.in(BUCKET, Air.at(celsius(roomC)))
                .ice(kilograms(iceKg), millimetres(sideMm), celsius(iceC))
                .water(kilograms(iceKg * waterPerIce), celsius(waterC))
                .agitation(Agitation.stirred(metresPerSecond(speed)))
                .build();
        ScenePrediction run = run(bath);
        double total = iceKg * (1 + waterPerIce);
        for (int minutes = 0; minutes <= MINUTES; minutes += 10) {
            Duration time = Duration.ofMinutes(minutes);
            assertThat(run.gearMassKg("bath", time)).isCloseTo(total, within(1e-4 * Math.max(1, total)));
            assertThat(run.iceKg("bath", time)).isBetween(0.0, mostIceKg(iceKg, iceC));
            double coldest = run.gearTemperaturesK("bath", time).values().stream()
                    .mapToDouble(Double::doubleValue)
                    .min()
                    .orElseThrow();
            assertThat(coldest).isGreaterThan(ZERO + iceC - 0.01);
        }
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Property(tries = 60, seed = "20261202")
    void brineIsNotBelowTheEutecticUnlessIceOrRoomAre(
            @ForAll @DoubleRange(min = 0.3, max = 4) double iceKg,
            @ForAll @DoubleRange(min = 5, max = 50) double sideMm,
            @ForAll @DoubleRange(min = -30, max = 0) double iceC,
            @ForAll @DoubleRange(min = 0.12, max = 0.8) double waterPerIce,
            @ForAll @DoubleRange(min = 0.05, max = 1) double saltPerIce,
            @ForAll @DoubleRange(min = -21, max = 35) double roomC) {
        // Rooms below the eutectic are refused.
        SaltedIce bath = SaltedIce.in(BUCKET, Air.at(celsius(roomC)))
                .ice(kilograms(iceKg), millimetres(sideMm), celsius(iceC))
                .water(kilograms(iceKg * waterPerIce), celsius(5))
                .salt(kilograms(iceKg * saltPerIce))
                .build();
        ScenePrediction run = run(bath);
        double coldest = Math.min(Brine.EUTECTIC_K, ZERO + Math.min(iceC, roomC));
        for (int minutes = 0; minutes <= MINUTES; minutes += 10) {
            Duration time = Duration.ofMinutes(minutes);
            for (double kelvin : run.gearTemperaturesK("bath", time).values()) {
                assertThat(kelvin).isGreaterThan(coldest - 0.01);
            }
            assertThat(run.vessel("wine").meanTemperatureK(60.0 * minutes)).isGreaterThan(coldest - 0.01);
            assertThat(run.iceKg("bath", time)).isBetween(0.0, mostIceKg(iceKg, -30));
        }
    }

    private static void assertMoreIceIsNoWarmer(Surroundings less, Surroundings more, Placement held) {
        Duration horizon = Duration.ofMinutes(MINUTES);
        ScenePrediction some = run(less, held, horizon);
        ScenePrediction most = run(more, held, horizon);
        for (int minutes = 5; minutes <= MINUTES; minutes += 5) {
            assertThat(most.vessel("wine").meanTemperatureK(60.0 * minutes))
                    .as("after %d min", minutes)
                    .isLessThan(some.vessel("wine").meanTemperatureK(60.0 * minutes) + 5e-3);
        }
    }

    @Property(tries = 60, seed = "20261203")
    void moreIceInWaterIsNoWarmer(
            @ForAll @DoubleRange(min = 0.05, max = 3.5) double iceKg,
            @ForAll @DoubleRange(min = 1, max = 2) double more,
            @ForAll @DoubleRange(min = 8, max = 50) double sideMm,
            @ForAll @DoubleRange(min = -20, max = 0) double iceC,
            @ForAll @DoubleRange(min = 3.9, max = 7) double waterKg,
            @ForAll @DoubleRange(min = 0, max = 30) double waterC,
            @ForAll @DoubleRange(min = 40, max = 100) double heightMm,
            @ForAll @DoubleRange(min = 0, max = 0.3) double speed) {
        List<Surroundings> baths = new ArrayList<>();
        for (double factor : new double[] {1, more}) {
            baths.add(IceWaterBath.in(BUCKET, Air.at(celsius(21)))
                    .ice(kilograms(factor * iceKg), millimetres(sideMm), celsius(iceC))
                    .water(kilograms(waterKg), celsius(waterC))
                    .agitation(Agitation.stirred(metresPerSecond(speed)))
                    .build());
        }
        assertMoreIceIsNoWarmer(baths.get(0), baths.get(1), Placement.upright().immersedTo(millimetres(heightMm)));
    }

    /**
     * The vessel stands: in a pile there is no equal height for long. One that is held does not follow ice that sinks under it,
     * and a higher pile sinks further; {@link #heldInAHigherPileItIsBaredSooner} shows that.
     */
    @Property(tries = 60, seed = "20261204")
    void moreBareIceIsNoWarmer(
            @ForAll @DoubleRange(min = 0.5, max = 3.5) double iceKg,
            @ForAll @DoubleRange(min = 1, max = 2) double more,
            @ForAll @DoubleRange(min = 8, max = 50) double sideMm,
            @ForAll @DoubleRange(min = -20, max = 0) double iceC,
            @ForAll boolean drained) {
        List<Surroundings> piles = new ArrayList<>();
        for (double factor : new double[] {1, more}) {
            BareIce.Builder pile = BareIce.in(BUCKET, Air.at(celsius(21)))
                    .ice(kilograms(factor * iceKg), millimetres(sideMm), celsius(iceC));
            piles.add(drained ? pile.drained().build() : pile.build());
        }
        assertMoreIceIsNoWarmer(piles.get(0), piles.get(1), Placement.upright());
    }

    /** In drained ice of 8 mm, held 40 mm deep in a room of 30 °C: printed, and told in {@link BareIce}. */
    @Example
    void heldInAHigherPileItIsBaredSooner() {
        double[] hoursC = new double[2];
        for (int i = 0; i < 2; i++) {
            BareIce pile = BareIce.in(BUCKET, Air.at(celsius(30)))
                    .ice(kilograms(2.2 * (1 + i)), millimetres(8), celsius(0))
                    .drained()
                    .build();
            ScenePrediction run = run(pile, Placement.upright().immersedTo(millimetres(40)), Duration.ofHours(2));
            hoursC[i] = run.vessel("wine").meanTemperatureK(7200) - ZERO;
        }
        System.out.printf(
                Locale.ROOT,
                "Held 40 mm deep in drained ice, 2 h at 30 °C: %.1f °C in 2.2 kg, %.1f °C in 4.4 kg, which sinks further%n",
                hoursC[0],
                hoursC[1]);
        assertThat(hoursC[1]).isGreaterThan(hoursC[0] + 1);
    }

    @Property(tries = 60, seed = "20261205")
    void moreIceInBrineIsNoWarmer(
            @ForAll @DoubleRange(min = 0.5, max = 3) double iceKg,
            @ForAll @DoubleRange(min = 1, max = 2) double more,
            @ForAll @DoubleRange(min = 8, max = 50) double sideMm,
            @ForAll @DoubleRange(min = -20, max = 0) double iceC,
            @ForAll @DoubleRange(min = 3.9, max = 5.5) double waterKg,
            @ForAll @DoubleRange(min = 0, max = 0.5) double saltKg,
            @ForAll @DoubleRange(min = 40, max = 100) double heightMm,
            @ForAll @DoubleRange(min = 0, max = 0.3) double speed) {
        List<Surroundings> baths = new ArrayList<>();
        for (double factor : new double[] {1, more}) {
            baths.add(SaltedIce.in(BUCKET, Air.at(celsius(21)))
                    .ice(kilograms(factor * iceKg), millimetres(sideMm), celsius(iceC))
                    .water(kilograms(waterKg), celsius(15))
                    .salt(kilograms(saltKg))
                    .agitation(Agitation.stirred(metresPerSecond(speed)))
                    .build());
        }
        assertMoreIceIsNoWarmer(baths.get(0), baths.get(1), Placement.upright().immersedTo(millimetres(heightMm)));
    }

    @Property(tries = 40, seed = "20261206")
    void anEmptyRefrigeratorReturnsToItsSetPoint(
            @ForAll @DoubleRange(min = -20, max = 12) double setC,
            @ForAll @DoubleRange(min = 5, max = 100) double sharePercent,
            @ForAll @DoubleRange(min = 2000, max = 20_000) double capacity,
            @ForAll @DoubleRange(min = 10, max = 40) double pull,
            @ForAll @IntRange(min = 1, max = 5) int openings) {
        List<Duration> times = new ArrayList<>();
        for (int i = 0; i < openings; i++) {
            times.add(Duration.ofMinutes(10 + 7L * i));
        }
        Refrigerator appliance = Refrigerator.at(celsius(setC))
                .withLoad(joulesPerKelvin(capacity), wattsPerKelvin(pull))
                .withDoorOpenings(DoorOpenings.of(celsius(28), percent(sharePercent), Duration.ofMinutes(5), times));
        // A warm bottle that is taken out again is the load; then the refrigerator is empty.
        ScenePrediction run = Scene.builder()
                .gear("fridge", appliance)
                .gear("room", Air.at(celsius(22)))
                .vessel("wine", BOTTLE, "fridge")
                .move("wine", Duration.ofMinutes(40), "room")
                .build()
                .predict(Duration.ofHours(9));
        double before = Objects.requireNonNull(
                run.gearTemperaturesK("fridge", Duration.ofMinutes(40)).get("air"));
        double after = Objects.requireNonNull(
                run.gearTemperaturesK("fridge", Duration.ofHours(9)).get("air"));
        assertThat(before).isGreaterThan(ZERO + setC + 0.01);
        // The slowest of these has a time constant of 2000 s: eight hours are more than fourteen of them.
        assertThat(after).isCloseTo(ZERO + setC, within(5e-3));
    }

    @Property(tries = 12, seed = "20261207")
    void equalRunsAgreeBitForBit(
            @ForAll @DoubleRange(min = 0.3, max = 3) double iceKg,
            @ForAll @DoubleRange(min = -20, max = 0) double iceC,
            @ForAll @DoubleRange(min = 10, max = 30) double roomC) {
        for (int kind = 0; kind < 4; kind++) {
            assertThat(bits(gear(kind, iceKg, iceC, roomC))).isEqualTo(bits(gear(kind, iceKg, iceC, roomC)));
        }
    }

    private static Surroundings gear(int kind, double iceKg, double iceC, double roomC) {
        Air room = Air.at(celsius(roomC));
        return switch (kind) {
            case 0 -> WaterBath.of(BUCKET, litres(4), celsius(6), room);
            case 1 ->
                IceWaterBath.in(BUCKET, room)
                        .ice(kilograms(iceKg), millimetres(25), celsius(iceC))
                        .water(kilograms(3), celsius(12))
                        .build();
            case 2 ->
                BareIce.in(BUCKET, room)
                        .ice(kilograms(iceKg), millimetres(25), celsius(iceC))
                        .build();
            default ->
                SaltedIce.in(BUCKET, room)
                        .ice(kilograms(iceKg), millimetres(25), celsius(iceC))
                        .water(kilograms(2), celsius(12))
                        .salt(kilograms(0.3))
                        .build();
        };
    }

    private static List<Long> bits(Surroundings gear) {
        ScenePrediction run = run(gear, Placement.upright(), Duration.ofMinutes(30));
        List<Long> bits = new ArrayList<>();
        for (double part : new double[] {0.01, 0.3, 1}) {
            double time = part * run.trajectory().endS();
            bits.add(Double.doubleToLongBits(run.vessel("wine").meanTemperatureK(time)));
            run.gearTemperaturesK("bath", Duration.ofMillis((long) (1000 * time)))
                    .values()
                    .forEach(kelvin -> bits.add(Double.doubleToLongBits(kelvin)));
        }
        bits.add(Double.doubleToLongBits(run.ledger().totalHeatJ()));
        return bits;
    }
}
