/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.DocumentParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** Scenes, exposures and what predictions answer. */
@Isolated
class SceneTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(22));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    @Test
    void splittingAnExposureChangesNothing() {
        Prediction whole = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(2)));
        Prediction split = Lumped.of(BOTTLE)
                .expose(
                        in(COLD, Duration.ofMinutes(17)),
                        in(COLD, Duration.ofMinutes(50)),
                        in(COLD, Duration.ofMinutes(53)));
        for (int minutes = 10; minutes <= 120; minutes += 10) {
            assertThat(split.meanTemperatureK(minutes * 60))
                    .isCloseTo(whole.meanTemperatureK(minutes * 60), within(5e-3));
        }
    }

    @Test
    void theSameGearTwiceLivesOnInBetween() {
        IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(400)), ROOM)
                .ice(kilograms(0.4), millimetres(25), celsius(-5))
                .water(kilograms(4), celsius(12))
                .agitation(Agitation.stirred(metresPerSecond(0.1)))
                .build();
        Prediction same = Lumped.of(BOTTLE)
                .expose(
                        in(bath, Duration.ofMinutes(30)),
                        in(ROOM, Duration.ofHours(6)),
                        in(bath, Duration.ofMinutes(30)));
        IceWaterBath fresh = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(400)), ROOM)
                .ice(kilograms(0.4), millimetres(25), celsius(-5))
                .water(kilograms(4), celsius(12))
                .agitation(Agitation.stirred(metresPerSecond(0.1)))
                .build();
        Prediction other = Lumped.of(BOTTLE).expose(in(bath, Duration.ofMinutes(30)), in(ROOM, Duration.ofHours(6)));
        assertThat(fresh).isNotEqualTo(bath);
        double end = same.end().toMillis() / 1000.0;
        assertThat(other.meanTemperatureK(23_000)).isCloseTo(same.meanTemperatureK(23_000), within(1e-3));
        // The bath has stood in a warm room for hours: it hardly chills any more.
        assertThat(same.meanTemperatureK(end) - ZERO).isGreaterThan(10);
    }

    @Test
    void bathAndBottleMeetWhereEnthalpySays() {
        // A bath in a room of its own temperature behind a thick wall: bottle and bath end between, by their heat
        // capacities.
        Air room = Air.at(celsius(30));
        Bucket insulated = Bucket.of(millimetres(200), millimetres(400)).withWall(wattsPerSquareMetreKelvin(0.05));
        WaterBath bath = WaterBath.of(insulated, litres(6), celsius(30), room);
        FilledVessel cold = BOTTLE.atTemperature(celsius(8));
        Prediction prediction = Lumped.of(cold).expose(in(bath, Duration.ofHours(2)));
        double wine = cold.liquidMassKg() * cold.liquid().specificHeatCapacity(ZERO + 20);
        double glass = cold.vessel().emptyMassKg()
                * cold.vessel().wall().specificHeatCapacity().value();
        double water = 6 * 0.9957 * 4179;
        double meeting = (water * 30 + (wine + glass) * 8) / (water + wine + glass);
        assertThat(prediction.meanTemperatureK(5400) - ZERO).isCloseTo(meeting, within(0.25));
    }

    @Test
    void anotherStartOfTheClockShiftsOnlyTheWeather() {
        Air evening = Air.varying(
                Map.of(Duration.ZERO, celsius(28), Duration.ofHours(1), celsius(20), Duration.ofHours(3), celsius(15)));
        ScenePrediction late = Scene.builder()
                .startingAfter(Duration.ofHours(1))
                .gear("terrace", evening)
                .vessel("wine", BOTTLE, "terrace")
                .build()
                .predict(Duration.ofHours(2));
        Air same = Air.varying(Map.of(Duration.ZERO, celsius(20), Duration.ofHours(2), celsius(15)));
        Prediction plain = Lumped.of(BOTTLE).expose(in(same, Duration.ofHours(2)));
        assertThat(late.vessel("wine").meanTemperatureK(7200)).isCloseTo(plain.meanTemperatureK(7200), within(2e-3));
    }

    @Test
    void beforeTheClockBeginsTheWeatherIsThatOfItsBeginning() {
        Air evening = Air.varying(Map.of(Duration.ZERO, celsius(28), Duration.ofHours(2), celsius(15)));
        ScenePrediction early = Scene.builder()
                .startingAfter(Duration.ofHours(-1))
                .gear("terrace", evening)
                .vessel("wine", BOTTLE, "terrace")
                .build()
                .predict(Duration.ofHours(2));
        Air same = Air.varying(Map.of(Duration.ofHours(1), celsius(28), Duration.ofHours(3), celsius(15)));
        Prediction plain = Lumped.of(BOTTLE).expose(in(same, Duration.ofHours(2)));
        assertThat(early.vessel("wine").meanTemperatureK(7200)).isCloseTo(plain.meanTemperatureK(7200), within(2e-3));
    }

    @Test
    void repeatedRunsAreEqualBitForBit() {
        double a = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(3))).meanTemperatureK(9000);
        double b = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(3))).meanTemperatureK(9000);
        assertThat(a).isEqualTo(b);
    }

    @Test
    void answersToWhen() {
        Prediction there = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(6)));
        assertThat(there.timeTo(celsius(10))).isInstanceOf(TimeToTemperature.Reached.class);
        assertThat(there.timeTo(celsius(22))).isEqualTo(new TimeToTemperature.Reached(Duration.ZERO, 0));
        TimeToTemperature.Reached ten = (TimeToTemperature.Reached) there.timeTo(celsius(10));
        TimeToTemperature.Reached less = (TimeToTemperature.Reached) there.timeTo(celsius(9.9));
        double slope = (less.after().toMillis() - ten.after().toMillis()) / 1000.0 / 0.1;
        assertThat(ten.secondsPerKelvin()).isCloseTo(slope, within(0.05 * slope));
        assertThat(there.meanTemperatureK(ten.after().toMillis() / 1000.0) - ZERO)
                .isCloseTo(10, within(1e-3));
        TimeToTemperature never = there.timeTo(celsius(4));
        assertThat(never).isInstanceOf(TimeToTemperature.NeverReached.class);
        assertThat(((TimeToTemperature.NeverReached) never).closestK() - ZERO).isBetween(5.0, 9.0);
        Prediction back = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(3)), in(ROOM, Duration.ofHours(4)));
        TimeToTemperature lost = back.timeTo(celsius(12));
        assertThat(lost).isInstanceOf(TimeToTemperature.ReachedThenLost.class);
        assertThat(((TimeToTemperature.ReachedThenLost) lost).lostAfter()).isGreaterThan(Duration.ofHours(3));
    }

    @Test
    void explanationAgreesWithTheCurve() {
        Prediction prediction = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(4)));
        Duration at = Duration.ofHours(2);
        Explanation explanation = prediction.explainAt(at);
        double here = prediction.meanTemperatureK(7200);
        double rate = (prediction.meanTemperatureK(7260) - prediction.meanTemperatureK(7140)) / 120;
        double fromCurve = -(here - ZERO - 5) / rate;
        assertThat(explanation.timeConstantS()).isCloseTo(fromCurve, within(0.06 * fromCurve));
        assertThat(explanation.text()).contains("outside decides").contains("Ra = ");
    }

    @Test
    void explanationDoesNotDependOnTheLocale() {
        Prediction prediction = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(1)));
        String text = prediction.explainAt(Duration.ofMinutes(30)).text();
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"tr-TR", "de-DE", "ar-EG"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(prediction.explainAt(Duration.ofMinutes(30)).text()).isEqualTo(text);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void partlyImmersedLumpedVesselsSaySo() {
        IceWaterBath low = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(200)), ROOM)
                .ice(kilograms(1.5), millimetres(25), celsius(-5))
                .water(kilograms(1.5), celsius(12))
                .build();
        assertThat(Lumped.of(BOTTLE).expose(in(low, Duration.ofMinutes(30))).notes())
                .anyMatch(note -> note.contains("only partly under water"));
        Prediction axial = Scene.builder()
                .gear("bath", low)
                .vessel("wine", BOTTLE, "bath", VesselModel.axial(), Posture.UPRIGHT)
                .build()
                .predict(Duration.ofMinutes(30))
                .vessel("wine");
        assertThat(axial.notes()).noneMatch(note -> note.contains("only partly under water"));
        double[] profile = axial.profileK(1800);
        assertThat(profile[0]).isLessThan(profile[profile.length - 1] - 10);
    }

    @Test
    void aBottleTooTallForItsBucketNeckFirstThenTurned() {
        // Fact of the trade (common practice, no source): such a bottle is put in neck first and turned over part-way.
        // Closed
        // bottle without sediment. Printed is what each way does to the mean and to what would be poured first.
        StringBuilder table =
                new StringBuilder("A bottle too tall for its bucket, after 20 and 40 min in stirred ice water:\n");
        double[] neckAt20 = new double[3];
        String[] ways = {"base only", "neck only", "neck, then base after 15 min"};
        List<List<String>> rows = new ArrayList<>();
        for (int way = 0; way < 3; way++) {
            IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(220)), ROOM)
                    .ice(kilograms(2.2), millimetres(25), celsius(-5))
                    .water(kilograms(2), celsius(10))
                    .agitation(Agitation.stirred(metresPerSecond(0.1)))
                    .build();
            Posture first = way == 0 ? Posture.UPRIGHT : Posture.INVERTED;
            Scene.Builder scene =
                    Scene.builder().gear("bath", bath).vessel("wine", BOTTLE, "bath", VesselModel.axial(), first);
            if (way == 2) {
                scene.move("wine", Duration.ofMinutes(15), "bath", Posture.UPRIGHT);
            }
            ScenePrediction run = scene.build().predict(Duration.ofMinutes(40));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            Prediction wine = run.vessel("wine");
            for (int minutes : new int[] {20, 40}) {
                double[] profile = wine.profileK(minutes * 60);
                table.append(String.format(
                        Locale.ROOT,
                        "%-28s %2d min: mean %4.1f, base %4.1f, neck %4.1f °C%n",
                        ways[way],
                        minutes,
                        wine.meanTemperatureK(minutes * 60) - ZERO,
                        profile[0] - ZERO,
                        profile[profile.length - 1] - ZERO));
                rows.add(List.of(
                        ways[way],
                        minutes + " min",
                        celsiusText(wine.meanTemperatureK(minutes * 60)),
                        celsiusText(profile[0]),
                        celsiusText(profile[profile.length - 1])));
            }
            double[] profile = wine.profileK(1200);
            neckAt20[way] = profile[profile.length - 1] - ZERO;
        }
        System.out.println(table);
        DocumentParts.leaveTable(
                "surroundings-neck-first", List.of("Way", "After", "Mean", "At the base", "In the neck"), rows);
        // Base only leaves the first glass at room temperature; turning over mixes and chills it.
        assertThat(neckAt20[0]).isGreaterThan(21);
        assertThat(neckAt20[2]).isLessThan(18);
    }

    private static String celsiusText(double temperatureK) {
        return String.format(Locale.ROOT, "%.1f °C", temperatureK - ZERO);
    }

    @Test
    void badScenesAreRefused() {
        assertThatThrownBy(() -> Scene.builder().build()).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> Scene.builder().gear(" ", ROOM)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Scene.builder().gear("a", ROOM).gear("a", ROOM))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Scene.builder().gear("a", ROOM).vessel("v", BOTTLE, "b"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[a]");
        Scene.Builder one = Scene.builder().gear("a", ROOM).vessel("v", BOTTLE, "a");
        assertThatThrownBy(() -> one.move("w", Duration.ofMinutes(1), "a"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> one.move("v", Duration.ZERO, "a")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> one.move("v", Duration.ofMinutes(1), "x"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> one.build().predict(Duration.ZERO)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> one.build().predict(Duration.ofDays(40))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> one.build().predict(Duration.ofHours(1)).vessel("x"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        Scene.builder().gear("late", ROOM, Duration.ofHours(1)).vessel("v", BOTTLE, "late"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("prepared");
        assertThatThrownBy(() -> Scene.builder().startingAfter(Duration.ofDays(-400)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> in(ROOM, Duration.ZERO)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Lumped.of(BOTTLE).expose()).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VesselModel.axial(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VesselModel.axial(0)).isInstanceOf(IllegalArgumentException.class);
        Prediction prediction = Lumped.of(BOTTLE).expose(in(COLD, Duration.ofHours(1)));
        assertThatThrownBy(() -> prediction.meanTemperatureAt(Duration.ofHours(2)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
