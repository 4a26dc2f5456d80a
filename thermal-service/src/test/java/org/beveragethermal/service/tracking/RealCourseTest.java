/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.caution.SignalWord;
import org.junit.jupiter.api.Test;

/** The filter follows courses of the full model that it does not know: a refrigerator that is not as cold as said, a move, a freezer. */
class RealCourseTest {

    private static final double ZERO = Truth.ZERO;
    private static final Air ROOM = Air.at(celsius(23));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(21));
    private static final TrackedModel MODEL = TrackedModel.from("bottle", BOTTLE)
            .medium("refrigerator", Refrigerator.at(celsius(5)), 1, 0.2)
            .medium("room", ROOM, 1, 0.2)
            .medium("freezer", Air.at(celsius(-18)), 1, 0.2)
            .sensor(Sensor.inDrink(0.3, 0.1))
            .build();
    private static final Tracker TRACKER = Tracker.of(List.of(MODEL), TrackingRules.usual());

    private static Fleet placed(String medium) {
        Fleet fleet = Fleet.of(TRACKER);
        fleet.apply(List.of(new TrackingEvent.Placed("p", Truth.START, "b", "bottle", medium, ZERO + 21, 0.5)));
        return fleet;
    }

    @Test
    void refrigeratorThatIsWarmerThanSaid() {
        Prediction course = Scene.builder()
                .gear("refrigerator", Refrigerator.at(celsius(6.2)))
                .gear("room", ROOM)
                .vessel("b", BOTTLE, "refrigerator")
                .move("b", Duration.ofHours(5), "room")
                .build()
                .predict(Duration.ofHours(7))
                .vessel("b");
        Truth noise = new Truth(new SplittableRandom(20_261_211), Truth.MODEL, ZERO, 0);
        Fleet fleet = placed("refrigerator");
        int inside = 0;
        for (int minute = 2; minute <= 420; minute += 2) {
            if (minute == 302) {
                fleet.apply(List.of(new TrackingEvent.Moved("m", Truth.after(300 * 60), "b", "room")));
            }
            double truth = course.meanTemperatureK(60 * minute);
            Fleet.Report report = fleet.apply(List.of(new TrackingEvent.Reading(
                    "r" + minute, Truth.after(60.0 * minute), "b", truth + 0.3 * noise.normal())));
            assertThat(report.alerts()).isEmpty();
            Estimate estimate = fleet.vessel("b").orElseThrow().estimate();
            inside += estimate.lowK() <= truth && truth <= estimate.highK() ? 1 : 0;
            if (minute == 40) {
                arrives(course, fleet, minute);
            }
        }
        assertThat(inside / 210.0).isGreaterThan(0.8);
        assertThat(fleet.vessel("b").orElseThrow().estimate().mediumK()).isCloseTo(ZERO + 23, within(1.5));
    }

    private static void arrives(Prediction course, Fleet fleet, int minute) {
        TimeToTemperature.Reached real = (TimeToTemperature.Reached) Scene.builder()
                .gear("refrigerator", Refrigerator.at(celsius(6.2)))
                .vessel("b", BOTTLE, "refrigerator")
                .build()
                .predict(Duration.ofHours(7))
                .vessel("b")
                .timeTo(celsius(10));
        assertThat(course.end()).isEqualTo(Duration.ofHours(7));
        Arrival.Expected expected =
                (Arrival.Expected) fleet.vessel("b").orElseThrow().timeTo(celsius(10));
        Duration left = real.after().minus(Duration.ofMinutes(minute));
        assertThat(left).isBetween(expected.earliest(), expected.latest().orElseThrow());
    }

    /** Said while the bottle is still liquid, with time to act; and the freezing drink hardly cools. */
    @Test
    void freezerIsSaidAheadOfTime() {
        Prediction course = Scene.builder()
                .gear("freezer", Air.at(celsius(-18)))
                .vessel("b", BOTTLE, "freezer")
                .build()
                .predict(Duration.ofHours(6))
                .vessel("b");
        Truth noise = new Truth(new SplittableRandom(20_261_212), Truth.MODEL, ZERO, 0);
        Fleet fleet = placed("freezer");
        double aheadAt = 0;
        double frozenAt = 0;
        for (int minute = 2; minute <= 300; minute += 2) {
            Fleet.Report report = fleet.apply(List.of(new TrackingEvent.Reading(
                    "r" + minute,
                    Truth.after(60.0 * minute),
                    "b",
                    course.meanTemperatureK(60 * minute) + 0.3 * noise.normal())));
            for (Alert alert : report.alerts()) {
                aheadAt = alert.code() == Alert.Code.FREEZING_AHEAD ? minute : aheadAt;
                frozenAt = alert.code() == Alert.Code.FREEZING && frozenAt == 0 ? minute : frozenAt;
            }
            if (!report.instructions().isEmpty()) {
                assertThat(report.instructions().get(0).code()).isEqualTo(Instruction.Code.TAKE_OUT);
                assertThat(report.instructions().get(0).facts().destinationId()).contains("refrigerator");
            }
        }
        TimeToTemperature.Reached onset = (TimeToTemperature.Reached)
                course.timeTo(SiValues.celsiusOf(MODEL.freezingK().orElseThrow() + 0.01));
        double realMinutes = onset.after().toSeconds() / 60.0;
        assertThat(realMinutes - aheadAt).isBetween(40.0, 75.0);
        // The onset itself is met within a few readings only: the law is a tenth of a kelvin off there, and the course
        // is flat.
        assertThat(realMinutes - frozenAt).isBetween(-6.0, 25.0);
        Estimate last = fleet.vessel("b").orElseThrow().estimate();
        assertThat(last.temperatureK()).isCloseTo(course.meanTemperatureK(300 * 60), within(1.0));
        // Alone, without readings, it stays within some kelvins of the real course while it freezes.
        Estimate alone = placed("freezer").vessel("b").orElseThrow().estimateAt(Truth.after(300 * 60));
        assertThat(alone.temperatureK()).isCloseTo(course.meanTemperatureK(300 * 60), within(3.0));
    }

    @Test
    void whatMayHoldIceIsNotPoured() {
        Fleet fleet = placed("freezer");
        fleet.apply(List.of(
                new TrackingEvent.Ordered("o", Truth.START, "b", TrackingEvent.Goal.between(celsius(-9), celsius(8)))));
        boolean poured = false;
        boolean frozen = false;
        for (int minute = 2; minute <= 300; minute += 2) {
            Fleet.Report report =
                    fleet.apply(List.of(new TrackingEvent.TimePassed("t" + minute, Truth.after(60.0 * minute), "b")));
            frozen |= report.alerts().stream().anyMatch(alert -> alert.code() == Alert.Code.FREEZING);
            boolean pour = report.instructions().stream().anyMatch(to -> to.code() == Instruction.Code.POUR_NOW);
            assertThat(pour && frozen).isFalse();
            poured |= pour;
        }
        assertThat(poured && frozen).isTrue();
        // Wanted only when it is frozen already: alert first, and nobody is told to open it.
        fleet.apply(List.of(new TrackingEvent.Ordered(
                "o2", Truth.after(18_001), "b", TrackingEvent.Goal.between(celsius(8), celsius(10)))));
        Fleet.Report again = fleet.apply(List.of(new TrackingEvent.Ordered(
                "o3", Truth.after(18_002), "b", TrackingEvent.Goal.between(celsius(-17), celsius(8)))));
        assertThat(again.instructions()).noneMatch(to -> to.code() == Instruction.Code.POUR_NOW);
    }

    /** IARC Monographs 116: very hot above 65 °C. */
    @Test
    void whatIsPouredVeryHotIsWarnedOf() {
        FilledVessel mug =
                Vessels.of(VesselShape.MUG, millilitres(250)).filledWith(Beverage.tea(), millilitres(200), celsius(85));
        TrackedModel model = TrackedModel.from("mug", mug).medium("room", ROOM).build();
        Fleet fleet = Fleet.of(Tracker.of(List.of(model), TrackingRules.usual()));
        List<Alert> hot = new ArrayList<>();
        fleet.apply(List.of(
                new TrackingEvent.Placed("p", Truth.START, "c", "mug", "room", ZERO + 85, 0.5),
                new TrackingEvent.Ordered(
                        "o", Truth.START, "c", TrackingEvent.Goal.between(celsius(50), celsius(75)))));
        boolean poured = false;
        for (int minute = 1; minute <= 60; minute++) {
            Fleet.Report report =
                    fleet.apply(List.of(new TrackingEvent.TimePassed("t" + minute, Truth.after(60.0 * minute), "c")));
            report.alerts().stream()
                    .filter(alert -> alert.code() == Alert.Code.VERY_HOT)
                    .forEach(hot::add);
            boolean pour = report.instructions().stream().anyMatch(to -> to.code() == Instruction.Code.POUR_NOW);
            assertThat(!pour || hot.size() == 1).isTrue();
            poured |= pour;
        }
        assertThat(poured).isTrue();
        assertThat(hot).singleElement().satisfies(alert -> {
            assertThat(alert.code().signal()).isEqualTo(SignalWord.WARNING);
            assertThat(alert.facts().limitK()).isEqualTo(338.15);
        });
    }
}
