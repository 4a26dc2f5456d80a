/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetre;

import java.time.Duration;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What goes around vessels takes up the sun by its stated colour. */
class SunlitGearTest {

    private static final Vessel GLASS = Vessels.highShouldered750();
    private static final FilledVessel BOTTLE = GLASS.filledWith(Beverage.wine(percentByVolume(12.5)), celsius(8));
    private static final Duration HOUR = Duration.ofHours(1);
    private static final Air SHADE = Air.at(celsius(27));
    private static final Air SUN = SHADE.withSun(
            Sunlight.constant(SolarIrradiance.of(wattsPerSquareMetre(850), wattsPerSquareMetre(110), degrees(45))));

    private static Layer foam(double absorptance) {
        return Layer.of(Solids.expandedPolystyrene(), millimetres(5)).withSolarAbsorptance(absorptance);
    }

    private static Surroundings sleeve(double absorptance, Air air) {
        double height = 1000 * GLASS.profile().heightM();
        return Sleeve.around(GLASS, millimetres(height), celsius(27), air, foam(absorptance));
    }

    private static Surroundings cooler(double absorptance, Air air) {
        return WalledCooler.of(millimetres(90), millimetres(200), celsius(27), air, foam(absorptance));
    }

    private static Surroundings box(double absorptance, Air air) {
        return FoamBox.of(millimetres(200), millimetres(200), millimetres(340), foam(absorptance), celsius(27), air);
    }

    private static ScenePrediction run(Surroundings gear) {
        return Scene.builder()
                .gear("gear", gear)
                .vessel("wine", BOTTLE, "gear")
                .build()
                .predict(HOUR);
    }

    private static double sunJ(Surroundings gear) {
        return -run(gear).ledger().entries().stream()
                .filter(entry -> entry.mechanism().equals("sun"))
                .mapToDouble(LedgerEntry::heatJ)
                .sum();
    }

    private static double wineK(Surroundings gear) {
        return run(gear).vessel("wine").meanTemperatureK(3600);
    }

    /** What the bare ends and neck take up is that of gear that sends everything back. */
    @Test
    void gearTakesUpTheSunByItsColour() {
        double nothing = sunJ(sleeve(0, SUN));
        double white = sunJ(sleeve(0.2, SUN)) - nothing;
        double black = sunJ(sleeve(0.95, SUN)) - nothing;
        assertThat(Math.abs(white)).isGreaterThan(1000);
        assertThat(black / white).isCloseTo(0.95 / 0.2, within(1e-6));
        double cooler = sunJ(cooler(0, SUN));
        assertThat((sunJ(cooler(0.95, SUN)) - cooler) / (sunJ(cooler(0.2, SUN)) - cooler))
                .isCloseTo(0.95 / 0.2, within(1e-6));
        assertThat(sunJ(box(0, SUN))).isEqualTo(0);
        assertThat(sunJ(box(0.95, SUN)) / sunJ(box(0.2, SUN))).isCloseTo(0.95 / 0.2, within(1e-6));
    }

    @Test
    void gearInTheSunWarmsMore() {
        assertThat(wineK(sleeve(0.95, SUN))).isGreaterThan(wineK(sleeve(0.2, SUN)) + 0.5);
        assertThat(wineK(sleeve(0.2, SUN))).isGreaterThan(wineK(sleeve(0.2, SHADE)) + 0.2);
        assertThat(wineK(cooler(0.7, SUN))).isGreaterThan(wineK(cooler(0.7, SHADE)) + 0.2);
        assertThat(wineK(box(0.7, SUN))).isGreaterThan(wineK(box(0.7, SHADE)) + 0.2);
    }
}
