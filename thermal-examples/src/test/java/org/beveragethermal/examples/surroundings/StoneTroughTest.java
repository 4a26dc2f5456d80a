/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Air;
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

    @Test
    void whatDoesNotFitIsRefused() {
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
