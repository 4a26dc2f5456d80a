/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.beveragethermal.service.caution.Logs.asTheyAre;
import static org.beveragethermal.service.caution.Logs.everyTenMinutes;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.beveragethermal.core.storage.Reading;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.materials.units.Measures;
import org.junit.jupiter.api.Test;

/** Holding clocks against the codes, case by case; the logs are of our own invention. */
class HoldingClockTest {

    private static final HoldingClock BUSINESS = HoldingClock.of(Jurisdiction.US_FOOD_CODE);
    private static final HoldingClock HOUSEHOLD = HoldingClock.of(Jurisdiction.US_HOUSEHOLD);
    private static final HoldingClock ENGLAND = HoldingClock.of(Jurisdiction.ENGLAND);

    private static Duration over(HoldingTime answer) {
        assertThat(answer).isInstanceOf(HoldingTime.Over.class);
        return ((HoldingTime.Over) answer).after();
    }

    private static Duration left(HoldingTime answer) {
        assertThat(answer).isInstanceOf(HoldingTime.Within.class);
        return ((HoldingTime.Within) answer).left();
    }

    // Food Code 2022, 3-501.16(A)(2): 5 °C or less is held.
    @Test
    void atTheLimitItIsHeld() {
        assertThat(left(BUSINESS.read(everyTenMinutes(0, 5, 1440, 5)))).isEqualTo(Duration.ofHours(6));
        assertThat(left(ENGLAND.read(everyTenMinutes(0, 8, 1440, 8)))).isEqualTo(Duration.ofHours(4));
        assertThat(left(BUSINESS.read(everyTenMinutes(0, 57, 1440, 57)))).isEqualTo(Duration.ofHours(4));
        assertThat(BUSINESS.read(everyTenMinutes(0, 5.1, 1440, 5.1))).isInstanceOf(HoldingTime.Over.class);
    }

    // 3-501.19(B): 4 h; (C): 6 h if it does not exceed 21 °C.
    @Test
    void sixHoursBecomeFourOnceItIsWarm() {
        assertThat(over(BUSINESS.read(everyTenMinutes(0, 5, 10, 20.9, 600, 20.9))))
                .isEqualTo(Duration.ofHours(6));
        assertThat(over(BUSINESS.read(everyTenMinutes(0, 5, 10, 21.1, 600, 21.1))))
                .isEqualTo(Duration.ofHours(4));
        // Warm only after five hours: over that moment.
        Duration late = over(BUSINESS.read(everyTenMinutes(0, 5, 10, 20, 300, 20, 310, 22, 600, 22)));
        assertThat(late).isCloseTo(Duration.ofMinutes(305), Duration.ofSeconds(1));
    }

    // 3-501.19(B)(3): counted from when it left, so that cooling it again does not stop the time.
    @Test
    void theFoodCodeCountsOnInTheCold() {
        HoldingTime answer = BUSINESS.read(everyTenMinutes(0, 4, 10, 30, 20, 4, 600, 4));
        assertThat(over(answer))
                .isBetween(Duration.ofHours(4), Duration.ofHours(4).plusMinutes(10));
    }

    @Test
    void theHouseholdAddsUpTimeOutside() {
        // Ten stays of ten minutes each at 20 °C between the cold: 100 min and the slopes count.
        double[] log = IntStream.range(0, 10)
                .boxed()
                .flatMapToDouble(i -> DoubleStream.of(
                        60 * i,
                        4,
                        60 * i + 10,
                        4,
                        60 * i + 10.1,
                        20,
                        60 * i + 20,
                        20,
                        60 * i + 20.1,
                        4,
                        60 * i + 59,
                        4))
                .toArray();
        HoldingTime.Within within = (HoldingTime.Within) HOUSEHOLD.read(everyTenMinutes(log));
        assertThat(within.counted()).isCloseTo(Duration.ofMinutes(100), Duration.ofMinutes(1));
        assertThat(within.left()).isEqualTo(Duration.ofHours(2).minus(within.counted()));
    }

    // Two hours, one above 90 °F (32.2 °C).
    @Test
    void theHouseholdHasAnHourInTheHeat() {
        assertThat(over(HOUSEHOLD.read(everyTenMinutes(0, 4.4, 0.001, 32.1, 300, 32.1))))
                .isCloseTo(Duration.ofHours(2), Duration.ofSeconds(1));
        assertThat(over(HOUSEHOLD.read(everyTenMinutes(0, 4.4, 0.001, 32.4, 300, 32.4))))
                .isCloseTo(Duration.ofHours(1), Duration.ofSeconds(1));
        assertThat(over(HOUSEHOLD.inHotSurroundings().read(everyTenMinutes(0, 4.4, 0.001, 20, 300, 20))))
                .isCloseTo(Duration.ofHours(1), Duration.ofSeconds(1));
        // The other codes look at the food.
        assertThat(over(BUSINESS.inHotSurroundings().read(everyTenMinutes(0, 5, 0.001, 20, 400, 20))))
                .isCloseTo(Duration.ofHours(6), Duration.ofSeconds(1));
    }

    // Schedule 4: a defence for one period of less than four hours; hot, less than two.
    @Test
    void englandAllowsOneStay() {
        assertThat(over(ENGLAND.read(everyTenMinutes(0, 8, 0.001, 15, 300, 15))))
                .isCloseTo(Duration.ofHours(4), Duration.ofSeconds(1));
        HoldingTime once = ENGLAND.read(everyTenMinutes(0, 8, 10, 15, 100, 15, 110, 6, 600, 6));
        assertThat(left(once)).isZero();
        Duration second = over(ENGLAND.read(everyTenMinutes(0, 8, 10, 15, 100, 15, 110, 6, 600, 6, 610, 10, 620, 10)));
        assertThat(second).isCloseTo(Duration.ofMinutes(605), Duration.ofSeconds(1));
        assertThat(over(ENGLAND.read(everyTenMinutes(0, 64, 0.001, 50, 300, 50))))
                .isCloseTo(Duration.ofHours(2), Duration.ofSeconds(1));
    }

    @Test
    void theUnionStatesNoFigure() {
        HoldingTime answer = HoldingClock.of(Jurisdiction.EUROPEAN_UNION).read(everyTenMinutes(0, 4, 600, 30));
        assertThat(((HoldingTime.NoFigure) answer).source().citation()).contains("852/2004", "no figure");
        assertThat(HoldingClock.of(Jurisdiction.EUROPEAN_UNION).overAtS(new double[] {0, 1e6}, new double[] {300, 300}))
                .isEmpty();
    }

    @Test
    void gapsAreDoubtNotCertainty() {
        // A night without a reading, cold before and after.
        HoldingTime night = BUSINESS.read(asTheyAre(0, 4, 10, 4, 490, 4, 500, 4));
        assertThat(night).isInstanceOf(HoldingTime.MayBeOver.class);
        assertThat(((HoldingTime.MayBeOver) night).after()).isEqualTo(Duration.ofMinutes(10 + 240));
        assertThat(((HoldingTime.MayBeOver) night).surely()).isZero();
        assertThat(BUSINESS.readWithin(Duration.ofHours(8)).read(asTheyAre(0, 4, 10, 4, 490, 4, 500, 4)))
                .isInstanceOf(HoldingTime.Within.class);
        // Once it was out the Food Code counts on, read or not.
        HoldingTime out = BUSINESS.read(asTheyAre(0, 4, 10, 22, 490, 22, 500, 22));
        assertThat(over(out)).isBetween(Duration.ofMinutes(240), Duration.ofMinutes(250));
        // A household cannot know: it may have stood in the cold meanwhile.
        HoldingTime perhaps = HOUSEHOLD.read(asTheyAre(0, 4, 10, 22, 490, 22, 500, 22));
        assertThat(perhaps).isInstanceOf(HoldingTime.MayBeOver.class);
    }

    // A reading is certain though nothing was read for an hour before it.
    @Test
    void readingsBetweenGapsAreCertain() {
        double[] warm = {0, 4, 60, 20, 120, 20, 180, 20, 240, 20, 300, 20, 360, 20, 420, 20, 480, 20};
        assertThat(over(BUSINESS.read(asTheyAre(warm)))).isEqualTo(Duration.ofHours(1 + 6));
        double[] warmer = {0, 4, 60, 24, 120, 24, 180, 24, 240, 24, 300, 24, 360, 24};
        assertThat(over(BUSINESS.read(asTheyAre(warmer)))).isEqualTo(Duration.ofHours(1 + 4));
        // Out, in and out again is a second stay, whatever was between.
        assertThat(over(ENGLAND.read(asTheyAre(0, 4, 60, 12, 120, 4, 180, 12)))).isEqualTo(Duration.ofHours(3));
        // A household may have cooled it between any two readings.
        assertThat(HOUSEHOLD.read(asTheyAre(warm))).isInstanceOf(HoldingTime.MayBeOver.class);
        assertThat(BUSINESS.read(asTheyAre(0, 4, 60, 4, 120, 4))).isInstanceOf(HoldingTime.Within.class);
    }

    @Test
    void logsWithInstantsAreReadLikeNumbers() {
        Instant noon = Instant.parse("2031-03-30T00:30:00Z");
        List<Reading> readings = IntStream.rangeClosed(0, 30)
                .mapToObj(i -> new Reading(noon.plusSeconds(600L * i), Measures.celsius(i == 0 ? 4 : 22)))
                .toList();
        Duration over = over(BUSINESS.read(TemperatureHistory.logged(readings)));
        assertThat(over).isBetween(Duration.ofHours(4), Duration.ofHours(4).plusMinutes(10));
    }

    @Test
    void whatWasOutBeforeCounts() {
        assertThat(over(BUSINESS.alreadyOut(Duration.ofHours(3)).read(everyTenMinutes(0, 20, 120, 20))))
                .isEqualTo(Duration.ofHours(1));
        assertThat(over(BUSINESS.alreadyOut(Duration.ofHours(5)).read(everyTenMinutes(0, 4, 120, 4))))
                .isZero();
        assertThat(over(HOUSEHOLD.alreadyOut(Duration.ofHours(2)).read(everyTenMinutes(0, 4, 120, 4))))
                .isZero();
        assertThat(over(ENGLAND.alreadyOut(Duration.ofHours(1)).read(everyTenMinutes(0, 4, 10, 4, 20, 12, 60, 12))))
                .isCloseTo(Duration.ofMinutes(15), Duration.ofSeconds(1));
        // Not seen leaving: the least allowance that could be meant.
        assertThat(over(HOUSEHOLD.read(everyTenMinutes(0, 33, 600, 33)))).isEqualTo(Duration.ofHours(1));
        assertThat(over(HOUSEHOLD.read(everyTenMinutes(0, 31, 600, 31)))).isEqualTo(Duration.ofHours(2));
        assertThat(over(BUSINESS.read(everyTenMinutes(0, 12, 600, 12)))).isEqualTo(Duration.ofHours(4));
    }

    @Test
    void plainNumbersAreCheckedFast() {
        double[] times = {0, 600, 36_000};
        double[] kelvins = {278.15, 295.15, 295.15};
        assertThat(BUSINESS.overAtS(times, kelvins).getAsDouble()).isEqualTo(14_400);
        assertThat(BUSINESS.overAtS(new double[] {0}, new double[] {300})).isEmpty();
    }

    @Test
    void badInputIsRefusedInWords() {
        assertThatThrownBy(() -> BUSINESS.alreadyOut(Duration.ofSeconds(-1)))
                .hasMessage("time already out PT-1S: expected zero or more");
        assertThatThrownBy(() -> BUSINESS.readWithin(Duration.ZERO))
                .hasMessage("longest time between readings PT0S: expected more than zero");
        assertThatThrownBy(() -> BUSINESS.overAtS(new double[] {0, 1}, new double[] {300}))
                .hasMessage("2 times and 1 temperatures: expected as many temperatures as times, one or more");
        assertThatThrownBy(() -> BUSINESS.overAtS(new double[] {1, 0}, new double[] {300, 300}))
                .hasMessageContaining("time 1, 0.0 s: expected a finite time, not before");
        assertThatThrownBy(() -> BUSINESS.overAtS(new double[] {0, 1}, new double[] {300, Double.NaN}))
                .hasMessageContaining("temperature 1, NaN K");
        assertThatThrownBy(() -> new HoldingRule(300, 290, 1, 2, 295, false, 2, HoldingRule.Counting.TIME_OUTSIDE))
                .hasMessageContaining("expected the cold limit below the hot one");
        assertThat(BUSINESS.toString()).contains("US_FOOD_CODE");
        assertThat(BUSINESS.jurisdiction()).isEqualTo(Jurisdiction.US_FOOD_CODE);
    }
}
