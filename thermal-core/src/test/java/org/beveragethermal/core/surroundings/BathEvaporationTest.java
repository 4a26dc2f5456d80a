/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.pascals;
import static org.beveragethermal.materials.units.Measures.percent;

import java.time.Duration;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Open surfaces of baths in moist air. */
class BathEvaporationTest {

    private static final Bucket TUB = Bucket.of(millimetres(300), millimetres(350));
    private static final Air DRY = Air.at(celsius(25)).withPressure(pascals(92_000));

    private static ScenePrediction run(Air room, double waterC, Duration time) {
        return Scene.builder()
                .gear("room", room)
                .gear("bath", WaterBath.of(TUB, litres(10), celsius(waterC), room))
                .vessel("wine", Vessels.highShouldered750().filledWith(Beverage.water(), celsius(25)), "room")
                .build()
                .predict(time);
    }

    private static double heatJ(ScenePrediction run, String mechanism) {
        return run.ledger().entries().stream()
                .filter(entry ->
                        entry.path().contains("surface") && entry.mechanism().equals(mechanism))
                .mapToDouble(LedgerEntry::heatJ)
                .sum();
    }

    @Test
    void aWarmBathLosesMostOfItsHeatByEvaporation() {
        ScenePrediction run = run(DRY.withRelativeHumidity(percent(52)), 50, Duration.ofMinutes(1));
        double evaporated = heatJ(run, "evaporation");
        // The text leaves out the counterflow of air (8 %) and takes each density of vapour at its own temperature (5
        // %).
        OutsideChecks.published(
                        "bath-evaporation-over-convection",
                        "Y. A. Cengel and A. J. Ghajar, Heat and Mass Transfer, 5th ed., example 14-14, evaporation recomputed: 3473 W"
                                + " beside 479 W of convection")
                .what("heat evaporated over heat convected, water at 50 °C in air of 25 °C, 52 %, 92 kPa")
                .unit("1")
                .expected(3473.0 / 479)
                .withinRelative(0.17)
                .check(evaporated / heatJ(run, "convection"));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void withoutAStatedHumidityNothingEvaporates() {
        Duration hour = Duration.ofHours(1);
        ScenePrediction dry = run(DRY, 50, hour);
        assertThat(heatJ(dry, "evaporation")).isZero();
        ScenePrediction moist = run(DRY.withRelativeHumidity(percent(52)), 50, hour);
        double slower = dry.gearTemperaturesK("bath", hour).getOrDefault("water", 0.0);
        double faster = moist.gearTemperaturesK("bath", hour).getOrDefault("water", 0.0);
        assertThat(slower - faster).isBetween(2.0, 10.0);
    }

    @Test
    void saturatedAirOfTheBathsTemperatureDoesNothing() {
        Duration hour = Duration.ofHours(1);
        ScenePrediction run = run(DRY.withRelativeHumidity(percent(100)), 25, hour);
        assertThat(run.gearTemperaturesK("bath", hour).getOrDefault("water", 0.0))
                .isCloseTo(298.15, within(1e-5));
    }

    @Test
    void theNoteOfAWarmBathGoesWhenTheHumidityIsStated() {
        for (boolean stated : new boolean[] {false, true}) {
            Air room = stated ? DRY.withRelativeHumidity(percent(52)) : DRY;
            ScenePrediction run = Scene.builder()
                    .gear("bath", WaterBath.of(TUB, litres(10), celsius(50), room))
                    .vessel("cup", Vessels.highShouldered750().filledWith(Beverage.water(), celsius(25)), "bath")
                    .build()
                    .predict(Duration.ofMinutes(5));
            assertThat(run.vessel("cup").notes().stream().anyMatch(note -> note.contains("no humidity is stated")))
                    .isNotEqualTo(stated);
        }
    }
}
