/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.grams;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.assertj.core.data.Percentage;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Closed boxes: the shape factor of a textbook, the time constant of a thick wall, sharing, packs, and what is refused. */
class FoamBoxTest {

    private static final double ZERO = 273.15;
    private static final Air VAN = Air.at(celsius(32));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(16));
    private static final Duration DAY = Duration.ofHours(18);
    private static final double DAY_S = 18 * 3600;

    private static FoamBox box(double wallMm, Air outside) {
        return FoamBox.of(
                millimetres(480),
                millimetres(360),
                millimetres(340),
                Layer.of(Solids.expandedPolystyrene(), millimetres(wallMm)),
                celsius(16),
                outside);
    }

    private static ScenePrediction run(Surroundings gear, int bottles, Duration horizon) {
        Scene.Builder scene = Scene.builder().gear("box", gear);
        for (int i = 1; i <= bottles; i++) {
            scene.vessel("wine " + i, BOTTLE, "box");
        }
        return scene.build().predict(horizon);
    }

    private static double wineC(Surroundings gear, int bottles) {
        return run(gear, bottles, DAY).vessel("wine 1").meanTemperatureK(DAY_S) - ZERO;
    }

    @Test
    void facesEdgesAndCorners() {
        FoamBox furnace = FoamBox.of(
                millimetres(500),
                millimetres(500),
                millimetres(500),
                new Layer("brick", 0.1, 1.04, 2e6, 0.9, 0, 3),
                celsius(20),
                VAN);
        OutsideChecks.fromMemory("box-shape-factor", "J. P. Holman, Heat Transfer, example 3-2, cubical furnace")
                .what("shape factor of a box of 0.5 m inside with walls of 0.1 m")
                .unit("m")
                .expected(18.36)
                .withinRelative(1e-4)
                .check(furnace.shapeFactorM(true));
    }

    /** Limit: behind a wall that conducts hardly at all, what is inside has one temperature and follows the wall's conductance. */
    @Test
    void aWallThatHardlyConductsDecides() {
        Layer wall = new Layer("wall", 0.05, 4e-4, 10, 0.9, 0, 4);
        FoamBox tight = FoamBox.of(
                millimetres(480), millimetres(360), millimetres(340), wall, celsius(16), VAN.on(Footing.open()));
        ScenePrediction run = run(tight, 12, DAY);
        double conductance = 4e-4 * tight.shapeFactorM(true);
        Beverage wine = Beverage.wine(percentByVolume(12.5));
        double capacity = 12
                * (BOTTLE.liquidMassKg() * wine.specificHeatCapacity(ZERO + 20)
                        + BOTTLE.vessel().emptyMassKg()
                                * Solids.sodaLimeGlass().specificHeatCapacity().value());
        double expected = -16 * Math.expm1(-conductance * DAY_S / capacity);
        assertThat(run.vessel("wine 1").meanTemperatureK(DAY_S) - ZERO - 16)
                .isCloseTo(expected, Percentage.withPercentage(2));
    }

    @Test
    void manyBottlesShareIt() {
        double one = wineC(box(30, VAN), 1);
        double twelve = wineC(box(30, VAN), 12);
        assertThat(twelve).isLessThan(one - 3);
        assertThat(wineC(box(60, VAN), 12)).isLessThan(twelve);
        assertThat(run(box(30, VAN), 2, DAY).vessel("wine 1").notes()).anyMatch(note -> note.contains("corner"));
    }

    @Test
    void packsMeltAndTheLedgerCloses() {
        FoamBox cold = box(30, VAN).withPacks(4, grams(500), millimetres(30), celsius(-18));
        ScenePrediction run = run(cold, 6, DAY);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(run.frozenFraction("box", Duration.ZERO)).isEqualTo(1);
        assertThat(run.frozenFraction("box", DAY)).isLessThan(1);
        assertThat(run.vessel("wine 1").meanTemperatureK(DAY_S) - ZERO).isLessThan(wineC(box(30, VAN), 6) - 2);
    }

    @Test
    void packsNeedRoom() {
        FoamBox small = FoamBox.of(
                millimetres(200),
                millimetres(200),
                millimetres(350),
                Layer.of(Solids.expandedPolystyrene(), millimetres(30)),
                celsius(16),
                VAN);
        assertThatThrownBy(() -> small.withPacks(1, kilograms(2), millimetres(20), celsius(-18)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("in a box of 200 mm by 200 mm by 350 mm, 14.0 L");
        assertThatThrownBy(() -> small.withPacks(40, grams(500), millimetres(20), celsius(-18)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected packs that go into it");
        FoamBox packed = small.withPacks(24, grams(500), millimetres(20), celsius(-18));
        assertThatThrownBy(() -> run(packed, 3, DAY)).hasMessageContaining("what the packs leave");
    }

    @Test
    void badBoxesAreRefused() {
        RunningTap tap = RunningTap.at(celsius(12), litresPerMinute(6), VAN);
        assertThatThrownBy(() -> FoamBox.of(
                        millimetres(400),
                        millimetres(300),
                        millimetres(300),
                        Layer.of(Solids.expandedPolystyrene(), millimetres(30)),
                        celsius(16),
                        tap))
                .hasMessageContaining("a box under a running tap");
        assertThatThrownBy(() -> run(box(30, VAN), 80, DAY)).hasMessageContaining("expected at most its");
        FoamBox low = FoamBox.of(
                millimetres(480),
                millimetres(360),
                millimetres(250),
                Layer.of(Solids.expandedPolystyrene(), millimetres(30)),
                celsius(16),
                VAN);
        assertThatThrownBy(() -> run(low, 1, DAY)).hasMessageContaining("inner height of 250 mm");
        assertThat(Scene.builder()
                        .gear("box", low)
                        .vessel("wine", BOTTLE, "box", VesselModel.lumped(), Posture.LYING)
                        .build()
                        .predict(DAY)
                        .vessel("wine")
                        .meanTemperatureK(DAY_S))
                .isGreaterThan(ZERO + 16);
        WaterBath bath = WaterBath.of(Bucket.of(millimetres(600), millimetres(500)), litres(20), celsius(10), VAN);
        assertThatThrownBy(() -> FoamBox.of(
                        millimetres(480),
                        millimetres(360),
                        millimetres(250),
                        Layer.of(Solids.expandedPolystyrene(), millimetres(30)),
                        celsius(16),
                        bath))
                .hasMessageContaining("a box in a bath");
        assertThatThrownBy(() -> FoamBox.of(
                        millimetres(10),
                        millimetres(360),
                        millimetres(250),
                        Layer.of(Solids.expandedPolystyrene(), millimetres(30)),
                        celsius(16),
                        VAN))
                .isInstanceOf(OutOfRangeException.class);
    }
}
