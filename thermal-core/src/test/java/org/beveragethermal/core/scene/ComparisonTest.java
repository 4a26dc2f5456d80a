/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.ModelAdvice;
import org.beveragethermal.core.prediction.ModelAdvice.Model;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.Resistance;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** All descriptions side by side, and the advice which is warranted. */
@Isolated
class ComparisonTest {

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static WaterBath bath(double depthLitres) {
        return WaterBath.of(
                        Bucket.of(millimetres(300), millimetres(350)),
                        litres(depthLitres),
                        celsius(2),
                        Air.at(celsius(21)))
                .with(Agitation.stirred(metresPerSecond(0.2)));
    }

    @Test
    void inAirOneTemperatureWillDo() {
        Comparison c = Comparison.of(BOTTLE, in(Refrigerator.at(celsius(5)), Duration.ofHours(2)));
        System.out.println(c.text());
        assertThat(c.advice().model()).isEqualTo(Model.LUMPED);
        assertThat(c.advice().biotMoving()).isLessThan(0.1);
        assertThat(c.largestDifferenceK(Model.LUMPED, Model.AXIAL)).isLessThan(0.5);
        assertThat(c.largestDifferenceK(Model.LUMPED, Model.LUMPED)).isZero();
    }

    @Test
    void inAMovedBathItStratifiesAndContentsAtRestWouldBeFarSlower() {
        Comparison c = Comparison.of(BOTTLE, in(bath(20), Duration.ofMinutes(20)));
        System.out.println(c.text());
        assertThat(c.advice().model()).isEqualTo(Model.AXIAL);
        assertThat(c.advice().biotMoving()).isGreaterThan(0.1);
        List<Comparison.Row> rows = c.rowsAt(Duration.ofMinutes(10));
        assertThat(rows).extracting(Comparison.Row::model).containsExactly(Model.LUMPED, Model.AXIAL, Model.RADIAL);
        assertThat(rows.get(0).highestK()).isEqualTo(rows.get(0).lowestK());
        assertThat(rows.get(1).highestK()).isGreaterThan(rows.get(1).lowestK() + 5);
        assertThat(rows.get(2).meanK()).isGreaterThan(rows.get(0).meanK() + 2);
        // Each film of the bottle's contents is laid down several times while the bottle cools.
        assertThat(c.advice().fillingBoxNumber()).isGreaterThan(4);
    }

    @Test
    void halfUnderWaterOnlySlicesWillDo() {
        Comparison c = Comparison.of(BOTTLE, in(bath(7), Duration.ofMinutes(20)));
        assertThat(c.advice().model()).isEqualTo(Model.AXIAL);
        assertThat(c.advice().reason()).contains("two media");
        assertThat(c.text()).contains("lumped", "axial", "radial", "advice: axial");
    }

    @Test
    void eachExposureIsJudgedByWhatTouchesTheWallThere() {
        // First in air, then half under water: the waterline is none of the air's.
        Prediction p = Lumped.of(BOTTLE)
                .expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(1)), in(bath(7), Duration.ofMinutes(20)));
        assertThat(p.stayAdvice()).hasSize(2);
        assertThat(p.stayAdvice().get(0).advice().model()).isEqualTo(Model.LUMPED);
        assertThat(p.stayAdvice().get(1).advice().model()).isEqualTo(Model.AXIAL);
        assertThat(p.stayAdvice().get(1).stay().from()).isEqualTo(Duration.ofHours(1));
        assertThat(p.stayAdvice().get(1).stay().to()).isEqualTo(Duration.ofMinutes(80));
        assertThat(p.advice().orElseThrow().reason()).contains("two media");
        assertThat(p.notes()).anyMatch(note -> note.startsWith("from 60 min") && note.contains("axial"));
        assertThat(p.notes()).noneMatch(note -> note.startsWith("from 0 min"));
        assertThat(p.limits()).noneMatch(note -> note.startsWith("from 60 min"));
    }

    @Test
    void everyDescriptionGivesAdviceAndTheyAgree() {
        Comparison air = Comparison.of(BOTTLE, in(Refrigerator.at(celsius(5)), Duration.ofHours(2)));
        Comparison water = Comparison.of(BOTTLE, in(bath(20), Duration.ofMinutes(20)));
        for (Model model : Model.values()) {
            assertThat(air.prediction(model).advice().orElseThrow().model()).isEqualTo(Model.LUMPED);
            assertThat(water.prediction(model).advice().orElseThrow().model()).isEqualTo(Model.AXIAL);
        }
    }

    @Test
    void numbersAreThoseOfAHandComputation() {
        // One band: film inside 0.1 K/W, wall 0.05 K/W, outside 0.35 K/W.
        Explanation explanation = new Explanation(
                Duration.ZERO,
                290,
                4000,
                List.of(new Explanation.Band(
                        "w",
                        280,
                        List.of(resistance("inside film", 0.1), resistance("wall", 0.05), resistance("outside", 0.35)),
                        List.of())));
        ModelAdvice advice = ModelAdvice.of(BOTTLE, explanation, 1);
        assertThat(advice.biotMoving()).isCloseTo(0.25, within(1e-12));
        double area = BOTTLE.vessel().profile().innerSideAreaM2(0, BOTTLE.liquidHeightM());
        double k = BOTTLE.liquid().thermalConductivity(BOTTLE.temperatureK());
        assertThat(advice.biotAtRest()).isCloseTo(BOTTLE.liquidVolumeM3() / (0.4 * area * area * k), within(1e-12));
        double mc = BOTTLE.liquidMassKg() * BOTTLE.liquid().specificHeatCapacity(BOTTLE.temperatureK());
        // Time constant over filling time, each by itself: C (R_i + R_o), and ρ c V/(4 h A).
        assertThat(advice.fillingBoxNumber()).isCloseTo(4000 * 0.5 / (mc / (4 / 0.1)), within(1e-9));
        assertThat(ModelAdvice.of(BOTTLE, explanation, 0.1).model()).isEqualTo(Model.AXIAL);
    }

    @Test
    void contentsThatHardlyMoveAskForShells() {
        Explanation thick = new Explanation(
                Duration.ZERO,
                290,
                4000,
                List.of(new Explanation.Band(
                        "w", 280, List.of(resistance("inside film", 0.5), resistance("wall", 0.1)), List.of())));
        assertThat(ModelAdvice.of(BOTTLE, thick, 1).model()).isEqualTo(Model.RADIAL);
        Explanation wrapped = new Explanation(
                Duration.ZERO,
                290,
                4000,
                List.of(new Explanation.Band(
                        "w", 280, List.of(resistance("inside film", 0.5), resistance("wall", 100)), List.of())));
        assertThat(ModelAdvice.of(BOTTLE, wrapped, 1).model()).isEqualTo(Model.LUMPED);
    }

    @Test
    void nonsenseIsRefusedAndTheLocaleDoesNotMatter() {
        Explanation empty = new Explanation(Duration.ZERO, 290, 4000, List.of());
        assertThatThrownBy(() -> ModelAdvice.of(BOTTLE, empty, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ModelAdvice(-1, 0, 0, Model.LUMPED, ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Comparison.of(BOTTLE, List.of())).isInstanceOf(IllegalArgumentException.class);
        ModelAdvice advice = new ModelAdvice(1.5, 0.25, 20, Model.AXIAL, "because");
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(advice.text())
                    .isEqualTo("axial: because (Biot number 1.50 at rest, 0.25 moving; filling-box number 20)");
        } finally {
            Locale.setDefault(before);
        }
    }

    private static Resistance resistance(String name, double kelvinPerWatt) {
        return new Resistance(name, kelvinPerWatt, 0, 0, 0, 0, "");
    }
}
