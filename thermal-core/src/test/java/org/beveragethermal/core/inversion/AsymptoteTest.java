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
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.core.prediction.Asymptote;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** What a run tends to, beside the closed forms of lumped capacitance in a constant and in a swinging medium. */
class AsymptoteTest {

    private static final double ZERO = 273.15;
    private static final String LUMPED =
            "closed form of lumped capacitance: an exponential in a constant medium, a first-order lag in a swinging one";
    /** Time constant of two hours. */
    private static final LumpedBody BODY = new LumpedBody(3600, 0.5, ZERO + 20, ZERO + 5);

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));

    @Test
    void aLongRunLevelsOffAtTheMedium() {
        Asymptote.LevelsOff level =
                (Asymptote.LevelsOff) BODY.predict(Duration.ofHours(30)).asymptote();
        OutsideChecks.fromMemory("asymptote-level", LUMPED)
                .what("temperature at which a body levels off in a medium of 5 °C, seen for 15 time constants")
                .unit("°C")
                .expected(5)
                .within(0.01)
                .check(level.temperatureK() - ZERO);
        assertThat(level.lookedFor()).isEqualTo(Duration.ofHours(30));
        assertThat(level.nearestK(ZERO + 2)).isEqualTo(level.temperatureK());
    }

    @Test
    void aShortRunIsStillMoving() {
        for (int minutes : new int[] {1, 10, 60, 240, 480}) {
            Asymptote.StillMoving moving = (Asymptote.StillMoving)
                    BODY.predict(Duration.ofMinutes(minutes)).asymptote();
            double endS = 60.0 * minutes;
            double rate = (BODY.temperatureK(endS) - BODY.temperatureK(0.75 * endS)) / (0.25 * endS) * 3600;
            assertThat(moving.kelvinPerHour()).isCloseTo(rate, within(1e-2));
            assertThat(moving.temperatureK()).isCloseTo(BODY.temperatureK(endS), within(1e-3));
        }
        // The boundary: 15 exp(−t/2 h) (exp(t/8 h) − 1) = 0.05 K at t = 13.9 h, by hand.
        assertThat(BODY.predict(Duration.ofMinutes(810)).asymptote()).isInstanceOf(Asymptote.StillMoving.class);
        assertThat(BODY.predict(Duration.ofHours(16)).asymptote()).isInstanceOf(Asymptote.LevelsOff.class);
    }

    @Test
    void aSwingingMediumLeavesASwingOfTheFirstOrderLag() {
        double periodS = 4 * 3600;
        double swingK = 6;
        double lag = 2 * Math.PI / periodS * BODY.capacityJPerK() / BODY.conductanceWPerK();
        Node body = Node.sensible("body", BODY.capacityJPerK(), BODY.startK());
        TimeFunction swinging = new TimeFunction() {
            @Override
            public double at(double timeS) {
                return BODY.mediumK() + swingK * Math.sin(2 * Math.PI * timeS / periodS);
            }

            @Override
            public double rate(double timeS) {
                return swingK * 2 * Math.PI / periodS * Math.cos(2 * Math.PI * timeS / periodS);
            }
        };
        DirectPath film = DirectPath.of(
                "film",
                body,
                Boundary.varying("medium", swinging),
                "convection",
                HeatLaw.conductance(BODY.conductanceWPerK()));
        Prediction run = Prediction.of(
                NetworkSolver.standard().solve(Network.of(List.of(body), List.of(film)), 96 * 3600.0),
                Contents.of(body),
                BODY.capacityJPerK(),
                List.of(),
                List.of());
        Asymptote.Swings swings = (Asymptote.Swings) run.asymptote();
        double left = swingK / Math.sqrt(1 + lag * lag);
        OutsideChecks.fromMemory("asymptote-swing", LUMPED)
                .what("swing that is left of 6 K in 4 h, time constant 2 h, either way")
                .unit("K")
                .expected(left)
                .within(0.02)
                .check((swings.highK() - swings.lowK()) / 2);
        assertThat((swings.highK() + swings.lowK()) / 2).isCloseTo(BODY.mediumK(), within(0.02));
        assertThat(swings.nearestK(ZERO + 5)).isEqualTo(ZERO + 5);
        assertThat(swings.nearestK(ZERO - 5)).isEqualTo(swings.lowK());
        assertThat(Text.tends(swings)).startsWith("swings between");
    }

    @Test
    void aThermostatThatCyclesSwingsAndAPlateauDoesNotLevelOff() {
        Refrigerator cycling = Refrigerator.cycling(celsius(6), kelvinDifference(2), Duration.ofHours(4));
        assertThat(Lumped.of(BOTTLE).expose(in(cycling, Duration.ofDays(4))).asymptote())
                .isInstanceOf(Asymptote.Swings.class);
        FilledVessel weak = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(0.5)), celsius(4));
        Prediction freezing = Lumped.of(weak).expose(in(Refrigerator.at(celsius(-3)), Duration.ofHours(8)));
        assertThat(freezing.iceFraction(freezing.trajectory().endS())).isBetween(0.05, 0.9);
        assertThat(freezing.asymptote()).isInstanceOf(Asymptote.StillMoving.class);
    }

    @Test
    void onlyTheLastStayCounts() {
        Prediction run = Lumped.of(BOTTLE)
                .expose(
                        in(Refrigerator.at(celsius(5)), Duration.ofHours(40)),
                        in(Refrigerator.at(celsius(9)), Duration.ofHours(30)));
        Asymptote.LevelsOff level = (Asymptote.LevelsOff) run.asymptote();
        assertThat(level.temperatureK()).isCloseTo(ZERO + 9, within(0.02));
        TimeToTemperature.NeverReached never = (TimeToTemperature.NeverReached) run.timeTo(celsius(2));
        assertThat(never.asymptote()).isEqualTo(level);
        assertThat(never.closestK()).isCloseTo(ZERO + 5, within(0.02));
        Holding.Never holding =
                (Holding.Never) Holding.until(run, Wanted.between(celsius(1), celsius(2)), Duration.ZERO);
        assertThat(holding.asymptote()).isEqualTo(level);
        assertThat(holding.explain()).endsWith("It levels off at 9.0 °C.");
        assertThat(holding.snapshot().valuesSi().get("asymptoteK")).containsExactly(level.temperatureK());
        Passing.Never passing = (Passing.Never) Passing.of(run, celsius(2), kelvinDifference(0.1));
        assertThat(passing.asymptote()).isEqualTo(level);
    }
}
