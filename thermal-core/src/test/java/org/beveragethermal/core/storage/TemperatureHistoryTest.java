/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fahrenheit;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Figures of a history against closed forms and a published example. */
final class TemperatureHistoryTest {

    private static final double ZERO = 273.15;
    private static final Instant START = Instant.parse("2026-03-28T22:00:00Z");

    /** 10, 20, 20, 14 °C after 0, 1, 3 and 9 h. */
    private static final TemperatureHistory HISTORY = TemperatureHistory.of(
            new double[] {0, 3600, 3 * 3600, 9 * 3600}, new double[] {ZERO + 10, ZERO + 20, ZERO + 20, ZERO + 14});

    private static Reading reading(int minute, double celsius) {
        return new Reading(START.plus(Duration.ofMinutes(minute)), celsius(celsius));
    }

    @Test
    void timesAndDegreeHoursAreThoseOfTheLines() {
        // Above 16 °C: 0.4 h of the rise, 2 h on top, 4 h of the fall; triangles and a rectangle.
        assertThat(HISTORY.timeAbove(celsius(16))).isEqualTo(Duration.ofMinutes(24 + 120 + 240));
        assertThat(HISTORY.degreeHoursAbove(celsius(16))).isCloseTo(0.8 + 8 + 8, within(1e-9));
        assertThat(HISTORY.timeBelow(celsius(16))).isEqualTo(Duration.ofMinutes(36 + 120));
        assertThat(HISTORY.degreeHoursBelow(celsius(16))).isCloseTo(0.5 * 0.6 * 6 + 0.5 * 2 * 2, within(1e-9));
        assertThat(HISTORY.timeWithin(celsius(16), celsius(20))).isEqualTo(Duration.ofMinutes(384));
        assertThat(HISTORY.timeAbove(celsius(20))).isZero();
        assertThat(HISTORY.timeAbove(celsius(9))).isEqualTo(Duration.ofHours(9));
        assertThat(HISTORY.meanK() - ZERO).isCloseTo((15 + 40 + 6 * 17) / 9.0, within(1e-9));
    }

    @Test
    void extremesChangesAndGaps() {
        assertThat(HISTORY.lowest()).isEqualTo(new TemperatureHistory.Extreme(Duration.ZERO, ZERO + 10));
        assertThat(HISTORY.highest().after()).isEqualTo(Duration.ofHours(1));
        assertThat(HISTORY.fastestChange().kelvinPerHour()).isCloseTo(10, within(1e-9));
        TemperatureHistory.Change overTwo = HISTORY.greatestChange(Duration.ofHours(2));
        assertThat(overTwo.kelvin()).isCloseTo(10, within(1e-9));
        assertThat(overTwo.from()).isEqualTo(Duration.ZERO);
        assertThat(HISTORY.greatestChange(Duration.ofHours(6)).kelvin()).isCloseTo(7, within(1e-9));
        assertThat(HISTORY.longestGap())
                .isEqualTo(new TemperatureHistory.Gap(Duration.ofHours(3), Duration.ofHours(6)));
        assertThat(HISTORY.gapsLongerThan(Duration.ofMinutes(90))).hasSize(2);
        assertThat(HISTORY.dailySwingsK()).isEmpty();
    }

    @Test
    void daysAreStretchesOf24Hours() {
        TemperatureHistory three = TemperatureHistory.of(
                new double[] {0, 43_200, 86_400, 129_600, 172_800, 200_000},
                new double[] {285, 289, 285, 292, 285, 280});
        assertThat(three.dailySwingsK()).containsExactly(4.0, 7.0);
        StorageFigures figures = StorageFigures.of(three, celsius(10), celsius(18));
        assertThat(figures.greatestDailySwingK()).hasValue(7.0);
        assertThat(figures.formatVersion()).isEqualTo(1);
        assertThat(figures.explain()).contains("mean kinetic temperature").contains("swing in 24 h was 7.0 K");
        assertThat(figures.kelvinHoursAbove()).isCloseTo(three.degreeHoursAbove(celsius(18)), within(0.0));
    }

    @Test
    void meanKineticTemperatureOfAWorkedExample() {
        double kinetic = MeanKineticTemperature.ofReadingsK(
                new double[] {ZERO + 20, ZERO + 2, ZERO + 25}, new double[] {2, 4, 1});
        OutsideChecks.published(
                        "mean-kinetic-temperature-example",
                        "What is Mean Kinetic Temperature, FAQ at systems.isopharm.co.uk/mean-kinetic-temperature: 2 h at 20 °C, 4 h at 2"
                                + " °C and 1 h at 25 °C are thermally equivalent to 7 h at 15.7 °C; formula of J. D. Haynes, J. Pharm. Sci."
                                + " 60 (1971) 927")
                .what("mean kinetic temperature of 2 h at 20 °C, 4 h at 2 °C and 1 h at 25 °C")
                .unit("°C")
                .expected(15.7)
                .within(0.05)
                .check(kinetic - ZERO);
        // Steps as lines that are nearly upright.
        double steep = 1e-6;
        TemperatureHistory steps = TemperatureHistory.of(
                new double[] {0, 7200, 7200 + steep, 21_600, 21_600 + steep, 25_200},
                new double[] {ZERO + 20, ZERO + 20, ZERO + 2, ZERO + 2, ZERO + 25, ZERO + 25});
        assertThat(SiValues.temperatureK(steps.meanKineticTemperature(), "mean kinetic temperature"))
                .isCloseTo(kinetic, within(1e-6));
    }

    @Test
    void theIntegralAlongALineIsThatOfAFineSum() {
        int n = 200_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double t = ZERO + 2 + 38 * (i + 0.5) / n;
            sum += Math.exp(-83_144 / (8.3144 * t)) / n;
        }
        double expected = 83_144 / 8.3144 / -Math.log(sum);
        TemperatureHistory ramp = TemperatureHistory.of(new double[] {0, 500}, new double[] {ZERO + 2, ZERO + 40});
        assertThat(ramp.meanKineticTemperatureK(83_144)).isCloseTo(expected, within(1e-7));
        assertThat(ramp.meanKineticTemperatureK(1e6)).isLessThan(ZERO + 40).isGreaterThan(expected);
    }

    @Test
    void logsKeepTheirInstants() {
        TemperatureHistory log =
                TemperatureHistory.logged(List.of(reading(0, 12), reading(15, 13), reading(240, 13), reading(255, 12)));
        assertThat(log.start()).hasValue(START);
        assertThat(log.length()).isEqualTo(Duration.ofMinutes(255));
        assertThat(log.longestGap().length()).isEqualTo(Duration.ofMinutes(225));
        TemperatureHistory part = log.between(Duration.ofMinutes(15), Duration.ofMinutes(240));
        assertThat(part.start()).hasValue(START.plus(Duration.ofMinutes(15)));
        assertThat(SiValues.temperatureK(part.temperatureAt(Duration.ofHours(1)), "temperature"))
                .isCloseTo(ZERO + 13, within(1e-9));
        assertThat(log.byDuration()).hasSize(4).containsKey(Duration.ofHours(4));
    }

    @Test
    void whatRestsOnReadingsIsToldFromGaps() {
        TemperatureHistory log = TemperatureHistory.logged(List.of(
                reading(0, 12),
                reading(15, 13),
                reading(240, 30),
                reading(300, 13),
                reading(315, 12),
                reading(330, 12)));
        List<TemperatureHistory> parts = log.withoutGapsLongerThan(Duration.ofMinutes(20));
        assertThat(parts)
                .extracting(TemperatureHistory::length)
                .containsExactly(Duration.ofMinutes(15), Duration.ofMinutes(30));
        assertThat(parts.get(1).start()).hasValue(START.plus(Duration.ofHours(5)));
        double onReadings = parts.stream()
                .mapToDouble(part -> part.degreeHoursAbove(celsius(12)))
                .sum();
        // Two triangles of a kelvin and a quarter of an hour.
        assertThat(onReadings).isCloseTo(0.25, within(1e-9));
        assertThat(log.degreeHoursAbove(celsius(12))).isGreaterThan(30);
        assertThat(log.withoutGapsLongerThan(Duration.ofDays(1)))
                .singleElement()
                .satisfies(whole -> assertThat(whole.length()).isEqualTo(log.length()));
        assertThat(log.withoutGapsLongerThan(Duration.ofMinutes(1))).isEmpty();
        assertThatThrownBy(() -> log.withoutGapsLongerThan(Duration.ZERO)).hasMessageContaining("above 0");
    }

    @Test
    void minusZeroIsNeverShown() {
        TemperatureHistory frost =
                TemperatureHistory.of(new double[] {0, 7200}, new double[] {ZERO - 0.03, ZERO - 0.004});
        String words = StorageFigures.of(frost, celsius(-0.01), celsius(0)).explain();
        assertThat(words).contains("it was 0.0 to 0.0 °C").doesNotContain("-0.0 ");
        TemperatureHistory slow =
                TemperatureHistory.of(new double[] {0, 864_000}, new double[] {ZERO + 10, ZERO + 9.9});
        assertThat(StorageFigures.of(slow, celsius(8), celsius(12)).explain()).contains("steepest change was 0.00 K/h");
    }

    @Test
    void weightsMayBeInAnyUnit() {
        double[] temperatures = {ZERO + 20, ZERO + 2, ZERO + 25};
        double expected = MeanKineticTemperature.ofReadingsK(temperatures, new double[] {2, 4, 1});
        for (double unit : new double[] {1e-310, 1e-20, 1e307}) {
            double[] weights = {2 * unit, 4 * unit, unit};
            assertThat(MeanKineticTemperature.ofReadingsK(temperatures, weights))
                    .isCloseTo(expected, within(1e-9));
        }
        assertThatThrownBy(() -> MeanKineticTemperature.ofReadingsK(new double[] {285, 285}, new double[] {1, -1}))
                .hasMessageContaining("weight 1");
    }

    @Test
    void badLogsAreRefusedByName() {
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("history of 0 readings");
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of(reading(0, 12))))
                .hasMessageContaining("history of 1 reading:");
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of(reading(5, 12), reading(5, 13))))
                .hasMessageContaining("reading 1")
                .hasMessageContaining("expected later");
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of(reading(0, 12), reading(5, -127))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("reading 1")
                .hasMessageContaining("missing value");
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of(reading(0, 85), reading(5, 12))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("reading 0");
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of(reading(0, 12), reading(5, -999))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("reading 1");
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of(reading(0, 12), reading(5, Double.NaN))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {0, 1}, new double[] {285, Double.NaN}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("temperature 1");
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {0, Double.NaN}, new double[] {285, 285}))
                .hasMessageContaining("time 1");
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of(reading(5, 12), reading(9, 13), reading(6, 13))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("reading 2");
        // Times that differ as written but not any more when counted from the first.
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {-6e9, 1, 1 + 1e-7}, new double[] {285, 285, 285}))
                .hasMessageContaining("time 2");
        assertThatThrownBy(() -> TemperatureHistory.of(
                        new double[] {-Double.MAX_VALUE, Double.MAX_VALUE}, new double[] {285, 285}))
                .hasMessageContaining("time 1");
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {0, 1, 2}, new double[] {285, 285}))
                .hasMessageContaining("3 times and 2 temperatures");
        // A clock that was wrong at first: the days in between would be counted one by one.
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {0, 6.4e9}, new double[] {285, 285}))
                .hasMessageContaining("time 1")
                .hasMessageContaining("73000 days");
        assertThatThrownBy(() -> TemperatureHistory.logged(List.of(
                        new Reading(Instant.parse("1650-01-01T00:00:00Z"), celsius(12)),
                        new Reading(Instant.parse("2027-01-01T00:00:00Z"), celsius(12)))))
                .hasMessageContaining("reading 1")
                .hasMessageContaining("73000 days");
    }

    @Test
    void badQuestionsAreRefusedByName() {
        assertThatThrownBy(() -> HISTORY.timeWithin(celsius(18), celsius(12)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lower one first");
        assertThatThrownBy(() -> StorageFigures.of(HISTORY, celsius(18), celsius(12)))
                .hasMessageContaining("lower one first");
        assertThatThrownBy(() -> HISTORY.between(Duration.ofHours(3), Duration.ofHours(3)))
                .hasMessageContaining("ascending");
        assertThatThrownBy(() -> HISTORY.between(Duration.ofHours(3), Duration.ofHours(10)))
                .hasMessageContaining("to PT10H");
        assertThatThrownBy(() -> HISTORY.greatestChange(Duration.ZERO)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> HISTORY.greatestChange(Duration.ofDays(1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HISTORY.meanKineticTemperatureK(10)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> MeanKineticTemperature.ofReadingsK(new double[0], new double[0]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MeanKineticTemperature.ofReadingsK(new double[] {285}, new double[] {0}))
                .hasMessageContaining("above 0");
        assertThatThrownBy(() -> MeanKineticTemperature.ofReadingsK(new double[] {12}, new double[] {1}))
                .hasMessageContaining("temperature 0");
    }

    @Test
    void aPredictionIsDrawnClosely() {
        Prediction bottle = Lumped.of(
                        Vessels.highShouldered750().filledWith(Beverage.dryWine(percentByVolume(12.5)), celsius(8)))
                .expose(in(Air.at(celsius(22)), Duration.ofHours(3)), in(Air.at(celsius(5)), Duration.ofHours(2)));
        TemperatureHistory drawn = TemperatureHistory.of(bottle);
        assertThat(drawn.length()).isEqualTo(bottle.end());
        assertThat(drawn.longestGap().length())
                .as("a prediction is known at every time")
                .isZero();
        assertThat(drawn.withoutGapsLongerThan(Duration.ofSeconds(1))).hasSize(1);
        assertThat(StorageFigures.of(drawn, celsius(8), celsius(12)).explain()).doesNotContain("without a reading");
        for (double t = 1; t < 5 * 3600; t += 37) {
            assertThat(drawn.temperatureK(t))
                    .isCloseTo(bottle.meanTemperatureK(t), within(2 * TemperatureHistory.DRAWN_WITHIN_K));
        }
        assertThat(drawn.highest().after()).isBetween(Duration.ofMinutes(179), Duration.ofMinutes(184));
        assertThat(drawn.timeAbove(fahrenheit(50))).isLessThan(bottle.end()).isPositive();
    }
}
