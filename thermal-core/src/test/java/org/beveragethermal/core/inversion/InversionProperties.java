/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/** What is asked backward and put forward again is what was asked, whatever the temperatures; never answers "yes" where forward says no. */
final class InversionProperties {

    private static final double ZERO = 273.15;
    private static final Duration LONG = Duration.ofHours(10);
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));

    private static FilledVessel from(double start) {
        return BOTTLE.atTemperature(celsius(start));
    }

    @Property(seed = "20260711", tries = 40)
    @Label(
            "Start: the age at the latest start is the time to the temperature, and there is none where that is never reached")
    void theLatestStartIsTheTimeToTheTemperature(
            @ForAll @DoubleRange(min = 2, max = 30) double start,
            @ForAll @DoubleRange(min = -25, max = 35) double medium,
            @ForAll @DoubleRange(min = -12, max = 34) double target) {
        Air air = Air.at(celsius(medium));
        Prediction forward = Lumped.of(from(start)).expose(in(air, LONG));
        TimeToTemperature time = forward.timeTo(celsius(target));
        StartAnswer answer = StartSearch.of(from(start), air).latestStart(Wanted.at(celsius(target)), LONG);
        if (time instanceof TimeToTemperature.NeverReached never) {
            StartAnswer.Never none = (StartAnswer.Never) answer;
            assertThat(none.closestK()).isBetween(235.0, 310.0);
            assertThat(Math.abs(none.closestK() - ZERO - target))
                    .isLessThanOrEqualTo(Math.abs(never.closestK() - ZERO - target) + 1e-6);
            return;
        }
        double afterS = time instanceof TimeToTemperature.Reached reached
                ? Times.seconds(reached.after())
                : Times.seconds(((TimeToTemperature.ReachedThenLost) time).after());
        StartAnswer.Starts starts = (StartAnswer.Starts) answer;
        double ageS = Times.seconds(LONG.minus(starts.latest()));
        assertThat(ageS).isCloseTo(afterS, within(0.1));
        assertThat(forward.meanTemperatureK(ageS) - ZERO).isCloseTo(target, within(1e-3));
        // Below its freezing point a drink of this strength holds ice, and the answer says so.
        assertThat(starts.warnings().stream().anyMatch(text -> text.contains("begun to freeze")))
                .isEqualTo(forward.iceFraction(ageS) >= 1e-6);
    }

    @Property(seed = "20260712", tries = 40)
    @Label("Start: in constant surroundings a colder target never allows a later start")
    void theLatestStartIsMonotoneInTheTarget(
            @ForAll @DoubleRange(min = -20, max = 15) double medium,
            @ForAll @DoubleRange(min = 0, max = 0.99) double one,
            @ForAll @DoubleRange(min = 0, max = 0.99) double other) {
        double nearer = 20 - Math.min(one, other) * (20 - medium);
        double further = 20 - Math.max(one, other) * (20 - medium);
        StartSearch search = StartSearch.of(BOTTLE, Air.at(celsius(medium)));
        StartAnswer near = search.latestStart(Wanted.at(celsius(nearer)), LONG);
        StartAnswer far = search.latestStart(Wanted.at(celsius(further)), LONG);
        if (far instanceof StartAnswer.Starts late) {
            assertThat(late.latest()).isLessThanOrEqualTo(((StartAnswer.Starts) near).latest());
        }
    }

    @Property(seed = "20260713", tries = 25)
    @Label("Value: the temperature that an air gives, asked back, is that air")
    void theAirTemperatureComesBack(
            @ForAll @DoubleRange(min = 5, max = 30) double start,
            @ForAll @DoubleRange(min = -24, max = 39) double medium,
            @ForAll @IntRange(min = 30, max = 300) int minutes) {
        Duration time = Duration.ofMinutes(minutes);
        double there =
                Lumped.of(from(start)).expose(in(Air.at(celsius(medium)), time)).meanTemperatureK(60.0 * minutes)
                        - ZERO;
        ValueAnswer answer = RequiredValues.of(from(start))
                .airTemperature(celsius(-25), celsius(40))
                .temperatureAt(time, celsius(there));
        ValueAnswer.Solution solution = ((ValueAnswer.Reached) answer).solution();
        // Runs are good to 1e-3 K, and the answer to what a few of those are worth.
        assertThat(solution.value() - ZERO)
                .isCloseTo(medium, within(0.01 + 5e-3 * Math.abs(solution.valuePerKelvin())));
        assertThat(solution.temperatureK() - ZERO).isCloseTo(there, within(0.01));
        assertThat(solution.valuePerKelvin()).isPositive();
    }

    @Property(seed = "20260714", tries = 25)
    @Label("Past: what it was comes back within what the reading allows, or is called ill-posed")
    void whatItWasComesBack(
            @ForAll @DoubleRange(min = 1, max = 29) double start,
            @ForAll @DoubleRange(min = 5, max = 35) double medium,
            @ForAll @IntRange(min = 5, max = 1500) int minutes) {
        Air air = Air.at(celsius(medium));
        Duration ago = Duration.ofMinutes(minutes);
        double now = Lumped.of(from(start)).expose(in(air, ago)).meanTemperatureK(60.0 * minutes) - ZERO;
        PastAnswer answer = Past.of(BOTTLE, air).was(celsius(now), ago, celsius(0), celsius(30));
        if (answer instanceof PastAnswer.Was was) {
            assertThat(was.temperatureK() - ZERO).isCloseTo(start, within(0.01 + 5e-3 * was.kelvinPerKelvin()));
            assertThat(was.lowK()).isLessThanOrEqualTo(was.temperatureK() + 1e-3);
            assertThat(was.highK()).isGreaterThanOrEqualTo(was.temperatureK() - 1e-3);
        } else {
            assertThat(((PastAnswer.IllPosed) answer).sensitivity()).isGreaterThan(10);
            assertThat(minutes).isGreaterThan(300);
        }
    }

    @Property(seed = "20260715", tries = 30)
    @Label("Start: in air that changes every answer is bounded in runs and true of the forward run, whatever is asked")
    void anyQuestionInChangingAirHasATrueAnswer(
            @ForAll @DoubleRange(min = -5, max = 40) double start,
            @ForAll @DoubleRange(min = -25, max = 40) double medium,
            @ForAll @DoubleRange(min = 0.5, max = 15) double swing,
            @ForAll @DoubleRange(min = -60, max = 90) double low,
            @ForAll @DoubleRange(min = 0, max = 10) double width,
            @ForAll @IntRange(min = 1, max = 900) int minutes) {
        Air air = Air.periodic(
                celsius(Math.max(-39, Math.min(60, medium))),
                kelvinDifference(swing),
                Duration.ofHours(5),
                Duration.ofHours(1));
        FilledVessel bottle = from(start);
        Wanted wanted = Wanted.between(celsius(low), celsius(low + width));
        Duration at = Duration.ofMinutes(minutes);
        StartAnswer answer = StartSearch.of(bottle, air).withMostRuns(40).latestStart(wanted, at);
        if (answer instanceof StartAnswer.Starts starts) {
            assertThat(starts.runs()).isLessThanOrEqualTo(40);
            double accuracyK = 0.05 + 0.02 * Times.seconds(starts.accuracy());
            for (Window window : starts.windows()) {
                Duration stay = at.minus(window.to());
                double thereK = stay.isZero()
                        ? bottle.temperatureK()
                        : Runs.of(bottle)
                                .run(window.to(), List.of(in(air, stay)))
                                .meanTemperatureK(Times.seconds(stay));
                assertThat(wanted.outsideK(thereK)).isLessThanOrEqualTo(accuracyK);
            }
        } else {
            StartAnswer.Never never = (StartAnswer.Never) answer;
            assertThat(never.runs()).isLessThanOrEqualTo(40);
            assertThat(wanted.outsideK(never.closestK())).isPositive();
            assertThat(never.help()).isNotBlank();
        }
        ReadyAnswer ready = StartSearch.of(bottle, air).withMostRuns(40).earliestReady(wanted, at);
        if (ready instanceof ReadyAnswer.Ready r) {
            assertThat(r.runs()).isLessThanOrEqualTo(40);
            assertThat(r.ready()).isBetween(r.start(), at);
            Duration stay = at.minus(r.start());
            double thereK = Runs.of(bottle)
                    .run(r.start(), List.of(in(air, stay)))
                    .meanTemperatureK(Times.seconds(r.ready().minus(r.start())));
            assertThat(wanted.outsideK(thereK)).isLessThanOrEqualTo(5e-3);
        } else {
            // What is never ready is not as wanted at the instant either.
            assertThat(answer).isInstanceOf(StartAnswer.Never.class);
        }
    }

    @Property(seed = "20260716", tries = 30)
    @Label(
            "Value: any target at any time gives a value that is true of the forward run, or says how near and what it tends to")
    void anyTargetHasATrueAnswer(
            @ForAll @DoubleRange(min = -5, max = 40) double start,
            @ForAll @DoubleRange(min = -60, max = 120) double target,
            @ForAll @IntRange(min = 1, max = 2000) int minutes,
            @ForAll boolean first) {
        Duration time = Duration.ofMinutes(minutes);
        ValueSearch search = RequiredValues.of(from(start)).refrigeratorTemperature(celsius(-30), celsius(20));
        ValueAnswer answer = first ? search.timeTo(celsius(target), time) : search.temperatureAt(time, celsius(target));
        if (answer instanceof ValueAnswer.NeverReached never) {
            assertThat(never.runs()).isLessThan(120);
            assertThat(never.closestValue()).isBetween(ZERO - 30, ZERO + 20);
            assertThat(never.help()).endsWith(".");
            if (target > Math.max(20.1, start + 0.1) || target < -30.1) {
                assertThat(never.closestValue()).isEqualTo(target < 0 ? ZERO - 30 : ZERO + 20);
            }
            return;
        }
        List<ValueAnswer.Solution> solutions = answer instanceof ValueAnswer.Reached reached
                ? List.of(reached.solution())
                : answer instanceof ValueAnswer.Several several ? several.solutions() : List.of();
        for (ValueAnswer.Solution solution : solutions) {
            Prediction forward =
                    Lumped.of(from(start)).expose(in(Refrigerator.at(SiValues.celsiusOf(solution.value())), time));
            assertThat(forward.meanTemperatureK(60.0 * minutes) - ZERO).isCloseTo(target, within(0.05));
        }
    }
}
