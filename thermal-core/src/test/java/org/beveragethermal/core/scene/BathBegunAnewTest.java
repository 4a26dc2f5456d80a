/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** A bath that begins anew with what is left of it goes on as if it had not been interrupted. */
class BathBegunAnewTest {

    private static final Air ROOM = Air.at(celsius(24));
    private static final IceWaterBath BATH = IceWaterBath.in(Bucket.of(millimetres(250), millimetres(330)), ROOM)
            .ice(kilograms(4), millimetres(25), celsius(-5))
            .water(kilograms(4), celsius(15))
            .build();
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(24));
    private static final Duration HALF = Duration.ofMinutes(15);

    private static ScenePrediction run(Surroundings bath, FilledVessel bottle, Duration lasts) {
        return Scene.builder()
                .gear("bath", bath)
                .vessel("bottle", bottle, "bath")
                .build()
                .predict(lasts);
    }

    @Test
    void interruptedAndBegunAnewItEndsAsInOneRun() {
        ScenePrediction whole = run(BATH, BOTTLE, HALF.multipliedBy(2));
        double iceKg = whole.iceKg("bath", HALF);
        double waterKg = whole.gearMassKg("bath", HALF) - iceKg;
        assertThat(iceKg + waterKg).isCloseTo(8, within(1e-6));
        double waterK = whole.mixedWaterK("bath", HALF).orElseThrow();
        assertThat(waterK).isBetween(273.15, 283.15);
        double halfwayK = whole.vessel("bottle").meanTemperatureK((double) HALF.toSeconds());

        ScenePrediction again = run(
                BATH.leaving(kilograms(iceKg), kilograms(waterKg), kelvins(waterK)),
                BOTTLE.atTemperature(kelvins(halfwayK)),
                HALF);

        double uninterrupted = whole.vessel("bottle").meanTemperatureK(2.0 * HALF.toSeconds());
        // Walls and bottle begin at one temperature and the water mixed: a few tenths of a kelvin.
        assertThat(again.vessel("bottle").meanTemperatureK((double) HALF.toSeconds()))
                .isCloseTo(uninterrupted, within(0.5));
        assertThat(again.iceKg("bath", HALF)).isCloseTo(whole.iceKg("bath", HALF.multipliedBy(2)), within(0.1));
    }

    @Test
    void withoutIceItIsABathOfWater() {
        Surroundings left = BATH.leaving(kilograms(0.005), kilograms(7.9), celsius(3));
        assertThat(left).isInstanceOf(WaterBath.class);
        WaterBath water = (WaterBath) left;
        assertThat(water.waterKg()).isCloseTo(7.905, within(0.005));
        assertThat(water.temperatureK()).isCloseTo(276.15, within(1e-9));
        assertThat(water.room()).isEqualTo(ROOM);
    }

    @Test
    void whatIsNoBathIsRefused() {
        assertThatThrownBy(() -> BATH.leaving(kilograms(4), kilograms(0.1), celsius(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> BATH.leaving(kilograms(0), kilograms(4), celsius(70)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void gearWithoutPartsHasNoWater() {
        ScenePrediction run = run(ROOM, BOTTLE, HALF);
        assertThat(run.mixedWaterK("bath", HALF)).isEmpty();
    }
}
