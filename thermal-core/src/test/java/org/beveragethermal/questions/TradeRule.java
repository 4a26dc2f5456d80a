/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.questions;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Footing;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;
import org.beveragethermal.core.uncertainty.TimeSpread;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;

/**
 * A rule of thumb about times beside the model; common practice, no source. Nothing was tuned to any of them.
 *
 * @param rule what is said
 * @param id short name of its row among the rules of thumb
 * @param saidS the time that is said, from and to [s]
 * @param vessel the bottle
 * @param fromC temperature at the start [°C]
 * @param place where it is put
 * @param toC temperature it is said to reach [°C]
 * @param saidAfter the time at which the model's temperature is told as well
 * @param longest how long is looked
 * @param remark what to make of it, in words
 */
record TradeRule(
        String id,
        String rule,
        Said saidS,
        Vessel vessel,
        double fromC,
        Surroundings place,
        double toC,
        Duration saidAfter,
        Duration longest,
        String remark) {

    /** A time that is said, from and to [s]. */
    record Said(double fromS, double toS) {

        static Said minutes(double from, double to) {
            return new Said(60 * from, 60 * to);
        }

        /** "About" is taken as a fifth either way, a judgement. */
        static Said about(Duration time) {
            double timeS = time.toMillis() / 1000.0;
            return new Said(0.8 * timeS, 1.2 * timeS);
        }

        double middleS() {
            return 0.5 * (fromS + toS);
        }
    }

    private static final double COVERAGE = 0.9;

    static List<TradeRule> all() {
        Vessel bottle = Vessels.highShouldered750();
        Air room = Air.at(celsius(21));
        return List.of(
                new TradeRule(
                        "trade-white-45-min",
                        "a white of 20 °C is at 8 °C after 45 min in a refrigerator at 5 °C",
                        Said.about(Duration.ofMinutes(45)),
                        bottle,
                        20,
                        Refrigerator.at(celsius(5)).on(Footing.open()),
                        8,
                        Duration.ofMinutes(45),
                        Duration.ofHours(10),
                        "out of reach: still air takes hours, whatever its films; in that time only a freezer does it"),
                new TradeRule(
                        "trade-ice-bucket",
                        "an ice bucket takes a bottle from 18 °C to 8 °C in 10 to 15 min",
                        Said.minutes(10, 15),
                        bottle,
                        18,
                        bucket(200, 350, room),
                        8,
                        Duration.ofMinutes(15),
                        Duration.ofHours(2),
                        "still water between the ice is layered; stirring halves that, to about the rule's time"),
                new TradeRule(
                        "trade-ice-bucket-magnum",
                        "a magnum takes about 25 min in it",
                        Said.about(Duration.ofMinutes(25)),
                        Vessels.magnum(),
                        18,
                        bucket(240, 430, room),
                        8,
                        Duration.ofMinutes(25),
                        Duration.ofHours(2),
                        "still water too, in a bucket that is wider"),
                new TradeRule(
                        "trade-red-half-a-day",
                        "a red of 13 °C warms in a room of 21 °C over half a day: to within a kelvin of it",
                        Said.about(Duration.ofHours(12)),
                        bottle,
                        13,
                        room,
                        20,
                        Duration.ofHours(12),
                        Duration.ofHours(24),
                        "what can be tasted is over long before; read as below the rule holds"),
                new TradeRule(
                        "trade-red-half-a-day-tenth",
                        "the same, to within a tenth of a kelvin",
                        Said.about(Duration.ofHours(12)),
                        bottle,
                        13,
                        room,
                        20.9,
                        Duration.ofHours(12),
                        Duration.ofHours(24),
                        "so read, half a day is the time after which nothing is left to warm"),
                new TradeRule(
                        "trade-table-kelvin",
                        "a bottle on a table warms by a kelvin in 10 to 15 min: a white of 8 °C at 21 °C, by 4 K",
                        Said.minutes(40, 60),
                        bottle,
                        8,
                        room,
                        12,
                        Duration.ofHours(1),
                        Duration.ofHours(3),
                        "that is the first hour, of which the rule speaks"),
                new TradeRule(
                        "trade-table-kelvin-later",
                        "the same, when it is at 16 °C: by a kelvin more",
                        Said.minutes(10, 15),
                        bottle,
                        16,
                        room,
                        17,
                        Duration.ofMinutes(15),
                        Duration.ofHours(3),
                        "the nearer to the room the slower: the rule holds for cold bottles only"));
    }

    private static IceWaterBath bucket(double widthMm, double heightMm, Air room) {
        double litres = Math.PI / 4 * widthMm * widthMm * heightMm / 1e6;
        return IceWaterBath.in(Bucket.of(millimetres(widthMm), millimetres(heightMm)), room)
                .ice(kilograms(0.28 * litres), millimetres(25), celsius(-5))
                .water(kilograms(0.38 * litres), celsius(14))
                .build();
    }

    private Prediction run(NetworkSolver solver) {
        return Lumped.of(vessel.filledWith(Beverage.wine(percentByVolume(12.5)), celsius(fromC)))
                .with(solver)
                .expose(in(place, longest));
    }

    /** Median and interval of the time, over draws. */
    TimeSpread spread() {
        return PredictionEnsemble.of(
                        Ensemble.of(Questions.DRAWS, Questions.SEED),
                        LawScatter.all(),
                        draw -> run(NetworkSolver.standard().withMultipliers(draw.values())))
                .timeTo(celsius(toC), COVERAGE);
    }

    /** The row of the page; its first column also goes among the rules of thumb. */
    List<String> row() {
        TimeSpread spread = spread();
        double thenC = run(NetworkSolver.standard()).meanTemperatureK(saidAfter.toMillis() / 1000.0) - 273.15;
        String verdict = (agrees(spread) ? "they agree: " : "they differ: ") + remark;
        spread.median()
                .ifPresent(median -> OutsideChecks.ruleOfThumb(
                        id, rule, saidS.middleS() / 60, median.toMillis() / 60_000.0, "min", verdict));
        return List.of(
                rule,
                said(),
                text(spread.median()),
                text(spread.earliest()) + " to " + text(spread.latest()),
                String.format(Locale.ROOT, "%.1f °C after %s", thenC, text(Optional.of(saidAfter))),
                verdict);
    }

    /** Whether what is said and what the draws say have a time in common. */
    private boolean agrees(TimeSpread spread) {
        double earliestS = spread.earliest().map(t -> t.toMillis() / 1000.0).orElse(Double.POSITIVE_INFINITY);
        double latestS = spread.latest().map(t -> t.toMillis() / 1000.0).orElse(Double.POSITIVE_INFINITY);
        return earliestS <= saidS.toS() && latestS >= saidS.fromS();
    }

    private String said() {
        return text(Optional.of(Duration.ofSeconds(Math.round(saidS.fromS())))) + " to "
                + text(Optional.of(Duration.ofSeconds(Math.round(saidS.toS()))));
    }

    private static String text(Optional<Duration> time) {
        return time.map(t -> t.toMinutes() < 100
                        ? String.format(Locale.ROOT, "%.0f min", t.toMillis() / 60_000.0)
                        : String.format(Locale.ROOT, "%.1f h", t.toMillis() / 3_600_000.0))
                .orElse("never");
    }
}
