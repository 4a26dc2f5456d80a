/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.kilopascals;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** What surroundings refuse, one by one. */
class SurroundingsRefusalsTest {

    private static final Air ROOM = Air.at(celsius(21));
    private static final Bucket BUCKET = Bucket.of(millimetres(200), millimetres(220));

    private static void outOfRange(ThrowingCallable call) {
        OutOfRangeException refusal = catchThrowableOfType(OutOfRangeException.class, call);
        assertThat(refusal).isNotNull();
        assertThat(refusal.low()).isLessThan(refusal.high());
        assertThat(refusal.given() >= refusal.low() && refusal.given() <= refusal.high())
                .isFalse();
        assertThat(refusal).hasMessageContaining(refusal.parameter());
    }

    private static IceWaterBath.Builder bath() {
        return IceWaterBath.in(BUCKET, ROOM);
    }

    @Test
    void rooms() {
        outOfRange(() -> Air.at(celsius(-41)));
        outOfRange(() -> Air.at(celsius(81)));
        outOfRange(() -> Air.varying(Map.of(Duration.ZERO, celsius(20), Duration.ofHours(1), celsius(90))));
        outOfRange(() -> ROOM.withWalls(celsius(-50)));
        outOfRange(() -> ROOM.withWalls(Map.of(Duration.ZERO, celsius(85))));
        outOfRange(() -> ROOM.withPressure(kilopascals(49)));
        outOfRange(() -> ROOM.withPressure(kilopascals(111)));
        assertThatThrownBy(() -> Air.varying(Map.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ROOM.withWalls(Map.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void footings() {
        outOfRange(() -> Footing.contact(wattsPerSquareMetreKelvin(0)));
        outOfRange(() -> Footing.contact(wattsPerSquareMetreKelvin(2e5)));
        outOfRange(() -> new Footing(Footing.Support.CONTACT, 0));
        assertThatThrownBy(() -> new Footing(Footing.Support.OPEN, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Footing.contact(wattsPerSquareMetreKelvin(50)).coefficient()).isEqualTo(50);
    }

    @Test
    void refrigerators() {
        outOfRange(() -> Refrigerator.at(celsius(-31)));
        outOfRange(() -> Refrigerator.at(celsius(20.1)));
    }

    @Test
    void buckets() {
        outOfRange(() -> Bucket.of(millimetres(49), millimetres(200)));
        outOfRange(() -> Bucket.of(millimetres(2001), millimetres(200)));
        outOfRange(() -> Bucket.of(millimetres(200), millimetres(49)));
        outOfRange(() -> Bucket.of(millimetres(200), millimetres(1501)));
        outOfRange(() -> BUCKET.withWall(wattsPerSquareMetreKelvin(0.04)));
        outOfRange(() -> BUCKET.withWall(wattsPerSquareMetreKelvin(2e5)));
        outOfRange(() -> BUCKET.withEmissivity(fraction(1.01)));
        outOfRange(() -> BUCKET.withEmissivity(fraction(-0.01)));
    }

    @Test
    void agitations() {
        outOfRange(() -> Agitation.stirred(metresPerSecond(2.1)));
        outOfRange(() -> Agitation.stirred(metresPerSecond(-0.1)));
        outOfRange(() -> new Agitation(-1e-9));
        assertThatThrownBy(() -> new Agitation(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Agitation.stirred(metresPerSecond(0))).isEqualTo(Agitation.STILL);
    }

    @Test
    void iceAndWater() {
        outOfRange(() -> bath().ice(kilograms(0.009), millimetres(25), celsius(-5)));
        outOfRange(() -> bath().ice(kilograms(2001), millimetres(25), celsius(-5)));
        outOfRange(() -> bath().ice(kilograms(1), millimetres(2.9), celsius(-5)));
        outOfRange(() -> bath().ice(kilograms(1), millimetres(301), celsius(-5)));
        outOfRange(() -> bath().ice(kilograms(1), millimetres(25), celsius(-31)));
        outOfRange(() -> bath().ice(kilograms(1), millimetres(25), celsius(0.1)));
        outOfRange(() -> bath().water(kilograms(-0.1), celsius(10)));
        outOfRange(() -> bath().water(kilograms(2001), celsius(10)));
        outOfRange(() -> bath().water(kilograms(1), celsius(-0.1)));
        outOfRange(() -> bath().water(kilograms(1), celsius(61)));
        outOfRange(() -> bath().solidFraction(0.19));
        outOfRange(() -> bath().solidFraction(0.91));
        assertThatThrownBy(() -> bath().solidFraction(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void wholeBaths() {
        // A little more than the bucket holds: 6.91 L.
        outOfRange(() -> IceWaterBath.of(BUCKET, kilograms(3), kilograms(3.7), ROOM));
        assertThat(IceWaterBath.of(BUCKET, kilograms(3), kilograms(3.6), ROOM).waterKg())
                .isEqualTo(3.6);
        // Less water than a tenth of the ice.
        outOfRange(() -> IceWaterBath.of(BUCKET, kilograms(3), kilograms(0.29), ROOM));
        assertThat(IceWaterBath.of(BUCKET, kilograms(3), kilograms(0.31), ROOM).iceKg())
                .isEqualTo(3);
        // Blocks wider than the bucket.
        outOfRange(() -> bath().ice(kilograms(1), millimetres(210), celsius(-5))
                .water(kilograms(1), celsius(10))
                .build());
        assertThatThrownBy(() -> bath().water(kilograms(1), celsius(10)).build())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("ice(");
        assertThatThrownBy(() ->
                        bath().ice(kilograms(1), millimetres(25), celsius(-5)).build())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("water(");
    }

    @Test
    void iceThatDoesNotFit() {
        // A cube of 150 mm is 212 mm across its corners and does not go into 200 mm; a rod of 250 mm stands in it.
        outOfRange(() -> bath().blocks(1, IceBlock.cube(millimetres(150)), celsius(-5))
                .water(kilograms(2), celsius(10))
                .build());
        outOfRange(() -> bath().blocks(1, IceBlock.cylinder(millimetres(205), millimetres(50)), celsius(-5))
                .water(kilograms(3), celsius(10))
                .build());
        IceWaterBath rod = bath().blocks(2, IceBlock.cylinder(millimetres(60), millimetres(250)), celsius(-5))
                .water(kilograms(2), celsius(10))
                .build();
        // By hand: 2 · π/4 · 0.06² · 0.25 m³ of 916.7 kg/m³ (density of ice from memory).
        assertThat(rod.iceKg()).isCloseTo(2 * Math.PI / 4 * 0.0036 * 0.25 * 916.7, within(1e-3));
        outOfRange(() ->
                BareIce.in(BUCKET, ROOM).cubes(1, millimetres(150), celsius(-5)).build());
        outOfRange(() -> SaltedIce.in(BUCKET, ROOM)
                .cubes(1, millimetres(150), celsius(-5))
                .water(kilograms(1), celsius(10))
                .salt(kilograms(0.1))
                .build());
        // More than the bucket holds: as a heap without water, and in brine.
        outOfRange(() -> BareIce.of(BUCKET, kilograms(4), ROOM));
        outOfRange(() -> SaltedIce.in(BUCKET, ROOM)
                .ice(kilograms(4), millimetres(25), celsius(-5))
                .water(kilograms(1), celsius(10))
                .salt(kilograms(0.1))
                .build());
        outOfRange(() -> bath().blocks(0, IceBlock.sphere(millimetres(40)), celsius(-5)));
        outOfRange(() -> bath().blocks(1, IceBlock.sphere(millimetres(20)), celsius(-5)));
        assertThat(BareIce.in(BUCKET, ROOM)
                        .cubes(100, millimetres(25), celsius(-5))
                        .build()
                        .iceKg())
                .isCloseTo(1.432, within(1e-3));
    }

    @Test
    void iceSoColdThatItFreezesTheWater() {
        // Own arithmetic: 1 kg from −30 °C to 0 °C takes 60 kJ, which freezes 0.18 kg of water of 0 °C.
        IceWaterBath.Builder cold = bath().ice(kilograms(1), millimetres(10), celsius(-30));
        OutOfRangeException refusal = catchThrowableOfType(
                OutOfRangeException.class,
                () -> cold.water(kilograms(0.2), celsius(0)).build());
        assertThat(refusal.given()).isEqualTo(0.2);
        assertThat(refusal.low()).isBetween(0.18, 0.24);
        assertThat(refusal).hasMessageContaining("243.15 K").hasMessageContaining("freeze");
        assertThat(cold.water(kilograms(0.25), celsius(0)).build().iceKg()).isEqualTo(1);
        // Salt keeps it liquid, unless it is taken to do nothing.
        SaltedIce salted = SaltedIce.in(BUCKET, ROOM)
                .ice(kilograms(1), millimetres(10), celsius(-30))
                .water(kilograms(0.2), celsius(0))
                .salt(kilograms(0.1))
                .build();
        outOfRange(() -> salted.with(SaltedIce.SaltEffect.INEFFECTIVE));
    }

    @Test
    void airThatCannotBe() {
        outOfRange(() -> ROOM.withRelativeHumidity(percent(120)));
        outOfRange(() -> ROOM.withSpeed(metresPerSecond(-1)));
    }

    @Test
    void waterBaths() {
        outOfRange(() -> WaterBath.of(BUCKET, litres(0.05), celsius(20), ROOM));
        outOfRange(() -> WaterBath.of(BUCKET, litres(7), celsius(20), ROOM));
        outOfRange(() -> WaterBath.of(BUCKET, litres(3), celsius(0.4), ROOM));
        outOfRange(() -> WaterBath.of(BUCKET, litres(3), celsius(70.1), ROOM));
    }
}
