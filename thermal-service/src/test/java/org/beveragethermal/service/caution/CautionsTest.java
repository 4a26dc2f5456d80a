/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.FreezingHazard;
import org.beveragethermal.core.hazard.FreezingOnset;
import org.beveragethermal.core.hazard.Fullness;
import org.beveragethermal.core.hazard.HeadspacePressure;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.surroundings.Air;
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

/** Each rule on either side of its limit, and the moments against those of predictions. Bottles and rooms are of our own invention. */
class CautionsTest {

    private static final Beverage WINE = Beverage.wine(percentByVolume(12.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(20));
    private static final Beverage SPARKLING = Beverage.sparklingWine(percentByVolume(12.5));
    private static final FilledVessel FIZZ = Vessels.sparkling750().filledWith(SPARKLING, celsius(20));
    private static final FilledVessel TEA =
            Vessels.of(VesselShape.MUG, millilitres(250)).filledWith(Beverage.tea(), millilitres(200), celsius(85));

    private static Prediction inFreezer(FilledVessel vessel, double celsius, int hours) {
        return Lumped.of(vessel).expose(Exposure.in(Refrigerator.at(celsius(celsius)), Duration.ofHours(hours)));
    }

    private static Prediction inAir(FilledVessel vessel, double celsius, int minutes) {
        return Lumped.of(vessel).expose(Exposure.in(Air.at(celsius(celsius)), Duration.ofMinutes(minutes)));
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
    void hotTeaIsDrinkableWhenThePredictionSaysSo() {
        Prediction cooling = inAir(TEA, 22, 60);
        CautionReport report = Cautions.of(cooling, CautionSubject.of(TEA));

        Caution hot = found(report, CautionRule.VERY_HOT_DRINK);
        assertThat(hot.signal()).isEqualTo(SignalWord.WARNING);
        Duration until = ((Crossing.Already) hot.crossing()).until().orElseThrow();
        TimeToTemperature.Reached cooled = (TimeToTemperature.Reached) cooling.timeTo(celsius(65));
        assertThat(until).isCloseTo(cooled.after(), Duration.ofSeconds(1));
        TimeToTemperature.Reached best = (TimeToTemperature.Reached) cooling.timeTo(celsius(57.8));
        assertThat(hot.arguments().get(3).value()).isCloseTo(Times.seconds(best.after()), within(2.0));
        assertThat(found(report, CautionRule.SCALD).signal()).isEqualTo(SignalWord.WARNING);
        assertThat(report.isDanger()).isFalse();

        CautionReport hasty = Cautions.of(cooling, CautionSubject.of(TEA).drunkFrom(until.minusSeconds(60)));
        assertThat(found(hasty, CautionRule.VERY_HOT_DRINK).isDanger()).isTrue();
        assertThat(after(found(hasty, CautionRule.VERY_HOT_DRINK))).isEqualTo(until.minusSeconds(60));
        CautionReport patient = Cautions.of(cooling, CautionSubject.of(TEA).drunkFrom(until.plusSeconds(60)));
        assertThat(patient.isDanger()).isFalse();
        assertThat(found(patient, CautionRule.VERY_HOT_DRINK).signal()).isEqualTo(SignalWord.WARNING);
        assertThat(Cautions.of(cooling, CautionSubject.of(TEA).drunkFrom(Duration.ofHours(5)))
                        .isDanger())
                .isFalse();
    }

    @Test
    void scaldsHaveTwoLimits() {
        CautionSubject tea = CautionSubject.of(Beverage.tea());
        assertThat(Cautions.of(log(0, 48.9, 60, 30), tea).find(CautionRule.SCALD))
                .isEmpty();
        assertThat(found(Cautions.of(log(0, 49.1, 60, 30), tea), CautionRule.SCALD)
                        .signal())
                .isEqualTo(SignalWord.CAUTION);
        assertThat(found(Cautions.of(log(0, 59.9, 60, 30), tea), CautionRule.SCALD)
                        .signal())
                .isEqualTo(SignalWord.CAUTION);
        assertThat(found(Cautions.of(log(0, 60.1, 60, 30), tea), CautionRule.SCALD)
                        .signal())
                .isEqualTo(SignalWord.WARNING);
        assertThat(Cautions.of(log(0, 64.9, 60, 30), tea).find(CautionRule.VERY_HOT_DRINK))
                .isEmpty();
        assertThat(Cautions.of(log(0, 65.1, 60, 30), tea).find(CautionRule.VERY_HOT_DRINK))
                .isPresent();
    }

    @Test
    void stopperedDecantersAreNotToBeHot() {
        CautionSubject decanter = CautionSubject.of(WINE).with(Circumstance.OPENED, Circumstance.STOPPERED);
        assertThat(Cautions.of(log(0, 39.9, 60, 30), decanter).findKept(CautionRule.STOPPERED_HOT))
                .isPresent();
        assertThat(Cautions.of(log(0, 40.1, 60, 30), decanter).find(CautionRule.STOPPERED_HOT))
                .isPresent();
        assertThat(Cautions.of(log(0, 40.1, 60, 30), CautionSubject.of(WINE)).find(CautionRule.STOPPERED_HOT))
                .isEmpty();
    }

    @Test
    void handlingFactsNeedNoTemperature() {
        CautionReport none = Cautions.of(CautionSubject.of(Beverage.water()));
        assertThat(none.cautions()).isEmpty();
        assertThat(none.text(Locale.ENGLISH)).isEmpty();

        CautionSubject all = CautionSubject.of(WINE)
                .with(
                        Circumstance.OPENED,
                        Circumstance.SEDIMENT,
                        Circumstance.SALTED_ICE,
                        Circumstance.ICE_IN_DRINK,
                        Circumstance.COOLING_ICE_IN_DRINK,
                        Circumstance.MOUTH_UNDER_WATER,
                        Circumstance.GLASS_IN_ICE);
        CautionReport report = Cautions.of(all);
        assertThat(report.cautions())
                .extracting(Caution::rule)
                .containsExactlyInAnyOrder(
                        CautionRule.SALTED_ICE_ON_SKIN,
                        CautionRule.COOLING_ICE_IN_DRINK,
                        CautionRule.MOUTH_UNDER_WATER,
                        CautionRule.NEVER_TURNED_OVER,
                        CautionRule.NEVER_TURNED_OVER,
                        CautionRule.BROKEN_GLASS,
                        CautionRule.ICE_IN_DRINK,
                        CautionRule.ALCOHOL);
        assertThat(report.cautions()).isSortedAccordingTo((a, b) -> b.signal().compareTo(a.signal()));
        assertThat(found(report, CautionRule.MOUTH_UNDER_WATER).signal()).isEqualTo(SignalWord.CAUTION);
        assertThat(found(report, CautionRule.NEVER_TURNED_OVER).crossing()).isInstanceOf(Crossing.Always.class);
        assertThat(found(Cautions.of(all.with(Circumstance.TURNED_OVER)), CautionRule.NEVER_TURNED_OVER)
                        .crossing())
                .isEqualTo(new Crossing.Already(Optional.empty()));
        assertThat(found(
                                Cautions.of(CautionSubject.of(WINE).with(Circumstance.MOUTH_UNDER_WATER)),
                                CautionRule.MOUTH_UNDER_WATER)
                        .signal())
                .isEqualTo(SignalWord.NOTICE);
    }

    @Test
    void alcoholIsToldFromItsLimitOn() {
        assertThat(Cautions.of(CautionSubject.of(Beverage.beer(percentByVolume(1.3))))
                        .find(CautionRule.ALCOHOL))
                .isPresent();
        assertThat(Cautions.of(CautionSubject.of(Beverage.lowAlcoholBeer(percentByVolume(0.5), gramsPerLitre(40))))
                        .find(CautionRule.ALCOHOL))
                .isEmpty();
    }

    @Test
    void milkHasItsClockByJurisdiction() {
        CautionSubject milk = CautionSubject.of(Beverage.milk(percent(3.5)));
        TemperatureHistory picnic = log(0, 4, 30, 20, 270, 20);

        assertThat(found(Cautions.of(picnic, milk), CautionRule.HOLDING_WITHOUT_FIGURE)
                        .source()
                        .citation())
                .contains("852/2004");
        assertThat(Cautions.of(picnic, milk).find(CautionRule.OUT_OF_HOLDING)).isEmpty();

        CautionReport business = Cautions.of(picnic, milk.in(Jurisdiction.US_FOOD_CODE));
        assertThat(business.isDanger()).isFalse();
        assertThat(found(business, CautionRule.OUT_OF_HOLDING).crossing().time().orElseThrow())
                .isCloseTo(Duration.ofSeconds(1800 / 16), Duration.ofSeconds(2));
        assertThat(found(business, CautionRule.HELD_COLD_OR_HOT).limit().getAsDouble())
                .isEqualTo(278.15);
        Caution kept = business.findKept(CautionRule.HOLDING_TIME_OVER).orElseThrow();
        assertThat(kept.limit().getAsDouble()).isEqualTo(6 * 3600);
        assertThat(kept.margin().getAsDouble()).isBetween(1.4 * 3600, 1.6 * 3600);

        CautionReport household = Cautions.of(picnic, milk.in(Jurisdiction.US_HOUSEHOLD));
        assertThat(found(household, CautionRule.HOLDING_TIME_OVER).isDanger()).isTrue();
        CautionReport england = Cautions.of(picnic, milk.in(Jurisdiction.ENGLAND));
        assertThat(found(england, CautionRule.HOLDING_TIME_OVER).isDanger()).isTrue();
        assertThat(after(found(england, CautionRule.HOLDING_TIME_OVER)))
                .isCloseTo(Duration.ofSeconds(4 * 3600 + 1800 * 4 / 16), Duration.ofSeconds(2));

        assertThat(Cautions.of(picnic, milk.in(Jurisdiction.ENGLAND).with(Circumstance.SHELF_STABLE))
                        .cautions())
                .isEmpty();
        assertThat(CautionSubject.of(Beverage.coffee()).spoils()).isFalse();
        assertThat(CautionSubject.of(Beverage.coffee())
                        .with(Circumstance.WITH_MILK)
                        .spoils())
                .isTrue();
        assertThat(CautionSubject.of(Beverage.juice(percent(11))).spoils()).isTrue();
    }

    @Test
    void hotMilkIsJudgedByTheHotLimit() {
        CautionSubject milk = CautionSubject.of(Beverage.milk(percent(3.5))).in(Jurisdiction.US_FOOD_CODE);
        assertThat(Cautions.of(log(0, 60, 60, 57.1), milk).find(CautionRule.OUT_OF_HOLDING))
                .isEmpty();
        Caution out = found(Cautions.of(log(0, 60, 60, 54), milk), CautionRule.OUT_OF_HOLDING);
        assertThat(out.limit().getAsDouble()).isEqualTo(330.15);
        assertThat(after(out)).isCloseTo(Duration.ofMinutes(30), Duration.ofSeconds(1));
        assertThat(after(found(Cautions.of(log(0, 15, 60, 10), milk), CautionRule.OUT_OF_HOLDING)))
                .isZero();
    }

    @Test
    void aPredictionOfMilkHasNoGaps() {
        FilledVessel jug =
                Vessels.of(VesselShape.CARAFE, litres(1)).filledWith(Beverage.milk(percent(3.5)), celsius(4));
        Prediction table = Lumped.of(jug).expose(Exposure.in(Air.at(celsius(25)), Duration.ofHours(7)));
        Caution over = found(
                Cautions.of(table, CautionSubject.of(jug).in(Jurisdiction.US_HOUSEHOLD)),
                CautionRule.HOLDING_TIME_OVER);
        TimeToTemperature leaves = table.timeToK(277.594, 0);
        assertThat(after(over))
                .isCloseTo(((TimeToTemperature.Reached) leaves).after().plusHours(2), Duration.ofSeconds(2));
    }

    @Test
    void aGlassThatIsFilledLaterCountsFromThen() {
        Vessel glass = Vessels.of(VesselShape.TUMBLER, millilitres(300));
        Prediction poured = Scene.builder()
                .gear("room", Air.at(celsius(25)))
                .vessel(
                        "jug",
                        Vessels.of(VesselShape.CARAFE, litres(1)).filledWith(Beverage.milk(percent(3.5)), celsius(4)),
                        "room")
                .emptyVessel("glass", glass, celsius(25), "room")
                .pour("jug", Duration.ofMinutes(60), millilitres(200), "glass")
                .build()
                .predict(Duration.ofHours(5))
                .vessel("glass");
        CautionSubject subject = CautionSubject.of(Beverage.milk(percent(3.5)))
                .with(Circumstance.OPENED)
                .in(Jurisdiction.US_HOUSEHOLD);
        CautionReport report = Cautions.of(poured, subject);
        assertThat(after(found(report, CautionRule.HOLDING_TIME_OVER)))
                .isCloseTo(Duration.ofHours(3), Duration.ofMinutes(1));
        assertThat(after(found(report, CautionRule.OUT_OF_HOLDING))).isEqualTo(Duration.ofHours(1));
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

    @Test
    void snapshotsHaveTheirUnits() {
        Caution hot =
                found(Cautions.of(log(0, 20, 60, 80), CautionSubject.of(Beverage.tea())), CautionRule.VERY_HOT_DRINK);
        assertThat(hot.snapshot().answer()).isEqualTo("very-hot-drink");
        assertThat(hot.snapshot().valuesSi()).containsOnlyKeys("limitK", "valueK", "afterS");
        assertThat(Times.seconds(after(hot))).isCloseTo(2700, within(1.0));
        assertThat(CautionSubject.of(BOTTLE).with(Circumstance.SHAKEN).toString())
                .contains("EUROPEAN_UNION", "SHAKEN");
    }
}
