/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;
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
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Heat, holding and handling: each rule on either side of its limit, and the moments against those of predictions. Drinks and rooms are of our own invention. */
class HeatAndHandlingCautionsTest {

    private static final Beverage WINE = Beverage.wine(percentByVolume(12.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(20));
    private static final FilledVessel TEA =
            Vessels.of(VesselShape.MUG, millilitres(250)).filledWith(Beverage.tea(), millilitres(200), celsius(85));

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
    void aPredictionIsVeryHotAboveTheLimitOnly() {
        for (double celsius : new double[] {64.9, 65.1}) {
            FilledVessel tea = TEA.atTemperature(celsius(celsius));
            CautionReport report = Cautions.of(inAir(tea, 22, 60), CautionSubject.of(tea));
            assertThat(report.find(CautionRule.VERY_HOT_DRINK).isPresent()).isEqualTo(celsius > 65);
            assertThat(report.findKept(CautionRule.VERY_HOT_DRINK).isPresent()).isEqualTo(celsius < 65);
        }
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
