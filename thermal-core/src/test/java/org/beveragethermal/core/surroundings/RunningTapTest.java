/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.LinearSpread;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** A film of tap water on a wall: limits, ledger, refusals. */
class RunningTapTest {

    private static final double ZERO = 273.15;
    private static final Fluid WATER = Fluid.of(Water.liquid());
    private static final Air KITCHEN = Air.at(celsius(22));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static RunningTap tap(double litresPerMinute) {
        return RunningTap.at(celsius(11), litresPerMinute(litresPerMinute), KITCHEN);
    }

    private static double watts(double flowM3PerS, double tapK, double wallK) {
        RunningFilm film = new RunningFilm(0.06, new RunningFilm.Sheet(flowM3PerS, 0.24, 0.3, 0.06), WATER);
        HeatFlow out = new HeatFlow();
        film.evaluate(tapK, wallK, out);
        return out.watts;
    }

    private static double meanAfterTen(RunningTap tap) {
        return Lumped.of(BOTTLE).expose(in(tap, Duration.ofMinutes(10))).meanTemperatureK(600);
    }

    @Test
    void littleWaterCarriesNoMoreThanItsHeat() {
        double heat = 1e-7 * Water.liquid().density(ZERO + 15) * Water.liquid().specificHeatCapacity(ZERO + 15) * 10;
        assertThat(watts(1e-7, ZERO + 10, ZERO + 20)).isCloseTo(-heat, within(1e-3 * heat));
        for (double flow = 1e-7; flow < 1e-2; flow *= 2) {
            double most = flow * 4.2e6 * 10;
            assertThat(-watts(flow, ZERO + 10, ZERO + 20))
                    .isLessThan(most)
                    .isGreaterThan(-watts(flow / 2, ZERO + 10, ZERO + 20));
        }
    }

    @Test
    void muchWaterKeepsItsTemperature() {
        RunningFilm.Sheet flood = new RunningFilm.Sheet(0.1, 0.24, 0.3, 0.06);
        double film = flood.coefficient(ZERO + 15, WATER) * 0.06 * 10;
        assertThat(-watts(0.1, ZERO + 10, ZERO + 20)).isCloseTo(film, within(5e-3 * film));
    }

    @Test
    void theWaterIsWarmedByWhatTheLedgerSays() {
        for (double flow : new double[] {0.5, 5, 20}) {
            Prediction run = Layered.axial(BOTTLE).expose(in(tap(flow), Duration.ofMinutes(10)));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            double taken = run.ledger().entries().stream()
                    .filter(entry -> entry.to().endsWith(" water"))
                    .mapToDouble(LedgerEntry::heatJ)
                    .sum();
            double most = flow * 10 * 4200 * 11;
            assertThat(taken).isBetween(0.0, most);
        }
    }

    @Test
    void moreWettedIsFasterAndMoreWaterHardly() {
        double before = Double.POSITIVE_INFINITY;
        for (double share : new double[] {0.05, 0.4, 0.7, 1}) {
            double mean = meanAfterTen(tap(6).withWettedShare(fraction(share)));
            assertThat(mean).isLessThan(before - 0.3);
            before = mean;
        }
        assertThat(meanAfterTen(tap(20))).isBetween(meanAfterTen(tap(5)) - 1, meanAfterTen(tap(5)));
        assertThat(meanAfterTen(tap(0.5))).isGreaterThan(meanAfterTen(tap(5)));
    }

    @Test
    void fasterThanTheRefrigerator() {
        Prediction cold = Lumped.of(BOTTLE).expose(in(Refrigerator.at(celsius(5)), Duration.ofMinutes(10)));
        OutsideChecks.commonPractice("tap-before-refrigerator")
                .what(
                        "a bottle of 22 °C after 10 min under a tap of 11 °C: colder by this than after 10 min at 5 °C in a refrigerator")
                .unit("K")
                .between(0.5, 11)
                .check(cold.meanTemperatureK(600) - meanAfterTen(tap(6)));
    }

    @Test
    void slopesAreThoseOfTheFlow() {
        Link film = Link.of(
                Node.sensible("tap", 100, ZERO + 11),
                "convection",
                new RunningFilm(0.02, new RunningFilm.Sheet(5e-5, 0.2, 0.3, 0.06), WATER));
        Link wall = Link.of(Node.sensible("wall", 100, ZERO + 18), "conduction", HeatLaw.conductance(10));
        for (double wallC : new double[] {4, 11, 18, 40}) {
            PathDerivatives.check(
                    JunctionPath.of("outside", wall, film),
                    new double[] {ZERO + wallC, ZERO + 11},
                    new double[0],
                    1e-4);
        }
    }

    @Test
    void lawAndShareAreUncertain() {
        Prediction run = Lumped.of(BOTTLE).expose(in(tap(6), Duration.ofMinutes(10)));
        assertThat(LinearSpread.of(run, LawScatter.all())
                        .contributionsK(Duration.ofMinutes(8))
                        .getOrDefault(Multipliers.RUNNING_FILM, 0.0))
                .isBetween(-0.5, -1e-3);
        assertThat(RunningTap.assumptions()).containsExactly(RunningTap.WETTED_SHARE);
        assertThat(tap(6).wettedShare()).isEqualTo(0.7);
    }

    @Test
    void lyingTurnedAndTwoBottlesWork() {
        for (Prediction run : List.of(
                Layered.axial(BOTTLE).expose(in(tap(6), Duration.ofMinutes(10)).lying()),
                Layered.axial(BOTTLE).expose(in(tap(6), Duration.ofMinutes(10)).inverted()))) {
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            assertThat(run.meanTemperatureK(600)).isBetween(ZERO + 11, ZERO + 21);
        }
    }

    @Test
    void cautionsAndStreaks() {
        Occupant bottle = new Occupant("b", BOTTLE.vessel());
        assertThat(RunningTap.at(celsius(60), litresPerMinute(6), KITCHEN)
                        .open("tap", 0)
                        .notes(List.of(bottle)))
                .anyMatch(note -> note.contains("scalds"))
                .anyMatch(note -> note.contains("may crack"));
        assertThat(tap(6).open("tap", 0).notes(List.of(bottle))).noneMatch(note -> note.contains("streaks"));
        assertThat(tap(0.5).open("tap", 0).notes(List.of(bottle))).anyMatch(note -> note.contains("streaks"));
    }

    @Test
    void refusals() {
        refused("tap temperature", () -> RunningTap.at(celsius(0), litresPerMinute(5), KITCHEN));
        refused("tap temperature", () -> RunningTap.at(celsius(71), litresPerMinute(5), KITCHEN));
        refused("flow of the tap", () -> tap(0.4));
        refused("flow of the tap", () -> tap(20.5));
        refused("wetted share", () -> tap(5).withWettedShare(fraction(0.04)));
        refused("wetted share", () -> tap(5).withWettedShare(fraction(1.1)));
        assertThatThrownBy(() -> RunningTap.varying(Map.of(), litresPerMinute(5), KITCHEN))
                .isInstanceOf(IllegalArgumentException.class);
        FilledVessel open = Vessels.of(VesselShape.DECANTER, millilitres(750))
                .filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
        assertThatThrownBy(() -> Lumped.of(open).expose(in(tap(5), Duration.ofMinutes(1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("open");
    }

    private static void refused(String parameter, ThrowingCallable call) {
        OutOfRangeException refusal = catchThrowableOfType(OutOfRangeException.class, call);
        assertThat(refusal).isNotNull().hasMessageContaining(parameter);
    }
}
