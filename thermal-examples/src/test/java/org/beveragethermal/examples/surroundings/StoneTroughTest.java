/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetre;

import java.time.Duration;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.SolarIrradiance;
import org.beveragethermal.core.surroundings.Sunlight;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

class StoneTroughTest {

    private static final Air ROOM = Air.at(celsius(24));
    private static final Duration TWO_HOURS = Duration.ofHours(2);

    private static FilledVessel bottle(double atCelsius) {
        return Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(atCelsius));
    }

    private static StoneTrough trough(double boreMillimetres) {
        return StoneTrough.of(Solids.granite(), millimetres(boreMillimetres), millimetres(200), millimetres(40), ROOM);
    }

    @Test
    void coldStoneKeepsABottleCoolerThanTheRoomDoes() {
        double kept = afterTwoHours(Lumped.of(bottle(8)).expose(in(trough(85).startingAt(celsius(4)), TWO_HOURS)));
        double left = afterTwoHours(Lumped.of(bottle(8)).expose(in(ROOM, TWO_HOURS)));
        assertThat(kept).isBetween(8.0, left - 2);
    }

    private static double afterTwoHours(Prediction prediction) {
        return SiValues.temperatureK(prediction.meanTemperatureAt(TWO_HOURS), "mean temperature", 200, 400) - 273.15;
    }

    /** Nothing flows where everything is as warm as the room: a limiting case. */
    @Test
    void nothingHappensAtTheTemperatureOfTheRoom() {
        Prediction prediction = Lumped.of(bottle(24)).expose(in(trough(85), TWO_HOURS));
        assertThat(afterTwoHours(prediction)).isCloseTo(24, within(1e-9));
    }

    /** What the room has reaches the outside of the stone: a breeze hardly less than the air, the sun on top of it. */
    @Test
    void windAndSunReachTheStone() {
        Air breeze = ROOM.withSpeed(metresPerSecond(3));
        Air sunny = ROOM.withSun(
                Sunlight.constant(SolarIrradiance.of(wattsPerSquareMetre(800), wattsPerSquareMetre(100), degrees(40))));
        assertThat(stoneTakes(breeze)).isGreaterThan(1.2 * stoneTakes(ROOM));
        assertThat(stoneTakes(sunny)).isGreaterThan(1.2 * stoneTakes(ROOM));
        assertThat(predicted(sunny).vessel("wine").notes()).anyMatch(note -> note.contains("sun"));
    }

    private static ScenePrediction predicted(Air room) {
        StoneTrough trough = StoneTrough.of(Solids.granite(), millimetres(85), millimetres(200), millimetres(40), room)
                .startingAt(celsius(4));
        return Scene.builder()
                .gear("trough", trough)
                .vessel("wine", bottle(8), "trough")
                .build()
                .predict(TWO_HOURS);
    }

    private static double stoneTakes(Air room) {
        return predicted(room).ledger().entries().stream()
                .filter(entry -> entry.path().startsWith("trough outside"))
                .filter(entry -> !entry.mechanism().equals("conduction"))
                .mapToDouble(entry -> Math.abs(entry.heatJ()))
                .sum();
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThatThrownBy(() ->
                        Lumped.of(bottle(8)).expose(new Exposure(trough(85), TWO_HOURS, Placement.of(Posture.LYING))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one that stands");
        assertThatThrownBy(() -> Lumped.of(bottle(8)).expose(in(trough(70), TWO_HOURS)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a bore of 0.07 m");
        assertThatThrownBy(() -> trough(5))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("bore of the trough");
        Scene two = Scene.builder()
                .gear("trough", trough(85))
                .vessel("one", bottle(8), "trough")
                .vessel("other", bottle(8), "trough")
                .build();
        assertThatThrownBy(() -> two.predict(TWO_HOURS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected one vessel");
    }
}
