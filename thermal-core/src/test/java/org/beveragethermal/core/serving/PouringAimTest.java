/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.serving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.centimetres;
import static org.beveragethermal.materials.units.Measures.degrees;
import static org.beveragethermal.materials.units.Measures.kelvinDifference;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.squareMetres;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.FallingStream;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Hand;
import org.beveragethermal.core.surroundings.Sunlight;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What a host is told: a white on a hot evening, a cup on a cold terrace, a glass in the sun. */
final class PouringAimTest {

    private static final double ZERO = 273.15;
    private static final Liquid WINE = Beverage.wine(percentByVolume(12.5));
    private static final Vessel GLASS = Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125));
    private static final Vessel MUG = Vessels.of(VesselShape.MUG, millilitres(250));
    private static final Wanted WHITE = Wanted.between(celsius(8), celsius(12));
    private static final Wanted HOT = Wanted.between(celsius(55), celsius(65));

    private static Serving white(double roomC) {
        return Serving.of(WINE, millilitres(125), GLASS, celsius(roomC))
                .in(Air.at(celsius(roomC)).withRelativeHumidity(percent(50)))
                .drunkOver(Duration.ofMinutes(12));
    }

    private static Serving cup(double roomC) {
        return Serving.of(Beverage.tea(), millilitres(200), MUG, celsius(60))
                .in(Air.at(celsius(roomC)).withRelativeHumidity(percent(60)))
                .drunkOver(Duration.ofMinutes(8));
    }

    private static final CountedRuns COUNTED = new CountedRuns();
    private static final AimAnswer.Aim AT_24 = aim(PouringAim.of(white(24).with(COUNTED.solver())), WHITE);
    private static final int RUNS_AT_24 = COUNTED.runs();

    private static AimAnswer.Aim aim(PouringAim question, Wanted wanted) {
        AimAnswer answer = question.withDraws(2, 1).aim(wanted);
        System.out.println(answer.explain());
        assertThat(answer).as(answer.explain()).isInstanceOf(AimAnswer.Aim.class);
        return (AimAnswer.Aim) answer;
    }

    @Test
    void aWhiteIsServedColderOnAHotEvening() {
        double before = Double.MAX_VALUE;
        for (double room : new double[] {17, 20, 24}) {
            AimAnswer.Aim aim = room == 24 ? AT_24 : aim(PouringAim.of(white(room)), WHITE);
            assertThat(aim.cured()).isEqualTo(CuredByWaiting.TOO_COLD);
            assertThat(aim.pouringK()).isLessThan(before).isBetween(ZERO + 5, ZERO + 8 + 1e-6);
            assertThat(aim.glass().meanK()).isBetween(WHITE.lowK() - 0.01, WHITE.highK() + 0.01);
            assertThat(aim.glass().lastK()).isGreaterThan(aim.pouringK());
            before = aim.pouringK();
        }
    }

    /** Runs beside the aim, not interpolated: none that is allowed is better. */
    @Test
    void neighboursOfTheAimAreNotBetter() {
        double best = cost(AT_24.glass());
        for (double beside : new double[] {-1, -0.3, -0.1, 0.1, 0.3, 1}) {
            GlassCourse course = white(24).run(AT_24.pouringK() + beside, Map.of());
            double cost = cost(AimAnswer.Glass.of(WHITE, AT_24.pouringK() + beside, course));
            assertThat(cost).isGreaterThan(best - 0.5);
        }
    }

    private static double cost(AimAnswer.Glass glass) {
        return Words.seconds(glass.tooWarm()) + 0.5 * Words.seconds(glass.tooCold());
    }

    @Test
    void aPreChilledGlassIsPouredWarmer() {
        AimAnswer.Aim chilled = aim(PouringAim.of(white(24).withGlassAt(celsius(8))), WHITE);
        assertThat(chilled.pouringK()).isGreaterThan(AT_24.pouringK());
        assertThat(chilled.glass().inRange()).isGreaterThan(AT_24.glass().inRange());
    }

    /** Hot drinks and cold terraces: the other way round, and only as hot as the caller allows. */
    @Test
    void aCupOnAColdTerraceIsPouredHotterIfThatIsAllowed() {
        AimAnswer.Aim indoors = aim(PouringAim.of(cup(22)).notAbove(celsius(75)), HOT);
        AimAnswer.Aim terrace = aim(PouringAim.of(cup(5)).notAbove(celsius(75)), HOT);
        assertThat(terrace.cured()).isEqualTo(CuredByWaiting.TOO_WARM);
        assertThat(terrace.pouringK()).isGreaterThan(indoors.pouringK()).isBetween(HOT.highK(), ZERO + 75);
        assertThat(terrace.glass().tooWarm()).isPositive();
        // Without a limit against scalding nothing is poured above the range.
        AimAnswer unstated = PouringAim.of(cup(5)).withDraws(2, 1).aim(HOT);
        AimAnswer.Glass glass =
                unstated instanceof AimAnswer.Aim aim ? aim.glass() : ((AimAnswer.CannotHold) unstated).longest();
        assertThat(glass.pouringK()).isLessThanOrEqualTo(HOT.highK());
        assertThat(glass.tooWarm()).isZero();
    }

    @Test
    void aColdMugOnAColdTerraceCannotBeHeldButAWarmedOneCan() {
        AimAnswer answer = PouringAim.of(cup(5).withGlassAt(celsius(5)))
                .notAbove(celsius(75))
                .aim(HOT);
        System.out.println(answer.explain());
        AimAnswer.CannotHold no = (AimAnswer.CannotHold) answer;
        assertThat(no.longest().meanK()).isLessThan(HOT.lowK());
        assertThat(no.remedies())
                .filteredOn(r -> r.change() == Remedy.Change.GLASS_PREPARED)
                .singleElement()
                .matches(Remedy::holds);
        assertThat(no.remedies())
                .extracting(Remedy::change)
                .doesNotContain(Remedy.Change.SHADE, Remedy.Change.HELD_BY_THE_STEM);
    }

    @Test
    void withoutAPreferenceItIsPouredInsideTheRange() {
        AimAnswer.Aim aim = aim(PouringAim.of(white(24)).curedByWaiting(CuredByWaiting.NEITHER), WHITE);
        assertThat(aim.pouringK()).isBetween(WHITE.lowK(), WHITE.highK());
        assertThat(aim.glass().tooCold()).isZero();
    }

    @Test
    void aGlassHeldInTheSunCannotBeHeldInTheRange() {
        Air sun = Air.at(celsius(33))
                .withRelativeHumidity(percent(50))
                .withSun(Sunlight.clearDay(degrees(45), 196, LocalTime.of(12, 30)));
        Hand hand = Hand.holding(squareMetres(60e-4), millimetres(85), millimetres(150), sun);
        CountedRuns counted = new CountedRuns();
        AimAnswer answer = PouringAim.of(
                        white(33).in(hand).drunkOver(Duration.ofMinutes(30)).with(counted.solver()))
                .aim(WHITE);
        System.out.println(answer.explain());
        AimAnswer.CannotHold no = (AimAnswer.CannotHold) answer;
        assertThat(no.runs()).isEqualTo(counted.runs()).isLessThanOrEqualTo(1 + 5 + 5 + 5 + 4 * 3);
        assertThat(no.longest().meanK()).isGreaterThan(WHITE.highK());
        assertThat(no.remedies()).extracting(Remedy::change).containsExactly(Remedy.Change.values());
        assertThat(no.remedies()).allMatch(r -> r.partInRange() >= 0 && r.partInRange() <= 1);
        assertThat(no.explain()).contains("shade").doesNotContain("NaN");
        assertThat(no.snapshot().answer()).isEqualTo("cannotHold");
        assertThat(no.snapshot().valuesSi()).containsKeys("shadePouringK", "inRangeS", "runs");
    }

    @Test
    void whatIsToldIsWhatAScenePredicts() {
        AimAnswer.Aim aim = AT_24;
        assertThat(aim.runs()).isEqualTo(RUNS_AT_24).isLessThanOrEqualTo(1 + 5 + 5 + 2 * 3);
        Prediction glass = Scene.builder()
                .gear("table", Air.at(celsius(24)).withRelativeHumidity(percent(50)))
                .vessel("bottle", Vessels.highShouldered750().filledWith(WINE, celsius(aim.pouringK() - ZERO)), "table")
                .emptyVessel("glass", GLASS, celsius(24), "table")
                .pour("bottle", Duration.ZERO, millilitres(125), "glass")
                .drinkEvenly("glass", Duration.ZERO, Duration.ofMinutes(12), millilitres(0))
                .build()
                .predict(Duration.ofMinutes(12))
                .vessel("glass");
        double lastS = Words.seconds(aim.glass().length());
        assertThat(glass.isFilled(lastS - 0.1)).isTrue();
        assertThat(glass.isFilled(lastS + 0.1)).isFalse();
        assertThat(aim.glass().lastK()).isCloseTo(glass.meanTemperatureK(lastS - 0.01), within(0.02));
        double sum = 0;
        int looks = 2000;
        int inside = 0;
        for (int i = 0; i < looks; i++) {
            double here = glass.meanTemperatureK(lastS * (i + 0.5) / looks);
            sum += here;
            inside += here >= WHITE.lowK() && here <= WHITE.highK() ? 1 : 0;
        }
        assertThat(aim.glass().meanK()).isCloseTo(sum / looks, within(0.02));
        assertThat(Words.seconds(aim.glass().inRange())).isCloseTo(lastS * inside / looks, within(2.0));
        // Sips are equal and evenly spread, each taken in the middle of its part of the time: their mean is that of the
        // time.
        double sips = 0;
        int count = 11;
        for (int i = 0; i < count; i++) {
            sips += glass.meanTemperatureK(720.0 * (2 * i + 1) / (2 * count) - 0.01) / count;
        }
        assertThat(sips).isCloseTo(aim.glass().meanK(), within(0.3));
        assertThat(aim.scatter().meanK().low()).isLessThan(aim.scatter().meanK().high());
        assertThat(aim.snapshot().valuesSi()).containsKeys("pouringK", "meanIntervalK");
    }

    @Property(seed = "20260713", tries = 3)
    @Label("Aim: a hotter room never gives a warmer one, and a white is poured in its range or colder")
    void aHotterRoomNeverGivesAWarmerAim(
            @ForAll @DoubleRange(min = 14, max = 26) double room,
            @ForAll @DoubleRange(min = 0.5, max = 6) double hotter) {
        AimAnswer one = PouringAim.of(white(room)).withDraws(2, 1).aim(WHITE);
        AimAnswer other = PouringAim.of(white(room + hotter)).withDraws(2, 1).aim(WHITE);
        if (one instanceof AimAnswer.Aim aim) {
            assertThat(aim.pouringK()).isLessThanOrEqualTo(WHITE.highK());
            if (other instanceof AimAnswer.Aim hot) {
                assertThat(hot.pouringK()).isLessThanOrEqualTo(aim.pouringK() + 0.011);
            }
        }
    }

    /** What the stream gains is made good: put forward again, it arrives as wanted. */
    @Test
    void theBottleIsColderThanThePouring() {
        double before = white(28)
                .beforePouring(celsius(8), celsius(28), Duration.ofSeconds(5), centimetres(10))
                .getValue()
                .doubleValue();
        double part = FallingStream.exchangedPart(
                WINE, before + ZERO, 28 + ZERO, millilitres(125), Duration.ofSeconds(5), centimetres(10));
        System.out.println("8 °C in the glass from " + before + " °C in the bottle");
        assertThat(before + part * (28 - before)).isCloseTo(8, within(1e-9));
        assertThat(before).isBetween(7.5, 8 - 1e-6);
    }

    @Test
    void theClockOfTheWeatherCounts() {
        Air evening = Air.periodic(celsius(22), kelvinDifference(8), Duration.ofDays(1), Duration.ofHours(15))
                .withRelativeHumidity(percent(50));
        GlassCourse noon =
                white(20).in(evening).pouredAfter(Duration.ofHours(15)).run(ZERO + 8, Map.of());
        GlassCourse night =
                white(20).in(evening).pouredAfter(Duration.ofHours(27)).run(ZERO + 8, Map.of());
        assertThat(noon.lastK()).isGreaterThan(night.lastK() + 1);
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        Serving serving = white(24);
        assertThatThrownBy(() -> serving.withPortion(millilitres(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("empty");
        assertThatThrownBy(() -> serving.withPortion(millilitres(2000)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("portion in a");
        assertThatThrownBy(() -> serving.drunkOver(Duration.ofHours(25)))
                .hasMessageContaining("PT25H")
                .hasMessageContaining("a second to a day");
        assertThatThrownBy(() -> serving.drunkOver(Duration.ZERO)).hasMessageContaining("a second to a day");
        assertThatThrownBy(() -> serving.withGlassAt(celsius(150))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> serving.pouredAfter(Duration.ofSeconds(-1))).hasMessageContaining("at least 0");
        PouringAim question = PouringAim.of(serving);
        assertThatThrownBy(() -> question.aim(Wanted.at(celsius(8)))).hasMessageContaining("some width");
        assertThatThrownBy(() -> question.withDraws(1, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> question.notBelow(celsius(13)).aim(WHITE)).hasMessageContaining("leave something");
        assertThatThrownBy(() -> question.notBelow(celsius(11.99)).aim(WHITE)).hasMessageContaining("leave something");
        assertThatThrownBy(() -> question.aim(Wanted.between(celsius(-20), celsius(-15))))
                .hasMessageContaining("freezing point");
        assertThatThrownBy(() -> PouringAim.of(cup(5)).notAbove(celsius(50)).aim(HOT))
                .hasMessageContaining("leave something");
    }
}
