/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** The fast form on either side of each limit. */
class DangerLimitsTest {

    private static final Beverage WINE = Beverage.wine(percentByVolume(12.5));
    private static final FilledVessel BOTTLE = Vessels.highShouldered750().filledWith(WINE, celsius(20));
    private static final double[] HOURS = {0, 3600, 7200};

    @Test
    void aClosedBottleIsNotToFreeze() {
        DangerLimits limits = DangerLimits.of(CautionSubject.of(BOTTLE));
        double freezingK = WINE.freezingOnsetK();
        double[] mean = {293.15, 280, 275};
        assertThat(limits.firstBreach(HOURS, new double[] {293.15, 280, freezingK + 0.01}, mean, mean))
                .isEmpty();
        DangerLimits.Breach breach = limits.firstBreach(
                        HOURS, new double[] {293.15, freezingK + 1, freezingK - 1}, mean, mean)
                .orElseThrow();
        assertThat(breach.rule()).isEqualTo(CautionRule.BURSTS_BY_ICE);
        assertThat(breach.afterS()).isCloseTo(5400, within(1e-6));
        assertThat(breach.limit()).isEqualTo(freezingK);
        assertThat(limits.coldestK().getAsDouble()).isEqualTo(freezingK);
        assertThat(DangerLimits.of(CautionSubject.of(BOTTLE).with(Circumstance.OPENED))
                        .firstBreach(HOURS, new double[] {293.15, 260, 255}))
                .isEmpty();
    }

    @Test
    void aClosedBottleIsNotToBeFilledByWarmth() {
        DangerLimits limits = DangerLimits.of(CautionSubject.of(BOTTLE));
        double fullK = ClosedVessel.of(BOTTLE).fullAtK().getAsDouble();
        assertThat(limits.warmestK().getAsDouble()).isEqualTo(fullK);
        assertThat(limits.firstBreach(HOURS, new double[] {293.15, 300, fullK - 0.01}))
                .isEmpty();
        assertThat(limits.firstBreach(HOURS, new double[] {293.15, fullK - 1, fullK + 1}))
                .get()
                .satisfies(breach -> {
                    assertThat(breach.rule()).isEqualTo(CautionRule.FULL_OF_LIQUID);
                    assertThat(breach.afterS()).isCloseTo(5400, within(1e-6));
                });
    }

    @Test
    void teaIsNotDrunkVeryHot() {
        CautionSubject tea = CautionSubject.of(Beverage.tea()).with(Circumstance.OPENED);
        double[] cooling = {353.15, 338.15 + 5, 333.15};
        assertThat(DangerLimits.of(tea).firstBreach(HOURS, cooling)).isEmpty();
        assertThat(DangerLimits.of(tea.drunkFrom(Duration.ofSeconds(5000))).firstBreach(HOURS, cooling))
                .get()
                .satisfies(breach -> {
                    assertThat(breach.rule()).isEqualTo(CautionRule.VERY_HOT_DRINK);
                    assertThat(breach.afterS()).isEqualTo(5000);
                });
        assertThat(DangerLimits.of(tea.drunkFrom(Duration.ofSeconds(5500))).firstBreach(HOURS, cooling))
                .isEmpty();
        assertThat(DangerLimits.of(tea.drunkFrom(Duration.ofHours(9))).firstBreach(HOURS, cooling))
                .isEmpty();
    }

    @Test
    void theWarmestPartIsDrunkAndSpoils() {
        double[] mean = {335.15, 334.15, 333.15};
        double[] warmest = {340.15, 339.15, 338.15};
        assertThat(DangerLimits.of(CautionSubject.of(Beverage.tea()).drunkFrom(Duration.ofMinutes(5)))
                        .firstBreach(HOURS, mean, mean, warmest))
                .get()
                .satisfies(breach -> assertThat(breach.rule()).isEqualTo(CautionRule.VERY_HOT_DRINK));
        double[] cold = {277.15, 277.15, 277.15};
        double[] out = {277.15, 285.15, 285.15};
        assertThat(DangerLimits.of(CautionSubject.of(Beverage.milk(percent(3.5)))
                                .in(Jurisdiction.US_HOUSEHOLD)
                                .alreadyOut(Duration.ofMinutes(60)))
                        .firstBreach(HOURS, cold, cold, out))
                .get()
                .satisfies(breach -> assertThat(breach.rule()).isEqualTo(CautionRule.HOLDING_TIME_OVER));
    }

    @Test
    void milkIsNotHeldTooLong() {
        CautionSubject milk = CautionSubject.of(Beverage.milk(percent(3.5))).with(Circumstance.OPENED);
        double[] out = {277.15, 295.15, 295.15};
        assertThat(DangerLimits.of(milk).firstBreach(HOURS, out)).isEmpty();
        assertThat(DangerLimits.of(milk.in(Jurisdiction.US_FOOD_CODE)).firstBreach(HOURS, out))
                .isEmpty();
        assertThat(DangerLimits.of(milk.in(Jurisdiction.US_FOOD_CODE).alreadyOut(Duration.ofHours(3)))
                        .firstBreach(HOURS, out))
                .get()
                .satisfies(breach -> assertThat(breach.rule()).isEqualTo(CautionRule.HOLDING_TIME_OVER));
    }

    @Test
    void theEarliestBreachIsTold() {
        CautionSubject milk = CautionSubject.of(Beverage.milk(percent(3.5))).in(Jurisdiction.US_HOUSEHOLD);
        double[] hours = {0, 7200, 7201, 10_000};
        double[] warmThenFrozen = {295.15, 295.15, 260, 260};
        assertThat(DangerLimits.of(milk).firstBreach(hours, warmThenFrozen))
                .get()
                .satisfies(breach -> assertThat(breach.rule()).isEqualTo(CautionRule.HOLDING_TIME_OVER));
        double[] frozenThenWarm = {260, 295.15, 295.15, 295.15};
        assertThat(DangerLimits.of(milk).firstBreach(hours, frozenThenWarm))
                .get()
                .satisfies(breach -> {
                    assertThat(breach.rule()).isEqualTo(CautionRule.BURSTS_BY_ICE);
                    assertThat(breach.afterS()).isZero();
                });
    }

    @Test
    void plungesHaveTheStopOfTheGlass() {
        DangerLimits limits = DangerLimits.of(CautionSubject.of(BOTTLE));
        assertThat(limits.allowsPlunge(293.15, 293.15 - 41.9)).isTrue();
        assertThat(limits.allowsPlunge(293.15, 293.15 + 42.1)).isFalse();
        assertThat(DangerLimits.of(CautionSubject.of(BOTTLE).withGlass(GlassKind.NOT_GLASS))
                        .allowsPlunge(200, 500))
                .isTrue();
    }

    @Test
    void badInputIsRefusedInWords() {
        DangerLimits limits = DangerLimits.of(CautionSubject.of(BOTTLE));
        assertThatThrownBy(() -> limits.firstBreach(HOURS, new double[] {300}))
                .hasMessage("3 times and 1 temperatures: expected as many temperatures as times, one or more");
        assertThatThrownBy(() -> limits.firstBreach(new double[0], new double[0]))
                .hasMessageContaining("one or more");
        assertThatThrownBy(() -> limits.firstBreach(HOURS, new double[] {300, -5, 300}))
                .hasMessage("temperature 1, -5.0 K: expected a finite temperature above absolute zero");
        assertThatThrownBy(() -> limits.firstBreach(new double[] {0, Double.NaN}, new double[] {300, 300}))
                .hasMessageContaining("time 1, NaN s");
    }
}
