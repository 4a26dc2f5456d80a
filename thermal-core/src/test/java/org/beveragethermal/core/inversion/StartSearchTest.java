/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Asymptote;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeInRange;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Face;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Orientation;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WallPatch;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Starts in constant and in changing surroundings, beside the closed form and beside forward runs. */
class StartSearchTest {

    private static final double ZERO = 273.15;
    private static final FilledVessel WHITE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final Duration DINNER = Duration.ofHours(6);

    /** A film of one coefficient on the side, nothing on the ends: with mixed contents a body of lumped capacitance. */
    private record PlainFilm(double coefficient, double temperatureK) implements Surroundings {

        @Override
        public Medium open(String id, double originS) {
            Boundary boundary = Boundary.constant(id + " medium", temperatureK);
            return new Medium() {
                @Override
                public List<Node> nodes() {
                    return List.of();
                }

                @Override
                public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
                    return 0;
                }

                @Override
                public List<Path> paths(List<Occupant> occupants) {
                    return List.of();
                }

                @Override
                public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
                    return patch.orientation() == Orientation.UPRIGHT_WALL
                            ? List.of(Face.whole(
                                    "film",
                                    List.of(Link.of(
                                            boundary,
                                            "convection",
                                            HeatLaw.conductance(coefficient * patch.outerAreaM2())))))
                            : List.of();
                }

                @Override
                public List<String> notes(List<Occupant> occupants) {
                    return List.of();
                }
            };
        }
    }

    @Test
    void theLatestStartIsThatOfAnExponential() {
        PlainFilm film = new PlainFilm(3, ZERO + 5);
        StartSearch search = StartSearch.of(WHITE, film).with(VesselModel.mixed());
        double tenS = age(search, 10);
        double eightS = age(search, 8);
        double sixS = age(search, 6);
        // Lumped capacitance: equal factors of the difference take equal times, t = tau ln((T0 − Ta)/(T − Ta)).
        assertThat(eightS / tenS).isCloseTo(Math.log(15.0 / 3) / Math.log(15.0 / 5), Percentage.withPercentage(0.7));
        assertThat(sixS / tenS).isCloseTo(Math.log(15.0 / 1) / Math.log(15.0 / 5), Percentage.withPercentage(0.7));
        double heat = WHITE.liquidMassKg() * WHITE.liquid().specificHeatCapacity(ZERO + 12)
                + WHITE.vessel().emptyMassKg()
                        * WHITE.vessel().wall().specificHeatCapacity().value();
        double constantS = tenS / Math.log(3);
        double area = heat / (3 * constantS);
        // A 750 mL bottle is some 0.29 m high and 75 mm wide: about 0.06 m² of side (from memory).
        assertThat(area).isBetween(0.045, 0.07);
    }

    private static double age(StartSearch search, double target) {
        StartAnswer.Starts starts =
                (StartAnswer.Starts) search.latestStart(Wanted.at(celsius(target)), Duration.ofHours(40));
        return Times.seconds(Duration.ofHours(40).minus(starts.latest()));
    }

    @Test
    void windowsAreThoseOfTheForwardRun() {
        Wanted wanted = Wanted.between(celsius(8), celsius(10));
        StartAnswer.Starts starts =
                (StartAnswer.Starts) StartSearch.of(WHITE, COLD).latestStart(wanted, DINNER);
        assertThat(starts.runs()).isEqualTo(2);
        assertThat(starts.windows()).hasSize(1);
        assertThat(starts.anyTime()).isFalse();
        assertThat(atDinner(starts.latest(), COLD)).isCloseTo(ZERO + 10, within(2e-3));
        assertThat(atDinner(starts.earliest(), COLD)).isCloseTo(ZERO + 8, within(2e-3));
        assertThat(starts.explain()).contains("8.0 °C to 10.0 °C at 6 h 00 min").contains("at the latest");
        assertThat(starts.snapshot().valuesSi().get("latestS")).containsExactly(Times.seconds(starts.latest()));
    }

    private static double atDinner(Duration start, Surroundings surroundings) {
        Prediction run = Lumped.of(WHITE).expose(in(surroundings, DINNER.minus(start)));
        return run.meanTemperatureK(Times.seconds(DINNER.minus(start)));
    }

    @Test
    void neverSaysHowNearAndWhatWouldHelp() {
        StartAnswer.Never level = (StartAnswer.Never)
                StartSearch.of(WHITE, COLD).latestStart(Wanted.between(celsius(2), celsius(4)), Duration.ofHours(12));
        assertThat(level.help()).contains("at 5.0 °C").endsWith("colder surroundings are needed.");
        assertThat(level.closestStart()).isZero();
        StartAnswer.Never time = (StartAnswer.Never)
                StartSearch.of(WHITE, COLD).latestStart(Wanted.between(celsius(8), celsius(10)), Duration.ofHours(1));
        double needsS = Times.seconds(((ReadyAnswer.Ready)
                        StartSearch.of(WHITE, COLD).earliestReady(Wanted.between(celsius(8), celsius(10)), DINNER))
                .ready());
        assertThat(time.help()).isEqualTo(Text.time(needsS - 3600) + " more would do.");
        assertThat(time.snapshot().answer()).isEqualTo("never");
    }

    @Test
    void neverCarriesWhatItTendsTo() {
        StartAnswer.Never never = (StartAnswer.Never)
                StartSearch.of(WHITE, COLD).latestStart(Wanted.between(celsius(2), celsius(4)), Duration.ofHours(12));
        assertThat(never.asymptote().nearestK(ZERO)).isCloseTo(ZERO + 5, within(0.01));
        assertThat(never.runs()).isEqualTo(3);
        assertThat(never.help())
                .isEqualTo("Put in at once and left there it levels off at 5.0 °C: colder surroundings are needed.");
        assertThat(never.snapshot().valuesSi()).containsKey("asymptoteK");
        Refrigerator cycling = Refrigerator.cycling(celsius(6), kelvinDifference(2), Duration.ofHours(4));
        ReadyAnswer.Never swings = (ReadyAnswer.Never)
                StartSearch.of(WHITE, cycling).earliestReady(Wanted.between(celsius(1), celsius(3)), DINNER);
        assertThat(swings.asymptote()).isInstanceOf(Asymptote.Swings.class);
        assertThat(swings.help())
                .startsWith("Put in at once and left there it swings between")
                .endsWith("colder surroundings are needed.");
    }

    @Test
    void theSensitivityIsThatOfAnExponentialAndATargetCloseToTheMediumWarns() {
        StartSearch search = StartSearch.of(WHITE, new PlainFilm(3, ZERO + 5)).with(VesselModel.mixed());
        double constantS = age(search, 10) / Math.log(3);
        for (double target : new double[] {15, 10, 7, 6}) {
            StartAnswer.Starts starts =
                    (StartAnswer.Starts) search.latestStart(Wanted.at(celsius(target)), Duration.ofHours(40));
            // Lumped capacitance: dt/dT = tau/(T − Ta).
            assertThat(starts.secondsPerKelvin()).isCloseTo(constantS / (target - 5), Percentage.withPercentage(1.5));
            assertThat(starts.warnings()).isEmpty();
        }
        StartAnswer.Starts near =
                (StartAnswer.Starts) search.latestStart(Wanted.between(celsius(5), celsius(5.4)), Duration.ofHours(40));
        assertThat(near.warnings())
                .containsExactly("It levels off at 5.0 °C, and 5.4 °C lies close to that: the time is worth little.");
        ReadyAnswer.Ready ready = (ReadyAnswer.Ready)
                search.earliestReady(Wanted.between(celsius(5), celsius(5.4)), Duration.ofHours(40));
        assertThat(ready.warnings()).isEqualTo(near.warnings());
        assertThat(ready.secondsPerKelvin()).isCloseTo(constantS / 0.4, Percentage.withPercentage(3));
        assertThat(ready.accuracy()).isZero();
        StartAnswer.Starts there =
                (StartAnswer.Starts) search.latestStart(Wanted.between(celsius(19), celsius(21)), Duration.ofHours(2));
        assertThat(there.secondsPerKelvin()).isZero();
    }

    @Test
    void reachedThenLostIsToldAlikeByAllThatReadARun() {
        Refrigerator cycling = Refrigerator.cycling(celsius(6), kelvinDifference(2), Duration.ofHours(4));
        Duration long40 = Duration.ofHours(40);
        Prediction run = Lumped.of(WHITE).expose(in(cycling, long40));
        TimeToTemperature.ReachedThenLost lost = (TimeToTemperature.ReachedThenLost) run.timeTo(celsius(6));
        Passing.At passing = (Passing.At) Passing.of(run, celsius(6), kelvinDifference(0.02));
        assertThat(passing.passages().get(0).at()).isCloseTo(lost.after(), Duration.ofMillis(50));
        assertThat(passing.passages().get(1).at()).isCloseTo(lost.lostAfter(), Duration.ofMillis(50));
        ReadyAnswer.Ready target =
                (ReadyAnswer.Ready) StartSearch.of(WHITE, cycling).earliestReady(Wanted.at(celsius(6)), long40);
        if (target.start().isZero()) {
            assertThat(target.windows()).hasSameSizeAs(passing.passages());
        }
        // Colder than 6 °C: as wanted from the first crossing, lost at the second, and again, and again.
        Wanted below = Wanted.between(celsius(0), celsius(6));
        TimeInRange.Leaves leaves = (TimeInRange.Leaves) run.timeInRange(celsius(0), celsius(6));
        assertThat(leaves.enteredAfter()).isCloseTo(lost.after(), Duration.ofMillis(50));
        assertThat(leaves.leftAfter()).isCloseTo(lost.lostAfter(), Duration.ofMillis(50));
        ReadyAnswer.Ready ready =
                (ReadyAnswer.Ready) StartSearch.of(WHITE, cycling).earliestReady(below, long40);
        assertThat(ready.ready()).isLessThanOrEqualTo(lost.after().plusMillis(50));
        assertThat(ready.until()).isPresent();
        assertThat(ready.windows().size()).isGreaterThan(5);
        assertThat(ready.until().orElseThrow()).isEqualTo(ready.windows().get(0).to());
        assertThat(ready.explain()).contains("goes too far at").contains(" times in all, last ");
        Prediction again = Runs.of(WHITE).run(ready.start(), List.of(in(cycling, long40.minus(ready.start()))));
        TimeInRange.Leaves forward = (TimeInRange.Leaves) again.timeInRange(celsius(0), celsius(6));
        assertThat(ready.start().plus(forward.leftAfter()))
                .isCloseTo(ready.until().orElseThrow(), Duration.ofMillis(50));
    }

    @Test
    void theBestStartInChangingAirIsRefinedToWhatIsStated() {
        // Hot for three hours, then cool: going in before the change warms it, and after it time is lost.
        Air day = Air.varying(Map.of(
                Duration.ZERO,
                celsius(20),
                Duration.ofMinutes(30),
                celsius(34),
                Duration.ofMinutes(170),
                celsius(34),
                Duration.ofMinutes(200),
                celsius(4)));
        Duration night = Duration.ofHours(12);
        Wanted wanted = Wanted.between(celsius(8), celsius(10));
        ReadyAnswer.Ready best = (ReadyAnswer.Ready) StartSearch.of(WHITE, day).earliestReady(wanted, night);
        assertThat(best.accuracy()).isLessThan(Duration.ofMinutes(1));
        assertThat(best.runs()).isLessThanOrEqualTo(80);
        for (int minutes = 0; minutes < 12 * 60; minutes += 7) {
            Duration start = Duration.ofMinutes(minutes);
            Prediction run = Runs.of(WHITE).run(start, List.of(in(day, night.minus(start))));
            if (run.timeTo(celsius(10)) instanceof TimeToTemperature.Reached reached) {
                assertThat(start.plus(reached.after()))
                        .isGreaterThanOrEqualTo(best.ready().minusSeconds(2));
            }
        }
        assertThat(best.snapshot().valuesSi()).containsKeys("accuracyS", "windowsS", "secondsPerKelvin");
    }

    @Test
    void whatIsThereAlreadyMayGoInAnyTime() {
        StartAnswer.Starts starts = (StartAnswer.Starts)
                StartSearch.of(WHITE, COLD).latestStart(Wanted.between(celsius(5), celsius(21)), Duration.ofHours(2));
        assertThat(starts.anyTime()).isTrue();
        assertThat(starts.explain()).contains("whenever it goes in");
        assertThat(starts.latest()).isEqualTo(Duration.ofHours(2));
        // A temperature that is kept is one window, not an instant again and again.
        StartAnswer.Starts kept = (StartAnswer.Starts)
                StartSearch.of(WHITE, Air.at(celsius(20))).latestStart(Wanted.at(celsius(20)), DINNER);
        assertThat(kept.windows()).containsExactly(new Window(Duration.ZERO, DINNER));
    }

    @Test
    void theClockOfTheStartMattersWhereTheAirChanges() {
        // A day: 20 °C until noon, 30 °C in the afternoon, 8 °C at night.
        Air day = Air.varying(Map.of(
                Duration.ZERO,
                celsius(20),
                Duration.ofHours(2),
                celsius(30),
                Duration.ofHours(6),
                celsius(30),
                Duration.ofHours(8),
                celsius(8)));
        Duration night = Duration.ofHours(12);
        Wanted wanted = Wanted.between(celsius(12), celsius(14));
        StartAnswer.Starts starts =
                (StartAnswer.Starts) StartSearch.of(WHITE, day).latestStart(wanted, night);
        assertThat(starts.runs()).isGreaterThan(2).isLessThanOrEqualTo(80);
        for (Window window : starts.windows()) {
            for (Duration start : List.of(window.from(), window.to())) {
                double there = Runs.of(WHITE)
                        .run(start, List.of(in(day, night.minus(start))))
                        .meanTemperatureK(Times.seconds(night.minus(start)));
                assertThat(there).isBetween(ZERO + 12 - 0.02, ZERO + 14 + 0.02);
            }
        }
        // Just after the latest start it is too warm.
        Duration late = starts.latest().plusMinutes(5);
        assertThat(Runs.of(WHITE)
                        .run(late, List.of(in(day, night.minus(late))))
                        .meanTemperatureK(Times.seconds(night.minus(late))))
                .isGreaterThan(ZERO + 14);
        // Going in at once warms it first: of all starts a later one is not ready later than that.
        ReadyAnswer.Ready ready = (ReadyAnswer.Ready) StartSearch.of(WHITE, day).earliestReady(wanted, night);
        ReadyAnswer.Ready atOnce =
                (ReadyAnswer.Ready) StartSearch.of(WHITE, Air.varying(Map.of(Duration.ZERO, celsius(8))))
                        .earliestReady(wanted, night);
        assertThat(ready.start()).isPositive();
        assertThat(atOnce.start()).isZero();
        assertThat(atOnce.runs()).isEqualTo(2);
        assertThat(atOnce.ready()).isLessThan(ready.ready());
        assertThat(atOnce.until()).isPresent();
    }

    @Test
    void waitingSomewhereElseChangesWhatGoesIn() {
        Wanted wanted = Wanted.between(celsius(8), celsius(10));
        StartAnswer.Starts fromTwenty =
                (StartAnswer.Starts) StartSearch.of(WHITE, COLD).latestStart(wanted, DINNER);
        StartAnswer.Starts fromTheSun = (StartAnswer.Starts)
                StartSearch.of(WHITE, COLD).waitingIn(Air.at(celsius(32))).latestStart(wanted, DINNER);
        StartAnswer.Starts fromTheCellar = (StartAnswer.Starts)
                StartSearch.of(WHITE, COLD).waitingIn(Air.at(celsius(12))).latestStart(wanted, DINNER);
        assertThat(fromTheSun.latest()).isLessThan(fromTwenty.latest());
        assertThat(fromTheCellar.latest()).isGreaterThan(fromTwenty.latest());
        StartAnswer.Starts still = (StartAnswer.Starts)
                StartSearch.of(WHITE, COLD).waitingIn(Air.at(celsius(20))).latestStart(wanted, DINNER);
        assertThat(Times.seconds(still.latest())).isCloseTo(Times.seconds(fromTwenty.latest()), within(3.0));
    }

    @Test
    void firstAndLastCrossingUnderAThermostatThatCycles() {
        // Two kelvins either way in four hours: the bottle follows by less, and later.
        Refrigerator cycling = Refrigerator.cycling(celsius(6), kelvinDifference(2), Duration.ofHours(4));
        Prediction run = Lumped.of(WHITE).expose(in(cycling, Duration.ofHours(40)));
        Passing.At at = (Passing.At) Passing.of(run, celsius(6), kelvinDifference(0.02));
        assertThat(at.passages().size()).isGreaterThan(8);
        assertThat(at.first().at()).isLessThan(at.last().at());
        for (Passing.Passage passage : at.passages()) {
            assertThat(run.meanTemperatureK(Times.seconds(passage.at()))).isCloseTo(ZERO + 6, within(1e-3));
            assertThat(passage.plateau()).isFalse();
        }
        assertThat(at.explain()).contains("times: first");
        Passing.Never never = (Passing.Never) Passing.of(run, celsius(3), kelvinDifference(0.02));
        assertThat(never.closestK()).isGreaterThan(ZERO + 4);
        // A start is judged by where the thermostat is at the instant.
        StartAnswer answer = StartSearch.of(WHITE, cycling)
                .latestStart(Wanted.between(celsius(7), celsius(8)), Duration.ofHours(10));
        assertThat(((StartAnswer.Starts) answer).runs()).isGreaterThan(2);
    }

    @Test
    void onAFreezingPlateauATimeIsAnInterval() {
        FilledVessel water = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(0.5)), celsius(4));
        Prediction run = Lumped.of(water).expose(in(Refrigerator.at(celsius(-18)), Duration.ofHours(3)));
        double onsetS = Course.iceS(run, run.trajectory().endS()).orElseThrow();
        Passing.At at = (Passing.At)
                Passing.of(run, SiValues.celsiusOf(run.meanTemperatureK(onsetS + 60)), kelvinDifference(0.05));
        assertThat(at.first().plateau()).isTrue();
        assertThat(at.first().window().length()).isGreaterThan(Duration.ofMinutes(5));
        assertThat(at.explain()).contains("freezes or thaws");
        StartAnswer.Starts icy = (StartAnswer.Starts) StartSearch.of(water, Refrigerator.at(celsius(-18)))
                .latestStart(Wanted.between(celsius(-3), celsius(-1)), Duration.ofHours(30));
        assertThat(icy.warnings()).containsExactly("By then a part of it has begun to freeze.");
    }

    @Test
    void aTargetThatIsPassedAlreadyIsNotReached() {
        // A bottle at 6 °C cannot be warmed to 8 °C in a refrigerator at 5 °C.
        FilledVessel tooCold = WHITE.atTemperature(celsius(6));
        Wanted wanted = Wanted.between(celsius(8), celsius(10));
        StartAnswer.Never start =
                (StartAnswer.Never) StartSearch.of(tooCold, COLD).latestStart(wanted, DINNER);
        assertThat(start.closestK()).isCloseTo(ZERO + 6, within(1e-5));
        assertThat(start.closestStart()).isBetween(DINNER.minusSeconds(5), DINNER);
        assertThat(start.help()).endsWith("warmer surroundings are needed.");
        ReadyAnswer.Never ready =
                (ReadyAnswer.Never) StartSearch.of(tooCold, COLD).earliestReady(wanted, DINNER);
        assertThat(ready.explain()).startsWith("It never is at 8.0 °C to 10.0 °C");
        assertThat(ready.snapshot().valuesSi()).containsKey("closestK");
    }

    @Test
    void layeredContentsAreAskedForTheirMean() {
        StartSearch search = StartSearch.of(WHITE, COLD).with(VesselModel.axial(8));
        Wanted wanted = Wanted.at(celsius(10));
        StartAnswer.Starts starts = (StartAnswer.Starts) search.latestStart(wanted, DINNER);
        Duration stay = DINNER.minus(starts.latest());
        double mean =
                Layered.of(WHITE, VesselModel.axial(8)).expose(in(COLD, stay)).meanTemperatureK(Times.seconds(stay));
        assertThat(mean).isCloseTo(ZERO + 10, within(5e-3));
        StartAnswer.Starts lying = (StartAnswer.Starts)
                StartSearch.of(WHITE, COLD).placed(Placement.of(Posture.LYING)).latestStart(wanted, DINNER);
        assertThat(lying.latest()).isNotEqualTo(starts.latest());
    }

    @Test
    void nonsenseIsRefused() {
        StartSearch search = StartSearch.of(WHITE, COLD);
        Wanted wanted = Wanted.between(celsius(8), celsius(10));
        assertThatThrownBy(() -> search.latestStart(wanted, Duration.ZERO)).hasMessageContaining("more than nothing");
        assertThatThrownBy(() -> search.latestStart(wanted, Duration.ofDays(31)))
                .hasMessageContaining("at most");
        assertThatThrownBy(() -> search.withMostRuns(3)).hasMessageContaining("10 to 10000");
        assertThatThrownBy(() -> Wanted.between(celsius(10), celsius(8))).hasMessageContaining("ascending order");
        assertThatThrownBy(() -> new Window(Duration.ofHours(2), Duration.ofHours(1)))
                .hasMessageContaining("not before");
        assertThatThrownBy(() -> Passing.of(Lumped.of(WHITE).expose(in(COLD, DINNER)), celsius(8), kelvinDifference(0)))
                .hasMessageContaining("resolution");
        assertThatThrownBy(() -> new Snapshot(2, "starts", Map.of())).hasMessageContaining("format 1");
        assertThatThrownBy(() -> new Snapshot(1, "starts", Map.of("a", List.of(Double.NaN))))
                .hasMessageContaining("finite");
    }

    @Test
    void aBoundOnRunsIsKept() {
        Air day = Air.periodic(celsius(15), kelvinDifference(10), Duration.ofHours(5), Duration.ofHours(1));
        StartAnswer.Starts starts = (StartAnswer.Starts) StartSearch.of(WHITE, day)
                .withMostRuns(12)
                .latestStart(Wanted.between(celsius(14), celsius(16)), Duration.ofHours(9));
        assertThat(starts.runs()).isLessThanOrEqualTo(12);
        assertThat(starts.accuracy()).isGreaterThan(Duration.ofSeconds(1));
    }
}
