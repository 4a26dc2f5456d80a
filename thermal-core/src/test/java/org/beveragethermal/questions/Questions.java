/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.questions;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.watts;
import static org.beveragethermal.materials.units.Measures.wattsPerMetreKelvin;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.FreezingHazard;
import org.beveragethermal.core.hazard.ThermalShock;
import org.beveragethermal.core.icemaking.FreezerAir;
import org.beveragethermal.core.icemaking.IceBatches;
import org.beveragethermal.core.icemaking.IceMaking;
import org.beveragethermal.core.icemaking.IceMould;
import org.beveragethermal.core.inversion.Chances;
import org.beveragethermal.core.inversion.Holding;
import org.beveragethermal.core.inversion.Passing;
import org.beveragethermal.core.inversion.Past;
import org.beveragethermal.core.inversion.RequiredValues;
import org.beveragethermal.core.inversion.Stages;
import org.beveragethermal.core.inversion.StartSearch;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.serving.LastGlass;
import org.beveragethermal.core.serving.PouringAim;
import org.beveragethermal.core.serving.Serving;
import org.beveragethermal.core.storage.RoomResponse;
import org.beveragethermal.core.storage.StorageFigures;
import org.beveragethermal.core.storage.StoragePressure;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;

/** The questions. Bottles, rooms and times are of our own invention. */
final class Questions {

    /** Draws for what has an interval. */
    static final int DRAWS = 20;

    /** Their seed. */
    static final long SEED = 20260103L;

    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Vessel BOTTLE = Vessels.highShouldered750();
    private static final FilledVessel AT_20 = BOTTLE.filledWith(WINE, celsius(20));
    private static final FilledVessel AT_8 = BOTTLE.filledWith(WINE, celsius(8));
    private static final Refrigerator FRIDGE = Refrigerator.at(celsius(5)).on(Footing.open());
    private static final Refrigerator FREEZER = Refrigerator.at(celsius(-18)).on(Footing.open());
    private static final Air ROOM = Air.at(celsius(22)).withRelativeHumidity(percent(50));
    private static final Air TERRACE = Air.at(celsius(28)).withRelativeHumidity(percent(50));
    private static final Wanted WHITE = Wanted.between(celsius(8), celsius(10));
    private static final Duration FIVE_HOURS = Duration.ofHours(5);
    private static final Serving GLASS = Serving.of(
                    WINE, millilitres(125), Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125)), celsius(22))
            .in(ROOM)
            .drunkOver(Duration.ofMinutes(12));

    private static final Serving TEA = Serving.of(
                    Beverage.tea(), millilitres(200), Vessels.of(VesselShape.MUG, millilitres(250)), celsius(22))
            .in(ROOM)
            .drunkOver(Duration.ofMinutes(12));

    private Questions() {}

    /** All of them, in the order of the page. */
    static List<Question> all() {
        return Stream.of(starts(), rooms(), values(), past(), serving(), ice(), keeping(), hazards())
                .flatMap(List::stream)
                .toList();
    }

    private static Prediction forward(Runs runs, FilledVessel vessel, Surroundings place, Duration time) {
        return Lumped.of(vessel).with(runs.solver()).expose(in(place, time));
    }

    private static Chances chances(Runs runs) {
        return Chances.of(draws(runs));
    }

    private static PredictionEnsemble draws(Runs runs) {
        return PredictionEnsemble.of(
                Ensemble.of(DRAWS, SEED),
                LawScatter.all(),
                draw -> Lumped.of(AT_20)
                        .with(runs.solver().withMultipliers(draw.values()))
                        .expose(in(FRIDGE, FIVE_HOURS)));
    }

    private static List<Question> starts() {
        return List.of(
                new Question(
                        "How warm is a bottle of 20 °C after three hours in a refrigerator at 5 °C?",
                        "Prediction.meanTemperatureK",
                        runs -> format(
                                "%.1f °C.",
                                forward(runs, AT_20, FRIDGE, Duration.ofHours(3))
                                                .meanTemperatureK(10_800)
                                        - 273.15)),
                new Question("How sure is that?", "PredictionEnsemble.temperatureK", runs -> {
                    Interval interval = draws(runs).temperatureK(Duration.ofHours(3), 0.9);
                    return format(
                            "90 %% of the draws lie from %.1f °C to %.1f °C.",
                            interval.low() - 273.15, interval.high() - 273.15);
                }),
                new Question(
                        "Can it be at 8 °C or below in 45 min?",
                        "StartSearch.latestStart",
                        runs -> StartSearch.of(AT_20, FRIDGE)
                                .with(runs.solver())
                                .latestStart(Wanted.between(celsius(5), celsius(8)), Duration.ofMinutes(45))
                                .explain()),
                new Question(
                        "When must it go in at the latest, to be at 8 °C to 10 °C in five hours?",
                        "StartSearch.latestStart",
                        runs -> StartSearch.of(AT_20, FRIDGE)
                                .with(runs.solver())
                                .latestStart(WHITE, FIVE_HOURS)
                                .explain()),
                new Question(
                        "When, to be sure with 90 %?",
                        "Chances.latestStart",
                        runs -> chances(runs)
                                .latestStart(Wanted.between(celsius(6), celsius(10)), FIVE_HOURS, 0.9)
                                .explain()),
                new Question(
                        "How probable is 8 °C to 10 °C after three hours?",
                        "Chances.inRange",
                        runs -> chances(runs)
                                .inRange(WHITE, Duration.ofHours(3))
                                .explain()),
                new Question(
                        "How early can it be ready?",
                        "StartSearch.earliestReady",
                        runs -> StartSearch.of(AT_20, FRIDGE)
                                .with(runs.solver())
                                .earliestReady(WHITE, FIVE_HOURS)
                                .explain()),
                new Question(
                        "Until when does a bottle of 8 °C on a table at 22 °C keep below 12 °C?",
                        "Holding.until",
                        runs -> Holding.until(
                                        forward(runs, AT_8, ROOM, Duration.ofHours(3)),
                                        Wanted.between(celsius(7), celsius(12)),
                                        Duration.ZERO)
                                .explain()),
                new Question(
                        "When does it pass 14 °C, and how sure is that to a twentieth of a kelvin?",
                        "Passing.of",
                        runs -> Passing.of(
                                        forward(runs, AT_8, ROOM, Duration.ofHours(3)),
                                        celsius(14),
                                        kelvinDifference(0.05))
                                .explain()),
                new Question(
                        "How long in a freezer, then in an ice bucket, for 7 °C to 9 °C?",
                        "Stages.endingAt",
                        runs -> Stages.of(
                                        AT_20,
                                        in(FREEZER, Duration.ofMinutes(40)),
                                        in(bucket(2.5, 25), Duration.ofMinutes(30)))
                                .with(runs.solver())
                                .withSteps(4)
                                .endingAt(Wanted.between(celsius(7), celsius(9)))
                                .explain()));
    }

    /** What happens in rooms and cabinets that a host finds rather than chooses. */
    private static List<Question> rooms() {
        Wanted red = Wanted.between(celsius(16), celsius(18));
        FilledVessel can = Vessels.of(VesselShape.CAN, millilitres(330))
                .filledWith(Beverage.beer(percentByVolume(5)), celsius(20));
        Refrigerator cycling = Refrigerator.cycling(celsius(5), kelvinDifference(3), Duration.ofHours(1))
                .on(Footing.open());
        return List.of(
                new Question(
                        "A red has stood at 25 °C: how long in a room of 12 °C until it is right, at 16 °C to 18 °C?",
                        "StartSearch.earliestReady",
                        runs -> StartSearch.of(BOTTLE.filledWith(WINE, celsius(25)), Air.at(celsius(12)))
                                .with(runs.solver())
                                .earliestReady(red, Duration.ofHours(12))
                                .explain()),
                new Question(
                        "And one from a cellar of 12 °C, in a room of 21 °C?",
                        "StartSearch.earliestReady",
                        runs -> StartSearch.of(BOTTLE.filledWith(WINE, celsius(12)), Air.at(celsius(21)))
                                .with(runs.solver())
                                .earliestReady(red, Duration.ofHours(12))
                                .explain()),
                new Question(
                        "The air of a refrigerator swings by 3 K either way of 5 °C every hour: when is a can at 5.5 °C?",
                        "Passing.of",
                        runs -> Passing.of(
                                        forward(runs, can, cycling, Duration.ofHours(8)),
                                        celsius(5.5),
                                        kelvinDifference(0.05))
                                .explain()));
    }

    /** Ice that must be made before. */
    private static List<Question> ice() {
        IceMould cell = IceMould.cell(millimetres(35), millimetres(35), millimetres(35), IceMould.Faces.TOP_AND_FLOOR)
                .withWall(millimetres(1.5), wattsPerMetreKelvin(0.2));
        IceMould block = IceMould.cell(
                        millimetres(100), millimetres(180), millimetres(55), IceMould.Faces.TOP_AND_FLOOR)
                .withWall(millimetres(1.5), wattsPerMetreKelvin(0.2));
        return List.of(
                new Question(
                        "How early must 3 kg of ice be begun, with two trays of 12 cubes of 35 mm, in a freezer of −18 °C?",
                        "IceBatches.of",
                        runs -> batches(runs, cell, 24)),
                new Question(
                        "And in three boxes of 1 L, as blocks?", "IceBatches.of", runs -> batches(runs, block, 3)));
    }

    private static String batches(Runs runs, IceMould mould, int moulds) {
        IceMaking making = IceMaking.of(mould, FreezerAir.at(celsius(-18)), celsius(15));
        IceBatches batches = IceBatches.of(kilograms(3), making, moulds, watts(60));
        runs.add();
        return format(
                "%d fillings of %.2f kg, %.1f h each%s: begin %.0f h before.",
                batches.batches(),
                batches.kgPerBatch(),
                batches.perBatch().toMinutes() / 60.0,
                batches.freezerDecides() ? " for want of power of the freezer" : "",
                Math.ceil(batches.inAll().toMinutes() / 60.0));
    }

    private static IceWaterBath bucket(double iceKg, double sideMm) {
        return IceWaterBath.in(Bucket.of(millimetres(200), millimetres(240)), ROOM)
                .ice(kilograms(iceKg), millimetres(sideMm), celsius(-5))
                .water(kilograms(2.5), celsius(14))
                .build();
    }

    private static List<Question> values() {
        Duration quarter = Duration.ofMinutes(20);
        return List.of(
                new Question(
                        "How cold must a refrigerator be for 8 °C after 45 min?",
                        "RequiredValues.refrigeratorTemperature",
                        runs -> ask(runs)
                                .refrigeratorTemperature(celsius(-30), celsius(8))
                                .temperatureAt(Duration.ofMinutes(45), celsius(8))
                                .explain()),
                new Question(
                        "How much ice in a bucket with 2.5 kg of water of 14 °C, for 12 °C after 20 min?",
                        "RequiredValues.iceMass",
                        runs -> ask(runs)
                                .iceMass(
                                        kilograms(0.2),
                                        kilograms(3),
                                        mass -> bucket(mass.getValue().doubleValue(), 25))
                                .temperatureAt(quarter, celsius(12))
                                .explain()),
                new Question(
                        "How small must the blocks be, with 1.5 kg of ice, for 12 °C?",
                        "RequiredValues.blockSide",
                        runs -> ask(runs)
                                .blockSide(
                                        millimetres(8),
                                        millimetres(80),
                                        side -> bucket(
                                                1.5, 1000 * side.getValue().doubleValue()))
                                .temperatureAt(quarter, celsius(12))
                                .explain()),
                new Question(
                        "How far must a tap of 11 °C be open, for 14 °C after 10 min?",
                        "RequiredValues.tapFlow",
                        runs -> ask(runs)
                                .tapFlow(celsius(11), ROOM, litresPerMinute(0.5), litresPerMinute(15))
                                .temperatureAt(Duration.ofMinutes(10), celsius(14))
                                .explain()),
                new Question(
                        "What wind of 6 °C brings it to 12 °C in 75 min?",
                        "RequiredValues.airSpeed",
                        runs -> ask(runs)
                                .airSpeed(Air.at(celsius(6)), metresPerSecond(0), metresPerSecond(6))
                                .temperatureAt(Duration.ofMinutes(75), celsius(12))
                                .explain()));
    }

    private static RequiredValues ask(Runs runs) {
        return RequiredValues.of(AT_20).with(runs.solver());
    }

    private static List<Question> past() {
        return List.of(
                new Question(
                        "A bottle kept at 6 °C is at 10 °C in a room of 22 °C: when was it taken out?",
                        "Past.takenOut",
                        runs -> Past.of(AT_8, ROOM)
                                .with(runs.solver())
                                .takenOut(celsius(6), celsius(10), Duration.ofHours(6))
                                .explain()),
                new Question(
                        "It is at 10 °C and has stood there for 20 min: how warm was it?",
                        "Past.was",
                        runs -> Past.of(AT_8, ROOM)
                                .with(runs.solver())
                                .was(celsius(10), Duration.ofMinutes(20), celsius(0), celsius(20))
                                .explain()));
    }

    private static List<Question> serving() {
        Wanted range = Wanted.between(celsius(8), celsius(12));
        List<Duration> times = Stream.of(0, 25, 50, 75).map(Duration::ofMinutes).toList();
        return List.of(
                new Question(
                        "How cold must a white be poured, to be drunk at 8 °C to 12 °C in 12 min at 22 °C?",
                        "PouringAim.aim",
                        runs -> PouringAim.of(GLASS.with(runs.solver()))
                                .withDraws(DRAWS / 2, SEED)
                                .aim(range)
                                .explain()),
                new Question(
                        "And on a terrace of 28 °C, in a glass of 28 °C, in 20 min?",
                        "PouringAim.aim",
                        runs -> PouringAim.of(GLASS.in(TERRACE)
                                        .withGlassAt(celsius(28))
                                        .drunkOver(Duration.ofMinutes(20))
                                        .with(runs.solver()))
                                .withDraws(DRAWS / 2, SEED)
                                .aim(range)
                                .explain()),
                new Question(
                        "How hot must tea be poured into a mug of 22 °C, to be drunk at 55 °C to 65 °C in 12 min, never above 80 °C?",
                        "PouringAim.aim",
                        runs -> PouringAim.of(TEA.with(runs.solver()))
                                .notAbove(celsius(80))
                                .withDraws(DRAWS / 2, SEED)
                                .aim(Wanted.between(celsius(55), celsius(65)))
                                .explain()),
                new Question(
                        "A bottle of 8 °C stays on the table: how warm is each glass?",
                        "LastGlass.pouredAt",
                        runs -> LastGlass.of(AT_8, ROOM, GLASS)
                                .with(runs.solver())
                                .pouredAt(times)
                                .explain()),
                new Question(
                        "And if it stays in an ice bucket?",
                        "LastGlass.pouredAt",
                        runs -> LastGlass.of(AT_8, bucket(1.5, 25), GLASS)
                                .with(runs.solver())
                                .pouredAt(times)
                                .explain()));
    }

    private static List<Question> keeping() {
        Duration week = Duration.ofDays(7);
        Air cupboard = Air.periodic(celsius(18), kelvinDifference(4), Duration.ofDays(1), Duration.ofHours(15));
        double[] timesS = new double[7 * 48 + 1];
        double[] roomK = new double[timesS.length];
        for (int i = 0; i < timesS.length; i++) {
            timesS[i] = 1800.0 * i;
            roomK[i] = 273.15 + 18 + 4 * Math.cos(2 * Math.PI * (timesS[i] / 86_400 - 15 / 24.0));
        }
        TemperatureHistory room = TemperatureHistory.of(timesS, roomK);
        FilledVessel stored = BOTTLE.filledWith(WINE, celsius(18));
        return List.of(
                new Question(
                        "A week in a cupboard of 18 ± 4 °C a day: what does the wine see?",
                        "StorageFigures.of",
                        runs -> StorageFigures.of(
                                        TemperatureHistory.of(forward(runs, stored, cupboard, week)),
                                        celsius(10),
                                        celsius(18))
                                .explain()),
                new Question(
                        "How much of the day's swing reaches it, and how late?",
                        "RoomResponse.swing",
                        runs -> RoomResponse.of(room, TemperatureHistory.of(forward(runs, stored, cupboard, week)))
                                .swing(Duration.ofDays(1))
                                .explain()),
                new Question(
                        "What does that do under the closure?",
                        "StoragePressure.explain",
                        runs -> StoragePressure.of(
                                        ClosedVessel.of(stored),
                                        TemperatureHistory.of(forward(runs, stored, cupboard, week)))
                                .explain()));
    }

    private static List<Question> hazards() {
        Liquid sparkling = Beverage.sparklingWine(percentByVolume(12.5));
        FilledVessel full = Vessels.sparkling750().filledWith(sparkling, celsius(20));
        return List.of(
                new Question(
                        "A bottle is forgotten in a freezer at −18 °C: when does it freeze, when is it full?",
                        "FreezingHazard.explain",
                        runs -> FreezingHazard.of(
                                        forward(runs, AT_20, FREEZER, Duration.ofHours(24)), ClosedVessel.of(AT_20))
                                .explain()),
                new Question(
                        "One hour after it went in: how long is left?",
                        "FreezingHazard.timeLeft",
                        runs -> FreezingHazard.of(
                                        forward(runs, AT_20, FREEZER, Duration.ofHours(24)), ClosedVessel.of(AT_20))
                                .timeLeft(Duration.ofHours(1))
                                .explain()),
                new Question(
                        "What pressure has a sparkling bottle at 30 °C?",
                        "ClosedVessel.pressureAt",
                        runs -> ClosedVessel.of(full).pressureAt(celsius(30)).explain()),
                new Question(
                        "Does a glass of 60 °C bear water of 10 °C?",
                        "ThermalShock.ofPlunge",
                        runs -> ThermalShock.ofPlunge(Vessels.tastingGlass(), celsius(60), celsius(10))
                                .explain()));
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
