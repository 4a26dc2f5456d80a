/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Soil;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/** What holds for every hole: heat is accounted for, and nothing leaves the range of what it started from and what lies around it. */
final class EarthProperties {

    private static final double ZERO = 273.15;
    /** Tolerance of a run [K]. */
    private static final double ERROR_K = 2e-3;

    @Property(tries = 25, seed = "20261126")
    void heatIsAccountedForAndTemperaturesStayInRange(
            @ForAll @DoubleRange(min = 0, max = 0.95) double filled,
            @ForAll @DoubleRange(min = 2, max = 30) double groundC,
            @ForAll @DoubleRange(min = 0, max = 5) double swingK,
            @ForAll @DoubleRange(min = 5, max = 45) double airC,
            @ForAll @DoubleRange(min = 5, max = 35) double wineC,
            @ForAll @DoubleRange(min = 0, max = 400) double coverMm,
            @ForAll @DoubleRange(min = 85, max = 300) double diameterMm,
            @ForAll @DoubleRange(min = 1, max = 1000) double contact,
            @ForAll @IntRange(min = 0, max = 2) int kind,
            @ForAll boolean radial) {
        Soil soil = kind == 0 ? Soil.sand() : kind == 1 ? Soil.loam() : Soil.clay();
        Solid earth = soil.moist(percent(100 * filled * soil.saturation()));
        GroundTemperature ground = GroundTemperature.of(celsius(groundC))
                .withYearlyWave(kelvinDifference(swingK), Duration.ofDays(Math.round(10 * groundC)));
        boolean covered = coverMm > 50;
        Earth open = Earth.hole(
                        millimetres(diameterMm),
                        millimetres(covered ? 320 + coverMm : 200),
                        earth,
                        ground,
                        Air.at(celsius(airC)))
                .withContact(wattsPerSquareMetreKelvin(contact))
                .withModel(radial ? Earth.Model.RADIAL : Earth.Model.BLOCK);
        FilledVessel bottle =
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(wineC));
        Duration horizon = Duration.ofHours(30);
        ScenePrediction run = Scene.builder()
                .gear("hole", covered ? open.coveredBy(millimetres(coverMm)) : open)
                .vessel("wine", bottle, "hole")
                .build()
                .predict(horizon);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        double low = ZERO + Math.min(Math.min(groundC - swingK, airC), wineC) - ERROR_K;
        double high = ZERO + Math.max(Math.max(groundC + swingK, airC), wineC) + ERROR_K;
        for (int hours = 0; hours <= 30; hours += 3) {
            assertThat(run.vessel("wine").meanTemperatureK(3600.0 * hours)).isBetween(low, high);
            assertThat(run.gearTemperaturesK("hole", Duration.ofHours(hours)).values())
                    .allMatch(kelvin -> kelvin > low && kelvin < high);
        }
    }
}
