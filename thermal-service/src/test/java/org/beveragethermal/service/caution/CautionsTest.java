/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.FreezingHazard;
import org.beveragethermal.core.hazard.FreezingOnset;
import org.beveragethermal.core.hazard.Fullness;
import org.beveragethermal.core.hazard.HeadspacePressure;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.Closure;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Cold, pressure and shock: each rule on either side of its limit, and the moments against those of predictions. Bottles and rooms are of our own invention. */
class CautionsTest {

    private static final Beverage WINE = Beverage.wine(percentByVolume(12.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(20));
    private static final Beverage SPARKLING = Beverage.sparklingWine(percentByVolume(12.5));
    private static final FilledVessel FIZZ = Vessels.sparkling750().filledWith(SPARKLING, celsius(20));

    private static Prediction inFreezer(FilledVessel vessel, double celsius, int hours) {
        return Lumped.of(vessel).expose(Exposure.in(Refrigerator.at(celsius(celsius)), Duration.ofHours(hours)));
    }

    private static TemperatureHistory log(double... minutesAndCelsius) {
        return Logs.everyTenMinutes(minutesAndCelsius);
    }

    private static Caution found(CautionReport report, CautionRule rule) {
        return report.find(rule).orElseThrow(() -> new AssertionError(rule + " not in " + report));
    }

    private static Duration after(Caution caution) {
        return caution.crossing().time().orElseThrow();
    }

    @Test
    void freezingAndBurstingComeWhenThePredictionSaysSo() {
        Prediction forgotten = inFreezer(BOTTLE, -18, 12);
        CautionReport report = Cautions.of(forgotten, CautionSubject.of(BOTTLE));
        FreezingHazard hazard = FreezingHazard.of(forgotten, ClosedVessel.of(BOTTLE));

        Caution begins = found(report, CautionRule.FREEZING_BEGINS);
        assertThat(begins.signal()).isEqualTo(SignalWord.WARNING);
        assertThat(begins.isDanger()).isFalse();
        assertThat(begins.limit().getAsDouble()).isEqualTo(WINE.freezingOnsetK());
        assertThat(after(begins)).isCloseTo(((FreezingOnset.Freezes) hazard.onset()).after(), Duration.ofSeconds(1));

        Caution bursts = found(report, CautionRule.BURSTS_BY_ICE);
        assertThat(bursts.isDanger()).isTrue();
        assertThat(report.isDanger()).isTrue();
        assertThat(after(bursts)).isEqualTo(((Fullness.Fills) hazard.fullness()).after());
        assertThat(after(bursts)).isGreaterThan(after(begins));
        assertThat(report.cautions().get(0)).isEqualTo(bursts);
        assertThat(found(report, CautionRule.BROKEN_GLASS).crossing()).isInstanceOf(Crossing.Always.class);
        assertThat(bursts.margin().getAsDouble()).isNegative();
    }

    @Test
    void aWarmerFreezerKeepsTheLimitsWithAMargin() {
        CautionReport report = Cautions.of(inFreezer(BOTTLE, -4, 48), CautionSubject.of(BOTTLE));

        assertThat(report.find(CautionRule.FREEZING_BEGINS)).isEmpty();
        assertThat(report.isDanger()).isFalse();
        Caution kept = report.findKept(CautionRule.FREEZING_BEGINS).orElseThrow();
        assertThat(kept.crossing()).isInstanceOf(Crossing.Not.class);
        assertThat(kept.margin().getAsDouble()).isCloseTo(269.15 - WINE.freezingOnsetK(), within(0.05));
        assertThat(report.findKept(CautionRule.BURSTS_BY_ICE)).isPresent();
        assertThat(report.find(CautionRule.BROKEN_GLASS)).isEmpty();
    }

    @Test
    void aLittleBelowTheLimitIsBelow() {
        CautionReport report = Cautions.of(inFreezer(BOTTLE, -4.6, 96), CautionSubject.of(BOTTLE));
        assertThat(found(report, CautionRule.FREEZING_BEGINS).margin().getAsDouble())
                .isBetween(-0.3, 0.0);
    }

    @Test
    void anOpenedBottleFreezesButDoesNotBurst() {
        CautionReport report = Cautions.of(
                inFreezer(BOTTLE, -18, 12), CautionSubject.of(BOTTLE).with(Circumstance.OPENED));

        assertThat(found(report, CautionRule.FREEZING_BEGINS).signal()).isEqualTo(SignalWord.NOTICE);
        assertThat(report.find(CautionRule.BURSTS_BY_ICE)).isEmpty();
        assertThat(report.isDanger()).isFalse();
    }

    @Test
    void aLogIsTakenAsAllIceThatCanBe() {
        double freezingC = WINE.freezingOnsetK() - 273.15;
        CautionSubject subject = CautionSubject.of(BOTTLE);

        CautionReport above = Cautions.of(log(0, 10, 60, freezingC + 0.1), subject);
        assertThat(above.find(CautionRule.FREEZING_BEGINS)).isEmpty();

        CautionReport at = Cautions.of(log(0, 10, 60, freezingC - 0.05), subject);
        assertThat(at.find(CautionRule.FREEZING_BEGINS)).isPresent();
        assertThat(at.isDanger()).isFalse();

        CautionReport deep = Cautions.of(log(0, 10, 60, freezingC - 3), subject);
        Caution bursts = found(deep, CautionRule.BURSTS_BY_ICE);
        // On the line, and where the prediction in balance is full as well.
        Prediction run = inFreezer(BOTTLE, -18, 12);
        Fullness.Fills fills =
                (Fullness.Fills) FreezingHazard.of(run, ClosedVessel.of(BOTTLE)).fullness();
        assertThat(bursts.limit().getAsDouble()).isCloseTo(fills.meanK(), within(0.05));
        double part = (10 - (bursts.limit().getAsDouble() - 273.15)) / (10 - (freezingC - 3));
        assertThat(after(bursts)).isCloseTo(Duration.ofSeconds(Math.round(3600 * part)), Duration.ofSeconds(1));
    }

    @Test
    void warmedLiquidFillsAClosedBottle() {
        double fullC = ClosedVessel.of(BOTTLE).fullAtK().getAsDouble() - 273.15;
        CautionSubject subject = CautionSubject.of(BOTTLE);

        assertThat(Cautions.of(log(0, 20, 60, fullC - 0.1), subject).isDanger()).isFalse();
        CautionReport report = Cautions.of(log(0, 20, 60, fullC + 0.1), subject);
        assertThat(found(report, CautionRule.FULL_OF_LIQUID).isDanger()).isTrue();
        assertThat(Cautions.of(log(0, 20, 60, fullC + 0.1), subject.with(Circumstance.OPENED))
                        .isDanger())
                .isFalse();
    }

    @Test
    void openingIsGraveAboveTheLimitOrShaken() {
        CautionSubject subject = CautionSubject.of(FIZZ);
        Prediction cooled = inFreezer(FIZZ, 2, 12);

        Caution warm = found(Cautions.of(cooled, subject), CautionRule.OPENING_UNDER_PRESSURE);
        assertThat(warm.signal()).isEqualTo(SignalWord.WARNING);
        Crossing.Already already = (Crossing.Already) warm.crossing();
        TimeToTemperature.Reached reached =
                (TimeToTemperature.Reached) cooled.timeToK(CautionLimits.OPENING.value(), 0);
        assertThat(already.until().orElseThrow()).isCloseTo(reached.after(), Duration.ofSeconds(1));

        assertThat(found(Cautions.of(log(0, 5, 60, 7.1), subject), CautionRule.OPENING_UNDER_PRESSURE))
                .satisfies(cold -> {
                    assertThat(cold.signal()).isEqualTo(SignalWord.CAUTION);
                    assertThat(cold.crossing()).isInstanceOf(Crossing.Always.class);
                });
        assertThat(found(
                                Cautions.of(log(0, 5, 60, 7.1), subject.with(Circumstance.SHAKEN)),
                                CautionRule.OPENING_UNDER_PRESSURE)
                        .signal())
                .isEqualTo(SignalWord.WARNING);
        assertThat(Cautions.of(CautionSubject.of(BOTTLE)).find(CautionRule.OPENING_UNDER_PRESSURE))
                .isEmpty();
        assertThat(Cautions.of(subject.with(Circumstance.OPENED)).find(CautionRule.OPENING_UNDER_PRESSURE))
                .isEmpty();
    }

    @Test
    void pressureInWarmthFollowsTheClosedVessel() {
        ClosedVessel closed = ClosedVessel.of(FIZZ);
        CautionSubject subject = CautionSubject.of(FIZZ);
        double limitK = Cautions.of(log(0, 10, 60, 12), subject)
                .findKept(CautionRule.PRESSURE_IN_WARMTH)
                .orElseThrow()
                .arguments()
                .get(1)
                .value();

        // The temperature is looked for in quarters of a kelvin, from below.
        HeadspacePressure.Gas there = (HeadspacePressure.Gas) closed.pressureAtK(limitK);
        HeadspacePressure.Gas before = (HeadspacePressure.Gas) closed.pressureAtK(limitK - 0.25);
        assertThat(there.gaugePa()).isGreaterThanOrEqualTo(10e5);
        assertThat(before.gaugePa()).isLessThan(10e5);

        Caution warm = found(Cautions.of(log(0, 20, 60, limitK - 273.15 + 1), subject), CautionRule.PRESSURE_IN_WARMTH);
        assertThat(warm.signal()).isEqualTo(SignalWord.WARNING);
        assertThat(warm.value().getAsDouble()).isGreaterThan(10e5);
        // Beyond the published solubility the pressure is not known, which is no reason to be silent.
        assertThat(Cautions.of(log(0, 20, 60, 55), subject).find(CautionRule.PRESSURE_IN_WARMTH))
                .isPresent();
    }

    @Test
    void aPlungeIsJudgedByKindOfGlass() {
        CautionSubject bottle = CautionSubject.of(BOTTLE);
        assertThat(Cautions.ofPlunge(bottle, celsius(20), celsius(-14.9)).cautions())
                .isEmpty();
        Caution wary = found(Cautions.ofPlunge(bottle, celsius(20), celsius(-15.1)), CautionRule.THERMAL_SHOCK);
        assertThat(wary.signal()).isEqualTo(SignalWord.WARNING);
        assertThat(wary.text(Locale.ROOT)).contains("colder outside");
        assertThat(Cautions.ofPlunge(bottle, celsius(20), celsius(61.9)).isDanger())
                .isFalse();
        Caution stop = found(Cautions.ofPlunge(bottle, celsius(20), celsius(62.1)), CautionRule.THERMAL_SHOCK);
        assertThat(stop.isDanger()).isTrue();
        assertThat(stop.text(Locale.ROOT)).contains("warmer outside");
        assertThat(Cautions.ofPlunge(bottle, celsius(20), celsius(62.1)).find(CautionRule.BROKEN_GLASS))
                .isPresent();

        CautionSubject laboratory = bottle.withGlass(GlassKind.BOROSILICATE);
        assertThat(Cautions.ofPlunge(laboratory, celsius(5), celsius(99)).cautions())
                .isEmpty();
        assertThat(Cautions.ofPlunge(laboratory, celsius(-20), celsius(99)).isDanger())
                .isTrue();
        assertThat(Cautions.ofPlunge(laboratory, celsius(-20), celsius(99)).find(CautionRule.THERMAL_SHOCK))
                .get()
                .satisfies(caution -> assertThat(caution.source()).isEqualTo(CautionSources.BOROSILICATE));
        CautionReport metal = Cautions.ofPlunge(bottle.withGlass(GlassKind.NOT_GLASS), celsius(-20), celsius(99));
        assertThat(metal.cautions()).isEmpty();
        assertThat(metal.kept()).isEmpty();
    }

    @Test
    void kindsOfGlassAreThoseOfTheWall() {
        assertThat(GlassKind.of(Solids.sodaLimeGlass())).isEqualTo(GlassKind.SODA_LIME);
        assertThat(GlassKind.of(Solids.leadCrystal())).isEqualTo(GlassKind.LEAD_CRYSTAL);
        assertThat(GlassKind.of(Solids.borosilicateGlass())).isEqualTo(GlassKind.BOROSILICATE);
        assertThat(GlassKind.of(Solids.stainlessSteel()).isGlass()).isFalse();
    }

    @Test
    void aPredictionIsJudgedThroughTheWall() {
        CautionReport calm = Cautions.of(inFreezer(BOTTLE, 5, 3), CautionSubject.of(BOTTLE));
        Caution kept = calm.findKept(CautionRule.THERMAL_SHOCK).orElseThrow();
        assertThat(kept.value().getAsDouble()).isLessThan(3);
        // The limit is what of 35 K between baths stands through the wall.
        assertThat(kept.limit().getAsDouble()).isBetween(10.0, 34.0);
    }

    @Test
    void whatIsNotADrinkOfOursHasFewCautions() {
        Vessel flask = Vessels.of(VesselShape.FLASK, litres(0.5)).closedBy(Closure.screwCap());
        FilledVessel water = flask.filledWith(Water.liquid(), litres(0.45), celsius(20));
        CautionReport report = Cautions.of(log(0, 20, 60, 30), CautionSubject.of(water));
        assertThat(report.cautions()).isEmpty();
    }

    @Test
    void anotherDrinkThanThePredictedIsRefused() {
        Prediction run = inFreezer(BOTTLE, -18, 1);
        CautionSubject other = CautionSubject.of(
                Vessels.highShouldered750().filledWith(Beverage.spirit(percentByVolume(40)), celsius(20)));
        assertThatThrownBy(() -> Cautions.of(run, other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected the prediction of spirit");
    }

    @Test
    void badInputIsRefusedInWords() {
        CautionSubject subject = CautionSubject.of(WINE);
        assertThatThrownBy(() -> subject.drunkFrom(Duration.ofMinutes(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("drunk from PT-1M: expected zero or more");
        assertThatThrownBy(() -> subject.alreadyOut(Duration.ofMinutes(-1)))
                .hasMessage("time already out PT-1M: expected zero or more");
        assertThatThrownBy(() -> Cautions.ofPlunge(subject, celsius(20), celsius(400)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("temperature of the medium 400");
        assertThatThrownBy(() -> new Argument(" ", 1, Argument.Shown.KELVINS))
                .hasMessageContaining("expected a name that is not blank");
        assertThatThrownBy(
                        () -> Draft.of(CautionRule.ALCOHOL, SignalWord.DANGER).always())
                .hasMessage("alcohol as DANGER: expected one of [NOTICE]");
        assertThatThrownBy(() ->
                        Draft.of(CautionRule.ALCOHOL, SignalWord.NOTICE).limit(Double.NaN, Argument.Shown.PERCENT))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ScaldTime.deepBurnS(Double.NaN)).hasMessageContaining("temperature of the liquid NaN");
    }

    /** Every kind of drink, closed in glass, from deep cold to great heat: nothing is refused, and all is worded. */
    @Test
    void everyKindOfDrinkHasItsCautions() {
        for (Beverage drink : List.of(
                WINE,
                SPARKLING,
                Beverage.dryWine(percentByVolume(13)),
                Beverage.fortifiedWine(percentByVolume(18), gramsPerLitre(100)),
                Beverage.vermouth(percentByVolume(16), gramsPerLitre(130)),
                Beverage.cider(percentByVolume(5), gramsPerLitre(20)),
                Beverage.beer(percentByVolume(5)),
                Beverage.sake(percentByVolume(15)),
                Beverage.spirit(percentByVolume(40)),
                Beverage.spirit(percentByVolume(60)),
                Beverage.liqueur(percentByVolume(25), gramsPerLitre(300)),
                Beverage.creamLiqueur(percentByVolume(17), gramsPerLitre(200), percent(15)),
                Beverage.softDrink(gramsPerLitre(100)),
                Beverage.juice(percent(11)),
                Beverage.milk(percent(3.5)),
                Beverage.water(),
                Beverage.tea(),
                Beverage.coffee(),
                Beverage.mulledWine(percentByVolume(10), gramsPerLitre(80)))) {
            CautionSubject subject = CautionSubject.of(
                            Vessels.highShouldered750().filledWith(drink, celsius(20)))
                    .in(Jurisdiction.US_FOOD_CODE);
            CautionReport report = Cautions.of(log(0, 20, 60, -30, 120, 75), subject);
            assertThat(report.text(Locale.ROOT)).as(drink.name()).isNotEmpty().doesNotContain("NaN");
            double freezingK = drink.freezingOnsetK();
            assertThat(report.find(CautionRule.FREEZING_BEGINS).isPresent())
                    .as(drink.name())
                    .isEqualTo(freezingK >= 243.15);
            assertThat(DangerLimits.of(subject).coldestK().getAsDouble()).isEqualTo(freezingK);
        }
    }
}
